/** `garboard explain`: a check in its own words. */
import { allChecks } from '../checks/all-checks.js';
import { checkById } from '../checks/analyse.js';
import { explainCheck } from '../editor/explain.js';
import { nearest } from '../quantities/index.js';
import type { Arguments } from './arguments.js';

export function explain({ check, list }: Extract<Arguments, { command: 'explain' }>): number {
    if (list || check === undefined) {
        const width = Math.max(...allChecks.map(c => c.id.length));
        process.stdout.write(allChecks.map(c => `${c.id.padEnd(width)}  ${c.title}\n`).join(''));
        return 0;
    }
    const found = checkById(check);
    if (!found) {
        const close = nearest(check, allChecks.map(c => c.id));
        process.stderr.write(`garboard: no check is called ${check}.${close ? ` Did you mean ${close}?` : ''} garboard explain --list names them all.\n`);
        return 2;
    }
    process.stdout.write(`${explainCheck(found)}\n`);
    return 0;
}
