/** Words of another boat: its name, its fuel, its rig, its engines, its hull number. */
import { ofKind, siOf, wordOf, type SurveyRecord } from '../../record/model.js';
import { proseOf, spanIn, type ProseEntry } from '../../record/prose-entries.js';
import { bareHullNumber, decodeHullNumber } from '../../trade/hull-number.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { isDenied } from '../wording/sentences.js';

/** A name after what a boat is called by, in capitals or in quotation: M/V Sanderling, the yacht “Sanderling”. */
const prefixed = /\b(?:M\/?V|M\/?Y|S\/?V|S\/?Y|MV|MY|SV|SY)\.?\s+["“‘']?(\p{Lu}[\p{L}\p{M}’'-]*(?:\s+\p{Lu}[\p{L}\p{M}’'-]*){0,3})/gu;
const quoted = /\b(?:vessel|yacht|boat|sloop|ketch|cutter|schooner|trawler|launch|catamaran|trimaran|houseboat|cruiser)\s+(?:named\s+|called\s+)?(?:\\"|[“‘«])(\p{Lu}[^"“”‘’«»\\]{1,40})(?:\\"|[”’»])/gu;

const gasolineWords = /\b(?:gasoline|petrol|spark[- ]?plugs?|carburet(?:or|ors|tor|tors)|ignition coils?|flame arrest(?:er|or)s?|distributor cap)\b/giu;
const dieselWords = /\b(?:diesel|injectors?|glow[- ]?plugs?|injection pump|lift pump)\b/giu;
const rigWords = /\b(?:mainsail|headsail|genoa|jib|spinnaker|standing rigging|shrouds?|forestay|backstay|chainplates?|mast step|main ?mast|boom vang|spreaders?)\b/giu;
const twinWords = /\b(?:both (?:main )?engines|twin (?:main )?engines|(?:port|starboard) (?:main )?engine|both propellers|twin screws?)\b/giu;
const singleWords = /\b(?:the (?:single|only) (?:main )?engine|single[- ]screw)\b/giu;

const withoutRig: ReadonlySet<string> = new Set(['motor-yacht', 'houseboat', 'rigid-inflatable', 'aluminum-workboat', 'gasoline-cruiser']);

export const otherBoatLeftIn = defineCheck({
    id: 'other-boat-left-in',
    group: 'record',
    severity: 'error',
    isOfReport: true,
    title: 'Words of another boat',
    why: 'Text carried over from the last report makes the reader doubt that this boat was looked at.',
    needs: ['vessel: name, type, fuel, engines, hull-number', 'components', 'prose'],
    computes: 'In prose: the name of a vessel (after M/V, S/Y, or in quotation after yacht, vessel and the like) that is not hers nor a comparable’s; words of gasoline on a boat with none and of diesel on a boat with none; words of sailing rig on a craft without one; both or port and starboard engines on a single-screw boat, and the single engine on a twin; a hull number that is not hers.',
    sources: [{ text: 'text from another vessel', provenance: 'practice' }],
    limits: ['A bare name in running text is not told from any other word.', 'Denials (no gasoline is aboard) are not read; comparables, tenders and earlier reports are left alone.', 'English only.'],
    examples: [{
        name: 'gasoline words on a diesel boat',
        bad: 'vessel "Marram" { fuel: diesel }\nmain-engine ENG1 {\n    fuel: diesel\n    note "The spark plugs were clean."\n}\n',
        fixed: 'vessel "Marram" { fuel: diesel }\nmain-engine ENG1 {\n    fuel: diesel\n    note "The injectors were dry outside."\n}\n',
    }, {
        name: 'the last boat’s name',
        bad: 'vessel "Marram" {\n    note "M/V Sanderling lay afloat at her berth."\n}\n',
        fixed: 'vessel "Marram" {\n    note "M/V Marram lay afloat at her berth."\n}\n',
        correction: 'Change to Marram',
    }, {
        name: 'a rig on a motor yacht',
        bad: 'vessel "Marram" {\n    type: motor-yacht\n    note "The standing rigging was seen from deck."\n}\n',
        fixed: 'vessel "Marram" {\n    type: sailing-yacht\n    note "The standing rigging was seen from deck."\n}\n',
    }, {
        name: 'two engines on a single-screw boat',
        bad: 'vessel "Marram" {\n    engines: 1\n    note "Both engines started at once."\n}\n',
        fixed: 'vessel "Marram" {\n    engines: 1\n    note "The engine started at once."\n}\n',
    }],
    silent: [
        { name: 'a gasoline outboard on the tender', text: 'vessel "Marram" {\n    fuel: diesel\n    note "A can of gasoline for the outboard stood in the locker."\n}\noutboard OB1 { fuel: gasoline }\n' },
        { name: 'denied', text: 'vessel "Marram" {\n    fuel: diesel\n    note "There is no gasoline aboard."\n}\n' },
        { name: 'a comparable by name', text: 'vessel "Marram" {}\nvaluation "Value" {\n    remarks: "The yacht “Sanderling” was sold with her tender."\n    comparable C1 "Sanderling" {}\n}\n' },
        { name: 'masthead light on a motor yacht', text: 'vessel "Marram" {\n    type: motor-yacht\n    note "The masthead light worked."\n}\n' },
        { name: 'a motor yacht with a riding sail, its shroud recorded', text: 'vessel "Marram" {\n    type: motor-yacht\n    note "The shrouds of the riding sail were seen."\n}\nshroud S1\n' },
        { name: 'a diesel heater on a gasoline boat', text: 'vessel "Marram" {\n    fuel: gasoline\n    note "The diesel tank of the heater was full."\n}\nheater H1 { fuel: diesel }\n' },
        { name: 'port engine of two', text: 'vessel "Marram" {\n    engines: 2\n    note "The port engine started at once."\n}\n' },
    ],
    run(record, raise) {
        const tellers = tellersOf(record);
        const known = knownNames(record);
        const numbers = hullNumbersOf(record);
        for (const entry of proseOf(record)) {
            if (entry.property === 'follows' || entry.owner.type === 'comparable' || (entry.owner.type === 'valuation' && entry.property !== 'remarks')) {
                continue;
            }
            names(record, known, entry, raise);
            hullNumbers(record, numbers, entry, raise);
            for (const { pattern, says } of tellers) {
                for (const match of entry.said.matchAll(pattern)) {
                    if (!isDenied(entry.said, match.index)) {
                        raise({
                            components: [], ...ofFinding(entry), at: spanIn(entry, match.index, match[0].length),
                            message: `“${match[0]}” ${says} The words may be another boat’s; clear them, or correct the record.`,
                        });
                    }
                }
            }
        }
    },
});

const ofFinding = ({ owner }: ProseEntry) => owner.type === 'finding' ? { finding: owner.finding } : {};

interface Teller {
    readonly pattern: RegExp;
    readonly says: string;
}

/** Words that do not belong to this boat, by what the record knows of her. */
function tellersOf(record: SurveyRecord): Teller[] {
    const { vessel } = record;
    if (!vessel) {
        return [];
    }
    const tellers: Teller[] = [];
    const fuel = wordOf(vessel, 'fuel');
    const fuels = new Set([...record.components.values()].map(component => wordOf(component, 'fuel')));
    const hasTenderEngine = ofKind(record, 'outboard').some(engine => wordOf(engine, 'fuel') === undefined) || ofKind(record, 'generator').some(engine => wordOf(engine, 'fuel') === undefined);
    if (fuel !== undefined && fuel !== 'gasoline' && !fuels.has('gasoline') && !hasTenderEngine) {
        tellers.push({ pattern: gasolineWords, says: `is of gasoline, and nothing aboard is recorded to burn it (the vessel’s fuel is ${fuel}).` });
    }
    if (fuel !== undefined && fuel !== 'diesel' && !fuels.has('diesel')) {
        tellers.push({ pattern: dieselWords, says: `is of diesel, and nothing aboard is recorded to burn it (the vessel’s fuel is ${fuel}).` });
    }
    const type = wordOf(vessel, 'type');
    const hasRig = [...record.components.values()].some(component => record.vocabulary.kinds.get(component.kind)?.vesselPart === 'rig');
    if (type !== undefined && withoutRig.has(type) && !hasRig) {
        tellers.push({ pattern: rigWords, says: `is of a sailing rig, and this ${type.replaceAll('-', ' ')} has none recorded.` });
    }
    const engines = siOf(vessel, 'engines');
    if (engines === 1 && ofKind(record, 'main-engine').length < 2) {
        tellers.push({ pattern: twinWords, says: 'is of two engines, and she has one.' });
    } else if (engines === 2) {
        tellers.push({ pattern: singleWords, says: 'is of one engine, and she has two.' });
    }
    return tellers;
}

const plain = (name: string) => name.normalize('NFC').toLocaleLowerCase('en').replace(/[^\p{L}\p{N}]+/gu, ' ').trim();

/** Names that may stand in her report: hers, those of the comparables, her tender's. */
function knownNames(record: SurveyRecord): ReadonlySet<string> {
    return new Set([record.vessel?.name ?? '', ...record.valuations.flatMap(valuation => valuation.comparables.flatMap(comparable => [comparable.title ?? '', comparable.id])),
        ...ofKind(record, 'tender').map(tender => tender.title ?? '')].map(plain));
}

function names(record: SurveyRecord, known: ReadonlySet<string>, entry: ProseEntry, raise: (problem: Raised) => void): void {
    const { vessel } = record;
    if (!vessel || vessel.name.trim() === '') {
        return;
    }
    for (const match of [...entry.raw.matchAll(prefixed), ...entry.raw.matchAll(quoted)]) {
        const name = match[1]?.trim() ?? '';
        const isKnown = [...known].some(other => other !== '' && (plain(name) === other || plain(name).startsWith(`${other} `) || other.startsWith(`${plain(name)} `)));
        const before = entry.raw.slice(Math.max(0, match.index - 60), match.index);
        if (name === '' || isKnown || /\b(?:ex|formerly|former(?: name)?|sister(?:ship)?|collided with|struck by|alongside|lying next to)\b[^.;]*$/iu.test(before)) {
            continue;
        }
        const index = match.index + match[0].indexOf(name);
        const at = spanIn(entry, index, name.length);
        const corrections: Correction[] = entry.isWritten ? [{ kind: 'replace-text', title: `Change to ${vessel.name}`, span: at, text: vessel.name }] : [];
        raise({ components: [], ...ofFinding(entry), at, corrections, message: `“${name}” is named here, and this vessel is “${vessel.name}”. The words may be another boat’s; change the name, or say what the other has to do with her.` });
    }
}

/** Hull numbers recorded of her and of what she carries. */
function hullNumbersOf({ vessel, components }: SurveyRecord): readonly string[] {
    return [vessel?.facts.get('hull-number'), ...[...components.values()].map(component => component.facts.get('hull-number'))]
        .flatMap(fact => fact?.values ?? []).flatMap(value => value.type === 'text' ? [bareHullNumber(value.prose.text)] : []);
}

function hullNumbers({ vessel }: SurveyRecord, recorded: readonly string[], entry: ProseEntry, raise: (problem: Raised) => void): void {
    if (!vessel?.facts.has('hull-number') || entry.property === 'hull-number') {
        return;
    }
    for (const match of entry.said.matchAll(/(?<![\p{L}\p{N}-])(?:US-)?[A-Z]{3}[A-Z0-9]{9}(?![\p{L}\p{N}])/gu)) {
        const bare = bareHullNumber(match[0]);
        if (!recorded.includes(bare) && decodeHullNumber(bare).ok && /\d/.test(bare)) {
            raise({
                components: [], ...ofFinding(entry), at: spanIn(entry, match.index, match[0].length),
                message: `The hull number ${match[0]} is not this vessel’s, which is recorded as ${recorded[0] ?? ''}. The words may be another boat’s; read the number again.`,
            });
        }
    }
}
