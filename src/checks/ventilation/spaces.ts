/** Spaces that blowers and ducts serve: what is known of their volume, their fuel and whether they stand open. */
import { convertTo, significant } from '../../quantities/index.js';
import { flagOf, isKind, ofKind, siOf, valueOf, wordOf, type Component, type Quantity, type SurveyRecord } from '../../record/model.js';
import { isOpenToAtmosphere } from '../../trade/ventilation.js';
import { vesselFuel } from '../fuel/fuel-system.js';
import type { Correction } from '../contract.js';

export interface Volume {
    readonly quantity: Quantity;
    readonly on: Component;
    readonly property: 'volume' | 'space-volume';
}

export interface VentilatedSpace {
    /** The space or engine that its blowers and ducts serve, where one is named. */
    readonly served?: Component;
    readonly title: string;
    readonly volume?: Volume;
    readonly isOpen: boolean;
    /** Whether a gasoline engine is in it; undefined where that is not recorded. */
    readonly isGasoline: boolean | undefined;
    readonly blowers: readonly Component<'blower'>[];
    readonly ducts: readonly Component<'vent-duct'>[];
}

/** Blowers and ducts by the space or engine they serve; those that name none are of the only space recorded, else taken as of one space. */
export function ventilatedSpaces(record: SurveyRecord): readonly VentilatedSpace[] {
    const blowers = ofKind(record, 'blower');
    const ducts = ofKind(record, 'vent-duct');
    const spaces = ofKind(record, 'machinery-space');
    const only = spaces.length === 1 ? spaces[0]?.id : undefined;
    const idOf = (part: Component) => servedId(part) ?? (part.facts.has('space-volume') ? undefined : only);
    const ids = [...new Set([...blowers, ...ducts].map(idOf))];
    return ids.map(id => spaceOf(record, id === undefined ? undefined : record.components.get(id), blowers.filter(b => idOf(b) === id), ducts.filter(d => idOf(d) === id)));
}

/** Spaces with a gasoline engine or tank, closed to the air, that the survey records. */
export function gasolineSpaces(record: SurveyRecord): readonly VentilatedSpace[] {
    return ofKind(record, 'machinery-space').map(space => spaceOf(record, space, [], [])).filter(space => space.isGasoline === true && !space.isOpen);
}

function servedId(part: Component): string | undefined {
    const value = part.facts.get('serves')?.values[0];
    return value?.type === 'component' ? value.id : undefined;
}

function spaceOf(record: SurveyRecord, served: Component | undefined, blowers: VentilatedSpace['blowers'], ducts: VentilatedSpace['ducts']): VentilatedSpace {
    const space = served && isKind(record, served, 'machinery-space') ? served : undefined;
    const parts: readonly Component<'blower' | 'vent-duct'>[] = [...blowers, ...ducts];
    const own = space && valueOf(space, 'volume');
    const stated = parts.find(part => part.facts.has('space-volume'));
    const byPart = stated?.facts.get('space-volume')?.values[0];
    const volume: Volume | undefined = space && own ? { quantity: own, on: space, property: 'volume' }
        : stated && byPart?.type === 'quantity' ? { quantity: byPart, on: stated, property: 'space-volume' } : undefined;
    const openAreaM2 = space && siOf(space, 'open-area');
    const isOpen = [...(space ? [space] : []), ...parts].some(part => flagOf(part, 'space-open') === true)
        || (openAreaM2 !== undefined && volume !== undefined && isOpenToAtmosphere(openAreaM2, volume.quantity.si));
    return {
        title: space ? space.title ?? `space ${space.id}` : served ? `the space of ${served.id}` : 'the space',
        isOpen, isGasoline: isGasoline(record, served), blowers, ducts, ...(served ? { served } : {}), ...(volume ? { volume } : {}),
    };
}

/** By what the space says of itself, else by the engine served, else by the vessel; outboards stand outside. */
function isGasoline(record: SurveyRecord, served: Component | undefined): boolean | undefined {
    const stated = served ? flagOf(served, 'gasoline') : undefined;
    const engines = ofKind(record, 'engine');
    if (stated !== undefined) {
        return stated;
    }
    if (served && isKind(record, served, 'engine')) {
        const fuel = wordOf(served, 'fuel') ?? vesselFuel(record);
        return isKind(record, served, 'outboard') ? false : fuel === undefined ? undefined : fuel === 'gasoline';
    }
    if (engines.length > 0 && engines.every(engine => isKind(record, engine, 'outboard'))) {
        return false;
    }
    const fuel = record.vessel ? wordOf(record.vessel, 'fuel') ?? vesselFuel(record) : vesselFuel(record);
    const inboard = engines.filter(engine => !isKind(record, engine, 'outboard')).map(engine => wordOf(engine, 'fuel'));
    // A diesel yacht with a gasoline generator: which of them the space holds is not known.
    return new Set([fuel, ...inboard].filter(word => word !== undefined)).size > 1 || fuel === undefined ? undefined : fuel === 'gasoline';
}

/** Records the space as open to the air. */
export function recordOpen({ served, blowers, ducts }: VentilatedSpace): Correction[] {
    const on = served?.kind === 'machinery-space' ? served : blowers[0] ?? ducts[0];
    return on ? [{ kind: 'set-fact', title: 'Record the space as open to the air', component: on, property: 'space-open', value: 'yes' }] : [];
}

/** A flow of air: "90 cfm (153 m3/h)". */
export function airBoth(flowM3s: number): string {
    return `${significant(convertTo(flowM3s, 'cfm'), 3)} cfm (${significant(convertTo(flowM3s, 'm3/h'), 3)} m3/h)`;
}

/** The volume of a space: "60 ft3 (1.7 m3)". */
export function spaceBoth(volumeM3: number): string {
    return `${significant(convertTo(volumeM3, 'ft3'), 3)} ft3 (${significant(volumeM3, 3)} m3)`;
}

/** An area of openings: "12.4 in2 (80 cm2)". */
export function ventBoth(areaM2: number): string {
    return `${significant(convertTo(areaM2, 'in2'), 3)} in2 (${significant(convertTo(areaM2, 'cm2'), 3)} cm2)`;
}
