import { describe, expect, it } from 'vitest';
import { saidIn } from '../../../src/record/prose-entries.js';
import { raisedBy } from '../check-text.js';

const noted = (text: string) => `vessel "Marram" {\n    note "${text}"\n}\n`;
const recommended = (text: string, urgency = 'in-upkeep') => `hose H1\nfinding F1 "Chafe" on H1 {\n    urgency: ${urgency}\n    seen: "It rubs."\n    because: "It wears."\n    recommend: "${text}"\n}\n`;
const pointed = (check: string, text: string) => raisedBy(check, text).map(problem => text.slice(problem.at.start, problem.at.end));

describe('words said', () => {
    it.each([
        ['"a {H1.bore} b"', ' a           b '], [String.raw`"the \"like new\" boat"`, ' the              boat '], ['"the “like new” boat"', ' the            boat '],
        ['"the ‘perfect’ one"', ' the           one '], ['"it\'s the owner\'s"', ' it\'s the owner\'s '],
    ])('%s', (raw, said) => {
        expect(saidIn(raw)).toBe(said);
        expect(saidIn(raw)).toHaveLength(raw.length);
    });
});

describe('words-that-warrant', () => {
    it.each([
        ['She is in perfect condition.', ['in perfect condition']], ['The engine runs perfectly.', ['perfectly']], ['The yacht is seaworthy.', ['seaworthy']],
        ['The sails are like new.', ['like new']], ['The hoses are as good as new.', ['as good as new']], ['The engine will last for many years.', ['will last']],
        ['She was completely inspected.', ['completely inspected']], ['All compartments were examined.', ['All compartments were examined']],
        ['We guarantee the hull.', ['We guarantee']], ['The deck is guaranteed tight.', ['is guaranteed']], ['The hull has no problems.', ['no problems']],
        ['Hull and deck are free of defects.', ['free of defects']],
        // What cries no wolf.
        ['She is not seaworthy as she lies.', []], ['Her seams are not in perfect order.', []], ['No problems were found at the valves that could be reached.', []],
        ['The hull was not fully inspected.', []], ['None of the tanks was completely inspected.', []], ['The maker’s guarantee ran out in 2020.', []],
        ['Imperfect bonding shows at the frame.', []], ['A new sail is aboard.', []], ['Without having been thoroughly examined, the mast is left out.', []],
        ['The sale listing says “in perfect condition”.', []], ['All valves were worked.', []], ['The battery should last one night.', []],
        ['No guarantee is given that she is free of hidden defects.', []],
        ['This report is no warranty of seaworthiness.', []],
        ['This is an opinion and no guarantee, express or implied, of seaworthiness.', []],
        ['The owner stated that the engine was in perfect condition.', []],
        ['According to the owner the engine was rebuilt like new in 2019.', []],
        ['The broker’s sheet claims that she will last another 20 years.', []],
        ['The previous surveyor wrote that she was seaworthy.', []],
        ['She is said to be seaworthy.', []],
        ['The flange is perfectly square to the shaft.', []],
        ['Weather was perfect for the trial.', []],
        ['The boat is not, in the surveyor’s view, in perfect order.', []],
        ['A perfect seal cannot be had with a worn face.', []],
        ['The certificate of seaworthiness of 1998 has lapsed.', []],
        ['The hose looks like new rubber at its cut end.', []],
        ['The work needed to make her seaworthy is listed in finding 4.', []],
        ['Whether she is seaworthy depends on the voyage.', []],
        ['All three bilge pumps ran when switched on by hand.', []],
        ['All gear that was tried worked.', []],
        ['The white all-round light lit.', []],
        ['The hull was fully inspected from outside, but for the bands under the slings.', []],
        ['The vessel was found to be seaworthy.', ['seaworthy']],
        ['The vessel may be considered seaworthy.', ['seaworthy']],
        ['Not only is she seaworthy, she is fast.', ['seaworthy']],
        ['She is seaworthy, and the gear was not tried.', ['seaworthy']],
        ['The owner attended. The vessel is sea-worthy.', ['sea-worthy']],
        ['All systems are in good order.', ['All systems are in good order']],
        ['All electrical equipment was found in good working order.', ['All electrical equipment was found in good working order']],
        ['Everything on board works.', ['Everything on board works']],
        ['The engine is trouble-free.', ['trouble-free']],
        ['The vessel is in mint condition.', ['mint condition']],
        ['There were no issues with the engine.', ['no issues']],
        ['The hull was inspected in its entirety.', ['inspected in its entirety']],
        ['The stbd. cap shroud is like new. The port one is worn.', ['like new']],
    ])('%s', (text, expected) => {
        expect(pointed('words-that-warrant', noted(text))).toEqual(expected);
    });
    it('reads notes of components and findings, not the signed statement', () => {
        expect(pointed('words-that-warrant', 'hose H1 {\n    remarks: "Like new."\n}\n')).toEqual(['Like new']);
        expect(pointed('words-that-warrant', 'survey "1" pre-purchase {\n    statement: "Nothing here is guaranteed; the surveyor warrants nothing and I guarantee nothing."\n}\n')).toEqual([]);
        expect(raisedBy('words-that-warrant', recommended('Make it like new.'))[0]?.finding?.id).toBe('F1');
    });
    it('is accepted for one finding alone', () => {
        const accepted = `${recommended('Make it like new.')}accept words-that-warrant on F1 because "A phrase of the contract."\n`;
        expect(raisedBy('words-that-warrant', accepted).map(problem => problem.answeredBy)).toEqual(['accept']);
        const other = `${recommended('Make it like new.')}${noted('The sails are like new.')}accept words-that-warrant on F1 because "A phrase of the contract."\n`;
        expect(raisedBy('words-that-warrant', other).map(problem => problem.answeredBy).filter(id => id === undefined)).toHaveLength(1);
    });
    it('keeps its place on Windows line ends and after other scripts', () => {
        const text = noted('Ålesund ½ °C 😀. The sails are like new.').replaceAll('\n', '\r\n');
        expect(pointed('words-that-warrant', text)).toEqual(['like new']);
    });
    it('finds words inside a text over several lines', () => {
        expect(pointed('words-that-warrant', 'vessel "Marram" {\n    note """\n        First line.\n        She is seaworthy.\n        """\n}\n')).toEqual(['seaworthy']);
    });
});

