/** The report's page as a tree, and the few questions that are asked of it. */
import { parse, serializeOuter, type DefaultTreeAdapterTypes } from 'parse5';
import { printable } from '../html.js';

export type Element = DefaultTreeAdapterTypes.Element;
export type Node = DefaultTreeAdapterTypes.ChildNode;

export const isElement = (node: DefaultTreeAdapterTypes.Node): node is Element => 'tagName' in node;
const isText = (node: DefaultTreeAdapterTypes.Node): node is DefaultTreeAdapterTypes.TextNode => node.nodeName === '#text';

export const attribute = (element: Element, name: string): string | undefined => element.attrs.find(attr => attr.name === name)?.value;

export function hasClass(element: Element, name: string): boolean {
    return (attribute(element, 'class') ?? '').split(/\s+/).includes(name);
}

export const elementsOf = (element: Element): Element[] => element.childNodes.filter(isElement);

/** All elements below, in the order of the text. */
export function* descendants(element: Element): Generator<Element> {
    for (const child of elementsOf(element)) {
        yield child;
        yield* descendants(child);
    }
}

export function find(element: Element, test: (element: Element) => boolean): Element | undefined {
    for (const found of descendants(element)) {
        if (test(found)) {
            return found;
        }
    }
    return undefined;
}

/** The text of a node without signs that XML or print forbids; blanks are kept as they are. */
export function textOf(node: Node): string {
    return isText(node) ? printable(node.value) : isElement(node) ? node.childNodes.map(textOf).join('') : '';
}

export const plainText = (node: Node): string => textOf(node).replace(/\s+/g, ' ').trim();

export const isTextNode = isText;

/** Head and body of a page. @throws Error where the text is no page. */
export function pageOf(markup: string): { readonly lang: string; readonly title: string; readonly body: Element } {
    const root = parse(markup).childNodes.find((node): node is Element => isElement(node) && node.tagName === 'html');
    const body = root && elementsOf(root).find(element => element.tagName === 'body');
    if (!root || !body) {
        throw new Error('There is no page to make a Word document from.');
    }
    const title = find(root, element => element.tagName === 'title');
    return { lang: attribute(root, 'lang') ?? 'en', title: title ? plainText(title) : '', body };
}

/** A drawing as a document of its own, in XML. */
export function svgMarkup(element: Element): string {
    const markup = printable(serializeOuter(element)).replaceAll('&nbsp;', '&#160;');
    return /^<svg\b[^>]*\sxmlns=/.test(markup) ? markup : markup.replace(/^<svg\b/, '<svg xmlns="http://www.w3.org/2000/svg"');
}
