/** Words of another boat: its name, its fuel, its rig, its engines, its hull number. */
import { ofKind, siOf, wordOf, type SurveyRecord } from '../../record/model.js';
import { proseOf, spanIn, type ProseEntry } from '../../record/prose-entries.js';
import { bareHullNumber, decodeHullNumber } from '../../trade/hull-number.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { isDenied, sentencesOf, spaced } from '../wording/sentences.js';

/** A name after what a boat is called by, in capitals or in quotation: M/V Sanderling, the yacht “Sanderling”. */
const prefixed = /\b(?:M\/?V|M\/?Y|S\/?V|S\/?Y|MV|MY|SV|SY)\.?\s+["“‘']?(\p{Lu}[\p{L}\p{M}’'-]*(?:\s+\p{Lu}[\p{L}\p{M}’'-]*){0,3})/gu;
const quoted = /\b(?:vessel|yacht|boat|sloop|ketch|cutter|schooner|trawler|launch|catamaran|trimaran|houseboat|cruiser)\s+(?:named\s+|called\s+)?(?:\\"|[“‘«])(\p{Lu}[^"“”‘’«»\\]{1,40})(?:\\"|[”’»])/gu;

const gasolineWords = /\b(?:gasoline|petrol|spark-?plugs?|spark plugs?|carburet(?:or|ors|tor|tors)|ignition coils?|flame arrest(?:er|or)s?|distributor cap)\b/giu;
/** A gasoline engine may have injectors and a lift pump of its own. */
const dieselWords = /\b(?:diesel|glow-?plugs?|glow plugs?|inject(?:ion|or) pumps?)\b/giu;
/** Where such words may speak of something else than her engine: her tender, a heater, a rule. */
const elsewhere = /\b(?:tender|dinghy|outboards?|jerry|(?:a|the|one|two|spare) cans?|cans? of|portable|generator|heater|heating|boiler|stove|furnace|vents?|rules?|regulations?|law|CFR|ABYC|ISO|standards?|boats|vessels|fuel dock|neighbou?r)\b|-fired\b/iu;
const rigWords = /\b(?:mainsail|headsail|genoa|jib(?! (?:crane|of the crane))|spinnaker|standing rigging|(?<!\b(?:fan|propeller|belt|blower|engine|pulley|flywheel) )shrouds?(?! of the (?:fan|blower|propeller|belt))|forestay|backstay|chainplates?|mast step|main ?mast|boom vang|spreaders?(?! (?:bar|beam)s?))\b/giu;
/** A name after what a boat is: the ketch Sanderling; not the yacht Club. */
const bare = /\b(?:[Tt]he|[Tt]his|[Tt]hat)\s+(?:(?:motor|sailing|steam|auxiliary)\s+)?(?:vessel|yacht|boat|sloop|ketch|yawl|cutter|schooner|trawler|launch|catamaran|trimaran|houseboat|cruiser|tug)\s+(?!(?:Club|Harbou?r|Yard|Basin|Haven|Marina|Builders?|Brokers?|Sales|Services?|Safety|Owners?|Type|Documentation|Surveyors?|Center|Company|Works|Association|Council|Designs?|Port|Starboard|Bow|Stern|Hull|Number|Identification|Inspection|Survey|House|Show|I|In|On|At|US|USA|Code|Act|Directive)\b)(\p{Lu}\p{Ll}[\p{L}\p{M}’'-]*(?:\s+\p{Lu}[\p{L}\p{M}’'-]*){0,3})/gu;
const twinWords = /\b(?:both (?:main )?engines|twin (?:main )?engines|(?:port|starboard) (?:main )?engine|both propellers|twin screws?)\b/giu;
const singleWords = /\b(?:the (?:single|only) (?:main )?engine|single-screw|single screw)\b/giu;

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
    limits: ['A bare name in running text is told only after the kind of boat (the ketch …).', 'Denials (no gasoline is aboard) are not read; comparables, tenders and earlier reports are left alone, and words of fuel in a sentence on the tender, a heater, a generator, a tank vent or a rule.', 'English only.'],
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
            for (const { pattern, says, isOfFuel = false } of tellers) {
                for (const { said, index, text, deniedIn } of matchesIn(entry, pattern)) {
                    if (!deniedIn && !(isOfFuel && elsewhere.test(said))) {
                        raise({
                            components: [], ...ofFinding(entry), at: spanIn(entry, index, text.length),
                            message: `“${text.replace(/\s+/g, ' ')}” ${/^(?:gasoline|petrol|diesel)$/iu.test(text) ? says.replace(/^speaks of \S+,/, 'is named,') : says} The words may be another boat’s; clear them, or correct the record.`,
                        });
                    }
                }
            }
        }
    },
});

function matchesIn(entry: ProseEntry, pattern: RegExp) {
    return sentencesOf(entry).flatMap(({ said, start }) => [...said.matchAll(pattern)]
        .map(match => ({ said, index: start + match.index, text: match[0], deniedIn: isDenied(said, match.index) })));
}

const ofFinding = ({ owner }: ProseEntry) => owner.type === 'finding' ? { finding: owner.finding } : {};

interface Teller {
    readonly pattern: RegExp;
    readonly says: string;
    readonly isOfFuel?: boolean;
}

/** Words that do not belong to this boat, by what the record knows of her. */
function tellersOf(record: SurveyRecord): Teller[] {
    const { vessel } = record;
    if (!vessel) {
        return [];
    }
    const tellers: Teller[] = [];
    const ofEngines = new Set(ofKind(record, 'main-engine').map(engine => wordOf(engine, 'fuel')));
    const fuel = wordOf(vessel, 'fuel') ?? (ofEngines.size === 1 ? [...ofEngines][0] : undefined);
    const fuels = new Set([...record.components.values()].map(component => wordOf(component, 'fuel')));
    const hasTenderEngine = ofKind(record, 'outboard').some(engine => wordOf(engine, 'fuel') === undefined) || ofKind(record, 'generator').some(engine => wordOf(engine, 'fuel') === undefined);
    if (fuel !== undefined && fuel !== 'gasoline' && !fuels.has('gasoline') && !hasTenderEngine) {
        tellers.push({ pattern: spaced(gasolineWords), isOfFuel: true, says: `speaks of gasoline, and nothing aboard is recorded to burn it (her fuel is ${fuel}).` });
    }
    if (fuel !== undefined && fuel !== 'diesel' && !fuels.has('diesel')) {
        tellers.push({ pattern: spaced(dieselWords), isOfFuel: true, says: `speaks of diesel, and nothing aboard is recorded to burn it (her fuel is ${fuel}).` });
    }
    const type = wordOf(vessel, 'type');
    const hasRig = [...record.components.values()].some(component => record.vocabulary.kinds.get(component.kind)?.vesselPart === 'rig');
    if (type !== undefined && withoutRig.has(type) && !hasRig) {
        tellers.push({ pattern: spaced(rigWords), says: `is of a sailing rig, and this ${type.replaceAll('-', ' ')} has none recorded.` });
    }
    const engines = siOf(vessel, 'engines') ?? (ofKind(record, 'main-engine').length === 2 ? 2 : undefined);
    if (engines === 1 && ofKind(record, 'main-engine').length < 2) {
        tellers.push({ pattern: spaced(twinWords), says: 'is of two engines, and she has one.' });
    } else if (engines === 2) {
        tellers.push({ pattern: spaced(singleWords), says: 'is of one engine, and she has two.' });
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
    for (const match of [...entry.raw.matchAll(prefixed), ...entry.raw.matchAll(quoted), ...entry.raw.matchAll(bare)]) {
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
