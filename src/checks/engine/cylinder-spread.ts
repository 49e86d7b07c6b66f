/** Compression that differs between the cylinders of an engine, or lies under its maker's least. */
import { nameOf, ofKind, rowsOf, valueOf, wordOf, type Component, type Quantity, type Span, type SurveyRecord } from '../../record/model.js';
import { cylinderSpread as spreadOf, spreadFaultShare, spreadWatchShare } from '../../trade/cylinder-spread.js';
import { convertTo } from '../../quantities/index.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, listed, percent } from '../phrasing.js';
import { dueBeforeCompletion } from './completion.js';

export const cylinderSpread = defineCheck({
    id: 'cylinder-spread',
    group: 'engine',
    severity: 'error',
    title: 'Compression differs between cylinders',
    why: 'A cylinder that falls behind has a leaking valve, ring or gasket.',
    needs: ['engine: compression of each cylinder, or a table of compression', 'engine: least-compression, where its maker names one; cylinders'],
    computes: 'spread = (highest − lowest) ÷ highest. Advice over 10 %; a fault over 25 %, or where any cylinder is under the least that the maker allows.',
    sources: [{ text: '10 % and 25 %, from public engine pages', provenance: 'published' }],
    limits: [
        'Cold and hot readings differ; a table that mixes them is not judged.',
        'A spread inside the limits does not prove rings and valves; leak-down tells more.',
        'Compression lowered alike in all cylinders shows only against the least of the maker.',
    ],
    examples: [{
        name: 'one cylinder far behind',
        bad: `vessel "Marram" {}
main-engine E1 { compression: 150 psi, 148 psi, 152 psi, 110 psi }
`,
        fixed: `vessel "Marram" {}
main-engine E1 { compression: 150 psi, 148 psi, 152 psi, 145 psi }
`,
    }, {
        name: 'in a table',
        bad: `main-engine E1 { cylinders: 3 }
reading CP1 "Compression" on E1 {
    measures: compression
    row "Cylinder 1": 28 bar
    row "Cylinder 2": 24 bar
    row "Cylinder 3": 28 bar
}
`,
        fixed: `main-engine E1 { cylinders: 3 }
reading CP1 "Compression" on E1 {
    measures: compression
    row "Cylinder 1": 28 bar
    row "Cylinder 2": 27 bar
    row "Cylinder 3": 28 bar
}
`,
    }, {
        name: 'psi typed for bar',
        bad: `main-engine E1 { compression: 390 psi, 400 psi, 28 psi, 395 psi }
`,
        fixed: `main-engine E1 { compression: 390 psi, 400 psi, 28 bar, 395 psi }
`,
        correction: 'Read 28 psi as 28 bar',
    }, {
        name: 'under the least of the maker',
        bad: `main-engine E1 { compression: 350 psi, 345 psi, 355 psi  least-compression: 348 psi }
`,
        fixed: `main-engine E1 { compression: 350 psi, 349 psi, 355 psi  least-compression: 348 psi }
`,
    }],
    silent: [
        { name: 'spread of exactly 10 %', text: 'main-engine E1 { compression: 100 psi, 90 psi, 95 psi }\n' },
        { name: 'low alike, and no least known', text: 'main-engine E1 { compression: 300 psi, 302 psi, 298 psi }\n' },
        { name: 'nothing measured', text: 'main-engine E1 { cylinders: 4 }\n' },
    ],
    run(record, raise) {
        for (const engine of ofKind(record, 'engine')) {
            const problem = judge(record, engine);
            if (problem) {
                raise(problem);
            }
        }
    },
});

interface Cylinders {
    readonly pressures: readonly Quantity[];
    readonly names: readonly string[];
    readonly at: Span;
    /** "{E1.compression}", or the table. */
    readonly seen: string;
    /** Words of the state in which the rows were read. */
    readonly states: readonly string[];
    readonly cellSpans?: readonly Span[];
}

function cylindersOf(record: SurveyRecord, engine: Component): Cylinders | undefined {
    const fact = engine.facts.get('compression');
    const own = fact?.values.filter(value => value.type === 'quantity') ?? [];
    if (fact && own.length > 0) {
        return { pressures: own, names: own.map((_, index) => `cylinder ${index + 1}`), at: fact.span, seen: `{${engine.id}.compression}`, states: [] };
    }
    const engines = ofKind(record, 'engine');
    const rows = rowsOf(record, 'compression').filter(({ reading }) => reading.on.includes(engine) || (reading.on.length === 0 && engines.length === 1))
        .flatMap(({ reading, row }) => {
            const pressure = valueOf(row, 'pressure');
            const span = row.facts.get('pressure')?.span;
            return pressure && span ? [{ reading, row, pressure, span }] : [];
        });
    const [first] = rows;
    return first && {
        pressures: rows.map(({ pressure }) => pressure), names: rows.map(({ row }) => /^\d+$/.test(row.label.trim()) ? `cylinder ${row.label.trim()}` : row.label), at: first.span, seen: `see ${first.reading.title ?? first.reading.id}`,
        states: [...new Set(rows.map(({ row }) => wordOf(row, 'state')).filter(state => state !== undefined))], cellSpans: rows.map(({ span }) => span),
    };
}

