/** An installed toilet without a device for its sewage, or with one that her length or its label does not allow. */
import { isDeviceAllowed, typeOneToM } from '../../trade/sanitation.js';
import { flagOf, isKind, nameOf, ofKind, runsThrough, wordOf, type Component, type SurveyRecord } from '../../record/model.js';
import { defineCheck, type Correction, type Raised } from '../contract.js';
import { lengthBoth } from '../phrasing.js';
import { lengthByTheRulesM } from '../safety/gear.js';

export const treatmentDeviceWrong = defineCheck({
    id: 'treatment-device-wrong',
    group: 'sanitation',
    severity: 'error',
    title: 'Sewage device is missing or not allowed',
    why: 'An installed toilet is to work through a device that is certified for her.',
    needs: ['toilet: treatment, portable', 'treatment-device: certified-type', 'vessel: length-overall or length-on-deck, with a device of type I', 'holding-tank, where there is one'],
    computes: 'A fault where an installed toilet is recorded with no device and no holding tank is aboard; where a device of type I serves a vessel longer than 65 ft (19.8 m); and where a treatment device carries no label.',
    sources: [
        { text: 'device by length, and its label', standard: '33 CFR 159', clause: '159.7(a)', provenance: 'published' },
        { text: 'a holding tank at ambient pressure needs no label', standard: '33 CFR 159', clause: '159.12a', provenance: 'memory' },
    ],
    limits: [
        'The rule holds on waters of the United States.',
        'A toilet whose device is not recorded is left alone, as is a portable one; where its run leads overboard through no device, the device is asked for.',
        'Where a toilet is recorded with no device and a holding tank is aboard but on no run with it, that is asked for.',
        'Whether a device works, and what lakes and rivers ask beyond this, is not judged.',
        'The printed metric length, 19.7 m, is less than 65 ft; 65 ft is judged by.',
    ],
    examples: [{
        name: 'toilet straight overboard',
        bad: 'toilet T1 { treatment: none }\n',
        fixed: 'toilet T1 { treatment: type-iii }\nholding-tank HT1\n',
    }, {
        name: 'type I at 70 ft',
        bad: `vessel "Marram" { length-overall: 70 ft }
treatment-device TD1 { certified-type: type-i }
`,
        fixed: `vessel "Marram" { length-overall: 70 ft }
treatment-device TD1 { certified-type: type-ii }
`,
        correction: 'Record TD1 as of type II',
    }, {
        name: 'no label',
        bad: 'treatment-device TD1 { certified-type: unlabeled }\n',
        fixed: 'treatment-device TD1 { certified-type: type-ii }\n',
        correction: 'Record TD1 as of type II',
    }],
    silent: [
        { name: 'type I at 65 ft', text: 'vessel "Marram" { length-overall: 65 ft }\ntreatment-device TD1 { certified-type: type-i }\n' },
        { name: 'portable toilet', text: 'toilet T1 { treatment: none  portable: yes }\n' },
        { name: 'unlabeled holding tank', text: 'holding-tank HT1 { labeled: no }\ntoilet T1 { treatment: type-iii }\n' },
        { name: 'device not recorded', text: 'vessel "Marram" { length-overall: 40 ft }\ntoilet T1\n' },
    ],
    run(record, raise) {
        const length = lengthByTheRulesM(record);
        for (const toilet of ofKind(record, 'toilet')) {
            if (flagOf(toilet, 'portable') !== true) {
                judgeToilet(record, toilet, length, raise);
            }
        }
        for (const device of ofKind(record, 'treatment-device')) {
            judgeDevice(record, device, length, raise);
        }
    },
});

type Length = ReturnType<typeof lengthByTheRulesM>;

function judgeToilet(record: SurveyRecord, toilet: Component, length: Length, raise: (problem: Raised) => void): void {
    const treatment = wordOf(toilet, 'treatment');
    const at = toilet.facts.get('treatment')?.span ?? toilet.idSpan;
    if (treatment === 'none' && !hasDevice(record, toilet)) {
        const aboard = [...ofKind(record, 'holding-tank'), ...ofKind(record, 'treatment-device')];
        const [first] = aboard;
        raise(first
            ? { components: [toilet, first], at, severity: 'hint', message: `${nameOf(toilet)} is recorded with no device, and ${nameOf(first)} is aboard; record a run from one to the other, or the treatment of the toilet, to tell whether it has one.` }
            : noDevice(toilet, at));
    } else if (treatment === 'type-i' && ofKind(record, 'treatment-device').length === 0) {
        judgeTypeOne(toilet, 'treatment', length, record, raise);
    } else if (treatment === undefined && !hasDevice(record, toilet) && ofKind(record, 'holding-tank').length + ofKind(record, 'treatment-device').length === 0) {
        const overboard = runsThrough(record, toilet).find(run => wordOf(run, 'service') === 'toilet-discharge' && run.components.some(part => isKind(record, part, 'hull-opening')));
        if (overboard) {
            raise({ components: [toilet], at: toilet.idSpan, severity: 'hint', message: `Run ${overboard.id} leads from ${nameOf(toilet)} overboard, and no device is recorded on it; record the treatment of the toilet to tell whether it has one.` });
        }
    }
}

