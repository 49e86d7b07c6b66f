/** Collects what may be written at the cursor, in order of likelihood, as items that replace the word being typed. */
import { CompletionItemKind, InsertTextFormat, type CompletionItem, type CompletionList, type Range } from 'vscode-languageserver-types';
import type { PhraseText } from '../record/model.js';
import type { View } from './resolve.js';
import type { Due, Reader } from './roles.js';

/** The cursor's place: what is known of the survey, the statement before it, and what is due. */
export interface Where {
    readonly view: View;
    readonly reader: Reader;
    readonly due: Due;
}

export interface Offer {
    /** The smaller the earlier; offers of one rank keep their order. */
    readonly rank: number;
    readonly kind?: CompletionItemKind;
    readonly detail?: string;
    readonly docs?: string;
    /** Text inserted, where it is not the label. */
    readonly insert?: string;
    /** Snippet inserted, with `$1` and so on. */
    readonly snippet?: string;
    readonly filter?: string;
    /** Whether to offer again after it is taken, for what follows. */
    readonly again?: boolean;
}

/** So many offers are sent at once; more are narrowed down by what is typed. */
const most = 400;

export class Offers {
    private readonly range: Range;
    private readonly lead: string;
    private isCut = false;
    readonly typed: string;

    constructor(
        readonly view: View, start: number, end: number, private readonly hasSnippets: boolean,
        private readonly items: CompletionItem[] = [], isText = false
    ) {
        const { textDocument } = view.document;
        this.range = { start: textDocument.positionAt(start), end: textDocument.positionAt(end) };
        this.typed = view.text.slice(start, end);
        // Right after a sign or a number a blank is missing.
        this.lead = !isText && /[:,>\d½¼¾{]/.test(view.text.charAt(start - 1)) ? ' ' : '';
    }

    /** Moves the place replaced, for text in quotes. */
    within(start: number, end: number): Offers {
        return new Offers(this.view, start, end, this.hasSnippets, this.items, true);
    }

    add(label: string, { rank, kind, detail, docs, insert, snippet, filter, again }: Offer): void {
        if (this.items.length >= most) {
            this.isCut = true;
            if (!label.toLowerCase().includes(this.typed.toLowerCase())) {
                return;
            }
        }
        const isSnippet = snippet !== undefined && this.hasSnippets;
        const text = isSnippet ? snippet : insert ?? (snippet === undefined ? label : withoutPlaceholders(snippet));
        this.items.push({
            label, textEdit: { range: this.range, newText: this.lead + text },
            sortText: `${String(Math.min(999, rank)).padStart(3, '0')}${String(this.items.length).padStart(5, '0')}`,
            ...(kind === undefined ? {} : { kind }), ...(detail === undefined || detail === '' ? {} : { detail }),
            ...(docs === undefined || docs === '' ? {} : { documentation: { kind: 'markdown' as const, value: docs } }),
            ...(isSnippet ? { insertTextFormat: InsertTextFormat.Snippet } : {}), filterText: filter ?? label,
            ...(again ? { command: { title: 'Suggest', command: 'editor.action.triggerSuggest' } } : {}),
        });
    }

    words(words: ReadonlyMap<string, string>, rank = 0): void {
        for (const [word, meaning] of words) {
            this.add(word, {
                rank, kind: CompletionItemKind.EnumMember, detail: firstLine(meaning), docs: meaning,
                ...(word === 'within-days' ? { snippet: `within-days \${1:30}` } : {}),
            });
        }
    }

    /** Dates the survey mentions already, the latest first: the date of today is not known here. */
    dates(): void {
        const dates = new Set((this.view.record?.survey?.attendances ?? []).map(a => a.date?.iso).filter(iso => iso !== undefined));
        for (const date of [...dates].sort().reverse()) {
            this.add(date, { rank: 0, kind: CompletionItemKind.Constant, detail: 'a day of attendance' });
        }
    }

    /** Phrases of the firm, with places for what they leave open. */
    phrases(prefix: string, targets: readonly string[]): void {
        for (const phrase of this.view.vocabulary.phrases.values()) {
            const open = parametersOf(phrase, this.view, targets).map((name, i) => `${name}: "$${i + 1}"`);
            this.add(`${prefix}${phrase.id}`, {
                rank: prefix === '' ? 0 : 10, kind: CompletionItemKind.Text, detail: firstLine(phrase.prose.text), docs: phrase.prose.text,
                ...(open.length > 0 ? { snippet: `${prefix}${phrase.id}(${open.join(' ')})` } : {}),
            });
        }
    }

    list(): CompletionList {
        // What was typed decides where there is too much to send.
        const typed = this.typed.toLowerCase();
        const items = this.isCut ? this.items.filter(item => item.label.toLowerCase().includes(typed)).slice(0, most) : this.items;
        return { isIncomplete: this.isCut, items };
    }
}

/** Names in braces that a phrase leaves open: neither an id nor a fact of what the finding is about. */
export function parametersOf({ prose }: PhraseText, { record, vocabulary }: View, targets: readonly string[]): string[] {
    const isFact = (name: string) => targets.some(id => vocabulary.kinds.get(record?.components.get(id)?.kind ?? '')?.properties.has(name));
    const names = prose.segments.flatMap(s => typeof s === 'string' || s.property !== undefined ? [] : [s.component]);
    return [...new Set(names)].filter(name => !record?.components.has(name) && name !== 'vessel' && name !== 'survey' && !isFact(name));
}

export function firstLine(text: string): string {
    const line = text.split('\n')[0] ?? '';
    return line.length > 90 ? `${line.slice(0, 89)}…` : line;
}

/** Text that a snippet leaves as it is. */
export function literal(text: string): string {
    return text.replace(/[\\$}]/g, '\\$&');
}

function withoutPlaceholders(snippet: string): string {
    return snippet.replace(/\$\{\d+\|([^,|]*)[^}]*\}/g, '$1').replace(/\$\{\d+:([^}]*)\}/g, '$1').replace(/\$\{?\d+\}?/g, '').replace(/\\([\\$}])/g, '$1');
}
