/** A wire with a broken strand, or a terminal or turnbuckle that is cracked, bent or weeps rust. */
import { flagOf, nameOf, ofKind, siOf, valueOf, wordOf, type Component, type Span, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { listed } from '../phrasing.js';

export const strandOrTerminalBroken = defineCheck({
    id: 'strand-or-terminal-broken',
    group: 'rig',
    severity: 'error',
    title: 'Broken strand or terminal',
    why: 'One strand gone, the others follow, and the mast falls.',
    needs: ['shroud, stay, wire: broken-strands, terminal, rust-streak', 'terminal: state, of', 'turnbuckle: cracked'],
    computes: 'A fault with any one broken strand, or a terminal or turnbuckle that is cracked or bent. Advice where a terminal or the lay of a wire weeps rust.',
    sources: [{ text: 'any one broken strand, cracked swage or bent terminal', provenance: 'practice' }],
    limits: ['A terminal recorded by itself speaks for the wire it ends, which is then not told of it again.', 'Rust that weeps is consistent with a crack inside that cannot be seen; it is advice, for it may come from elsewhere.', 'How many strands the wire has does not count: one broken is one too many.'],
    examples: [{
        name: 'one broken strand',
        bad: 'shroud SH1 "Upper shroud, port" { broken-strands: 1 }\n',
        fixed: 'shroud SH1 "Upper shroud, port" { broken-strands: 0 }\n',
    }, {
        name: 'cracked terminal',
        bad: 'terminal TM1 "Lower swage, port" { build: swaged  state: cracked }\n',
        fixed: 'terminal TM1 "Lower swage, port" { build: swaged  state: sound }\n',
    }, {
        name: 'rust weeps from a swage',
        bad: 'stay ST1 "Backstay" { terminal: rust-weeping }\n',
        fixed: 'stay ST1 "Backstay" { terminal: sound }\n',
    }],
    silent: [
        { name: 'no broken strand and sound terminals', text: 'shroud SH1 "Upper shroud, port" { broken-strands: 0  terminal: sound }\nturnbuckle TB1 { pinned: yes  cracked: no }\n' },
        { name: 'not looked at', text: 'shroud SH1\nterminal TM1\nturnbuckle TB1\n' },
    ],
    run(record, raise) {
        const ended = new Set<string>();
        for (const terminal of ofKind(record, 'terminal')) {
            const wire = valueOf(terminal, 'of')?.id;
            const fault = terminalFault(wordOf(terminal, 'state'));
            if (fault) {
                if (wire !== undefined) {
                    ended.add(wire);
                }
                raise(problem(record, terminal, [{ ...fault, fact: 'state' }], wire === undefined ? undefined : record.components.get(wire)));
            }
        }
        for (const wire of ofKind(record, 'wire')) {
            const faults = faultsOfWire(wire, ended.has(wire.id));
            if (faults.length > 0) {
                raise(problem(record, wire, faults, undefined));
            }
        }
        for (const turnbuckle of ofKind(record, 'turnbuckle')) {
            if (flagOf(turnbuckle, 'cracked') === true) {
                raise(problem(record, turnbuckle, [{ says: 'cracked', seen: 'cracked', isAdvice: false, fact: 'cracked' }], undefined));
            }
        }
    },
});

interface Fault {
    readonly says: string;
    /** The same for a drafted finding, recorded numbers as references. */
    readonly seen: string;
    readonly isAdvice: boolean;
    readonly fact: string;
}

function terminalFault(state: string | undefined): Omit<Fault, 'fact'> | undefined {
    switch (state) {
        case 'cracked': return { says: 'cracked', seen: 'cracked', isAdvice: false };
        case 'bent': return { says: 'bent', seen: 'bent', isAdvice: false };
        case 'rust-weeping': return { says: 'weeping rust', seen: 'weeping rust', isAdvice: true };
        default: return undefined;
    }
}

function faultsOfWire(wire: Component, isEnded: boolean): Fault[] {
    const strands = siOf(wire, 'broken-strands') ?? 0;
    const terminal = isEnded ? undefined : terminalFault(wordOf(wire, 'terminal'));
    const of = (says: string) => `a terminal ${says}`;
    return [
        ...(strands > 0 ? [{ says: `${strands} broken ${strands === 1 ? 'strand' : 'strands'}`, seen: `{${wire.id}.broken-strands} broken ${strands === 1 ? 'strand' : 'strands'}`, isAdvice: false, fact: 'broken-strands' }] : []),
        ...(terminal ? [{ says: of(terminal.says), seen: of(terminal.seen), isAdvice: terminal.isAdvice, fact: 'terminal' }] : []),
        ...(flagOf(wire, 'rust-streak') === true ? [{ says: 'rust from within its lay', seen: 'rust from within its lay', isAdvice: true, fact: 'rust-streak' }] : []),
    ];
}

function problem(record: SurveyRecord, part: Component, faults: readonly Fault[], wire: Component | undefined): Raised {
    const isAdvice = faults.every(fault => fault.isAdvice);
    const at: Span = part.facts.get(faults[0]?.fact ?? '')?.span ?? part.idSpan;
    const ends = wire ? `, which ends ${nameOf(wire)}` : '';
    const renewed = part.kind === 'turnbuckle' ? 'it' : wire ? `${nameOf(wire)} with its terminals` : 'the wire with its terminals';
    return {
        components: wire ? [part, wire] : [part], at,
        ...(isAdvice ? { severity: 'warning' as const } : {}),
        message: `${nameOf(part)}${ends}: ${listed(faults.map(({ says }) => says))}. ${isAdvice
            ? 'Rust that comes from inside is consistent with a crack that cannot be seen; clean it, try it with dye, and renew the wire if it comes again.'
            : `A mast falls by the first wire that parts; do not sail her, and renew ${renewed} and its pair on the other side.`}`,
        corrections: part.kind === 'terminal' && !wire ? nameTheWire(record, part) : [],
        draft: {
            title: `${part.title ?? part.id}: ${listed(faults.map(({ says }) => says))}`,
            ...(isAdvice ? record.survey?.surveyKind === 'pre-purchase' ? { urgency: 'before-completion' as const } : { urgency: 'within-days' as const, days: 30 } : { urgency: 'before-departure' as const }),
            seen: `${part.title ? `${part.title} (${part.id})` : part.id}${wire ? ` of ${wire.title ?? wire.id}` : ''}: ${listed(faults.map(({ seen }) => seen))}.`,
            because: isAdvice ? 'Rust that comes from inside is consistent with a crack that cannot be seen.' : 'Where one part of the standing rigging lets go, the mast falls.',
            recommend: isAdvice ? 'Clean it, try it with dye under a glass, and renew the wire with its terminals if rust comes again.'
                : `Do not sail her until ${part.kind === 'turnbuckle' ? 'it is' : 'the wire with its terminals, and its pair on the other side, are'} renewed.`,
            cites: [['Good practice']],
        },
    };
}

function nameTheWire(record: SurveyRecord, terminal: Component): Correction[] {
    return ofKind(record, 'wire').slice(0, 4).map(wire => ({ kind: 'set-fact', title: `Record ${terminal.id} as ending ${nameOf(wire)}`, component: terminal, property: 'of', value: wire.id }));
}
