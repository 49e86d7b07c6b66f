/**
 * Analyses of the surveys in the workspace, kept until one of their files changes. Every editor feature reads the
 * same analysis, so hover, lens, problem list and report never disagree.
 */
import type { LangiumDocument, LangiumDocuments, URI } from 'langium';
import { isSurveyFile } from '../language/generated/ast.js';
import { analyseSurvey } from '../checks/survey.js';
import type { Analysis } from '../checks/analyse.js';
import { closureOf, mainFilesOf, usesOf } from '../record/documents.js';
import type { OutsideFacts } from '../record/model.js';
import type { SourceFile } from '../record/source.js';
import { isSameOutside } from '../report/outside.js';

interface Kept {
    readonly roots: readonly unknown[];
    readonly analysis: Analysis;
}

export class SurveyAnalyser {
    private readonly kept = new Map<string, Kept>();
    private readonly sources = new WeakMap<object, SourceFile>();
    private readonly outside = new Map<string, OutsideFacts>();

    constructor(private readonly documents: () => LangiumDocuments) {}

    /** Takes what the host knows of things outside the text of a survey; true where it says something new, so that she is to be judged again. */
    setOutside(main: string, facts: OutsideFacts): boolean {
        const isNew = !isSameOutside(this.outside.get(main) ?? {}, facts);
        if (isNew) {
            this.outside.set(main, facts);
            this.kept.delete(main);
        }
        return isNew;
    }

    /** All parsed files of the workspace, by address. */
    files(): Map<string, SourceFile> {
        const files = new Map<string, SourceFile>();
        for (const document of this.documents().all) {
            const root = document.parseResult.value;
            if (isSurveyFile(root)) {
                files.set(document.uri.toString(), this.source(document));
            }
        }
        return files;
    }

    private source(document: LangiumDocument): SourceFile {
        const root = document.parseResult.value;
        let source = this.sources.get(root);
        if (!source && isSurveyFile(root)) {
            source = { uri: document.uri.toString(), root, isBuiltIn: false };
            this.sources.set(root, source);
        }
        if (!source) {
            throw new Error(`${document.uri.toString()} is not parsed yet.`);
        }
        return source;
    }

    /** Analyses of the surveys a file belongs to; a file that no survey uses is a survey of its own. */
    analysesOf(uri: URI | string): Analysis[] {
        const files = this.files();
        return mainFilesOf(uri.toString(), files).map(main => this.analysis(main, files)).filter(a => a !== undefined);
    }

    /** The analysis of the first survey a file belongs to. */
    analysisOf(uri: URI | string): Analysis | undefined {
        return this.analysesOf(uri)[0];
    }

    private analysis(main: string, files: ReadonlyMap<string, SourceFile>): Analysis | undefined {
        if (!files.has(main)) {
            return undefined;
        }
        const roots = closureOf(main, files).map(file => file.root);
        const kept = this.kept.get(main);
        if (kept && kept.roots.length === roots.length && kept.roots.every((root, i) => root === roots[i])) {
            return kept.analysis;
        }
        const analysis = analyseSurvey(main, files, this.outside.get(main));
        this.kept.set(main, { roots, analysis });
        return analysis;
    }

    /** Whether the problems of a file may change when other files do. */
    dependsOn(uri: string, changed: ReadonlySet<string>): boolean {
        const files = this.files();
        return mainFilesOf(uri, files).some(main => closureOf(main, files).some(file => changed.has(file.uri) || usesOf(file).some(use => changed.has(use))));
    }

    /** Addresses that the surveys of the files given use and that are not among the parsed files. */
    usedButUnread(uris: Iterable<string>): Set<string> {
        const files = this.files();
        return new Set([...uris].flatMap(uri => mainFilesOf(uri, files)).flatMap(main => closureOf(main, files)).flatMap(usesOf).filter(use => !files.has(use)));
    }

    /** Every file of the surveys that the files given belong to. */
    surveyFilesOf(uris: Iterable<string>): Set<string> {
        const files = this.files();
        const all = new Set<string>();
        for (const uri of uris) {
            for (const main of mainFilesOf(uri, files)) {
                closureOf(main, files).forEach(file => all.add(file.uri));
            }
        }
        return all;
    }
}
