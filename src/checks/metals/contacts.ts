/** Where metals touch: joints of runs and contacts recorded apart from them, with what is known of each. */
import { flagOf, isKind, materialOf, siOf, wordOf, type Component, type Contact, type Joint, type Material, type Run, type Span, type SurveyRecord } from '../../record/model.js';
import { heightOf } from '../hoses/waterline.js';

export interface Touch {
    readonly a: Component;
    readonly b: Component;
    readonly aMetal: Material;
    readonly bMetal: Material;
    readonly at: Span;
    readonly joint?: Joint;
    readonly contact?: Contact;
    readonly isInsulated: boolean;
    /** Whether water joins them; undefined where it is not recorded. */
    readonly isWetted: boolean | undefined;
    /** Exposed area of `a` divided by that of `b`, where known. */
    readonly areaRatioAToB?: number;
    /** Ratio of the nobler to the baser as written at the contact. */
    readonly writtenRatio?: number;
    readonly anodeLeft?: number;
}

const dryServices = new Set(['exhaust', 'fuel-feed', 'fuel-return', 'fuel-fill', 'fuel-vent', 'gas', 'coolant', 'fresh-water', 'hot-water']);

function isRunWet(record: SurveyRecord, run: Run): boolean | undefined {
    const contains = wordOf(run, 'contains');
    if (contains !== undefined) {
        return contains.endsWith('-water');
    }
    if (heightOf(record, run) === 'below') {
        return true;
    }
    const service = wordOf(run, 'service');
    return service !== undefined && dryServices.has(service) ? false : undefined;
}

/** Every pair of metal parts that touch, once each. */
export function touches(record: SurveyRecord): Touch[] {
    const found: Touch[] = [];
    for (const run of record.runs) {
        for (const joint of run.joints) {
            const { from, to } = joint;
            if (isKind(record, from, 'hose') || isKind(record, to, 'hose')) {
                continue; // Hose does not conduct.
            }
            const wetted = either(flagOf(from, 'wetted'), flagOf(to, 'wetted')) ?? isRunWet(record, run);
            add(record, found, from, to, { at: joint.span, joint, isInsulated: flagOf(joint, 'insulated') === true, isWetted: wetted });
        }
    }
    for (const contact of record.contacts) {
        const [first, ...others] = contact.components;
        for (const other of first ? others : []) {
            if (first) {
                const wetted = flagOf(contact, 'wetted') ?? both(flagOf(first, 'wetted'), flagOf(other, 'wetted'));
                const ratio = siOf(contact, 'area-ratio');
                const anodeLeft = siOf(contact, 'anode-left');
                add(record, found, first, other, {
                    at: contact.span, contact, isInsulated: flagOf(contact, 'insulated') === true, isWetted: wetted,
                    ...(ratio === undefined ? {} : { writtenRatio: ratio }), ...(anodeLeft === undefined ? {} : { anodeLeft }),
                });
            }
        }
    }
    return found;
}

const either = (a: boolean | undefined, b: boolean | undefined): boolean | undefined => a === false || b === false ? false : a ?? b;
const both = (a: boolean | undefined, b: boolean | undefined): boolean | undefined => a === undefined && b === undefined ? undefined : a !== false && b !== false;

function add(record: SurveyRecord, found: Touch[], a: Component, b: Component, rest: Pick<Touch, 'at' | 'joint' | 'contact' | 'isInsulated' | 'isWetted' | 'writtenRatio' | 'anodeLeft'>): void {
    const aMetal = materialOf(a);
    const bMetal = materialOf(b);
    if (!aMetal?.isMetal || !bMetal?.isMetal || aMetal === bMetal) {
        return;
    }
    const seen = found.some(t => (t.a === a && t.b === b) || (t.a === b && t.b === a));
    if (seen) {
        return; // A contact repeated as a joint is one touch.
    }
    const areaA = siOf(a, 'exposed-area');
    const areaB = siOf(b, 'exposed-area');
    const anodeLeft = rest.anodeLeft ?? protectionOf(record, a, b);
    found.push({
        a, b, aMetal, bMetal, ...rest, isInsulated: rest.isInsulated || flagOf(a, 'insulated') === true || flagOf(b, 'insulated') === true,
        ...(areaA !== undefined && areaB !== undefined && areaB > 0 ? { areaRatioAToB: areaA / areaB } : {}), ...(anodeLeft === undefined ? {} : { anodeLeft }),
    });
}

/** What is left of an anode that is recorded as protecting either part. */
function protectionOf(record: SurveyRecord, a: Component, b: Component): number | undefined {
    const shares: number[] = [];
    for (const anode of record.components.values()) {
        if (isKind(record, anode, 'anode')) {
            const protectsPart = anode.facts.get('protects')?.values.some(v => v.type === 'component' && (v.id === a.id || v.id === b.id)) ?? false;
            const left = anodeShareLeft(anode);
            if (protectsPart && left !== undefined) {
                shares.push(left);
            }
        }
    }
    return shares.length > 0 ? Math.max(...shares) : undefined;
}

/** Share left of an anode: as recorded, else by mass. */
export function anodeShareLeft(anode: Component): number | undefined {
    const left = siOf(anode, 'left');
    if (left !== undefined) {
        return left;
    }
    const original = siOf(anode, 'original-mass');
    const present = siOf(anode, 'present-mass');
    return original !== undefined && original > 0 && present !== undefined ? Math.min(1, present / original) : undefined;
}
