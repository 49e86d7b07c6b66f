// Programs that tests need: found on the PATH, or installed where this is Debian and we are root.
import { execFileSync, spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';

const LOCK_WAIT_MS = 5 * 60_000;

/** The first of the programs that is on the PATH. */
export function onPath(names) {
  for (const name of names) {
    for (const folder of (process.env.PATH ?? '').split(delimiter)) {
      const candidate = join(folder, name);
      if (folder && isExecutable(candidate)) return candidate;
    }
  }
  return undefined;
}

export function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/** Whether packages can be installed here. */
export function isDebianRoot() {
  return process.platform === 'linux' && process.getuid?.() === 0 && existsSync('/etc/debian_version')
    && spawnSync('apt-get', ['--version'], { stdio: 'ignore' }).status === 0;
}

/** Installs packages by apt-get, whose options may stand among them; another installation that holds the lock is waited for. */
export async function installOnDebian(packages, names, howToInstall) {
  console.log(`No ${names[0]} found: installing it with apt-get update && apt-get install -y ${packages.join(' ')}.`);
  const until = Date.now() + LOCK_WAIT_MS;
  for (const args of [['update'], ['install', '-y', ...packages]]) {
    for (;;) {
      const { status, output } = apt(args);
      if (onPath(names)) return; // another process may have installed it meanwhile
      if (status === 0) break;
      const locked = /Could not get lock|Unable to acquire|Unable to lock|dpkg was interrupted/i.test(output);
      if (!locked || Date.now() > until) {
        throw new Error(`apt-get ${args.join(' ')} failed:\n${tail(output)}\n${howToInstall}`);
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
