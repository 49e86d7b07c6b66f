/** What stands under the pointer, told from the record and the catalogue. */
import type { LangiumDocument } from 'langium';
import type { HoverProvider } from 'langium/lsp';
import type { Hover, Position } from 'vscode-languageserver-types';
import { checkById } from '../checks/analyse.js';
import { convertTo, inBothSystems, parseFigure, type Figure } from '../quantities/index.js';
import { computedProperties } from '../record/computed.js';
import { typeTitle } from '../record/facts.js';
import type { Component, Fact, KindInfo, Material, PropertyType, Value } from '../record/model.js';
import { sourceLine } from './explain.js';
import { existingPhoto } from './links.js';
import { symbolAt, viewOf, type Found, type View } from './resolve.js';
import type { GarboardServices } from './services.js';

export class SurveyHoverProvider implements HoverProvider {
    constructor(private readonly services: GarboardServices) {}

    async getHoverContent(document: LangiumDocument, { position }: { readonly position: Position }): Promise<Hover | undefined> {
        const view = viewOf(this.services, document);
        const found = symbolAt(view, document.textDocument.offsetAt(position));
        if (!found) {
            return undefined;
        }
        const value = found.symbol.kind === 'photo' ? await this.photo(found, view) : hoverText(found, view);
        const { textDocument } = document;
        return value === undefined || value.trim() === '' ? undefined : {
            contents: { kind: 'markdown', value },
            range: { start: textDocument.positionAt(found.span.start), end: textDocument.positionAt(found.span.end) },
        };
    }

    private async photo({ symbol }: Found, { record }: View): Promise<string | undefined> {
        if (!record) {
            return undefined;
        }
        const uri = await existingPhoto(this.services, record, symbol.id);
        return uri === undefined ? `There is no file ${code(symbol.id)}.` : `![${plain(symbol.id)}](${uri.replaceAll('(', '%28').replaceAll(')', '%29')}|width=360)`;
    }
}

/** Markdown about a symbol. */
export function hoverText({ symbol, role }: Found, view: View): string | undefined {
    const { vocabulary, record } = view;
    switch (symbol.kind) {
        case 'component': {
            const component = record?.components.get(symbol.id);
            return component ? componentText(component, view) : undefined;
        }
        case 'kind': {
            const kind = vocabulary.kinds.get(symbol.id);
            return kind && kindText(kind, view);
        }
        case 'property': {
            const owner = symbol.owner ?? '';
            const type = vocabulary.kinds.get(owner)?.properties.get(symbol.id) ?? vocabulary.kinds.get(role.frame.owner)?.properties.get(symbol.id);
            const fact = symbol.of === undefined ? undefined : factsOf(symbol.of, view)?.get(symbol.id);
            return type && lines(propertyText(symbol.id, type, view), fact && role.name !== 'property' ? `**${plain(symbol.of ?? '')}**: ${factText(fact)}` : undefined);
        }
        case 'computed': {
            const component = record?.components.get(symbol.of ?? '');
            const computed = computedProperties(vocabulary.kinds.get(symbol.owner ?? '')?.lineage ?? []).get(symbol.id);
            if (!computed) {
                return undefined;
            }
            const text = component && record ? computed.text(component, record) : undefined;
            return lines(`**${symbol.id}**, computed. ${plain(computed.about)}.`, text === undefined ? `It needs ${computed.needs.join(' and ')}.` : `**${plain(symbol.of ?? '')}**: ${plain(text)}`, `*Assumes ${plain(computed.assumption)}.*`);
        }
        case 'figure': return figureText(symbol.id);
        case 'material': {
            const material = vocabulary.materials.get(symbol.id);
            return material && materialText(material);
        }
        case 'word': return wordText(symbol.id, symbol.owner ?? '', view);
        case 'word-list': {
            const list = vocabulary.wordLists.get(symbol.id);
            return list && lines(`**${plain(list.title ?? list.id)}**`, [...list.words].slice(0, 30).map(([word, meaning]) => `- ${code(word)}${meaning === '' ? '' : `: ${plain(meaning)}`}`).join('\n'));
        }
        case 'standard': {
            const standard = vocabulary.standards.get(symbol.id);
            return standard && lines(`**${plain(standard.name)}** ${plain(standard.title === standard.name ? '' : standard.title)}`, factList(standard.facts));
        }
        case 'phrase': {
            const phrase = vocabulary.phrases.get(symbol.id);
            return phrase && lines(`phrase **${plain(phrase.id)}**`, quoted(phrase.prose.text));
        }
        case 'person': {
            const person = vocabulary.people.get(symbol.id);
            return person && lines(`**${plain(person.name)}**`, factList(person.facts));
        }
        case 'check': return checkText(symbol.id);
        case 'run': {
            const run = record?.runs.find(r => r.id === symbol.id);
            const chain = run && [...run.components.map(c => c.id), ...(run.end === 'component' ? [] : [run.end])].join(' → ');
            return run && lines(`**${plain(run.id)}** ${plain(run.title ?? '')}`, plain(chain ?? ''), factList(run.facts));
        }
        case 'finding': {
            const finding = record?.findings.find(f => f.id === symbol.id);
            return finding && lines(`**${plain(finding.id)}** ${plain(finding.title)}`, factList(finding.facts));
        }
        case 'system': {
            const system = record?.systems.find(s => s.id === symbol.id);
            return system && `**${plain(system.id)}** ${plain(system.title)}`;
        }
        case 'block': {
            const set = symbol.id === 'vessel' ? record?.vessel : record?.survey;
            return set && lines(`**${plain(symbol.id === 'vessel' ? record?.vessel?.name ?? '' : record?.survey?.number ?? '')}**`, factList(set.facts));
        }
        case 'file': return `Opens ${code(symbol.id)}.`;
        default: return undefined;
    }
}

