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
    ])('%s', (text, expected) => {
        const survey = recommended(text).replace('hose H1\n', 'hose H1 { bore: 38 mm }\n');
        expect(pointed('act-too-vague', survey)).toEqual(expected);
    });
});
