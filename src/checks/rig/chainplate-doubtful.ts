/** A chainplate that moves, lets water into a wet core, or was never drawn in its years. */
import { moistureRatio } from '../../trade/moisture.js';
import { chainplateYears, isPastTerm, type KnownDate } from '../../trade/rigging.js';
import { flagOf, materialOf, nameOf, ofKind, siOf, valueOf, yardstick, type Component, type SurveyRecord } from '../../record/model.js';
import { surveyedOn } from '../hoses/age.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { listed } from '../phrasing.js';
import { toTenth } from '../structure/figures.js';

export const chainplateDoubtful = defineCheck({
    id: 'chainplate-doubtful',
    group: 'rig',
    severity: 'error',
    title: 'Chainplate is doubtful',
    why: 'Stainless steel corrodes in crevices, out of sight, where it passes the deck.',
    needs: ['chainplate: moves; weeps, core-reading, dry-reference; metal, fitted (else vessel: built), drawn, and the date she was attended'],
    computes: 'A fault where it moves, or weeps into a core that reads over twice its dry reference. Advice where it is of stainless steel, over 25 years old and was never drawn.',
    sources: [{ text: 'movement; a weep with a ratio over 2; 25 years never drawn', provenance: 'practice' }],
    yardsticks: ['moisture-ratio'],
    limits: ['One that was drawn at any time counts as drawn; how long ago is not judged.', 'Where the chainplate’s own date is not recorded it counts as old as the boat.', 'What is covered by joinery or laminate cannot be seen; say so in the limits of the survey.'],
    examples: [{
        name: 'moves',
        bad: 'chainplate CP1 "Chainplate, port" { moves: yes }\n',
        fixed: 'chainplate CP1 "Chainplate, port" { moves: no }\n',
    }, {
        name: 'weeps into a wet core',
        bad: 'chainplate CP1 { weeps: yes  core-reading: 30  dry-reference: 12 }\n',
        fixed: 'chainplate CP1 { weeps: yes  core-reading: 20  dry-reference: 12 }\n',
    }, {
        name: 'never drawn',
        bad: `survey "1" pre-purchase { attended 2026-10-06 afloat "Yard" }
chainplate CP1 { metal: stainless-316  fitted: 1989 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 afloat "Yard" }
chainplate CP1 { metal: stainless-316  fitted: 1989  drawn: 2026-10-06 }
`,
        correction: 'Record CP1 as drawn',
    }],
    silent: [
        { name: 'a weep at exactly twice the reference', text: 'chainplate CP1 { weeps: yes  core-reading: 24  dry-reference: 12 }\n' },
        { name: 'a wet core and no weep', text: 'chainplate CP1 { weeps: no  core-reading: 30  dry-reference: 12 }\n' },
        { name: 'bronze of the same age', text: 'survey "1" pre-purchase { attended 2026-10-06 afloat "Yard" }\nchainplate CP1 { metal: silicon-bronze  fitted: 1989 }\n' },
        { name: 'of twenty years', text: 'survey "1" pre-purchase { attended 2026-10-06 afloat "Yard" }\nchainplate CP1 { metal: stainless-316  fitted: 2006 }\n' },
    ],
    run(record, raise) {
        for (const plate of ofKind(record, 'chainplate')) {
            const faults = faultsOf(record, plate);
            const hint = faults.length > 0 ? undefined : lacking(record, plate);
            if (faults.length > 0) {
                raise(problem(record, plate, faults));
            } else if (hint !== undefined) {
                raise({ components: [plate], at: plate.idSpan, severity: 'hint', message: hint });
            }
        }
    },
});

interface Fault {
    readonly kind: 'moves' | 'weeps' | 'age';
    readonly says: string;
    readonly seen: string;
    readonly fact: string;
}

