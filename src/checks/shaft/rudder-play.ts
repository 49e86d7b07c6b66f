/** A rudder whose bearings are worn, or whose tip moves too far. */
import { nameOf, ofKind, yardstick, type Component, type Quantity, type SurveyRecord } from '../../record/model.js';
import { playStep, rudderBearingLimitM } from '../../trade/rudder.js';
import { defineCheck, type Raised } from '../contract.js';
import { both, computedBoth, lengthBoth, listed } from '../phrasing.js';
import { clearanceOf, clearanceSeen } from './clearance.js';
import { measured } from '../../record/trial-runs.js';

export const rudderPlay = defineCheck({
    id: 'rudder-play',
    group: 'shaft',
    severity: 'error',
    title: 'Rudder has too much play',
    why: 'A loose rudder flutters, hammers its bearings wider, and at last steers no more.',
    needs: ['rudder: bearing-clearance and stock-diameter, or a table of play with radial and shaft', 'rudder: tip-play'],
    computes: 'A fault where the clearance in a bearing is over 2 % of the stock, or the tip moves more than 6 mm; from double either limit on it is due before she departs.',
    sources: [{ text: '2 % of the stock, 6 mm at the tip; practice differs', provenance: 'practice' }],
    yardsticks: ['rudder-wear', 'rudder-tip-play'],
    limits: [
        'The play of the whole linkage at the wheel is another matter and is not judged here.',
        'Plastic bearings swell and are fitted slack; their maker’s figure goes before these.',
        'The length of the blade, which a play at the tip grows with, is not asked for.',
    ],
    examples: [{
        name: 'worn bearing',
        bad: `vessel "Marram" {}
rudder RU1 { stock-diameter: 50 mm  bearing-clearance: 1.5 mm }
`,
        fixed: `vessel "Marram" {}
rudder RU1 { stock-diameter: 50 mm  bearing-clearance: 0.5 mm }
`,
    }, {
        name: 'play at the tip',
        bad: `rudder RU1 { tip-play: 1/2 in }
`,
        fixed: `rudder RU1 { tip-play: 1/8 in }
`,
    }, {
        name: 'worn in a table of play',
        bad: `rudder RU1
reading PL1 "Play" {
    measures: play
    columns: part, radial, shaft
    row "Lower bearing": RU1, 1.4 mm, 50 mm
}
`,
        fixed: `rudder RU1
reading PL1 "Play" {
    measures: play
    columns: part, radial, shaft
    row "Lower bearing": RU1, 0.9 mm, 50 mm
}
`,
    }],
    silent: [
        { name: 'clearance at its limit', text: 'rudder RU1 { stock-diameter: 50 mm  bearing-clearance: 1 mm }\n' },
        { name: 'a larger stock', text: 'rudder RU1 { stock-diameter: 80 mm  bearing-clearance: 1.5 mm }\n' },
        { name: 'play at the tip at its limit', text: 'rudder RU1 { tip-play: 6 mm }\n' },
        { name: 'nothing measured', text: 'rudder RU1 { stock-diameter: 50 mm }\n' },
        { name: 'firm that allows 4 %', text: 'yardsticks { rudder-wear: 4 % }\nrudder RU1 { stock-diameter: 50 mm  bearing-clearance: 1.5 mm }\n' },
    ],
    run(record, raise) {
        for (const rudder of ofKind(record, 'rudder')) {
            const over = [atBearing(record, rudder), atTip(record, rudder)].filter(play => play !== undefined);
            if (over.length > 0) {
                raise(problem(rudder, over));
                continue;
            }
            const clearance = clearanceOf(record, rudder, 'bearing-clearance');
            if (clearance && !clearance.shaft && !rudder.facts.has('stock-diameter')) {
                raise({
                    components: [rudder], at: clearance.at, severity: 'hint',
                    message: `${nameOf(rudder)} has a clearance of ${both(clearance.quantity)} in its bearing; record stock-diameter to tell whether it is worn.`,
                });
            }
        }
    },
});

interface Play {
    readonly at: Raised['at'];
    readonly what: string;
    readonly seen: string;
    readonly isDouble: boolean;
    readonly figures: NonNullable<Raised['figures']>;
}

const millimeters = (m: number) => ({ value: Math.round(m * 1e6) / 1000, unit: 'mm' });

function atBearing(record: SurveyRecord, rudder: Component): Play | undefined {
    const clearance = clearanceOf(record, rudder, 'bearing-clearance');
    const stock = clearance?.shaft ?? measured(rudder, 'stock-diameter');
    if (!clearance || !stock) {
        return undefined;
    }
    const share = yardstick(record, 'rudder-wear');
    const limitM = rudderBearingLimitM(stock.quantity.si, share.si);
    const step = playStep(clearance.quantity.si, limitM);
    const limit = `${lengthBoth(limitM)}, ${share.written} of its stock of ${both(stock.quantity)} (${share.whose})`;
    const stockSeen = clearance.shaft ? both(stock.quantity) : `{${rudder.id}.stock-diameter}`;
    return step === 'within' ? undefined : {
        at: clearance.at, isDouble: step === 'double',
        what: `has a clearance of ${both(clearance.quantity)} in its bearing, over ${limit}`,
        seen: `has a clearance ${clearanceSeen(rudder, 'bearing-clearance', clearance)} in its bearing, over ${lengthBoth(limitM)}, which is ${share.written} of a stock of ${stockSeen} (${share.whose})`,
        figures: { clearance: millimeters(clearance.quantity.si), limit: millimeters(limitM) },
    };
}

function atTip(record: SurveyRecord, rudder: Component): Play | undefined {
    const tip: { readonly quantity: Quantity; readonly fact: { readonly span: Raised['at'] } } | undefined = measured(rudder, 'tip-play');
    const limit = yardstick(record, 'rudder-tip-play');
    const step = tip ? playStep(tip.quantity.si, limit.si) : 'within';
    const limitText = `${computedBoth(limit.si, 'length')} (${limit.whose})`;
    return !tip || step === 'within' ? undefined : {
        at: tip.fact.span, isDouble: step === 'double',
        what: `moves ${both(tip.quantity)} at its tip, over ${limitText}`,
        seen: `moves {${rudder.id}.tip-play} at its tip, over ${limitText}`,
        figures: { 'tip-play': millimeters(tip.quantity.si), 'tip-limit': millimeters(limit.si) },
    };
}

function problem(rudder: Component, plays: readonly Play[]): Raised {
    const [first] = plays;
    const isDouble = plays.some(play => play.isDouble);
    return {
        components: [rudder],
        at: first?.at ?? rudder.idSpan,
        message: `${nameOf(rudder)} ${listed(plays.map(play => play.what))}${isDouble ? ', double that or more' : ''}. A loose rudder flutters, hammers its bearings wider, and steering is lost in the end; renew its bearings.`,
        figures: Object.assign({}, ...plays.map(play => play.figures)) as NonNullable<Raised['figures']>, // Each is such a record.
        draft: {
            title: `Play in rudder ${rudder.title ?? rudder.id}`,
            urgency: isDouble ? 'before-departure' : 'next-haul-out',
            seen: `${rudder.title ?? 'The rudder'} (${rudder.id}) ${listed(plays.map(play => play.seen))}.`,
            because: 'A loose rudder flutters under way, which hammers its bearings wider and may end in the loss of steering.',
            recommend: `Unship rudder ${rudder.id}, measure stock and bearings, and renew what is worn; look the stock over for cracks and pitting while it is out.`,
        },
    };
}
