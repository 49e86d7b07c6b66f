/** An anode that is half gone, will not last to the next haul-out, or has not gone at all. */
import { flagOf, nameOf, ofKind, siOf, type Component, type DateFigure, type SurveyRecord } from '../../record/model.js';
import { anodeLeftAfter } from '../../trade/anode.js';
import { surveyedOn, yearsBetween } from '../hoses/age.js';
import { defineCheck, type Raised } from '../contract.js';
import { lies } from '../lies.js';
import { anodeShareLeft } from './contacts.js';

const renewAt = 0.5;
const leastAtHaulOut = 0.2;

export const anodeNearlyGone = defineCheck({
    id: 'anode-nearly-gone',
    group: 'metals',
    severity: 'error',
    title: 'Anode is nearly gone',
    why: 'Protection ends without a sign.',
    needs: ['anode: left, or original-mass and present-mass, or original-volume and present-volume', 'fitted and months-to-haul-out, for how long it lasts'],
    computes: 'Left = present ÷ original mass, else volume, or as recorded. A fault under 50 %, of the anode of a heat exchanger or of a thruster too, or where left − (100 − left) ÷ months fitted × months ahead is under 20 %. Advice where nothing has gone after 12 months: its contact is poor. A fault where it is painted over.',
    sources: [{ text: 'renewed at half', provenance: 'practice' }, { text: 'rate of loss so far goes on', provenance: 'computed' }],
    limits: ['The rate so far is taken to go on; another berth changes it.', 'What is left by eye is a guess.', 'Of an anode inside a heat exchanger or a thruster’s tunnel only the share left is judged.', 'Months are counted from the date fitted to the last attendance.'],
    examples: [{
        name: 'under half',
        bad: 'anode A1 "Shaft anode" { metal: zinc  left: 35 % }\n',
        fixed: 'anode A1 "Shaft anode" { metal: zinc  left: 100 % }\n',
        correction: 'Record A1 as renewed',
    }, {
        name: 'by mass',
        bad: 'anode A1 { metal: zinc  original-mass: 1.2 kg  present-mass: 0.5 kg }\n',
        fixed: 'anode A1 { metal: zinc  original-mass: 1.2 kg  present-mass: 1.2 kg }\n',
        correction: 'Record A1 as renewed',
    }],
    silent: [
        { name: 'more than half left', text: 'anode A1 { metal: zinc  left: 60 % }\n' },
        { name: 'exactly half', text: 'anode A1 { metal: zinc  original-mass: 2 kg  present-mass: 1 kg }\n' },
        { name: 'lasts to the next haul-out', text: 'survey "1" pre-purchase { attended 2026-10-06 ashore }\nanode A1 { metal: zinc  left: 80 %  fitted: 2025-10-06  months-to-haul-out: 12 }\n' },
        { name: 'nothing recorded of its state', text: 'anode A1 { metal: zinc }\n' },
    ],
    run(record, raise) {
        for (const inner of innerAnodes(record)) {
            raise(inner);
        }
        for (const anode of ofKind(record, 'anode')) {
            if (flagOf(anode, 'painted') === true) {
                raise(paintedOver(anode, lies(record) === 'ashore' ? 'before-launch' : 'next-haul-out'));
            }
            const left = anodeShareLeft(anode);
            if (left === undefined) {
                continue;
            }
            const fitted = anode.facts.get('fitted')?.values[0];
            const on = surveyedOn(record);
            const months = fitted?.type === 'date' && on ? monthsBetween(fitted.figure, on) : undefined;
            const ahead = siOf(anode, 'months-to-haul-out');
            const then = months !== undefined && months > 0 && ahead !== undefined ? anodeLeftAfter(left, months, ahead) : undefined;
            const urgency = lies(record) === 'ashore' ? 'before-launch' : 'next-haul-out';
            if (left < renewAt - 1e-9) {
                raise(problem(anode, left, `${percent(left)} of it is left, under ${percent(renewAt)}`, urgency));
            } else if (then !== undefined && then < leastAtHaulOut - 1e-9) {
                raise(problem(anode, left, `${percent(left)} is left after ${Math.round(months ?? 0)} months; at that rate about ${percent(then)} will be left at the next haul-out in ${ahead ?? 0} months`, urgency));
            } else if (left > 0.995 && months !== undefined && months >= 12) {
                raise({
                    components: [anode], severity: 'warning', at: anode.facts.get('left')?.span ?? anode.idSpan,
                    message: `${nameOf(anode)} has lost nothing in ${Math.round(months)} months: it does no work, most likely for want of contact. Measure it to the part it protects and clean the contact.`,
                    draft: {
                        title: `${anode.title ?? anode.id} has not wasted`, urgency: 'in-upkeep',
                        seen: `${anode.title ?? 'The anode'} (${anode.id}), fitted {${anode.id}.fitted}, has lost nothing.`,
                        because: 'An anode that does not waste does not protect; its contact is most likely poor.',
                        recommend: 'Measure its resistance to the part it protects, clean the contact to bright metal and measure again.', cites: [['Good practice']],
                    },
                });
            }
        }
    },
});

