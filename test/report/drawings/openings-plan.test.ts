import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { halfBreadthAt, openingsPlan, placedOpenings, stateOf } from '../../../src/report/drawings/openings-plan.js';
import { all, anyContextOf, contextOf, descriptionOf, expectSound, number, pointsOf, surveys, svgsOf, textsOf, type Drawn } from './drawn.js';

const vessel = 'vessel "Probe" { type: sailing-yacht  length-overall: 12 m  length-on-deck: 11 m  beam: 3.6 m }\n';
const draw = (text: string, head = vessel, make = contextOf) => openingsPlan(make(head + text));

/** Signs of the openings: the groups without lettering. */
const signsOf = (svg: Drawn | undefined) => (svg ? all([svg], 'g') : []).filter(group => all([group], 'text').length === 0);
/** The places that the leaders end at, by the id that begins each label. */
function placesOf(svg: Drawn | undefined): Map<string, { x: number; y: number; labelX: number; labelY: number }> {
    return new Map((svg ? all([svg], 'g') : []).filter(group => all([group], 'text').length > 0).map(group => {
        const label = all([group], 'text')[0];
        const at = pointsOf(all([group], 'path')[0]?.attributes.get('d') ?? '').at(-1) ?? { x: Number.NaN, y: Number.NaN };
        return [label?.text.split(' ')[0] ?? '', { ...at, labelX: number(label, 'x'), labelY: number(label, 'y') }];
    }));
}

describe('openings with positions', () => {
    const markup = draw(`
through-hull A "Engine intake" { side: starboard  from-bow: 5.5 m  from-centerline: 0.4 m  below-waterline: 0.5 m  size: 1 in }
seacock AV { works: free }
run R1: A -> AV
through-hull B "Drain" { side: port  from-stern: 1 m  above-waterline: 0.2 m }
through-hull C "Sounder" { side: centerline  from-bow: 3 m }
through-hull D "No side" { from-bow: 4 m }
through-hull E "No place" { side: port }
`);
    const [svg] = svgsOf(markup);
    const places = placesOf(svg);
    test('as many signs as openings that can be drawn; the others are named', () => {
        expectSound(markup);
        expect(signsOf(svg)).toHaveLength(3);
        expect(String(markup)).toContain('Not drawn, for want of a position or a side: D, E.');
    });
    test('places along the hull are to scale of the length on deck, from bow or stern', () => {
        const [a, b, c] = ['A', 'B', 'C'].map(id => places.get(id));
        expect(((b?.y ?? 0) - (c?.y ?? 0)) / ((a?.y ?? 0) - (c?.y ?? 0))).toBeCloseTo((10 - 3) / (5.5 - 3), 2);
    });
    test('starboard lies right of the centerline by as much as recorded on the same scale, port left, with labels beside them', () => {
        const [a, b, c] = ['A', 'B', 'C'].map(id => places.get(id));
        expect(((a?.x ?? 0) - (c?.x ?? 0)) / ((a?.y ?? 0) - (c?.y ?? 0))).toBeCloseTo(0.4 / 2.5, 2);
        expect(b?.x).toBeLessThan(c?.x ?? 0);
        expect(a?.labelX).toBeGreaterThan(a?.x ?? Infinity);
        expect(b?.labelX).toBeLessThan(b?.x ?? 0);
        expect(String(markup)).toContain('Where the distance from the centerline is not recorded (B), an opening is drawn part-way out on its side.');
    });
    test('below the waterline is full, above it hollow, unknown dashed: by form, not by color', () => {
        const shapes = signsOf(svg).map(sign => [...all([sign], 'circle'), ...all([sign], 'path')][0]?.attributes);
        const looks = shapes.map(shape => `${shape?.get('fill') ?? ''} ${shape?.get('stroke-dasharray') ?? ''}`);
        expect(looks.sort()).toEqual(['#17212b ', '#fff ', '#fff 2 1.5']);
    });
    test('the text alternative counts and names states and extremes', () => {
        expect(svg && descriptionOf(svg)).toBe('3 openings, bow up: 1 to port, 1 on the centerline, 1 to starboard; 1 below the waterline. Valve works: A. No valve recorded: B, C. Foremost C 3 m (9 ft 10 in) from the bow; aftermost B 10 m (32 ft 9-1/2 in) from the bow.');
    });
});

test('the state of an opening is what is recorded of its valve, its run and its closure', () => {
    const { record } = contextOf(`${vessel}
through-hull A { from-bow: 1 m }\nseacock AV { works: free }\nrun RA: A -> AV
through-hull B { from-bow: 1 m }\nseacock BV { works: seized }\nrun RB: B -> BV
through-hull C { from-bow: 1 m }\nseacock CV { }\nrun RC: C -> CV
through-hull D { from-bow: 1 m }\nseacock DV { works: free }\nrun RD: D -> DV -> open
through-hull E { from-bow: 1 m }\nseacock EV { works: free }\nrun RE: E -> EV -> capped
through-hull F { from-bow: 1 m  closure: glassed-over }
through-hull G { from-bow: 1 m  closure: plug-in-hose }
through-hull H { from-bow: 1 m }
through-hull I { from-bow: 1 m }\nseacock IV { works: free  handle: gone }\nrun RI: I -> IV
`);
    expect([...'ABCDEFGHI'].map(id => {
        const opening = record.components.get(id);
        return opening && stateOf(record, opening);
    })).toEqual(['works', 'fault', 'untried', 'open', 'closed', 'closed', 'open', 'none', 'fault']);
});