describe('cause-or-blame-claimed', () => {
    it.each([
        ['The crack was caused by grounding.', ['caused by']], ['Corrosion due to a missing anode.', ['due to']], ['The stain is the result of a leak.', ['is the result of']],
        ['The yard was negligent.', ['negligent']], ['This is illegal.', ['illegal']], ['The fault of the previous owner.', ['fault of the previous owner']],
        ['The crack may have been caused by grounding.', []], ['The crack is consistent with grounding.', []], ['The raft is due to be serviced in May.', []],
        ['The stain is not due to a leak.', []], ['The owner states that the crack was caused by grounding.', []], ['The gap of 3 mm is due to the missing shim.', []],
        ['The broker wrote “caused by grounding”.', []], ['No negligence was seen.', []], ['Payment is due on signature.', []],
        ['The sea trial was canceled due to weather.', []],
        ['Limited access due to fixed joinery.', []],
        ['The mast was not climbed, due to the wind.', []],
        ['The amount due to the yard was paid.', []],
        ['Service due to start in May.', []],
        ['Discharge of untreated sewage is illegal in these waters.', []],
        ['Losses caused by frost are common in this harbor.', []],
        ['Wear due to normal use was seen on the sole.', []],
        ['The claim alleges that the sinking was caused by a failed hose.', []],
        ['It is unlikely that the crack was caused by the lift.', []],
        ['Is the wear caused by misalignment?', []],
        ['There is no evidence that the crack was caused by a grounding.', []],
        ['Nothing in this report alleges negligence or fraud.', []],
        ['Because of its height the loop can siphon.', []],
        ['As a result, the pump runs dry.', []],
        ['The owner alleges that the yard was negligent.', []],
        ['The cracking is attributable to the last lift.', ['attributable to']],
        ['The engine failed because of overheating.', ['because of']],
        ['Stray current has caused the loss of the anode.', ['caused']],
        ['The seller has concealed a repair.', ['seller has concealed']],
        ['The damage must have been caused by a collision.', ['caused by']],
        ['Corrosion due to end grain left open.', ['due to']],
    ])('%s', (text, expected) => {
        expect(pointed('cause-or-blame-claimed', noted(text))).toEqual(expected);
    });
});

