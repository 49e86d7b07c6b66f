// `npm run -s garboard -- …`: the built command, built first where it is not. What set-up says goes to standard error.
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureBuilt, ensureDependencies, root } from './set-up.mjs';

ensureDependencies();
await ensureBuilt();
await import(pathToFileURL(join(root, 'dist', 'cli.cjs')).href);
