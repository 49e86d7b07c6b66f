/** The ways by which sewage can leave the hull, and how each is secured. */
import { flagOf, isKind, wordOf, type Component, type Run, type SurveyRecord } from '../../record/model.js';

/** Ways of closing an opening that leave nothing to be secured. */
const closed: ReadonlySet<string> = new Set(['capped', 'blanked', 'glassed-over', 'welded']);

export interface Discharge {
    readonly run: Run;
    readonly opening: Component;
    readonly valves: readonly Component[];
}

/** Runs of sewage that end at an opening of the hull which is not closed for good. */
export function dischargesOf(record: SurveyRecord): Discharge[] {
    return record.runs.filter(run => wordOf(run, 'service') === 'toilet-discharge').flatMap(run => {
        const opening = run.components.find(component => isKind(record, component, 'hull-opening'));
        const isClosed = run.end === 'capped' || run.end === 'blanked' || closed.has((opening && wordOf(opening, 'closure')) ?? '')
            || run.components.some(component => isKind(record, component, 'blank'));
        const valves = run.components.filter(component => isKind(record, component, 'valve') && !isKind(record, component, 'check-valve') && wordOf(component, 'pattern') !== 'check-valve');
        return opening && !isClosed ? [{ run, opening, valves }] : [];
    });
}

/** Sewage valves and treatment devices that lie in no run, where no run of sewage to the hull is recorded. */
export function looseValvesOf(record: SurveyRecord): readonly Component[] {
    if (record.runs.some(run => wordOf(run, 'service') === 'toilet-discharge')) {
        return [];
    }
    const isOfToilet = (part: Component) => part.facts.get('serves')?.values.some(value => value.type === 'component' && /^(toilet|holding-tank|treatment-device)$/.test(record.components.get(value.id)?.kind ?? '')) ?? false;
    return [...record.components.values()].filter(part => isKind(record, part, 'diverter') || (isKind(record, part, 'y-valve') && part.facts.has('set-to'))
        || (isKind(record, part, 'valve') && isOfToilet(part)));
}

export type Securing = 'secured' | 'not-secured' | 'not-recorded';

/** Whether a valve is held shut to the sea: its handle off, tied, padlocked; a diverter held towards the tank. */
export function securingOf(record: SurveyRecord, valve: Component): Securing {
    const isDiverter = isKind(record, valve, 'y-valve') || wordOf(valve, 'pattern') === 'diverter';
    const isOpen = isDiverter ? wordOf(valve, 'set-to') === 'overboard' : wordOf(valve, 'position') === 'open';
    const handle = wordOf(valve, 'handle');
    const by = wordOf(valve, 'secured-by');
    if (isOpen) {
        return 'not-secured';
    }
    if (handle === 'gone' || handle === 'tied' || by === 'handle-off' || by === 'padlock' || by === 'tie' || (isDiverter && flagOf(valve, 'secured') === true)) {
        return 'secured';
    }
    return by === 'none' || (isDiverter && flagOf(valve, 'secured') === false) ? 'not-secured' : 'not-recorded';
}

/** The door of a treatment device's space is locked. */
export function isDoorLocked(record: SurveyRecord, { run }: Discharge): boolean {
    return run.components.some(component => isKind(record, component, 'treatment-device') && wordOf(component, 'secured-by') === 'locked-door');
}
