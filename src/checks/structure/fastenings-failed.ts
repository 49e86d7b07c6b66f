/** A sample of fastenings of which too many are wasted, or that is too thin to speak for the rest. */
import { adviceShare, badShankShare, fasteningStep, leastPerSide, refastenShare, thinSample, type FasteningStep } from '../../trade/fastening-sample.js';
import { anyValue, nameOf, ofKind, siOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Raised, type Urgency } from '../contract.js';
import { lies } from '../lies.js';
import { percent } from '../phrasing.js';


export const fasteningsFailed = defineCheck({
    id: 'fastenings-failed',
    group: 'structure',
    severity: 'error',
    title: 'Fastenings are wasted, or too few were drawn',
    why: 'Planks let go where their fastenings are gone; a sample from one place tells nothing of the others.',
    needs: ['fastening: sampled and bad', 'drawn-port and drawn-starboard, places-drawn'],
    computes: 'bad ÷ drawn. Over 10 %: advice. Over 25 %: a fault. Under 4 on a side (8 in all, where sides are not told apart), or all from one place: the sample is too thin.',
    sources: [
        { text: '10 % and 25 % bad; 4 on each side, from several places', provenance: 'practice' },
        { text: 'sampling of fastenings', standard: 'NVIC 7-95', provenance: 'memory' },
    ],
    limits: ['A fastening counts as bad when a quarter of its shank is gone, which is for the surveyor to say.', 'Record one group of fastenings for each area: shares are not added up over areas.'],
    examples: [{
        name: 'a third is bad',
        bad: 'fastening FS1 "Bottom fastenings" { sampled: 12  bad: 4 }\n',
        fixed: 'fastening FS1 "Bottom fastenings" { sampled: 12  bad: 1 }\n',
    }, {
        name: 'three to a side',
        bad: 'fastening FS1 { sampled: 6  bad: 0  drawn-port: 3  drawn-starboard: 3 }\n',
        fixed: 'fastening FS1 { sampled: 8  bad: 0  drawn-port: 4  drawn-starboard: 4 }\n',
    }],
    silent: [
        { name: 'one in ten is bad', text: 'fastening FS1 { sampled: 10  bad: 1 }\n' },
        { name: 'from several places', text: 'fastening FS1 { sampled: 8  bad: 0  places-drawn: 4 }\n' },
        { name: 'none drawn', text: 'fastening FS1\n' },
    ],
    run(record, raise) {
        for (const fastening of ofKind(record, 'fastening')) {
            const problem = judge(record, fastening);
            if (problem) {
                raise(problem);
            }
        }
    },
});

const thinly: Readonly<Record<'few' | 'one-side' | 'one-place', string>> = {
    few: `fewer than ${leastPerSide} from each side`, 'one-side': 'all from one side', 'one-place': 'all from one place',
};

function judge(record: SurveyRecord, fastening: Component): Raised | undefined {
    const sampled = siOf(fastening, 'sampled');
    const bad = siOf(fastening, 'bad');
    const hint = (message: string): Raised => ({ components: [fastening], at: (fastening.facts.get('bad') ?? fastening.facts.get('sampled'))?.span ?? fastening.idSpan, severity: 'hint', message });
    const shank = anyValue(fastening, 'shank-loss');
    if (shank && shank.si > badShankShare + 1e-9 && (bad ?? 0) === 0) {
        return {
            components: [fastening], at: fastening.facts.get('shank-loss')?.span ?? fastening.idSpan, severity: 'hint',
            message: `${nameOf(fastening)}: the worst drawn has lost ${percent(shank.si)} of its shank, and one that has lost over ${percent(badShankShare)} is bad; record how many were drawn and how many of them were bad.`,
        };
    }
    if (sampled === undefined || sampled === 0) {
        return bad === undefined || bad === 0 ? undefined : hint(`${nameOf(fastening)}: ${bad} were bad; record how many were drawn (sampled) to tell what share that is.`);
    }
    if (bad !== undefined && bad > sampled) {
        return hint(`${nameOf(fastening)}: ${bad} are said to be bad of ${sampled} drawn; correct one of the two.`);
    }
    const thin = thinSample({ sampled, port: siOf(fastening, 'drawn-port'), starboard: siOf(fastening, 'drawn-starboard'), places: siOf(fastening, 'places-drawn') });
    const step = bad === undefined ? 'sound' : fasteningStep(bad, sampled) ?? 'sound';
    return step !== 'sound' ? wasted(record, fastening, sampled, bad ?? 0, step, thin) : thin ? tooThin(fastening, sampled, thin)
        : bad === undefined ? hint(`${nameOf(fastening)}: ${sampled} were drawn; record how many of them were bad.`) : undefined;
}

const extend = `Draw more, at least ${leastPerSide} on each side, from garboards, hood ends and topsides.`;

function wasted(record: SurveyRecord, fastening: Component, sampled: number, bad: number, step: FasteningStep, thin: keyof typeof thinly | undefined): Raised {
    const isFault = step === 'refasten';
    const urgency: Urgency = isFault && lies(record) !== 'afloat' ? 'before-launch' : 'next-haul-out';
    const sample = thin ? ` The sample is thin besides, ${thinly[thin]}.` : '';
    return {
        components: [fastening], at: fastening.facts.get('bad')?.span ?? fastening.idSpan,
        ...(isFault ? {} : { severity: 'warning' as const }),
        message: `${nameOf(fastening)}: ${bad} of ${sampled} drawn are bad, ${percent(bad / sampled)}, over ${percent(isFault ? refastenShare : adviceShare)}.${sample} Planks let go where their fastenings are gone; ${isFault ? 'refasten by area' : 'draw more to find how far it goes'}.`,
        figures: { bad: { value: Math.round(bad / sampled * 1000) / 10, unit: '%' } },
        draft: {
            title: `${fastening.title ?? 'Fastenings'} ${isFault ? 'are wasted' : 'have begun to waste'}`, urgency,
            seen: `Of {${fastening.id}.sampled} fastenings drawn (${fastening.id}), {${fastening.id}.bad} were bad, ${percent(bad / sampled)}.${thin ? ` They were ${thinly[thin]}.` : ''}`,
            because: 'Planks let go where their fastenings are gone; what was drawn stands for the rest.',
            recommend: `${isFault ? 'Refasten by area, starting where most were bad.' : 'Draw more around those that were bad, and renew what is wasted.'}${thin ? ` ${extend}` : ''}`,
            cites: [['NVIC 7-95']],
        },
    };
}

function tooThin(fastening: Component, sampled: number, thin: keyof typeof thinly): Raised {
    return {
        components: [fastening], severity: 'warning', at: fastening.facts.get('sampled')?.span ?? fastening.idSpan,
        message: `${nameOf(fastening)}: ${sampled} were drawn, ${thinly[thin]}. Such a sample does not speak for the rest; draw more, from both sides and several places.`,
        figures: { drawn: { value: sampled, unit: '' } },
        draft: {
            title: `Too few ${fastening.title ? fastening.title.toLowerCase() : 'fastenings'} were drawn`, urgency: 'next-haul-out',
            seen: `{${fastening.id}.sampled} fastenings were drawn (${fastening.id}), ${thinly[thin]}.`,
            because: 'A sample as thin as that does not speak for the rest.',
            recommend: extend,
            cites: [['Good practice']],
        },
    };
}
