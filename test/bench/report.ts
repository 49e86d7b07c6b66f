/**
 * The report of the largest survey beside a general document tool (Asciidoctor, MIT) that lays out the same content:
 * the same headings, paragraphs, lists and tables, taken from the report itself and written as AsciiDoc.
 */
import { convert, LoggerManager, NullLogger } from '@asciidoctor/core';
import { parse, type DefaultTreeAdapterTypes } from 'parse5';
import { analyseText } from '../../src/checks/survey.js';
import { computedFacts } from '../../src/record/computed.js';
import { renderReport } from '../../src/report/report.js';
import { largestSurvey, median } from './checks.js';

type Node = DefaultTreeAdapterTypes.ChildNode;
type Element = DefaultTreeAdapterTypes.Element;
const isElement = (node: Node): node is Element => 'tagName' in node;
const passedOver = new Set(['style', 'svg', 'nav', 'head', 'template']);

function words(node: Node): string {
    if (!isElement(node)) {
        return 'value' in node ? node.value : '';
    }
    return passedOver.has(node.tagName) ? '' : node.childNodes.map(words).join('');
}

const line = (text: string) => text.replace(/\s+/g, ' ').trim();
/** A blank behind the first sign of what would otherwise begin a block keeps a paragraph a paragraph. */
const paragraph = (text: string) => text === '' ? '' : `{empty}${text}\n\n`;

/** The content of the report in AsciiDoc. */
function asciiDoc(node: Node): string {
    if (!isElement(node)) {
        return '';
    }
    const { tagName } = node;
    if (passedOver.has(tagName)) {
        return '';
    }
    const heading = /^h([1-4])$/.exec(tagName);
    if (heading) {
        return `\n[discrete]\n${'='.repeat(Number(heading[1]) + 1)} ${line(words(node))}\n\n`;
    }
    switch (tagName) {
        case 'p': case 'figcaption': case 'caption': return paragraph(line(words(node)));
        case 'li': return `* ${line(words(node))}\n`;
        case 'ul': case 'ol': return `${node.childNodes.map(asciiDoc).join('')}\n`;
        case 'dt': return `${line(words(node))}:: `;
        case 'dd': return `${line(words(node)) || '{empty}'}\n`;
        case 'dl': return `${node.childNodes.map(asciiDoc).join('')}\n`;
        case 'table': {
            const rows = [...rowsOf(node)];
            const width = Math.max(1, ...rows.map(row => row.length));
            return `[cols="${Array.from({ length: width }, () => '1').join(',')}"]\n|===\n${rows.map(row => Array.from({ length: width }, (_, i) => `|${row[i] ?? ''}`).join(' ')).join('\n')}\n|===\n\n`;
        }
        default: return node.childNodes.map(asciiDoc).join('');
    }
}

function* rowsOf(node: Element): Generator<string[]> {
    for (const child of node.childNodes) {
        if (isElement(child)) {
            if (child.tagName === 'tr') {
                yield child.childNodes.filter(isElement).map(cell => line(words(cell)).replaceAll('|', '\\|'));
            } else {
                yield* rowsOf(child);
            }
        }
    }
}

/** Prints the comparison. */
export async function benchReport(rounds = 5): Promise<void> {
    LoggerManager.setLogger(new NullLogger());
    const { record, problems, gaps } = analyseText(largestSurvey());
    const render = () => renderReport({ record, problems, gaps, photos: new Map(), computed: computedFacts(record), mode: 'file', lineOf: span => ({ file: span.uri, line: 1 }) });
    const html = render();
    const body = parse(html).childNodes.find(isElement)?.childNodes.filter(isElement).find(element => element.tagName === 'body');
    const text = `= Report\n\n${body ? asciiDoc(body) : ''}`;
    const times = { ours: [] as number[], theirs: [] as number[] };
    let theirs = '';
    for (let round = 0; round < rounds; round++) {
        let start = performance.now();
        render();
        times.ours.push(performance.now() - start);
        start = performance.now();
        theirs = String(await convert(text, { standalone: true, safe: 'secure' }));
        times.theirs.push(performance.now() - start);
    }
    const [ours, other] = [median(times.ours), median(times.theirs)];
    console.log(`\nReport of the largest survey, drawn from the analysed record: ${(html.length / 1e6).toFixed(1)} MB of HTML.`);
    console.log(`Garboard ${ours.toFixed(0)} ms, Asciidoctor on the same content (${(text.length / 1e6).toFixed(1)} MB of AsciiDoc, ${(theirs.length / 1e6).toFixed(1)} MB of HTML) ${other.toFixed(0)} ms: ratio ${(ours / other).toFixed(2)}`);
}
