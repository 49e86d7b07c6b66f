/** A shaft seal that lets in more water than its kind should, or too little to cool it. */
import { formatQuantity } from '../../quantities/index.js';
import { dripsPerDayM3 } from '../../trade/drip-rate.js';
import { flagOf, isKind, nameOf, ofKind, siOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised } from '../contract.js';

/** Drops a minute of a packed gland (practice): 2 to 3 under way are right. */
const mostAtRest = 10;
const mostUnderWay = 30;
const urgentAtRest = 60;

export const glandDrips = defineCheck({
    id: 'gland-drips',
    group: 'shaft',
    severity: 'error',
    title: 'Shaft seal drips too much, or runs hot',
    why: 'Pump and battery must outlast what the seal lets in, and a dry packed gland burns its shaft.',
    needs: ['shaft-seal (packed-gland, face-seal, lip-seal): drips-at-rest, drips-under-way, runs-hot, weeps'],
    computes: 'liters a day = drops a minute × 0.072 (20 drops to the milliliter). Packed gland: more than 10 drops a minute at rest, more than 30 under way, is a fault. Face or lip seal: any steady drip, or weeping. Any seal that runs hot.',
    sources: [
        { text: 'two or three drops a minute under way, nearly none at rest', provenance: 'practice' },
        { text: '10 at rest and 30 under way', provenance: 'practice' },
        { text: 'volume at 20 drops to the milliliter', provenance: 'computed' },
    ],
    limits: ['A drop is not an exact measure; the volume is within about a third.', 'A seal whose kind is not recorded is judged by the limits of a packed gland.'],
    examples: [{
        name: 'packed gland that drips at rest',
        bad: `vessel "Marram" {}
packed-gland PG1 { drips-at-rest: 14 drops/min  drips-under-way: 20 drops/min }
`,
        fixed: `vessel "Marram" {}
packed-gland PG1 { drips-at-rest: 0 drops/min  drips-under-way: 3 drops/min }
`,
    }, {
        name: 'face seal that drips',
        bad: `face-seal FS1 { drips-at-rest: 2 drops/min }
`,
        fixed: `face-seal FS1 { drips-at-rest: 0 drops/min }
`,
    }, {
        name: 'packed gland dry and hot',
        bad: `packed-gland PG1 { drips-under-way: 0 drops/min  runs-hot: yes }
`,
        fixed: `packed-gland PG1 { drips-under-way: 3 drops/min  runs-hot: no }
`,
    }],
    silent: [
        { name: 'packed gland with three drops under way', text: 'packed-gland PG1 { drips-at-rest: 0 drops/min  drips-under-way: 3 drops/min }\n' },
        { name: 'packed gland at its limits', text: 'packed-gland PG1 { drips-at-rest: 10 drops/min  drips-under-way: 30 drops/min }\n' },
        { name: 'dry and cool', text: 'packed-gland PG1 { drips-at-rest: 0 drops/min  drips-under-way: 0 drops/min  runs-hot: no }\n' },
        { name: 'nothing counted', text: 'packed-gland PG1\n' },
    ],
    run(record, raise) {
        for (const seal of ofKind(record, 'shaft-seal')) {
            const problem = judge(record, seal);
            if (problem) {
                raise(problem);
            }
        }
    },
});

function perMinute(seal: Component, property: 'drips-at-rest' | 'drips-under-way'): number | undefined {
    const perSecond = siOf(seal, property);
    return perSecond === undefined ? undefined : Math.round(perSecond * 60 * 1e6) / 1e6;
}

