/** Two threads of different form screwed into each other. */
import { isKind, nameOf, siOf, wordOf, type Component, type Fact, type Joint, type SurveyRecord } from '../../record/model.js';
import { judgeThreads, leastTurns, threadTitle, type ThreadForm } from '../../trade/pipe-thread.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { heightOf } from '../hoses/waterline.js';
import { floodCritical } from '../lies.js';

export const threadFormsMixed = defineCheck({
    id: 'thread-forms-mixed',
    group: 'fit',
    severity: 'error',
    title: 'Thread forms are mixed',
    why: 'A straight thread in a tapered one binds after two or three turns and holds only until something falls on it.',
    needs: ['male-thread and female-thread at the joint, or of the two parts; or thread of each part', 'for the urgency: turns-engaged at the joint, below-waterline of the opening'],
    computes: 'The form of the male thread against that of the female one: a fault where one is American (NPT, NPS; 60°) and the other British (BSPP, BSPT; 55°), or where a parallel male thread enters a tapered female one. Worse where fewer than 4 turns are engaged.',
    sources: [
        { text: 'straight through-hull stem in a taper-threaded valve engages two or three turns', provenance: 'secondary' },
        { text: 'threads per inch, taper and angle of NPT', standard: 'ASME B1.20.1', provenance: 'published' },
        { text: 'threads per inch and angle of BSP', provenance: 'published' },
        { text: 'fewer than 4 turns', provenance: 'memory' },
    ],
    limits: [
        'A tapered male thread in a parallel female one of the same family is left alone: it is a usual joint in BSP, and in NPT seals on few threads but binds.',
        'Threads of one form and of different sizes are not compared.',
        'Sealant and make-up are not known to it.',
    ],
    examples: [{
        name: 'straight stem in a tapered valve, below the waterline',
        bad: `vessel "Marram" {}
through-hull TH1 { below-waterline: 10 in  thread: nps }
valve SV1 { thread: npt }
run R1: TH1 -> { turns-engaged: 2.5 } SV1
`,
        fixed: `vessel "Marram" {}
through-hull TH1 { below-waterline: 10 in  thread: nps }
valve SV1 { thread: nps }
run R1: TH1 -> { turns-engaged: 8 } SV1
`,
        correction: 'Record the thread of SV1 as nps',
    }, {
        name: 'British thread in an American one',
        bad: `valve SV1 { female-thread: npt }
fitting F1 { male-thread: bspp }
run R1: SV1 -> F1
`,
        fixed: `valve SV1 { female-thread: npt }
fitting F1 { male-thread: npt }
run R1: SV1 -> F1
`,
    }],
    silent: [
        { name: 'straight stem in a straight valve', text: 'through-hull TH1 { below-waterline: 10 in  thread: nps }\nvalve SV1 { thread: nps }\nrun R1: TH1 -> SV1\n' },
        { name: 'tapered BSP in parallel BSP', text: 'valve SV1 { female-thread: bspp }\nfitting F1 { male-thread: bspt }\nrun R1: SV1 -> F1\n' },
        { name: 'one thread not recorded', text: 'through-hull TH1 { below-waterline: 10 in  thread: nps }\nvalve SV1\nrun R1: TH1 -> SV1\n' },
        { name: 'hose on the tail of a threaded fitting', text: 'through-hull TH1 { thread: nps }\nhose H1\nrun R1: TH1 -> H1\n' },
    ],
    run(record, raise) {
        for (const joint of record.runs.flatMap(run => run.joints)) {
            if (isKind(record, joint.from, 'hose') || isKind(record, joint.to, 'hose')) {
                continue;
            }
            const threads = threadsAt(record, joint);
            if (!threads) {
                continue;
            }
            const verdict = judgeThreads({ male: threads.male.form, female: threads.female.form });
            const turned = judgeThreads({ male: threads.female.form, female: threads.male.form });
            if (verdict === 'other-family' || (verdict === 'straight-into-taper' && threads.isCertain)) {
                raise(problem(record, joint, threads, verdict));
            } else if (!threads.isCertain && (verdict === 'straight-into-taper' || turned === 'straight-into-taper')) {
                raise({
                    components: [joint.to, joint.from], at: threads.female.fact.span, severity: 'hint',
                    message: `${nameOf(joint.from)} and ${nameOf(joint.to)} have ${threadTitle(threads.male.form)} and ${threadTitle(threads.female.form)}; record male-thread and female-thread at this joint to tell whether a straight thread enters a tapered one.`,
                });
            }
        }
    },
});

