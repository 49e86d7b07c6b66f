/** What parts are built of, as far as it decides how moisture is read. */
import { isKind, materialOf, type Component, type Material, type SurveyRecord } from '../../record/model.js';

function ofVessel(record: SurveyRecord, property: 'hull-material' | 'deck-material'): Material | undefined {
    const value = record.vessel?.facts.get(property)?.values[0];
    return value?.type === 'material' ? value.material : undefined;
}

/** The material of a part: its own, else that of the hull or deck of the vessel where it is part of them. */
export function builtOf(record: SurveyRecord, component: Component): Material | undefined {
    const own = materialOf(component);
    if (own) {
        return own;
    }
    if (isKind(record, component, 'deck')) {
        return ofVessel(record, 'deck-material') ?? ofVessel(record, 'hull-material');
    }
    return isKind(record, component, 'hull-shell') || isKind(record, component, 'transom') ? ofVessel(record, 'hull-material') : undefined;
}

const laminated: ReadonlySet<string> = new Set(['laminate', 'reinforced-plastic', 'carbon']);

/** Whether readings of moisture on a part are of laminate: yes, no, or not known. */
export function isLaminate(record: SurveyRecord, component: Component): boolean | undefined {
    if (isKind(record, component, 'plank') || isKind(record, component, 'timber') || isKind(record, component, 'plate')) {
        return false;
    }
    const material = builtOf(record, component);
    return material && laminated.has(material.class);
}

/** The same of what a table speaks of: no where any part is known to be of something else, yes where any is laminate. */
export function areLaminate(record: SurveyRecord, components: readonly Component[]): boolean | undefined {
    const hull = ofVessel(record, 'hull-material');
    const known = components.length === 0 ? [hull && laminated.has(hull.class)] : components.map(component => isLaminate(record, component));
    return known.includes(false) ? false : known.includes(true) ? true : undefined;
}
