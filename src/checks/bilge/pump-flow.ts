/** What a bilge pump moves as it is fitted, and how that is known. */
import { isKind, runsThrough, siOf, wordOf, yardstick, type Component, type SurveyRecord, type Yardstick } from '../../record/model.js';
import { flowAtLiftM3s, usableFlowM3s } from '../../trade/pump.js';

export interface PumpFlow {
    readonly flowM3s: number;
    /** Measured or by the maker's curve; estimated from the maker's head at its lift; or a share of its rating. */
    readonly by: 'real' | 'lift' | 'share';
}

/** One pump, or all of a line that says how many; undefined where neither rating nor real flow is recorded. */
export function pumpFlow(record: SurveyRecord, pump: Component): PumpFlow | undefined {
    const count = siOf(pump, 'quantity') ?? 1;
    const real = siOf(pump, 'real-flow');
    const rated = siOf(pump, 'rated-flow');
    if (real !== undefined || rated === undefined) {
        return real === undefined ? undefined : { flowM3s: real * count, by: 'real' };
    }
    const lifted = flowByLift(record, pump, rated);
    return lifted === undefined ? { flowM3s: usableFlowM3s(rated, yardstick(record, 'pump-share').si) * count, by: 'share' } : { flowM3s: lifted * count, by: 'lift' };
}

/** By the maker's head and its lift, where both are recorded and it is no diaphragm pump. */
function flowByLift(record: SurveyRecord, pump: Component, ratedM3s: number): number | undefined {
    const headM = siOf(pump, 'makers-head');
    const liftM = siOf(pump, 'lift');
    if (headM === undefined || headM <= 0 || liftM === undefined || wordOf(pump, 'build') === 'diaphragm' || isKind(record, pump, 'manual-bilge-pump')) {
        return undefined;
    }
    const volts = siOf(pump, 'voltage');
    const nominal = siOf(pump, 'nominal-voltage');
    const hose = hoseOf(record, pump);
    return flowAtLiftM3s({ ratedM3s, headM, liftM, ...(hose ? { hose } : {}), ...(volts !== undefined && nominal !== undefined && nominal > 0 ? { voltageShare: volts / nominal } : {}) });
}

/** The hose after the pump in its run: narrowest bore and whole length, where both are recorded. */
export function hoseOf(record: SurveyRecord, pump: Component): { readonly boreM: number; readonly lengthM: number } | undefined {
    for (const run of runsThrough(record, pump)) {
        // A run may be written from the opening inward or from the pump outward; the hose of a bilge pump is all on one side of it.
        const lines = run.components.filter(part => isKind(record, part, 'hose') || isKind(record, part, 'pipe'));
        const bores = lines.map(part => siOf(part, 'bore')).filter(bore => bore !== undefined);
        const lengths = lines.map(part => siOf(part, 'length')).filter(length => length !== undefined);
        if (lines.length > 0 && bores.length === lines.length && lengths.length === lines.length) {
            return { boreM: Math.min(...bores), lengthM: lengths.reduce((sum, length) => sum + length, 0) };
        }
    }
    return undefined;
}

/** "at 50 % of their rating by the usual limit", for flows that rest on a share. */
export function shareText({ written, whose }: Yardstick): string {
    return `${written} of the rating, ${whose} where the maker’s curve is not known`;
}
