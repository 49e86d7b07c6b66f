/**
 * Where a hose meets another part: the bore recorded at that end of the hose, and the diameter recorded of the
 * tail it is pushed over. It reads facts and judges nothing.
 */
import { isKind, type Component, type Fact, type Joint, type Quantity, type SurveyRecord } from '../../record/model.js';

/** A recorded diameter and where it is written. */
export interface Diameter {
    readonly m: number;
    readonly quantity: Quantity;
    readonly fact: Fact;
    /** What the fact belongs to: the joint, or the component. */
    readonly on: 'joint' | Component;
    /** Which of the fact's values it is. */
    readonly index: number;
}

/** A joint of a hose with a part that is not a hose. */
export interface HoseJoint {
    readonly joint: Joint;
    readonly hose: Component<'hose'>;
    readonly hoseEnd: 0 | 1;
    readonly other: Component;
    readonly otherEnd: 0 | 1;
}

export function hoseJoints(record: SurveyRecord): HoseJoint[] {
    return record.runs.flatMap(run => run.joints.flatMap(joint => {
        const { from, to, fromEnd, toEnd } = joint;
        if (isKind(record, from, 'hose')) {
            return isKind(record, to, 'hose') ? [] : [{ joint, hose: from, hoseEnd: fromEnd, other: to, otherEnd: toEnd }];
        }
        return isKind(record, to, 'hose') ? [{ joint, hose: to, hoseEnd: toEnd, other: from, otherEnd: fromEnd }] : [];
    }));
}

/** The bore of a hose at one of its ends. */
export function boreAt(hose: Component, end: 0 | 1): Diameter | undefined {
    return endOf(hose, end) ?? diameter(hose.facts.get('bore'), hose);
}

/** The outside diameter of the tail that a part offers to a hose at a joint. */
export function tailAt({ joint, other, otherEnd }: Pick<HoseJoint, 'joint' | 'other' | 'otherEnd'>): Diameter | undefined {
    return diameter(joint.facts.get('spigot'), 'joint') ?? spigotOf(other) ?? endOf(other, otherEnd) ?? diameter(other.facts.get('port'), other);
}

/** Outside diameter of the hose tail of a part. */
export function spigotOf(component: Component): Diameter | undefined {
    return diameter(component.facts.get('spigot'), component);
}

/** One of the two ends of a part; a part with one figure for both has it at each. */
export function endOf(component: Component, end: 0 | 1): Diameter | undefined {
    const fact = component.facts.get('ends');
    return diameter(fact, component, end) ?? diameter(fact, component, 0);
}

function diameter(fact: Fact | undefined, on: Diameter['on'], index = 0): Diameter | undefined {
    const value = fact?.values[index];
    return fact && value?.type === 'quantity' ? { m: value.si, quantity: value, fact, on, index } : undefined;
}

/** Whether a part stands between two sizes: an adapter of two diameters, judged by a check of its own. */
export function isAdapter(record: SurveyRecord, component: Component): boolean {
    return isKind(record, component, 'adapter');
}
