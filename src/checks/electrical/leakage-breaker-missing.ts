/** Shore power that no leakage breaker guards, or one that does not trip as it must. */
import { leakageBreakerSinceYear, leakageTripA, leakageTripS, transformerReachM, tripsInTime } from '../../trade/shore-power.js';
import { flagOf, nameOf, ofKind, siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';
import { computedBoth } from '../phrasing.js';
import { isSaidAbsent } from '../safety/gear.js';

type Inlet = Component<'shore-inlet'>;
type LeakageBreaker = Component<'leakage-breaker'>;

export const leakageBreakerMissing = defineCheck({
    id: 'leakage-breaker-missing',
    group: 'electrical',
    severity: 'error',
    title: 'No leakage breaker on the shore power',
    why: 'Without one nothing parts her from the dock when current leaks into the water.',
    needs: ['shore-inlet: leakage-guarded, or an absent entry for the leakage breaker', 'leakage-breaker: works, trip-current, trip-time', 'transformer: distance-from-inlet', 'vessel: built or model-year'],
    computes: 'An inlet recorded as leakage-guarded: no, with no isolation transformer within 10 ft: a fault on a boat built in 2013 or later, advice on an older one or where the year is not recorded. A leakage breaker that does not trip, or only over 30 mA or after more than 100 ms: a fault.',
    sources: [
        { text: 'a leakage breaker of at most 30 mA and 100 ms, or an isolation transformer within 10 ft of the inlet', standard: 'ABYC E-11', clause: '11.11.1', provenance: 'secondary' },
        { text: 'boats from 2013 on', provenance: 'chosen' },
    ],
    limits: [
        'The standard is voluntary, and was not written for boats built before it: for them this is advice.',
        'The year is a chosen one: the edition of 2012 asks for the breaker; since when earlier ones did is not settled here.',
        'Which breaker guards which inlet is not followed: where several inlets are recorded, say leakage-guarded of each.',
        'Where neither a breaker nor leakage-guarded is recorded, it is asked for: it may not have been looked for.',
        'Distance of the breaker from the inlet is not judged.',
    ],
    examples: [{
        name: 'boat of 2016 without one',
        bad: `vessel "Marram" { built: 2016 }
shore-inlet SI1 { rating: 30 A  leakage-guarded: no }
`,
        fixed: `vessel "Marram" { built: 2016 }
shore-inlet SI1 { rating: 30 A  leakage-guarded: yes }
`,
        correction: 'Record SI1 as guarded by a leakage breaker',
    }, {
        name: 'boat of 1985 without one',
        bad: `vessel "Marram" { built: 1985 }
shore-inlet SI1 { rating: 30 A  leakage-guarded: no }
`,
        fixed: `vessel "Marram" { built: 1985 }
shore-inlet SI1 { rating: 30 A  leakage-guarded: no }
transformer T1 { distance-from-inlet: 10 ft }
`,
        correction: 'Record an isolation transformer within 10 ft of SI1',
    }, {
        name: 'breaker that does not trip',
        bad: `shore-inlet SI1 { rating: 30 A }
leakage-breaker LB1 { trip-current: 30 mA  works: no }
`,
        fixed: `shore-inlet SI1 { rating: 30 A }
leakage-breaker LB1 { trip-current: 30 mA  works: yes }
`,
    }],
    silent: [
        { name: 'isolation transformer within 10 ft', text: 'vessel "Marram" { built: 2016 }\nshore-inlet SI1 { leakage-guarded: no }\ntransformer T1 { distance-from-inlet: 2 m }\n' },
        { name: 'breaker that trips at 30 mA within 100 ms', text: 'vessel "Marram" { built: 2016 }\nshore-inlet SI1\nleakage-breaker LB1 { works: yes  trip-current: 30 mA  trip-time: 100 ms }\n' },
        { name: 'no shore power', text: 'vessel "Marram" { built: 2016 }\noutlet O1\n' },
    ],
    run(record, raise) {
        const inlets = ofKind(record, 'shore-inlet');
        const transformers = ofKind(record, 'transformer');
        if (transformers.some(isNear)) {
            return;
        }
        const breakers = ofKind(record, 'leakage-breaker');
        for (const breaker of breakers.filter(b => inlets.length > 0 && !trips(b))) {
            raise(doesNotTrip(breaker));
        }
        for (const inlet of inlets) {
            const isGuarded = flagOf(inlet, 'leakage-guarded') ?? (breakers.length === 0 && isSaidAbsent(record, breakerWords) ? false : undefined);
            const isUnsaid = isGuarded === undefined && breakers.length === 0;
            const unplaced = transformers.find(transformer => siOf(transformer, 'distance-from-inlet') === undefined);
            if (unplaced && (isGuarded === false || isUnsaid)) {
                raise({
                    components: [unplaced], at: unplaced.idSpan, severity: 'hint',
                    message: `${nameOf(unplaced)} stands for a leakage breaker where it is within ${reachText} of the inlet; record its distance-from-inlet.`,
                });
            } else if (isGuarded === false) {
                raise(missing(record, inlet));
            } else if (isUnsaid) {
                raise({
                    components: [inlet], at: inlet.idSpan, severity: 'hint',
                    message: `No leakage breaker is recorded for ${nameOf(inlet)}; record one, or that there is none (leakage-guarded: no).`,
                });
            }
        }
    },
});

/** Words of an absent entry that mean a leakage breaker. */
const breakerWords = /leakage (breaker|circuit|current)|earth leakage|ground fault|residual[ -]current|\b(ELCI|RCD|RCBO|RCCB|GFCI|ELCB)s?\b/i;

/** As the standard writes it. */
const reachText = `${Math.round(transformerReachM / 0.3048)} ft (${transformerReachM.toFixed(2)} m)`;

function isNear(transformer: Component<'transformer'>): boolean {
    return (siOf(transformer, 'distance-from-inlet') ?? Infinity) <= transformerReachM + 1e-9;
}

function tripFacts(breaker: LeakageBreaker): { readonly tripA?: number; readonly tripS?: number } {
    const [tripA, tripS] = [siOf(breaker, 'trip-current'), siOf(breaker, 'trip-time')];
    return { ...(tripA === undefined ? {} : { tripA }), ...(tripS === undefined ? {} : { tripS }) };
}

function trips(breaker: LeakageBreaker): boolean {
    return wordOf(breaker, 'works') !== 'no' && tripsInTime(tripFacts(breaker));
}

const rule = `${computedBoth(leakageTripA, 'current')} or less within ${leakageTripS * 1000} ms, by ABYC E-11`;

function doesNotTrip(breaker: LeakageBreaker): Raised {
    const { tripA, tripS } = tripFacts(breaker);
    const property = wordOf(breaker, 'works') === 'no' ? 'works' : tripsInTime(tripA === undefined ? {} : { tripA }) ? 'trip-time' : 'trip-current';
    const says = property === 'works' ? 'does not trip when tested' : property === 'trip-time' ? `takes ${((tripS ?? 0) * 1000).toFixed(0)} ms to trip` : `trips at ${computedBoth(tripA ?? 0, 'current')}`;
    const seen = property === 'works' ? 'did not trip when it was tested' : property === 'trip-time' ? `took {${breaker.id}.trip-time} to trip` : `trips at {${breaker.id}.trip-current}`;
    return {
        components: [breaker],
        at: breaker.facts.get(property)?.span ?? breaker.idSpan,
        message: `${nameOf(breaker)} ${says}, where a leakage breaker is to trip at ${rule}. It would not part her from the dock in time for a swimmer; renew it and test it.`,
        ...(tripA === undefined ? {} : { figures: { 'trip-current': { value: tripA * 1000, unit: 'mA' }, limit: { value: leakageTripA * 1000, unit: 'mA' } } }),
        draft: {
            title: `Leakage breaker ${breaker.id} does not trip as it must`,
            urgency: 'within-days',
            days: 30,
            seen: `Leakage breaker ${breaker.id} ${seen}.`,
            because: `It is to trip at ${rule}. Until it does nothing parts her from the dock in time when current leaks into the water.`,
            recommend: `Renew ${breaker.id} by one of ${computedBoth(leakageTripA, 'current')} and test it.`,
            cites: [['ABYC E-11', '11.11.1']],
        },
    };
}

function missing(record: SurveyRecord, inlet: Inlet): Raised {
    const built = record.vessel && (siOf(record.vessel, 'built') ?? siOf(record.vessel, 'model-year'));
    const isFault = built !== undefined && built >= leakageBreakerSinceYear;
    const standing = isFault ? 'ABYC E-11 asks for one on a boat of her year'
        : built === undefined ? 'the year she was built is not recorded, so this is advice' : `she is of ${built}, older than the demand for it, so this is advice`;
    const year = record.vessel?.facts.has('built') ? 'built' : 'model-year';
    return {
        components: [inlet],
        at: inlet.facts.get('leakage-guarded')?.span ?? inlet.idSpan,
        severity: isFault ? 'error' : 'warning',
        message: `No leakage breaker guards what ${nameOf(inlet)} feeds, and no isolation transformer within ${reachText} stands for it; ${standing}. Nothing parts her from the dock when current leaks into the water; fit one of ${computedBoth(leakageTripA, 'current')}.`,
        corrections: [
            { kind: 'set-fact', title: `Record ${inlet.id} as guarded by a leakage breaker`, component: inlet, property: 'leakage-guarded', value: 'yes' },
            { kind: 'declare', title: `Record an isolation transformer within 10 ft of ${inlet.id}`, beside: inlet, componentKind: 'transformer', idStem: 'T', facts: [['distance-from-inlet', '10 ft']] },
        ],
        draft: {
            title: 'No leakage breaker on the shore power',
            urgency: 'within-days',
            days: 30,
            seen: `No leakage breaker guards what shore inlet ${inlet.id} feeds, and no isolation transformer stands within ${reachText} of it.${built === undefined ? '' : ` She is of {vessel.${year}}.`}`,
            because: `${isFault ? `A leakage breaker is to trip at ${rule}` : 'Boats of her age were built without one; it is advised, not asked of them'}. Without it nothing parts her from the dock when current leaks into the water, which can electrocute a swimmer.`,
            recommend: `Have a marine electrician fit a leakage breaker of ${computedBoth(leakageTripA, 'current')} at the main breaker of ${inlet.id}, and test it.`,
            cites: [['ABYC E-11', '11.11.1']],
        },
    };
}
