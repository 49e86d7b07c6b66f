/**
 * Which files make up a survey. The main file holds the survey block and says `use "…"` for further parts and house
 * files; every file so reached belongs to it, and sees all its names. A part opened on its own belongs to the
 * surveys that use it.
 */
import { isSurvey, isSystem, isVessel, type SurveyFile } from '../language/generated/ast.js';
import { URI, UriUtils } from 'langium';
import type { Gap } from './model.js';
import { plainText } from './prose.js';
import { headSpan, partSpan, type SourceFile } from './source.js';
import { nearest } from '../quantities/index.js';

/** The address a `use` path leads to, seen from the file that holds it. Windows separators are understood. */
export function resolveUse(fromUri: string, path: string): string {
    const clean = path.replaceAll('\\', '/');
    const name = clean.endsWith('.survey') ? clean : `${clean}.survey`;
    return UriUtils.joinPath(UriUtils.dirname(URI.parse(fromUri)), name).toString();
}

/** Addresses of the files a file uses directly. */
export function usesOf(file: SourceFile): string[] {
    return file.root.uses.filter(use => use.path !== undefined).map(use => resolveUse(file.uri, plainText(use.path ?? '')));
}

/** Whether the file holds facts of a vessel, not only vocabulary. */
function holdsFacts(root: SurveyFile): boolean {
    return root.elements.some(e => isSystem(e) || isVessel(e) || e.$type === 'Component' || e.$type === 'Run' || e.$type === 'Finding'
        || e.$type === 'Acceptance' || e.$type === 'Contact' || e.$type === 'Reading' || e.$type === 'Valuation');
}

export const isMainFile = (root: SurveyFile): boolean => root.elements.some(isSurvey);

/** The file and all it uses, itself first, each once. */
export function closureOf(uri: string, files: ReadonlyMap<string, SourceFile>): SourceFile[] {
    const found = new Map<string, SourceFile>();
    const visit = (at: string) => {
        const file = files.get(at);
        if (!file || found.has(at)) {
            return;
        }
        found.set(at, file);
        usesOf(file).forEach(visit);
    };
    visit(uri);
    return [...found.values()];
}

/** Main files of the surveys a file belongs to; the file itself where it belongs to none. */
export function mainFilesOf(uri: string, files: ReadonlyMap<string, SourceFile>): string[] {
    const file = files.get(uri);
    if (!file || isMainFile(file.root)) {
        return [uri];
    }
    const users = [...files.values()].filter(other => isMainFile(other.root) && closureOf(other.uri, files).some(f => f.uri === uri));
    // A house file is judged on its own: its declarations do not depend on who uses it.
    return users.length > 0 && holdsFacts(file.root) ? users.map(user => user.uri) : [uri];
}

/** `use` paths that lead nowhere, or back to the file itself. */
export function useGaps(file: SourceFile, files: ReadonlyMap<string, SourceFile>): Gap[] {
    const gaps: Gap[] = [];
    for (const use of file.root.uses) {
        if (use.path === undefined) {
            gaps.push({ code: 'value-missing', severity: 'error', span: headSpan(use, file.uri), message: 'Which file is used? Write use "house", the path without .survey.', mends: [] });
            continue;
        }
        const span = partSpan(use, 'path', file.uri);
        const path = plainText(use.path);
        const target = resolveUse(file.uri, path);
        if (target === file.uri) {
            gaps.push({ code: 'file-uses-itself', severity: 'error', span, message: 'A file cannot use itself; remove this line.', mends: [] });
        } else if (!files.has(target)) {
            const folder = UriUtils.dirname(URI.parse(file.uri)).toString();
            const known = [...files.keys()].filter(u => u !== file.uri && u.startsWith(`${folder}/`)).map(u => decodeURIComponent(u.slice(folder.length + 1)).replace(/\.survey$/, ''));
            const close = nearest(path, known);
            gaps.push({
                code: 'file-unknown', severity: 'error', span, message: `There is no file ${path.endsWith('.survey') ? path : `${path}.survey`} beside this one.${close ? ` Did you mean ${close}?` : ''}`,
                mends: close ? [{ title: `Use "${close}"`, span, text: `"${close}"` }] : [],
            });
        }
    }
    return gaps;
}
