/** What a hose carries, by the run it lies in. */
import { wordOf, type Component, type Run } from '../../record/model.js';

export function serviceOf(run: Run): string | undefined {
    return wordOf(run, 'service');
}

/** Fuel, by the run's service; by the marking of the hose where the run's service is not recorded. */
export function isFuelHose(run: Run, hose: Component): boolean {
    const service = serviceOf(run);
    return service === undefined ? wordOf(hose, 'class')?.startsWith('fuel-') ?? false : service.startsWith('fuel-');
}

/** Services whose hoses hold water that comes from, or may come from, outside the hull. */
const waterServices: ReadonlySet<string> = new Set([
    'raw-water-cooling', 'toilet-intake', 'toilet-discharge', 'sink-drain', 'shower-drain', 'cockpit-drain', 'bilge-discharge', 'deck-drain', 'exhaust', 'other',
]);

/** Whether a run may hold outside water; one whose service is not recorded may. */
export function carriesSeaWater(run: Run): boolean {
    const service = serviceOf(run);
    return service === undefined || waterServices.has(service);
}

/** Plain words for a service: "toilet discharge". */
export function serviceTitle(service: string): string {
    return service.replaceAll('-', ' ');
}
