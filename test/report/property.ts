/** A property of many inputs as one test. */
import * as fc from 'fast-check';
import { test as single } from 'vitest';

export { fc };

export function test<T>(name: string, inputs: fc.Arbitrary<T>, holds: (input: T) => void): void {
    single(name, () => { fc.assert(fc.property(inputs, input => { holds(input); }), { numRuns: 200 }); });
}
