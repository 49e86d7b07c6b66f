/** Authority that is claimed and not shown: law without its section, a voluntary standard called law, a rule that does not reach her. */
import { wordOf, type Finding, type Span, type Standard, type SurveyRecord } from '../../record/model.js';
import { proseOfFinding, spanIn, type ProseEntry } from '../../record/prose-entries.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { isDenied, spaced } from '../wording/sentences.js';

/** Words that say a thing is law. */
const law = spaced(/\b(?:(?:required|demanded|prescribed) by (?:federal |state |US |Coast Guard )?(?:law|regulations?|statute)|(?:is|are) (?:legally|by law) required|by law|(?:federal|state|the) (?:law|regulations?) (?:requires?|demands?|asks?|says?)|(?:a )?(?:legal|statutory|federal) requirement|violat(?:es|ion of|ing)|in breach of|contrary to (?:the |federal |state )?(?:law|regulations?)|(?:not|nor) (?:comply|complying|compliant|in compliance|in accordance) with (?:the |current )?(?:federal |state |US |Coast Guard )?(?:law|regulations?))\b/giu);
/** With a voluntary standard cited, these claim more for it than it has. */
const binding = spaced(/\b(?:mandatory|compulsory|obligatory|(?:is|are) required(?=\s*(?:[.,;)"”]|$)| (?:here|below|by the standard|under the standard|on (?:every|each|all)|by (?:ABYC|ISO|NFPA))\b)|required by (?:the )?(?:ABYC|ISO|NFPA))\b/giu);
/** A standard that is called upon in words alone. */
const called = spaced(/\b(?:ABYC|ISO|NFPA|(?:U\.?S\.? )?Coast Guard|USCG|CFR|SOLAS|COLREGS?)\b[^.;]{0,30}?\b(?:requires?|demands?|mandates?|stipulates?|says|calls? for|prohibits?|forbids?)\b|\b(?:not|nor) (?:to|up to|meet|meeting|comply with|complying with|compliant with|in compliance with|in accordance with) (?:the |current |applicable )*(?:ABYC|ISO|NFPA|USCG|CFR)\b/giu);
/** "Good practice per" leaves a rule's reach open. */
const asPractice = /\b(?:good practice|yardstick|practice per|as guidance|by analogy)\b/iu;

interface Cited {
    readonly standard: Standard;
    readonly clause: string | undefined;
    readonly span: Span;
}

export const citedWithoutClause = defineCheck({
    id: 'cited-without-clause',
    group: 'record',
    severity: 'error',
    isOfReport: true,
    title: 'Authority that is not shown',
    why: '"The law says" without the section, or of a voluntary standard, is the first thing the other side takes apart.',
    needs: ['finding: cites, and its words', 'standard: standing, provenance', 'vessel: fuel, model-year or built'],
    computes: 'A law cited without its section, and, as advice, a voluntary standard without its clause; words of law (required by law, violates) in a finding that cites no law, or mandatory and required where what it cites is voluntary; a standard called upon in words alone (ABYC requires), as advice; a rule for builders of gasoline boats (33 CFR 183) cited on a boat it does not reach without the words good practice; and, as a remark, a wording that is recalled and was not compared with the text.',
    sources: [
        { text: 'standards are voluntary unless a rule adopts them', provenance: 'practice' },
        { text: 'subparts I, J and K bind builders of boats with gasoline engines', standard: '33 CFR 183', clause: '183.401, 183.501, 183.601', provenance: 'published' },
    ],
    limits: [
        'A name that holds its section, as 46 CFR 171.119, needs no clause.',
        'Subparts of 33 CFR 183 on flotation and loading reach further; only sections from 183.401 on are judged.',
    ],
    examples: [{
        name: 'law without a section',
        bad: cited('"33 CFR 175"', 'The number aboard is too small.'),
        fixed: cited('"33 CFR 175" "175.320"', 'The number aboard is too small.'),
    }, {
        name: 'a voluntary standard without its clause',
        bad: cited('"ABYC H-27"', 'A gate valve shows nothing.'),
        fixed: cited('"Good practice"', 'A gate valve shows nothing.'),
        correction: 'Cite good practice instead',
    }, {
        name: 'a voluntary standard called law',
        bad: cited('"ABYC H-27" "27.5.1"', 'A seacock is required by law here.'),
        fixed: cited('"ABYC H-27" "27.5.1"', 'A seacock is good practice here.'),
        correction: 'Change to “good practice”',
    }, {
        name: 'a rule for gasoline boats on a diesel boat',
        bad: `vessel "Marram" { fuel: diesel }\n${cited('"33 CFR 183" "183.455"', 'The fuse is too large.')}`,
        fixed: `vessel "Marram" { fuel: diesel }\n${cited('"33 CFR 183" "183.455"', 'The fuse is too large, by good practice.')}`,
    }],
    silent: [
        { name: 'a gasoline boat', text: `vessel "Marram" { fuel: gasoline }\n${cited('"33 CFR 183" "183.455"', 'The fuse is too large.')}` },
        { name: 'law with its section, called so', text: cited('"33 CFR 175" "175.320"', 'Extinguishers are required by law.') },
        { name: 'not law', text: cited('"ABYC H-27" "27.5.1"', 'This is not required by law.') },
        { name: 'practice', text: cited('"Good practice"', 'The hose may slip off.') },
    ],
    run(record, raise) {
        for (const finding of record.findings) {
            const cites = citesOf(finding, record);
            for (const { standard, clause, span: at } of cites) {
                const standing = wordIn(standard, 'standing');
                if ((standing === 'law' || standing === 'voluntary') && clause === undefined && !/\d\.\d/.test(standard.name)) {
                    const isLaw = standing === 'law';
                    raise({
                        components: [], finding, at, ...(isLaw ? {} : { severity: 'warning' as const }),
                        message: `${finding.id} cites ${standard.name}, ${isLaw ? 'which is law, without its section' : 'a voluntary standard, without its clause'}. Nobody can look it up; write the ${isLaw ? 'section' : 'clause'} as a second text, "${standard.name}" "…"${isLaw ? '' : ', or cite good practice'}.`,
                        corrections: isLaw ? [] : [{ kind: 'replace-text', title: 'Cite good practice instead', span: at, text: '"Good practice"' }],
                    });
                } else if (wordIn(standard, 'provenance') === 'memory') {
                    raise({ components: [], finding, at, severity: 'hint', message: `What ${standard.name} says is recalled and was not compared with its text; look it up before the report is issued.` });
                }
            }
            beyondReach(record, finding, cites, raise);
            calledLaw(record, finding, cites, raise);
        }
    },
});

function wordIn(standard: Standard, property: 'standing' | 'provenance'): string | undefined {
    const value = standard.facts.get(property)?.values[0];
    return value?.type === 'word' ? value.word : undefined;
}

function citesOf(finding: Finding, { vocabulary }: SurveyRecord): Cited[] {
    return (finding.facts.get('cites')?.values ?? []).flatMap(value => {
        const standard = value.type === 'citation' ? vocabulary.standards.get(value.standard) : undefined;
        return standard && value.type === 'citation' ? [{ standard, clause: value.clause, span: value.span }] : [];
    });
}

/** Sections from 183.401 on bind builders of boats with gasoline engines, outboards excepted in subpart I. */
function beyondReach(record: SurveyRecord, finding: Finding, cites: readonly Cited[], raise: (problem: Raised) => void): void {
    const fuel = record.vessel ? wordOf(record.vessel, 'fuel') : undefined;
    const rule = cites.find(({ standard, clause }) => standard.name === '33 CFR 183' && Number(/183\.(\d{3})/.exec(clause ?? '')?.[1] ?? 0) >= 401);
    if (!rule || fuel === undefined || fuel === 'gasoline' || proseOfFinding(record, finding).some(entry => asPractice.test(entry.said))) {
        return;
    }
    raise({
        components: [], finding, at: finding.facts.get('cites')?.span ?? finding.idSpan,
        message: `${finding.id} cites 33 CFR ${rule.clause ?? '183'}, which binds builders of boats with gasoline engines; her fuel is ${fuel}. There it is a yardstick: say “good practice per”, not more.`,
    });
}

function calledLaw(record: SurveyRecord, finding: Finding, cites: readonly Cited[], raise: (problem: Raised) => void): void {
    if (cites.some(({ standard }) => wordIn(standard, 'standing') === 'law')) {
        return;
    }
    const isVoluntary = cites.some(({ standard }) => wordIn(standard, 'standing') === 'voluntary');
    for (const entry of proseOfFinding(record, finding)) {
        if (cites.length === 0 && !asPractice.test(entry.said)) {
            namedInWords(entry, finding, raise);
        }
        const claims = [...entry.said.matchAll(law), ...isVoluntary && ['seen', 'because', 'title'].includes(entry.property) ? entry.said.matchAll(binding) : []];
        for (const match of claims) {
            if (/^(?:not|nor)\b/iu.test(match[0]) || !isDenied(entry.said, match.index)) {
                const [text] = match;
                raise({
                    components: [], finding, at: spanIn(entry, match.index, text.length),
                    message: `“${text.replace(/\s+/g, ' ')}” claims law, and ${finding.id} cites ${cites.length === 0 ? 'nothing' : 'only what is voluntary or practice'}. Cite the law with its section, or write good practice.`,
                    corrections: correction(entry, match.index, text),
                });
            }
        }
    }
}

function namedInWords(entry: ProseEntry, finding: Finding, raise: (problem: Raised) => void): void {
    const match = [...entry.said.matchAll(called)].find(({ 0: text, index }) => /^(?:not|nor)\b/iu.test(text) || (!/\bnot\b/iu.test(text) && !isDenied(entry.said, index)));
    if (match) {
        const [text] = match;
        raise({
            components: [], finding, at: spanIn(entry, match.index, text.length), severity: 'warning',
            message: `“${text.replace(/\s+/g, ' ')}” calls upon a standard, and ${finding.id} cites none. Nobody can look it up; write cites: "…" "…" with its clause, or say good practice.`,
        });
    }
}

function correction(entry: ProseEntry, index: number, text: string): Correction[] {
    return entry.isWritten && /^required by law$/iu.test(text)
        ? [{ kind: 'replace-text', title: 'Change to “good practice”', span: spanIn(entry, index, text.length), text: 'good practice' }] : [];
}

function cited(cites: string, because: string): string {
    return `hose H1 { bore: 25 mm }\nfinding F1 "Chafe" on H1 {\n    urgency: in-upkeep\n    seen: "It rubs."\n    because: "${because}"\n    recommend: "Lead it clear."\n    cites: ${cites}\n}\n`;
}
