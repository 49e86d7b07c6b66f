/** Cover, open problems, summary and contents. */
import { isDoneAndSeen } from '../../record/earlier-findings.js';
import { nameOf, type Attendance, type Component, type DateFigure } from '../../record/model.js';
import { gauge, definitions, picture, altOf, table, urgencyTitle, type ReportContext, type Section } from '../context.js';
import { followUpOf } from '../follow-up.js';
import { html, isMarkData, joined, nothing, type Html } from '../html.js';
import { proseInline } from '../prose.js';
import { noticeOf } from '../standing-words.js';
import { toldLine } from '../told.js';
import { undoneOf } from '../undone.js';
import { occurrenceCost } from './damage.js';
import { followedUp } from './earlier.js';
import { listed } from '../../checks/phrasing.js';
import { capital, computedText, counted, dateText, figureText, inSentence, isWord, moneyText, wordText } from '../wording.js';

export const vesselName = (context: ReportContext): string => context.record.vessel?.name || 'Vessel without a name';
export const reportNumber = (context: ReportContext): string => context.record.survey?.number || 'without number';

export function surveyKind(context: ReportContext): string {
    const kind = context.record.survey?.surveyKind;
    return kind === undefined ? 'Survey' : kind === 'pre-purchase' ? 'Pre-purchase survey' : `${capital(wordText(kind))}${/survey|inspection|appraisal/.test(kind) ? '' : ' survey'}`;
}

export function cover(context: ReportContext): Html {
    const { record } = context;
    const { survey, vessel } = record;
    const days = daysText((survey?.attendances ?? []).flatMap(({ date }) => date ?? []));
    const maker = [context.text(vessel, 'built'), context.text(vessel, 'model') ?? context.text(vessel, 'builder')].filter(Boolean).join(', ');
    const photo = coverPhoto(context);
    return html`<header class="cover${String(photo) === '' ? ' bare' : ''}"${survey ? context.source(survey.span) : nothing}>
${firmHead(context)}
<div class="title-block">
<p class="kind">${surveyKind(context)}</p>
<h1${vessel ? context.source(vessel.span) : nothing}>${vesselName(context)}</h1>
${maker === '' ? nothing : html`<p class="lead">${maker}</p>`}
</div>
${photo}
${definitions([
        ['Report', html`${reportNumber(context)}${context.issueNumber === undefined ? nothing : `, issue ${context.issueNumber}`}`],
        ['Issued', context.issued ? dateText(context.issued) : 'Not issued'],
        ['Surveyed', days],
        ['Client', context.text(survey, 'client')],
        ['Surveyor', context.text(survey, 'surveyor')],
        ['Firm', record.vocabulary.firm?.name],
    ], 'cover-facts')}
${context.isDraft ? html`<p class="draft-note"><strong>DRAFT.</strong> ${counted(context.openErrors, 'problem is', 'problems are')} open. Not to be relied on until each is answered. <a href="#open">See the list</a>.</p>` : nothing}
</header>`;
}

/** Days in one line, month and year once where several share them: "5, 6 and 8 October 2026". */
function daysText(dates: readonly DateFigure[]): string | undefined {
    const texts = dates.map((date, index) => {
        const next = dates[index + 1];
        const isShared = date.day !== undefined && next?.day !== undefined && next.year === date.year && next.month === date.month;
        return isShared ? String(date.day) : dateText(date);
    });
    return texts.length === 0 ? undefined : listed(texts);
}

/** The firm's mark and name, at the head of its papers; nothing where no firm is named. */
export function firmHead(context: ReportContext): Html {
    const { firm } = context.record.vocabulary;
    const mark = context.firmMark;
    return firm === undefined ? nothing : html`<div class="firm-head">${mark && !('error' in mark) && isMarkData(mark.dataUri) ? html`<img src="${mark.dataUri}" width="${mark.width}" height="${mark.height}" alt="">` : nothing}
<p>${firm.name}${firm.facts.has('motto') ? html` <span class="motto">${context.values(firm, 'motto')}</span>` : nothing}</p></div>`;
}

function coverPhoto(context: ReportContext): Html {
    const named = context.record.vessel?.photos[0];
    const photo = named ? context.photo(named) : undefined;
    if (!photo || 'error' in photo.image) {
        return nothing;
    }
    // A tall picture is shown whole; a wide one fills the width.
    const isTall = photo.image.width < photo.image.height * 1.15;
    return html`<figure class="cover-photo${isTall ? ' tall' : ''}">${picture(photo, photo.image, altOf(context, photo))}</figure>`;
}

