/** A recommendation of the report that is followed, of which this survey does not say what became. */
import { asksNothing, earlierFindings, followedReport, nextFindingNumber } from '../../record/earlier-findings.js';
import type { IssuedFinding, SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction } from '../contract.js';
import { findingText, followingSurvey, followsSpan, issuedFinding, issuedReport, reportName, vesselDiffers } from './earlier-reports.js';

const seacock = issuedFinding('F1', 'Galley seacock stiff');
const hose = issuedFinding('F2', 'Gas hose cracked');
const taken = findingText('F1', 'Galley seacock stiff', 'outcome: done-and-seen\n    evidence: "Worked three times by hand."');

export const earlierRecommendationNotTakenUp = defineCheck({
    id: 'earlier-recommendation-not-taken-up',
    group: 'record',
    severity: 'error',
    isOfReport: true,
    title: 'Earlier recommendation is not taken up',
    why: 'A re-inspection that passes over a recommendation reads as if the matter were closed.',
    needs: ['survey: follows', 'the earlier report', 'finding: its number or earlier, outcome'],
    computes: 'Recommendations of the report that is followed to which no finding belongs, by its number or by earlier, or whose finding records no outcome. Those that the earlier report itself closed as done-and-seen, and its remarks (note-only), ask for nothing.',
    sources: [{ text: 'each recommendation of the earlier report with its present state', provenance: 'practice' }],
    limits: [
        'It needs the earlier report, issued or as a survey, where this program can read it; of a report on paper it knows nothing.',
        'A number that stands for another matter takes nothing up; that is told by finding-number-changed.',
        'Where the earlier report is of another vessel it is silent.',
    ],
    examples: [{
        name: 'one of two passed over',
        bad: followingSurvey(taken),
        fixed: followingSurvey(`${taken}\n${findingText('F2', 'Gas hose cracked', 'outcome: open\n    looked-at: 2027-05-04')}`),
        issued: { followed: issuedReport([seacock, hose]) },
        correction: 'Take up F2 as open',
    }, {
        name: 'taken up, and not said what became of it',
        bad: followingSurvey(findingText('F1', 'Galley seacock stiff', '')),
        fixed: followingSurvey(findingText('F1', 'Galley seacock stiff', 'outcome: declined')),
        issued: { followed: issuedReport([seacock]) },
        correction: 'Record it as declined',
    }],
    silent: [
        { name: 'taken up under the number of another surveyor', text: followingSurvey(findingText('F1', 'Galley seacock stiff', 'earlier: "12.3"\n    outcome: open')), issued: { followed: issuedReport([{ ...seacock, id: '12.3' }]) } },
        { name: 'closed by the earlier report itself', text: followingSurvey(''), issued: { followed: issuedReport([{ ...seacock, outcome: 'done-and-seen' }]) } },
        { name: 'a remark, which asks for nothing', text: followingSurvey(''), issued: { followed: issuedReport([{ ...seacock, urgency: 'note-only' }]) } },
        { name: 'the earlier report cannot be read', text: followingSurvey('') },
    ],
    run(record, raise) {
        const report = followedReport(record);
        if (!report || vesselDiffers(record, report)) {
            return;
        }
        const asked = earlierFindings(record).filter(({ issued }) => !asksNothing(issued));
        const open = asked.flatMap(({ issued, takenUpBy }) => takenUpBy ? [] : [issued]);
        for (const issued of open) {
            // Its number may be in use for another matter, which is to be put right first.
            const isFree = !record.findings.some(finding => finding.id === issued.id);
            raise({
                components: [], at: followsSpan(record),
                message: `${issued.id} of ${reportName(report)}, “${issued.title}”, is not taken up: nothing says what became of it, and a reader takes that for done. ${isFree ? `Write a finding ${issued.id} with its outcome and what shows it.` : `The number ${issued.id} stands for another matter here; give that one a number of its own, then take this one up.`}`,
                corrections: isFree ? [
                    ...outcomesOf(record).map(outcome => ({
                        kind: 'add-statement' as const, title: `Take up ${issued.id} as ${outcome.replaceAll('-', ' ')}`, lines: findingLines(record, issued, outcome, report.number), isStep: outcome !== 'open',
                    })),
                    ...(issued === open[0] && open.length > 1 ? [takeUpAll(record, open, report.number)] : []),
                ] : [],
            });
        }
        for (const { issued, takenUpBy } of asked) {
            if (takenUpBy && !takenUpBy.facts.has('outcome')) {
                raise({
                    components: [], finding: takenUpBy, at: takenUpBy.idSpan,
                    message: `${takenUpBy.id} takes up ${issued.id === takenUpBy.id ? '' : `${issued.id} of `}${reportName(report)} and does not say what became of it. Record its outcome: ${outcomesOf(record).join(', ')}.`,
                    corrections: outcomesOf(record).map(outcome => ({ kind: 'set-finding-fact', title: `Record it as ${outcome.replaceAll('-', ' ')}`, finding: takenUpBy, property: 'outcome', value: outcome, isStep: outcome === 'done-and-seen' })),
                });
            }
        }
    },
});

