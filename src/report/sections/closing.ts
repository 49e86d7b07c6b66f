/** Standards, assumptions of computed figures, the signed statement, and the photographs. */
import type { Check, Provenance } from '../../checks/contract.js';
import { allComputed, computedProperties } from '../../record/computed.js';
import { nameOf, type Person, type Standard } from '../../record/model.js';
import { altOf, definitions, picture, table, type ReportContext, type Section } from '../context.js';
import { html, joined, nothing, type Html } from '../html.js';
import { positionText } from '../photo-exif.js';
import { proseInline } from '../prose.js';
import { standing } from '../standing-words.js';
import { capital, dateText, figureText, inSentence, isWord, takenInWords, wordText } from '../wording.js';
import { isRecalled, standingOf } from './findings.js';
import { reportNumber, vesselName } from './opening.js';

export function standards(context: ReportContext): Section | undefined {
    const { record, problems } = context;
    const names = new Set([
        ...context.findings.flatMap(finding => (finding.facts.get('cites')?.values ?? []).flatMap(value => value.type === 'citation' ? [value.standard] : [])),
        ...problems.filter(p => p.severity !== 'hint').flatMap(problem => problem.check.sources.flatMap(source => source.standard ?? [])),
    ]);
    return names.size === 0 ? undefined : {
        id: 'standards', title: 'Standards and rules cited', body: html`
${standing(context, 'standards-lead')}
${table('Standards and rules cited', [{ title: 'Name' }, { title: 'Title' }, { title: 'Edition' }, { title: 'Standing' }, { title: 'Wording known' }], [...names].sort((a, b) => a.localeCompare(b, 'en')).map(name => {
        const standard = record.vocabulary.standards.get(name);
        const text = (property: string) => {
            const value = standard?.facts.get(property)?.values[0];
            return value?.type === 'text' ? context.plain(value.prose) : value?.type === 'quantity' || value?.type === 'date' ? value.figure.written : undefined;
        };
        const scope = text('scope');
        return { cells: [name, html`${standard?.title ?? ''}${scope === undefined ? nothing : html`. <span class="muted">${scope}</span>`}`, text('edition') ?? 'Not stated', capital(standingOf(standard) ?? 'not recorded'), html`${provenanceText(standard)}${text('source') === undefined ? nothing : html` <span class="muted">${text('source')}</span>`}`] };
    }), 'cited')}`,
    };
}

/** How well the wording of a standard is known, which a reader must be able to see. */
function provenanceText(standard: Standard | undefined): Html | string {
    const value = standard?.facts.get('provenance')?.values[0];
    // The words of the property are those of the list `provenance`.
    return isRecalled(standard) ? html`<strong>To be confirmed in the current text.</strong>` : isWord(value) ? capital(known[value.word as Provenance]) : 'Not recorded';
}

const known: Readonly<Record<Provenance, string>> = {
    published: 'read in the source', secondary: 'read in a publication that quotes it', computed: 'follows from the formula', memory: 'recalled, to be confirmed', practice: 'practice of the trade', chosen: 'chosen so that a check can be made',
};

/** What computed figures rest on, for every check that raised something and every computed fact named in the text. */
export function assumptions(context: ReportContext): Section | undefined {
    const checks = new Map<string, Check>();
    for (const { check, severity } of context.problems) {
        if (severity !== 'hint') {
            checks.set(check.id, check);
        }
    }
    const facts = allComputed.filter(computed => context.findings.some(finding => [...finding.facts.values()].some(fact => fact.values.some(value => value.type === 'text'
        && value.prose.segments.some(segment => typeof segment !== 'string' && segment.property === computed.name && !context.record.components.get(segment.component)?.facts.has(computed.name))))));
    if (checks.size === 0 && facts.length === 0) {
        return undefined;
    }
    return {
        id: 'assumptions', title: 'How figures were computed', body: html`
${standing(context, 'assumptions-lead')}
${facts.map(computed => html`<h3>${capital(wordText(computed.name))}</h3>
<p>${computed.about}. Taken for granted: ${computed.assumption}.</p>
${definitions([...context.record.components.values()].flatMap(component => {
        const lineage = context.record.vocabulary.kinds.get(component.kind)?.lineage ?? [];
        const text = computedProperties(lineage).has(computed.name) ? context.computed.get(`${component.id}.${computed.name}`) : undefined;
        return text === undefined ? [] : [[nameOf(component), text] as const];
    }), 'run-in')}`)}
${yardsticksUsed(context, checks)}
<div class="methods">${[...checks.values()].map(check => html`<section class="method"><h3>${check.title}</h3>
<p>${check.computes}</p>
<p><strong>Rests on</strong> ${joined(check.sources.map(source => html`${joined([source.standard, source.clause, source.text].filter(part => part !== undefined), ', ')} (${known[source.provenance]})`), '; ')}.</p>
${check.limits.length === 0 ? nothing : html`<p><strong>Cannot know.</strong> ${check.limits.join(' ')}</p>`}
</section>`)}</div>`,
    };
}

