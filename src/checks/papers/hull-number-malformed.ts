/** A hull identification number that none of the published forms explains. */
import { bareHullNumber, decodeHullNumber } from '../../trade/hull-number.js';
import { defineCheck, type Correction } from '../contract.js';
import { surveyedOn } from '../hoses/age.js';
import { hullNumberOf, rereading, type HullNumberFact } from './hull-number-fact.js';
import { beforeCompletion } from './urgency.js';

export const hullNumberMalformed = defineCheck({
    id: 'hull-number-malformed',
    group: 'papers',
    severity: 'error',
    title: 'Hull number is not of a published form',
    why: 'A number read wrongly, or altered, may belong to another boat.',
    needs: ['vessel: hull-number, or a hull-number with its text', 'vessel: built, to leave older boats alone'],
    computes: 'A country prefix, blanks and hyphens left out, 12 characters: 3 of the maker, 5 of the serial without I, O, Q, then month A to L and the year’s last digit with the model year; or, from 1972 to 1984, month and year in figures, or M, model year and month letter. A present form that gives a year before 1984, or a model year more than two years after the survey, is none.',
    sources: [
        { text: 'form of the number', standard: '33 CFR 181', clause: '181.25', provenance: 'published' },
        { text: 'order of decoding and centuries', provenance: 'chosen' },
    ],
    limits: [
        'Boats built in 1972 or before, and numbers under another country’s prefix, follow other rules and are left alone.',
        'Where the vessel records no number, the first one read on the hull is judged; others are compared with it by hull-number-vs-papers.',
        'A number of the right form may still be of another boat; only papers tell.',
    ],
    examples: [{
        name: 'letter O in the serial',
        bad: 'vessel "Marram" { hull-number: "ABC12O45A090"  built: 1990 }\n',
        fixed: 'vessel "Marram" { hull-number: "ABC12045A090"  built: 1990 }\n',
        correction: 'Read the letters in its serial as figures: ABC12045A090',
    }, {
        name: 'a character too few',
        bad: 'vessel "Marram" { hull-number: "ABC1245H495" }\n',
        fixed: 'vessel "Marram" { hull-number: "ABC12345H495" }\n',
    }],
    silent: [
        { name: 'present form', text: 'vessel "Marram" { hull-number: "ABC12345H495" }\n' },
        { name: 'with a country prefix', text: 'vessel "Marram" { hull-number: "US-ABC12345H495" }\n' },
        { name: 'September is I', text: 'vessel "Marram" { hull-number: "ABC12345I404" }\n' },
        { name: 'straight year', text: 'vessel "Marram" { hull-number: "ABC123451278" }\n' },
        { name: 'model-year form', text: 'vessel "Marram" { hull-number: "ABC12345M82H" }\n' },
        { name: 'boat of 1970', text: 'vessel "Marram" { hull-number: "4711"  built: 1970 }\n' },
        { name: 'boat of 1970 with no number', text: 'vessel "Marram" { built: 1970 }\n' },
        { name: 'read at a place on the hull', text: 'hull-number HN1 { mark: primary  text: "ABC12345H495" }\n' },
        { name: 'number of another country', text: 'vessel "Marram" { hull-number: "GBABC12345A090" }\n' },
    ],
    run(record, raise) {
        const number = hullNumberOf(record);
        if (!number || number.isUnderOtherRule) {
            return;
        }
        const read = decodeHullNumber(number.written, surveyedOn(record)?.year);
        if (read.ok) {
            return;
        }
        raise({
            components: number.component ? [number.component] : [],
            at: number.fact.span,
            message: `Hull number ${number.written} is not of a published form: ${read.detail}. A number read wrongly may be of another boat; read it again on the transom and photograph it.`,
            corrections: readings(number),
            draft: {
                title: 'Hull number is not of a published form',
                ...beforeCompletion(record),
                seen: `The hull number reads ${number.reference}: ${read.detail}.`,
                because: 'A number that follows none of the published forms was read wrongly, or altered, or belongs to another rule.',
                recommend: 'Read the number again on the transom and at its second place, photograph it, and ask the builder or the registrar where the readings differ.',
                cites: [['33 CFR 181', '181.25']],
            },
        });
    },
});

/** Other readings of the same signs that are of a published form. */
function readings(number: HullNumberFact): Correction[] {
    const { written } = number;
    const corrections: Correction[] = [];
    const offer = (title: string, text: string) => {
        if (text !== written && decodeHullNumber(text).ok) {
            corrections.push(rereading(number, `${title}: ${text}`, text));
        }
    };
    const signsOff = written.toUpperCase().replace(/[^A-Z0-9]/g, '');
    offer('Leave out the signs between', signsOff);
    const bare = bareHullNumber(written);
    offer('Read the letters in its serial as figures', bare.slice(0, 3) + bare.slice(3, 8).replaceAll('O', '0').replaceAll('I', '1').replaceAll('Q', '0') + bare.slice(8));
    return corrections;
}
