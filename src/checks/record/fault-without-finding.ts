/** A component recorded as faulty that no finding and no acceptance speaks of. */
import { isKind, nameOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck } from '../contract.js';

const id = 'fault-without-finding';

/** Words of condition that ask for no finding of their own. */
const asksNothing: ReadonlySet<string> = new Set(['sound', 'serviceable', 'worn', 'not-proved', 'not-seen']);
/** Conditions of a hose that hose-old judges. */
const judgedOfHoses: ReadonlySet<string> = new Set(['perished', 'cracked', 'soft', 'swollen']);

export const faultWithoutFinding = defineCheck({
    id,
    group: 'record',
    severity: 'error',
    title: 'Fault without a finding',
    why: 'A fault that is recorded and not spoken of reads as if it did not matter.',
    needs: ['component: condition'],
    computes: 'A component whose condition is defective or failed (or a fault of its kind, as chafed), and that stands in no finding and in no acceptance.',
    sources: [{ text: 'every fault is written or accepted', provenance: 'practice' }],
    limits: [
        'A finding that names the component counts, whatever it says of it.',
        'Hoses that are perished, cracked, soft or swollen are left to hose-old.',
    ],
    examples: [{
        name: 'seized pump that no finding names',
        bad: `vessel "Marram" {}
bilge-pump BP1 "Main bilge pump" { condition: failed }
`,
        fixed: `vessel "Marram" {}
bilge-pump BP1 "Main bilge pump" { condition: failed }
finding F1 "Main bilge pump does not run" on BP1 {
    urgency: before-departure
    seen: "The pump did not run on either switch."
    because: "Water in the bilge would not be pumped."
    recommend: "Renew the pump and try it."
}
`,
    }],
    silent: [
        { name: 'worn, which asks for no finding', text: 'bilge-pump BP1 { condition: worn }\n' },
        { name: 'accepted under another check', text: 'hose H1 { condition: chafed  made: 2010 }\nsurvey "1" pre-purchase { attended 2026-10-06 afloat "Yard" }\naccept hose-old on H1 because "It is on the list for the next lift."\n' },
        { name: 'perished hose, which hose-old judges', text: 'hose H1 { condition: perished }\n' },
    ],
    run(record, raise) {
        for (const component of record.components.values()) {
            const condition = wordOf(component, 'condition');
            const fact = component.facts.get('condition');
            if (condition === undefined || !fact || asksNothing.has(condition) || (isKind(record, component, 'hose') && judgedOfHoses.has(condition)) || isSpokenOf(record, component)) {
                continue;
            }
            raise({
                components: [component],
                at: fact.span,
                message: `${nameOf(component)} is recorded as ${condition}, and no finding or acceptance names it. A reader would take it as of no account; write the finding, or say why it is accepted.`,
                draft: {
                    title: `${component.title ?? component.id} is ${condition}`,
                    urgency: 'before-departure',
                    seen: `${nameOf(component)} is {${component.id}.condition}.`,
                    because: 'It does not do its work as it must.',
                    recommend: `Repair or renew ${component.id}, and try it.`,
                },
            });
        }
    },
});

/** Named by a finding or an acceptance, other than as the answer to this check itself. */
function isSpokenOf(record: SurveyRecord, component: Component): boolean {
    return record.findings.some(finding => finding.on.includes(component) && !finding.answers.some(answer => answer.id === id))
        || record.acceptances.some(acceptance => acceptance.on.includes(component) && acceptance.check.id !== id);
}
