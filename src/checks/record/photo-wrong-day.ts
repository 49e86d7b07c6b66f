/** A photograph that was taken on another day than the attendances: perhaps of another boat. */
import type { DateFigure, Photo } from '../../record/model.js';
import { defineCheck } from '../contract.js';
import { firstDay, lastDay } from '../hoses/age.js';
import { photosOf } from './photos-named.js';

/** A camera's clock may run on another zone's time. */
const slackMs = 12 * 3_600_000;
/** Said in the caption, it explains the date. */
const fromOthers = /\b(?:supplied|provided|sent|taken|given|courtesy|photo(?:graph)?) (?:by|from|of) (?:the )?(?:owner|seller|broker|yard|client|others|crew|builder|skipper|insurer)|\b(?:owner|seller|broker|yard|builder)['’]s? (?:own )?(?:photo|picture)/iu;

export const photoWrongDay = defineCheck({
    id: 'photo-wrong-day',
    group: 'record',
    severity: 'warning',
    isOfReport: true,
    title: 'Photograph of another day',
    why: 'A picture of another day may be of another boat.',
    needs: ['survey: attended', 'photographs with the time of the camera'],
    computes: 'Time of the camera outside every attendance by more than 12 hours, unless the caption says who supplied it.',
    sources: [{ text: 'another boat’s photograph in the report', provenance: 'practice' }],
    limits: ['It needs the picture files; where they cannot be read it is silent.', 'A camera whose clock is wrong is taken at its word.'],
    examples: [{
        name: 'taken two months before',
        bad: pictured('Rudder'),
        fixed: pictured('Rudder, supplied by the owner'),
        photos: { 'photos/1.jpg': { taken: '2026-08-02T10:00:00' } },
        correction: 'Say that others supplied it',
    }],
    silent: [
        { name: 'in the evening after', text: pictured('Rudder'), photos: { 'photos/1.jpg': { taken: '2026-10-07T11:00:00' } } },
        { name: 'on the day', text: pictured('Rudder'), photos: { 'photos/1.jpg': { taken: '2026-10-06T10:00:00' } } },
        { name: 'no time in the picture', text: pictured('Rudder'), photos: { 'photos/1.jpg': {} } },
        { name: 'supplied by the yard', text: pictured('Rudder stock, photograph by the yard'), photos: { 'photos/1.jpg': { taken: '2026-08-02T10:00:00' } } },
    ],
    run(record, raise) {
        const days = (record.survey?.attendances ?? []).flatMap(attendance => attendance.date ?? []);
        if (days.length === 0) {
            return;
        }
        for (const { photo } of photosOf(record)) {
            const taken = record.photoFacts.get(photo.file)?.taken;
            if (taken !== undefined && !isOnDay(taken, days) && !fromOthers.test(photo.caption?.text ?? '')) {
                raise({
                    components: [], at: photo.span,
                    message: `${photo.file} was taken ${taken.slice(0, 10)} by its camera, and she was attended ${days.map(day => day.written).join(', ')}. It may be of another boat; take it out, or say in its caption who supplied it.`,
                    corrections: captionEnd(photo),
                });
            }
        }
    },
});

function isOnDay(taken: string, days: readonly DateFigure[]): boolean {
    const time = Date.parse(`${taken.replace(/Z$/, '')}Z`);
    return Number.isNaN(time) || days.some(day => time >= firstDay(day) - slackMs && time <= lastDay(day) + 86_400_000 + slackMs);
}

function captionEnd({ caption }: Photo) {
    const span = caption?.span;
    const isClosed = caption?.raw?.endsWith('"') === true && caption.raw.length > 2;
    return span && isClosed ? [{ kind: 'replace-text' as const, title: 'Say that others supplied it', span: { ...span, start: span.end - 1, end: span.end - 1 }, text: ', supplied by the owner' }] : [];
}

function pictured(caption: string): string {
    return `survey "1" pre-purchase {\n    attended 2026-10-06 ashore "Yard"\n}\nrudder RU1 {\n    photo "photos/1.jpg" "${caption}"\n}\n`;
}
