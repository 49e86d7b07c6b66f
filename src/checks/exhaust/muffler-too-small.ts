/** A muffler that cannot hold what runs back into it when the engine stops. */
import { convertTo } from '../../quantities/index.js';
import { flagOf, isKind, nameOf, ofKind, runsThrough, siOf, type Component, type SurveyRecord } from '../../record/model.js';
import { drainBackM3, leastMufflerM3, longestDrainBackM, mufflerMargin } from '../../trade/muffler.js';
import { defineCheck, type Raised } from '../contract.js';
import { both, computedBoth } from '../phrasing.js';
import { measured } from '../../record/trial-runs.js';

export const mufflerTooSmall = defineCheck({
    id: 'muffler-too-small',
    group: 'exhaust',
    severity: 'error',
    title: 'Muffler is too small for what runs back',
    why: 'What the muffler cannot hold runs back into the engine.',
    needs: ['muffler: volume', 'muffler: drain-back-length, and outlet-bore or the bore of the exhaust hose after it in a run', 'or the whole length of that hose, which bounds it'],
    computes: 'V = π ÷ 4 × bore² × length draining back. A fault where the muffler holds less than 1.3 V. Where only the whole length of the hose is known it is silent if 1.3 V of that would fit, and asks otherwise.',
    sources: [{ text: 'volume of the hose', provenance: 'computed' }, { text: 'margin of 1.3; makers differ', provenance: 'practice' }],
    limits: [
        'The hose is taken as full of water, which is on the careful side.',
        'Water that stands in the muffler already is covered by the margin alone.',
        'A high loop between muffler and outlet shortens what drains back; record the length up to it.',
    ],
    examples: [{
        name: 'small muffler under a long hose',
        bad: `vessel "Marram" {}
muffler M1 { volume: 8 L  outlet-bore: 3 in  drain-back-length: 2 m }
`,
        fixed: `vessel "Marram" {}
muffler M1 { volume: 12 L  outlet-bore: 3 in  drain-back-length: 2 m }
`,
    }, {
        name: 'bore of the hose after it',
        bad: `exhaust-riser ER1 { spigot: 3 in }
exhaust-hose XH1 { bore: 3 in  length: 2 ft  class: wet-exhaust  clamps: 2 }
muffler M1 { volume: 1-1/2 gal  drain-back-length: 6 ft  ends: 3 in, 3 in }
exhaust-hose XH2 { bore: 3 in  length: 12 ft  class: wet-exhaust  clamps: 2 }
run XR1 "Exhaust" { service: exhaust }: ER1 -> XH1 -> M1 -> XH2
`,
        fixed: `exhaust-riser ER1 { spigot: 3 in }
exhaust-hose XH1 { bore: 3 in  length: 2 ft  class: wet-exhaust  clamps: 2 }
muffler M1 { volume: 4 gal  drain-back-length: 6 ft  ends: 3 in, 3 in }
exhaust-hose XH2 { bore: 3 in  length: 12 ft  class: wet-exhaust  clamps: 2 }
run XR1 "Exhaust" { service: exhaust }: ER1 -> XH1 -> M1 -> XH2
`,
    }],
    silent: [
        { name: 'short hose', text: 'muffler M1 { volume: 8 L  outlet-bore: 3 in  drain-back-length: 1.2 m }\n' },
        { name: 'narrow hose', text: 'muffler M1 { volume: 8 L  outlet-bore: 2 in  drain-back-length: 2 m }\n' },
        { name: 'length that drains back not known', text: 'muffler M1 { volume: 8 L  outlet-bore: 3 in }\n' },
        { name: 'whole hose would fit', text: 'muffler M1 { volume: 30 L  ends: 3 in, 3 in }\nexhaust-hose XH2 { bore: 3 in  length: 3 m  class: wet-exhaust  clamps: 2 }\nrun XR1 "Exhaust" { service: exhaust }: M1 -> XH2\n' },
    ],
    run(record, raise) {
        for (const muffler of ofKind(record, 'muffler')) {
            const problem = judge(record, muffler);
            if (problem) {
                raise(problem);
            }
        }
    },
});

interface After {
    /** The first hose that leads on from the muffler. */
    readonly hose: Component;
    readonly boreM: number;
    /** What all the hose from there to the outlet holds; none where a bore or length is not known. */
    readonly wholeM3?: number;
}

/** The hose that leads on from a muffler to the outlet, whichever way its run is recorded. */
function hoseAfter(record: SurveyRecord, muffler: Component): After | undefined {
    for (const run of runsThrough(record, muffler)) {
        const index = run.components.indexOf(muffler);
        const [before, after] = [run.components.slice(0, index).reverse(), run.components.slice(index + 1)];
        const isInward = after.some(part => (['exhaust-riser', 'engine', 'turbo'] as const).some(kind => isKind(record, part, kind)));
        const hoses = (isInward ? before : after).filter(part => isKind(record, part, 'hose'));
        const [hose] = hoses;
        const boreM = hose && siOf(hose, 'bore');
        if (hose && boreM !== undefined) {
            const volumes = hoses.map(part => {
                const [bore, length] = [siOf(part, 'bore'), siOf(part, 'length')];
                return bore === undefined || length === undefined ? undefined : drainBackM3(bore, length);
            });
            const known = volumes.filter(volume => volume !== undefined);
            return { hose, boreM, ...(known.length === volumes.length ? { wholeM3: known.reduce((sum, volume) => sum + volume, 0) } : {}) };
        }
    }
    return undefined;
}

