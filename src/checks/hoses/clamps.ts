/** What is recorded of the clamps at an end of a hose: at the joint, else on the hose for both its ends. */
import type { AnyFacts } from '../../record/generated/kinds.js';
import { flagOf, siOf, wordOf, type Component, type Fact, type Joint } from '../../record/model.js';

type Property = keyof AnyFacts & string;

/** The fact and what it stands on. */
export interface ClampFact {
    readonly fact: Fact;
    readonly on: Joint | Component;
}

export function clampFact(joint: Joint, hose: Component, property: Property): ClampFact | undefined {
    const atJoint = joint.facts.get(property);
    if (atJoint) {
        return { fact: atJoint, on: joint };
    }
    const onHose = hose.facts.get(property);
    return onHose && { fact: onHose, on: hose };
}

export function clampWord(joint: Joint, hose: Component, property: Property): string | undefined {
    return wordOf(joint, property) ?? wordOf(hose, property);
}

/** Number of clamps at this end. */
export function clampCount(joint: Joint, hose: Component): number | undefined {
    return siOf(joint, 'clamps') ?? siOf(hose, 'clamps');
}

/** Length of tail for the hose to stand on: at the joint, else of the part. */
export function tailLengthFact(joint: Joint, other: Component): ClampFact | undefined {
    return clampFact(joint, other, 'tail-length');
}

export function weeps(joint: Joint): boolean {
    return flagOf(joint, 'weeps') ?? false;
}
