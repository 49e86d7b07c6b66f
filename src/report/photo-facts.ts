/**
 * What the picture files themselves tell the checks: whether they are there, and when and where the camera took them. Only the
 * head of a file is read, and an unchanged file not again.
 */
import type { PhotoFacts, SurveyRecord } from '../record/model.js';
import { photoAddresses, photosOf, type PhotoSource } from './assemble.js';
import { readExif } from './photo-exif.js';

/** Facts by address and stamp, for as long as the host lives. */
const known = new Map<string, { readonly stamp: string; readonly facts: PhotoFacts }>();

async function factsAt(address: string, source: PhotoSource): Promise<PhotoFacts | undefined> {
    const stamp = await source.stamp?.(address);
    const kept = known.get(address);
    if (stamp !== undefined && kept?.stamp === stamp) {
        return kept.facts;
    }
    const head = await (source.head ?? source.read)(address);
    if (!head) {
        return undefined;
    }
    const { taken, position } = await readExif(head);
    // "2026-10-06 14:05:00 +02:00": the camera's own clock, without its zone.
    const facts: PhotoFacts = { ...(taken === undefined ? {} : { taken: taken.slice(0, 19).replace(' ', 'T') }), ...(position ? { position } : {}) };
    if (stamp !== undefined) {
        known.set(address, { stamp, facts });
    }
    return facts;
}

/** Facts of every photograph a record names, by path as written. */
export async function readPhotoFacts(record: SurveyRecord, source: PhotoSource): Promise<Map<string, PhotoFacts>> {
    const facts = new Map<string, PhotoFacts>();
    for (const { file } of photosOf(record)) {
        if (facts.has(file)) {
            continue;
        }
        let found: PhotoFacts | undefined;
        for (const address of photoAddresses(file, record)) {
            found ??= await factsAt(address, source);
        }
        facts.set(file, found ?? { isMissing: true });
    }
    return facts;
}
