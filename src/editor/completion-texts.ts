/** Inside quotes: paths of photos and files, names of standards, and references to facts in braces. */
import { URI, UriUtils, type FileSystemNode } from 'langium';
import { CompletionItemKind } from 'vscode-languageserver-types';
import { computedProperties } from '../record/computed.js';
import { quoteLength } from '../record/prose.js';
import { valueText } from './hover.js';
import { photosFolder } from './links.js';
import type { Offers } from './completion-offers.js';
import { offerIds } from './completion-names.js';
import { typeOf, type View } from './resolve.js';
import { endOf, startOf, type Role } from './roles.js';
import type { GarboardServices } from './services.js';

/** The text the cursor is in, or the kind of path wanted where its quotes are still to be written. */
export interface TextPlace {
    readonly role?: Role;
    readonly isClosed: boolean;
    readonly wanted?: 'use' | 'photo';
}

export async function offerInText({ role, isClosed, wanted }: TextPlace, offset: number, view: View, offers: Offers, services: GarboardServices): Promise<void> {
    if (!role) {
        const quoted = (path: string, rank: number, detail: string) => offers.add(`"${path}"`, { rank, kind: CompletionItemKind.File, detail, filter: `"${path}` });
        return wanted === 'use' ? offerUses('', view, quoted, services) : wanted === 'photo' ? offerPhotos('', view, quoted, services) : undefined;
    }
    const open = startOf(role.token) + quoteLength(role.token.image);
    const before = view.text.slice(open, offset);
    const type = role.name === 'text' ? typeOf(role, view.vocabulary)?.type : undefined;
    const close = isClosed ? '' : '"';
    if (role.name === 'use' || role.name === 'photo' || type === 'photo') {
        const inside = offers.within(open, offset);
        const path = (text: string, rank: number, detail: string) => {
            const isFolder = text.endsWith('/');
            inside.add(text.slice(text.lastIndexOf('/', text.length - 2) + 1), {
                rank, kind: isFolder ? CompletionItemKind.Folder : CompletionItemKind.File, detail, insert: text.replace(/["\\]/g, '\\$&') + (isFolder ? '' : close), filter: text, again: isFolder,
            });
        };
        return role.name === 'use' ? offerUses(before, view, path, services) : offerPhotos(before, view, path, services);
    }
    if (type === 'standards') {
        const inside = offers.within(open, isClosed ? endOf(role.token) - 1 : offset);
        for (const standard of view.vocabulary.standards.values()) {
            inside.add(standard.name, { rank: 0, kind: CompletionItemKind.Reference, detail: standard.title, insert: standard.name + close });
        }
        return;
    }
    if (role.name === 'prose' || type === 'text') {
        offerReferences(role, before, offset, view, offers);
    }
}

/** `{` offers ids, `{H9.` the facts of H9. */
function offerReferences(role: Role, before: string, offset: number, view: View, offers: Offers): void {
    const brace = /(\\*)\{([^{}\r\n]*)$/.exec(before);
    if (!brace || (brace[1] ?? '').length % 2 === 1) {
        return;
    }
    const inner = (brace[2] ?? '').trimStart();
    const dot = inner.indexOf('.');
    if (dot === -1) {
        const inside = offers.within(offset - inner.length, offset);
        const { targets = [] } = role.frame.statement ?? {};
        const own = role.frame.statement?.word === 'component' ? role.frame.statement.id : undefined;
        offerIds(view, inside, component => component.id === own || targets.includes(component.id) ? 0 : 1);
        inside.add('vessel', { rank: 2, kind: CompletionItemKind.Module, detail: view.record?.vessel?.name ?? 'the vessel' });
        inside.add('survey', { rank: 3, kind: CompletionItemKind.Module, detail: 'the survey' });
        return;
    }
    const id = inner.slice(0, dot).trim();
    const { record, vocabulary } = view;
    const set = id === 'vessel' ? record?.vessel : id === 'survey' ? record?.survey : record?.components.get(id);
    if (!set) {
        return;
    }
    const inside = offers.within(offset - (inner.length - dot - 1), offset);
    const close = view.text.charAt(offset) === '}' ? '' : '}';
    const kind = vocabulary.kinds.get(set.kind);
    for (const fact of set.facts.values()) {
        inside.add(fact.name, { rank: 0, kind: CompletionItemKind.Property, detail: fact.values.map(valueText).join(', ').replaceAll('\\', ''), insert: fact.name + close });
    }
    const component = record?.components.get(id);
    for (const computed of computedProperties(kind?.lineage ?? []).values()) {
        const text = component && record ? computed.text(component, record) : undefined;
        inside.add(computed.name, {
            rank: text === undefined ? 2 : 1, kind: CompletionItemKind.Function, detail: text ?? `needs ${computed.needs.join(' and ')}`, docs: `${computed.about}. Assumes ${computed.assumption}.`,
            insert: computed.name + close,
        });
    }
    if (id === 'vessel') {
        inside.add('name', { rank: 1, kind: CompletionItemKind.Property, detail: record?.vessel?.name ?? '', insert: `name${close}` });
    }
}

type AddPath = (path: string, rank: number, detail: string) => void;

const picture = /\.(?:jpe?g|png|webp|heic)$/i;
const nameOf = (node: FileSystemNode): string => node.uri.path.slice(node.uri.path.lastIndexOf('/') + 1);

async function entries(services: GarboardServices, folder: URI): Promise<readonly FileSystemNode[]> {
    try {
        const nodes = await services.shared.workspace.FileSystemProvider.readDirectory(folder);
        return nodes.filter(node => !nameOf(node).startsWith('.')).sort((a, b) => nameOf(a).localeCompare(nameOf(b), 'en', { numeric: true }));
    } catch {
        return []; // The folder is not there, or not readable: there is nothing to offer.
    }
}

/** Pictures beside the survey's main file and in its photos folder; those already in the report come last. */
async function offerPhotos(typed: string, { record, uri }: View, add: AddPath, services: GarboardServices): Promise<void> {
    const base = UriUtils.dirname(URI.parse(record?.mainUri ?? uri));
    const folder = typed.slice(0, typed.lastIndexOf('/') + 1);
    const photos = record && photosFolder(record);
    const used = new Set(record ? [...record.components.values(), ...record.findings].flatMap(owner => owner.photos.map(photo => photo.file)) : []);
    const seen = new Set<string>();
    const offer = async (at: URI, prefix: string, rank: number) => {
        for (const node of await entries(services, at)) {
            const name = nameOf(node);
            const path = node.isDirectory ? `${prefix}${name}/` : `${prefix}${name}`;
            if (seen.has(path) || (!node.isDirectory && !picture.test(name))) {
                continue;
            }
            seen.add(path);
            add(path, node.isDirectory ? rank + 5 : used.has(path) ? rank + 2 : rank, node.isDirectory ? 'folder' : used.has(path) ? 'in the report already' : '');
        }
    };
    if (photos !== undefined && folder === '') {
        await offer(UriUtils.joinPath(base, photos), `${photos}/`, 0);
    }
    await offer(folder === '' ? base : UriUtils.joinPath(base, folder), folder, 1);
    if (seen.size === 0 && photos !== undefined && folder !== '') {
        await offer(UriUtils.joinPath(base, photos, folder), folder, 1);
    }
}

/** Other files of the language, without their ending. */
async function offerUses(typed: string, { uri }: View, add: AddPath, services: GarboardServices): Promise<void> {
    const base = UriUtils.dirname(URI.parse(uri));
    const folder = typed.slice(0, typed.lastIndexOf('/') + 1);
    const own = URI.parse(uri).path;
    const seen = new Set<string>();
    for (const node of await entries(services, folder === '' ? base : UriUtils.joinPath(base, folder))) {
        const name = nameOf(node);
        if (node.isDirectory) {
            add(`${folder}${name}/`, 5, 'folder');
        } else if (name.endsWith('.survey') && node.uri.path !== own) {
            seen.add(node.uri.toString());
            add(`${folder}${name.slice(0, -'.survey'.length)}`, 0, '');
        }
    }
    if (folder === '') {
        const prefix = `${base.toString()}/`;
        for (const other of services.editor.Analyser.files().keys()) {
            if (other.startsWith(prefix) && other !== uri && !seen.has(other) && !other.slice(prefix.length).includes('/')) {
                add(decodeURIComponent(other.slice(prefix.length)).replace(/\.survey$/, ''), 0, '');
            }
        }
    }
}
