/** Cooling water let into the exhaust too near the waterline, without a vented loop that stands high enough. */
import { flagOf, isKind, nameOf, ofKind, runsThrough, siOf, wordOf, yardstick, type Component, type Run, type SurveyRecord } from '../../record/model.js';
import { heightToleranceM, isLoopHighEnough, leastLoopHeeledM, leastLoopM } from '../../trade/exhaust.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, lengthBoth } from '../phrasing.js';
import { siphonLoopMissingOrLow } from '../openings/siphon-loop-missing-or-low.js';
import { measured, type Measured } from '../../record/trial-runs.js';

export const injectionPointTooLow = defineCheck({
    id: 'injection-point-too-low',
    group: 'exhaust',
    severity: 'error',
    title: 'Water injection is too near the waterline',
    why: 'With the engine stopped the sea siphons through the pump into the exhaust and back to the cylinders.',
    needs: ['exhaust-riser: injection-above-waterline, makers-least', 'exhaust-riser: loop, or a vented loop in the cooling run or that serves it', 'vented-loop: top-above-waterline, top-above-heeled-waterline, vent-works'],
    computes: 'A fault where the injection lies less than 12 in (305 mm) above the loaded waterline, or less than the engine’s manual asks for, and no vented loop stands in its hose, or one whose top is less than 18 in (457 mm) above the loaded or 8 in (203 mm) above the heeled waterline, or whose air valve does not work.',
    sources: [
        { text: 'about 12 in above the loaded waterline; makers quote 6 to 13 in', provenance: 'secondary' },
        { text: 'else a vented loop 18 in above it, in sail 8 in above the heeled waterline', provenance: 'published' },
    ],
    yardsticks: ['riser-height'],
    limits: [
        'Practice differs: makers quote 6 to 13 in, and the engine’s own manual goes before.',
        'Where it is not recorded whether a loop is fitted, and the cooling run is not either, it asks.',
        'A run that siphon-loop-missing-or-low reports already is left to it.',
    ],
    examples: [{
        name: 'nine inches, and no loop',
        bad: `vessel "Marram" {}
exhaust-riser ER1 { injection-above-waterline: 9 in  loop: none }
`,
        fixed: `vessel "Marram" {}
exhaust-riser ER1 { injection-above-waterline: 13 in  loop: none }
`,
    }, {
        name: 'loop too low',
        bad: `exhaust-riser ER1 { injection-above-waterline: 2 in  loop: fitted }
vented-loop VL1 { serves: ER1  top-above-waterline: 10 in }
`,
        fixed: `exhaust-riser ER1 { injection-above-waterline: 2 in  loop: fitted }
vented-loop VL1 { serves: ER1  top-above-waterline: 18 in }
`,
        correction: 'Record the top of VL1 as 18 in above the waterline',
    }, {
        name: 'under what the engine’s manual asks for',
        bad: `exhaust-riser ER1 { injection-above-waterline: 320 mm  makers-least: 330 mm  loop: none }
`,
        fixed: `exhaust-riser ER1 { injection-above-waterline: 335 mm  makers-least: 330 mm  loop: none }
`,
    }],
    silent: [
        { name: 'exactly 12 in', text: 'exhaust-riser ER1 { injection-above-waterline: 12 in  loop: none }\n' },
        { name: 'low, with a loop of 18 in', text: 'exhaust-riser ER1 { injection-above-waterline: 2 in }\nvented-loop VL1 { serves: ER1  top-above-waterline: 18 in }\n' },
        { name: 'eight inches, and its manual asks for six', text: 'exhaust-riser ER1 { injection-above-waterline: 8 in  makers-least: 6 in  loop: none }\n' },
        { name: 'height not measured', text: 'exhaust-riser ER1 { loop: none }\n' },
        { name: 'firm that asks for 200 mm', text: 'yardsticks { riser-height: 200 mm }\nexhaust-riser ER1 { injection-above-waterline: 9 in  loop: none }\n' },
    ],
    run(record, raise) {
        for (const riser of ofKind(record, 'exhaust-riser')) {
            const problem = judge(record, riser);
            if (problem) {
                raise(problem);
            }
        }
    },
});

