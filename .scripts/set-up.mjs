// What a fresh clone lacks: dependencies and the built command. Uses nothing but Node.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = dirname(dirname(fileURLToPath(import.meta.url)));

export function run(command, args, options = {}) {
    const result = spawnSync(command, args, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32', ...options });
    if (result.error) {
        throw new Error(`${command} could not be started: ${result.error.message}`);
    }
    return result.status ?? 1;
}

export function ensureDependencies() {
    const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
    if (major < 20 || (major === 20 && minor < 10)) {
        console.error(`Garboard needs Node 20.10 or later; this is ${process.versions.node}.`);
        process.exit(2);
    }
    const marker = join(root, 'node_modules', '.package-lock.json');
    const lock = join(root, 'package-lock.json');
    if (existsSync(marker) && statSync(marker).mtimeMs >= statSync(lock).mtimeMs) {
        return;
    }
    console.error('Installing dependencies (once) …');
    // Some test tools fetch things in their install scripts; none of them is needed here.
    if (run('npm', ['ci', '--ignore-scripts', '--no-audit', '--no-fund', '--loglevel=error'], { stdio: ['ignore', 2, 2] }) !== 0) {
        console.error('npm ci failed; the lines above say why.');
        process.exit(2);
    }
}

function newest(folder) {
    return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
        .filter(entry => entry.isFile()).reduce((time, entry) => Math.max(time, statSync(join(entry.parentPath ?? entry.path, entry.name)).mtimeMs), 0);
}

export async function ensureBuilt() {
    const built = join(root, 'dist', 'cli.cjs');
    if (existsSync(built) && statSync(built).mtimeMs > Math.max(newest('src'), newest('grammar'))) {
        return;
    }
    console.error('Building …');
    const { buildAll } = await import('./build.mjs');
    await buildAll();
}
