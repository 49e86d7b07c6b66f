/** A photograph under two findings, with the wrong side in its caption, or whose file is not there. */
import { nameOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { photosOf, type NamedPhoto } from './photos-named.js';

const other = { port: 'starboard', starboard: 'port' } as const;

export const photoLooseOrWrongSide = defineCheck({
    id: 'photo-loose-or-wrong-side',
    group: 'record',
    severity: 'warning',
    isOfReport: true,
    title: 'Photograph in the wrong place',
    why: 'Port taken for starboard sends the yard to the wrong side; one picture for two faults proves neither.',
    needs: ['photographs and their captions', 'component: side', 'the picture files, for those that are missing'],
    computes: 'One file under two findings that share no component; port in the caption of a picture of a component on the starboard side, and the other way about; a file that is not there (an error); and, as a hint, a hull number without a photograph.',
    sources: [{ text: 'port taken for starboard', provenance: 'practice' }],
    limits: ['Pictures in the folder that no fact names are not seen.', 'A caption that names both sides is silent.', 'Whether the picture shows what its caption says is for the eye.'],
    examples: [{
        name: 'port in the caption, starboard in the record',
        bad: 'shroud S1 "Cap shroud" {\n    side: starboard\n    photo "photos/1.jpg" "Lower end of the port cap shroud"\n}\n',
        fixed: 'shroud S1 "Cap shroud" {\n    side: starboard\n    photo "photos/1.jpg" "Lower end of the starboard cap shroud"\n}\n',
        correction: 'Change to starboard',
    }, {
        name: 'one picture for two faults',
        bad: two('photos/1.jpg'),
        fixed: two('photos/2.jpg'),
    }, {
        name: 'the file is not there',
        bad: 'shroud S1 {\n    photo "photos/9.jpg" "Cap shroud"\n}\n',
        fixed: 'shroud S1 {\n    note "Cap shroud"\n}\n',
        photos: { 'photos/9.jpg': { isMissing: true } },
    }],
    silent: [
        { name: 'both sides named', text: 'shroud S1 {\n    side: starboard\n    photo "photos/1.jpg" "Port and starboard cap shrouds"\n}\n' },
        { name: 'a port that is a harbor or a portlight', text: 'shroud S1 {\n    side: starboard\n    photo "photos/1.jpg" "Cap shroud and portlight, in the port of Skarvik"\n}\n' },
        { name: 'one picture for two findings on one thing', text: 'hose H1\nfinding F1 "Chafe" on H1 {\n    urgency: in-upkeep\n    seen: "It rubs."\n    because: "It wears."\n    recommend: "Lead it clear."\n    photo "photos/1.jpg" "Hose"\n}\nfinding F2 "Clip gone" on H1 {\n    urgency: in-upkeep\n    seen: "It hangs."\n    because: "It wears."\n    recommend: "Clip it."\n    photo "photos/1.jpg" "Hose"\n}\n' },
        { name: 'the file is there', text: 'shroud S1 {\n    photo "photos/1.jpg" "Cap shroud"\n}\n', photos: { 'photos/1.jpg': { taken: '2026-10-06T10:00:00' } } },
    ],
    run(record, raise) {
        const named = photosOf(record);
        const missing = new Set<string>();
        for (const each of named) {
            const { photo } = each;
            if (record.photoFacts.get(photo.file)?.isMissing && !missing.has(photo.file)) {
                missing.add(photo.file);
                raise({ components: [], at: photo.span, severity: 'error', message: `${photo.file} is not there. The report would come out with a gap; put the file where the survey names it, or correct the name.` });
            }
            wrongSide(each, raise);
        }
        sharedByFindings(named, raise);
        hullNumber(record, named, raise);
    },
});

/** A side of the boat in words: not a harbor, a portlight or a wine, nor where the picture was taken from. */
const sideWords = {
    port: /(?<!\b(?:home|hailing|sea|in|fuel|charging|charge|exhaust|intake|inlet|inspection|access|deck|serial|data|gun|of|test|drain|valve|any|next|last)\s+)(?<!\b(?:look(?:ing)?|seen|view(?:ed)?|taken|photographed|facing)\s+(?:from|to|toward|towards)\s+(?:the\s+)?)\b(?:port|p\/s)\b(?!\s+(?:of|authority|light|hole|lid|office|captain|call|\d)\b)/iu,
    starboard: /(?<!\b(?:look(?:ing)?|seen|view(?:ed)?|taken|photographed|facing)\s+(?:from|to|toward|towards)\s+(?:the\s+)?)\b(?:starboard|stbd|stb|s\/b)\b/iu,
} as const;
const partOfBoat = /^(?:side|bow|quarter|engine|shaft|propeller|hull|deck|tank|cap|lower|upper|shroud|chainplate|rudder|forward|aft|main|fuel|water|battery|bilge|cockpit|transom|strut|anode|seacock|valve|after|outer|inner|inboard|outboard|navigation|running|light|and|&)$/iu;

function sidesIn(text: string): ('port' | 'starboard')[] {
    const found: ('port' | 'starboard')[] = [];
    if (sideWords.starboard.test(text)) {
        found.push('starboard');
    }
    const port = sideWords.port.exec(text);
    // "Port Townsend yard": a capital after it, in a caption that is not all in capitals, names a place.
    const next = port ? /^\s+(\p{Lu}\p{Ll}+)/u.exec(text.slice(port.index + port[0].length))?.[1] : undefined;
    const isPlace = port?.[0] === 'Port' && next !== undefined && !partOfBoat.test(next);
    if (port && !isPlace) {
        found.push('port');
    }
    return found;
}

function wrongSide({ photo, of }: NamedPhoto, raise: (problem: Raised) => void): void {
    const caption = photo.caption;
    const [named, ...more] = caption ? sidesIn(caption.text) : [];
    const sides = new Set(of.map(component => wordOf(component, 'side')));
    if (!caption || named === undefined || more.length > 0 || sides.size !== 1 || !sides.has(other[named])) {
        return;
    }
    const index = caption.raw?.search(sideWords[named]) ?? -1;
    const written = index < 0 ? '' : /^[a-z/]+/iu.exec(caption.raw?.slice(index) ?? '')?.[0] ?? '';
    const at = caption.span && index >= 0 ? { ...caption.span, start: caption.span.start + index, end: caption.span.start + index + written.length } : photo.span;
    const component = of[0] as Component; // One side is known, so there is a component that has it.
    const corrections: Correction[] = [
        ...(index >= 0 ? [{ kind: 'replace-text' as const, title: `Change to ${other[named]}`, span: at, text: /^[A-Z]/.test(written) ? other[named].replace(/^./, c => c.toUpperCase()) : other[named] }] : []),
        { kind: 'set-fact', title: `Record ${component.id} on the ${named} side`, component, property: 'side', value: named },
    ];
    raise({
        components: [], at,
        message: `The caption says ${named}, and ${nameOf(component)} is recorded on the ${other[named]} side. The yard would go to the wrong side; correct one of the two.`,
        corrections,
        related: [{ message: `${component.id} is on the ${other[named]} side`, span: component.facts.get('side')?.span ?? component.idSpan }],
    });
}

function sharedByFindings(named: readonly NamedPhoto[], raise: (problem: Raised) => void): void {
    const first = new Map<string, NamedPhoto>();
    for (const each of named) {
        if (!each.finding) {
            continue;
        }
        const earlier = first.get(each.photo.file);
        if (!earlier) {
            first.set(each.photo.file, each);
        } else if (earlier.finding && earlier.finding !== each.finding && !earlier.of.some(component => each.of.includes(component))) {
            raise({
                components: [], finding: each.finding, at: each.photo.span,
                message: `${each.photo.file} stands under ${earlier.finding.id} and under ${each.finding.id}, which are about different things. One of the two shows the wrong picture; name the right one.`,
                related: [{ message: `Under ${earlier.finding.id}`, span: earlier.photo.span }],
            });
        }
    }
}

function hullNumber({ vessel, survey }: SurveyRecord, named: readonly NamedPhoto[], raise: (problem: Raised) => void): void {
    const fact = vessel?.facts.get('hull-number');
    if (fact && survey && named.length > 0 && !named.some(({ photo }) => /\bhull (?:identification )?number\b|\bHIN\b/iu.test(photo.caption?.text ?? ''))) {
        raise({ components: [], at: fact.span, severity: 'hint', message: 'No photograph shows the hull number; one settles later what was read.' });
    }
}

function two(file: string): string {
    const finding = (id: string, on: string, photo: string) => `finding ${id} "Chafe" on ${on} {\n    urgency: in-upkeep\n    seen: "It rubs."\n    because: "It wears."\n    recommend: "Lead it clear."\n    photo "${photo}" "Hose"\n}\n`;
    return `hose H1\nhose H2\n${finding('F1', 'H1', 'photos/1.jpg')}${finding('F2', 'H2', file)}`;
}