interface Thread {
    readonly form: ThreadForm;
    readonly fact: Fact;
    readonly on: 'joint' | Component;
}

interface Threads {
    readonly male: Thread;
    readonly female: Thread;
    /** Whether it is recorded, or lies in the nature of the parts, which thread is the male one. */
    readonly isCertain: boolean;
}

const forms: ReadonlySet<string> = new Set<ThreadForm>(['npt', 'nps', 'bspp', 'bspt']);

function threadOf(set: Joint | Component, property: 'male-thread' | 'female-thread' | 'thread'): Thread | undefined {
    const word = wordOf(set, property);
    const fact = set.facts.get(property);
    // The word is one of `forms`.
    return word !== undefined && fact && forms.has(word) ? { form: word as ThreadForm, fact, on: set.kind === 'joint' ? 'joint' : set as Component } : undefined;
}

function threadsAt(record: SurveyRecord, joint: Joint): Threads | undefined {
    const { from, to } = joint;
    const [maleAtJoint, femaleAtJoint] = [threadOf(joint, 'male-thread'), threadOf(joint, 'female-thread')];
    for (const [a, b] of [[from, to], [to, from]] as const) {
        const [male, female] = [maleAtJoint ?? threadOf(a, 'male-thread'), femaleAtJoint ?? threadOf(b, 'female-thread')];
        if (male && female) {
            return { male, female, isCertain: true };
        }
    }
    // The stem of a hull opening is the male thread, whatever screws on it.
    const [stem, other] = isKind(record, to, 'hull-opening') ? [to, from] : [from, to];
    const male = maleAtJoint ?? threadOf(stem, 'male-thread') ?? threadOf(stem, 'thread');
    const female = femaleAtJoint ?? threadOf(other, 'female-thread') ?? threadOf(other, 'thread');
    const isCertain = isKind(record, stem, 'hull-opening') || maleAtJoint !== undefined || femaleAtJoint !== undefined
        || (stem.facts.has('male-thread') && !other.facts.has('male-thread')) || (other.facts.has('female-thread') && !stem.facts.has('female-thread'));
    return male && female && { male, female, isCertain };
}

function problem(record: SurveyRecord, joint: Joint, { male, female }: Threads, verdict: 'other-family' | 'straight-into-taper'): Raised {
    const { from, to } = joint;
    const turns = siOf(joint, 'turns-engaged');
    const isFew = turns !== undefined && turns < leastTurns;
    const isBelow = heightOf(record, joint.run) === 'below';
    const [maleText, femaleText] = [threadTitle(male.form), threadTitle(female.form)];
    const what = verdict === 'other-family'
        ? `${maleText} and ${femaleText} differ in thread angle, ${/^bsp/.test(male.form) ? '55° against 60°' : '60° against 55°'}, and in most sizes in threads to the inch`
        : `a straight thread in a tapered one binds after two or three turns`;
    const turnsText = turns === undefined ? '' : `; ${turns} turns are engaged`;
    const component = female.on === 'joint' ? to : female.on;
    const set = (thread: Thread, form: string): Correction => thread.on === 'joint'
        ? { kind: 'set-joint-fact', title: `Record the ${thread.fact.name.replace('-', ' ')} at this joint as ${form}`, joint, property: thread.fact.name, value: form }
        : { kind: 'set-fact', title: `Record the ${thread.fact.name.replace('-', ' ')} of ${thread.on.id} as ${form}`, component: thread.on, property: thread.fact.name, value: form };
    const other = component === to ? from : to;
    return {
        components: [component, other],
        at: female.fact.span,
        message: `${nameOf(from)} and ${nameOf(to)} are screwed together with ${maleText} into ${femaleText}: ${what}${turnsText}. It leaks or lets go under a blow; fit parts of one thread form, or a flanged adapter.`,
        figures: turns === undefined ? {} : { turns: { value: turns, unit: '' } },
        related: [{ message: 'The male thread', span: male.fact.span }],
        corrections: [set(female, male.form), set(male, female.form)],
        draft: {
            title: `Mixed threads between ${from.id} and ${to.id}`,
            urgency: isFew && isBelow ? floodCritical(record) : 'next-haul-out',
            seen: `${from.id} and ${to.id} are screwed together with ${maleText} into ${femaleText}${turns === undefined ? '' : `, with ${turns} turns engaged`}.`,
            because: `${what.charAt(0).toUpperCase()}${what.slice(1)}; such a joint holds little and may let go under a blow.`,
            recommend: `Replace ${to.id} or ${from.id} so that both have one thread form, or join them by a flanged adapter made for the two.`,
        },
    };
}
