/** Keel bolts that nobody has seen for years, and a keel joint that opens or weeps. */
import { isOpenJoint, longestTermYears, openGapM, unseenTermYears } from '../../trade/keel-bolt.js';
import { anyValue, flagOf, materialOf, nameOf, ofKind, siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { surveyedOn } from '../hoses/age.js';
import { defineCheck, type Raised, type Urgency } from '../contract.js';
import { both, lengthBoth } from '../phrasing.js';
import { lies } from '../lies.js';

export const keelBoltsUnknown = defineCheck({
    id: 'keel-bolts-unknown',
    group: 'structure',
    severity: 'error',
    title: 'Keel bolts have not been seen, or their joint opens',
    why: 'Bolts waste where nobody sees them, and a keel that goes takes the boat with it.',
    needs: ['keel-bolt: metal, drawn, and the date she was attended; vessel: built, where drawn is not recorded', 'keel-bolt, keel: joint-gap, weeps'],
    computes: 'Years since drawn (else since she was built) over 10 for iron and steel, over 20 for stainless, bronze and nickel-copper: advice. A gap over 1 mm at the joint, or one that weeps, is a fault.',
    sources: [{ text: '10 and 20 years unseen; a gap of 1 mm', provenance: 'practice' }],
    limits: [
        'Terms differ from one insurer to another.', 'Bolts never recorded as drawn count from the year she was built, as if nobody had seen them since.',
        'A joint that opens is told even where the bolts were drawn within their term: drawn bolts do not close it.', 'Encapsulated keels and those that are part of the hull have no bolts to draw.',
    ],
    examples: [{
        name: 'iron bolts of eighteen years',
        bad: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
vessel "Marram" {}
keel-bolt KB1 "Keel bolts" { metal: mild-steel  drawn: 2008 }
`,
        fixed: `survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }
vessel "Marram" {}
keel-bolt KB1 "Keel bolts" { metal: mild-steel  drawn: 2026 }
`,
        correction: 'Record KB1 as drawn in 2026',
    }, {
        name: 'joint open',
        bad: 'keel K1 "Keel" { build: bolted  joint-gap: 3 mm }\n',
        fixed: 'keel K1 "Keel" { build: bolted  joint-gap: 0.5 mm }\n',
    }],
    silent: [
        { name: 'bronze bolts of the same eighteen years', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nkeel-bolt KB1 { metal: silicon-bronze  drawn: 2008 }\n' },
        { name: 'exactly ten years', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nkeel-bolt KB1 { metal: mild-steel  drawn: 2016 }\n' },
        { name: 'a gap of 1 mm', text: 'keel K1 { build: bolted  joint-gap: 1 mm }\n' },
        { name: 'an encapsulated keel', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore "Yard" }\nvessel "M" { built: 1980 }\nkeel K1 { build: encapsulated }\n' },
    ],
    run(record, raise) {
        const bolts = ofKind(record, 'keel-bolt');
        const keels = ofKind(record, 'keel').filter(keel => !['encapsulated', 'integral'].includes(wordOf(keel, 'build') ?? ''));
        const opened = bolts.length > 0 ? undefined : keels.find(isOpen);
        if (opened) {
            raise(joint(record, opened, opened, undefined));
        }
        for (const bolt of bolts) {
            const problem = judge(record, bolt, isOpen(bolt) ? bolt : keels.find(isOpen));
            if (problem) {
                raise(problem);
            }
        }
    },
});

const isOpen = (part: Component): boolean => isOpenJoint(siOf(part, 'joint-gap'), flagOf(part, 'weeps'));

/** How long nobody has seen the bolts, and since what. */
interface Unseen {
    readonly years: number;
    readonly since: 'drawn' | 'fitted' | 'built';
    readonly termYears: number;
}

function judge(record: SurveyRecord, bolt: Component, open: Component | undefined): Raised | undefined {
    const now = surveyedOn(record)?.year;
    const drawn = siOf(bolt, 'drawn');
    const built = record.vessel ? siOf(record.vessel, 'built') : undefined;
    const fitted = anyValue(bolt, 'fitted')?.figure.year;
    const renewed = fitted !== undefined && fitted > (drawn ?? 0) ? fitted : undefined;
    const from = renewed ?? drawn ?? built;
    const term = unseenTermYears(materialOf(bolt)?.class ?? '');
    const years = now !== undefined && from !== undefined ? now - from : undefined;
    const unseen: Unseen | undefined = years !== undefined && years > (term ?? longestTermYears) ? { years, since: renewed !== undefined ? 'fitted' : drawn === undefined ? 'built' : 'drawn', termYears: term ?? longestTermYears } : undefined;
    if (open) {
        return joint(record, bolt, open, unseen);
    }
    if (unseen) {
        return notSeen(record, bolt, unseen, now ?? 0);
    }
    const lacks = from === undefined ? 'the year they were last drawn or imaged (drawn), or the year she was built' : years === undefined ? 'when she was attended' : term === undefined && years > 10 ? 'their metal' : undefined;
    return lacks ? { components: [bolt], at: bolt.facts.get('drawn')?.span ?? bolt.idSpan, severity: 'hint', message: `${nameOf(bolt)}: record ${lacks} to tell whether they are due to be drawn.` } : undefined;
}

const sinceText = ({ years, since }: Unseen): string => since === 'drawn' ? `were last drawn ${years} years ago` : since === 'fitted' ? `were fitted ${years} years ago and are not recorded as drawn since` : `are not recorded as ever drawn, and she was built ${years} years ago`;

function seenText(bolt: Component, { since }: Unseen): string {
    const metal = materialOf(bolt) ? `, of {${bolt.id}.${bolt.facts.has('metal') ? 'metal' : 'material'}},` : '';
    return `${bolt.title ?? 'Keel bolts'} (${bolt.id})${metal} ${since === 'drawn' ? `were last drawn or imaged in {${bolt.id}.drawn}` : since === 'fitted' ? `were fitted {${bolt.id}.fitted} and are not recorded as drawn or imaged since` : 'are not recorded as ever drawn or imaged; she was built in {vessel.built}'}.`;
}

const howDue = 'Draw two keel bolts, one of them where the bilge stands wet, or have them imaged in place';

function notSeen(record: SurveyRecord, bolt: Component, unseen: Unseen, now: number): Raised {
    return {
        components: [bolt], severity: 'warning', at: (bolt.facts.get('drawn') ?? bolt.facts.get('fitted'))?.span ?? bolt.idSpan,
        message: `${nameOf(bolt)} ${sinceText(unseen)}, over the ${unseen.termYears} years usual for ${materialOf(bolt)?.title.toLowerCase() ?? 'any metal'}. They waste where nobody sees them; draw two or have them imaged.`,
        figures: { unseen: { value: unseen.years, unit: 'year' }, term: { value: unseen.termYears, unit: 'year' } },
        corrections: [{ kind: 'set-fact', title: `Record ${bolt.id} as drawn in ${now}`, component: bolt, property: 'drawn', value: String(now) }],
        draft: {
            title: 'Keel bolts have not been seen for years', urgency: record.survey?.surveyKind === 'pre-purchase' ? 'before-completion' : 'next-haul-out',
            seen: seenText(bolt, unseen), because: 'Keel bolts waste in the joint, where nobody sees them; they hold the keel.',
            recommend: `${howDue}.`, cites: [['Good practice']],
        },
    };
}

function joint(record: SurveyRecord, subject: Component, open: Component, unseen: Unseen | undefined): Raised {
    const gap = anyValue(open, 'joint-gap');
    const isGaping = gap !== undefined && gap.si > openGapM + 1e-9;
    const weeps = flagOf(open, 'weeps') === true;
    const urgency: Urgency = lies(record) === 'afloat' ? 'before-departure' : 'before-launch';
    const what = `${isGaping ? `stands open by ${both(gap)}, over ${lengthBoth(openGapM)}` : ''}${isGaping && weeps ? ', and ' : ''}${weeps ? 'weeps' : ''}`;
    return {
        components: open === subject ? [subject] : [subject, open],
        at: open.facts.get(isGaping ? 'joint-gap' : 'weeps')?.span ?? open.idSpan,
        message: `The keel joint at ${nameOf(open)} ${what}${unseen ? `; its bolts ${sinceText(unseen)}` : ''}. Water reaches the bolts and the keel may move; draw bolts, and bed the keel anew.`,
        figures: { ...(gap ? { gap: { value: Math.round(gap.si * 1e4) / 10, unit: 'mm' } } : {}), ...(unseen ? { unseen: { value: unseen.years, unit: 'year' } } : {}) },
        draft: {
            title: `Keel joint ${isGaping ? 'stands open' : 'weeps'}`, urgency,
            seen: `The joint at ${open.title ?? 'the keel'} (${open.id}) ${isGaping ? `stands open by {${open.id}.joint-gap}` : ''}${isGaping && weeps ? ' and ' : ''}${weeps ? 'weeps' : ''}.${unseen ? ` ${seenText(subject, unseen)}` : ''}`,
            because: 'An open joint is consistent with bolts that have slackened or wasted; what lets water in wastes them further, and they hold the keel.',
            recommend: `${howDue}; renew what is wasted, and bed the keel anew.`, cites: [['Good practice']],
        },
    };
}
