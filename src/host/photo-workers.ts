/**
 * The WebAssembly codec on threads of its own, so that a server answers while photographs are reduced. Threads are
 * started when there is work and ended when there has been none for a while: a codec's memory never shrinks.
 */
import { Worker } from 'node:worker_threads';
import type { PhotoReducer, ReducedPhoto, ReducingWork } from '../report/photos.js';
import { wasmFormats } from '../report/wasm-codec.js';

export interface WorkerTask {
    readonly id: number;
    readonly bytes: Uint8Array;
    readonly work: ReducingWork;
}

export type WorkerAnswer = { readonly id: number; readonly photo: ReducedPhoto } | { readonly id: number; readonly error: string };

interface Waiting extends WorkerTask {
    readonly resolve: (photo: ReducedPhoto) => void;
    readonly reject: (error: Error) => void;
}

interface Thread {
    readonly worker: Worker;
    task?: Waiting;
    idle?: NodeJS.Timeout;
}

export interface WorkerOptions {
    /** Path of the bundled worker. */
    readonly script: string;
    readonly threads: number;
    /** How long a thread without work is kept, in milliseconds. */
    readonly idleMs?: number;
}

export function workerReducer({ script, threads: most, idleMs = 10_000 }: WorkerOptions): PhotoReducer {
    const threads = new Set<Thread>();
    const queue: Waiting[] = [];
    let lastId = 0;

    const end = (thread: Thread, why?: Error) => {
        threads.delete(thread);
        clearTimeout(thread.idle);
        thread.task?.reject(why ?? new Error('The thread has ended.'));
        delete thread.task;
        void thread.worker.terminate();
        give();
    };
    const start = (): Thread => {
        const thread: Thread = { worker: new Worker(script) };
        thread.worker.on('message', (answer: WorkerAnswer) => {
            const { task } = thread;
            delete thread.task;
            if ('error' in answer) {
                task?.reject(new Error(answer.error));
            } else {
                task?.resolve(answer.photo);
            }
            thread.worker.unref();
            thread.idle = setTimeout(() => end(thread), idleMs).unref();
            give();
        });
        // Out of memory, or a codec that takes its thread down: the photograph is told, the next one has a new thread.
        thread.worker.on('error', error => end(thread, error instanceof Error ? error : new Error(String(error))));
        thread.worker.on('exit', () => threads.has(thread) && end(thread));
        threads.add(thread);
        return thread;
    };
    const give = () => {
        while (queue.length > 0) {
            const thread = [...threads].find(({ task }) => !task) ?? (threads.size < most ? start() : undefined);
            if (!thread) {
                return;
            }
            const task = queue.shift();
            if (task) {
                clearTimeout(thread.idle);
                thread.task = task;
                thread.worker.ref(); // The process stays while a photograph is being reduced, and no longer.
                thread.worker.postMessage({ id: task.id, bytes: task.bytes, work: task.work } satisfies WorkerTask);
            }
        }
    };
    return {
        id: 'wasm-1',
        reads: format => wasmFormats.has(format),
        reduce: (bytes, work) => new Promise((resolve, reject) => {
            queue.push({ id: ++lastId, bytes, work, resolve, reject });
            give();
        }),
    };
}
