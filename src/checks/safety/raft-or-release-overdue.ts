/** A life raft past its service, too small or not made fast, and a hydrostatic release past its month. */
import { flagOf, nameOf, ofKind, siOf, valueOf, type Component, type DateFigure, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { hasPassed, isOlderThanMonths } from '../dates.js';
import { listed } from '../phrasing.js';
import { surveyedOn } from '../hoses/age.js';
import { offshoreUrgency, totalOf, type GearFault } from './gear.js';

/** Months that a release lasts where none is marked on it (makers). */
const releaseMonths = 24;

export const raftOrReleaseOverdue = defineCheck({
    id: 'raft-or-release-overdue',
    group: 'safety',
    severity: 'error',
    title: 'Life raft or hydrostatic release is overdue',
    why: 'A raft may fail when it is thrown, or go down with her.',
    needs: ['liferaft: service-due, persons, painter-fast', 'hydrostatic-release: expires, or fitted (or made)', 'vessel: persons', 'vessel: used-on, for the urgency', 'the day of the last attendance'],
    computes: 'A fault where the service of a raft, or the month of a release, has ended before the day of the survey; where a release carries no month and is over 2 years old; where she carries more persons than her rafts are rated for; and where a painter is not made fast.',
    sources: [
        { text: 'terms of service on the gear, releases 2 years', standard: 'Maker’s manual', provenance: 'practice' },
        { text: 'rafts for all aboard offshore', provenance: 'practice' },
    ],
    limits: [
        'No rule is known to it that makes a private vessel carry a raft: where none is recorded, nothing is said.',
        'A raft known to be overdue still counts for its persons.',
        'Dates known to the month or year run to their last day.',
    ],
    examples: [{
        name: 'service overdue',
        bad: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
vessel "Marram" { persons: 4  used-on: offshore }
liferaft LR1 { persons: 6  service-due: 2026-06 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
vessel "Marram" { persons: 4  used-on: offshore }
liferaft LR1 { persons: 6  service-due: 2027-06 }
`,
    }, {
        name: 'more persons than the raft is rated for',
        bad: `vessel "Marram" { persons: 8 }
liferaft LR1 { persons: 6 }
`,
        fixed: `vessel "Marram" { persons: 6 }
liferaft LR1 { persons: 6 }
`,
        correction: 'Record that she carries 6 persons',
    }, {
        name: 'release with no month, fitted three years ago',
        bad: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
hydrostatic-release HR1 { fitted: 2023-08 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }
hydrostatic-release HR1 { fitted: 2026-08 }
`,
    }],
    silent: [
        { name: 'last day of the month it is due', text: 'survey "1" pre-purchase { attended 2026-10-31 afloat "Berth" }\nliferaft LR1 { persons: 6  service-due: 2026-10 }\n' },
        { name: 'release in its marked month', text: 'survey "1" pre-purchase { attended 2026-10-06 afloat "Berth" }\nhydrostatic-release HR1 { expires: 2026-10  fitted: 2023-08 }\n' },
        { name: 'two rafts for all', text: 'vessel "Marram" { persons: 8 }\nliferaft LR1 { persons: 4 }\nliferaft LR2 { persons: 4 }\n' },
        { name: 'persons of the raft not recorded', text: 'vessel "Marram" { persons: 8 }\nliferaft LR1 { painter-fast: yes }\n' },
    ],
    run(record, raise) {
        const today = surveyedOn(record);
        const rafts = ofKind(record, 'liferaft');
        for (const raft of rafts) {
            judge(record, raft, 'service-due', raftFaults(raft, today), raise, today);
        }
        for (const release of ofKind(record, 'hydrostatic-release')) {
            judge(record, release, 'expires', releaseFaults(release, today), raise, today);
        }
        judgePersons(record, rafts, raise);
    },
});

function raftFaults(raft: Component<'liferaft'>, today: DateFigure | undefined): GearFault[] {
    const due = valueOf(raft, 'service-due')?.figure;
    const faults: GearFault[] = [];
    if (due && today && hasPassed(due, today)) {
        faults.push({ property: 'service-due', what: `was due for service ${due.written}`, seen: `was due for service {${raft.id}.service-due}`, remedy: 'have it serviced' });
    }
    if (flagOf(raft, 'painter-fast') === false) {
        faults.push({ property: 'painter-fast', what: 'does not have its painter made fast', seen: 'does not have its painter made fast', remedy: 'make its painter fast' });
    }
    return faults;
}

function releaseFaults(release: Component<'hydrostatic-release'>, today: DateFigure | undefined): GearFault[] {
    const expires = valueOf(release, 'expires')?.figure;
    const property = release.facts.has('fitted') ? 'fitted' : 'made';
    const since = valueOf(release, property)?.figure;
    if (expires) {
        return today && hasPassed(expires, today) ? [{ property: 'expires', what: `is marked ${expires.written}, which has passed`, seen: `is marked {${release.id}.expires}, which had passed`, remedy: 'renew it' }] : [];
    }
    return since && today && isOlderThanMonths(since, releaseMonths, today)
        ? [{ property, what: `carries no month and was ${property} ${since.written}, over 2 years before the survey`, seen: `carries no month and was ${property} {${release.id}.${property}}, over 2 years before the survey`, remedy: 'renew it and mark its month' }] : [];
}

function judge(record: SurveyRecord, gear: Component, dated: string, faults: readonly GearFault[], raise: (problem: Raised) => void, today: DateFigure | undefined): void {
    if (faults.length > 0) {
        raise(problem(record, gear, faults));
    } else if (gear.facts.has(dated) && !today) {
        raise({ components: [gear], at: gear.facts.get(dated)?.span ?? gear.idSpan, severity: 'hint', message: `${nameOf(gear)} carries a date; record when she was attended to tell whether it has passed.` });
    } else if (flagOf(gear, 'marked') === false && !gear.facts.has('fitted') && !gear.facts.has('made')) {
        raise({ components: [gear], at: gear.facts.get('marked')?.span ?? gear.idSpan, severity: 'hint', message: `${nameOf(gear)} carries no month; record when it was fitted to tell whether it is over 2 years old.` });
    }
}

function problem(record: SurveyRecord, gear: Component, faults: readonly GearFault[]): Raised {
    const isRaft = gear.kind === 'liferaft';
    const what = isRaft ? 'Life raft' : 'Hydrostatic release';
    const because = isRaft ? 'The raft may fail when it is thrown, or drift away' : 'The raft may stay down with her';
    const remedy = listed(faults.map(fault => fault.remedy));
    return {
        components: [gear],
        at: gear.facts.get(faults[0]?.property ?? '')?.span ?? gear.idSpan,
        message: `${nameOf(gear)} ${listed(faults.map(fault => fault.what))}. ${because}; ${remedy}.`,
        draft: {
            title: `${what} ${gear.id} is not in order`,
            ...offshoreUrgency(record),
            seen: `${what} ${gear.id} ${listed(faults.map(fault => fault.seen))}.`,
            because: `${because} when it is needed.`,
            recommend: `${what} ${gear.id}: ${remedy}.`,
            cites: [['Maker’s manual']],
        },
    };
}

function judgePersons(record: SurveyRecord, rafts: readonly Component<'liferaft'>[], raise: (problem: Raised) => void): void {
    const persons = record.vessel && siOf(record.vessel, 'persons');
    const [first] = rafts;
    if (!first || persons === undefined || totalOf(rafts) === 0 || rafts.some(raft => !raft.facts.has('persons'))) {
        return;
    }
    const places = rafts.reduce((sum, raft) => sum + (siOf(raft, 'persons') ?? 0) * (siOf(raft, 'quantity') ?? 1), 0);
    if (persons <= places) {
        return;
    }
    const names = listed(rafts.map(raft => raft.id));
    const corrections: Correction[] = [{ kind: 'set-vessel-fact', title: `Record that she carries ${places} persons`, property: 'persons', value: String(places) }];
    raise({
        components: rafts,
        at: first.facts.get('persons')?.span ?? first.idSpan,
        message: `She carries ${persons} persons, and ${names} ${rafts.length === 1 ? 'is' : 'are'} rated for ${places}. An overloaded raft may founder; carry rafts for all aboard, or fewer persons.`,
        figures: { persons: { value: persons, unit: '' }, places: { value: places, unit: '' } },
        corrections,
        draft: {
            title: 'Life raft is too small for those aboard',
            ...offshoreUrgency(record),
            seen: `She carries {vessel.persons} persons; ${listed(rafts.map(raft => `${raft.id} is rated for {${raft.id}.persons}`))}.`,
            because: 'An overloaded raft may founder, and who finds no room in it is left in the water.',
            recommend: 'Carry rafts for all aboard, or take no more persons than they are rated for.',
            cites: [['Good practice']],
        },
    });
}
