import { describe, expect, it } from 'vitest';
import { correctionsIn, raisedBy, summary, urgencies } from '../check-text.js';

const id = 'blower-too-small';
const boat = (blower: string, fuel = 'gasoline') => `vessel "M" { fuel: ${fuel} }\nblower B1 { ${blower} }\n`;

describe('rated', () => {
    it.each([
        ['20 ft3', '50 cfm', 0], ['20 ft3', '49 cfm', 1], ['33.9 ft3', '50 cfm', 0], ['34 ft3', '50 cfm', 1], ['34 ft3', '51 cfm', 0], ['60 ft3', '90 cfm', 0], ['60 ft3', '89 cfm', 1],
        ['100 ft3', '150 cfm', 0], ['100 ft3', '149 cfm', 1], ['200 ft3', '200 cfm', 0], ['200 ft3', '199 cfm', 1], ['319.7 ft3', '259.9 cfm', 0], ['319.7 ft3', '259 cfm', 1],
        ['1.7 m3', '153.1 m3/h', 0], ['1.7 m3', '152 m3/h', 1],
    ] as const)('%s with %s: %i', (volume, flow, count) => {
        expect(raisedBy(id, boat(`space-volume: ${volume}  rated-flow: ${flow}`))).toHaveLength(count);
    });
});

describe('measured', () => {
    it.each([['20 ft3', '20 cfm', 0], ['20 ft3', '19 cfm', 1], ['60 ft3', '36 cfm', 0], ['60 ft3', '35 cfm', 1], ['200 ft3', '80 cfm', 0], ['200 ft3', '79 cfm', 1]] as const)('%s with %s: %i', (volume, flow, count) => {
        expect(raisedBy(id, boat(`space-volume: ${volume}  measured-flow: ${flow}`))).toHaveLength(count);
    });
    it('and rated short are one problem', () => {
        expect(raisedBy(id, boat('space-volume: 60 ft3  rated-flow: 60 cfm  measured-flow: 20 cfm'))[0]?.message).toMatch(/is rated 60 cfm .*, and moves 20 cfm/);
    });
});

describe('several blowers of one space', () => {
    const two = (facts: string, other: string) => `vessel "M" { fuel: gasoline }\nmachinery-space S1 { volume: 60 ft3 }\nblower B1 { serves: S1  ${facts} }\nblower B2 { serves: S1  ${other} }\n`;
    it('add up, and one that does not work counts nothing', () => {
        expect(summary(id, two('rated-flow: 45 cfm', 'rated-flow: 45 cfm'))).toEqual([]);
        expect(summary(id, two('rated-flow: 45 cfm', 'rated-flow: 45 cfm  works: no'))).toEqual(['error B1 B2']);
        expect(raisedBy(id, two('works: no', 'works: no'))[0]?.message).toContain('not working');
    });
    it('do not add up over spaces', () => {
        const text = 'vessel "M" { fuel: gasoline }\nmachinery-space S1 { volume: 60 ft3 }\nmachinery-space S2 { volume: 20 ft3 }\nblower B1 { serves: S1  rated-flow: 60 cfm }\nblower B2 { serves: S2  rated-flow: 60 cfm }\n';
        expect(summary(id, text)).toEqual(['error B1']);
    });
    it('ask for the rating that would decide', () => {
        expect(summary(id, two('rated-flow: 45 cfm', ''))).toEqual(['hint B2'].map(() => 'hint B1'));
        expect(raisedBy(id, two('rated-flow: 45 cfm', ''))[0]?.message).toContain('B2');
        expect(summary(id, two('rated-flow: 95 cfm', ''))).toEqual([]);
    });
});

describe('what fuel', () => {
    it('is left alone on diesel, electric and outboard', () => {
        expect(summary(id, boat('space-volume: 60 ft3  rated-flow: 50 cfm', 'diesel'))).toEqual([]);
        expect(summary(id, boat('space-volume: 60 ft3  rated-flow: 50 cfm', 'electric'))).toEqual([]);
        expect(summary(id, `${boat('space-volume: 60 ft3  rated-flow: 50 cfm')}outboard O1 { fuel: gasoline }\n`)).toEqual([]);
    });
    it('is asked for where she has both, or none is recorded', () => {
        const blower = 'blower B1 { space-volume: 60 ft3  rated-flow: 50 cfm }\n';
        expect(summary(id, `vessel "M" { fuel: diesel }\ngenerator G1 { fuel: gasoline }\n${blower}`)).toEqual(['hint B1']);
        expect(summary(id, blower)).toEqual(['hint B1']);
        expect(summary(id, `vessel "M" { fuel: diesel }\ngenerator G1 { fuel: gasoline }\nblower B1 { serves: G1  space-volume: 60 ft3  rated-flow: 50 cfm }\n`)).toEqual(['error B1']);
        expect(summary(id, `vessel "M" { fuel: diesel }\nmachinery-space S1 { gasoline: yes  volume: 60 ft3 }\nblower B1 { serves: S1  rated-flow: 50 cfm }\n`)).toEqual(['error B1']);
    });
});

it('asks for the volume, and judges without it what no volume allows', () => {
    expect(summary(id, boat('rated-flow: 60 cfm'))).toEqual(['hint B1']);
    expect(summary(id, boat('rated-flow: 40 cfm'))).toEqual(['error B1']);
    expect(summary(id, boat('place: "aft"'))).toEqual([]);
    expect(summary(id, boat('space-volume: 60 ft3'))).toEqual(['hint B1']);
});

it('is silent where direct openings leave the space open, 15 in2 for each cubic foot', () => {
    const open = (area: string) => `vessel "M" { fuel: gasoline }\nmachinery-space S1 { volume: 10 ft3  open-area: ${area} }\nblower B1 { serves: S1  rated-flow: 20 cfm }\n`;
    expect(summary(id, open('150 in2'))).toEqual([]);
    expect(summary(id, open('149 in2'))).toEqual(['error B1']);
});

it('is due before use and offers the mistaken unit and the open space', () => {
    const text = boat('space-volume: 60 m3  rated-flow: 240 cfm');
    expect(urgencies(id, text)).toEqual(['before-use']);
    expect(correctionsIn(id, text)).toEqual(['Read 60 m3 as 60 ft3', 'Record the space as open to the air']);
});