describe('act-too-vague', () => {
    it.each([
        ['Repair as needed.', ['as needed']], ['Service the engine as required.', ['as required']], ['Secure the battery properly.', ['properly']], ['Monitor.', ['Monitor']],
        ['Check seacocks.', ['Check']], ['Address the leak.', ['Address']], ['Look into the noise.', ['Look into']], ['Consider the wiring.', ['Consider']],
        ['Renew the hose.', []], ['Check the clamps and renew those that are rusty.', []], ['Monitor the drip weekly.', []], ['Check the gap at the next haul-out.', []],
        ['Tighten as needed to 3 drops/min.', []], ['Watch the crack and crop the plate once it passes 50 mm.', []], ['Check {H1.bore} against the tail.', []],
        ['Have the boiler checked by a gas fitter before it is used.', []], ['Repack the gland. Monitor.', []],
        ['Repair.', ['Repair']],
        ['Repair or replace.', ['Repair or replace']],
        ['Service as req’d.', ['as req’d']],
        ['Corrosion to be addressed by owner.', ['addressed']],
        ['This should be monitored.', ['monitored']],
        ['Monitor the bilge pump.', ['Monitor']],
        ['Check hose clamps.', ['Check']],
        ['Check the lower bearing.', ['Check']],
        ['Have it checked by a mechanic.', ['checked']],
        ['Further investigation is recommended.', ['Further investigation']],
        ['Bring wiring up to code.', ['up to code']],
        ['Take appropriate action.', ['appropriate action']],
        ['Needs attention.', ['Needs attention']],
        ['Make good.', ['Make good']],
        ['Ensure proper operation.', ['proper operation']],
        ['Repair as needed before launching.', ['as needed']],
        ['Recommend further investigation and repair as found necessary.', ['as found necessary']],
        ['Fit a check valve in the discharge.', []],
        ['Fit a battery monitor at the panel.', []],
        ['Mark the owner’s address on the ring buoy.', []],
        ['Regalvanize the chain and check it.', []],
        ['Have a rigger inspect the rig from the masthead down.', []],
        ['Tighten the nuts as needed until it drips two or three a minute.', []],
        ['Grease the stock every season as needed.', []],
        ['Renew any clamp found rusty, as needed.', []],
        ['Remove the tail, measure it, and replace it if necessary.', []],
        ['Bolt the battery box down properly with two straps.', []],
        ['Renew the seal so that the hatch closes properly.', []],
        ['Fit life jackets as required by the owner’s license.', []],
        ['Dye-check the welds of the chainplate.', []],
        ['Recommend replacing both hoses.', []],
    ])('%s', (text, expected) => {
        const survey = recommended(text).replace('hose H1\n', 'hose H1 { bore: 38 mm }\n');
        expect(pointed('act-too-vague', survey)).toEqual(expected);
    });
});

describe('words over a line break, and plain quotes in a text over several lines', () => {
    const overLines = (text: string) => `vessel "Marram" {\n    note """\n        ${text}\n        """\n}\n`;
    it.each([
        ['words-that-warrant', 'The sails are like\n        new.', 1], ['words-that-warrant', 'The listing has it "like new", with\n        new sails.', 0],
        ['cause-or-blame-claimed', 'The crack was caused\n        by grounding.', 1],
    ] as const)('%s: %s', (check, text, count) => {
        expect(raisedBy(check, overLines(text))).toHaveLength(count);
        expect(raisedBy(check, overLines(text).replaceAll('\n', '\r\n'))).toHaveLength(count);
        expect(raisedBy(check, overLines(text)).every(({ message }) => !message.includes('\n'))).toBe(true);
    });
    it('reads items of a list and paragraphs as sentences of their own', () => {
        expect(raisedBy('words-that-warrant', overLines('- No problem was seen\n        - She is seaworthy\n        - The tanks were not opened'))).toHaveLength(1);
    });
    it('takes the verb along when it changes a cause to a likeness', () => {
        const text = noted('The crack was clearly caused by a grounding. The stains are due to a leak.');
        const changed = raisedBy('cause-or-blame-claimed', text).flatMap(({ corrections }) => (corrections ?? []).flatMap(correction => correction.kind === 'replace-text' ? [[text.slice(correction.span.start, correction.span.end), correction.text]] : []));
        expect(changed).toEqual([['was clearly caused by', 'is consistent with'], ['are due to', 'are consistent with']]);
    });
});
