/** More outboard power or more persons than the capacity label, or the rule behind it, allows. */
import { convertTo } from '../../quantities/index.js';
import { highTransomM, labelUnderM, personsOfLoad, powerCapacityW, powerFactor } from '../../trade/capacity-label.js';
import { flagOf, ofKind, siOf, valueOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, computedBoth, lengthBoth, listed } from '../phrasing.js';
import { countOf } from '../safety/gear.js';
import { lengthForCarriageM } from '../safety/bottles.js';

/** Kinds of craft that the rule of outboard monohulls leaves out. */
const otherCraft: ReadonlySet<string> = new Set(['sailing-yacht', 'catamaran', 'trimaran', 'rigid-inflatable', 'houseboat']);

export const powerOrPersonsOver = defineCheck({
    id: 'power-or-persons-over',
    group: 'papers',
    severity: 'error',
    title: 'More power or persons than she is rated for',
    why: 'Overloaded she swamps, overpowered she runs away.',
    needs: ['outboard: rated-power', 'capacity-label: engine-power, persons, persons-load', 'vessel: persons', 'without a label: vessel: type, length-on-deck or length-overall, transom-width, remote-steering, transom-height, flat-bottom'],
    computes: 'Outboard power against the label; without one, on monohulls under 20 ft: F = length x transom width in feet; to 52.5 by the table (3, 5, 7.5, 10, 15 hp to 35, 39, 42, 45, 52), above 2F - 90 with remote steering and a 20 in transom, else 0.8F - 25, or 0.5F - 15 with a flat bottom and hard chines, up to the next 5 hp. Persons against the label; its load stands for (lb + 32) / 141 persons, to the nearest.',
    sources: [
        { text: 'horsepower by length and transom', standard: '33 CFR 183', clause: '183.53', provenance: 'published' },
        { text: 'persons by load', standard: '33 CFR 183', clause: '183.41', provenance: 'published' },
    ],
    limits: [
        'The rule binds builders of outboard boats under 20 ft; on a boat in service it is good practice to hold to it.',
        'Sailing boats, multihulls, houseboats and inflatables are judged by their label only, never by the rule for monohulls.',
        'A builder may have shown a higher power by the performance test; his label goes before the computation.',
        'Where remote steering or the height of the transom is not recorded, the branch that allows most is taken, and the facts are asked for where the branch would decide.',
    ],
    examples: [{
        name: 'more power than the label',
        bad: `vessel "Marram" { length-on-deck: 18 ft }
capacity-label CL1 { engine-power: 115 hp  persons: 7 }
outboard OB1 { rated-power: 150 hp }
`,
        fixed: `vessel "Marram" { length-on-deck: 18 ft }
capacity-label CL1 { engine-power: 115 hp  persons: 7 }
outboard OB1 { rated-power: 115 hp }
`,
    }, {
        name: 'more persons than the label',
        bad: `vessel "Marram" { persons: 8 }
capacity-label CL1 { persons: 6 }
`,
        fixed: `vessel "Marram" { persons: 6 }
capacity-label CL1 { persons: 6 }
`,
        correction: 'Record that she carries 6 persons',
    }, {
        name: 'more power than length and transom allow',
        bad: `vessel "Marram" { type: gasoline-cruiser  length-on-deck: 18 ft  transom-width: 6 ft  remote-steering: yes  transom-height: 20 in }
outboard OB1 { rated-power: 150 hp }
`,
        fixed: `vessel "Marram" { type: gasoline-cruiser  length-on-deck: 18 ft  transom-width: 6 ft  remote-steering: yes  transom-height: 20 in }
outboard OB1 { rated-power: 130 hp }
`,
    }],
    silent: [
        { name: 'inflatable without a label', text: 'vessel "Marram" { type: rigid-inflatable  length-on-deck: 15 ft  transom-width: 4 ft  remote-steering: yes  transom-height: 20 in }\noutboard OB1 { rated-power: 90 hp }\n' },
        { name: 'just the power of the label', text: 'capacity-label CL1 { engine-power: 115 hp }\noutboard OB1 { rated-power: 115 hp }\n' },
        { name: '20 ft', text: 'vessel "Marram" { type: gasoline-cruiser  length-on-deck: 20 ft  transom-width: 6 ft  remote-steering: yes  transom-height: 20 in }\noutboard OB1 { rated-power: 300 hp }\n' },
        { name: 'multihull', text: 'vessel "Marram" { type: catamaran  length-on-deck: 18 ft  transom-width: 6 ft  remote-steering: no }\noutboard OB1 { rated-power: 150 hp }\n' },
        { name: 'no outboard', text: 'vessel "Marram" { type: gasoline-cruiser  length-on-deck: 18 ft  transom-width: 6 ft }\n' },
    ],
    run(record, raise) {
        const label = ofKind(record, 'capacity-label').find(one => countOf(one) > 0);
        judgePower(record, label, raise);
        if (label) {
            judgePersons(record, label, raise);
        }
    },
});