function judge(record: SurveyRecord, seal: Component): Raised | undefined {
    const rest = perMinute(seal, 'drips-at-rest');
    const underWay = perMinute(seal, 'drips-under-way');
    const isDryKind = isKind(record, seal, 'face-seal') || isKind(record, seal, 'lip-seal');
    const [restLimit, wayLimit] = isDryKind ? [0, 0] : [mostAtRest, mostUnderWay];
    const tooMuch = rest !== undefined && rest > restLimit ? { property: 'drips-at-rest' as const, drops: rest, limit: restLimit, when: 'at rest' }
        : underWay !== undefined && underWay > wayLimit ? { property: 'drips-under-way' as const, drops: underWay, limit: wayLimit, when: 'under way' } : undefined;
    if (tooMuch) {
        const perDay = dripsPerDayM3(tooMuch.drops / 60);
        const volume = `${formatQuantity(perDay, 'volume', 'us')} (${formatQuantity(perDay, 'volume', 'metric')})`;
        const most = isDryKind ? 'such a seal runs dry' : `at most ${tooMuch.limit} are usual for a packed gland`;
        const act = isDryKind ? 'service or renew the seal' : 'tighten or repack the gland';
        return {
            components: [seal],
            at: seal.facts.get(tooMuch.property)?.span ?? seal.idSpan,
            message: `${nameOf(seal)} lets in ${tooMuch.drops} drops a minute ${tooMuch.when}, about ${volume} a day, where ${most}. Pump and battery must outlast it; ${act}.`,
            figures: { drops: { value: tooMuch.drops, unit: 'drops/min' }, limit: { value: tooMuch.limit, unit: 'drops/min' }, 'per-day': { value: perDay * 1000, unit: 'L' } },
            draft: {
                title: `Shaft seal ${seal.id} drips ${tooMuch.when}`,
                urgency: tooMuch.property === 'drips-at-rest' && tooMuch.drops > urgentAtRest ? 'at-once' : 'in-upkeep',
                seen: `Shaft seal ${seal.id} lets in {${seal.id}.${tooMuch.property}} ${tooMuch.when}, about ${volume} a day, where ${most}.`,
                because: 'The bilge pump and its battery must outlast what comes in while she lies alone.',
                recommend: isDryKind ? `Service shaft seal ${seal.id} by its maker’s manual, or renew it.` : `Tighten or repack ${seal.id} until it passes two or three drops a minute under way and runs cool.`,
            },
        };
    }
    if (isDryKind && flagOf(seal, 'weeps') === true && rest === undefined && underWay === undefined) {
        return weeping(seal);
    }
    if (flagOf(seal, 'runs-hot') === true && (isDryKind || underWay !== 0)) {
        return hot(seal, isDryKind, underWay !== undefined);
    }
    if (flagOf(seal, 'runs-hot') === true) {
        return {
            components: [seal],
            at: seal.facts.get('runs-hot')?.span ?? seal.idSpan,
            message: `${nameOf(seal)} passes no water under way and runs hot, where two or three drops a minute are right. A dry gland burns its packing and scores the shaft; slacken or repack it.`,
            figures: { drops: { value: 0, unit: 'drops/min' } },
            draft: {
                title: `Shaft gland ${seal.id} runs dry and hot`,
                urgency: 'in-upkeep',
                seen: `Shaft gland ${seal.id} passed {${seal.id}.drips-under-way} under way and ran hot.`,
                because: 'A gland without water burns its packing and scores the shaft.',
                recommend: `Slacken or repack ${seal.id} until it passes two or three drops a minute under way and runs cool.`,
            },
        };
    }
    return undefined;
}

/** A face or lip seal that weeps, its drops not counted. */
function weeping(seal: Component): Raised {
    return {
        components: [seal], at: seal.facts.get('weeps')?.span ?? seal.idSpan,
        message: `${nameOf(seal)} weeps, where such a seal runs dry. Pump and battery must outlast it; service or renew the seal, and count its drops a minute meanwhile.`,
        draft: {
            title: `Shaft seal ${seal.id} weeps`, urgency: 'in-upkeep',
            seen: `Shaft seal ${seal.id} weeps, where such a seal runs dry.`,
            because: 'The bilge pump and its battery must outlast what comes in while she lies alone.',
            recommend: `Service shaft seal ${seal.id} by its maker’s manual, or renew it.`,
        },
    };
}

/** A seal that runs hot, whatever it drips: its packing or faces are too tight, or water does not reach them. */
function hot(seal: Component, isDryKind: boolean, saysDrips: boolean): Raised {
    const act = isDryKind ? 'see that water reaches it, and service it' : 'slacken or repack it until it runs cool';
    return {
        components: [seal], at: seal.facts.get('runs-hot')?.span ?? seal.idSpan,
        message: `${nameOf(seal)} runs hot. ${isDryKind ? 'A seal short of water burns its faces or lips' : 'A gland drawn too tight or short of water burns its packing and scores the shaft'}; ${act}.`,
        draft: {
            title: `Shaft ${isDryKind ? 'seal' : 'gland'} ${seal.id} runs hot`, urgency: 'in-upkeep',
            seen: `Shaft ${isDryKind ? 'seal' : 'gland'} ${seal.id} ran hot${saysDrips ? ` and passed {${seal.id}.drips-under-way} under way` : ''}.`,
            because: isDryKind ? 'A seal short of water burns its faces or lips and then leaks.' : 'A gland drawn too tight or short of water burns its packing and scores the shaft.',
            recommend: isDryKind ? `Clear the water feed of ${seal.id} and service it by its maker’s manual.` : `Slacken or repack ${seal.id} until it passes two or three drops a minute under way and runs cool.`,
        },
    };
}
