/** Figures in prose with a conversion behind them in parentheses: "5/32 in (4.0 mm)". */
import { parseFigure, units, type Dimension, type QuantityFigure } from '../../quantities/index.js';
import { isSameNominalSize } from '../../trade/hose-fit.js';
import { conversionAgrees, writtenStep, type WrittenFigure } from '../../trade/plausible-particulars.js';
import { figuresIn } from '../wording/sentences.js';

export interface Conversion {
    readonly figure: QuantityFigure;
    readonly conversion: QuantityFigure;
    /** Where the converted figure stands, and its length. */
    readonly index: number;
    readonly length: number;
}

/** Dimensions that are written in two systems; money, dates and bare numbers are not converted. */
const converted: ReadonlySet<Dimension> = new Set(['length', 'area', 'volume', 'mass', 'temperature', 'pressure', 'flow', 'speed', 'power', 'force', 'torque']);

function quantityIn(text: string): QuantityFigure | undefined {
    const read = parseFigure(text);
    const figure = read.ok ? read.figure : thousandsOff(text);
    return figure?.kind === 'quantity' && converted.has(figure.dimension) ? figure : undefined;
}

/** The same with the commas of thousands left out, which the language does not write and prose does. */
function thousandsOff(text: string) {
    const read = /^\d{1,3}(?:,\d{3})+(?=\D)/.test(text) ? parseFigure(text.replace(/(?<=\d),(?=\d{3})/g, '')) : undefined;
    return read?.ok ? read.figure : undefined;
}

/** Whether the second is the first in the other system of units, or knots beside miles or kilometers. */
function isOtherSystem(a: QuantityFigure, b: QuantityFigure): boolean {
    const [first, second] = [units.get(a.unit)?.system, units.get(b.unit)?.system];
    return a.dimension === b.dimension && a.unit !== b.unit && first !== undefined && second !== undefined && (first !== second || (a.dimension === 'speed' && (a.unit === 'kn' || b.unit === 'kn')));
}

/** Figures of a text with the figure in parentheses right behind them, in the other system of units. */
export function conversionsIn(said: string): readonly Conversion[] {
    if (!/\d\D*\([^)]*\d/.test(said)) {
        return [];
    }
    const figures = figuresIn(said);
    return figures.flatMap(({ text, index }): Conversion[] => {
        const behind = /^\s*\(\s*(?:about\s+|approx\.?\s+|or\s+|ca\.?\s+|=\s*|~\s*|≈\s*)?/.exec(said.slice(index + text.length));
        const at = index + text.length + (behind?.[0].length ?? 0);
        const inside = behind ? figures.find(other => other.index === at) : undefined;
        if (!inside || !/^\s*\)/.test(said.slice(at + inside.text.length))) {
            return [];
        }
        const [figure, conversion] = [quantityIn(text), quantityIn(inside.text)];
        return figure && conversion && isOtherSystem(figure, conversion) ? [{ figure, conversion, index: at, length: inside.text.length }] : [];
    });
}

/** The last part of a written figure decides how finely it is written: inches of feet and inches, either end of a range. */
function fineness(figure: QuantityFigure): WrittenFigure['stepSi'] {
    const parts = [...figure.written.matchAll(/([\d.,½¼¾⅓⅔⅛⅜⅝⅞/-]*\d[\d.,/½¼¾⅛⅜⅝⅞-]*|[½¼¾⅓⅔⅛⅜⅝⅞])\s*([^\d\s]+)?/g)];
    const last = parts.at(-1);
    const unit = units.get(last?.[2] ?? '') ?? units.get(figure.unit);
    const step = writtenStep(last?.[1] ?? '');
    return { last: step.last * (unit?.factor ?? 0), rounded: step.rounded * (unit?.factor ?? 0) };
}

/** Whether a conversion says what its figure says; both ends of a range count. */
export function isConversionRight({ figure, conversion }: Conversion): boolean {
    if (figure.dimension === 'length' && isSameNominalSize(figure.si, conversion.si)) {
        return true;
    }
    const ends = ({ si, low, high }: QuantityFigure) => low !== undefined && high !== undefined ? [low, high] : [si];
    const [theirs, ours] = [ends(figure), ends(conversion)];
    const [a, b] = [fineness(figure), fineness(conversion)];
    return theirs.length === ours.length && theirs.every((si, end) => conversionAgrees({ si, stepSi: a }, { si: ours[end] ?? Number.NaN, stepSi: b }, figure.dimension !== 'temperature'));
}