function judgePower(record: SurveyRecord, label: Component<'capacity-label'> | undefined, raise: (problem: Raised) => void): void {
    const outboards = ofKind(record, 'outboard').filter(engine => countOf(engine) > 0 && !isOfTender(record, engine));
    const [first] = outboards;
    if (!first) {
        return;
    }
    const allowed = label && valueOf(label, 'engine-power');
    const unrated = outboards.find(engine => !engine.facts.has('rated-power'));
    if (unrated) {
        if (allowed) {
            raise({ components: [unrated], at: unrated.idSpan, severity: 'hint', message: `Record the rated-power of ${unrated.id} to tell whether it is more than her label allows.` });
        }
        return;
    }
    const fittedW = outboards.reduce((sum, engine) => sum + (siOf(engine, 'rated-power') ?? 0) * countOf(engine), 0);
    if (allowed) {
        if (fittedW > allowed.si * (1 + 1e-6)) {
            raise(tooStrong(outboards, fittedW, `her capacity label allows ${both(allowed)}`, `her capacity label allows {${label.id}.engine-power}`, allowed.si));
        }
    } else {
        judgeByRule(record, outboards, fittedW, raise);
    }
}

/** An engine that serves a tender is not hers. */
function isOfTender(record: SurveyRecord, engine: Component): boolean {
    return engine.facts.get('serves')?.values.some(value => value.type === 'component' && record.components.get(value.id)?.kind === 'tender') === true;
}

function judgeByRule(record: SurveyRecord, outboards: readonly Component[], fittedW: number, raise: (problem: Raised) => void): void {
    const { vessel } = record;
    const lengthM = lengthForCarriageM(record);
    const type = vessel && wordOf(vessel, 'type');
    const [first] = outboards;
    if (!vessel || !first || lengthM === undefined || lengthM >= labelUnderM - 1e-9 || otherCraft.has(type ?? '') || ofKind(record, 'inflatable-tube').length > 0) {
        return;
    }
    const ask = (what: string) => {
        raise({ components: [first], at: first.facts.get('rated-power')?.span ?? first.idSpan, severity: 'hint', message: `No capacity label is recorded for her ${computedBoth(fittedW, 'power')} of outboard power; record ${what} to tell whether that is too much for her.` });
    };
    const widthM = siOf(vessel, 'transom-width');
    if (widthM === undefined) {
        ask('transom-width of the vessel, or her label');
        return;
    }
    const isFlatBottom = flagOf(vessel, 'flat-bottom') === true;
    const remote = isRemoteOnHighTransom(record);
    const most = powerCapacityW({ lengthM, transomWidthM: widthM, isRemoteOnHighTransom: remote ?? true, isFlatBottom });
    const least = powerCapacityW({ lengthM, transomWidthM: widthM, isRemoteOnHighTransom: remote ?? false, isFlatBottom });
    if (fittedW > most * (1 + 1e-6)) {
        if (type === undefined) {
            ask('the type of the vessel, for the rule is for monohulls');
        } else {
            raise(byRule(record, outboards, fittedW, most, powerFactor(lengthM, widthM), lengthM, widthM));
        }
    } else if (fittedW > Math.min(most, least) * (1 + 1e-6)) {
        ask('remote-steering and transom-height of the vessel');
    }
}

function isRemoteOnHighTransom(record: SurveyRecord): boolean | undefined {
    const remote = record.vessel && flagOf(record.vessel, 'remote-steering');
    const height = record.vessel && siOf(record.vessel, 'transom-height');
    const isHigh = height === undefined ? undefined : height >= highTransomM - 1e-6;
    return remote === false || isHigh === false ? false : remote === undefined || isHigh === undefined ? undefined : true;
}

