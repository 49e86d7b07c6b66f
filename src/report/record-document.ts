/**
 * The whole record of a survey as plain JSON: what `report --to json` writes and what an issue freezes. Published as
 * `record-output.schema.json`; a field is only ever added within a version, never renamed or given another meaning.
 */
import type { ListedProblem } from './problem-list.js';

/** A number. `si` is in `unit`, an SI unit; money is in `currency`. */
export interface RecordQuantity {
    readonly type: 'quantity';
    /** As the surveyor wrote it. */
    readonly written: string;
    /** As the report prints it, in both unit systems where there are two. */
    readonly text: string;
    readonly dimension: string;
    readonly si: number;
    /** SI unit of `si`, `low`, `high` and `tolerance`; `1` for plain numbers and shares. */
    readonly unit?: string;
    /** ISO 4217 code of an amount of money; without one none was written. */
    readonly currency?: string;
    readonly low?: number;
    readonly high?: number;
    readonly tolerance?: number;
}

export type RecordValue =
    | RecordQuantity
    /** `date` is 2026-10-06, 2026-10 or 2026. */
    | { readonly type: 'date'; readonly written: string; readonly text: string; readonly date: string }
    | { readonly type: 'word'; readonly word: string; readonly text: string; readonly amount?: RecordQuantity }
    | { readonly type: 'material'; readonly material: string; readonly text: string }
    | { readonly type: 'component'; readonly component: string; readonly text: string }
    | { readonly type: 'person'; readonly person: string; readonly text: string }
    /** `written` has the references in braces that `text` resolves; left out where there are none. */
    | { readonly type: 'text'; readonly text: string; readonly written?: string }
    | { readonly type: 'citation'; readonly standard: string; readonly clause?: string; readonly text: string }
    | { readonly type: 'check'; readonly check: string; readonly text: string };

/** Recorded properties with their values, mostly one. */
export type RecordFacts = Readonly<Record<string, readonly RecordValue[]>>;

export interface RecordMark {
    readonly shape: 'arrow' | 'ring' | 'box' | 'label';
    readonly label?: string;
    /** Shares of the upright picture's width and height from its upper left corner. */
    readonly points: readonly { readonly across: number; readonly down: number }[];
    /** Share of the width. */
    readonly radius?: number;
}

export interface RecordPhoto {
    readonly file: string;
    readonly caption?: string;
    readonly marks: readonly RecordMark[];
    /** By the camera's clock, without a zone: 2026-10-06T14:05:00. */
    readonly taken?: string;
    /** Where the camera says it stood, in degrees, north and east positive. */
    readonly position?: { readonly latitude: number; readonly longitude: number };
    /** Digest of the picture file, where it was taken when the report was issued. */
    readonly sha256?: string;
}

export interface RecordComponent {
    readonly id: string;
    readonly kind: string;
    readonly kindTitle: string;
    readonly title?: string;
    /** Id of the system it is recorded in. */
    readonly system?: string;
    readonly facts: RecordFacts;
    readonly notes: readonly string[];
    readonly photos: readonly RecordPhoto[];
}

export interface RecordRun {
    readonly id: string;
    readonly title?: string;
    readonly system?: string;
    readonly facts: RecordFacts;
    /** Ids in the order of the run. */
    readonly components: readonly string[];
    /** Neighbors; `fromEnd` and `toEnd` say which end of a part with two different ends meets the other, 0 the first. */
    readonly joints: readonly { readonly from: string; readonly to: string; readonly fromEnd: 0 | 1; readonly toEnd: 0 | 1; readonly facts: RecordFacts }[];
    readonly end: 'component' | 'open' | 'capped' | 'blanked';
}

export interface RecordRow {
    readonly label: string;
    /** In the order written; `value` is null where the cell is left empty. */
    readonly cells: readonly { readonly column?: string; readonly value: RecordValue | null }[];
    /** What follows from the row, each with its formula. */
    readonly computed: readonly { readonly name: string; readonly title: string; readonly dimension: string; readonly si: number; readonly text: string; readonly formula: string }[];
}

export interface RecordReading {
    readonly id: string;
    readonly title?: string;
    readonly system?: string;
    readonly on: readonly string[];
    readonly facts: RecordFacts;
    readonly rows: readonly RecordRow[];
}

