/** A tonnage on the certificate that does not come of her dimensions, or of its own gross figure. */
import { documentedFromNetTons, grossTons, netTons, tonsAgree, toTenthOfFootM, type HullForm } from '../../trade/tonnage.js';
import { flagOf, ofKind, siOf, valueOf, wordOf, type Fact, type Quantity, type SurveyRecord, type Vessel } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, listed } from '../phrasing.js';
import { hullsOf, inOtherUnits, isPower, typeOf } from './craft.js';

const forms: readonly HullForm[] = ['ship', 'sailing', 'sailing-keel-in-depth', 'box'];
const cites = [['46 CFR 69', '69.209']] as const;

export const tonnageDisagrees = defineCheck({
    id: 'tonnage-disagrees',
    group: 'particulars',
    severity: 'warning',
    title: 'Tonnage does not come of her dimensions',
    why: 'Fees and rules hang on it, and a certificate of another vessel shows itself here.',
    needs: ['vessel: gross-tonnage or net-tonnage', 'vessel: length-on-deck, beam (hull-beam of a catamaran), depth', 'vessel: tonnage-form, engine-in-hull; else all that her type allows are tried'],
    computes: 'gross = k L B D / 100 in feet, each to a tenth; k 0.67 ship-shaped, 0.5 sailing, 0.375 sailing with the keel in the depth, 0.84 box; hulls are summed. Net = 0.8 of gross, 0.9 sailing, all of it with no engine inside. More than 5 % off is queried, whole tons being cut or rounded. A documented vessel has 5 net tons or more.',
    sources: [
        { text: 'gross and net tons by simplified measurement', standard: '46 CFR 69', clause: '69.209', provenance: 'published' },
        { text: 'hulls summed; the result cut to a whole ton', standard: '46 CFR 69', provenance: 'memory' },
        { text: 'documentation from 5 net tons', standard: '46 CFR 67', provenance: 'memory' },
        { text: '5 % before it is queried', provenance: 'chosen' },
    ],
    limits: [
        'Holds for vessels of the United States measured by the simplified system: it is silent where another flag is recorded, or tonnage-system: formal.',
        'A deckhouse as large as the hull is counted on the certificate and not here, so of a houseboat only too small a tonnage is queried.',
        'Where the form is not recorded, any form her type allows may explain the certificate. A trimaran’s hulls are unequal and are not summed.',
        'Length over all counts fittings, so only length-on-deck is used.',
    ],
    examples: [{
        name: 'depth in meters that was measured in feet',
        bad: 'vessel "Marram" { type: sailing-yacht  length-on-deck: 40 ft  beam: 12.6 ft  depth: 5 m  gross-tonnage: 12 }\n',
        fixed: 'vessel "Marram" { type: sailing-yacht  length-on-deck: 40 ft  beam: 12.6 ft  depth: 5 ft  gross-tonnage: 12 }\n',
        correction: 'Read the depth as 5 ft',
    }, {
        name: 'the wrong form',
        bad: 'vessel "Marram" { type: motor-yacht  length-on-deck: 42.3 ft  beam: 14.2 ft  depth: 7.8 ft  tonnage-form: box  gross-tonnage: 31 }\n',
        fixed: 'vessel "Marram" { type: motor-yacht  length-on-deck: 42.3 ft  beam: 14.2 ft  depth: 7.8 ft  tonnage-form: ship  gross-tonnage: 31 }\n',
        correction: 'Choose the form ship',
    }, {
        name: 'net of another vessel',
        bad: 'vessel "Marram" { type: sailing-yacht  engine-in-hull: yes  gross-tonnage: 17  net-tonnage: 12 }\n',
        fixed: 'vessel "Marram" { type: sailing-yacht  engine-in-hull: yes  gross-tonnage: 17  net-tonnage: 15 }\n',
    }, {
        name: 'documented at four net tons',
        bad: 'vessel "Marram" { official-number: "9900417"  net-tonnage: 4 }\n',
        fixed: 'vessel "Marram" { official-number: "9900417"  net-tonnage: 5 }\n',
    }],
    silent: [
        { name: 'sailing hull, whole tons', text: 'vessel "Marram" { type: sailing-yacht  length-on-deck: 40 ft  beam: 12.6 ft  depth: 7 ft  gross-tonnage: 17  net-tonnage: 15 }\n' },
        { name: 'the same without an engine inside', text: 'vessel "Marram" { type: sailing-yacht  engine-in-hull: no  length-on-deck: 40 ft  beam: 12.6 ft  depth: 7 ft  gross-tonnage: 17  net-tonnage: 17 }\n' },
        { name: 'the depth in feet', text: 'vessel "Marram" { type: sailing-yacht  length-on-deck: 40 ft  beam: 12.6 ft  depth: 5 ft  gross-tonnage: 12 }\n' },
        { name: 'catamaran, two hulls', text: 'vessel "Marram" { type: catamaran  tonnage-form: sailing  length-on-deck: 40 ft  beam: 22 ft  hull-beam: 5 ft  depth: 6 ft  gross-tonnage: 12 }\n' },
        { name: 'another flag', text: 'vessel "Marram" { type: sailing-yacht  flag: "Norway"  length-on-deck: 40 ft  beam: 12.6 ft  depth: 7 ft  gross-tonnage: 25 }\n' },
        { name: 'no certificate', text: 'vessel "Marram" { type: sailing-yacht  length-on-deck: 40 ft  beam: 12.6 ft  depth: 7 ft }\n' },
        { name: 'four net tons, not documented', text: 'vessel "Marram" { net-tonnage: 4 }\n' },
    ],
    run(record, raise) {
        const { vessel } = record;
        if (!vessel) {
            return;
        }
        const [gross, net] = [siOf(vessel, 'gross-tonnage'), siOf(vessel, 'net-tonnage')];
        if (gross !== undefined && net !== undefined && net > gross) {
            raise(overGross(vessel, gross, net));
            return;
        }
        if (!isUnderThisRule(vessel)) {
            return;
        }
        const measured = measuredOf(vessel);
        judgeGross(record, vessel, gross, measured, raise);
        judgeNet(record, vessel, { gross, net, measured }, raise);
        judgeDocumented(record, vessel, net, measured, raise);
    },
});

