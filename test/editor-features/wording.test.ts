import { describe, expect } from 'vitest';
import { completionOf, hovers, inEveryGuise, taken } from './editor.js';

describe('the firm\'s words and outlines', () => {
    inEveryGuise('the names of standing words are offered', 'wording {\n    caution-w<|>\n}\n', async text => {
        expect(taken(await completionOf(text), 'caution-work')).toContain('    caution-work: ');
    });
    inEveryGuise('those already set are not', 'wording {\n    caution-work: "x"\n    <|>\n}\n', async text => {
        const { labels } = await completionOf(text);
        expect(labels).toContain('caution-day');
        expect(labels).not.toContain('caution-work');
    });
    hovers('a name, with when its words stand', 'wording {\n    caution-<|>mast: "x"\n}\n', 'caution-mast', 'stands where one is recorded that was neither climbed nor unstepped');
    inEveryGuise('the sections are offered in an outline', 'outline damage {\n    sections: summary, <|>\n}\n', async text => {
        expect((await completionOf(text)).labels).toEqual(expect.arrayContaining(['limits', 'damage', 'statement']));
    });
    hovers('a section, with what it is', 'outline damage {\n    sections: dam<|>age\n}\n', 'damage', 'cause, extent and repair');
    inEveryGuise('facts of an occurrence are offered in a survey', 'survey "1" damage {\n    occurr<|>\n}\n', async text => {
        expect(taken(await completionOf(text), 'occurrence-date')).toContain('    occurrence-date: ');
    });
});