/** A tank or device on a run with the toilet, or one that says it serves it. */
function hasDevice(record: SurveyRecord, toilet: Component): boolean {
    const isDevice = (component: Component) => isKind(record, component, 'holding-tank') || isKind(record, component, 'treatment-device');
    const serves = (component: Component) => component.facts.get('serves')?.values.some(value => value.type === 'component' && value.id === toilet.id) === true;
    return runsThrough(record, toilet).some(run => run.components.some(isDevice)) || [...record.components.values()].some(component => isDevice(component) && serves(component));
}

function noDevice(toilet: Component, at: Raised['at']): Raised {
    return {
        components: [toilet], at,
        message: `${nameOf(toilet)} is installed and discharges through no device. Sewage is not to be let out untreated; fit a device of type II or III that is certified, or take the toilet out.`,
        draft: {
            title: `Toilet ${toilet.id} has no sewage device`,
            urgency: 'before-use',
            seen: `Toilet ${toilet.id} is installed; its sewage device is recorded as {${toilet.id}.treatment}.`,
            because: 'A vessel with an installed toilet is to have a certified device for its sewage.',
            recommend: `Before toilet ${toilet.id} is used, fit a holding tank or a certified treatment device to it, or take it out.`,
            cites: [['33 CFR 159', '159.7']],
        },
    };
}

function judgeDevice(record: SurveyRecord, device: Component, length: Length, raise: (problem: Raised) => void): void {
    const type = wordOf(device, 'certified-type');
    if (type === 'type-i') {
        judgeTypeOne(device, 'certified-type', length, record, raise);
    } else if (type === 'unlabeled') {
        raise({
            components: [device], at: device.facts.get('certified-type')?.span ?? device.idSpan,
            message: `${nameOf(device)} carries no label of its certification. Only a certified device counts; find its papers, or fit one that is labeled.`,
            corrections: asTypeTwo(device, 'certified-type'),
            draft: {
                title: `Sewage device ${device.id} carries no label`,
                urgency: 'before-use',
                seen: `Treatment device ${device.id} carries no label of its certification.`,
                because: 'Only a device that is certified and labeled counts for an installed toilet.',
                recommend: `Find the papers of ${device.id} and have it labeled, or fit a certified device, before the toilet is used.`,
                cites: [['33 CFR 159', '159.7']],
            },
        });
    }
}

function asTypeTwo(component: Component, property: string): Correction[] {
    return [{ kind: 'set-fact', title: `Record ${component.id} as of type II`, component, property, value: 'type-ii' }];
}

function judgeTypeOne(component: Component, property: 'treatment' | 'certified-type', length: Length, record: SurveyRecord, raise: (problem: Raised) => void): void {
    const at = component.facts.get(property)?.span ?? component.idSpan;
    if (!length) {
        if (record.vessel) {
            raise({ components: [component], at, severity: 'hint', message: `${nameOf(component)} is of type I; record the length of the vessel, for it is allowed to 65 ft only.` });
        }
        return;
    }
    if (isDeviceAllowed('type-i', length.m)) {
        return;
    }
    raise({
        components: [component], at,
        message: `${nameOf(component)} is of type I, and she measures ${lengthBoth(length.m)}: over ${lengthBoth(typeOneToM)} only types II and III are allowed. Fit one of these.`,
        figures: { length: { value: length.m / 0.3048, unit: 'ft' }, most: { value: 65, unit: 'ft' } },
        corrections: asTypeTwo(component, property),
        draft: {
            title: `Sewage device ${component.id} is not allowed at her length`,
            urgency: 'before-use',
            seen: `The sewage device at ${component.id} is of {${component.id}.${property}}; she measures {vessel.${length.property}}.`,
            because: `On a vessel longer than ${lengthBoth(typeOneToM)} a device of type I is not allowed.`,
            recommend: 'Fit a device of type II or III before the toilet is used.',
            cites: [['33 CFR 159', '159.7']],
        },
    });
}