function judge(record: SurveyRecord, riser: Component): Raised | undefined {
    const height = measured(riser, 'injection-above-waterline');
    const makers = measured(riser, 'makers-least');
    const usual = yardstick(record, 'riser-height');
    if (!height || height.quantity.si >= (makers?.quantity.si ?? usual.si) - heightToleranceM) {
        return undefined;
    }
    const limit = makers ? { text: `the ${both(makers.quantity)} that the engine’s manual asks for`, seen: `the {${riser.id}.makers-least} that the engine’s manual asks for`, m: makers.quantity.si }
        : { text: `${lengthBoth(usual.si)} (${usual.whose})`, seen: `${lengthBoth(usual.si)} (${usual.whose})`, m: usual.si };
    const runs = coolingRuns(record, riser);
    const loop = loopOf(record, riser, runs);
    if (!loop) {
        return withoutLoop(record, riser, height, limit, runs);
    }
    const [rest, heeled] = [siOf(loop, 'top-above-waterline'), siOf(loop, 'top-above-heeled-waterline')];
    const isHigh = isLoopHighEnough(rest, heeled);
    if (flagOf(loop, 'vent-works') === false) {
        return problem(riser, height, limit, { loop, fault: 'the air valve of its loop', text: `the air valve of its vented loop (${loop.id}) does not work`, at: 'vent-works' });
    }
    if (isHigh === undefined) {
        return asks(riser, loop, `The injection at ${nameOf(riser)} is ${both(height.quantity)} above the waterline; record top-above-waterline of ${loop.id} to tell whether its loop keeps the sea out.`);
    }
    const low = rest !== undefined && rest < leastLoopM - heightToleranceM ? 'top-above-waterline' : 'top-above-heeled-waterline';
    return isHigh ? undefined : problem(riser, height, limit, {
        loop, fault: 'its loop', at: low,
        text: `the top of its vented loop (${loop.id}) stands ${lengthBoth((low === 'top-above-waterline' ? rest : heeled) ?? 0)} above the ${low === 'top-above-waterline' ? '' : 'heeled '}waterline, where ${lengthBoth(low === 'top-above-waterline' ? leastLoopM : leastLoopHeeledM)} is the least`,
    });
}

interface Limit {
    readonly m: number;
    readonly text: string;
    readonly seen: string;
}

function withoutLoop(record: SurveyRecord, riser: Component, height: Measured, limit: Limit, runs: readonly Run[]): Raised | undefined {
    const word = wordOf(riser, 'loop');
    if (word === 'fitted') {
        return asks(riser, riser, `The injection at ${nameOf(riser)} is ${both(height.quantity)} above the waterline, under ${limit.text}; declare its vented-loop, with serves: ${riser.id} and top-above-waterline, to tell whether it keeps the sea out.`, [declareLoop(riser)]);
    }
    if (word === 'none' || (word === undefined && runs.length > 0)) {
        return isReportedAsSiphon(record, runs) ? undefined : problem(riser, height, limit, undefined);
    }
    return asks(riser, riser, `The injection at ${nameOf(riser)} is ${both(height.quantity)} above the waterline, under ${limit.text}; record loop, whether a vented loop stands in its injection hose, to tell whether the sea can siphon in.`, [declareLoop(riser)]);
}

function asks(riser: Component, at: Component, message: string, corrections: readonly Correction[] = []): Raised {
    return { components: at === riser ? [riser] : [riser, at], at: at === riser ? riser.facts.get('injection-above-waterline')?.span ?? riser.idSpan : at.idSpan, severity: 'hint', message, corrections };
}

/** Runs of cooling water that lead to the riser, or to the engine it serves. */
function coolingRuns(record: SurveyRecord, riser: Component): readonly Run[] {
    const served = servedBy(record, riser);
    return [riser, ...(served ? [served] : [])].flatMap(part => runsThrough(record, part)).filter(run => ['raw-water-cooling', 'generator-cooling'].includes(wordOf(run, 'service') ?? ''));
}

function servedBy(record: SurveyRecord, riser: Component): Component | undefined {
    const value = riser.facts.get('serves')?.values[0];
    const engines = ofKind(record, 'engine');
    return value?.type === 'component' ? record.components.get(value.id) : engines.length === 1 && ofKind(record, 'exhaust-riser').length === 1 ? engines[0] : undefined;
}

/** The vented loop in the cooling run, or the one that serves the riser or its engine. */
function loopOf(record: SurveyRecord, riser: Component, runs: readonly Run[]): Component | undefined {
    const served = servedBy(record, riser)?.id;
    return runs.flatMap(run => run.components).find(part => isKind(record, part, 'vented-loop')) ?? ofKind(record, 'vented-loop').find(loop => {
        const value = loop.facts.get('serves')?.values[0];
        return value?.type === 'component' && (value.id === riser.id || value.id === served);
    });
}

