/** Entry of the threads that reduce photographs in WebAssembly: one photograph in, its reduced pictures out. */
import { parentPort } from 'node:worker_threads';
import { bundledWasm } from '../report/wasm-bundled.js';
import { createWasmCodec, reducerWith } from '../report/wasm-codec.js';
import type { WorkerAnswer, WorkerTask } from './photo-workers.js';

const reducer = reducerWith(createWasmCodec(bundledWasm));

parentPort?.on('message', ({ id, bytes, work }: WorkerTask) => {
    reducer.reduce(bytes, work).then(
        (photo): WorkerAnswer => ({ id, photo }),
        (error: unknown): WorkerAnswer => ({ id, error: error instanceof Error ? error.message : String(error) }),
    ).then(answer => parentPort?.postMessage(answer));
});
