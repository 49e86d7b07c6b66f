/** Cover, open problems, summary and contents. */
import { nameOf, type Component } from '../../record/model.js';
import { gauge, definitions, picture, altOf, table, urgencyTitle, type ReportContext, type Section } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { proseInline } from '../prose.js';
import { capital, computedText, counted, dateText, inSentence, isWord, moneyText, wordText } from '../wording.js';

export const vesselName = (context: ReportContext): string => context.record.vessel?.name || 'Vessel without a name';
export const reportNumber = (context: ReportContext): string => context.record.survey?.number || 'without number';

export function surveyKind(context: ReportContext): string {
    const kind = context.record.survey?.surveyKind;
    return kind === undefined ? 'Survey' : kind === 'pre-purchase' ? 'Pre-purchase survey' : `${capital(wordText(kind))}${/survey|inspection|appraisal/.test(kind) ? '' : ' survey'}`;
}

export function cover(context: ReportContext): Html {
    const { record } = context;
    const { survey, vessel } = record;
    const days = (survey?.attendances ?? []).flatMap(({ date }) => date ? dateText(date) : []);
    const photo = vessel?.photos[0] ? context.photo(vessel.photos[0]) : undefined;
    const maker = [context.text(vessel, 'built'), context.text(vessel, 'model') ?? context.text(vessel, 'builder')].filter(Boolean).join(', ');
    return html`<header class="cover"${survey ? context.source(survey.span) : nothing}>
<p class="kind">${surveyKind(context)}</p>
<h1${vessel ? context.source(vessel.span) : nothing}>${vesselName(context)}</h1>
${maker === '' ? nothing : html`<p class="lead">${maker}</p>`}
${photo && !('error' in photo.image) ? html`<figure class="cover-photo">${picture(photo, context.isPreview ? photo.image : photo.image, altOf(context, photo))}</figure>` : nothing}
${definitions([
        ['Report', html`${reportNumber(context)}${context.issueNumber === undefined ? nothing : `, issue ${context.issueNumber}`}`],
        ['Issued', context.issued ? dateText(context.issued) : 'Not issued'],
        ['Surveyed', days.length === 0 ? undefined : days.join(', ')],
        ['Client', context.text(survey, 'client')],
        ['Surveyor', context.text(survey, 'surveyor')],
        ['Firm', record.vocabulary.firm?.name],
    ], 'facts cover-facts')}
${context.isDraft ? html`<p class="draft-note"><strong>DRAFT.</strong> ${counted(context.openErrors, 'problem is', 'problems are')} open. Not to be relied on until each is answered. <a href="#open">See the list</a>.</p>` : nothing}
</header>`;
}

/** Every problem without an answer, and what the text does not say properly: none is left out. */
export function openProblems(context: ReportContext): Section | undefined {
    const { openProblems: problems, gaps, missingPhotos } = context;
    if (problems.length === 0 && gaps.length === 0 && missingPhotos.length === 0) {
        return undefined;
    }
    const all = [
        ...problems.map(p => ({ severity: p.severity, span: p.at, message: p.message, on: p.components, code: p.check.title })),
        ...gaps.map(g => ({ severity: g.severity, span: g.span, message: g.message, on: [] as readonly Component[], code: 'The text' })),
        ...missingPhotos.map(photo => ({ severity: 'error' as const, span: photo.span, message: 'error' in photo.image ? `Photo ${photo.number} is not shown. ${photo.image.error}.` : '', on: [] as readonly Component[], code: 'The photographs' })),
    ];
    const list = (title: string, lead: string, entries: typeof all) => entries.length === 0 ? nothing : html`
<h3>${title}</h3>
<p>${lead}</p>
${table(counted(entries.length, 'entry', 'entries'), [{ title: 'Where' }, { title: 'What' }, { title: 'On' }], entries.map(({ span, message, on }) => {
        const { file, line } = context.lineOf(span);
        return { attributes: context.source(span), cells: [html`<span class="where">${file}, line ${line}</span>`, computedText(message), joined(on.map(c => context.linkToComponent(c)), ', ')] };
    }), 'open-list')}`;
    return {
        id: 'open', title: context.isDraft ? 'Open problems: this is a draft' : 'Matters left open',
        body: html`${list('To be answered before issue', 'Each of these is to be answered by a finding, a corrected fact or a reason, before the report can be issued.', all.filter(e => e.severity === 'error'))}
${list('Without an answer', 'A reader could object to these; neither a finding nor a reason is given for them yet.', all.filter(e => e.severity === 'warning' || e.severity === 'info'))}
${list('Facts not recorded', 'With these facts more could be said; without them nothing is concluded.', all.filter(e => e.severity === 'hint'))}`,
    };
}