/** Whether the missing loop is reported of a part in the same run already. */
function isReportedAsSiphon(record: SurveyRecord, runs: readonly Run[]): boolean {
    const reported = new Set<Component>();
    siphonLoopMissingOrLow.run(record, raised => {
        if (raised.severity !== 'hint') {
            raised.components.forEach(component => reported.add(component));
        }
    });
    return runs.some(run => run.components.some(component => reported.has(component)));
}

const declareLoop = (riser: Component): Correction => ({
    kind: 'declare', title: `Record a vented loop that serves ${riser.id}, 18 in above the waterline`, beside: riser, componentKind: 'vented-loop', idStem: 'VL',
    facts: [['serves', riser.id], ['top-above-waterline', '18 in']],
});

interface LoopFault {
    readonly loop: Component;
    readonly fault: string;
    readonly text: string;
    readonly at: 'vent-works' | 'top-above-waterline' | 'top-above-heeled-waterline';
}

function problem(riser: Component, height: Measured, limit: Limit, fault: LoopFault | undefined): Raised {
    const what = fault ? fault.text : 'no vented loop stands in its hose';
    const seen = !fault ? what : fault.at === 'vent-works' ? fault.text
        : `the top of its vented loop (${fault.loop.id}) stands {${fault.loop.id}.${fault.at}} above the ${fault.at === 'top-above-waterline' ? '' : 'heeled '}waterline`;
    const fix: Correction[] = !fault ? [declareLoop(riser)] : [{
        kind: 'set-fact', component: fault.loop, property: fault.at, value: fault.at === 'vent-works' ? 'yes' : fault.at === 'top-above-waterline' ? '18 in' : '8 in',
        title: fault.at === 'vent-works' ? `Record the air valve of ${fault.loop.id} as working` : `Record the top of ${fault.loop.id} as ${fault.at === 'top-above-waterline' ? '18 in above the' : '8 in above the heeled'} waterline`,
    }];
    const isUnder = height.quantity.si < 0;
    const heightText = isUnder ? `${lengthBoth(-height.quantity.si)} below the loaded waterline, where ${limit.text} above it is the least` : `${both(height.quantity)} above the loaded waterline, under ${limit.text}`;
    const isFound = flagOf(riser, 'water-found') === true;
    const act = fault?.at === 'vent-works' ? 'renew the air valve' : fault ? 'raise the loop, or the riser' : 'raise the riser, or fit a vented loop';
    return {
        components: fault ? [riser, fault.loop] : [riser],
        at: height.fact.span,
        message: `Water is let in at ${nameOf(riser)} ${heightText}; ${what}${isFound ? ', and water was found on the engine’s side' : ''}. With the engine stopped the sea siphons into the exhaust and back to the cylinders; ${act}.`,
        figures: { height: { value: height.quantity.si * 1000, unit: 'mm' }, limit: { value: limit.m * 1000, unit: 'mm' } },
        ...(fault ? { related: [{ message: 'Its vented loop', span: fault.loop.facts.get(fault.at)?.span ?? fault.loop.idSpan }] } : {}),
        corrections: fix,
        draft: {
            title: `Water injection at ${riser.title ?? riser.id} is too low`,
            urgency: 'before-departure',
            seen: `Cooling water is let in at ${riser.title ?? 'the riser'} (${riser.id}) ${isUnder ? `${lengthBoth(-height.quantity.si)} below the loaded waterline, where ${limit.seen} above it is the least` : `{${riser.id}.injection-above-waterline} above the loaded waterline, under ${limit.seen}`}; ${seen}${isFound ? ', and water was found on the engine’s side' : ''}.`,
            because: 'With the engine stopped the sea siphons through the pump into the exhaust, fills it and runs back to the cylinders.',
            recommend: fault?.at === 'vent-works' ? `Renew the air valve of ${fault.loop.id} and prove that it lets air in.`
                : `Raise the riser ${riser.id} to ${lengthBoth(limit.m)} above the loaded waterline, or lead the injection hose through a vented loop whose top stands ${lengthBoth(leastLoopM)} above it and, in a sailing vessel, ${lengthBoth(leastLoopHeeledM)} above the heeled waterline.`,
            cites: [['Good practice']],
        },
    };
}
