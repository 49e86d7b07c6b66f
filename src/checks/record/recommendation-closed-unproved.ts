/** A recommendation called done and seen, with nothing that shows it. */
import { wordOf, type Finding } from '../../record/model.js';
import { defineCheck } from '../contract.js';
import { isReported } from '../wording/sentences.js';

export const recommendationClosedUnproved = defineCheck({
    id: 'recommendation-closed-unproved',
    group: 'record',
    severity: 'error',
    isOfReport: true,
    title: 'Recommendation closed without proof',
    why: 'A letter that says a matter was put right, when nobody saw it, can cost the owner his cover.',
    needs: ['finding: outcome, evidence, photographs'],
    computes: 'A finding whose outcome is done-and-seen and that names no evidence and no photograph, or whose evidence is only what somebody said.',
    sources: [{ text: 'a false letter of compliance', provenance: 'published' }],
    limits: ['Of the evidence it sees only whether it is more than another’s word (the owner states …); what it says is not weighed.', 'A photograph of the finding counts, whatever it shows.'],
    examples: [{
        name: 'done, and nothing to show it',
        bad: closed('outcome: done-and-seen'),
        fixed: closed('outcome: done-as-stated'),
        correction: 'Change to done as stated',
    }],
    silent: [
        { name: 'an invoice and a trial', text: closed('outcome: done-and-seen\n    evidence: "Invoice 117 of the yard; the valve was worked three times."') },
        { name: 'a photograph', text: closed('outcome: done-and-seen\n    photo "photos/1.jpg"') },
        { name: 'open', text: closed('outcome: open') },
        { name: 'no outcome recorded', text: closed('place: "Port side"') },
    ],
    run(record, raise) {
        for (const finding of record.findings) {
            const outcome = wordOf(finding, 'outcome');
            const at = finding.facts.get('outcome')?.span;
            const told = hearsayOf(finding);
            if (at && outcome === 'done-and-seen' && told !== undefined) {
                raise({
                    components: [], finding, at,
                    message: `${finding.id} is done-and-seen, and its evidence is what somebody said: “${told}”. An underwriter would rely on it; say what was seen or tried, or change it to done-as-stated.`,
                    corrections: [{ kind: 'set-finding-fact', title: 'Change to done as stated', finding, property: 'outcome', value: 'done-as-stated' }],
                });
            } else if (at && outcome === 'done-and-seen' && !hasEvidence(finding)) {
                raise({
                    components: [], finding, at,
                    message: `${finding.id} is done-and-seen, and neither evidence nor a photograph shows it. An underwriter would rely on it; say what was seen or tried, name the picture, or change it to done-as-stated.`,
                    corrections: [{ kind: 'set-finding-fact', title: 'Change to done as stated', finding, property: 'outcome', value: 'done-as-stated' }],
                });
            }
        }
    },
});

/** Evidence that is only another's word: neither a paper, nor a picture, nor anything seen or tried. */
function hearsayOf(finding: Finding): string | undefined {
    const evidence = finding.facts.get('evidence')?.values[0];
    const text = evidence?.type === 'text' ? evidence.prose.text.trim() : '';
    const isTold = isReported(text, text.length) || /\b(?:as stated|stated|by word|by telephone|verbal(?:ly)?|told|says|said)\b/iu.test(text);
    return isTold && !/\b(?:invoice|receipt|bill|photo\p{L}*|picture|test\p{L}*|tried|seen|sighted|sight|worked|operated|measured|inspected|certificate|report|ran|run)\b/iu.test(text) ? text : undefined;
}

function hasEvidence(finding: Finding): boolean {
    const evidence = finding.facts.get('evidence')?.values[0];
    return finding.photos.length > 0 || (evidence?.type === 'text' && evidence.prose.text.trim() !== '');
}

function closed(facts: string): string {
    return `valve SV1\nfinding F1 "Valve does not shut" on SV1 {\n    urgency: next-haul-out\n    seen: "Its lever is stiff."\n    because: "It may not shut when it must."\n    recommend: "Renew the valve."\n    ${facts}\n}\n`;
}
