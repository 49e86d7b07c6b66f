/** What a hose carries: by the run it lies in, else by what is recorded of the hose itself. */
import { wordOf, type Component, type Run } from '../../record/model.js';

/** Service of a run, or of a hose in it where the run's is not recorded. */
export function serviceOf(run: Run, hose?: Component): string | undefined {
    return wordOf(run, 'service') ?? (hose ? wordOf(hose, 'service') : undefined);
}

/** Fuel, by service; by the marking of the hose where no service is recorded. */
export function isFuelHose(run: Run, hose: Component): boolean {
    return (serviceOf(run, hose) ?? wordOf(hose, 'class'))?.startsWith('fuel-') ?? false;
}

const waterServices: ReadonlySet<string> = new Set([
    'raw-water-cooling', 'generator-cooling', 'air-conditioning', 'wash-down', 'toilet-intake', 'toilet-discharge', 'sink-drain', 'shower-drain',
    'cockpit-drain', 'deck-drain', 'bilge-discharge', 'exhaust', 'other',
]);

/** Whether a hose may hold water from outside the hull; one whose service is not recorded may. */
export function mayHoldSeaWater(run: Run, hose?: Component): boolean {
    const service = serviceOf(run, hose);
    return service === undefined || waterServices.has(service);
}

/** Services in which a pump draws water from the hull. */
export function isRawWater(service: string | undefined): boolean {
    return service === 'raw-water-cooling' || service === 'generator-cooling' || service === 'air-conditioning';
}

/** Plain words for a service: "toilet discharge". */
export function serviceTitle(service: string): string {
    return service.replaceAll('-', ' ');
}