function judge(record: SurveyRecord, muffler: Component): Raised | undefined {
    const volume = siOf(muffler, 'volume');
    const drains = siOf(muffler, 'drain-back-length');
    const after = hoseAfter(record, muffler);
    const bore = siOf(muffler, 'outlet-bore') ?? after?.boreM;
    const back = drains === undefined ? after?.wholeM3 : bore === undefined ? undefined : drainBackM3(bore, drains);
    if (back === undefined) {
        return drains !== undefined && volume !== undefined ? asks(muffler, 'drain-back-length', 'record outlet-bore to tell whether it holds what runs back into it') : undefined;
    }
    if (volume === undefined) {
        return drains === undefined ? undefined : asks(muffler, 'drain-back-length', `about ${computedBoth(back, 'volume')} may run back into it; record its volume to tell whether it holds that`);
    }
    const needed = leastMufflerM3(back);
    if (volume >= needed - 1e-9) {
        return undefined;
    }
    return drains === undefined || bore === undefined ? asks(muffler, 'volume', `it holds less than ${mufflerMargin} times what the whole of the hose from ${after?.hose.id ?? 'it'} on would let run back; record drain-back-length, up to the highest point of the hose, to tell whether it is enough`)
        : problem(record, muffler, { volume, bore, drains, needed, after });
}

function asks(muffler: Component, at: string, text: string): Raised {
    return { components: [muffler], at: muffler.facts.get(at)?.span ?? muffler.idSpan, severity: 'hint', message: `${nameOf(muffler)}: ${text}.` };
}

interface Sizes {
    readonly volume: number;
    readonly bore: number;
    readonly drains: number;
    readonly needed: number;
    readonly after: After | undefined;
}

/** Whether water was found where it does harm, on the engine's side of the muffler. */
function isWaterFound(record: SurveyRecord): boolean {
    return ofKind(record, 'exhaust-riser').some(riser => flagOf(riser, 'water-found') === true) || ofKind(record, 'engine').some(engine => flagOf(engine, 'water-in-cylinders') === true);
}

/** A figure as recorded, with the other system after it. */
function recorded(part: Component, property: string, si: number): string {
    const known = measured(part, property);
    return known ? both(known.quantity) : computedBoth(si, 'length');
}

function problem(record: SurveyRecord, muffler: Component, { volume, bore, drains, needed, after }: Sizes): Raised {
    const back = needed / mufflerMargin;
    const isFound = isWaterFound(record);
    const boreSeen = muffler.facts.has('outlet-bore') ? `{${muffler.id}.outlet-bore}` : `{${after?.hose.id ?? muffler.id}.bore}`;
    const liters = (m3: number) => ({ value: Math.round(m3 * 1e5) / 100, unit: 'L' });
    return {
        components: after ? [muffler, after.hose] : [muffler],
        at: muffler.facts.get('volume')?.span ?? muffler.idSpan,
        message: `${nameOf(muffler)} holds ${recorded(muffler, 'volume', volume)}, where ${recorded(muffler, 'drain-back-length', drains)} of hose of ${recorded(muffler.facts.has('outlet-bore') ? muffler : after?.hose ?? muffler, muffler.facts.has('outlet-bore') ? 'outlet-bore' : 'bore', bore)} bore let ${computedBoth(back, 'volume')} run back and ${mufflerMargin} times that, ${computedBoth(needed, 'volume')}, is the least. What it cannot hold runs back into the engine${isFound ? ', where water was found' : ''}; fit a larger muffler, or a high loop close behind it.`,
        figures: { volume: liters(volume), 'drain-back': liters(back), least: liters(needed), bore: { value: convertTo(bore, 'mm'), unit: 'mm' } },
        draft: {
            title: `Muffler ${muffler.title ?? muffler.id} is too small`,
            urgency: isFound ? 'before-departure' : 'in-upkeep',
            seen: `${muffler.title ?? 'The muffler'} (${muffler.id}) holds {${muffler.id}.volume}; {${muffler.id}.drain-back-length} of hose of ${boreSeen} bore drain back into it, about ${computedBoth(back, 'volume')}${isFound ? ', and water was found on the engine’s side' : ''}.`,
            because: `It is to hold ${mufflerMargin} times what runs back, ${computedBoth(needed, 'volume')}; what it cannot hold runs back into the engine.`,
            recommend: `Fit a muffler of at least ${computedBoth(needed, 'volume')}, or lead the hose over a high point close behind ${muffler.id}, so that no more than ${computedBoth(longestDrainBackM(volume, bore), 'length')} of it drain back.`,
        },
    };
}
