// Finds a Chromium to run headless, and on Debian as root installs one when there is none.
import { execFileSync, spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { pathToFileURL } from 'node:url';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome'];
const LOCK_WAIT_MS = 5 * 60_000;

/** Arguments that suit a headless Chromium used for tests. Any host but this machine's own fails to resolve. */
export const CHROMIUM_ARGS = [
  '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
  '--disable-component-update', '--disable-sync',
  '--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1 , EXCLUDE localhost',
];

/** What Playwright is to launch it with. Signals are left to the script, which has more than a browser to stop. */
export function launchOptions(executablePath) {
  return { executablePath, headless: true, args: CHROMIUM_ARGS, handleSIGINT: false, handleSIGTERM: false, handleSIGHUP: false };
}

/** The path of an executable Chromium; throws a plain message when none can be had. */
export async function findChromium() {
  const chosen = process.env.GARBOARD_CHROMIUM;
  if (chosen) {
    if (!isExecutable(chosen)) throw new Error(`GARBOARD_CHROMIUM names ${chosen}, which is not an executable file.`);
    return chosen;
  }
  const found = onPath();
  if (found) return found;
  if (!isDebianRoot()) throw new Error(howToInstall());
  await installOnDebian();
  const installed = onPath();
  if (!installed) throw new Error(`Chromium was installed, but it is not on the PATH. ${howToInstall()}`);
  return installed;
}

function onPath() {
  for (const name of NAMES) {
    for (const folder of (process.env.PATH ?? '').split(delimiter)) {
      const candidate = join(folder, name);
      if (folder && isExecutable(candidate)) return candidate;
    }
  }
  return undefined;
}

function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

function isDebianRoot() {
  return process.platform === 'linux' && process.getuid?.() === 0 && existsSync('/etc/debian_version')
    && spawnSync('apt-get', ['--version'], { stdio: 'ignore' }).status === 0;
}

async function installOnDebian() {
  console.log('No Chromium found: installing it with apt-get update && apt-get install -y chromium.');
  const until = Date.now() + LOCK_WAIT_MS;
  for (const args of [['update'], ['install', '-y', 'chromium']]) {
    for (;;) {
      const { status, output } = apt(args);
      if (onPath()) return; // another process may have installed it meanwhile
      if (status === 0) break;
      const locked = /Could not get lock|Unable to acquire|Unable to lock|dpkg was interrupted/i.test(output);
      if (!locked || Date.now() > until) {
        throw new Error(`apt-get ${args.join(' ')} failed:\n${tail(output)}\n${howToInstall()}`);
      }
      console.log('Another package installation holds the lock; trying again in 5 seconds.');
      await sleep(5_000);
    }
  }
}

function apt(args) {
  try {
    const output = execFileSync('apt-get', args, {
      encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'], maxBuffer: 64 * 1024 * 1024,
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive', LC_ALL: 'C' },
    });
    return { status: 0, output };
  } catch (error) {
    return { status: error.status ?? 1, output: `${error.stdout ?? ''}${error.stderr ?? ''}${error.message}` };
  }
}

function tail(text) {
  return text.trim().split('\n').slice(-8).join('\n');
}

function howToInstall() {
  return 'A Chromium is needed to run the editor tests. Install one (on Debian or Ubuntu: sudo apt-get install chromium; '
    + 'elsewhere: Google Chrome or Chromium from its maker), or set GARBOARD_CHROMIUM to the path of its executable.';
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  try {
    console.log(await findChromium());
  } catch (error) {
    console.error(error.message);
    process.exitCode = 1;
  }
}
