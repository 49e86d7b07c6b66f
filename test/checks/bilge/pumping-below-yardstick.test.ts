import { expect, it } from 'vitest';
import { raisedBy, summary, urgencies } from '../check-text.js';

const id = 'pumping-below-yardstick';
const boat = (length: string, pumps: string) => `vessel "M" { length-on-deck: ${length} }\n${pumps}\n`;

it.each([
    ['6 m', 'bilge-pump P1 { real-flow: 10 L/min }', 0], ['6.1 m', 'bilge-pump P1 { real-flow: 14.9 L/min }', 1], ['11.9 m', 'bilge-pump P1 { real-flow: 15 L/min }', 0],
    ['12 m', 'bilge-pump P1 { real-flow: 29.9 L/min }', 1], ['12 m', 'bilge-pump P1 { rated-flow: 60 L/min }', 0], ['12 m', 'bilge-pump P1 { rated-flow: 59 L/min }', 1],
    ['12 m', 'bilge-pump P1 { rated-flow: 500 gph }\nbilge-pump P2 { rated-flow: 500 gph }', 0], ['40 ft', 'bilge-pump P1 { rated-flow: 500 gph }', 1],
])('%s, %s: %i', (length, pumps, count) => {
    expect(raisedBy(id, boat(length, pumps))).toHaveLength(count);
});

it('does not count a pump that does not work', () => {
    const one = boat('12 m', 'bilge-pump P1 { real-flow: 40 L/min  works: no }\nbilge-pump P2 { real-flow: 20 L/min }');
    expect(summary(id, one)).toEqual(['warning P1 P2']);
    const none = boat('12 m', 'bilge-pump P1 { real-flow: 40 L/min  works: no }');
    expect(summary(id, none)).toEqual(['error P1']);
    expect([...urgencies(id, one), ...urgencies(id, none)]).toEqual(['in-upkeep', 'before-departure']);
});

it('asks for a flow that would decide', () => {
    expect(summary(id, boat('12 m', 'bilge-pump P1 { real-flow: 20 L/min }\nbilge-pump P2'))).toEqual(['hint P2']);
    expect(summary(id, boat('12 m', 'bilge-pump P1 { real-flow: 40 L/min }\nbilge-pump P2'))).toEqual([]);
});

it('takes the share of the rating that the firm takes, and says whose it is', () => {
    const text = boat('12 m', 'bilge-pump P1 { rated-flow: 50 L/min }');
    expect(raisedBy(id, text)[0]?.message).toContain('50 % of the rating, the usual limit');
    expect(summary(id, `yardsticks { pump-share: 60 % }\n${text}`)).toEqual([]);
    expect(raisedBy(id, `yardsticks { pump-share: 40 % }\n${text}`)[0]?.message).toContain('40 % of the rating, the firm’s limit');
});

it('estimates the flow at the lift where the head of the maker is recorded, and counts pumps alike', () => {
    expect(summary(id, boat('12 m', 'bilge-pump P1 { rated-flow: 50 L/min  lift: 1 m  makers-head: 4 m }'))).toEqual([]);
    expect(summary(id, boat('12 m', 'bilge-pump P1 { rated-flow: 50 L/min  lift: 3.5 m  makers-head: 4 m }'))).toEqual(['warning P1']);
    expect(summary(id, boat('12 m', 'bilge-pump P1 { rated-flow: 30 L/min  quantity: 2 }'))).toEqual([]);
});