function tooStrong(outboards: readonly Component[], fittedW: number, limit: string, limitSeen: string, allowedW: number): Raised {
    const names = listed(outboards.map(engine => engine.id));
    const [first] = outboards;
    return {
        components: outboards,
        at: first?.facts.get('rated-power')?.span ?? first?.idSpan ?? { uri: '', start: 0, end: 0 },
        message: `${names} ${outboards.length === 1 ? 'gives' : 'give'} ${computedBoth(fittedW, 'power')}, and ${limit}. Overpowered she may run away from her helmsman; fit an engine of no more than that.`,
        figures: { fitted: { value: convertTo(fittedW, 'hp'), unit: 'hp' }, allowed: { value: convertTo(allowedW, 'hp'), unit: 'hp' } },
        draft: {
            title: 'Outboard power is more than she is rated for',
            urgency: 'before-departure',
            seen: `${listed(outboards.map(engine => `Outboard ${engine.id} is rated at {${engine.id}.rated-power}${countOf(engine) === 1 ? '' : ' each'}`))}; ${limitSeen}.`,
            because: 'With more power than she is rated for a boat may run away from her helmsman or swamp over her transom.',
            recommend: `Fit outboard power of no more than ${computedBoth(allowedW, 'power')}.`,
            cites: [['33 CFR 183', '183.53']],
        },
    };
}

function byRule(record: SurveyRecord, outboards: readonly Component[], fittedW: number, mostW: number, factor: number, lengthM: number, widthM: number): Raised {
    const lengthFact = record.vessel?.facts.has('length-on-deck') ? 'length-on-deck' : 'length-overall';
    const rule = `by length and transom (factor ${factor.toFixed(1)}) good practice per the rule for outboard boats is at most ${computedBoth(mostW, 'power')}`;
    return tooStrong(outboards, fittedW, `${rule} at ${lengthBoth(lengthM)} and a transom of ${lengthBoth(widthM)}`, `she measures {vessel.${lengthFact}} with a transom of {vessel.transom-width}, and ${rule}`, mostW);
}

function judgePersons(record: SurveyRecord, label: Component<'capacity-label'>, raise: (problem: Raised) => void): void {
    const marked = siOf(label, 'persons');
    const load = valueOf(label, 'persons-load');
    const byLoad = load && personsOfLoad(load.si);
    const carried = record.vessel && siOf(record.vessel, 'persons');
    const allowed = marked ?? byLoad;
    if (allowed !== undefined && carried !== undefined && carried > allowed) {
        raise(tooMany(label, carried, allowed, marked === undefined));
    }
    if (marked !== undefined && load && byLoad !== undefined && marked > byLoad) {
        raise({
            components: [label], at: label.facts.get('persons')?.span ?? label.idSpan, severity: 'warning',
            message: `The label ${label.id} gives ${marked} persons and ${both(load)}, which stands for ${byLoad}. One of the two was misread or changed; read the label again and photograph it.`,
            figures: { 'on the label': { value: marked, unit: '' }, 'by its load': { value: byLoad, unit: '' } },
            draft: {
                title: 'Persons and load on the capacity label disagree',
                urgency: 'in-upkeep',
                seen: `Capacity label ${label.id} gives {${label.id}.persons} persons and a load of {${label.id}.persons-load}, which stands for ${byLoad} persons.`,
                because: 'One of the two figures is wrong, and an overloaded boat swamps.',
                recommend: 'Ask the builder for the figures of her label, and hold to the smaller number until then.',
                cites: [['33 CFR 183', '183.41']],
            },
        });
    }
}

function tooMany(label: Component, carried: number, allowed: number, isByLoad: boolean): Raised {
    const corrections: Correction[] = [{ kind: 'set-vessel-fact', title: `Record that she carries ${allowed} persons`, property: 'persons', value: String(allowed) }];
    const seenLimit = isByLoad ? `the load on label ${label.id}, {${label.id}.persons-load}, stands for ${allowed}` : `label ${label.id} allows {${label.id}.persons}`;
    return {
        components: [label],
        at: label.facts.get(isByLoad ? 'persons-load' : 'persons')?.span ?? label.idSpan,
        message: `She carries ${carried} persons, and her capacity label ${label.id} allows ${allowed}. Overloaded she may swamp; carry no more than that.`,
        figures: { persons: { value: carried, unit: '' }, allowed: { value: allowed, unit: '' } },
        corrections,
        draft: {
            title: 'More persons than she is rated for',
            urgency: 'before-departure',
            seen: `She carries {vessel.persons} persons; ${seenLimit}.`,
            because: 'An overloaded boat may swamp.',
            recommend: `Carry no more than ${allowed} persons.`,
            cites: [['33 CFR 183', '183.41']],
        },
    };
}
