/** An anchor chain that has lost too much of its wire. */
import { chainLossShare, chainWornShare } from '../../trade/ground-tackle.js';
import { meanOf } from '../../trade/wastage.js';
import { nameOf, ofKind, siOf, valueOf, valuesOf, type Component } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { both, lengthBoth, percent } from '../phrasing.js';


export const chainWorn = defineCheck({
    id: 'chain-worn',
    group: 'deck',
    severity: 'error',
    title: 'Anchor chain is worn',
    why: 'A chain holds by its weakest link.',
    needs: ['chain: link-original, link-now (two axes)'],
    computes: 'loss = (original − mean of the two axes) ÷ original. A fault over 10 %.',
    sources: [{ text: '10 %; ships use 12 %', provenance: 'practice' }],
    limits: ['The worst links are at the ends, in the first meters that lie on the ground, and where the windlass holds; measured elsewhere, wear is understated.', 'A loss told from one axis alone is judged as it stands.'],
    examples: [{
        name: 'an eighth gone',
        bad: 'chain CH1 "Anchor chain" { link-original: 10 mm  link-now: 8.6 mm, 8.9 mm }\n',
        fixed: 'chain CH1 "Anchor chain" { link-original: 10 mm  link-now: 9.4 mm, 9.6 mm }\n',
    }],
    silent: [
        { name: 'exactly ten percent', text: 'chain CH1 { link-original: 10 mm  link-now: 8.8 mm, 9.2 mm }\n' },
        { name: 'the same wear on heavier chain', text: 'chain CH1 "Anchor chain" { link-original: 9.5 mm  link-now: 8.6 mm, 8.9 mm }\n' },
        { name: 'not measured', text: 'chain CH1 { link-original: 10 mm }\n' },
    ],
    run(record, raise) {
        for (const chain of ofKind(record, 'chain')) {
            const axes = valuesOf(chain, 'link-now').flatMap(value => value.type === 'quantity' ? [value.si] : []);
            const now = meanOf(axes);
            const original = siOf(chain, 'link-original');
            const loss = now === undefined || original === undefined ? undefined : chainLossShare(original, now);
            const at = chain.facts.get('link-now')?.span ?? chain.idSpan;
            if (now !== undefined && original === undefined) {
                raise({ components: [chain], at, severity: 'hint', message: `${nameOf(chain)} measures ${lengthBoth(now)} now; record what it measured when new (link-original) to tell what is gone.` });
            } else if (now !== undefined && loss !== undefined && loss > chainWornShare + 1e-9) {
                raise(problem(chain, axes, now, loss));
            }
        }
    },
});

function problem(chain: Component<'chain'>, axes: readonly number[], nowM: number, loss: number): Raised {
    const original = valueOf(chain, 'link-original');
    const corrections: Correction[] = axes.length > 1 ? [{ kind: 'set-fact', title: 'Record the mean of the axes', component: chain, property: 'link-now', value: `${Math.round(nowM * 1e5) / 100} mm`, isStep: true }] : [];
    return {
        components: [chain], at: chain.facts.get('link-now')?.span ?? chain.idSpan, corrections,
        message: `${nameOf(chain)} measures ${lengthBoth(nowM)}${axes.length > 1 ? ', the mean of its axes,' : ''} against ${original ? both(original) : 'more'} when new; ${percent(loss)} is gone, over ${percent(chainWornShare)}. It holds by its weakest link; renew it, or turn it end for end where the other end is good.`,
        figures: { loss: { value: Math.round(loss * 1000) / 10, unit: '%' } },
        draft: {
            title: `${chain.title ?? 'Anchor chain'} is worn`, urgency: 'in-upkeep',
            seen: `The wire of ${chain.title ? `${chain.title} (${chain.id})` : `chain ${chain.id}`} was {${chain.id}.link-original} when new and measures {${chain.id}.link-now} where it is thinnest${axes.length > 1 ? ', on different axes' : ''}; ${percent(loss)} is gone.`,
            because: 'A chain holds by its weakest link, and worn links no longer sit in the windlass.',
            recommend: 'Renew the chain, or turn it end for end where the other end has lost less than a tenth.',
            cites: [['Good practice']],
        },
    };
}