/** Every problem without an answer, and what the text does not say properly: none is left out. */
export function openProblems(context: ReportContext): Section | undefined {
    const { gaps, missingPhotos, firmFaults } = context;
    // That a finding has no photograph is for the surveyor while he writes; of a finished report the reader sees it himself.
    const problems = context.isDraft ? context.openProblems : context.openProblems.filter(({ severity, check }) => severity !== 'hint' || check.isOfReport !== true);
    if (problems.length + gaps.length + missingPhotos.length + firmFaults.length === 0) {
        return undefined;
    }
    const all = [
        ...problems.map(p => ({ severity: p.severity, span: p.at, message: p.message, on: p.components, code: p.check.title })),
        ...gaps.map(g => ({ severity: g.severity, span: g.span, message: g.message, on: [] as readonly Component[], code: 'The text' })),
        ...missingPhotos.map(photo => ({ severity: 'error' as const, span: photo.span, message: 'error' in photo.image ? `Photo ${photo.number} is not shown. ${photo.image.error}.` : '', on: [] as readonly Component[], code: 'The photographs' })),
        ...firmFaults.map(fault => ({ ...fault, on: [] as readonly Component[], code: 'The house file' })),
    ];
    const list = (title: string, lead: string, entries: typeof all) => entries.length === 0 ? nothing : html`
<h3>${title}</h3>
<p>${lead}</p>
${table(title, context.isDraft ? [{ title: 'Where' }, { title: 'What' }, { title: 'On' }] : [{ title: 'On' }, { title: 'What' }], entries.map(({ span, message, on }) => {
        const { file, line } = context.lineOf(span);
        const parts = joined(on.map(c => context.linkToComponent(c)), ', ');
        // Where it is written helps whoever still writes.
        return { attributes: context.source(span), cells: context.isDraft ? [html`<span class="where">${file}, line ${line}</span>`, computedText(message), parts] : [on.length === 0 ? 'The survey' : parts, computedText(message)] };
    }), context.isDraft ? 'open-list' : '')}`;
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
    const notSeen = record.unseen.filter(unseen => !unseen.absent);
    const doubtful = unproved(context);
    const undone = undoneOf(context).map(({ short }) => short);
    const attended = attendancesText(record.survey?.attendances ?? []);
    const ahead = findings.filter(finding => !isDoneAndSeen(finding));
    const biggest = ahead.slice(0, 5);
    return {
        id: 'summary', title: 'Summary', body: html`
<p class="lead">${findingsInWords(findings.length, ahead.length)}${attended === '' ? '' : ` She was surveyed ${attended}.`}${context.isDraft ? html` <strong>${capital(counted(context.openErrors, 'problem is', 'problems are'))} open</strong> and <a href="#open">listed first</a>; the count of findings is not final.` : nothing}</p>
${noticeOf(context)}
${keyFigures(context)}
<div class="summary-grid">
${groups.length === 0 ? nothing : table('Findings by due event', [{ title: 'Due' }, { title: 'Findings', isNumber: true }, { title: 'Which' }], groups.map(group => ({
        cells: [html`<span class="due">${gauge(group)} ${urgencyTitle(group)}</span>`, String(group.findings.length), joined(group.findings.map(f => context.linkTo(f)), ', ')],
    })), 'counts')}
${biggest.length === 0 ? nothing : html`<div><h3>First to be dealt with</h3>
<ol class="first">${biggest.map(finding => html`<li>${context.linkTo(finding)} ${finding.title} <span class="muted">${context.dueOf(finding)}</span></li>
`)}</ol></div>`}
</div>
${definitions([
        ['Followed up', followedUp(context)],
        ['Not inspected', notSeen.length === 0 && doubtful.length === 0 ? undefined : html`${joined([
            ...notSeen.map(unseen => inSentence(unseen.what)), ...doubtful.map(component => `${inSentence(component.title ?? nameOf(component))} (${component.title === undefined ? '' : `${component.id}, `}${wordText(context.conditionOf(component) ?? '')})`),
        ].map((text, index) => index === 0 ? capital(text) : text), '; ')}. <a href="#limits">Reasons and limits</a>`],
        ['Not done', undone.length === 0 ? undefined : html`${undone.join(', ')}. <a href="#limits">What follows from it</a>`],
        ...record.valuations.map(valuation => ['Of the value', context.body(valuation, 'summary')] as const),
        ['Accepted', record.acceptances.length === 0 ? undefined : html`${counted(record.acceptances.length, 'matter')} that the surveyor lets stand, <a href="#accepted">each with the reason</a>`],
    ])}
<p class="small">The limits of this report are part of it and are set out in <a href="#limits">Limits</a>. Follow the rules that hold where she is kept, and have work done by people qualified for it.</p>`,
    };
}

