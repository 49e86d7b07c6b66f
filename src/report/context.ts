/** What every section of the report draws from, and the few pieces that several of them draw alike. */
import type { Problem } from '../checks/contract.js';
import { isDoneAndSeen } from '../record/earlier-findings.js';
import { nameOf, type Component, type DateFigure, type Fact, type FactSet, type Finding, type Gap, type Photo, type PhotoMark, type Prose, type Span, type SurveyRecord, type Value } from '../record/model.js';
import type { FirmMark } from './firm-mark.js';
import { html, idPart, isImageData, joined, nothing, trusted, type Html } from './html.js';
import { defaultColor, paletteOf, parseColor, type Palette } from './palette.js';
import { marksOverlay } from './photo-marks-svg.js';
import { nameOfFile, type EmbeddedPhoto, type EncodedImage } from './photos.js';
import type { RecordDocument } from './record-document.js';
import { proseHtml, proseInline, proseText, valueInSentence, type ProseContext } from './prose.js';
import { capital, counted, daysAfter, daysOf, figureText, isWord, labelOfWord, wordText, wordWithAmount } from './wording.js';

export interface ReportInput {
    readonly record: SurveyRecord;
    readonly problems: readonly Problem[];
    /** What the text does not say properly; the record's own where left out. */
    readonly gaps?: readonly Gap[];
    /** Computed facts, by the name prose gives them. */
    readonly computed: ReadonlyMap<string, string>;
    /** Photographs by the path the survey writes. */
    readonly photos: ReadonlyMap<string, EmbeddedPhoto>;
    readonly lineOf: (span: Span) => { readonly file: string; readonly line: number };
    readonly mode: 'file' | 'preview';
    /** Number, date and signature of the issue being made; they stand in the place of what the survey says. */
    readonly issue?: IssueStamp;
    /** The record of the last issue, where there is one: the report then says what has changed since. */
    readonly lastRecord?: RecordDocument;
    /** The firm's mark as data, or why it cannot be shown; none where its house file names none. */
    readonly firmMark?: FirmMark;
    /** Paper to print on; the firm's, or else whatever the reader's printer holds. */
    readonly paper?: Paper;
}

export type Paper = 'a4' | 'letter';

/** What the act of issuing adds to the record. */
export interface IssueStamp {
    readonly number: number;
    readonly date: DateFigure;
    readonly signedBy?: string;
}

export interface Section {
    readonly id: string;
    readonly title: string;
    readonly body: Html;
}

/** A photograph with its number in the report and the places that show it. */
export interface NumberedPhoto {
    readonly number: number;
    readonly file: string;
    readonly caption?: Prose;
    readonly image: EmbeddedPhoto;
    readonly places: readonly { readonly title: string; readonly anchor: string }[];
    /** Marks of the first place that draws any. */
    readonly marks: readonly PhotoMark[];
    readonly span: Span;
}

export interface UrgencyGroup {
    readonly word: string | undefined;
    /** Place among the words of urgency, 0 the most urgent. */
    readonly rank: number;
    readonly ranks: number;
    readonly meaning: string | undefined;
    readonly findings: readonly Finding[];
}

export class ReportContext implements ProseContext {
    readonly record: SurveyRecord;
    readonly computed: ReadonlyMap<string, string>;
    readonly gaps: readonly Gap[];
    readonly problems: readonly Problem[];
    readonly openProblems: readonly Problem[];
    readonly isPreview: boolean;
    readonly lineOf: ReportInput['lineOf'];
    readonly firmMark: FirmMark | undefined;
    readonly palette: Palette;
    readonly paper: Paper | undefined;
    readonly lastRecord: RecordDocument | undefined;
    readonly #issue: IssueStamp | undefined;
    readonly photos: ReadonlyMap<string, NumberedPhoto>;
    readonly groups: readonly UrgencyGroup[];
    /** Findings in the order of the report. */
    readonly findings: readonly Finding[];
    readonly #anchors = new Map<Finding, string>();
    readonly #findingsOn = new Map<Component, Finding[]>();
    readonly #problemsOn = new Map<Component, Problem[]>();
    readonly #findingById = new Map<string, Finding>();
    readonly #answeredBy = new Map<string, Problem[]>();