type Raise = (problem: Raised) => void;

function isUnderThisRule(vessel: Vessel): boolean {
    const flag = valueOf(vessel, 'flag')?.prose.text;
    return wordOf(vessel, 'tonnage-system') !== 'formal' && (flag === undefined || /\b(?:united states|u\.?s\.?a?\.?|american?)(?!\w)/i.test(flag));
}

interface Measured {
    readonly length: Quantity;
    readonly beam: Quantity;
    readonly depth: Quantity;
    readonly beamProperty: 'beam' | 'hull-beam';
    readonly hulls: number;
}

/** Her dimensions, or the name of the one that is missing where it is one alone. */
function measuredOf(vessel: Vessel): Measured | string | undefined {
    const hulls = hullsOf(vessel);
    const beamProperty = hulls === 2 ? 'hull-beam' : 'beam';
    const [length, beam, depth] = [valueOf(vessel, 'length-on-deck'), valueOf(vessel, beamProperty), valueOf(vessel, 'depth')];
    if (hulls === undefined) {
        return undefined;
    }
    if (length && beam && depth) {
        return { length, beam, depth, beamProperty, hulls };
    }
    const missing = [...(length ? [] : ['length-on-deck']), ...(beam ? [] : [beamProperty]), ...(depth ? [] : ['depth'])];
    return missing.length === 1 ? missing[0] : undefined;
}

function allowedForms(record: SurveyRecord, vessel: Vessel): readonly HullForm[] {
    const stated = valueOf(vessel, 'tonnage-form')?.word;
    if (stated !== undefined) {
        return [stated];
    }
    const type = typeOf(vessel);
    return type === 'sailing-yacht' ? ['sailing', 'sailing-keel-in-depth'] : isPower(record, vessel) ? (type === 'houseboat' || type === 'aluminum-workboat' ? ['ship', 'box'] : ['ship']) : forms;
}

function tonsOf({ hulls, ...measured }: Measured, form: HullForm, si: Partial<Record<'length' | 'beam' | 'depth', number>> = {}): number {
    const of = (name: 'length' | 'beam' | 'depth') => toTenthOfFootM(si[name] ?? measured[name].si);
    return hulls * grossTons({ lengthM: of('length'), beamM: of('beam'), depthM: of('depth'), form });
}

/** Whether the certificate can come of the tons computed; of a houseboat it may carry more, for her deckhouse. */
const comesOf = (vessel: Vessel, certificate: number, computed: number): boolean =>
    tonsAgree(certificate, computed) || (typeOf(vessel) === 'houseboat' && certificate > computed);

