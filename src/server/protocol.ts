/** Requests beyond the language server protocol, shared by server and client. Types only: no host is imported. */
import type { OutputForm } from '../host/forms.js';
import type { DocumentKind } from '../report/documents.js';

export type { DocumentKind, OutputForm };

/** What forms on paper need to be told, from the user's settings. */
interface PrintParams {
    readonly paper?: 'a4' | 'letter';
    /** Program that prints PDFs; one is looked for where left out. */
    readonly browser?: string;
    /** Token under which the server tells what goes on, as text. */
    readonly progress?: string;
}

export interface WriteParams extends PrintParams {
    readonly uri: string;
    readonly document: DocumentKind;
    readonly forms: readonly OutputForm[];
    /** Folder beside the survey's main file. */
    readonly folder: string;
}

/** Why nothing came of it. `no-browser` can be mended by a setting. */
export interface NotDone {
    readonly state: 'stopped' | 'no-survey' | 'no-browser' | 'failed';
    readonly message: string;
}

export type WriteResult = NotDone | {
    readonly state: 'written';
    readonly paths: readonly string[];
    readonly openErrors: number;
    readonly photoFaults: readonly string[];
};

export interface IssueParams extends PrintParams {
    readonly uri: string;
    readonly forms: readonly OutputForm[];
    readonly signedBy: string;
    /** ISO date of issue where the survey gives none. */
    readonly today: string;
}

export type IssueAnswer = NotDone
    | { readonly state: 'refused'; readonly refusals: readonly Refused[] }
    | { readonly state: 'issued'; readonly folder: string; readonly name: string; readonly manifestSha256: string };

/** A reason not to issue; with an address where it can be mended in a file. Line and character count from 0. */
export interface Refused {
    readonly message: string;
    readonly at?: { readonly uri: string; readonly line: number; readonly character: number };
}

/** A survey that a file belongs to. */
export interface SurveyOfFile {
    /** Address of its main file. */
    readonly uri: string;
    readonly number: string;
    readonly vessel: string;
}

export interface SignersResult {
    /** Surveyor and reviewer; empty where the survey names no surveyor, so that anybody may sign. */
    readonly names: readonly string[];
    readonly openErrors: number;
    /** Addresses of the survey's files. */
    readonly files: readonly string[];
}

export interface VerifyAnswer {
    readonly issues: readonly { readonly folder: string; readonly name: string; readonly verdict: 'unchanged' | 'changed' | 'unreadable'; readonly faults: readonly string[] }[];
}

export interface ReportParams {
    readonly uri: string;
    /** `preview` carries source positions for the editor; `file` is what is sent to the client. */
    readonly mode: 'preview' | 'file';
}

export interface ReportResult {
    readonly html: string;
    /** Address of the survey's main file. */
    readonly mainUri: string;
    /** Open problems and gaps of error severity: with any the report is a draft. */
    readonly openErrors: number;
    /** Photos that could not be read, each with the reason. */
    readonly photoFaults: readonly string[];
}

export interface OpenProblem {
    readonly uri: string;
    readonly line: number;
    readonly character: number;
    readonly severity: 'error' | 'warning' | 'info' | 'hint';
    readonly code: string;
    readonly message: string;
    readonly components: readonly string[];
}

export interface ProblemsResult {
    readonly problems: readonly OpenProblem[];
    readonly answered: number;
    readonly findings: number;
}

export const requests = {
    report: 'garboard/report',
    problems: 'garboard/problems',
    catalogue: 'garboard/catalogue',
    explain: 'garboard/explain',
    draftAll: 'garboard/draftAll',
    newSurvey: 'garboard/newSurvey',
    write: 'garboard/write',
    surveys: 'garboard/surveys',
    signers: 'garboard/signers',
    issue: 'garboard/issue',
    verify: 'garboard/verify',
} as const;
