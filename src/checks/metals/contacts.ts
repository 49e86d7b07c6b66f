/** Where metals touch: joints of runs and contacts recorded apart from them, with what is known of each. */
import { flagOf, isKind, materialOf, ofKind, siOf, wordOf, type Component, type Contact, type Joint, type Material, type Span, type SurveyRecord } from '../../record/model.js';
import { anodeLeft as shareLeft } from '../../trade/anode.js';
import { heightOf, inwardFrom, openingOf } from '../hoses/waterline.js';

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

const dryServices = new Set(['fuel-feed', 'fuel-return', 'fuel-fill', 'fuel-vent', 'gas', 'coolant', 'fresh-water', 'hot-water']);
const seaServices = new Set(['raw-water-cooling', 'generator-cooling', 'air-conditioning', 'toilet-intake', 'wash-down']);

/**
 * Whether water from outside stands at a joint. A run from an opening below the waterline is full of it up to a valve
 * found shut; behind that, and in an exhaust or a drain from above, nothing is known.
 */
function isJointWet(record: SurveyRecord, { run, from, to }: Joint): boolean | undefined {
    const contains = wordOf(run, 'contains');
    if (contains !== undefined) {
        return contains === 'exhaust' ? undefined : contains === 'salt-water' || contains === 'brackish-water';
    }
    const inward = inwardFrom(openingOf(record, run), run);
    const outer = Math.min(inward.indexOf(from), inward.indexOf(to));
    const isBehindShutValve = inward.slice(0, outer + 1).some(c => isKind(record, c, 'valve') && wordOf(c, 'position') === 'shut');
    if (heightOf(record, run) === 'below' && !isBehindShutValve) {
        return true;
    }
    const service = wordOf(run, 'service');
    return service === undefined ? undefined : dryServices.has(service) ? false : seaServices.has(service) && !isBehindShutValve ? true : undefined;
}

/** Every pair of metal parts that touch, once each. */
export function touches(record: SurveyRecord): Touch[] {
    const found: Found = { touches: new Map(), anodes: ofKind(record, 'anode') };
    for (const run of record.runs) {
        for (const joint of run.joints) {
            const { from, to } = joint;
            if (isKind(record, from, 'hose') || isKind(record, to, 'hose')) {
                continue; // Hose does not conduct.
            }
            const wetted = either(flagOf(from, 'wetted'), flagOf(to, 'wetted')) ?? isJointWet(record, joint);
            add(record, found, from, to, { at: joint.span, joint, isInsulated: flagOf(joint, 'insulated') === true, isWetted: wetted });
        }
    }
    for (const contact of record.contacts) {
        for (const [index, other] of contact.components.entries()) {
            const one = contact.components[index - 1];
            if (one) {
                const wetted = flagOf(contact, 'wetted') ?? both(flagOf(one, 'wetted'), flagOf(other, 'wetted'));
                const ratio = siOf(contact, 'area-ratio');
                const anodeLeft = siOf(contact, 'anode-left');
                add(record, found, one, other, {
                    at: contact.span, contact, isInsulated: flagOf(contact, 'insulated') === true, isWetted: wetted,
                    ...(ratio === undefined ? {} : { writtenRatio: ratio }), ...(anodeLeft === undefined ? {} : { anodeLeft }), isBonded: flagOf(contact, 'bonded') === true,
                });
            }
        }
    }
    return [...found.touches.values()];
}

const either = (a: boolean | undefined, b: boolean | undefined): boolean | undefined => a === false || b === false ? false : a ?? b;
const both = (a: boolean | undefined, b: boolean | undefined): boolean | undefined => a === undefined && b === undefined ? undefined : a !== false && b !== false;

/** What is recorded at the place itself. */
type Said = Pick<Touch, 'at' | 'joint' | 'contact' | 'isInsulated' | 'isWetted' | 'writtenRatio' | 'anodeLeft'> & { readonly isBonded?: boolean };

/** Touches so far by their pair, and the anodes aboard, looked up once. */
interface Found {
    readonly touches: Map<string, Touch>;
    readonly anodes: readonly Component[];
}

function add(record: SurveyRecord, found: Found, a: Component, b: Component, { isBonded, ...rest }: Said): void {
    const aMetal = materialOf(a);
    const bMetal = materialOf(b);
    if (!aMetal?.isMetal || !bMetal?.isMetal || aMetal === bMetal || isSacrificed(record, a, aMetal) || isSacrificed(record, b, bMetal)) {
        return;
    }
    const pair = [a.id, b.id].sort().join(' ');
    const earlier = found.touches.get(pair);
    if (earlier) {
        // A contact that repeats a joint is one touch, with what is said at either.
        const anodeLeft = rest.anodeLeft ?? earlier.anodeLeft ?? protectionOf(found.anodes, a, b, isBonded === true);
        const writtenRatio = rest.writtenRatio ?? earlier.writtenRatio;
        const contact = rest.contact ?? earlier.contact;
        found.touches.set(pair, {
            ...earlier, isInsulated: earlier.isInsulated || rest.isInsulated, isWetted: rest.isWetted ?? earlier.isWetted,
            ...(anodeLeft === undefined ? {} : { anodeLeft }), ...(writtenRatio === undefined ? {} : { writtenRatio }), ...(contact ? { contact } : {}),
        });
        return;
    }
    const areaA = siOf(a, 'exposed-area');
    const areaB = siOf(b, 'exposed-area');
    const anodeLeft = rest.anodeLeft ?? protectionOf(found.anodes, a, b, isBonded === true);
    found.touches.set(pair, {
        a, b, aMetal, bMetal, ...rest, isInsulated: rest.isInsulated || flagOf(a, 'insulated') === true || flagOf(b, 'insulated') === true,
        ...(areaA !== undefined && areaB !== undefined && areaB > 0 ? { areaRatioAToB: areaA / areaB } : {}), ...(anodeLeft === undefined ? {} : { anodeLeft }),
    });
}

/** An anode is there to be eaten. */
function isSacrificed(record: SurveyRecord, part: Component, metal: Material): boolean {
    return isKind(record, part, 'anode') || metal.class === 'zinc-anode' || metal.class === 'magnesium-anode';
}

/** What is left of the best anode that is recorded as protecting either part, or that both are bonded to. */
function protectionOf(anodes: readonly Component[], a: Component, b: Component, isBonded: boolean): number | undefined {
    const areBonded = isBonded || (flagOf(a, 'bonded') === true && flagOf(b, 'bonded') === true);
    const shares: number[] = [];
    for (const anode of anodes) {
        const protectsPart = anode.facts.get('protects')?.values.some(v => v.type === 'component' && (v.id === a.id || v.id === b.id)) ?? false;
        const left = anodeShareLeft(anode);
        if (left !== undefined && (protectsPart || (areBonded && flagOf(anode, 'bonded') === true))) {
            shares.push(left);
        }
    }
    return shares.length > 0 ? Math.max(...shares) : undefined;
}

/** Share left of an anode: as recorded, else by mass, else by volume. */
export function anodeShareLeft(anode: Component): number | undefined {
    const left = siOf(anode, 'left');
    if (left !== undefined) {
        return left;
    }
    const by = (original: number | undefined, present: number | undefined) => original === undefined || present === undefined ? undefined : shareLeft(original, present);
    return by(siOf(anode, 'original-mass'), siOf(anode, 'present-mass')) ?? by(siOf(anode, 'original-volume'), siOf(anode, 'present-volume'));
}
