/**
 * Facts that are computed from recorded ones and may be named in prose like them: `{TH4.flooding-rate}`. Each states
 * its assumption, so that the report never prints a bare figure.
 */
import { formatQuantity } from '../quantities/index.js';
import { defaultDischargeCoefficient, inflowM3s } from '../trade/orifice-inflow.js';
import { siOf, type Component, type SurveyRecord } from './model.js';

export interface ComputedProperty {
    readonly name: string;
    /** Kinds it belongs to, derived kinds included. */
    readonly kinds: readonly string[];
    readonly about: string;
    readonly needs: readonly string[];
    readonly assumption: string;
    /** The text printed for it, in both unit systems; undefined where a needed fact is not recorded. */
    readonly text: (component: Component, record: SurveyRecord) => string | undefined;
}

/** Clear bore of an opening, or its nominal size where no bore is recorded. */
export function openingBoreM(component: Component): number | undefined {
    return siOf(component, 'bore') ?? siOf(component, 'size');
}

const floodingRate: ComputedProperty = {
    name: 'flooding-rate',
    kinds: ['hull-opening'],
    about: 'Water this opening admits when its whole bore stands open to the inside, from its bore and its depth',
    needs: ['bore or size', 'below-waterline'],
    assumption: `sharp-edged opening, discharge coefficient ${defaultDischargeCoefficient}, no water yet inside`,
    text: component => {
        const boreM = openingBoreM(component);
        const depthM = siOf(component, 'below-waterline');
        if (boreM === undefined || depthM === undefined || depthM <= 0) {
            return undefined;
        }
        const flow = inflowM3s({ boreM, depthM });
        return `${formatQuantity(flow, 'flow', 'us')} (${formatQuantity(flow, 'flow', 'metric')})`;
    },
};

export const allComputed: readonly ComputedProperty[] = [floodingRate];

/** Computed properties of a kind with the lineage given. */
export function computedProperties(lineage: readonly string[]): Map<string, ComputedProperty> {
    return new Map(allComputed.filter(c => c.kinds.some(kind => lineage.includes(kind))).map(c => [c.name, c]));
}

/** All computed facts of a record that can be told, by `TH4.flooding-rate`. */
export function computedFacts(record: SurveyRecord): Map<string, string> {
    const facts = new Map<string, string>();
    for (const component of record.components.values()) {
        const lineage = record.vocabulary.kinds.get(component.kind)?.lineage ?? [];
        for (const computed of computedProperties(lineage).values()) {
            const text = computed.text(component, record);
            if (text !== undefined) {
                facts.set(`${component.id}.${computed.name}`, text);
            }
        }
    }
    return facts;
}