function outcomesOf(record: SurveyRecord): string[] {
    return [...record.vocabulary.wordLists.get('outcome')?.words.keys() ?? []];
}

function takeUpAll(record: SurveyRecord, open: readonly IssuedFinding[], number: string): Correction {
    const free = open.filter(issued => !record.findings.some(finding => finding.id === issued.id));
    const given: string[] = [];
    const lines = free.flatMap((issued, index) => {
        const written = findingLines(record, issued, 'open', number, given);
        return index === 0 ? written : ['', ...written];
    });
    return { kind: 'add-statement', title: `Take up all ${free.length} as open`, lines };
}

/** The earlier words under the same number, said to be those of the earlier report, with the outcome and a place for what shows it. */
function findingLines(record: SurveyRecord, issued: IssuedFinding, outcome: string, number: string, given: string[] = []): string[] {
    const isName = /^[\p{L}_][\p{L}\p{N}_-]*$/u.test(issued.id);
    const id = isName ? issued.id : nextFindingNumber(record, given);
    given.push(id);
    const on = [...record.components.values()].filter(part => issued.on.some(name => name === part.id || name.endsWith(`(${part.id})`)));
    const place = issued.place ?? (on.length === 0 && issued.on.length > 0 ? issued.on.join(', ') : undefined);
    const day = record.survey?.attendances.map(({ date }) => date?.iso).filter(iso => iso !== undefined).sort().at(-1);
    const text = (property: string, words: string | undefined, lead = '') => words === undefined || words.trim() === '' ? [] : [`    ${property}: ${quoted(lead + words.trim())}`];
    return [
        `finding ${id} ${quoted(issued.title)}${on.length > 0 ? ` on ${on.map(part => part.id).join(', ')}` : ''} {`,
        ...(isName ? [] : text('earlier', issued.id)),
        `    outcome: ${outcome}`,
        ...(outcome === 'open' ? [] : ['    evidence: ""']),
        ...(day === undefined || outcome === 'done-as-stated' ? [] : [`    looked-at: ${day}`]),
        ...urgencyLine(issued),
        ...text('place', place),
        ...text('seen', issued.seen, `Report ${number}: `),
        ...text('because', issued.because),
        ...text('recommend', issued.recommend),
        '}',
    ];
}

/** Its urgency; a number of days is read from the words of its due date, and left to be written where they do not tell it. */
function urgencyLine({ urgency, due = '' }: IssuedFinding): string[] {
    if (urgency === undefined) {
        return [];
    }
    const [word = '', written] = urgency.split(/\s+/);
    const days = word === 'within-days' ? written ?? /(\d+) days?/.exec(due)?.[1] : undefined;
    return [`    urgency: ${word}${days === undefined ? '' : ` ${days}`}`];
}

/** A text in quotes that says just what it said: nothing in it refers to a fact. */
function quoted(text: string): string {
    return `"${text.replace(/[\\"{}]/g, '\\$&').replace(/\s*\n\s*/g, ' ')}"`;
}

