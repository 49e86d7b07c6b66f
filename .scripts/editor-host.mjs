// Runs VS Code's own server on loopback, with its real extension host, and opens its workbench in headless Chromium.
import { spawn } from 'node:child_process';
import { existsSync, rmSync } from 'node:fs';
import { chmod, cp, mkdir, mkdtemp, readdir, readFile, realpath, rename, rm, stat, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { basename, dirname, join, resolve } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const SERVER_PACKAGE = 'code-server';
const SERVER_VERSION = '4.100.3'; // carries VS Code 1.100.3, the oldest version that the extension supports
const RIPGREP = '@vscode/ripgrep'; // what quick open and workspace.findFiles search with
const RIPGREP_VERSION = '1.18.0'; // this version brings the program with it, where the server's own would download it
const HOST = '127.0.0.1';
const START_LIMIT_MS = 60_000;

export const REPO_ROOT = resolve(dirname(fileURLToPath(import.meta.url)), '..');
export const CACHE = resolve(REPO_ROOT, process.env.GARBOARD_CACHE || '.cache');
export const SCREENSHOTS = join(CACHE, 'screenshots');

/** Settings that keep the workbench quiet and the same on every run. */
export const QUIET_SETTINGS = {
  'workbench.startupEditor': 'none',
  'workbench.welcomePage.walkthroughs.openOnInstall': false,
  'workbench.tips.enabled': false,
  'workbench.colorTheme': 'Default Light Modern',
  'workbench.enableExperiments': false,
  'workbench.settings.enableNaturalLanguageSearch': false,
  'window.commandCenter': false,
  'window.title': '${dirty}${activeEditorShort}${separator}${rootName}',
  'security.workspace.trust.enabled': false,
  'extensions.ignoreRecommendations': true,
  'extensions.autoCheckUpdates': false,
  'extensions.autoUpdate': false,
  'update.showReleaseNotes': false,
  'telemetry.telemetryLevel': 'off',
  'git.openRepositoryInParentFolders': 'never',
  'chat.commandCenter.enabled': false,
  'files.autoSave': 'off',
  'editor.cursorBlinking': 'solid',
};

/**
 * Installs the server once and returns its folder. The work is done in a folder beside it, which is moved into place
 * when complete; the marker, written last, names the server's version and the Node.js it was built for.
 */
export async function ensureServer({ log = console.log } = {}) {
  const home = join(CACHE, 'vscode-server');
  const marker = `${SERVER_PACKAGE}@${SERVER_VERSION} ${RIPGREP}@${RIPGREP_VERSION} ${process.platform}-${process.arch} node-abi-${process.versions.modules}\n`;
  const isReady = async () => (await readFile(join(home, 'ready'), 'utf8').catch(() => '')) === marker;
  const root = join(home, 'node_modules', SERVER_PACKAGE, 'lib', 'vscode');
  if (await isReady()) return root;

  const started = Date.now();
  log(`Installing the VS Code server (${SERVER_PACKAGE}@${SERVER_VERSION}); this takes a minute or two, once.`);
  await mkdir(CACHE, { recursive: true });
  for (const name of await readdir(CACHE)) { // what an interrupted installation left
    const left = join(CACHE, name);
    if (name.startsWith('vscode-server-new-') && (await stat(left)).mtimeMs < started - 3_600_000) await rm(left, { recursive: true, force: true });
  }
  const work = await mkdtemp(join(CACHE, 'vscode-server-new-'));
  try {
    const vscode = join(work, 'node_modules', SERVER_PACKAGE, 'lib', 'vscode');
    await writeFile(join(work, 'package.json'), '{ "name": "garboard-editor-host", "private": true }\n');
    await npm(['install', `${SERVER_PACKAGE}@${SERVER_VERSION}`, `${RIPGREP}@${RIPGREP_VERSION}`, '--ignore-scripts', '--no-save'], work, 'download the VS Code server');
    await npm(['install', '--omit=dev', '--ignore-scripts'], vscode, "install the VS Code server's libraries");
    await npm(['rebuild', '@vscode/spdlog', 'native-watchdog'], vscode,
      "build the VS Code server's two native modules (python3, make and a C++ compiler are needed)");
    await npm(['install', '--omit=dev', '--ignore-scripts'], join(vscode, 'extensions'), "install the built-in extensions' libraries");
    await placeRipgrep(work, vscode);
    if (!existsSync(join(vscode, 'out', 'server-main.js'))) {
      throw new Error(`${SERVER_PACKAGE}@${SERVER_VERSION} did not bring out/server-main.js.`);
    }
    await writeFile(join(work, 'ready'), marker);
    if (!(await isReady())) { // unless another run was quicker
      await rm(home, { recursive: true, force: true });
      await rename(work, home);
    }
  } catch (error) {
    throw new Error(`The VS Code server could not be installed: ${error.message}`);
  } finally {
    await rm(work, { recursive: true, force: true });
  }
  log(`The VS Code server is installed (${Math.round((Date.now() - started) / 1000)} s).`);
  return root;
}

async function placeRipgrep(work, vscode) {
  const program = process.platform === 'win32' ? 'rg.exe' : 'rg';
  const from = join(work, 'node_modules', `${RIPGREP}-${process.platform}-${process.arch}`, 'bin', program);
  if (!existsSync(from)) throw new Error(`${RIPGREP}@${RIPGREP_VERSION} has no program for ${process.platform}-${process.arch}.`);
  const to = join(vscode, 'node_modules', RIPGREP, 'bin', program);
  await mkdir(dirname(to), { recursive: true });
  await cp(from, to);
  await chmod(to, 0o755);
}

async function npm(args, cwd, purpose) {
  // Values that `npm run` hands to its children describe this repository, not the folder that npm is to work in.
  const env = Object.fromEntries(Object.entries(process.env)
    .filter(([name]) => !/^npm_(package|lifecycle|command|execpath|config_(local_prefix|prefix|omit|include))/i.test(name)));
  delete env.NODE_ENV;
  const headers = resolve(dirname(process.execPath), '..');
  if (!env.npm_config_nodedir && existsSync(join(headers, 'include', 'node', 'node.h'))) env.npm_config_nodedir = headers;
  const command = process.platform === 'win32' ? 'npm.cmd' : 'npm';
  const { code, output } = await runToEnd(command, [...args, '--no-audit', '--no-fund', '--loglevel=error'], { cwd, env });
  if (code !== 0) throw new Error(`could not ${purpose}.\nnpm ${args.join(' ')} said:\n${lastLines(output, 15)}`);
}

function runToEnd(command, args, options) {
  return new Promise((done, fail) => {
    const child = spawn(command, args, { ...options, stdio: ['ignore', 'pipe', 'pipe'], shell: process.platform === 'win32' });
    let output = '';
    child.stdout.on('data', (data) => { output += data; });
    child.stderr.on('data', (data) => { output += data; });
    child.on('error', fail);
    child.on('close', (code) => done({ code, output }));
  });
}

function lastLines(text, count) {
  return text.trim().split('\n').slice(-count).join('\n');
}

function freePort() {
  return new Promise((done, fail) => {
    const probe = createServer();
    probe.on('error', fail);
    probe.listen(0, HOST, () => {
      const { port } = probe.address();
      probe.close(() => done(port));
    });
  });
}

/**
 * Starts a server with folders of its own, which stop() removes. `vsix` is a packed extension to install first; `env`,
 * or what it returns for the folder of installed extensions, is added to the extension host's environment.
 */
export async function startServer({ port, vsix, env = {} } = {}) {
  const root = await ensureServer();
  const temp = await temporaryFolder('garboard-editor-');
  const userData = join(temp, 'user');
  const extensions = join(temp, 'extensions');
  const folders = ['--user-data-dir', userData, '--server-data-dir', join(temp, 'server'), '--extensions-dir', extensions];
  const main = join(root, 'out', 'server-main.js');
  // The extension host is not to believe that it runs inside another editor, and it needs no extension gallery.
  const added = typeof env === 'function' ? env({ extensions }) : env;
  const childEnv = Object.fromEntries(Object.entries({ ...process.env, ...added })
    .filter(([name]) => !/^(VSCODE_|ELECTRON_|NODE_OPTIONS$)/.test(name)));
  childEnv.EXTENSIONS_GALLERY = '{}';

  let child;
  let log = '';
  // The server has a process group of its own, because its extension hosts outlive it by some seconds.
  const signal = (name) => {
    if (!child?.pid) return false;
    try {
      return process.kill(process.platform === 'win32' ? child.pid : -child.pid, name);
    } catch {
      return false; // no process is left
    }
  };
  const atExit = () => {
    signal('SIGKILL');
    rmSync(temp, { recursive: true, force: true });
  };
  process.once('exit', atExit);
  const stop = async () => {
    signal('SIGTERM');
    for (let waited = 0; signal(0) && waited < 5_000; waited += 100) await sleep(100);
    signal('SIGKILL');
    await rm(temp, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
    process.off('exit', atExit);
  };

  try {
    if (vsix) {
      const { code, output } = await runToEnd(process.execPath, [main, '--install-extension', resolve(vsix), ...folders], { cwd: root, env: childEnv });
      if (code !== 0 || /Failed Installing/i.test(output)) throw new Error(`${vsix} could not be installed:\n${lastLines(output, 10)}`);
    }
    port ??= await freePort();
    child = spawn(process.execPath, [main, '--host', HOST, '--port', String(port), '--without-connection-token',
      '--accept-server-license-terms', ...folders, '--disable-telemetry'],
    { cwd: root, env: childEnv, stdio: ['ignore', 'pipe', 'pipe'], detached: process.platform !== 'win32' });
    await new Promise((done, fail) => {
      const failWith = (reason) => fail(new Error(`The VS Code server did not start (${reason}).\n${lastLines(log, 15)}`));
      const timer = setTimeout(() => failWith(`nothing after ${START_LIMIT_MS / 1000} s`), START_LIMIT_MS);
      const hear = (data) => {
        log = (log + data).slice(-200_000);
        if (log.includes('Extension host agent started.')) { clearTimeout(timer); done(); }
      };
      child.stdout.on('data', hear);
      child.stderr.on('data', hear);
      child.once('error', (error) => { clearTimeout(timer); failWith(error.message); });
      child.once('exit', (code, signal) => { clearTimeout(timer); failWith(`it ended with ${signal ?? code}`); });
    });
  } catch (error) {
    await stop();
    throw error;
  }
  const ended = new Promise((done) => child.once('exit', (code, signal) => done(signal ?? code)));
  return { ended, url: `http://${HOST}:${port}/`, port, pid: child.pid, userData, extensions, temp, log: () => log, stop };
}

/**
 * Opens the workbench on a folder in a fresh browser context. With `testsPath` the test module runs as soon as the
 * workbench is up: `onLog(level, args)` hears its console, and `finished` resolves to its exit code, 0 when it passed,
 * or to words that say why it never came.
 */
export async function openWorkbench({ browser, server, folder, extensionPath, testsPath, settings = {}, viewport, onLog, onPage }) {
  const settingsFile = join(server.userData, 'User', 'settings.json');
  await mkdir(dirname(settingsFile), { recursive: true });
  await writeFile(settingsFile, JSON.stringify({ ...QUIET_SETTINGS, ...settings }, undefined, 2));

  const context = await browser.newContext({ viewport: viewport ?? { width: 1440, height: 900 }, permissions: ['clipboard-read', 'clipboard-write'] });
  const page = await context.newPage();
  onPage?.(page);
  const finished = new Promise((done) => {
    page.exposeFunction('codeAutomationExit', (code) => done(code));
    page.once('crash', () => done('the page crashed'));
    server.ended.then((how) => done(`the server ended with ${how}`));
  });
  await page.exposeFunction('codeAutomationLog', (level, args) => onLog?.(level, args));

  const remote = (path) => `vscode-remote://${HOST}:${server.port}${pathToFileURL(resolve(path)).pathname}`;
  const payload = [['skipWelcome', 'true'], ['skipReleaseNotes', 'true']];
  if (extensionPath) payload.push(['extensionDevelopmentPath', remote(extensionPath)]);
  if (testsPath) payload.push(['extensionTestsPath', remote(testsPath)]);
  const address = new URL(server.url);
  address.searchParams.set('folder', resolve(folder));
  address.searchParams.set('payload', JSON.stringify(payload));
  await page.goto(address.href, { waitUntil: 'domcontentloaded' });
  await page.locator('.monaco-workbench').waitFor({ timeout: 60_000 });
  return { page, context, finished, address: address.href };
}

/** Bundles the test module for the extension host and returns its path. */
export async function bundleTests() {
  const outfile = join(REPO_ROOT, 'dist', 'editor-tests.cjs');
  await build({
    entryPoints: [join(REPO_ROOT, 'test', 'editor', 'index.ts')], outfile, bundle: true, format: 'cjs', platform: 'node',
    target: 'node20', external: ['vscode'], sourcemap: 'linked', logLevel: 'error',
  });
  return outfile;
}

/**
 * The extension to test: its identifier and either the folder of its development or a packed .vsix. The folder is this
 * repository unless GARBOARD_EXTENSION names another; a .vsix that is not named is the newest one in the repository.
 */
export async function extensionUnderTest({ packed = false, file } = {}) {
  if (file && !packed) throw new Error('A file is given only after --packed.');
  const folder = resolve(process.env.GARBOARD_EXTENSION || REPO_ROOT);
  const manifest = JSON.parse(await readFile(join(folder, 'package.json'), 'utf8'));
  const id = `${manifest.publisher}.${manifest.name}`;
  if (packed) return { id, vsix: file ? await existing(resolve(file)) : await newestVsix(folder) };
  if (!manifest.main) throw new Error(`${join(folder, 'package.json')} names no main module, so there is no extension to test.`);
  const main = join(folder, manifest.main);
  if (!existsSync(main)) throw new Error(`${main} does not exist. Build the extension first: npm run build`);
  return { id, folder: await realpath(folder) };
}

async function existing(path) {
  if (!existsSync(path)) throw new Error(`${path} does not exist.`);
  return path;
}

async function newestVsix(folder) {
  const found = [];
  for (const place of [folder, join(folder, 'dist')]) {
    for (const name of await readdir(place).catch(() => [])) {
      if (name.endsWith('.vsix')) found.push({ path: join(place, name), at: (await stat(join(place, name))).mtimeMs });
    }
  }
  found.sort((a, b) => b.at - a.at);
  if (!found[0]) throw new Error('There is no .vsix to test. Pack the extension first: npm run package');
  return found[0].path;
}

export async function temporaryFolder(prefix) {
  return realpath(await mkdtemp(join(tmpdir(), prefix)));
}

/** A folder for one run: a workspace copied from examples/, a file for results, and an extension that does nothing. */
export async function prepareRun(from = join(REPO_ROOT, 'examples')) {
  const temp = await temporaryFolder('garboard-run-');
  const run = {
    temp, workspace: join(temp, 'workspace'), results: join(temp, 'results.jsonl'), emptyExtension: join(temp, 'empty-extension'),
    remove: () => rm(temp, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 }),
  };
  await mkdir(run.workspace);
  await cp(from, run.workspace, { recursive: true });
  await writeFile(run.results, '');
  await mkdir(run.emptyExtension);
  await writeFile(join(run.emptyExtension, 'package.json'), JSON.stringify(
    { name: 'empty', publisher: 'garboard', version: '0.0.1', engines: { vscode: '*' } }));
  return run;
}

/** What the test module recorded, with the test that was running when it was cut short, if any, counted as failed. */
export async function readResults(file) {
  const lines = file ? (await readFile(file, 'utf8').catch(() => '')).split('\n').filter(Boolean).map((line) => JSON.parse(line)) : [];
  const started = lines.filter(({ kind }) => kind === 'start').map(({ name }) => name);
  const passed = lines.filter(({ kind }) => kind === 'passed').length;
  const failed = lines.filter(({ kind }) => kind === 'failed').length;
  const planned = lines.find(({ kind }) => kind === 'plan')?.count ?? 0;
  const running = started.length > passed + failed ? started.at(-1) : undefined;
  return { planned, passed, failed: failed + (running === undefined ? 0 : 1), running, ended: lines.some(({ kind }) => kind === 'end') };
}

/** Prints how it went, and says whether every test ran and passed. */
export function summarize({ planned, passed, failed, running, ended }) {
  if (running !== undefined) console.error(`  FAILED  ${running} (it did not end)`);
  const unreached = planned - passed - failed;
  if (unreached > 0) console.error(`${unreached} of ${planned} tests were not reached.`);
  if (passed + failed === 0) console.error('No test ran.');
  console.log(`${passed} passed, ${failed} failed`);
  return ended && failed === 0 && passed > 0 && passed === planned;
}

/** What a user does in the workbench, by keyboard. Each waits for what it should bring to be visible. */
export function userActions(page) {
  const palette = page.locator('.quick-input-widget');
  const rows = palette.locator('.quick-input-list .monaco-list-row');
  const input = palette.locator('input[type="text"], input:not([type])').first();
  // Early on, a search may be asked before there is anything to answer it, so it is asked again until a row matches.
  const choose = async (key, text, expected) => {
    const row = rows.filter({ hasText: expected }).first();
    for (let attempt = 1; ; attempt++) {
      await page.keyboard.press(key);
      await palette.waitFor();
      await input.fill(text);
      try {
        await row.waitFor({ timeout: 5_000 });
        break;
      } catch (error) {
        if (attempt === 6) throw new Error(`"${text}" brought no entry "${expected}". ${error.message}`);
        await page.keyboard.press('Escape');
        await palette.waitFor({ state: 'hidden' });
      }
    }
    await row.click();
  };
  return {
    /** Runs a command through the command palette, by its title. */
    async command(title) {
      await choose('F1', `>${title}`, title);
    },
    /** Opens a file of the workspace through quick open, and waits for its text to show. */
    async openFile(name) {
      await choose('Control+P', name, basename(name));
      await page.locator('.tab.active', { hasText: basename(name) }).waitFor();
      await page.locator('.editor-group-container.active .monaco-editor .view-line').first().waitFor();
    },
    /** Puts the cursor of the focused editor at a line and column, both from 1. */
    async goTo(line, column = 1) {
      await page.keyboard.press('Control+G');
      await palette.waitFor();
      await input.fill(`:${line}:${column}`);
      await page.keyboard.press('Enter');
      await palette.waitFor({ state: 'hidden' });
    },
    /** Opens the quick-fix menu at the cursor and returns the titles that it shows. */
    async quickFixes() {
      await page.keyboard.press('Control+.');
      const entries = page.locator('.action-widget .monaco-list-row.action');
      await entries.first().waitFor();
      return (await entries.allInnerTexts()).map((text) => text.trim());
    },
    /** Chooses an entry of the open quick-fix menu by its title, with the arrow keys: the menu shields it from clicks. */
    async chooseFix(title) {
      const entries = page.locator('.action-widget .monaco-list-row.action');
      const focused = page.locator('.action-widget .monaco-list-row.action.focused', { hasText: title });
      await entries.filter({ hasText: title }).first().waitFor();
      for (let step = await entries.count(); await focused.count() === 0; step--) {
        if (step === 0) throw new Error(`"${title}" could not be reached in the quick-fix menu.`);
        await page.keyboard.press('ArrowDown');
      }
      await page.keyboard.press('Enter');
      await page.locator('.action-widget').waitFor({ state: 'hidden' });
    },
    /** The document inside a webview: two frames deep. Give the text or selector that it should hold. */
    async webview(selector = 'body', index = 0) {
      const inner = page.frameLocator('iframe.webview.ready').nth(index).frameLocator('iframe#active-frame');
      await inner.locator(selector).first().waitFor();
      return inner;
    },
  };
}
