/** A rode too short for the deepest place she anchors in. */
import { rodeNeededM, scopeOf, type RodeKind } from '../../trade/ground-tackle.js';
import { nameOf, ofKind, siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { lengthBoth, listed } from '../phrasing.js';

export const rodeShort = defineCheck({
    id: 'rode-short',
    group: 'deck',
    severity: 'error',
    title: 'Rode is short for her anchorages',
    why: 'On a short rode the pull comes from above and lifts the anchor.',
    needs: ['rode: length, build; chain: length', 'rode or chain: deepest-berth, bow-height'],
    computes: 'need = k × (depth + height of the bow roller), k = 5 for chain and 7 for rope or rope with chain.',
    sources: [{ text: '5 for chain, 7 for rope with chain, from the bow roller', provenance: 'published' }],
    limits: [
        'Rise of tide must be in the depth recorded.', 'A rode whose build is not recorded counts as rope, and one chain beside it is added to it. A rode recorded as chain or mixed counts by its own length.',
        'With several chains and rodes, each that gives a depth is judged by itself.',
    ],
    examples: [{
        name: 'chain for a deep anchorage',
        bad: 'chain CH1 "Anchor chain" { length: 50 m  deepest-berth: 12 m  bow-height: 1.5 m }\n',
        fixed: 'chain CH1 "Anchor chain" { length: 70 m  deepest-berth: 12 m  bow-height: 1.5 m }\n',
    }, {
        name: 'rope with chain',
        bad: 'rode RD1 { build: mixed  length: 150 ft  deepest-berth: 30 ft  bow-height: 5 ft }\n',
        fixed: 'rode RD1 { build: mixed  length: 250 ft  deepest-berth: 30 ft  bow-height: 5 ft }\n',
    }],
    silent: [
        { name: 'just long enough', text: 'chain CH1 { length: 67.5 m  deepest-berth: 12 m  bow-height: 1.5 m }\n' },
        { name: 'the same chain in shallower water', text: 'chain CH1 "Anchor chain" { length: 50 m  deepest-berth: 8 m  bow-height: 1.5 m }\n' },
        { name: 'chain and rope together', text: 'chain CH1 { length: 20 m }\nrode RD1 { length: 60 m  deepest-berth: 10 m  bow-height: 1.4 m }\n' },
        { name: 'depth not recorded', text: 'chain CH1 { length: 50 m }\n' },
    ],
    run(record, raise) {
        for (const tackle of tackles(record)) {
            const problem = judge(tackle);
            if (problem) {
                raise(problem);
            }
        }
    },
});

interface Tackle {
    /** The parts that make it up, the one that gives the depth first. */
    readonly parts: readonly Component[];
    readonly kind: RodeKind;
}

const gives = (part: Component): boolean => part.facts.has('deepest-berth') || part.facts.has('bow-height');

function tackles(record: SurveyRecord): Tackle[] {
    const chains = ofKind(record, 'chain');
    const rodes = ofKind(record, 'rode');
    const [chain] = chains;
    const [rode] = rodes;
    if (chain && rode && chains.length === 1 && rodes.length === 1 && !['chain', 'mixed'].includes(wordOf(rode, 'build') ?? '')) {
        return [{ parts: gives(chain) && !gives(rode) ? [chain, rode] : [rode, chain], kind: 'mixed' }];
    }
    return [
        ...rodes.map((part): Tackle => ({ parts: [part], kind: kindOf(wordOf(part, 'build')) })),
        ...chains.filter(part => gives(part)).map((part): Tackle => ({ parts: [part], kind: 'chain' })),
    ];
}

const kindOf = (build: string | undefined): RodeKind => build === 'chain' ? 'chain' : build === 'mixed' ? 'mixed' : 'rope';
const kindWords: Readonly<Record<RodeKind, string>> = { chain: 'chain', mixed: 'rope with chain', rope: 'rope' };

function judge({ parts, kind }: Tackle): Raised | undefined {
    const [part] = parts;
    const from = (property: 'deepest-berth' | 'bow-height') => parts.find(candidate => candidate.facts.has(property));
    const depthPart = from('deepest-berth');
    const bowPart = from('bow-height');
    const depth = depthPart && siOf(depthPart, 'deepest-berth');
    const bow = bowPart && siOf(bowPart, 'bow-height');
    const lengths = parts.map(candidate => siOf(candidate, 'length'));
    if (!part || lengths.includes(undefined) || !depthPart || !bowPart || depth === undefined || bow === undefined) {
        return part ? lacking(part, parts, { depth, bow, lengths }) : undefined;
    }
    const length = lengths.reduce<number>((sum, each) => sum + (each ?? 0), 0);
    const need = rodeNeededM(kind, depth, bow);
    if (length >= need - 1e-6) {
        return undefined;
    }
    const name = listed(parts.map(nameOf));
    const lengthText = listed(parts.map(({ id }) => `{${id}.length}`));
    const suffices = length / scopeOf[kind] - bow;
    const corrections: Correction[] = suffices >= 0.5 ? [{ kind: 'set-fact', title: `Record the deepest berth as ${Math.floor(suffices * 10) / 10} m, for which it is long enough`, component: depthPart, property: 'deepest-berth', value: `${Math.floor(suffices * 10) / 10} m` }] : [];
    return {
        components: parts, at: part.facts.get('length')?.span ?? part.idSpan, corrections,
        message: `${name} ${parts.length > 1 ? 'are' : 'is'} ${lengthBoth(length)} of ${kindWords[kind]}; a depth of ${lengthBoth(depth)} and a bow of ${lengthBoth(bow)} ask for ${scopeOf[kind]} times as much, ${lengthBoth(need)}. On a short rode the anchor is lifted; lengthen it.`,
        figures: { length: { value: Math.round(length * 10) / 10, unit: 'm' }, need: { value: Math.round(need * 10) / 10, unit: 'm' } },
        draft: {
            title: 'Anchor rode is short', urgency: 'in-upkeep',
            seen: `The rode (${listed(parts.map(({ id }) => id))}) is ${lengthText} of ${kindWords[kind]}. The deepest place she anchors in is {${depthPart.id}.deepest-berth}, and her bow roller is {${bowPart.id}.bow-height} above the water.`,
            because: `A rode of ${kindWords[kind]} is to be ${scopeOf[kind]} times as long as the depth from the bow roller, here ${lengthBoth(need)}; on a shorter one the pull lifts the anchor.`,
            recommend: `Lengthen the rode to ${lengthBoth(need)}, or anchor in shallower water.`,
            cites: [['Good practice']],
        },
    };
}

function lacking(part: Component, parts: readonly Component[], { depth, bow, lengths }: { readonly depth: number | undefined; readonly bow: number | undefined; readonly lengths: readonly (number | undefined)[] }): Raised | undefined {
    const lacks = [...(depth === undefined ? ['the deepest place she anchors in (deepest-berth)'] : []), ...(bow === undefined ? ['the height of her bow roller (bow-height)'] : []), ...(lengths.includes(undefined) ? ['its length'] : [])];
    return lacks.length === 1 ? { components: parts, at: part.idSpan, severity: 'hint', message: `${listed(parts.map(nameOf))}: record ${lacks[0] ?? ''} to tell whether the rode is long enough.` } : undefined;
}
