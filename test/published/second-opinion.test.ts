import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BARE, hoops, laid } from '../rules/night/spec-stacks.ts';
import { leafLowOffK, randomNight, VERGE_OF_WETTING_K } from './accuracy/second-opinion.ts';

/** Each draw solves a night anew, to a few seconds: few draws here, the fixed ones of the table besides. */
const RUNS = { numRuns: 3, endOnFailure: true };

// Source: the physics page, written anew without a line of rules/, in the general solver odex (Hairer's ODEX).
describe('the leaf low of a second model in a general solver', () => {
  test.each([
    ['on a bare bed', BARE],
    ['under fabric on hoops', hoops('F50')],
    ['under perforated film', hoops('PEP')],
    ['under fabric laid on', laid('F19')],
  ])('%s is ours within 0.4 K on any night without sun', (_where, stack) => {
    fc.assert(
      fc.property(randomNight(stack), (input) => {
        expect(Math.abs(leafLowOffK(input))).toBeLessThan(VERGE_OF_WETTING_K);
      }),
      RUNS,
    );
  });
});
