/** A filled cockpit that takes too long to drain, or hangs on one drain. */
import { flagOf, nameOf, ofKind, siOf, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { drainTimeS, offshoreLimitS } from '../../trade/cockpit-drain.js';
import { defineCheck } from '../contract.js';

export const cockpitDrainsSlow = defineCheck({
    id: 'cockpit-drains-slow',
    group: 'openings',
    severity: 'error',
    title: 'Cockpit drains too slowly',
    why: 'A filled cockpit holds the stern down until it has drained.',
    needs: ['cockpit: sole-area, depth, drains, drain-bore', 'offshore, or used-on of the vessel, for the limit of time'],
    computes: 't = 2 A (√h − √0.1) ÷ (C a √(2 g)), C 0.6, down to 0.1 m. A fault over 300 s where she is meant for offshore use, and where there is a single drain or none.',
    sources: [{ text: 'emptying of a tank through openings', provenance: 'computed' }, { text: 'limits of draining time', standard: 'ISO 11812', provenance: 'memory' }],
    limits: ['Drain hoses, gratings and water standing outside are neglected: real draining is slower.', 'The full tables of the standard are not applied.'],
    examples: [{
        name: 'large cockpit, small drains',
        bad: 'cockpit C1 { sole-area: 3 m2  depth: 450 mm  drains: 2  drain-bore: 25 mm  offshore: yes }\n',
        fixed: 'cockpit C1 { sole-area: 3 m2  depth: 450 mm  drains: 2  drain-bore: 50 mm  offshore: yes }\n',
    }],
    silent: [
        { name: 'a vessel used inland', text: 'vessel "Marram" { used-on: inland }\ncockpit C1 { sole-area: 3 m2  depth: 450 mm  drains: 2  drain-bore: 25 mm }\n' },
        { name: 'inshore use', text: 'cockpit C1 { sole-area: 3 m2  depth: 450 mm  drains: 2  drain-bore: 25 mm  offshore: no }\n' },
        { name: 'no deeper than what may remain', text: 'cockpit C1 { sole-area: 3 m2  depth: 100 mm  drains: 2  drain-bore: 25 mm  offshore: yes }\n' },
        { name: 'bore not recorded', text: 'cockpit C1 { sole-area: 3 m2  depth: 450 mm  drains: 2  offshore: yes }\n' },
    ],
    run(record, raise) {
        for (const cockpit of ofKind(record, 'cockpit')) {
            const drains = siOf(cockpit, 'drains');
            const soleAreaM2 = siOf(cockpit, 'sole-area');
            const depthM = siOf(cockpit, 'depth');
            const boreM = siOf(cockpit, 'drain-bore');
            const offshore = isForOffshore(record, cockpit);
            const seconds = drains && soleAreaM2 !== undefined && depthM !== undefined && boreM !== undefined
                ? drainTimeS({ soleAreaM2, depthM, drainAreaM2: drains * Math.PI / 4 * boreM ** 2 }) : undefined;
            const isFew = drains === 0 || drains === 1;
            const isSlow = seconds !== undefined && seconds > offshoreLimitS;
            if (isSlow && offshore === undefined && !isFew) {
                raise({ components: [cockpit], at: cockpit.idSpan, severity: 'hint', message: `${nameOf(cockpit)} drains in about ${Math.round(seconds)} s; record offshore, or used-on of the vessel, to tell whether that is too long.` });
            } else if ((isSlow && offshore === true) || isFew) {
                const has = drains === 0 ? 'no drain' : drains === 1 ? 'a single drain' : undefined;
                const time = seconds === undefined ? '' : ` and drains from full to 100 mm (4 in) in about ${Math.round(seconds)} s`;
                const over = isSlow && offshore === true ? `, over ${offshoreLimitS} s` : '';
                raise({
                    components: [cockpit], at: (isFew ? cockpit.facts.get('drains') : cockpit.facts.get('drain-bore'))?.span ?? cockpit.idSpan,
                    message: `${nameOf(cockpit)} has ${has ?? `${drains ?? 0} drains`}${time}${over}. A filled cockpit holds the stern down; fit more or larger drains.`,
                    figures: seconds === undefined ? {} : { time: { value: Math.round(seconds), unit: 's' }, limit: { value: offshoreLimitS, unit: 's' } },
                    corrections: flagOf(cockpit, 'offshore') === true && !isFew ? [{ kind: 'set-fact', title: 'Record that she is not meant for offshore use', component: cockpit, property: 'offshore', value: 'no' }]
                        : drains === 1 && !isSlow ? [{ kind: 'set-fact', title: 'Record two drains', component: cockpit, property: 'drains', value: '2' }] : [],
                    draft: {
                        title: 'Cockpit drains slowly', urgency: offshore === true ? 'before-departure' : 'in-upkeep',
                        seen: `The cockpit has ${has ?? `{${cockpit.id}.drains} drains`}${drains !== 0 && cockpit.facts.has('drain-bore') ? ` of {${cockpit.id}.drain-bore} bore` : ''}${time}${over}, drain hoses neglected.`,
                        because: `A filled cockpit holds the stern down until it has drained${drains === 1 ? ', and a single drain is easily blocked' : ''}.`,
                        recommend: 'Fit more or larger drains, each with its own outlet.',
                        cites: [['ISO 11812']],
                    },
                });
            }
        }
    },
});

/** Whether she is meant for offshore use: as recorded of the cockpit, else by the waters she is used on. */
function isForOffshore(record: SurveyRecord, cockpit: Component): boolean | undefined {
    const usedOn = record.vessel ? wordOf(record.vessel, 'used-on') : undefined;
    return flagOf(cockpit, 'offshore') ?? (usedOn === undefined ? undefined : usedOn === 'offshore');
}
