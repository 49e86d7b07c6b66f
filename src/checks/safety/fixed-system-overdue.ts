/** A fixed extinguishing system past its service, short of agent, too small for its space, or left to be drawn in by a running diesel. */
import { agentLoss, agentLossLimit, serviceMonths } from '../../trade/fixed-extinguisher.js';
import { flagOf, nameOf, ofKind, siOf, valueOf, wordOf, type Component, type Quantity, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { isOlderThanMonths } from '../dates.js';
import { both, listed } from '../phrasing.js';
import { vesselFuel } from '../fuel/fuel-system.js';
import { surveyedOn } from '../hoses/age.js';
import type { GearFault } from './gear.js';

export const fixedSystemOverdue = defineCheck({
    id: 'fixed-system-overdue',
    group: 'safety',
    severity: 'error',
    title: 'Fixed extinguisher is overdue or does not suit its space',
    why: 'Gas that is too thin, or drawn off by a running engine, does not put a fire out.',
    needs: ['fixed-extinguisher: serviced', 'fixed-extinguisher: agent-mass, agent-mass-now', 'fixed-extinguisher: covers, and space-volume or the volume of the machinery-space it serves', 'fixed-extinguisher: stops-engine; vessel: fuel', 'the day of the last attendance'],
    computes: 'A fault where more than 12 months lie between the last service and the last attendance, where (label - weighed) / label of the agent exceeds 5 %, where the volume it is rated for is less than the net volume of the space, where it does not stop a diesel engine, or where its pin is loose or gone.',
    sources: [
        { text: 'yearly service, 5 % of the agent', provenance: 'practice' },
        { text: 'rated volume not less than the net volume of the space, by its label', provenance: 'practice' },
        { text: 'shut-down of a diesel engine before the agent is let go', standard: 'ABYC A-4', provenance: 'memory' },
    ],
    limits: [
        'A service known to the month or year counts from its last day, so that no system is called overdue too early.',
        'Masses are compared as they are recorded: both of the agent alone, or both with the same container.',
        'The net volume is taken as recorded; what stands in the space is not subtracted.',
    ],
    examples: [{
        name: 'serviced over a year before the survey',
        bad: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
vessel "Marram" { fuel: diesel }
fixed-extinguisher FX1 { serviced: 2025-09  stops-engine: yes }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
vessel "Marram" { fuel: diesel }
fixed-extinguisher FX1 { serviced: 2026-09  stops-engine: yes }
`,
    }, {
        name: 'does not stop the diesel',
        bad: `vessel "Marram" { fuel: diesel }
fixed-extinguisher FX1 { stops-engine: no }
`,
        fixed: `vessel "Marram" { fuel: diesel }
fixed-extinguisher FX1 { stops-engine: yes }
`,
        correction: 'Record that FX1 stops the engine',
    }, {
        name: 'too small for its space, and light',
        bad: 'fixed-extinguisher FX1 { covers: 200 ft3  space-volume: 260 ft3  agent-mass: 10 lb  agent-mass-now: 9 lb }\n',
        fixed: 'fixed-extinguisher FX1 { covers: 275 ft3  space-volume: 260 ft3  agent-mass: 10 lb  agent-mass-now: 9.8 lb }\n',
    }],
    silent: [
        { name: 'serviced in the month of the survey a year before', text: 'survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }\nvessel "Marram" { fuel: diesel }\nfixed-extinguisher FX1 { serviced: 2025-10  stops-engine: yes }\n' },
        { name: 'does not stop a gasoline engine', text: 'vessel "Marram" { fuel: gasoline }\nfixed-extinguisher FX1 { stops-engine: no }\n' },
        { name: 'exactly 5 % of the agent gone', text: 'fixed-extinguisher FX1 { agent-mass: 10 lb  agent-mass-now: 9.5 lb }\n' },
        { name: 'rated for just its space', text: 'fixed-extinguisher FX1 { covers: 260 ft3  space-volume: 260 ft3 }\n' },
        { name: 'nothing recorded of it', text: 'vessel "Marram" { fuel: diesel }\nfixed-extinguisher FX1\n' },
    ],
    run(record, raise) {
        for (const system of ofKind(record, 'fixed-extinguisher')) {
            const faults = faultsOf(record, system);
            if (faults.length > 0) {
                raise(problem(system, faults));
            } else {
                askFor(record, system, raise);
            }
        }
    },
});

function faultsOf(record: SurveyRecord, system: Component<'fixed-extinguisher'>): GearFault[] {
    const { id } = system;
    const faults: GearFault[] = [];
    const serviced = valueOf(system, 'serviced')?.figure;
    const today = surveyedOn(record);
    if (serviced && today && isOlderThanMonths(serviced, serviceMonths, today)) {
        faults.push({ property: 'serviced', what: `was last serviced ${serviced.written}, over ${serviceMonths} months before the survey`, seen: `was last serviced {${id}.serviced}, over ${serviceMonths} months before the survey`, remedy: 'have it serviced and tagged' });
    }
    const label = valueOf(system, 'agent-mass');
    const weighed = valueOf(system, 'agent-mass-now');
    const loss = label && weighed && label.si > 0 ? agentLoss(label.si, weighed.si) : undefined;
    if (label && weighed && loss !== undefined && loss > agentLossLimit + 1e-9) {
        const share = `${Math.round(loss * 1000) / 10} %`;
        faults.push({ property: 'agent-mass-now', what: `weighs ${both(weighed)} of agent where its label says ${both(label)}, ${share} less against a limit of 5 %`, seen: `weighs {${id}.agent-mass-now} of agent where its label says {${id}.agent-mass}, ${share} less`, remedy: 'have it filled' });
    }
    const covers = valueOf(system, 'covers');
    const space = spaceOf(record, system);
    if (covers && space && covers.si < space.volume.si * (1 - 1e-6)) {
        faults.push({ property: 'covers', what: `is rated for ${both(covers)} where its space has ${both(space.volume)}`, seen: `is rated for {${id}.covers} where its space has {${space.on.id}.${space.property}}`, remedy: 'fit one of at least the volume of the space' });
    }
    if (flagOf(system, 'stops-engine') === false && fuelOf(record) === 'diesel') {
        faults.push({ property: 'stops-engine', what: 'does not stop the diesel engine, which draws the agent off', seen: 'does not stop the diesel engine', remedy: 'fit an automatic shut-down' });
    }
    const pin = wordOf(system, 'pin');
    if (pin === 'loose' || pin === 'gone') {
        faults.push({ property: 'pin', what: `has its pin ${pin}`, seen: `has its pin {${id}.pin}`, remedy: 'have its pin and seal renewed' });
    }
    return faults;
}

/** Net volume of its space: its own record of it, else of the space it serves, else of the only one recorded. */
function spaceOf(record: SurveyRecord, system: Component<'fixed-extinguisher'>): { readonly volume: Quantity; readonly on: Component; readonly property: 'volume' | 'space-volume' } | undefined {
    const own = valueOf(system, 'space-volume');
    if (own) {
        return { volume: own, on: system, property: 'space-volume' };
    }
    const spaces = ofKind(record, 'machinery-space');
    const served = valueOf(system, 'serves')?.id;
    const space = served === undefined ? (spaces.length === 1 ? spaces[0] : undefined) : spaces.find(candidate => candidate.id === served);
    const volume = space && valueOf(space, 'volume');
    return space && volume ? { volume, on: space, property: 'volume' } : undefined;
}

function fuelOf(record: SurveyRecord): string | undefined {
    return (record.vessel && wordOf(record.vessel, 'fuel')) ?? vesselFuel(record);
}

function problem(system: Component, faults: readonly GearFault[]): Raised {
    const label = siOf(system, 'agent-mass');
    const weighed = siOf(system, 'agent-mass-now');
    const remedy = listed([...new Set(faults.map(fault => fault.remedy))]);
    const corrections: Correction[] = faults.some(fault => fault.property === 'stops-engine')
        ? [{ kind: 'set-fact', title: `Record that ${system.id} stops the engine`, component: system, property: 'stops-engine', value: 'yes' }] : [];
    const cites = faults.some(fault => fault.property === 'stops-engine') ? { cites: [['ABYC A-4'] as const] } : {};
    return {
        components: [system],
        at: system.facts.get(faults[0]?.property ?? '')?.span ?? system.idSpan,
        message: `${nameOf(system)} ${listed(faults.map(fault => fault.what))}. Thin gas does not put a fire out; ${remedy}.`,
        ...(label && weighed !== undefined ? { figures: { 'agent gone': { value: agentLoss(label, weighed) * 100, unit: '%' } } } : {}),
        corrections,
        draft: {
            title: `Fixed extinguisher ${system.id} is overdue or does not suit its space`,
            urgency: 'before-use',
            seen: `Fixed extinguisher ${system.id} ${listed(faults.map(fault => fault.seen))}.`,
            because: 'Where the agent is thin, or is drawn off by a running engine, a fire in the machinery space is not put out.',
            recommend: `Before the engine is used, ${remedy}.`,
            ...cites,
        },
    };
}

/** The one fact that would decide, where the rest is recorded. */
function askFor(record: SurveyRecord, system: Component<'fixed-extinguisher'>, raise: (problem: Raised) => void): void {
    const ask = (property: string, text: string) => {
        raise({ components: [system], at: system.facts.get(property)?.span ?? system.idSpan, severity: 'hint', message: text });
    };
    if (system.facts.has('serviced') && !surveyedOn(record)) {
        ask('serviced', `${nameOf(system)} has a date of service; record when she was attended to tell whether it is overdue.`);
    }
    if (system.facts.has('covers') !== (spaceOf(record, system) !== undefined) && (system.facts.has('covers') || system.facts.has('space-volume'))) {
        const [known, missing] = system.facts.has('covers') ? ['covers', 'space-volume'] as const : ['space-volume', 'covers'] as const;
        ask(known, `Record ${missing} of ${nameOf(system)} to tell whether it is large enough for its space.`);
    }
    if (flagOf(system, 'stops-engine') === false && fuelOf(record) === undefined) {
        ask('stops-engine', `${nameOf(system)} does not stop the engine; record the fuel of the vessel, for with a diesel it must.`);
    }
}