const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** To a tenth of a month, so that a calendar year counts as twelve. */
function monthsBetween(from: DateFigure, to: DateFigure): number {
    return Math.round(yearsBetween(from, to) * 120) / 10;
}

/** Anodes recorded as a share left of the part they stand in: a heat exchanger or the tunnel of a thruster. */
function innerAnodes(record: SurveyRecord): Raised[] {
    const places = [...ofKind(record, 'heat-exchanger').map(part => [part, 'anode-left', 'in-upkeep'] as const),
        ...ofKind(record, 'bow-thruster').map(part => [part, 'tunnel-anode-left', lies(record) === 'ashore' ? 'before-launch' : 'next-haul-out'] as const)];
    return places.flatMap(([part, property, urgency]) => {
        const left = siOf(part, property);
        return left === undefined || left >= renewAt - 1e-9 ? [] : [{
            components: [part], at: part.facts.get(property)?.span ?? part.idSpan,
            message: `${nameOf(part)}: ${percent(left)} of its anode is left, under ${percent(renewAt)}. Protection ends without a sign; renew it on bright metal.`,
            figures: { left: { value: Math.round(left * 100), unit: '%' }, limit: { value: renewAt * 100, unit: '%' } },
            corrections: [{ kind: 'set-fact', title: `Record the anode of ${part.id} as renewed`, component: part, property, value: '100 %' }],
            draft: {
                title: `Anode of ${part.title ?? part.id} is wasted`, urgency,
                seen: `Of the anode of ${part.title ? `${part.title} (${part.id})` : part.id}, {${part.id}.${property}} is left.`,
                because: 'When it is gone the metal it protects is eaten in its place.',
                recommend: 'Renew it on bright metal, with no paint or sealant on it.', cites: [['Good practice']],
            },
        } satisfies Raised];
    });
}

function paintedOver(anode: Component, urgency: 'before-launch' | 'next-haul-out'): Raised {
    return {
        components: [anode], at: anode.facts.get('painted')?.span ?? anode.idSpan,
        message: `${nameOf(anode)} is painted over: it cannot waste, and protects nothing. Strip it to bright metal, or renew it.`,
        corrections: [{ kind: 'set-fact', title: `Record ${anode.id} as free of paint`, component: anode, property: 'painted', value: 'no' }],
        draft: {
            title: `${anode.title ?? anode.id} is painted over`, urgency,
            seen: `${anode.title ?? 'The anode'} (${anode.id}) is painted over.`,
            because: 'An anode that is covered cannot waste, and what it should protect is eaten in its place.',
            recommend: 'Strip it to bright metal, or renew it, and keep paint off it.', cites: [['Good practice']],
        },
    };
}

function problem(anode: Component, left: number, what: string, urgency: 'before-launch' | 'next-haul-out'): Raised {
    const measure = anode.facts.has('left') ? undefined : anode.facts.has('present-mass') && anode.facts.has('original-mass') ? 'mass' : 'volume';
    const present = measure === undefined ? 'left' : `present-${measure}` as const;
    const fact = anode.facts.get(present);
    const original = measure && anode.facts.get(`original-${measure}`);
    return {
        components: [anode], at: fact?.span ?? anode.idSpan,
        message: `${nameOf(anode)}: ${what}. Protection ends without a sign; renew it on bright metal.`,
        figures: { left: { value: Math.round(left * 100), unit: '%' }, limit: { value: renewAt * 100, unit: '%' } },
        corrections: anode.facts.has('left') ? [{ kind: 'set-fact', title: `Record ${anode.id} as renewed`, component: anode, property: 'left', value: '100 %' }]
            : original ? [{ kind: 'set-fact', title: `Record ${anode.id} as renewed`, component: anode, property: present, value: original.written }] : [],
        draft: {
            title: `${anode.title ?? anode.id} is wasted`, urgency,
            seen: `${anode.title ?? 'The anode'} (${anode.id}): ${anode.facts.has('left') ? `{${anode.id}.left} of it is left` : `{${anode.id}.${present}} of {${anode.id}.original-${measure ?? 'mass'}} is left`}.`,
            because: 'When it is gone the metal it protects is eaten in its place.',
            recommend: 'Renew it on bright metal, with no paint on it, and measure its contact.', cites: [['Good practice']],
        },
    };
}