const nearestTo = (value: number, among: readonly number[]): number => among.toSorted((a, b) => Math.abs(a - value) - Math.abs(b - value))[0] ?? Number.NaN;
const tons = (value: number): string => String(Math.round(value * 100) / 100);
const factOf = (vessel: Vessel, property: string): Fact | undefined => vessel.facts.get(property);

function judgeGross(record: SurveyRecord, vessel: Vessel, gross: number | undefined, measured: Measured | string | undefined, raise: Raise): void {
    const at = factOf(vessel, 'gross-tonnage')?.span;
    if (gross === undefined || !at || measured === undefined) {
        return;
    }
    if (typeof measured === 'string') {
        raise({ components: [], at, severity: 'hint', message: `${measured} is not recorded; record it to hold the ${tons(gross)} gross tons of the certificate against her dimensions.` });
        return;
    }
    const allowed = allowedForms(record, vessel);
    if (allowed.some(form => comesOf(vessel, gross, tonsOf(measured, form)))) {
        return;
    }
    const computed = nearestTo(gross, allowed.map(form => tonsOf(measured, form)));
    const dimensions = listed([`length-on-deck ${both(measured.length)}`, `${measured.beamProperty} ${both(measured.beam)}`, `depth ${both(measured.depth)}`]);
    raise({
        components: [], at,
        message: `The certificate gives ${tons(gross)} gross tons, and her dimensions (${dimensions}${measured.hulls > 1 ? ', two hulls' : ''}) give ${tons(computed)} ${allowed.length > 1 ? 'at the nearest of the forms her type allows' : `for the form ${allowed[0] ?? ''}`}. Fees and rules hang on it; measure the depth again, and settle the form and whose certificate it is.`,
        figures: { certificate: { value: gross, unit: 'gross tons' }, computed: { value: computed, unit: 'gross tons' } },
        related: (['length-on-deck', measured.beamProperty, 'depth'] as const).flatMap(property => { const span = factOf(vessel, property)?.span; return span ? [{ message: property, span }] : []; }),
        corrections: [...unitCorrections(vessel, gross, measured, allowed), ...formCorrections(vessel, gross, measured, allowed)],
        draft: {
            title: 'Tonnage does not come of her dimensions', urgency: 'note-only',
            seen: `The certificate gives {vessel.gross-tonnage} gross tons. From a length of {vessel.length-on-deck}, a beam of {vessel.${measured.beamProperty}} and a depth of {vessel.depth}${measured.hulls > 1 ? ', with two hulls,' : ''} the simplified measurement gives ${tons(computed)}.`,
            because: 'Fees and rules hang on the tonnage, and a certificate that does not fit may be of another vessel.',
            recommend: 'Measure length, beam and depth again by the rule of the certificate, and compare the certificate with her official number.', cites,
        },
    });
}

/** Readings of one dimension in the other unit that would explain the certificate. */
function unitCorrections(vessel: Vessel, gross: number, measured: Measured, allowed: readonly HullForm[]): Correction[] {
    return (['depth', 'beam', 'length'] as const).flatMap(name => inOtherUnits(measured[name], ['ft', 'm']).flatMap(({ text, si }): Correction[] => {
        const property = name === 'beam' ? measured.beamProperty : name === 'length' ? 'length-on-deck' : 'depth';
        return allowed.some(form => comesOf(vessel, gross, tonsOf(measured, form, { [name]: si }))) ? [{ kind: 'set-vessel-fact', title: `Read the ${property} as ${text}`, property, value: text }] : [];
    }));
}

function formCorrections(vessel: Vessel, gross: number, measured: Measured, allowed: readonly HullForm[]): Correction[] {
    return forms.filter(form => !allowed.includes(form) && tonsAgree(gross, tonsOf(measured, form)))
        .map(form => ({ kind: 'set-vessel-fact', title: `Choose the form ${form}`, property: 'tonnage-form', value: form }));
}

/** Whether her engine stands in the hull: recorded, or told by what else is. Undefined where either may be. */
function engineInHull(record: SurveyRecord, vessel: Vessel): boolean | undefined {
    const stated = flagOf(vessel, 'engine-in-hull');
    if (stated !== undefined) {
        return stated;
    }
    const has = (kind: 'outboard' | 'main-engine' | 'saildrive' | 'outdrive') => ofKind(record, kind).length > 0;
    const isWithout = wordOf(vessel, 'fuel') === 'none' || siOf(vessel, 'engines') === 0 || (has('outboard') && !has('main-engine'));
    return isWithout ? false : has('main-engine') || has('saildrive') || has('outdrive') ? true : undefined;
}

