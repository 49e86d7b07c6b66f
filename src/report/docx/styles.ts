/**
 * The look of the Word document, near to that of the page: its fonts are those that Word brings with it everywhere, and that other programs
 * have in the same widths.
 */
import { AlignmentType, BorderStyle, LevelFormat, LineRuleType, type INumberingOptions, type IStylesOptions } from 'docx';
import type { Paper } from '../context.js';

export const serif = 'Cambria';
export const sans = 'Calibri';
export const ink = '17212B';
export const quiet = '45525C';
export const rust = '8A2B10';
export const ruleColor = 'B7C3CA';

const twipsOfMm = (mm: number): number => Math.round(mm / 25.4 * 1440);
/** Twips of a CSS pixel, 96 to the inch. */
export const twipsOfPixel = 15;

export const margins = { top: twipsOfMm(24), right: twipsOfMm(18), bottom: twipsOfMm(21), left: twipsOfMm(18), header: twipsOfMm(11), footer: twipsOfMm(10) };

export interface Sheet {
    /** In twips. */
    readonly width: number;
    readonly height: number;
    /** Width and height of the text, in twips. */
    readonly textWidth: number;
    readonly textHeight: number;
}

export function sheetOf(paper: Paper): Sheet {
    const [width, height] = paper === 'a4' ? [twipsOfMm(210), twipsOfMm(297)] : [12_240, 15_840];
    return { width, height, textWidth: width - margins.left - margins.right, textHeight: height - margins.top - margins.bottom };
}

/** Names of the document's own styles, beside Word's for titles, headings, captions and links. */
export const own = { small: 'Small', cell: 'TableText', cellHead: 'TableHead', term: 'Term', lead: 'Lead', notice: 'Notice' } as const;

export function stylesOf(accent: string, language: string): IStylesOptions {
    const heading = (size: number, before: number, after: number, color = ink) => ({
        run: { font: sans, size, bold: true, color }, paragraph: { spacing: { before, after, line: 252, lineRule: LineRuleType.AUTO }, keepNext: true, keepLines: true },
    });
    return {
        default: {
            document: { run: { font: serif, size: 21, color: ink, language: { value: language } }, paragraph: { spacing: { after: 110, line: 271, lineRule: LineRuleType.AUTO } } },
            title: { run: { font: serif, size: 84, color: accent }, paragraph: { spacing: { before: 120, after: 120, line: 240, lineRule: LineRuleType.AUTO }, keepNext: true } },
            heading1: { ...heading(34, 480, 180, ink), paragraph: { spacing: { before: 480, after: 180, line: 252, lineRule: LineRuleType.AUTO }, keepNext: true, keepLines: true, border: { top: { style: BorderStyle.DOUBLE, size: 6, color: accent, space: 6 } } } },
            heading2: heading(26, 320, 100, accent), heading3: heading(23, 260, 60), heading4: heading(21, 200, 60),
            caption: { run: { font: sans, size: 18, color: quiet }, paragraph: { spacing: { before: 100, after: 80, line: 240, lineRule: LineRuleType.AUTO } } },
            hyperlink: { run: { color: accent, underline: { type: 'none' } } },
        },
        paragraphStyles: [
            { id: own.small, name: 'Small', basedOn: 'Normal', run: { size: 18 } },
            { id: own.lead, name: 'Lead', basedOn: 'Normal', run: { size: 24 } },
            { id: own.cell, name: 'Table Text', basedOn: 'Normal', run: { size: 18 }, paragraph: { spacing: { after: 40, line: 240, lineRule: LineRuleType.AUTO } } },
            { id: own.cellHead, name: 'Table Head', basedOn: own.cell, run: { font: sans, size: 17, bold: true, color: quiet }, paragraph: { keepNext: true } },
            { id: own.term, name: 'Term', basedOn: own.cell, run: { font: sans, size: 18, color: quiet } },
            { id: own.notice, name: 'Notice', basedOn: 'Normal', paragraph: { border: boxed(rust), spacing: { before: 160, after: 160 }, indent: { left: 100, right: 100 } } },
            { id: 'TOC1', name: 'toc 1', basedOn: 'Normal', paragraph: { spacing: { after: 60 } } },
        ],
    };
}

function boxed(color: string) {
    const side = { style: BorderStyle.SINGLE, size: 12, color, space: 5 };
    return { top: side, right: side, bottom: side, left: side };
}

export const bullets = 'bullets';
export const numbers = 'numbers';

const indentOf = (level: number) => ({ left: 320 * (level + 1), hanging: 320 });

export const numbering: INumberingOptions = {
    config: [
        { reference: bullets, levels: [0, 1, 2].map(level => ({ level, format: LevelFormat.BULLET, text: '•', alignment: AlignmentType.LEFT, style: { paragraph: { indent: indentOf(level) } } })) },
        { reference: numbers, levels: [0, 1, 2].map(level => ({ level, format: LevelFormat.DECIMAL, text: `%${level + 1}.`, alignment: AlignmentType.LEFT, style: { paragraph: { indent: indentOf(level) } } })) },
    ],
};