/** Sum of the costs allowed, where all are in one currency. */
export function costTotal(context: ReportContext): { readonly low: number; readonly high: number; readonly currency: string; readonly count: number } | undefined {
    const costs = context.findings.flatMap(finding => {
        const cost = context.first(finding, 'cost');
        return cost?.type === 'quantity' ? [cost] : [];
    });
    const currencies = new Set(costs.map(cost => cost.figure.currency ?? ''));
    const [currency] = currencies;
    return costs.length === 0 || currencies.size > 1 || currency === undefined ? undefined : {
        low: costs.reduce((sum, cost) => sum + (cost.low ?? cost.si), 0), high: costs.reduce((sum, cost) => sum + (cost.high ?? cost.si), 0), currency, count: costs.length,
    };
}

export function costText({ low, high, currency }: NonNullable<ReturnType<typeof costTotal>>): string {
    return low === high ? moneyText(low, currency) : `${moneyText(low)} to ${moneyText(high, currency)}`;
}

/** Components seen but not proved, or not seen at all. */
export function unproved(context: ReportContext): Component[] {
    return [...context.record.components.values()].filter(component => {
        const condition = context.conditionOf(component);
        return condition === 'not-proved' || condition === 'not-seen';
    });
}

export function summary(context: ReportContext): Section {
    const { record, groups, findings } = context;
    const cost = costTotal(context);
    const notSeen = record.unseen.filter(unseen => !unseen.absent);
    const doubtful = unproved(context);
    const attended = (record.survey?.attendances ?? []).map(({ state, date }) => `${state ?? 'attended'}${date ? ` on ${dateText(date)}` : ''}`);
    const biggest = findings.slice(0, 5);
    return {
        id: 'summary', title: 'Summary', body: html`
<p class="lead">${findings.length === 0 ? 'No finding is made.' : `${capital(counted(findings.length, 'finding is', 'findings are'))} made, each with what was seen, why it matters, what to do and by when.`}${attended.length > 0 ? ` She was surveyed ${listed(attended)}.` : ''}${context.isDraft ? html` <strong>${capital(counted(context.openErrors, 'problem is', 'problems are'))} open</strong> and <a href="#open">listed first</a>; the count of findings is not final.` : nothing}</p>
<div class="summary-grid">
${groups.length === 0 ? nothing : table('Findings by due event', [{ title: 'Due' }, { title: 'Findings', isNumber: true }, { title: 'Which' }], groups.map(group => ({
        cells: [html`<span class="due">${gauge(group)} ${urgencyTitle(group)}</span>`, String(group.findings.length), joined(group.findings.map(f => context.linkTo(f)), ', ')],
    })), 'counts')}
${biggest.length === 0 ? nothing : html`<div><h3>First to be dealt with</h3>
<ol class="first">${biggest.map(finding => html`<li>${context.linkTo(finding)} ${finding.title} <span class="muted">${context.dueOf(finding)}</span></li>
`)}</ol></div>`}
</div>
${definitions([
        ...record.valuations.flatMap(valuation => {
            const opinion = context.first(valuation, 'opinion');
            const effective = context.first(valuation, 'effective');
            return opinion?.type === 'quantity' ? [[valuation.title ?? 'Value', html`<strong>${moneyText(opinion.si, opinion.figure.currency)}</strong>${effective?.type === 'date' ? `, on ${dateText(effective.figure)}` : ''} (<a href="#valuation">how it was reached</a>)`] as const] : [];
        }),
        ['Costs allowed', cost ? html`${costText(cost)} in total for ${counted(cost.count, 'finding')} that state${cost.count === 1 ? 's' : ''} a cost; the others state none` : undefined],
        ['Not inspected', notSeen.length === 0 && doubtful.length === 0 ? undefined : html`${joined([
            ...notSeen.map(unseen => html`${inSentence(unseen.what)}`), ...doubtful.map(component => html`${inSentence(nameOf(component))} (${wordText(context.conditionOf(component) ?? '')})`),
        ], '; ')}. <a href="#limits">Reasons and limits</a>`],
        ['Accepted', record.acceptances.length === 0 ? undefined : html`${counted(record.acceptances.length, 'matter')} that the surveyor lets stand, <a href="#accepted">each with the reason</a>`],
    ])}
<p class="small">The limits of this report are part of it and are set out in <a href="#limits">Limits</a>. Follow the rules that hold where she is kept, and have work done by people qualified for it.</p>`,
    };
}