test('without a position there is no plan, without a length one to the aftermost opening', () => {
    expect(String(draw('through-hull A { side: port }\n'))).toBe('');
    expect(String(draw(''))).toBe('');
    const markup = draw('through-hull A { side: port  from-bow: 5 m }\nthrough-hull B { side: port  from-stern: 1 m }\n', 'vessel "X" { }\n');
    expect(String(markup)).toContain('Her length is not recorded');
    expect(String(markup)).toContain('Not drawn, for want of a position or a side: B.');
    expectSound(markup);
});

test('what lies beyond the hull is drawn at its end and told', () => {
    expect(String(draw('through-hull A { side: port  from-bow: 14 m }\n'))).toContain('Recorded beyond the ends of the hull and drawn at its end: A.');
});

test('a catamaran has two hulls, and an opening lies in the one of its side', () => {
    const markup = draw('through-hull A { side: port  from-bow: 5 m }\nthrough-hull B { side: starboard  from-bow: 5 m }\n', 'vessel "X" { type: catamaran  length-overall: 12 m  beam: 6 m  hull-beam: 1.5 m }\n');
    const [svg] = svgsOf(markup);
    const places = placesOf(svg);
    // Middles of the hulls are at 3 - 0.75 = 2.25 m on either side.
    expect((places.get('B')?.x ?? 0) - 220).toBeCloseTo(220 - (places.get('A')?.x ?? 0), 1);
    const hulls = (svg ? all([svg], 'path') : []).filter(path => path.attributes.get('d')?.endsWith('Z') && path.attributes.get('stroke-width') === '1.8');
    expect(hulls).toHaveLength(2);
    expectSound(markup);
});

test('an opening on both sides is drawn twice', () => {
    expect(signsOf(svgsOf(draw('scupper A { side: both  from-bow: 5 m }\n'))[0])).toHaveLength(2);
});

test('half breadths are taken between those given, and at the ends', () => {
    const form = [[0, 0], [0.5, 1], [1, 0.5]] as const;
    expect([-1, 0, 0.25, 0.5, 0.75, 1, 2].map(share => halfBreadthAt(form, share))).toEqual([0, 0, 0.5, 1, 0.75, 0.5, 0.5]);
});

const opening = fc.record({
    side: fc.constantFrom('port', 'starboard', 'centerline', 'both'), bow: fc.integer({ min: 0, max: 160 }), across: fc.option(fc.integer({ min: 0, max: 30 }), { nil: undefined }),
    height: fc.constantFrom('below-waterline: 0.3 m', 'above-waterline: 0.1 m', ''), title: fc.constantFrom('Intake', 'Ablauf für Spülwasser und ein sehr langer Name', '<b>&"'.replace('"', ''), ''),
});
surveys('any openings: inside the drawing, one sign and one label each, labels never on one another', fc.tuple(fc.array(opening, { minLength: 1, maxLength: 45 }), fc.constantFrom('sailing-yacht', 'motor-yacht', 'catamaran', 'trimaran', 'houseboat')), ([openings, type]) => {
    const context = anyContextOf(`vessel "X" { type: ${type}  length-overall: 12 m  beam: 4.2 m }\n${openings.map(({ side, bow, across, height, title }, i) =>
        `through-hull T${i} "${title}" { side: ${side}  from-bow: ${bow / 10} m  ${across === undefined ? '' : `from-centerline: ${across / 10} m  `}${height} }\n`).join('')}`);
    const markup = openingsPlan(context);
    expectSound(markup);
    const [svg] = svgsOf(markup);
    const { placed } = placedOpenings(context.record, 12);
    expect(signsOf(svg)).toHaveLength(placed.length);
    const labels = (svg ? all([svg], 'g') : []).filter(group => all([group], 'text').length > 0).map(group => all([group], 'text')).map(([first]) => ({ x: number(first, 'x'), y: number(first, 'y') }));
    expect(labels).toHaveLength(placed.length);
    for (const x of new Set(labels.map(label => label.x))) {
        const ys = labels.filter(label => label.x === x).map(label => label.y).sort((a, b) => a - b);
        // Two lines of 10.5 and 9.5 need 24.
        expect(Math.min(Infinity, ...ys.slice(1).map((y, i) => y - (ys[i] ?? 0)))).toBeGreaterThanOrEqual(24);
    }
    expect(svg && textsOf(svg)).toEqual(expect.arrayContaining(['Port', 'Starboard', 'bow', 'stern']));
});