    constructor(input: ReportInput) {
        this.record = input.record;
        this.computed = input.computed;
        this.gaps = input.gaps ?? input.record.gaps;
        this.problems = input.problems;
        this.openProblems = input.problems.filter(problem => problem.answeredBy === undefined);
        this.isPreview = input.mode === 'preview';
        this.lineOf = input.lineOf;
        this.firmMark = input.firmMark;
        this.palette = paletteOf(this.#textOfFirm('color'));
        this.paper = input.paper ?? this.#paperOfFirm();
        this.lastRecord = input.lastRecord;
        this.#issue = input.issue;
        this.groups = groupByUrgency(input.record);
        this.findings = this.groups.flatMap(group => group.findings);
        for (const finding of this.findings) {
            if (!this.#findingById.has(finding.id)) {
                this.#findingById.set(finding.id, finding);
            }
        }
        const put = <K>(lists: Map<K, Problem[]>, key: K, problem: Problem) => {
            const list = lists.get(key);
            if (list) {
                list.push(problem);
            } else {
                lists.set(key, [problem]);
            }
        };
        for (const problem of input.problems) {
            new Set(problem.components).forEach(component => put(this.#problemsOn, component, problem));
            if (problem.answeredBy !== undefined) {
                put(this.#answeredBy, problem.answeredBy, problem);
            }
        }
        const taken = new Set<string>();
        for (const finding of this.findings) {
            let anchor = `finding-${idPart(finding.id)}`;
            while (taken.has(anchor)) {
                anchor += '-again';
            }
            taken.add(anchor);
            this.#anchors.set(finding, anchor);
            for (const component of finding.on) {
                this.#findingsOn.set(component, [...this.#findingsOn.get(component) ?? [], finding]);
            }
        }
        this.photos = this.#numberPhotos(input.photos);
    }

    /** The finding of a number. */
    findingOf(id: string | undefined): Finding | undefined {
        return id === undefined ? undefined : this.#findingById.get(id);
    }

    /** Problems that a component has part in, in order. */
    problemsOn(component: Component): readonly Problem[] {
        return this.#problemsOn.get(component) ?? [];
    }

    /** Problems that a finding answers, in order. */
    answeredBy(finding: Finding): readonly Problem[] {
        return this.#answeredBy.get(finding.id) ?? [];
    }

    /** Photographs that the survey names and the report cannot show. */
    get missingPhotos(): readonly NumberedPhoto[] {
        return [...this.photos.values()].filter(photo => 'error' in photo.image);
    }

    /** What is amiss with the firm's mark and color; the report comes out without them. */
    get firmFaults(): readonly { readonly severity: 'error' | 'info'; readonly span: Span; readonly message: string }[] {
        const { firm } = this.record.vocabulary;
        const color = this.#textOfFirm('color');
        const spanOf = (property: string) => firm?.facts.get(property)?.span ?? firm?.span;
        const [markSpan, colorSpan] = [spanOf('mark'), spanOf('color')];
        return [
            ...markSpan && this.firmMark && 'error' in this.firmMark ? [{ severity: 'error' as const, span: markSpan, message: `The firm’s mark is not shown. ${this.firmMark.error}.` }] : [],
            ...colorSpan && color !== undefined && parseColor(color) === undefined ? [{ severity: 'info' as const, span: colorSpan, message: `The firm’s color is not used: “${color}” is not written as # and three or six digits, such as ${defaultColor}.` }] : [],
        ];
    }

    #textOfFirm(property: string): string | undefined {
        const value = this.first(this.record.vocabulary.firm, property);
        return value?.type === 'text' ? value.prose.text.trim() : undefined;
    }

    #paperOfFirm(): Paper | undefined {
        const value = this.first(this.record.vocabulary.firm, 'paper');
        return isWord(value) && (value.word === 'a4' || value.word === 'letter') ? value.word : undefined;
    }

    /** Problems, gaps, and pictures that cannot be shown, which keep the report a draft. */
    get openErrors(): number {
        return this.openProblems.filter(p => p.severity === 'error').length + this.gaps.filter(g => g.severity === 'error').length + this.missingPhotos.length
            + this.firmFaults.filter(fault => fault.severity === 'error').length;
    }

    /** Date of issue: of the issue being made, else as the survey says. */
    get issued(): DateFigure | undefined {
        const written = this.first(this.record.survey, 'issued');
        return this.#issue?.date ?? (written?.type === 'date' ? written.figure : undefined);
    }

    /** Number of the issue: of the one being made, else as the survey says. */
    get issueNumber(): number | undefined {
        const written = this.first(this.record.survey, 'issue');
        return this.#issue?.number ?? (written?.type === 'quantity' ? written.si : undefined);
    }

    /** Stamp of the issue being made. */
    get stamp(): IssueStamp | undefined {
        return this.#issue;
    }

    /** Who signed, where the report is being issued. */
    get signedBy(): string | undefined {
        return this.#issue?.signedBy;
    }

    get isDraft(): boolean {
        return this.openErrors > 0;
    }

    anchorOf(finding: Finding): string {
        return this.#anchors.get(finding) ?? `finding-${idPart(finding.id)}`;
    }

    findingsOn(component: Component): readonly Finding[] {
        return this.#findingsOn.get(component) ?? [];
    }

    /** Attributes that lead a click in the preview to the text; nothing in the report that is sent. */
    source(span: Span): Html {
        return this.isPreview ? html` data-uri="${span.uri}" data-start="${span.start}"` : nothing;
    }

    linkTo(finding: Finding): Html {
        return html`<a href="#${this.anchorOf(finding)}">${finding.id}</a>`;
    }

    /** A component by name, linked to its record. */
    linkToComponent(component: Component): Html {
        return html`<a href="#${componentAnchor(component)}">${nameOf(component)}</a>`;
    }

    fact(set: FactSet | undefined, property: string): Fact | undefined {
        return set?.facts.get(property);
    }

    first(set: FactSet | undefined, property: string): Value | undefined {
        return set?.facts.get(property)?.values[0];
    }

    /** The recorded values as one text, in both unit systems; undefined where nothing is recorded. */
    text(set: FactSet | undefined, property: string): string | undefined {
        const values = set?.facts.get(property)?.values ?? [];
        return values.length === 0 ? undefined : values.map(value => valueInSentence(this, value)).join(', ');
    }

    /** Prose of a property as paragraphs; a figure or word as it reads. */
    body(set: FactSet | undefined, property: string): Html | undefined {
        const values = set?.facts.get(property)?.values ?? [];
        return values.length === 0 ? undefined : html`${values.map(value => value.type === 'text' ? proseHtml(this, value.prose) : html`<p>${this.value(set, property, value)}</p>`)}`;
    }

    /** A value in a table. */
    value(set: FactSet | undefined, property: string, value: Value): Html {
        const type = set ? this.record.vocabulary.kinds.get(set.kind)?.properties.get(property) : undefined;
        switch (value.type) {
            case 'text': return proseInline(this, value.prose);
            case 'word': return html`${capital(type?.type === 'condition' ? wordText(value.word) : labelOfWord(value, type, this.record.vocabulary))}`;
            case 'material': return html`${value.material.title}`;
            case 'component': {
                const component = this.record.components.get(value.id);
                return component ? this.linkToComponent(component) : html`${value.id}`;
            }
            case 'quantity': return html`<span class="fact">${property === 'built' || property === 'model-year' ? value.figure.written : figureText(value.figure)}</span>`;
            default: return html`${valueInSentence(this, value)}`;
        }
    }

    values(set: FactSet, property: string): Html {
        return joined((set.facts.get(property)?.values ?? []).map(value => this.value(set, property, value)), ', ');
    }

    plain(prose: Prose): string {
        return proseText(this, prose);
    }

    conditionOf(component: Component): string | undefined {
        const value = this.first(component, 'condition');
        return isWord(value) ? value.word : undefined;
    }

    /** When a finding is due, with the date where it can be told from the date of issue. */
    dueOf(finding: Finding): string {
        if (isDoneAndSeen(finding)) {
            return 'Done and seen';
        }
        const urgency = this.first(finding, 'urgency');
        if (!isWord(urgency)) {
            return 'No urgency is recorded';
        }
        if (urgency.word === 'within-days' && urgency.amount) {
            const days = daysOf(urgency.amount.figure);
            const date = this.issued ? daysAfter(this.issued, days) : undefined;
            return date === undefined ? `${capital(wordWithAmount(urgency))} of issue` : `By ${date}, ${counted(days, 'day')} after issue`;
        }
        return capital(wordWithAmount(urgency));
    }

    photo(photo: Photo): NumberedPhoto | undefined {
        return this.photos.get(photo.file);
    }

    /** "Photo 3", linked to where it is shown at full size. */
    photoLinks(photos: readonly Photo[]): Html {
        const numbers = [...new Set(photos.flatMap(photo => this.photo(photo)?.number ?? []))];
        return numbers.length === 0 ? nothing : html`<span class="refs">${joined(numbers.map(n => html`<a href="#photo-${n}">Photo ${n}</a>`), ', ')}</span>`;
    }

    #numberPhotos(images: ReadonlyMap<string, EmbeddedPhoto>): Map<string, NumberedPhoto> {
        const found = new Map<string, { caption?: Prose; places: { title: string; anchor: string }[]; marks: readonly PhotoMark[]; span: Span }>();
        const add = (photos: readonly Photo[], title: string, anchor: string) => {
            for (const { file, caption, marks, span } of photos) {
                const known = found.get(file);
                if (known) {
                    known.caption ??= caption;
                    known.marks = known.marks.length > 0 ? known.marks : marks;
                    if (!known.places.some(place => place.anchor === anchor)) {
                        known.places.push({ title, anchor });
                    }
                } else {
                    found.set(file, { ...(caption ? { caption } : {}), places: [{ title, anchor }], marks, span });
                }
            }
        };
        const { vessel, survey, components } = this.record;
        add(vessel?.photos ?? [], 'Particulars', 'particulars');
        add(survey?.photos ?? [], 'Scope', 'scope');
        for (const finding of this.findings) {
            add(finding.photos, `Finding ${finding.id}`, this.anchorOf(finding));
        }
        for (const component of components.values()) {
            add(component.photos, nameOf(component), componentAnchor(component));
        }
        return new Map([...found].map(([file, photo], index) => [file, { ...photo, file, number: index + 1, image: images.get(file) ?? { error: `${file}: not read` } }]));
    }
}

export const componentAnchor = (component: Component): string => `part-${idPart(component.id)}`;

export interface PictureOptions {
    /** Left to be decoded until it is scrolled to. */
    readonly isLazy?: boolean;
    /** Drawn over the picture. */
    readonly marks?: readonly PhotoMark[];
    /** Begins the ids within the picture; unique in the document. */
    readonly id?: string;
}

/** The picture itself with its marks, or in its place the reason why there is none. */
export function picture(photo: NumberedPhoto, image: EncodedImage | undefined, alt: string, { isLazy = false, marks = [], id = `picture-${photo.number}` }: PictureOptions = {}): Html {
    if ('error' in photo.image || !image || !isImageData(image.dataUri)) {
        return html`<div class="no-photo"><p><strong>Photo not shown.</strong> ${'error' in photo.image ? photo.image.error : `${photo.file}: not a picture`}</p></div>`;
    }
    // Base64 needs no escaping, and a report is made of little else.
    const img = html`<img src="${trusted(image.dataUri)}" width="${image.width}" height="${image.height}" alt="${alt}"${isLazy ? html` loading="lazy"` : nothing}>`;
    return marks.length === 0 ? img : html`<span class="marked">${img}${marksOverlay(marks, image.width, image.height, id)}</span>`;
}

export function altOf(context: ReportContext, photo: NumberedPhoto): string {
    const caption = photo.caption ? context.plain(photo.caption).replace(/\s+/g, ' ').trim() : '';
    return caption !== '' ? caption : 'error' in photo.image || photo.image.alt === '' ? nameOfFile(photo.file) || `Photo ${photo.number}` : photo.image.alt;
}

function groupByUrgency(record: SurveyRecord): UrgencyGroup[] {
    const words = record.vocabulary.wordLists.get('urgency')?.words ?? new Map<string, string>();
    // What is done and seen is due no more, whatever it was.
    const order = [...words.keys(), 'done-and-seen'];
    const byWord = new Map<string | undefined, Finding[]>();
    for (const finding of record.findings) {
        const value = finding.facts.get('urgency')?.values[0];
        const word = isDoneAndSeen(finding) ? 'done-and-seen' : isWord(value) ? value.word : undefined;
        byWord.set(word, [...byWord.get(word) ?? [], finding]);
    }
    // A finding without an urgency stands first, where it cannot be overlooked; unknown words after it.
    const rankOf = (word: string | undefined) => word === undefined ? -2 : order.includes(word) ? order.indexOf(word) : -1;
    return [...byWord].map(([word, findings]) => ({ word, rank: Math.max(0, rankOf(word)), ranks: Math.max(1, words.size), meaning: word === undefined ? undefined : words.get(word) ?? record.vocabulary.wordLists.get('outcome')?.words.get(word), findings }))
        .sort((a, b) => rankOf(a.word) - rankOf(b.word));
}

export const urgencyTitle = ({ word }: UrgencyGroup): string =>
    word === undefined ? 'No urgency recorded' : word === 'within-days' ? 'Within days of issue' : capital(wordText(word));

/**
 * How high the water stands: a gauge like the draft marks on a stem, fuller the more urgent. Beside it the urgency is
 * always given in words.
 */
export function gauge({ rank, ranks }: Pick<UrgencyGroup, 'rank' | 'ranks'>): Html {
    const height = 22;
    const level = Math.max(2, Math.round(height * (ranks - rank) / ranks));
    return html`<svg class="gauge" viewBox="0 0 14 24" width="14" height="24" aria-hidden="true" focusable="false"><rect x="1" y="1" width="8" height="${height}" fill="none" stroke="currentColor"/><rect x="1" y="${1 + height - level}" width="8" height="${level}" fill="currentColor"/><path d="M10 1h4M10 6.5h2.5M10 12h4M10 17.5h2.5M10 23h4" stroke="currentColor" fill="none"/></svg>`;
}

/** Label and content as a definition list; pairs without content are left out. */
export function definitions(pairs: readonly (readonly [string, Html | string | undefined])[], className = 'facts'): Html {
    const given = pairs.filter(([, content]) => content !== undefined && String(content) !== '');
    return given.length === 0 ? nothing : html`<dl class="${className}">${given.map(([label, content]) => html`<div><dt>${label}</dt><dd>${content}</dd></div>
`)}</dl>`;
}

export interface Column {
    readonly title: string;
    readonly isNumber?: boolean;
    readonly className?: string;
}

/** A table with a caption and headings; the first cell of each row is its heading. */
export function table(caption: Html | string, columns: readonly Column[], rows: readonly { readonly attributes?: Html; readonly cells: readonly (Html | string)[] }[], className = ''): Html {
    const classOf = (column: Column | undefined) => [column?.isNumber ? 'number' : '', column?.className ?? ''].filter(Boolean).join(' ');
    const classes = (column: Column | undefined) => classOf(column) === '' ? nothing : html` class="${classOf(column)}"`;
    return html`<div class="table" role="group" tabindex="0" aria-label="${typeof caption === 'string' ? caption : 'Table'}"><table${className === '' ? nothing : html` class="${className}"`}>
<caption>${caption}</caption>
<thead><tr>${columns.map(column => html`<th scope="col"${classes(column)}>${column.title}</th>`)}</tr></thead>
<tbody>
${rows.map(({ attributes, cells }) => html`<tr${attributes ?? nothing}>${cells.map((cell, index) => index === 0
        ? html`<th scope="row"${classes(columns[0])}>${cell}</th>`
        : html`<td${classes(columns[index])} data-label="${columns[index]?.title ?? ''}">${cell}</td>`)}</tr>
`)}</tbody>
</table></div>`;
}
