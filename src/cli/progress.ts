/** What goes on, on standard error: one line that is written over on a terminal, plain lines elsewhere where they are asked for. */
import { basename } from 'node:path';
import { stepText, type FormStep } from '../host/forms.js';

export interface ProgressLine {
    show(step: FormStep): void;
    /** Takes the line away, so that what is said next stands alone. */
    clear(): void;
}

/** Sequence that erases the line from the cursor on. */
const eraseLine = '\r\u001b[K';
/** Plain lines tell photographs by tens: a log of 400 lines helps nobody. */
const plainEvery = 10;

export function progressLine(file: string, verbose: boolean, stream: NodeJS.WriteStream = process.stderr): ProgressLine {
    const lead = `${basename(file)}: `;
    if (stream.isTTY) {
        return {
            show: step => { stream.write(`${eraseLine}${`${lead}${stepText(step)}…`.slice(0, Math.max(20, stream.columns ?? 80) - 1)}`); },
            clear: () => { stream.write(eraseLine); },
        };
    }
    return {
        show: step => {
            if (verbose && (step.at !== 'photos' || step.done % plainEvery === 0 || step.done === step.total)) {
                stream.write(`${lead}${stepText(step)}\n`);
            }
        },
        clear: () => undefined,
    };
}

/** Exit status of a program stopped by Ctrl+C. */
export const stoppedStatus = 130;

export const isStop = (error: unknown): boolean => error instanceof Error && error.name === 'AbortError';

/** Runs with a signal that Ctrl+C, or a request to end, gives; a second Ctrl+C ends the program as it would without. */
export async function stoppable<T>(run: (signal: AbortSignal) => Promise<T>): Promise<T> {
    const stop = new AbortController();
    const stopped = () => stop.abort();
    process.once('SIGINT', stopped).once('SIGTERM', stopped);
    try {
        return await run(stop.signal);
    } finally {
        process.off('SIGINT', stopped).off('SIGTERM', stopped);
    }
}