function judge(record: SurveyRecord, engine: Component): Raised | undefined {
    const cylinders = cylindersOf(record, engine);
    if (!cylinders) {
        return undefined;
    }
    if (cylinders.states.length > 1) {
        return { components: [engine], at: cylinders.at, severity: 'hint', message: `The compression of ${nameOf(engine)} was read partly cold and partly hot; record all cylinders in one state to compare them.` };
    }
    const spread = spreadOf(cylinders.pressures.map(({ si }) => si));
    const least = valueOf(engine as Component<'engine'>, 'least-compression'); // Every caller passes an engine.
    const lowest = cylinders.pressures.reduce<Quantity | undefined>((low, one) => !low || one.si < low.si ? one : low, undefined);
    const isUnder = least !== undefined && lowest !== undefined && lowest.si < least.si - 1e-6;
    if (isUnder || (spread !== undefined && spread > spreadWatchShare + 1e-9)) {
        return problem(record, engine, cylinders, spread, isUnder ? least : undefined);
    }
    const count = valueOf(engine as Component<'engine'>, 'cylinders');
    return count && count.si > cylinders.pressures.length ? {
        components: [engine], at: cylinders.at, severity: 'hint',
        message: `${nameOf(engine)} has ${count.figure.written} cylinders and ${cylinders.pressures.length} of them are read; record the others to tell the spread.`,
    } : undefined;
}

function problem(record: SurveyRecord, engine: Component, cylinders: Cylinders, spread: number | undefined, least: Quantity | undefined): Raised {
    const { pressures, names } = cylinders;
    const values = pressures.map(({ si }) => si);
    const [low, high] = [Math.min(...values), Math.max(...values)];
    const [lowName, highName] = [names[values.indexOf(low)] ?? '', names[values.indexOf(high)] ?? ''];
    const isFault = least !== undefined || (spread ?? 0) > spreadFaultShare + 1e-9;
    const [lowText, highText] = [pressures[values.indexOf(low)], pressures[values.indexOf(high)]].map(one => one ? both(one) : '');
    const apart = spread !== undefined && spread > spreadWatchShare + 1e-9
        ? `${lowText} in ${lowName} is ${percent(spread)} under the ${highText} in ${highName}, where ${isFault && spread > spreadFaultShare + 1e-9 ? `over ${percent(spreadFaultShare)} is a fault` : `over ${percent(spreadWatchShare)} calls for a closer look`}` : undefined;
    const under = least ? `${listed(pressures.flatMap(({ si }, index) => si < least.si - 1e-6 ? [names[index] ?? ''] : []))} ${pressures.filter(({ si }) => si < least.si - 1e-6).length > 1 ? 'are' : 'is'} under the ${both(least)} that its maker allows` : undefined;
    const what = [apart, under].filter(text => text !== undefined).join('; ');
    const seenUnder = under && least ? under.replace(both(least), `{${engine.id}.least-compression}`) : undefined;
    return {
        components: [engine],
        at: cylinders.cellSpans?.[values.indexOf(low)] ?? cylinders.at,
        severity: isFault ? 'error' : 'warning',
        message: `Compression of ${nameOf(engine)}: ${what}. A cylinder that falls behind has a leaking valve, ring or gasket; have it looked into with a leak-down test.`,
        figures: {
            lowest: { value: Math.round(convertTo(low, 'psi') * 10) / 10, unit: 'psi' }, highest: { value: Math.round(convertTo(high, 'psi') * 10) / 10, unit: 'psi' },
            ...(spread === undefined ? {} : { spread: { value: spread * 100, unit: '%' } }),
        },
        corrections: inOtherUnit(engine, cylinders),
        draft: {
            title: `Compression of ${engine.title ?? engine.id} ${apart ? 'differs between cylinders' : 'is under the least of its maker'}`,
            ...(isFault ? dueBeforeCompletion(record) : { urgency: 'in-upkeep' as const }),
            seen: `Compression of ${engine.title ?? 'the engine'} (${engine.id}), cylinder by cylinder: ${cylinders.seen}. ${[spread === undefined ? undefined : `The lowest lies ${percent(spread)} under the highest`, seenUnder].filter(text => text !== undefined).join('; ')}.`,
            because: 'A cylinder that falls behind has a leaking valve, ring or gasket; the engine starts hard, smokes and loses power.',
            recommend: `Have ${engine.id} looked into by an engine surveyor with a leak-down test, and the cause put right, and have compression measured again after that.`,
        },
    };
}

/** One figure typed in the other unit of pressure, where it then agrees with the rest. */
function inOtherUnit(engine: Component, { pressures, cellSpans }: Cylinders): Correction[] {
    const convert = { psi: ['bar', 1e5], bar: ['psi', 6894.757] } as const;
    return pressures.flatMap((odd, index): Correction[] => {
        const rest = pressures.filter(one => one !== odd).map(({ si }) => si);
        const { unit, value, written } = odd.figure;
        if ((unit !== 'psi' && unit !== 'bar') || rest.length < 2) {
            return [];
        }
        const [other, pascal] = convert[unit];
        const read = value * pascal;
        if ((spreadOf(rest) ?? 1) > spreadWatchShare || (spreadOf([...rest, read]) ?? 1) > spreadWatchShare) {
            return [];
        }
        const text = `${value} ${other}`;
        const title = `Read ${written} as ${text}`;
        const span = cellSpans?.[index];
        return [span ? { kind: 'replace-text', title, span, text }
            : { kind: 'set-fact', title, component: engine, property: 'compression', value: pressures.map(one => one === odd ? text : one.figure.written).join(', ') }];
    });
}
