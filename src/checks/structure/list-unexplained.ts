/** A list told by the freeboards of both sides. */
import { listRad, listStep } from '../../trade/list.js';
import { flagOf, rowsOf, siOf, wordOf, type Reading, type Row, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { lengthBoth } from '../phrasing.js';
import { toTenth } from './figures.js';

export const listUnexplained = defineCheck({
    id: 'list-unexplained',
    group: 'structure',
    severity: 'error',
    title: 'She lists',
    why: 'A list tells of water or weight that nobody has accounted for.',
    needs: ['reading that measures freeboard: port and starboard of each row, width; vessel: beam', 'tanks-even in the head of the table, or a table of levels of tanks on both sides'],
    computes: 'list = atan((port − starboard) ÷ breadth), the mean over the rows. Over 1° with even tanks: to be explained. Over 3°: a fault.',
    sources: [{ text: 'angle from the freeboards', provenance: 'computed' }, { text: '1° and 3°', provenance: 'practice' }],
    limits: [
        'A deck edge that is not level when she is upright reads as a list.', 'Where a row gives no width the beam is taken, amidships alone where a row is named so; at bow and stern that understates the list.',
        'Tanks count as even where those of both sides, by a table of levels, are within 10 points of each other.', 'Persons and stores on one side are not known.',
    ],
    examples: [{
        name: 'over three degrees',
        bad: `vessel "Marram" { beam: 3.6 m }
reading M1 "Freeboards" { measures: freeboard  row "Amidships": 1.10 m, 0.85 m }
`,
        fixed: `vessel "Marram" { beam: 3.6 m }
reading M1 "Freeboards" { measures: freeboard  row "Amidships": 1.00 m, 0.97 m }
`,
    }, {
        name: 'a list with even tanks',
        bad: `vessel "Marram" { beam: 12 ft }
reading M1 "Freeboards" { measures: freeboard  tanks-even: yes  row "Amidships": 40 in, 36-1/2 in }
`,
        fixed: `vessel "Marram" { beam: 12 ft }
reading M1 "Freeboards" { measures: freeboard  tanks-even: yes  row "Amidships": 40 in, 39 in }
`,
    }],
    silent: [
        { name: 'with uneven tanks', text: 'vessel "Marram" { beam: 12 ft }\nreading M1 "Freeboards" { measures: freeboard  tanks-even: no  row "Amidships": 40 in, 36-1/2 in }\n' },
        { name: 'under a degree', text: 'vessel "Marram" { beam: 3.6 m }\nreading M1 "Freeboards" { measures: freeboard  tanks-even: yes  row "Amidships": 1.00 m, 0.95 m }\n' },
        { name: 'one side measured', text: 'vessel "Marram" { beam: 3.6 m }\nreading M1 "Freeboards" { measures: freeboard  columns: port  row "Amidships": 1.00 m }\n' },
    ],
    run(record, raise) {
        for (const [reading, rows] of tablesOf(record)) {
            const problem = judge(record, reading, rows);
            if (problem) {
                raise(problem);
            }
        }
    },
});

type Freeboards = { readonly row: Row<'freeboard-row'>; readonly port: number; readonly starboard: number };

function tablesOf(record: SurveyRecord): ReadonlyMap<Reading, readonly Freeboards[]> {
    const tables = new Map<Reading, Freeboards[]>();
    for (const { reading, row } of rowsOf(record, 'freeboard')) {
        const port = siOf(row, 'port');
        const starboard = siOf(row, 'starboard');
        if (port !== undefined && starboard !== undefined) {
            tables.set(reading, [...tables.get(reading) ?? [], { row, port, starboard }]);
        }
    }
    return tables;
}

/** Rows with the breadth each is judged by; undefined where none is known. */
function withBreadth(record: SurveyRecord, rows: readonly Freeboards[]): readonly (Freeboards & { readonly breadth: number })[] {
    const own = rows.flatMap(row => {
        const breadth = siOf(row.row, 'width');
        return breadth === undefined ? [] : [{ ...row, breadth }];
    });
    const beam = record.vessel ? siOf(record.vessel, 'beam') : undefined;
    const midship = rows.filter(({ row }) => /\b(?:a?mid-?ships?|middle)\b/i.test(row.label));
    return own.length > 0 ? own : beam === undefined ? [] : (midship.length > 0 ? midship : rows).map(row => ({ ...row, breadth: beam }));
}

/** Whether tanks of both sides were even: as said, else by a table of levels. */
function areTanksEven(record: SurveyRecord, reading: Reading): boolean | undefined {
    const said = flagOf(reading, 'tanks-even');
    if (said !== undefined) {
        return said;
    }
    const levels = (side: string): number[] => rowsOf(record, 'level').flatMap(({ row }) => {
        const tank = row.facts.get('tank')?.values[0];
        const component = tank?.type === 'component' ? record.components.get(tank.id) : undefined;
        const level = siOf(row, 'at-start');
        return component && wordOf(component, 'side') === side && level !== undefined ? [level] : [];
    });
    const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
    const [port, starboard] = [levels('port'), levels('starboard')];
    return port.length > 0 && starboard.length > 0 ? Math.abs(mean(port) - mean(starboard)) <= 0.1 + 1e-9 : undefined;
}

function judge(record: SurveyRecord, reading: Reading, rows: readonly Freeboards[]): Raised | undefined {
    const judged = withBreadth(record, rows);
    const name = `${reading.title ?? 'Freeboards'} (${reading.id})`;
    const hint = (message: string): Raised => ({ components: reading.on, at: reading.idSpan, severity: 'hint', message });
    const angles = judged.flatMap(({ port, starboard, breadth }) => listRad(port, starboard, breadth) ?? []);
    if (angles.length === 0) {
        return rows.every(({ port, starboard }) => port === starboard) ? undefined : hint(`${name} differ from side to side; record the beam of the vessel, or the width of each row, to tell her list.`);
    }
    const rad = angles.reduce((sum, angle) => sum + angle, 0) / angles.length;
    const step = listStep(rad);
    const degrees = toTenth(Math.abs(rad) * 180 / Math.PI);
    const side = rad > 0 ? 'starboard' : 'port';
    const even = areTanksEven(record, reading);
    if (step === 'asked' && even === undefined) {
        return hint(`${name}: she lists ${degrees}° to ${side}; record whether her tanks were even from side to side (tanks-even), which decides whether that is to be explained.`);
    }
    return step === 'none' || (step === 'asked' && even === false) ? undefined : problem(record, reading, rows, rad, step === 'fault', even);
}

function problem(record: SurveyRecord, reading: Reading, rows: readonly Freeboards[], rad: number, isFault: boolean, even: boolean | undefined): Raised {
    const degrees = toTenth(Math.abs(rad) * 180 / Math.PI);
    const side = rad > 0 ? 'starboard' : 'port';
    const most = Math.max(...rows.map(({ port, starboard }) => Math.abs(port - starboard)));
    const tanks = even === undefined ? '' : even ? ' with even tanks' : ', her tanks not being even';
    return {
        components: reading.on, at: rows[0]?.row.span ?? reading.idSpan,
        ...(isFault ? {} : { severity: 'warning' as const }),
        message: `By the freeboards of ${reading.id}, which differ by up to ${lengthBoth(most)}, she lists ${degrees}° to ${side}${tanks}, over ${isFault ? '3' : '1'}°. That tells of water or weight unaccounted for; find the cause.`,
        figures: { list: { value: Number(degrees), unit: 'deg' } },
        draft: {
            title: `She lists ${degrees}° to ${side}`, urgency: isFault ? 'before-departure' : 'note-only',
            seen: `By the freeboards measured (${reading.id}) she lists ${degrees}° to ${side}${tanks}.`,
            because: `A list tells of water or weight that is not accounted for${isFault ? ', and takes from the stability she has to one side' : ''}.`,
            recommend: isFault ? 'Sound tanks, bilges and closed spaces, weigh what is stowed on either side, and find the cause before she leaves her berth.' : 'Sound tanks, bilges and closed spaces, and note what explains it.',
            cites: [['Good practice']],
        },
    };
}
