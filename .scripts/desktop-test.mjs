// Runs test/editor inside a desktop VS Code: the one that VSCODE_EXECUTABLE names, or else one downloaded for it.
import { downloadAndUnzipVSCode, runTests } from '@vscode/test-electron';
import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { bundleTests, extensionUnderTest, prepareRun, QUIET_SETTINGS, readResults, REPO_ROOT, summarize } from './editor-host.mjs';

const VERSION = process.env.VSCODE_VERSION || 'stable';

class NoDesktop extends Error {}

async function executable() {
  const chosen = process.env.VSCODE_EXECUTABLE;
  if (chosen) {
    if (!existsSync(chosen)) throw new NoDesktop(`VSCODE_EXECUTABLE names ${chosen}, which does not exist`);
    return chosen;
  }
  try {
    return await downloadAndUnzipVSCode({ version: VERSION, cachePath: join(REPO_ROOT, '.vscode-test') });
  } catch (error) {
    throw new NoDesktop(`it could not be downloaded (${error.message.trim()}), and VSCODE_EXECUTABLE names none`);
  }
}

let run;
let passed = false;
try {
  const extensionTestsPath = await bundleTests();
  const extension = await extensionUnderTest();
  const vscodeExecutablePath = await executable();
  run = await prepareRun();
  const userData = join(run.temp, 'user');
  await mkdir(join(userData, 'User'), { recursive: true });
  await writeFile(join(userData, 'User', 'settings.json'), JSON.stringify({ ...QUIET_SETTINGS, 'update.mode': 'none' }));
  let ending;
  try {
    await runTests({
      vscodeExecutablePath, extensionDevelopmentPath: extension.folder, extensionTestsPath,
      launchArgs: [run.workspace, '--user-data-dir', userData, '--extensions-dir', join(run.temp, 'extensions'),
        '--disable-workspace-trust', '--skip-welcome', '--skip-release-notes'],
      extensionTestsEnv: {
        GARBOARD_TEST_RESULTS: run.results, GARBOARD_TEST_EXTENSION: extension.id, GARBOARD_TEST_EXTENSION_FOLDER: extension.folder,
      },
    });
  } catch (error) {
    ending = error;
  }
  const results = await readResults(run.results);
  if (results.planned === 0) {
    const display = process.platform === 'linux' && !process.env.DISPLAY && !process.env.WAYLAND_DISPLAY
      ? '; there is no display, so try it under xvfb-run' : '';
    throw new NoDesktop(`${vscodeExecutablePath} ended before it ran a test (${ending?.message ?? 'without an error'})${display}`);
  }
  passed = summarize(results) && !ending;
} catch (error) {
  console.error(error instanceof NoDesktop
    ? `Desktop VS Code could not be had: ${error.message}; nothing was tested.` : error.message);
} finally {
  await run?.remove();
}
process.exit(passed ? 0 : 1);
