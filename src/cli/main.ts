/** `garboard check | report | issue | verify | explain`: the same engine as the editor, for terminals and a firm's CI. */
import { parseArguments, usage } from './arguments.js';
import { check } from './check.js';
import { explain } from './explain.js';
import { issue } from './issue.js';
import { isStop, stoppedStatus } from './progress.js';
import { report } from './report.js';
import { verify } from './verify.js';

async function main(words: readonly string[]): Promise<number> {
    const parsed = parseArguments(words);
    if ('fault' in parsed) {
        process.stderr.write(`garboard: ${parsed.fault}\n\n${usage}`);
        return 2;
    }
    switch (parsed.command) {
        case 'help':
            process.stdout.write(usage);
            return 0;
        case 'check':
            return check(parsed);
        case 'report':
            return report(parsed);
        case 'issue':
            return issue(parsed);
        case 'verify':
            return verify(parsed);
        case 'explain':
            return explain(parsed);
    }
}

main(process.argv.slice(2)).then(code => { process.exitCode = code; }, (error: unknown) => {
    if (isStop(error)) {
        // Ends here: winding down by itself, the program would give up listening for signals first, and one more of them would be its end.
        process.stderr.write('garboard: stopped, nothing is written.\n', () => process.exit(stoppedStatus));
        return;
    }
    process.stderr.write(`garboard: ${error instanceof Error ? error.message : String(error)}\n`);
    process.exitCode = 2;
});
