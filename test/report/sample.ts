/** A small survey with something in every section, read through the language itself, and ways to draw its report. */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { analyseText } from '../../src/checks/survey.js';
import type { Analysis } from '../../src/checks/analyse.js';
import { computedFacts } from '../../src/record/computed.js';
import { photosOf } from '../../src/report/assemble.js';
import type { EmbeddedPhoto } from '../../src/report/photos.js';
import { renderReport, type ReportInput } from '../../src/report/report.js';
import { createWasmCodec, type WasmName } from '../../src/report/wasm-codec.js';

export const sampleText = `
firm "Alder and Rowe, Surveyors" { address: "2 Quay Lane"  telephone: "555 0100" }
person A-Rowe "Ada Rowe" { role: "Surveyor"  credentials: "Surveying since 2001" }
phrase renew-hose "Renew {hose} by one marked for {mark}."

survey "AR-77" pre-purchase {
    client: "B. Lindqvist"
    requested-for: "the buyer"
    purpose: "To tell the buyer what she is"
    surveyor: A-Rowe
    issued: 2026-01-30
    present: "The owner"
    weather: "Dry"
    limits: "The engine could not be run."
    attended 2026-01-20 ashore "North yard, in a shed"
    unseen "Inside of the keel": "it is encapsulated"
    absent "Gas": "none is fitted"
}

vessel "Heron" {
    type: sailing-yacht
    hull-number: "XQZ12045K989"
    length-overall: 31 ft
    draft: 5 ft 9 in
    displacement: 24000 lb
    hull-material: grp
    built: 1989
    particulars: "As stated by the owner"
    photo "photos/heron.jpg" "{vessel.name} ashore"
    note "Seen dry."
}

system skin "Through-hulls and sea valves" {
    through-hull TH1 "Sink drain" { size: 1-1/2 in  metal: bronze  below-waterline: 6 in  in-use: yes }
    seacock SV1 "Sink seacock" { size: 1-1/2 in  spigot: 32 mm  tail-length: 60 mm  metal: bronze  pattern: flanged-seacock  flanged: yes  works: free }
    hose H1 "Sink hose" {
        bore: 38 mm  length: 0.7 m  reinforcement: wire  class: water  made: 2022-09  condition: sound
        clamps: 2  clamp-type: worm  clamp-material: stainless-316  clamp-condition: sound
        photo "photos/hose.jpg" "Hose at the seacock"
    }
    sink SK1 "Galley sink" { rim-above-waterline: 16 in  port: 38 mm  condition: not-proved  remarks: "No water aboard" }
    run R1 "Sink drain" { service: sink-drain }: TH1 -> SV1 -> { clamps: 2 } H1 -> SK1

    finding F1 "Sink hose larger than its tail" on H1, SV1 {
        answers:   hose-and-spigot-differ
        urgency:   before-launch
        seen:      "The hose of {H1.bore} sits on a tail of {SV1.spigot}, of {SV1.metal}."
        because:   "Were it to come off, {TH1} admits about {TH1.flooding-rate}; she draws {vessel.draft}. {H1.nonsense}"
        recommend: phrase renew-hose(hose: "the hose" mark: "water")
        cites:     "ISO 9093" "4.1", "ABYC E-10" "10.7"
        cost:      90 USD..180 USD
        photo "photos/hose.jpg" "Hose at the seacock"
        photo "photos/tail.jpg" "The tail"
    }
}

system hull "Hull" {
    hull-shell HS1 "Hull shell" { condition: sound  basis: seen }
    reading M1 "Moisture, bottom" on HS1 {
        measures: moisture
        instrument: "Pinless meter"
        taken: 2026-01-20
        columns: "Station 1", "Station 2"
        row "Port": 11, 14
        row "Starboard": 12, 13
    }
    finding F2 "Fenders chafe" on HS1 {
        urgency: within-days 30
        seen: "The fenders chafe."
        because: "They mark the gelcoat."
        recommend: "Hang them otherwise."
    }
}

valuation "Opinion of value" {
    basis: "Between willing parties"
    effective: 2026-01-20
    opinion: 21000 USD
    comparable A "A sister" { sold: 22000 USD  sold-on: 2025-06  source: "Broker"  adjust "Age": -500 USD  adjusted: 21500 USD  weight: 0.6 }
    comparable B "Another" { sold: 20000 USD  source: "Seller"  adjust "Sails": 250 USD  weight: 0.4 }
}
`;

/** A picture of one pixel, to stand for a photograph. */
export const dot = 'data:image/jpeg;base64,/9j/4AAQSkZJRgABAQEAYABgAAD/2wBDAAMCAgICAgMCAgIDAwMDBAYEBAQEBAgGBgUGCQgKCgkICQkKDA8MCgsOCwkJDRENDg8QEBEQCgwSExIQEw8QEBD/yQALCAABAAEBAREA/8wABgAQEAX/2gAIAQEAAD8A0s8g/9k=';

export function inputOf({ record, problems, gaps }: Analysis, changes: Partial<ReportInput> = {}): ReportInput {
    const photos = new Map<string, EmbeddedPhoto>(photosOf(record).map(({ file }) =>
        [file, file.includes('gone') ? { error: `${file}: there is no such file` } : { dataUri: dot, width: 1, height: 1, alt: file, taken: '2026-01-20 10:00:00' }]));
    return { record, problems, gaps, photos, computed: computedFacts(record), mode: 'file', lineOf: span => ({ file: span.uri.split('/').at(-1) ?? '', line: 1 }), ...changes };
}

export const sampleInput = (changes: Partial<ReportInput> = {}, text = sampleText): ReportInput => inputOf(analyseText(text), changes);
export const sampleReport = (changes: Partial<ReportInput> = {}, text = sampleText): string => renderReport(sampleInput(changes, text));

/** The report's text as a reader sees it, blanks as one. */
export const textOf = (html: string): string => html.replace(/<style>[\s\S]*?<\/style>/g, '').replace(/<[^>]*>/g, ' ')
    .replaceAll('&#39;', '\'').replaceAll('&quot;', '"').replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&amp;', '&').replace(/\s+/g, ' ');

const require = createRequire(import.meta.url);
const wasmFiles: Readonly<Record<WasmName, string>> = {
    'jpeg-decoder': '@jsquash/jpeg/codec/dec/mozjpeg_dec.wasm', 'jpeg-encoder': '@jsquash/jpeg/codec/enc/mozjpeg_enc.wasm', 'png-decoder': '@jsquash/png/codec/pkg/squoosh_png_bg.wasm',
    'webp-decoder': '@jsquash/webp/codec/dec/webp_dec.wasm',
};
export const codec = createWasmCodec(name => readFile(require.resolve(wasmFiles[name])));