function factsOf(id: string, { record }: View): ReadonlyMap<string, Fact> | undefined {
    return (id === 'vessel' ? record?.vessel : id === 'survey' ? record?.survey : record?.components.get(id))?.facts;
}

function componentText(component: Component, view: View): string {
    const { vocabulary, record, analysis } = view;
    const kind = vocabulary.kinds.get(component.kind);
    const computed = record ? [...computedProperties(kind?.lineage ?? []).values()].flatMap(c => {
        const text = c.text(component, record);
        return text === undefined ? [] : [`- ${c.name}: ${plain(text)} *(computed; ${plain(c.assumption)})*`];
    }) : [];
    const problems = (analysis?.problems ?? []).filter(p => p.components[0] === component && (p.severity !== 'hint' || p.answeredBy !== undefined));
    return lines(
        `**${plain(component.id)}** ${plain(component.title ?? '')} · ${plain(kind?.title ?? component.kind)}`,
        kind?.about === undefined ? undefined : plain(kind.about),
        factList(component.facts),
        computed.join('\n'),
        problems.slice(0, 8).map(p => `- ${p.answeredBy === undefined ? '**open**' : p.answeredBy === 'accept' ? 'accepted' : `answered by ${plain(p.answeredBy)}`}: ${plain(p.message)}`).join('\n'),
        problems.length > 8 ? `and ${problems.length - 8} more` : undefined,
    );
}

function kindText(kind: KindInfo, { vocabulary }: View): string {
    const own = [...kind.properties].sort(([, a], [, b]) => kind.lineage.indexOf(a.declaredBy) - kind.lineage.indexOf(b.declaredBy));
    const shown = own.slice(0, 14).map(([name, type]) => `- ${code(name)}: ${plain(type.about ?? typeTitle(type, vocabulary))}`);
    return lines(
        `**${plain(kind.title)}** ${code(kind.id)}${kind.parent === undefined ? '' : `, a ${plain(kind.lineage.slice(1).join(', a '))}`}`,
        kind.about === undefined ? undefined : plain(kind.about), kind.vesselPart === undefined ? undefined : `Belongs to: ${plain(vocabulary.wordLists.get('part')?.words.get(kind.vesselPart) ?? kind.vesselPart)}.`, shown.join('\n'), own.length > 14 ? `and ${own.length - 14} more` : undefined,
    );
}

function propertyText(name: string, type: PropertyType, { vocabulary }: View): string {
    return lines(
        `**${plain(name)}**${type.about === undefined ? '' : `: ${plain(type.about)}`}`,
        `Takes ${plain(typeTitle(type, vocabulary))}${type.isList ? ', or several parted by commas' : ''}.${type.usual ? ` Usual: ${plain(type.usual.written)}.` : ''}`,
    );
}

/** A figure in both unit systems and in SI. */
export function figureText(written: string): string {
    const parsed = parseFigure(written);
    if (!parsed.ok) {
        return plain(parsed.problem);
    }
    const { figure } = parsed;
    return lines(`**${plain(inBothSystems(figure))}**`, siText(figure));
}

const siUnits: Readonly<Record<string, string>> = {
    length: 'm', area: 'm²', volume: 'm³', mass: 'kg', time: 's', temperature: 'K', pressure: 'Pa', flow: 'm³/s', speed: 'm/s', voltage: 'V', current: 'A', resistance: 'Ω',
    power: 'W', charge: 'C', energy: 'J', force: 'N', torque: 'N·m', angle: 'rad', rotation: 'rad/s', frequency: 'Hz',
};

