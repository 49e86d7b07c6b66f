/** Hostile and odd text in every name and label that a drawing shows. */
import { expect, test } from 'vitest';
import { drawReading } from '../../../src/report/drawings/of-reading.js';
import { openingsPlan } from '../../../src/report/drawings/openings-plan.js';
import { drawRun } from '../../../src/report/drawings/schematic.js';
import { urgencyOverview } from '../../../src/report/drawings/urgency-overview.js';
import { html } from '../../../src/report/html.js';
import { all, anyContextOf, expectSound, svgsOf, treeOf, type Drawn } from './drawn.js';

const survey = (text: string) => `
vessel "${text}" { type: sailing-yacht  length-overall: 12 m  beam: 3.6 m }
system hull "${text}" {
    deck D1 "${text}" { material: cored-grp }
    plate P1 "${text}" { metal: steel }
    main-engine E1 "${text}" { rated-rotation: 2800 rpm }
    reading M1 "${text}" on D1 { measures: moisture  reference: 10  columns: "${text}", "B"  row "${text}": 11, 22, tank }
    reading M2 "${text}" on D1 { measures: percussion  row "${text}": dull, 0.2 m2, 3 m2 }
    reading M3 "${text}" on P1 { measures: thickness  columns: original, reading  row "${text}": 6 mm, 4 mm }
    reading M4 "${text}" { measures: potential  cell: silver-chloride  gear: steel  row "${text}": -900 mV  row "B": -600 mV }
    reading M5 "${text}" on E1 { measures: trial  row "${text}": 1000 rpm, 5 kn  row "B": 2000 rpm, 7 kn }
    through-hull T1 "${text}" { side: port  from-bow: 2 m  size: 1 in }
    hose H1 "${text}" { bore: 25 mm }
    run R1 "${text}": T1 -> H1 -> open
    finding F1 "${text}" on H1 { urgency: before-launch }
    finding F2 "${text}" on D1 { urgency: before-launch }
}
`;
const shapes = new Set(['svg', 'title', 'desc', 'g', 'path', 'rect', 'circle', 'text', 'figure', 'figcaption', 'div', 'strong', 'ol', 'li', 'span', 'p', 'a', 'table', 'caption', 'thead', 'tbody', 'tr', 'th', 'td']);

function tagsOf(nodes: readonly Drawn[]): string[] {
    return nodes.flatMap(node => [node.tag, ...tagsOf(node.children)]);
}

test.each([
    '<script>alert(1)</script>', '\\"><img src=x onerror=alert(1)>', '</title></svg><iframe src=//evil.example>', ']]><!--', '&lt;script&gt; &amp;', '\u202eTfel\u2066', '\u0000\u0008', '`${alert(1)}`',
    'W'.repeat(4000), 'Süßwasser-Einlaß, ñandú, 海水取入口 🛥️', 'يمين السفينة', '',
])('%j', text => {
    const context = anyContextOf(survey(text));
    expect(context.record.readings).toHaveLength(5);
    const drawings = [...context.record.readings.map(reading => drawReading(context, reading)), openingsPlan(context), ...context.record.runs.map(run => drawRun(context, run, 'run-R1')), urgencyOverview(context) ?? html``];
    const markup = html`${drawings}`;
    expectSound(markup);
    expect(svgsOf(markup)).toHaveLength(7);
    const tree = treeOf(markup);
    expect(tagsOf(tree).filter(tag => !shapes.has(tag))).toEqual([]);
    for (const node of tagsOf(tree).length > 0 ? [...shapes].flatMap(tag => all(tree, tag)) : []) {
        expect([...node.attributes.keys()].filter(name => /^(?:on|style$|src|xlink)/.test(name))).toEqual([]);
        expect(node.attributes.get('href') ?? '#').toMatch(/^#[A-Za-z0-9_-]*$/);
    }
    expect(String(markup)).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u0000-\u0008]/);
});

test('half-typed text gives sound drawings or none', () => {
    const whole = survey('Probe');
    for (let end = 0; end < whole.length; end += 41) {
        const context = anyContextOf(whole.slice(0, end));
        expectSound(html`${context.record.readings.map(reading => drawReading(context, reading))}${openingsPlan(context)}${context.record.runs.filter(run => run.components.length > 0).map(run => drawRun(context, run, `run-${run.id}`))}${urgencyOverview(context) ?? ''}`);
    }
});
