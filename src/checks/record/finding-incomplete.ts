/** A finding that lacks what its readers need: where, what was seen, why it matters, what to do, by when, a photograph. */
import type { Finding } from '../../record/model.js';
import { defineCheck } from '../contract.js';
import { listed } from '../phrasing.js';

interface Part {
    readonly property: 'seen' | 'because' | 'recommend' | 'urgency';
    readonly asks: string;
}

const parts: readonly Part[] = [
    { property: 'seen', asks: 'what was seen or measured' }, { property: 'because', asks: 'why it is wrong and what it can lead to' },
    { property: 'recommend', asks: 'what is to be done' }, { property: 'urgency', asks: 'by when' },
];

function isWritten(finding: Finding, property: string): boolean {
    const value = finding.facts.get(property)?.values[0];
    return value !== undefined && (value.type !== 'text' || value.prose.text.trim() !== '');
}

export const findingIncomplete = defineCheck({
    id: 'finding-incomplete',
    group: 'record',
    severity: 'error',
    isOfReport: true,
    title: 'Finding is incomplete',
    why: 'A finding without what was seen, why it matters, what to do and by when cannot be acted on, nor defended later.',
    needs: ['finding: the components it is on or a place, seen, because, recommend, urgency, a photograph'],
    computes: 'Parts that are not written, naming them; a hint alone where only the photograph is missing.',
    sources: [{ text: 'what each reader of a finding needs', provenance: 'practice' }],
    limits: ['Where an outcome is recorded, what shows it is asked by recommendation-closed-unproved, and not a photograph here.', 'It sees that a part is written, not that it is well written.', 'Whether a fact was changed after the finding was written is not known to it; what a finding quotes in braces follows the fact.'],
    examples: [{
        name: 'nothing but a title',
        bad: 'hose H1 { bore: 25 mm }\nfinding F1 "Hose chafed" on H1\n',
        fixed: 'hose H1 { bore: 25 mm }\nfinding F1 "Hose chafed" on H1 {\n    urgency: in-upkeep\n    seen: "The hose rubs on a stringer."\n    because: "It will wear through."\n    recommend: "Lead it clear and sleeve it."\n    photo "photos/1.jpg"\n}\n',
    }],
    silent: [
        { name: 'a place in words in place of components', text: 'finding F1 "Loose stanchion" {\n    place: "Side deck, port"\n    urgency: in-upkeep\n    seen: "The base moves."\n    because: "It may give way under a load."\n    recommend: "Back it and bed it anew."\n    photo "photos/1.jpg"\n}\n' },
    ],
    run(record, raise) {
        for (const finding of record.findings) {
            const missing = parts.filter(({ property }) => !isWritten(finding, property)).map(part => part.asks);
            if (finding.title.trim() === '') {
                missing.unshift('a title');
            }
            if (finding.on.length === 0 && !isWritten(finding, 'place')) {
                missing.unshift('where it is (on the components concerned, or place)');
            }
            const hasPhoto = finding.photos.length > 0;
            if (missing.length > 0) {
                raise({
                    components: [], finding, at: finding.idSpan,
                    message: `${finding.id} does not say ${listed(missing, 'or')}${hasPhoto ? '' : ', and has no photograph'}. A reader needs it to act, and the surveyor to defend it; write it in.`,
                });
            } else if (!hasPhoto && !finding.facts.has('outcome')) {
                raise({ components: [], finding, at: finding.idSpan, severity: 'hint', message: `${finding.id} has no photograph; name one with photo "…" where there is one.` });
            }
        }
    },
});