/** What a reader asks first, large: how much is wrong, how soon, at what cost, and what she is worth. */
function keyFigures(context: ReportContext): Html {
    const { groups, findings, record } = context;
    const [first] = groups;
    const ahead = findings.filter(finding => !isDoneAndSeen(finding)).length;
    const done = findings.length - ahead;
    const cost = costTotal(context);
    const occurrence = occurrenceCost(context);
    const figure = (label: Html | string, value: Html | string, note: Html | string) => html`<div><dt>${label}</dt><dd class="figure">${value}</dd><dd class="note">${note}</dd></div>
`;
    return findings.length + record.valuations.length === 0 ? nothing : html`<dl class="key">
${first === undefined ? nothing : figure(done === 0 ? 'Findings' : 'Still to be dealt with', String(ahead), ahead === 0 ? 'all are done and seen' : `${first.findings.length} of them: ${inSentence(urgencyTitle(first))}`)}
${done === 0 ? nothing : figure('Done and seen', String(done), html`by the surveyor, <a href="#${followUpOf(context).recommendations.length > 0 ? 'earlier' : 'findings'}">each with what shows it</a>`)}
${occurrence ? figure('Costs of the occurrence', occurrence.text, occurrence.note) : cost ? figure('Costs allowed', costText(cost), `for ${counted(cost.count, 'finding')} that state${cost.count === 1 ? 's' : ''} a cost${cost.count === findings.length ? '' : '; the others state none'}`) : nothing}
${record.valuations.map(valuation => {
        const opinion = context.first(valuation, 'opinion');
        const effective = context.first(valuation, 'effective');
        return opinion?.type === 'quantity' ? figure(valuation.title ?? 'Value', figureText(opinion.figure), html`${effective?.type === 'date' ? `on ${dateText(effective.figure)}, ` : ''}<a href="#valuation">how it was reached</a>`) : nothing;
    })}</dl>`;
}

/** How many findings there are; where some are done and seen, how many are not, for that is what a reader asks. */
function findingsInWords(all: number, ahead: number): string {
    return all === 0 ? 'No finding is made.'
        : ahead === all ? `${capital(counted(all, 'finding is', 'findings are'))} made, each with what was seen, why it matters, what to do and by when.`
            : ahead === 0 ? `${all === 1 ? 'The one matter set out below is' : `All ${all} matters set out below are`} done, and the surveyor saw or tried the work.`
                : `${capital(counted(ahead, 'matter is', 'matters are'))} still to be dealt with, each with what was seen, why it matters, what to do and by when; ${counted(all - ahead, 'more is', 'more are')} done, and the surveyor saw or tried the work.`;
}

/** "afloat on 5 October 2026 and ashore on 6 and 8 October 2026": one state once for the days that follow one another in it. */
function attendancesText(attendances: readonly Attendance[]): string {
    const stays: { state: string; dates: DateFigure[] }[] = [];
    for (const { state = 'attended', date } of attendances) {
        const last = stays.at(-1);
        if (last?.state === state && date && last.dates.length > 0) {
            last.dates.push(date);
        } else {
            stays.push({ state, dates: date ? [date] : [] });
        }
    }
    return listed(stays.map(({ state, dates }) => dates.length === 0 ? state : `${state} on ${daysText(dates) ?? ''}`));
}

export function contents(sections: readonly Section[]): Html {
    return html`<nav class="contents" aria-labelledby="contents-title">
<h2 id="contents-title">Contents</h2>
<ol>${sections.map((section, index) => html`<li><a href="#${section.id}"><span class="n">${index + 1}</span> ${section.title} <span class="page" data-for="${section.id}"></span></a></li>
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
        ['Underwriter', [context.text(survey, 'underwriter'), context.text(survey, 'policy')].filter(part => part !== undefined).join(', ')],
        ['Urgent matters told', toldLine(context)],
        ['Covers', context.body(survey, 'scope') ?? context.body(vocabulary.firm, 'scope')],
        ['Intended use', context.body(survey, 'intended-use')],
        ['Present', context.body(survey, 'present')],
        ['Weather', context.body(survey, 'weather')],
        ['Trial', context.body(survey, 'trial')],
        ['Instruments', context.body(survey, 'tools')],
        ['Lay for the survey', isWord(state) && !survey.attendances.some(attendance => attendance.state !== undefined) ? capital(state.word) : undefined],
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
