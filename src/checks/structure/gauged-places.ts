/** Where plating was gauged: plates by their own facts, and the rows of a table of thickness. */
import { flagOf, isKind, materialOf, ofKind, rowsOf, siOf, valuesOf, wordOf, type Component, type Material, type Reading, type Row, type Span, type SurveyRecord } from '../../record/model.js';
import { meanOf } from '../../trade/wastage.js';

export interface GaugedPlace {
    /** How it is called in a sentence: the row's label, nothing for a plate by its own facts. */
    readonly label?: string;
    readonly originalM?: number;
    /** Mean of the readings. */
    readonly gaugedM?: number;
    readonly leastM?: number;
    readonly pitM?: number;
    readonly at: Span;
}

/** Places that are judged and answered together: one plate, or the rows of one table. */
export interface Gauging {
    readonly components: readonly Component[];
    readonly reading?: Reading;
    /** The one plate concerned, where there is one. */
    readonly plate?: Component;
    readonly isLight: boolean;
    readonly pits: string | undefined;
    readonly basis: string | undefined;
    readonly places: readonly GaugedPlace[];
    readonly at: Span;
}

/** Everything that was gauged. A plate that a table speaks of keeps only its pits and its least thickness to itself. */
export function gaugings(record: SurveyRecord): Gauging[] {
    const tables = tablesOf(record);
    const tabled = new Set(tables.filter(table => table.places.some(({ originalM }) => originalM !== undefined)).flatMap(table => table.components));
    return [...ofKind(record, 'plate').map(plate => byFacts(plate, tabled.has(plate))), ...tables];
}

function byFacts(plate: Component, isTabled: boolean): Gauging {
    const [originalM, gaugedM, leastM, pitM] = [siOf(plate, 'original-thickness'), siOf(plate, 'thickness'), siOf(plate, 'least-thickness'), siOf(plate, 'pit-depth')];
    const at = (gaugedM === undefined || isTabled ? plate.facts.get('pit-depth') : plate.facts.get('thickness'))?.span ?? plate.idSpan;
    return {
        components: [plate], plate, isLight: flagOf(plate, 'lightly-built') ?? false, pits: wordOf(plate, 'pits'), basis: wordOf(plate, 'original-basis'), at,
        places: [{
            ...(originalM === undefined ? {} : { originalM }), ...(gaugedM === undefined || isTabled ? {} : { gaugedM }),
            ...(leastM === undefined || isTabled ? {} : { leastM }), ...(pitM === undefined ? {} : { pitM }), at,
        }],
    };
}

function tablesOf(record: SurveyRecord): Gauging[] {
    const byReading = new Map<Reading, Row<'thickness-row'>[]>();
    for (const { reading, row } of rowsOf(record, 'thickness')) {
        if (isOfMetal(record, reading)) {
            byReading.set(reading, [...byReading.get(reading) ?? [], row]);
        }
    }
    return [...byReading].map(([reading, rows]) => {
        const [plate, ...others] = reading.on.filter(component => isKind(record, component, 'plate'));
        const only = others.length === 0 ? plate : undefined;
        return {
            components: reading.on, reading, ...(only ? { plate: only } : {}), at: reading.idSpan,
            isLight: reading.on.some(component => flagOf(component, 'lightly-built') === true),
            pits: only ? wordOf(only, 'pits') : undefined,
            basis: wordOf(reading, 'original-basis') ?? (only ? wordOf(only, 'original-basis') : undefined),
            places: rows.map(row => placeOf(row, only)),
        };
    });
}

function placeOf(row: Row<'thickness-row'>, plate: Component | undefined): GaugedPlace {
    const originalM = siOf(row, 'original') ?? (plate ? siOf(plate, 'original-thickness') : undefined);
    const gaugedM = meanOf(valuesOf(row, 'reading').flatMap(value => value.type === 'quantity' ? [value.si] : []));
    const leastM = plate ? siOf(plate, 'least-thickness') : undefined;
    const pitM = siOf(row, 'pit');
    return {
        label: row.label, at: row.span, ...(originalM === undefined ? {} : { originalM }), ...(gaugedM === undefined ? {} : { gaugedM }),
        ...(leastM === undefined ? {} : { leastM }), ...(pitM === undefined ? {} : { pitM }),
    };
}

/** Whether a table of thickness is of metal, as far as the record tells. Laminate and planks do not waste as plate does. */
function isOfMetal(record: SurveyRecord, reading: Reading): boolean {
    const ofVessel = record.vessel?.facts.get('hull-material')?.values[0];
    const materials: readonly (Material | undefined)[] = reading.on.length === 0 ? [undefined] : reading.on.map(materialOf);
    return reading.on.some(component => isKind(record, component, 'plate'))
        || !materials.some(material => !(material?.isMetal ?? (ofVessel?.type === 'material' ? ofVessel.material.isMetal : true)))
        && !reading.on.some(component => isKind(record, component, 'plank') || isKind(record, component, 'deck') && materialOf(component)?.isMetal !== true);
}
