/** Requests beyond the language server protocol, shared by server and client. Types only: no host is imported. */

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
} as const;