function siText(figure: Figure): string | undefined {
    if (figure.kind === 'date') {
        return figure.precision === 'day' ? new Date(Date.UTC(figure.year, figure.month - 1, figure.day ?? 1)).toUTCString().slice(0, 16) : undefined;
    }
    const unit = siUnits[figure.dimension];
    if (unit === undefined) {
        return undefined;
    }
    const number = (si: number) => String(Number(si.toPrecision(6)));
    const range = figure.low !== undefined && figure.high !== undefined ? `${number(figure.low)} to ${number(figure.high)}` : number(figure.si);
    return `SI: ${range} ${unit}${figure.tolerance === undefined ? '' : ` ± ${number(figure.tolerance)} ${unit}`}`;
}

function materialText(material: Material): string {
    const volts = (range: { readonly low: number; readonly high: number } | undefined) => range && `${mV(range.low)} to ${mV(range.high)}`;
    const source = ['provenance', 'source', 'table', 'potential-source'].flatMap(name => material.facts.get(name) ?? [])[0];
    return lines(
        `**${plain(material.title)}** ${code(material.id)} · ${plain(material.class)}`,
        material.potentialV ? `Potential ${volts(material.potentialV)} against the saturated calomel electrode in flowing sea water${source ? ` (${factText(source)})` : ''}.` : undefined,
        material.activePotentialV ? `Where it turns active: ${volts(material.activePotentialV)}.` : undefined,
        material.zinc === undefined ? undefined : `Zinc ${Number((material.zinc * 100).toPrecision(3))} % by mass.`,
        factList(new Map([...material.facts].filter(([name]) => !['class', 'potential', 'active-potential', 'zinc'].includes(name)))),
    );
}

const mV = (v: number): string => `${Math.round(convertTo(v, 'mV'))} mV`;

function wordText(word: string, owner: string, { vocabulary }: View): string | undefined {
    const list = vocabulary.wordLists.get(owner);
    const meaning = list?.words.get(word);
    if (list) {
        return lines(`**${plain(word)}** · ${plain(list.title ?? list.id)}`, meaning === undefined || meaning === '' ? undefined : plain(meaning));
    }
    const [kind = '', property = ''] = owner.split('.');
    const type = vocabulary.kinds.get(kind)?.properties.get(property);
    return type && lines(`**${plain(word)}** · ${plain(property)}${type.about === undefined ? '' : `: ${plain(type.about)}`}`, `Takes ${plain(typeTitle(type, vocabulary))}.`);
}

function checkText(id: string): string | undefined {
    const check = checkById(id);
    return check && lines(`**${plain(check.title)}** ${code(check.id)}`, plain(check.why), `*Computes:* ${plain(check.computes)}`, check.sources.map(source => `- ${plain(sourceLine(source))}`).join('\n'));
}

function factList(facts: ReadonlyMap<string, Fact>): string {
    const shown = [...facts.values()].slice(0, 20).map(fact => `- ${fact.name}: ${factText(fact)}`);
    return [...shown, ...(facts.size > 20 ? [`- and ${facts.size - 20} more`] : [])].join('\n');
}

function factText(fact: Fact): string {
    return fact.values.map(valueText).join(', ');
}

/** A value for reading, figures in both unit systems. */
export function valueText(value: Value): string {
    switch (value.type) {
        case 'quantity': return plain(inBothSystems(value.figure));
        case 'date': return plain(value.figure.written);
        case 'word': return plain(value.amount ? `${value.word} ${value.amount.figure.written}` : value.word);
        case 'material': return plain(value.material.id);
        case 'component': case 'person': case 'check': return plain(value.id);
        case 'citation': return plain(value.clause === undefined ? value.standard : `${value.standard}, ${value.clause}`);
        case 'text': return plain(value.prose.text.length > 200 ? `${value.prose.text.slice(0, 200)}…` : value.prose.text);
    }
}

function lines(...parts: readonly (string | undefined)[]): string {
    return parts.filter(part => part !== undefined && part.trim() !== '').join('\n\n');
}

/** Text that Markdown leaves as it is. */
function plain(text: string): string {
    return text.replace(/[\\`*_{}[\]<>#|~]/g, '\\$&').replace(/\s*\n\s*/g, ' ');
}

function code(text: string): string {
    return `\`${text.replaceAll('`', '')}\``;
}

function quoted(text: string): string {
    return text.split('\n').map(line => `> ${plain(line)}`).join('\n');
}
