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

/**
 * Longest time, in ms, in which a second Ctrl+C is the first one told twice: a terminal tells a whole group of programs, and one that has
 * started this one, as npm does, passes it on.
 */
const sameStopMs = 1000;

/**
 * Runs with a signal that Ctrl+C, or a request to end, gives. One told twice is one stop; a later one ends the program at once, even
 * where it is still clearing up. Once a stop is dealt with, all that follows is let pass: it must not take the message and the status away.
 */
export async function stoppable<T>(run: (signal: AbortSignal) => Promise<T>): Promise<T> {
    const stop = new AbortController();
    let since = 0;
    let isOver = false;
    const leave = () => { process.off('SIGINT', stopped).off('SIGTERM', stopped); };
    const stopped = (name: NodeJS.Signals) => {
        if (!stop.signal.aborted) {
            since = performance.now();
            stop.abort();
        } else if (!isOver && performance.now() - since > sameStopMs) {
            leave();
            process.kill(process.pid, name);
        }
    };
    process.on('SIGINT', stopped).on('SIGTERM', stopped);
    try {
        return await run(stop.signal);
    } finally {
        isOver = true;
        if (!stop.signal.aborted) {
            leave();
        }
    }
}