function faultsOf(record: SurveyRecord, plate: Component<'chainplate'>): Fault[] {
    const reading = siOf(plate, 'core-reading');
    const reference = siOf(plate, 'dry-reference');
    const ratio = reading !== undefined && reference !== undefined ? moistureRatio(reading, reference) : undefined;
    const limit = yardstick(record, 'moisture-ratio');
    const isWet = ratio !== undefined && ratio > limit.si + 1e-9;
    return [
        ...(flagOf(plate, 'moves') === true ? [{ kind: 'moves' as const, says: 'moves under load', seen: 'moves under load', fact: 'moves' }] : []),
        ...(flagOf(plate, 'weeps') === true && isWet ? [{
            kind: 'weeps' as const, fact: 'weeps', says: `weeps, and the core beside it reads ${toTenth(ratio)} times its dry reference, against ${limit.whose} of ${limit.written}`,
            seen: `weeps; the core beside it reads {${plate.id}.core-reading} on the scale of the meter, against {${plate.id}.dry-reference} where it is dry`,
        }] : []),
        ...(isStainless(plate) && isOld(record, plate) === true ? [{
            kind: 'age' as const, fact: 'fitted', says: `stainless steel, over ${chainplateYears} years old, and not recorded as ever drawn`,
            seen: `stainless steel of ${plate.facts.has('fitted') ? `{${plate.id}.fitted}` : 'when she was built, {vessel.built}'}, not recorded as ever drawn`,
        }] : []),
    ];
}

const isStainless = (plate: Component): boolean => materialOf(plate)?.class === 'stainless';

/** Whether it is past its years and was never drawn; undefined where the age is not known. */
function isOld(record: SurveyRecord, plate: Component<'chainplate'>): boolean | undefined {
    const today = surveyedOn(record);
    const fitted = valueOf(plate, 'fitted')?.figure;
    const built = record.vessel ? siOf(record.vessel, 'built') : undefined;
    if (plate.facts.has('drawn')) {
        return false;
    }
    const from: KnownDate | undefined = fitted ?? (built === undefined ? undefined : { year: built, month: 12, precision: 'year' });
    return today && from ? isPastTerm(from, today, chainplateYears * 12) : undefined;
}

function lacking(record: SurveyRecord, plate: Component<'chainplate'>): string | undefined {
    if (flagOf(plate, 'weeps') === true && (siOf(plate, 'core-reading') === undefined || siOf(plate, 'dry-reference') === undefined)) {
        return `${nameOf(plate)} weeps; record what the meter reads in the deck beside it and where it is dry (core-reading, dry-reference), to tell whether the core is wet.`;
    }
    if (!materialOf(plate) && isOld(record, plate) === true) {
        return `${nameOf(plate)} is over ${chainplateYears} years old and not recorded as drawn; record its metal, for stainless steel is to be drawn at that age.`;
    }
    return isStainless(plate) && isOld(record, plate) === undefined && surveyedOn(record) ? `${nameOf(plate)} is of stainless steel; record when it was fitted, or the year she was built, to tell whether it is due to be drawn.` : undefined;
}

function problem(record: SurveyRecord, plate: Component, faults: readonly Fault[]): Raised {
    const moves = faults.some(({ kind }) => kind === 'moves');
    const isAge = faults.every(({ kind }) => kind === 'age');
    const today = surveyedOn(record);
    const drawn: Correction[] = faults.some(({ kind }) => kind === 'age') && today ? [{ kind: 'set-fact', title: `Record ${plate.id} as drawn`, component: plate, property: 'drawn', value: today.iso }] : [];
    return {
        components: [plate], at: plate.facts.get(faults[0]?.fact ?? '')?.span ?? plate.idSpan, corrections: drawn,
        ...(isAge ? { severity: 'warning' as const } : {}),
        message: `${nameOf(plate)}: ${listed(faults.map(({ says }) => says))}. ${materialOf(plate)?.class === 'stainless' ? 'Stainless steel' : 'Metal'} corrodes in crevices out of sight, and the mast hangs on it; ${moves ? 'do not sail her until it is' : 'have one on each side'} drawn and looked at.`,
        draft: {
            title: `${plate.title ?? `Chainplate ${plate.id}`}: ${moves ? 'moving' : isAge ? 'never drawn' : 'weeping into a wet core'}`,
            ...(moves ? { urgency: 'before-departure' as const } : record.survey?.surveyKind === 'pre-purchase' ? { urgency: 'before-completion' as const } : { urgency: 'within-days' as const, days: 30 }),
            seen: `${plate.title ?? 'The chainplate'} (${plate.id}): ${listed(faults.map(({ seen }) => seen))}.`,
            because: 'Where a chainplate passes the deck water stands in a crevice, and metal corrodes there out of sight; the mast hangs on it.',
            recommend: `${moves ? 'Do not sail her until this chainplate is drawn, looked at with dye and made fast. Draw' : 'Draw'} one chainplate on each side, look at it under a glass with dye, and decide on the others by what is found${faults.some(({ kind }) => kind === 'weeps') ? '; dry the core, and bed it anew' : ''}.`,
            cites: [['Good practice']],
        },
    };
}
