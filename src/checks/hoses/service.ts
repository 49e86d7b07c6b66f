/** What a hose carries: by the run it lies in, else by what is recorded of the hose itself. */
import { wordOf, type Component, type Run } from '../../record/model.js';

/** Service of a run, or of a hose in it where the run's is not recorded; an exhaust hose is one by its kind. */
export function serviceOf(run: Run | undefined, hose?: Component): string | undefined {
    return (run && wordOf(run, 'service')) ?? (hose ? wordOf(hose, 'service') ?? (hose.kind === 'exhaust-hose' ? 'exhaust' : undefined) : undefined);
}

/** Fuel, by service; by the kind or the marking of the hose where no service is recorded. */
export function isFuelHose(run: Run | undefined, hose: Component): boolean {
    return (serviceOf(run, hose) ?? (hose.kind === 'fuel-hose' ? 'fuel-' : wordOf(hose, 'class')))?.startsWith('fuel-') ?? false;
}

/** The runs of a hose; where it lies in none, what is recorded of itself alone tells of it. */
export function placesOf(runs: readonly Run[]): readonly (Run | undefined)[] {
    return runs.length > 0 ? runs : [undefined];
}

const waterServices: ReadonlySet<string> = new Set([
    'raw-water-cooling', 'generator-cooling', 'air-conditioning', 'wash-down', 'toilet-intake', 'toilet-discharge', 'sink-drain', 'shower-drain',
    'cockpit-drain', 'deck-drain', 'bilge-discharge', 'exhaust', 'other',
]);

/** Whether a hose may hold water from outside the hull; one whose service is not recorded may. */
export function mayHoldSeaWater(run: Run | undefined, hose?: Component): boolean {
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
