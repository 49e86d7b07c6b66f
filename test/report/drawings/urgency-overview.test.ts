import { expect, test } from 'vitest';
import { urgencyOverview } from '../../../src/report/drawings/urgency-overview.js';
import { all, contextOf, treeOf } from './drawn.js';

const finding = (id: string, on: string, urgency: string) => `finding ${id} "Title of ${id}"${on} { ${urgency === '' ? '' : `urgency: ${urgency}  `}seen: "s"  because: "b"  recommend: "r" }\n`;
const text = `
system hull "Hull & <deck>" {
    hull-shell HS1 "Shell" { }
    ${finding('F1', ' on HS1', 'keep-watch')}${finding('F2', ' on HS1', 'before-launch')}${finding('F3', '', 'before-launch')}
}
system skin "Openings" {
    through-hull T1 "Intake" { }
    ${finding('F4', ' on T1', 'before-launch')}
}
system rig "Rig" { }
${finding('F5', '', 'before-use')}${finding('F6', ' on T1, HS1', 'before-use')}${finding('F7', '', '')}
`;

test('every finding is counted once and linked once, under its system or that of its first part', () => {
    const markup = urgencyOverview(contextOf(text));
    const [table] = all(treeOf(markup ?? ''), 'table');
    const rows = (table ? all([table], 'tr') : []).map(row => [...all([row], 'th'), ...all([row], 'td')].map(cell => cell.text.replace(/\s+/g, ' ').trim()));
    expect(rows).toEqual([
        ['System', 'No urgency recorded', 'Before launch', 'Before use', 'Keep watch', 'All'],
        ['Hull & <deck>', '', '2: F2, F3', '', '1: F1', '3'],
        ['Openings', '', '1: F4', '1: F6', '', '2'],
        ['The vessel as a whole', '1: F7', '', '1: F5', '', '2'],
        ['All systems', '1', '3', '2', '1', '7'],
    ]);
    const links = (table ? all([table], 'a') : []).map(link => link.attributes.get('href'));
    expect([...links].sort()).toEqual(['#finding-F1', '#finding-F2', '#finding-F3', '#finding-F4', '#finding-F5', '#finding-F6', '#finding-F7']);
});

test('a square stands for each finding', () => {
    const [table] = all(treeOf(urgencyOverview(contextOf(text)) ?? ''), 'table');
    const squares = (table ? all(all([table], 'tbody'), 'svg') : []).map(svg => all([svg], 'rect').length);
    expect(squares).toEqual([2, 1, 1, 1, 1, 1]);
});

test('one finding is no overview', () => {
    expect(urgencyOverview(contextOf(finding('F1', '', 'before-use')))).toBeUndefined();
    expect(urgencyOverview(contextOf(''))).toBeUndefined();
});
