/**
 * Hull identification numbers, 33 CFR 181.25 (published): 12 characters, no dash or space; three of the maker, five of
 * the serial (never I, O, Q), then the date in one of three forms. A country prefix stands outside the twelve. The
 * order of decoding and the rule of centuries are chosen here.
 */

export type HullNumberForm = 'current' | 'model-year' | 'straight-year';

export type HullNumber =
    | { readonly ok: true; readonly form: HullNumberForm; readonly maker: string; readonly serial: string; readonly month: number; readonly builtYear: number; readonly modelYear?: number }
    | { readonly ok: false; readonly problem: 'length' | 'maker' | 'serial' | 'date'; readonly detail: string };

const century = (two: number): number => two >= 72 ? 1900 + two : 2000 + two;

/** The two older forms ran from November 1972 to July 1984, the end of model year 1984; a year more is let pass (published; the leeway chosen). */
const lastOldYear = 1984;
const lastOldModelYear = 1985;

/** The present form began on 1 August 1984 (published). */
const firstCurrentYear = 1984;

/** A model year this far ahead of the day of reading is a misreading (chosen). */
const modelYearsAhead = 2;

/** The twelve characters: country prefix, blanks and hyphens left out; the prefix US also where no hyphen stands after it. */
export function bareHullNumber(written: string): string {
    return written.toUpperCase().replace(/^\s*[A-Z]{2}-(?=\S)/, '').replace(/[\s-]/g, '').replace(/^US(?=[A-Z0-9]{12}$)/, '');
}

/** Reads a number; with the year of reading given, a model year far ahead of it is told as none. */
export function decodeHullNumber(written: string, yearOfReading?: number): HullNumber {
    const text = bareHullNumber(written);
    if (text.length !== 12) {
        return { ok: false, problem: 'length', detail: `it has ${text.length} characters, where 12 are due` };
    }
    const maker = text.slice(0, 3);
    const serial = text.slice(3, 8);
    const date = text.slice(8);
    if (!/^[A-Z0-9]{3}$/.test(maker)) {
        return { ok: false, problem: 'maker', detail: `${maker} is no maker’s code` };
    }
    if (!/^[A-HJ-NPR-Z0-9]{5}$/.test(serial)) {
        return { ok: false, problem: 'serial', detail: `its serial ${serial} holds a letter I, O or Q, or a sign` };
    }
    const base = { ok: true as const, maker, serial };
    const current = /^([A-L])(\d)(\d\d)$/.exec(date);
    if (current) {
        const modelYear = century(Number(current[3]));
        const digit = Number(current[2]);
        // The latest year not after the model year that ends in the digit; a boat is built at most two years before.
        let builtYear = modelYear - ((modelYear - digit) % 10 + 10) % 10;
        if (modelYear - builtYear > 2) {
            builtYear = (modelYear + 1) % 10 === digit ? modelYear + 1 : Number.NaN;
        }
        if (Number.isNaN(builtYear)) {
            return { ok: false, problem: 'date', detail: `a boat of model year ${modelYear} was not built in a year that ends in ${digit}` };
        }
        if (builtYear < firstCurrentYear) {
            return { ok: false, problem: 'date', detail: `its last four, ${date}, are in a form that began in August 1984, and give ${builtYear}` };
        }
        if (yearOfReading !== undefined && modelYear > yearOfReading + modelYearsAhead) {
            return { ok: false, problem: 'date', detail: `its last four, ${date}, give the model year ${modelYear}, which lies ahead` };
        }
        return { ...base, form: 'current', month: (current[1] ?? 'A').charCodeAt(0) - 64, builtYear, modelYear };
    }
    const model = /^M(\d\d)([A-L])$/.exec(date);
    if (model) {
        // A is August of the year before the model year, L its July.
        const order = (model[2] ?? 'A').charCodeAt(0) - 65;
        const modelYear = century(Number(model[1]));
        if (modelYear > lastOldModelYear) {
            return { ok: false, problem: 'date', detail: `its last four, ${date}, are in a form that ended with July 1984` };
        }
        return { ...base, form: 'model-year', month: (order + 7) % 12 + 1, builtYear: order < 5 ? modelYear - 1 : modelYear, modelYear };
    }
    const straight = /^(0[1-9]|1[0-2])(\d\d)$/.exec(date);
    if (straight) {
        const builtYear = century(Number(straight[2]));
        if (builtYear > lastOldYear) {
            return { ok: false, problem: 'date', detail: `its last four, ${date}, are in a form that ended with July 1984` };
        }
        return { ...base, form: 'straight-year', month: Number(straight[1]), builtYear };
    }
    return { ok: false, problem: 'date', detail: `its last four, ${date}, are a date in none of the published forms` };
}