function listed(texts: readonly string[]): string {
    return texts.length < 2 ? texts.join('') : `${texts.slice(0, -1).join(', ')} and ${texts.at(-1) ?? ''}`;
}

export function contents(sections: readonly Section[]): Html {
    return html`<nav class="contents" aria-labelledby="contents-title">
<h2 id="contents-title">Contents</h2>
<ol>${sections.map((section, index) => html`<li><a href="#${section.id}"><span class="n">${index + 1}</span> ${section.title}</a></li>
`)}</ol>
</nav>`;
}

/** Purpose, persons, dates, instruments. */
export function scope(context: ReportContext): Section | undefined {
    const { survey, vocabulary } = context.record;
    if (!survey) {
        return undefined;
    }
    const date = (property: string) => {
        const value = context.first(survey, property);
        return value?.type === 'date' ? dateText(value.figure) : undefined;
    };
    const state = context.first(survey, 'state');
    const counts = [['openings-outside', 'outside'], ['openings-inside', 'inside'], ['openings-blanked', 'blanked']] as const;
    const openings = counts.flatMap(([property, word]) => {
        const count = context.text(survey, property);
        return count === undefined ? [] : [`${count} ${word}`];
    });
    return {
        id: 'scope', title: 'Scope and attendances', body: html`
${definitions([
        ['Purpose', context.body(survey, 'purpose')],
        ['Kind of survey', html`${surveyKind(context)}${kindMeaning(context)}`],
        ['Client', context.text(survey, 'client')],
        ['For the use of', context.text(survey, 'requested-for')],
        ['Engaged', date('engaged')],
        ['Follows', context.body(survey, 'follows')],
        ['Covers', context.body(survey, 'scope') ?? context.body(vocabulary.firm, 'scope')],
        ['Intended use', context.body(survey, 'intended-use')],
        ['Present', context.body(survey, 'present')],
        ['Weather', context.body(survey, 'weather')],
        ['Trial', context.body(survey, 'trial')],
        ['Instruments', context.body(survey, 'tools')],
        ['Lay for the survey', isWord(state) ? capital(state.word) : undefined],
        ['Openings counted', openings.length === 0 ? undefined : openings.join(', ')],
        ['Fee', context.body(survey, 'fee-basis')],
    ])}
${survey.attendances.length === 0 ? nothing : table('Attendances', [{ title: 'Date' }, { title: 'She lay' }, { title: 'Where, and hours' }], survey.attendances.map(attendance => ({
        attributes: context.source(attendance.span),
        cells: [attendance.date ? dateText(attendance.date) : 'No date', attendance.state ? capital(attendance.state) : 'Not said', attendance.place ?? ''],
    })))}
${survey.photos.length === 0 ? nothing : html`<p>${context.photoLinks(survey.photos)}</p>`}`,
    };
}

function kindMeaning(context: ReportContext): Html {
    const { survey, vocabulary } = context.record;
    const meaning = survey?.surveyKind === undefined ? undefined : vocabulary.wordLists.get('survey-kind')?.words.get(survey.surveyKind);
    return meaning ? html`. ${meaning}` : nothing;
}

/** A caption within a line. */
export const captionOf = (context: ReportContext, photo: { readonly caption?: Parameters<typeof proseInline>[1] }): Html => photo.caption ? proseInline(context, photo.caption) : nothing;