/** Limits where practice differs: those the checks above judged by, and those the firm has set. */
function yardsticksUsed({ record }: ReportContext, checks: ReadonlyMap<string, Check>): Html {
    const { yardsticks, kinds } = record.vocabulary;
    const used = new Set<string>([...checks.values()].flatMap(check => check.yardsticks ?? []));
    const shown = [...yardsticks].filter(([name, { isFirms }]) => isFirms || used.has(name));
    return shown.length === 0 ? nothing : html`<h3>Limits where practice differs</h3>
${table('Limits where practice differs', [{ title: 'What' }, { title: 'Limit used' }, { title: 'Set by' }], shown.map(([name, { fact, isFirms }]) => {
        const value = fact.values[0];
        return { cells: [kinds.get('yardsticks')?.properties.get(name)?.about ?? wordText(name), value?.type === 'quantity' ? figureText(value.figure) : isWord(value) ? wordText(value.word) : fact.written, isFirms ? 'The firm' : 'Usual practice'] };
    }))}`;
}

/**
 * The statement: the survey's own, else the firm's, else the catalogue's; then what follows it for this kind of survey
 * and this record. A surveyor who writes a statement for one survey says in it what he has to say.
 */
function statementWords(context: ReportContext): Html {
    const { survey, valuations, vocabulary } = context.record;
    const own = context.body(survey, 'statement');
    return html`${own ?? context.body(vocabulary.firm, 'statement') ?? standing(context, 'statement')}
${own === undefined ? standing(context, (survey?.attendances.length ?? 0) > 0 ? 'statement-attended' : 'statement-not-attended') : nothing}
${valuations.length > 0 ? standing(context, 'statement-value') : nothing}
${own === undefined && survey?.surveyKind === 'damage' ? standing(context, 'statement-damage') : nothing}
${survey?.surveyKind === 'part-survey' ? html`${standing(context, 'part-only')}${context.body(survey, 'scope') ?? context.body(vocabulary.firm, 'scope') ?? nothing}` : nothing}`;
}

export function statement(context: ReportContext): Section {
    const { survey, vocabulary } = context.record;
    const person = (property: string): Person | undefined => {
        const value = context.first(survey, property);
        return value?.type === 'person' ? vocabulary.people.get(value.id) : undefined;
    };
    const [surveyor, reviewer] = [person('surveyor'), person('reviewer')];
    const { firm } = vocabulary;
    return {
        id: 'statement', title: 'Statement and signature', body: html`
${statementWords(context)}
${context.isDraft ? html`<p><strong>This is a draft and is not to be signed.</strong></p>` : nothing}
<div class="signatures">
${signature(context, surveyor, 'Surveyor', surveyor ? undefined : context.text(survey, 'surveyor'))}
${reviewer ? signature(context, reviewer, 'Read before issue by', undefined) : nothing}
</div>
<p>${vesselName(context)}, report ${reportNumber(context)}. ${context.issued ? `Issued ${dateText(context.issued)}.` : 'No date of issue is recorded.'}</p>
${firm ? html`<address>${joined([firm.name, context.text(firm, 'address'), context.text(firm, 'telephone'), context.text(firm, 'email'), context.text(firm, 'website')].filter(part => part !== undefined), html`<br>`)}</address>` : nothing}`,
    };
}

function signature(context: ReportContext, person: Person | undefined, role: string, name: string | undefined): Html {
    const credentials = person ? context.text(person, 'credentials') : undefined;
    return html`<div class="signature">
<p class="line-for">Signature</p>
<p><strong>${person?.name ?? name ?? 'No name is recorded'}</strong><br>${person ? context.text(person, 'role') ?? role : role}${credentials === undefined ? nothing : html`<br>${credentials}`}</p>
<p class="line-for">Date</p>
</div>`;
}

/** Above this number, photographs are printed two beside each other. */
const manyPhotos = 12;

/** Every photograph once at full size, with the places that refer to it. */
export function photographs(context: ReportContext): Section | undefined {
    const photos = [...context.photos.values()];
    return photos.length === 0 ? undefined : {
        id: 'photographs', title: 'Photographs', body: html`
${standing(context, 'photos-lead')}
<div class="annex${photos.length > manyPhotos ? ' many' : ''}">${photos.map(photo => html`<figure id="photo-${photo.number}"${context.source(photo.span)}>${picture(photo, 'error' in photo.image ? undefined : photo.image, altOf(context, photo), { isLazy: true, marks: photo.marks })}
<figcaption><strong>Photo ${photo.number}.</strong> ${photo.caption ? html`${proseInline(context, photo.caption)}. ` : nothing}<span class="muted">${photo.file}${'error' in photo.image || photo.image.taken === undefined ? nothing : `, taken ${takenInWords(photo.image.taken)}`}${'error' in photo.image || !photo.image.position ? nothing : `, ${positionText(photo.image.position)} by the camera`}.</span> Shown for ${joined(photo.places.map(place => html`<a href="#${place.anchor}">${inSentence(place.title)}</a>`), photo.places.length === 2 ? ' and ' : ', ')}.</figcaption></figure>
`)}</div>`,
    };
}
