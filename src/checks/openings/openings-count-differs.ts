/** As many openings outside as inside, or one was never found. */
import { siOf } from '../../record/model.js';
import { defineCheck } from '../contract.js';

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
        raise({
            components: [], at: survey.facts.get('openings-inside')?.span ?? survey.span,
            message: `${outside} openings were counted outside, ${inside} inside and ${blanked} blanked: ${Math.abs(outside - inside - blanked)} ${outside > inside + blanked ? 'was not found inside' : 'more inside than outside'}. Find it, and record it in the register.`,
            figures: { outside: { value: outside, unit: '' }, inside: { value: inside, unit: '' }, blanked: { value: blanked, unit: '' } },
            draft: {
                title: 'Openings outside and inside do not agree', urgency: 'before-launch',
                seen: '{survey.openings-outside} openings were counted outside the hull, {survey.openings-inside} inside.',
                because: 'An opening that is not found inside cannot be watched or closed.',
                recommend: 'Find the opening from inside, opening up joinery where needed, and inspect its fitting.',
                cites: [['Good practice']],
            },
        });
    },
});
