/** What kind of craft she is, as far as checks of her figures need it, and her figures read in another unit. */
import { ofKind, wordOf, type Quantity, type SurveyRecord, type Vessel } from '../../record/model.js';
import { parseFigure } from '../../quantities/index.js';

const powerTypes: ReadonlySet<string> = new Set(['motor-yacht', 'gasoline-cruiser', 'houseboat', 'aluminum-workboat', 'rigid-inflatable']);

export const typeOf = (vessel: Vessel): string | undefined => wordOf(vessel, 'type');

/** Hulls she has, where her type tells it; a trimaran's are unequal, so they are not counted. */
export function hullsOf(vessel: Vessel): 1 | 2 | undefined {
    const type = typeOf(vessel);
    return type === 'trimaran' ? undefined : type === 'catamaran' ? 2 : 1;
}

export const isMultihull = (vessel: Vessel): boolean => hullsOf(vessel) !== 1;

/** Whether her type is one without sails and keel, and no mast or sail is recorded. */
export function isPower(record: SurveyRecord, vessel: Vessel): boolean {
    return powerTypes.has(typeOf(vessel) ?? '') && !isRigged(record);
}

export function isRigged(record: SurveyRecord): boolean {
    return ofKind(record, 'mast').length + ofKind(record, 'sail').length > 0;
}

/** Whether a leg or outboard engine hangs below the hull and may be counted in the draft. */
export function hasDrive(record: SurveyRecord, vessel: Vessel): boolean {
    return typeOf(vessel) === 'rigid-inflatable' || (['outdrive', 'outboard', 'saildrive'] as const).some(kind => ofKind(record, kind).length > 0);
}

export const isBox = (vessel: Vessel): boolean => typeOf(vessel) === 'houseboat' || wordOf(vessel, 'tonnage-form') === 'box';

/** The number of a figure with other units behind it, as texts that can be read; none of ranges, or of feet and inches. */
export function inOtherUnits({ figure }: Quantity, others: readonly string[]): readonly { readonly text: string; readonly si: number }[] {
    const number = /^\d[\d.]*(?=\s*[A-Za-z/]+$)/.exec(figure.written)?.[0];
    return number === undefined ? [] : others.filter(unit => unit !== figure.unit).flatMap(unit => {
        const read = parseFigure(`${number} ${unit}`);
        return read.ok && read.figure.kind === 'quantity' ? [{ text: `${number} ${unit}`, si: read.figure.si }] : [];
    });
}
