/** A part of the vessel that the survey is to speak of, and on which it says nothing. */
import { wordOf, valuesOf, type KindInfo, type Reading, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction } from '../contract.js';
import { listed, lowerFirst } from '../phrasing.js';

/** Share of a grid that must be filled, or its empty cells explained. */
const filledShare = 0.8;

export const sectionSilent = defineCheck({
    id: 'section-silent',
    group: 'record',
    severity: 'error',
    isOfReport: true,
    title: 'Nothing is said of a part of the vessel',
    why: 'Silence reads as "sound": what was not looked at, or is not fitted, must be said.',
    needs: ['survey: its kind', 'vessel: type', 'components, findings, and unseen and absent entries'],
    computes: 'The parts that the coverage of the kind of craft and of the kind of survey both expect, less those with a component, a finding in a system of that name, or an unseen or absent entry that names the part. And a table of readings with over a fifth of its cells left empty and no remark.',
    sources: [{ text: 'what is expected aboard and in each kind of survey', provenance: 'practice' }],
    limits: [
        'Each kind of component belongs to one part; a component of the firm’s own kind counts for the part of the kind it is.',
        'A firm may give its own coverage statements for a kind of craft or of survey.',
        'It sees that something is said, not that it is enough.',
    ],
    examples: [{
        name: 'a re-commissioned boat without a word on steering',
        bad: 'coverage motor-yacht {\n    parts: hull, steering\n}\nsurvey "1" pre-purchase {\n    attended 2026-10-06 afloat "Yard"\n}\nvessel "Marram" { type: motor-yacht }\nhull-shell HULL1\n',
        fixed: 'coverage motor-yacht {\n    parts: hull, steering\n}\nsurvey "1" pre-purchase {\n    attended 2026-10-06 afloat "Yard"\n    unseen steering "Steering and rudder": "The lazarette was locked."\n}\nvessel "Marram" { type: motor-yacht }\nhull-shell HULL1\n',
        correction: 'Add steering to what was not seen',
    }],
    silent: [
        { name: 'a component of that part', text: 'coverage motor-yacht {\n    parts: hull, steering\n}\nsurvey "1" pre-purchase\nvessel "Marram" { type: motor-yacht }\nhull-shell HULL1\nrudder R1\n' },
        { name: 'not fitted', text: 'coverage motor-yacht {\n    parts: hull, gas\n}\nsurvey "1" pre-purchase {\n    absent gas "Cooking gas": "The galley is electric."\n}\nvessel "Marram" { type: motor-yacht }\nhull-shell HULL1\n' },
        { name: 'a kind of survey that does not expect it', text: 'coverage motor-yacht {\n    parts: hull, steering\n}\nsurvey "1" appraisal\nvessel "Marram" { type: motor-yacht }\nhull-shell HULL1\n' },
        { name: 'kind of craft not recorded', text: 'survey "1" pre-purchase\nvessel "Marram" {}\nhull-shell HULL1\n' },
    ],
    run(record, raise) {
        const { survey } = record;
        const parts = silentParts(record);
        if (parts.length > 0) {
            const titleOf = (part: string) => record.vocabulary.wordLists.get('part')?.words.get(part) ?? part;
            const named = listed(parts.map(part => `${lowerFirst(titleOf(part))} (${part})`));
            raise({
                components: [], at: survey ? { ...survey.span, end: survey.span.start + 'survey'.length } : { uri: record.mainUri, start: 0, end: 0 },
                message: `Nothing is recorded of ${named}, which a survey of this kind on such a craft is to speak of. Silence would be read as sound; record what was seen, or say in the survey block why it was not: unseen ${parts[0] ?? ''} "…": "…".`,
                figures: { 'parts left silent': { value: parts.length, unit: '' } },
                corrections: [
                    ...(parts.length > 1 ? [{ kind: 'add-to-survey' as const, title: `Add all ${parts.length} to what was not seen`, text: parts.map(part => `unseen ${part} "${titleOf(part)}": ""`) }] : []),
                    ...parts.flatMap(part => corrections(record, part, titleOf(part))),
                ],
            });
        }
        for (const reading of record.readings) {
            const { filled, all } = cellsOf(reading);
            if (all >= 5 && filled / all < filledShare - 1e-9 && !reading.facts.has('remarks')) {
                raise({
                    components: [], at: { ...reading.span, end: reading.span.start + 'reading'.length },
                    message: `Of the ${all} cells of ${reading.title ?? reading.id} only ${filled} are filled, and remarks does not say why. The empty ones would be read as sound; say what kept them from being read.`,
                });
            }
        }
    },
});

/** Parts that both coverages expect and of which nothing is said. Without both, nothing is expected. */
function silentParts(record: SurveyRecord): string[] {
    const { vocabulary, survey, vessel } = record;
    const type = vessel ? wordOf(vessel, 'type') : undefined;
    const byCraft = type === undefined ? undefined : vocabulary.coverages.get(type);
    const bySurvey = survey?.surveyKind === undefined ? undefined : vocabulary.coverages.get(survey.surveyKind);
    if (!byCraft || !bySurvey) {
        return [];
    }
    const ofSurvey = new Set(valuesOf(bySurvey, 'parts').map(value => value.word));
    const said = new Set<string>([
        ...[...record.components.values()].flatMap(component => vocabulary.kinds.get(component.kind)?.vesselPart ?? []),
        ...record.findings.flatMap(finding => finding.system ?? []),
        ...record.unseen.flatMap(({ part, system }) => part ?? system ?? []),
    ]);
    return valuesOf(byCraft, 'parts').map(value => value.word).filter(part => ofSurvey.has(part) && !said.has(part));
}

function cellsOf(reading: Reading): { readonly filled: number; readonly all: number } {
    // A remark is no reading, and its absence says nothing.
    const rows = reading.rows.map(row => row.cells.filter(cell => cell.column !== 'remark'));
    const width = Math.max(0, ...rows.map(cells => cells.length));
    return { filled: rows.reduce((sum, cells) => sum + cells.filter(cell => cell.value).length, 0), all: width * rows.length };
}

function corrections({ vocabulary }: SurveyRecord, part: string, title: string): Correction[] {
    // The leading kinds of the part, in the catalogue's order; a kind that others are built on is not offered.
    const parents = new Set([...vocabulary.kinds.values()].flatMap(kind => kind.parent ?? []));
    const kinds = [...vocabulary.kinds.values()].filter((kind: KindInfo) => kind.vesselPart === part && !kind.isForm && !parents.has(kind.id)).slice(0, 3);
    const idOf = (kind: KindInfo) => `${kind.id.split('-').map(word => word.charAt(0).toUpperCase()).join('')}-${part}`;
    return [
        { kind: 'add-to-survey', title: `Add ${part} to what was not seen`, text: [`unseen ${part} "${title}": ""`] },
        { kind: 'add-to-survey', title: `Say that ${part} is not fitted`, text: [`absent ${part} "${title}": ""`] },
        {
            kind: 'add-statement', title: `Add a section for ${part}`,
            lines: [`system ${part} "${title}" {`, ...kinds.map(kind => `    ${kind.id} ${idOf(kind)} "${kind.title}" { condition: not-proved }`), '}'],
        },
    ];
}