export interface RecordFinding {
    /** Its number, which never changes. */
    readonly id: string;
    readonly title: string;
    readonly system?: string;
    readonly on: readonly string[];
    /** Checks that it answers. */
    readonly answers: readonly string[];
    readonly facts: RecordFacts;
    /** When it is due, in words. */
    readonly due: string;
    /** ISO date, where it follows from the date of issue. */
    readonly dueDate?: string;
    readonly notes: readonly string[];
    readonly photos: readonly RecordPhoto[];
}

export interface RecordAcceptance {
    readonly check: string;
    readonly on: readonly string[];
    /** Findings whose own words are accepted. */
    readonly onFindings: readonly string[];
    readonly reason: string;
    readonly system?: string;
}

/** What could not be seen, or (`isAbsent`) is not fitted. */
export interface RecordUnseen {
    readonly what: string;
    readonly isAbsent: boolean;
    readonly part?: string;
    readonly reason?: string;
    readonly system?: string;
}

export interface RecordMoney {
    readonly amount: number;
    readonly currency: string;
}

export interface RecordComparable {
    readonly id: string;
    readonly title?: string;
    readonly facts: RecordFacts;
    readonly price?: RecordMoney;
    /** Whether the price was only asked. */
    readonly isAsked: boolean;
    /** `amount` is in the currency of the price; `written` as the surveyor wrote it. */
    readonly adjustments: readonly { readonly reason: string; readonly written?: string; readonly amount?: number }[];
    /** Price and adjustments added up. */
    readonly sum?: number;
    /** Adjusted price that is reckoned with. */
    readonly adjusted?: number;
    readonly weight?: number;
    /** Size of all adjustments, and of their sum, over the price. */
    readonly grossShare?: number;
    readonly netShare?: number;
}

export interface RecordValuation {
    readonly title?: string;
    readonly facts: RecordFacts;
    readonly comparables: readonly RecordComparable[];
    /** Adjusted prices times weights, added up, where every comparable has both in one currency. */
    readonly weighed?: { readonly amount: number; readonly currency: string; readonly weights: number };
}

export interface RecordDocument {
    readonly version: 1;
    /** Stamp of the issue; null for a record that is not issued. */
    readonly issue: { readonly number: number; readonly date: string; readonly signedBy?: string } | null;
    readonly survey: {
        readonly number?: string;
        readonly kind?: string;
        readonly facts: RecordFacts;
        readonly attendances: readonly { readonly date?: string; readonly state?: 'ashore' | 'afloat'; readonly place?: string }[];
        readonly photos: readonly RecordPhoto[];
    } | null;
    readonly vessel: { readonly name: string; readonly facts: RecordFacts; readonly notes: readonly string[]; readonly photos: readonly RecordPhoto[] } | null;
    readonly systems: readonly { readonly id: string; readonly title: string }[];
    readonly components: readonly RecordComponent[];
    readonly runs: readonly RecordRun[];
    readonly contacts: readonly { readonly components: readonly string[]; readonly facts: RecordFacts }[];
    readonly readings: readonly RecordReading[];
    readonly findings: readonly RecordFinding[];
    readonly acceptances: readonly RecordAcceptance[];
    readonly unseen: readonly RecordUnseen[];
    readonly valuations: readonly RecordValuation[];
    /** Facts that are computed from recorded ones, by the name that prose gives them: `TH4.flooding-rate`. */
    readonly computed: Readonly<Record<string, string>>;
    /** As `garboard check --format json` lists them, answered ones too. */
    readonly problems: readonly ({ readonly file: string } & ListedProblem)[];
    /** Limits where practice differs that a problem was judged by, or that the firm has set. */
    readonly yardsticks: readonly { readonly name: string; readonly about: string; readonly written: string; readonly isFirms: boolean }[];
    /** Standards that findings cite. */
    readonly standards: readonly { readonly name: string; readonly title: string; readonly facts: RecordFacts }[];
    readonly firm: { readonly name: string; readonly facts: RecordFacts } | null;
    /** People whom the survey names. */
    readonly people: readonly { readonly id: string; readonly name: string; readonly facts: RecordFacts }[];
    /** Files that the record was read from, by their path beside the main file, which comes first. */
    readonly files: readonly string[];
}
