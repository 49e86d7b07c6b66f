/**
 * Facts that are computed from recorded ones and may be named in prose like them: `{TH4.flooding-rate}`. Each states
 * its assumption, so that the report never prints a bare figure.
 */
import { formatQuantity } from '../quantities/index.js';
import { inflowM3s } from '../trade/orifice-inflow.js';
import { isKind, runsThrough, siOf, yardstick, type Component, type Quantity, type Run, type SurveyRecord } from './model.js';

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

/** The narrowest bore that water meets from an opening along a run, m, where any is recorded. */
export function narrowestBoreM(record: SurveyRecord, opening: Component, run: Run | undefined): number | undefined {
    const bores: number[] = [];
    for (const part of run?.components ?? [opening]) {
        const own = part === opening ? openingBoreM(part) : siOf(part, 'bore') ?? (isKind(record, part, 'valve') ? siOf(part, 'size') : undefined);
        if (own !== undefined) {
            bores.push(own);
        }
        if (isKind(record, part, 'hose')) {
            bores.push(...(part.facts.get('ends')?.values ?? []).filter((v): v is Quantity => v.type === 'quantity').map(v => v.si));
        }
    }
    return bores.length > 0 ? Math.min(...bores) : undefined;
}

const floodingRate: ComputedProperty = {
    name: 'flooding-rate',
    kinds: ['hull-opening'],
    about: 'Water this opening admits when its run stands open to the inside, from the narrowest bore of the run and the depth',
    needs: ['bore or size', 'below-waterline'],
    assumption: 'sharp-edged opening, discharge coefficient by the yardstick flow-coefficient (0.6 unless the firm sets another), no water yet inside',
    text: (component, record) => {
        // A run may be written from either end.
        const runs = runsThrough(record, component).filter(run => run.components[0] === component || (run.end === 'component' && run.components.at(-1) === component));
        const bores = (runs.length > 0 ? runs : [undefined]).map(run => narrowestBoreM(record, component, run)).filter(bore => bore !== undefined);
        const boreM = bores.length > 0 ? Math.max(...bores) : undefined;
        const depthM = siOf(component, 'below-waterline');
        if (boreM === undefined || depthM === undefined || depthM <= 0) {
            return undefined;
        }
        const flow = inflowM3s({ boreM, depthM, dischargeCoefficient: yardstick(record, 'flow-coefficient').si });
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
