/** Too many findings in the most urgent words: where everything is urgent, nothing is. */
import { isDoneAndSeen } from '../../record/earlier-findings.js';
import { wordOf, yardstick, type Finding, type SurveyRecord } from '../../record/model.js';
import { defineCheck } from '../contract.js';

const urgent: ReadonlySet<string> = new Set(['at-once', 'before-launch', 'before-departure', 'before-use']);
/** With so few findings a share says nothing. */
const fewest = 4;

export const urgencyInflated = defineCheck({
    id: 'urgency-inflated',
    group: 'record',
    severity: 'warning',
    isOfReport: true,
    title: 'Everything is urgent',
    why: 'An owner who reads that everything is urgent cannot tell what would sink her.',
    needs: ['finding: urgency'],
    computes: 'Share of findings in the four most urgent words (at-once, before-launch, before-departure, before-use), against the yardstick urgent-share; and whether all of four or more findings carry one word.',
    sources: [{ text: 'the first four together are commonly under a quarter of all findings', provenance: 'practice' }],
    yardsticks: ['urgent-share'],
    limits: ['Three findings or fewer are not judged.', 'Findings that are done and seen ask for nothing more and are not counted.', 'A boat that truly is in danger has many urgent findings: accept it and say so.'],
    examples: [{
        name: 'two of four',
        bad: four(['at-once', 'before-launch', 'in-upkeep', 'keep-watch']),
        fixed: four(['at-once', 'next-haul-out', 'in-upkeep', 'keep-watch']),
    }, {
        name: 'all alike',
        bad: four(['next-haul-out', 'next-haul-out', 'next-haul-out', 'next-haul-out']),
        fixed: four(['next-haul-out', 'next-haul-out', 'next-haul-out', 'in-upkeep']),
    }],
    silent: [
        { name: 'three, all urgent', text: four(['at-once', 'at-once', 'before-launch']) },
        { name: 'two of four urgent, one of them done and seen', text: four(['next-haul-out', 'in-upkeep', 'keep-watch', 'note-only', 'before-launch']).replace('urgency: next-haul-out', 'urgency: before-launch\n    outcome: done-and-seen\n    evidence: "The valve was worked."') },
        { name: 'one of four', text: four(['at-once', 'next-haul-out', 'in-upkeep', 'keep-watch']) },
        { name: 'the firm’s own share', text: `yardsticks { urgent-share: 50 % }\n${four(['at-once', 'before-launch', 'in-upkeep', 'keep-watch'])}` },
    ],
    run(record, raise) {
        const rated = record.findings.flatMap(finding => {
            const word = wordOf(finding, 'urgency');
            return word === undefined || isDoneAndSeen(finding) ? [] : [{ finding, word }];
        });
        if (rated.length < fewest) {
            return;
        }
        const top = rated.filter(({ word }) => urgent.has(word));
        const limit = yardstick(record, 'urgent-share');
        const share = top.length / rated.length;
        if (share > limit.si + 1e-9) {
            raise({
                components: [], at: urgencySpan(top[0]?.finding, record),
                message: `${top.length} of ${rated.length} findings (${Math.round(share * 100)} %) are in the four most urgent words, over ${limit.whose} of ${limit.written}: ${top.map(({ finding, word }) => `${finding.id} ${word}`).join(', ')}. Where so much is urgent nothing is; rank them again, or accept it and say why.`,
                figures: { 'urgent findings': { value: top.length, unit: '' }, findings: { value: rated.length, unit: '' }, limit: { value: limit.si * 100, unit: '%' } },
                related: top.map(({ finding, word }) => ({ message: `${finding.id} is ${word}`, span: urgencySpan(finding, record) })),
            });
        } else if (new Set(rated.map(({ word }) => word)).size === 1) {
            raise({
                components: [], at: urgencySpan(rated[0]?.finding, record),
                message: `All ${rated.length} findings are ${rated[0]?.word}. A reader cannot tell what comes first; rank them by what makes each due.`,
                figures: { findings: { value: rated.length, unit: '' } },
            });
        }
    },
});

function urgencySpan(finding: Finding | undefined, record: SurveyRecord) {
    return finding?.facts.get('urgency')?.span ?? { uri: record.mainUri, start: 0, end: 1 };
}

/** A text with so many findings of the urgencies given. */
function four(words: readonly string[]): string {
    return `hose H1 { bore: 25 mm }\n${words.map((word, i) => `finding F${i + 1} "Chafe ${i + 1}" on H1 {\n    urgency: ${word}\n    seen: "It rubs."\n    because: "It wears through."\n    recommend: "Lead it clear."\n}\n`).join('')}`;
}
