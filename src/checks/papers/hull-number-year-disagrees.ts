/** Years told by the hull number against the years stated of the vessel. */
import { decodeHullNumber } from '../../trade/hull-number.js';
import { siOf } from '../../record/model.js';
import { defineCheck, type Correction } from '../contract.js';
import { hullNumberOf } from './hull-number-fact.js';
import { listed } from '../phrasing.js';
import { beforeCompletion } from './urgency.js';

export const hullNumberYearDisagrees = defineCheck({
    id: 'hull-number-year-disagrees',
    group: 'papers',
    severity: 'error',
    title: 'Hull number and stated years disagree',
    why: 'A false year makes a false price.',
    needs: ['vessel: hull-number', 'vessel: built, model-year'],
    computes: 'Year of building and model year from the last four characters, against built and model-year. A year built from the number’s year of building to its model year agrees; a model year must be the same; a model year later than the year of building by more than one disagrees in itself.',
    sources: [
        { text: 'meaning of the last four characters', standard: '33 CFR 181', clause: '181.25', provenance: 'published' },
        { text: 'model year is that of building or the next', provenance: 'practice' },
    ],
    limits: ['The decade of the present form is taken from the model year.', 'In the model-year form of 1972 to 1984 both readings of the calendar year agree.', 'A number of no published form is left to hull-number-malformed.'],
    examples: [{
        name: 'built five years before the number says',
        bad: 'vessel "Marram" { hull-number: "ABC12345H495"  built: 1990 }\n',
        fixed: 'vessel "Marram" { hull-number: "ABC12345H495"  built: 1994 }\n',
        correction: 'Record her as built in 1994',
    }, {
        name: 'another model year',
        bad: 'vessel "Marram" { hull-number: "ABC12345H495"  model-year: 1996 }\n',
        fixed: 'vessel "Marram" { hull-number: "ABC12345H495"  model-year: 1995 }\n',
        correction: 'Record her model year as 1995',
    }],
    silent: [
        { name: 'built in the year of the number', text: 'vessel "Marram" { hull-number: "ABC12345H495"  built: 1994  model-year: 1995 }\n' },
        { name: 'model year stated as the year built', text: 'vessel "Marram" { hull-number: "ABC12345H495"  built: 1995 }\n' },
        { name: 'no year stated', text: 'vessel "Marram" { hull-number: "ABC12345H495" }\n' },
        { name: 'model-year form, by either reading', text: 'vessel "Marram" { hull-number: "ABC12345M78D"  built: 1978 }\n' },
        { name: 'no hull number', text: 'vessel "Marram" { built: 1990 }\n' },
    ],
    run(record, raise) {
        const number = hullNumberOf(record);
        const read = number && !number.isUnderOtherRule ? decodeHullNumber(number.written) : undefined;
        if (!number || !read?.ok || !record.vessel) {
            return;
        }
        const built = siOf(record.vessel, 'built');
        const model = siOf(record.vessel, 'model-year');
        const last = Math.max(read.builtYear, read.modelYear ?? read.builtYear);
        const differences: string[] = [];
        const corrections: Correction[] = [];
        if (built !== undefined && (built < Math.min(read.builtYear, last) || built > last)) {
            differences.push(`she is stated as built in ${built}, and the number says ${read.builtYear}`);
            corrections.push({ kind: 'set-vessel-fact', title: `Record her as built in ${read.builtYear}`, property: 'built', value: String(read.builtYear) });
        }
        if (model !== undefined && read.modelYear !== undefined && model !== read.modelYear) {
            differences.push(`her model year is stated as ${model}, and the number says ${read.modelYear}`);
            corrections.push({ kind: 'set-vessel-fact', title: `Record her model year as ${read.modelYear}`, property: 'model-year', value: String(read.modelYear) });
        }
        if (read.modelYear !== undefined && ![0, 1].includes(read.modelYear - read.builtYear)) {
            differences.push(`the number itself gives ${read.builtYear} as year of building and ${read.modelYear} as model year`);
        }
        if (differences.length === 0) {
            return;
        }
        const stated = [built === undefined ? '' : 'built in {vessel.built}', model === undefined ? '' : 'of model year {vessel.model-year}'].filter(s => s !== '');
        const says = `${read.builtYear} as year of building${read.modelYear === undefined ? '' : ` and ${read.modelYear} as model year`}`;
        raise({
            components: number.component ? [number.component] : [],
            at: number.fact.span,
            message: `Hull number ${number.written} disagrees with the years: ${listed(differences)}. A false year makes a false price; settle it from the papers.`,
            figures: { 'year built': { value: read.builtYear, unit: '' }, ...(read.modelYear === undefined ? {} : { 'model year': { value: read.modelYear, unit: '' } }) },
            related: ['built', 'model-year'].flatMap(property => {
                const fact = record.vessel?.facts.get(property);
                return fact ? [{ message: 'The year stated', span: fact.span }] : [];
            }),
            corrections,
            draft: {
                title: 'Hull number and stated years disagree',
                ...beforeCompletion(record),
                seen: `The hull number ${number.reference} gives ${says}${stated.length > 0 ? `; she is stated as ${listed(stated)}` : ''}.`,
                because: 'One of them is wrong, and price and papers rest on the year.',
                recommend: 'Read the number again on the transom and settle the year from the builder’s papers and the title.',
                cites: [['33 CFR 181', '181.25']],
            },
        });
    },
});
