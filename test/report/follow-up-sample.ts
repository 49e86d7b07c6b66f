/** A re-inspection with a recommendation in every state, the report it follows, and ways to draw its papers. */
import { analyseTexts } from '../../src/checks/survey.js';
import { issuedFinding, issuedReport } from '../../src/checks/record/earlier-reports.js';
import type { OutsideFacts } from '../../src/record/model.js';
import { renderDocument, type DocumentKind } from '../../src/report/documents.js';
import { inputOf } from './sample.js';

const uri = 'memory:/again.survey';

/** Numbers out of order, so that an order is seen to be made. */
export const earlierReport = issuedReport([
    issuedFinding('F10', 'Chain worn', { recommend: 'Renew the chain.', due: 'Next haul out' }),
    issuedFinding('F1', 'Gas hose cracked', { on: ['Gas hose (GH1)'], recommend: 'Renew the gas hose.', urgency: 'before-use', due: 'Before use' }),
    issuedFinding('F2', 'Sink hose large', { recommend: 'Fit a tail of its size.', urgency: 'before-launch', due: 'Before launch' }),
    issuedFinding('F3', 'Loop missing', { recommend: 'Fit a loop.' }),
    issuedFinding('F4', 'Lamp out', { recommend: 'Renew the lamp.' }),
    issuedFinding('F5', 'Tank not tested', { recommend: 'Test the tank.' }),
    issuedFinding('F6', 'Bolts wasted', { recommend: 'Renew the bolts.', urgency: 'before-launch', due: 'Before launch' }),
    issuedFinding('F7', 'Gland drips', { outcome: 'done-and-seen' }),
    issuedFinding('F8', 'Paint dull', { urgency: 'note-only', due: 'Note only' }),
]);

export const followUpText = `
firm "Alder and Rowe, Surveyors" { address: "2 Quay Lane"  telephone: "555 0100" }
person A-Rowe "Ada Rowe" { role: "Surveyor"  credentials: "Surveying since 2001" }
survey "AR-90" re-inspection {
    client: "B. Lindqvist"
    surveyor: A-Rowe
    issued: 2027-05-06
    follows: "TC-2026-041"
    underwriter: "Quay Mutual"
    policy: "Q 7"
    told-on: 2027-05-04
    told-to: "B. Lindqvist"
    told-how: "By word at 1510"
    attended 2027-05-04 ashore "North yard"
}
vessel "Marram" { type: sailing-yacht  hull-number: "XQZ12045K989"  length-overall: 31 ft }
system gas "Cooking gas" {
    gas-hose GH1 "Gas hose" { side: port  place: "Locker"  bore: 8 mm  length: 0.7 m  quantity: 2  material: rubber  class: gas  serial: "77" }
    finding F1 "Gas hose cracked" on GH1 {
        outcome: open  looked-at: 2027-05-04  urgency: before-use
        seen: "The cracks are there still."  because: "Gas leaks."  recommend: "Renew the gas hose."  cost: 70 USD..140 USD
    }
    finding F11 "Rag in the drain" {
        urgency: at-once  place: "Gas locker"
        seen: "A rag stops it."  because: "Gas cannot drain."  recommend: "Take it out."
    }
}
system skin "Openings" {
    finding F2 "Sink hose large" {
        outcome: done-and-seen  evidence: "New tail measured."  looked-at: 2027-05-04  urgency: before-launch  place: "Galley"
        seen: "It fits."  because: "It came off."  recommend: "Look at it yearly."  photo "photos/tail.jpg" "The tail"
    }
    finding F3 "Loop missing" {
        outcome: done-as-stated  evidence: "The owner states it."  urgency: in-upkeep  place: "Galley"
        seen: "Behind a panel."  because: "It siphons."  recommend: "Show it."
    }
    finding F4 "Lamp out" { outcome: in-part  evidence: "The bulb is new."  looked-at: 2027-05-04  urgency: in-upkeep  place: "Masthead"  seen: "It burns."  because: "It is dim."  recommend: "Clean the glass." }
    finding F5 "Tank not tested" { outcome: declined  urgency: within-days 30  place: "Bilge"  seen: "As it was."  because: "It may leak."  recommend: "Test the tank." }
    finding F10 "Chain worn" { outcome: open  urgency: keep-watch  place: "Locker"  seen: "As it was."  because: "It wears."  recommend: "Measure it again."  }
}
`;

export function analysed(text = followUpText, outside: OutsideFacts = { followed: earlierReport }) {
    return analyseTexts(new Map([[uri, text]]), uri, outside);
}

/** A paper of the survey; without its open problems unless they are asked for. */
export function paper(kind: DocumentKind, { text = followUpText, outside = { followed: earlierReport } as OutsideFacts, isDraft = false, mode = 'file' as 'file' | 'preview' } = {}): string {
    const input = inputOf(analysed(text, outside), { mode });
    return renderDocument(kind, isDraft ? input : { ...input, gaps: [], problems: input.problems.filter(p => p.answeredBy !== undefined) });
}
