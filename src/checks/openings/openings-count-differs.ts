/** As many openings outside as inside, or one was never found. */
import { siOf } from '../../record/model.js';
import { defineCheck, type Correction } from '../contract.js';

export const openingsCountDiffers = defineCheck({
    id: 'openings-count-differs',
    group: 'openings',
    severity: 'error',
    title: 'Openings outside and inside do not agree',
    why: 'One was never found inside.',
    needs: ['survey: openings-outside, openings-inside, openings-blanked'],
    computes: 'A fault where the count outside differs from the count inside plus those blanked.',
    sources: [{ text: 'count outside equals count inside', provenance: 'practice' }],
    limits: ['It compares the counts recorded in the survey block, not the components declared.'],
    examples: [{
        name: 'one too few inside',
        bad: 'survey "1" pre-purchase { openings-outside: 9  openings-inside: 7  openings-blanked: 1 }\n',
        fixed: 'survey "1" pre-purchase { openings-outside: 9  openings-inside: 8  openings-blanked: 1 }\n',
    }, {
        name: 'one glassed over and not counted',
        bad: 'survey "1" pre-purchase { openings-outside: 9  openings-inside: 8 }\n',
        fixed: 'survey "1" pre-purchase { openings-outside: 9  openings-inside: 8  openings-blanked: 1 }\n',
        correction: 'Record 1 opening as blanked',
    }],
    silent: [
        { name: 'counts agree with one blanked', text: 'survey "1" pre-purchase { openings-outside: 9  openings-inside: 8  openings-blanked: 1 }\n' },
        { name: 'only one count', text: 'survey "1" pre-purchase { openings-outside: 9 }\n' },
    ],
    run({ survey }, raise) {
        if (!survey) {
            return;
        }
        const outside = siOf(survey, 'openings-outside');
        const inside = siOf(survey, 'openings-inside');
        const blanked = siOf(survey, 'openings-blanked') ?? 0;
        if (outside === undefined || inside === undefined || outside === inside + blanked) {
            return;
        }
        const missing = outside - inside - blanked;
        const how = missing > 0 ? `${missing} ${missing === 1 ? 'was' : 'were'} not found inside` : `${-missing} more ${missing === -1 ? 'was' : 'were'} counted inside than there ${missing === -1 ? 'is' : 'are'} outside`;
        const written = survey.facts.get('openings-blanked');
        const after = survey.facts.get('openings-inside')?.span;
        const title = `Record ${blanked + missing} opening${blanked + missing === 1 ? '' : 's'} as blanked`;
        const corrections: Correction[] = missing < 0 ? [] : written ? [{ kind: 'replace-text', title, span: written.span, text: `${blanked + missing}` }]
            : after ? [{ kind: 'replace-text', title, span: { ...after, start: after.end }, text: `  openings-blanked: ${missing}` }] : [];
        raise({
            components: [], at: after ?? survey.span,
            message: `${counted(outside)} counted outside, ${inside} inside and ${blanked} blanked: ${how}. An opening that is not found cannot be watched or closed; find it, and record it in the register.`,
            figures: { outside: { value: outside, unit: '' }, inside: { value: inside, unit: '' }, blanked: { value: blanked, unit: '' } },
            corrections,
            draft: {
                title: 'Openings outside and inside do not agree', urgency: 'before-launch',
                seen: `{survey.openings-outside} openings were counted outside the hull, {survey.openings-inside} inside${written ? ' and {survey.openings-blanked} blanked' : ''}.`,
                because: missing > 0 ? 'An opening that is not found inside cannot be watched or closed.' : 'One of the counts is wrong, and an opening may have been missed outside.',
                recommend: missing > 0 ? 'Find the opening from inside, opening up joinery where needed, and inspect its fitting.' : 'Count the openings again from outside and from inside, and inspect each.',
                cites: [['Good practice']],
            },
        });
    },
});

const counted = (openings: number): string => openings === 1 ? '1 opening was' : `${openings} openings were`;
