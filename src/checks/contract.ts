/**
 * The contract of a check: its identity, documentation, logic, corrections and examples, all in one file a check.
 *
 * A check reads the record and raises problems. It knows neither the syntax tree nor an editor: a correction is
 * data that the editor turns into text.
 */
import type { FactsOf } from '../record/generated/kinds.js';
import type { Component, Finding, Joint, OutsideFacts, PhotoFacts, Run, Span, SurveyRecord } from '../record/model.js';

export type Severity = 'error' | 'warning' | 'info' | 'hint';

export type Provenance = 'published' | 'secondary' | 'computed' | 'memory' | 'practice' | 'chosen';

/** Words of urgency (a due event, not a grade); `flood-critical` is resolved by where she lies. */
export type Urgency =
    | 'at-once' | 'before-launch' | 'before-departure' | 'before-use' | 'before-completion' | 'within-days'
    | 'next-haul-out' | 'in-upkeep' | 'keep-watch' | 'note-only';

export interface Source {
    /** What is relied on, in a few words: "two clamps on wet exhaust hose". */
    readonly text: string;
    /** Name of a standard in the catalogue, where there is one. */
    readonly standard?: string;
    readonly clause?: string;
    readonly provenance: Provenance;
}

/** A figure behind a problem: the value in the unit named, for machines and for the explanation. */
export interface ProblemFigure {
    readonly value: number;
    readonly unit: string;
}

/**
 * A change to the record that would put a fact right. `isStep` marks one that only readies it, as a place for a reason
 * that is still to be written: the problem stays until that is done.
 */
export type Correction = { readonly isStep?: boolean } & (
    /** Add or replace a property of a component. */
    | { readonly kind: 'set-fact'; readonly title: string; readonly component: Component; readonly property: string; readonly value: string }
    /** Add or replace a property at a joint of a run. */
    | { readonly kind: 'set-joint-fact'; readonly title: string; readonly joint: Joint; readonly property: string; readonly value: string }
    /** Put a new component between the two parts of a joint and declare it. */
    | { readonly kind: 'insert-in-run'; readonly title: string; readonly joint: Joint; readonly componentKind: string; readonly idStem: string; readonly facts: readonly (readonly [property: string, value: string])[] }
    /** Change how a run ends, as `open` into `capped`. */
    | { readonly kind: 'end-run'; readonly title: string; readonly run: Run; readonly end: 'capped' | 'blanked' | 'open' }
    /** Add or replace a fact of the vessel. */
    | { readonly kind: 'set-vessel-fact'; readonly title: string; readonly property: string; readonly value: string }
    /** Add or replace a fact of the survey block. */
    | { readonly kind: 'set-survey-fact'; readonly title: string; readonly property: string; readonly value: string }
    /** Add lines to the survey block: what could not be seen, or is not aboard. */
    | { readonly kind: 'add-to-survey'; readonly title: string; readonly text: readonly string[] }
    /** Add a statement at the end of the main file. */
    | { readonly kind: 'add-statement'; readonly title: string; readonly lines: readonly string[] }
    /** Add or replace a property of a finding. */
    | { readonly kind: 'set-finding-fact'; readonly title: string; readonly finding: Finding; readonly property: string; readonly value: string }
    /** Declare a component of a kind in the system of another. */
    | { readonly kind: 'declare'; readonly title: string; readonly beside: Component; readonly componentKind: string; readonly idStem: string; readonly facts: readonly (readonly [property: string, value: string])[] }
    /** Replace a stretch of text, where nothing more telling fits. */
    | { readonly kind: 'replace-text'; readonly title: string; readonly span: Span; readonly text: string });

/** What a finding drafted for the problem says. Braces refer to facts: write `{H9.bore}`, never the number. */
export interface Draft {
    readonly title: string;
    readonly urgency: Urgency;
    /** Number of days where urgency is `within-days`. */
    readonly days?: number;
    readonly seen: string;
    readonly because: string;
    readonly recommend: string;
    /** Citations as [standard, clause] in the catalogue's names. */
    readonly cites?: readonly (readonly [standard: string, clause?: string])[];
}

export interface Raised {
    /** The components concerned, the one at fault first. */
    readonly components: readonly Component[];
    /** The finding whose words are at fault, where the problem is in the report itself. */
    readonly finding?: Finding;
    /** The smallest text that is wrong. */
    readonly at: Span;
    /** What is wrong with its figures; why it matters; how to put it right. One or two sentences. */
    readonly message: string;
    readonly figures?: Readonly<Record<string, ProblemFigure>>;
    readonly related?: readonly { readonly message: string; readonly span: Span }[];
    readonly corrections?: readonly Correction[];
    /** A lower severity than the check's own: 'warning' for advice, 'hint' when a fact is missing. */
    readonly severity?: Severity;
    /** Wording of a drafted finding; left out only for hints, which ask for a fact. */
    readonly draft?: Draft;
}

/** The report that an example's survey follows, and its own last issue. */
export type IssuedBefore = Pick<OutsideFacts, 'followed' | 'lastIssue'>;

export interface Example {
    readonly name: string;
    /** Raises exactly this check (one or more times) and no other. */
    readonly bad: string;
    /** The same survey put right: raises nothing of this check. */
    readonly fixed: string;
    /** What is known of the photographs named, where the check reads it. */
    readonly photos?: Readonly<Record<string, PhotoFacts>>;
    /** The reports issued before, where the check reads them. */
    readonly issued?: IssuedBefore;
    /** Title of the correction that turns `bad` into `fixed`, where one does. */
    readonly correction?: string;
}

/** Neighbours where the check must stay silent. */
export interface SilentExample {
    readonly name: string;
    readonly text: string;
    readonly photos?: Readonly<Record<string, PhotoFacts>>;
    readonly issued?: IssuedBefore;
}

export interface Check {
    readonly id: string;
    /** Earlier ids, still accepted in answers. */
    readonly aliases?: readonly string[];
    readonly group: 'fit' | 'metals' | 'openings' | 'hoses' | 'shaft' | 'fuel' | 'ventilation' | 'exhaust' | 'engine' | 'electrical' | 'bilge' | 'gas' | 'safety'
        | 'sanitation' | 'structure' | 'rig' | 'deck' | 'papers' | 'particulars' | 'valuation' | 'record' | 'wording';
    readonly severity: Severity;
    /** Concerns the report and not the vessel: it is put right in the text or accepted, and no finding is drafted for it. */
    readonly isOfReport?: boolean;
    /** Keeps silent where another check speaks of the same text: the trouble is told once, by whoever knows more. */
    readonly yields?: boolean;
    readonly title: string;
    /** Why it matters, in a sentence. */
    readonly why: string;
    /** The facts it needs. */
    readonly needs: readonly string[];
    /** What it computes, with the formula. */
    readonly computes: string;
    readonly sources: readonly Source[];
    /** Limits it judges by that a firm may set in its house file. */
    readonly yardsticks?: readonly (keyof FactsOf<'yardsticks'> & string)[];
    /** What it cannot know, and known misses. */
    readonly limits: readonly string[];
    readonly examples: readonly Example[];
    readonly silent: readonly SilentExample[];
    readonly run: (record: SurveyRecord, raise: (problem: Raised) => void) => void;
}

/** A problem as raised, with its check. */
export interface Problem extends Raised {
    readonly check: Check;
    readonly severity: Severity;
    /** Id of the finding, or `accept`, that answers it. */
    readonly answeredBy?: string;
}

export function defineCheck(check: Check): Check {
    return check;
}
