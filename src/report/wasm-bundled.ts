/** The codec's modules as a bundle carries them (esbuild, loader `binary` for .wasm). Only for bundled hosts. */
import type { WasmName } from './wasm-codec.js';

/** The package's own types describe the module's exports, not what a bundle puts in its place. */
interface Bundled {
    readonly default: Uint8Array;
}

export async function bundledWasm(name: WasmName): Promise<Uint8Array> {
    switch (name) {
        case 'jpeg-decoder': return (await import('@jsquash/jpeg/codec/dec/mozjpeg_dec.wasm')).default;
        case 'jpeg-encoder': return (await import('@jsquash/jpeg/codec/enc/mozjpeg_enc.wasm')).default;
        case 'png-decoder': return (await import('@jsquash/png/codec/pkg/squoosh_png_bg.wasm') as unknown as Bundled).default;
        case 'webp-decoder': return (await import('@jsquash/webp/codec/dec/webp_dec.wasm')).default;
    }
}