interface Tonnage {
    readonly gross: number | undefined;
    readonly net: number | undefined;
    readonly measured: Measured | string | undefined;
}

/** Net tons that her form, engine and dimensions allow; of whole gross tons on a certificate the part cut off may count. */
function netsOf(record: SurveyRecord, vessel: Vessel, { gross, measured }: Tonnage): readonly number[] {
    const engine = engineInHull(record, vessel);
    return allowedForms(record, vessel).flatMap(form => {
        const bases = [...(gross === undefined ? [] : Number.isInteger(gross) ? [gross, gross + 0.99] : [gross]), ...(typeof measured === 'object' ? [tonsOf(measured, form)] : [])];
        return bases.flatMap(base => (engine === undefined ? [true, false] : [engine]).map(inHull => netTons(base, form, inHull)));
    });
}

function judgeNet(record: SurveyRecord, vessel: Vessel, tonnage: Tonnage, raise: Raise): void {
    const { net, gross, measured } = tonnage;
    const at = factOf(vessel, 'net-tonnage')?.span;
    const allowed = netsOf(record, vessel, tonnage);
    if (net === undefined || !at || allowed.length === 0 || allowed.some(value => comesOf(vessel, net, value))) {
        return;
    }
    const computed = nearestTo(net, allowed);
    const from = gross === undefined ? 'her dimensions' : typeof measured === 'object' ? 'the gross tons and her dimensions' : 'the gross tons';
    raise({
        components: [], at,
        message: `The certificate gives ${tons(net)} net tons, and ${from} give ${tons(computed)} at the nearest. Net is 0.8 of gross, 0.9 of a sailing hull, or all of it with no engine inside; read the certificate again.`,
        figures: { certificate: { value: net, unit: 'net tons' }, computed: { value: computed, unit: 'net tons' } },
        draft: {
            title: 'Net tonnage does not come of the gross', urgency: 'note-only',
            seen: `The certificate gives {vessel.net-tonnage} net tons; ${from} give ${tons(computed)} at the nearest.`,
            because: 'Fees and the right to documentation hang on the net tonnage.', recommend: 'Read the certificate again, and settle whether an engine is counted as standing inside the hull.', cites,
        },
    });
}

function judgeDocumented(record: SurveyRecord, vessel: Vessel, net: number | undefined, measured: Measured | string | undefined, raise: Raise): void {
    const at = factOf(vessel, 'official-number')?.span;
    const most = net ?? (typeof measured === 'object' ? Math.max(...netsOf(record, vessel, { gross: undefined, net, measured })) * 1.05 : undefined);
    if (!at || most === undefined || most >= documentedFromNetTons) {
        return;
    }
    raise({
        components: [], at,
        message: `An official number is recorded, and ${net === undefined ? `her dimensions give at most ${tons(most)}` : `the certificate gives ${tons(net)}`} net tons; from ${documentedFromNetTons} a vessel can be documented. One of the two is of another vessel or read wrongly; compare the certificate with the number in her main beam.`,
        figures: { net: { value: most, unit: 'net tons' } },
        draft: {
            title: 'Documented below five net tons', urgency: 'note-only',
            seen: `Official number {vessel.official-number} is recorded for her, and ${net === undefined ? 'her dimensions give' : 'the certificate gives'} fewer than ${documentedFromNetTons} net tons.`,
            because: `A vessel can be documented from ${documentedFromNetTons} net tons on.`, recommend: 'Compare the certificate with the number marked on her, and settle which is wrong.', cites: [['46 CFR 67']],
        },
    });
}

function overGross(vessel: Vessel, gross: number, net: number): Raised {
    return {
        components: [], at: factOf(vessel, 'net-tonnage')?.span ?? vessel.span,
        message: `${tons(net)} net tons are more than the ${tons(gross)} gross, of which they are a part. They may be interchanged; read the certificate again.`,
        figures: { gross: { value: gross, unit: 'gross tons' }, net: { value: net, unit: 'net tons' } },
        draft: {
            title: 'Net tonnage is over the gross', urgency: 'note-only', seen: 'Net tonnage {vessel.net-tonnage}, gross tonnage {vessel.gross-tonnage}.',
            because: 'Net tonnage is a part of the gross and never more.', recommend: 'Read the certificate again.', cites,
        },
    };
}
