import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { firstReaches, nightRun, valueAtC, windowHigh, windowLow } from '../../../rules/index.ts';
import { frame, referenceInput } from './spec-stacks.ts';

const INPUT = referenceInput(frame('GL', 'wood'));
const RUN = nightRun(INPUT);
const instant = fc.integer({ min: INPUT.start.getTime(), max: INPUT.end.getTime() }).map((atMs) => new Date(atMs));

describe('a window of a run', () => {
  test('has its low and high at instants that hold them, and nothing beyond', () => {
    fc.assert(
      fc.property(instant, instant, instant, (one, other, any) => {
        const [from, to] = one <= other ? [one, other] : [other, one];
        const low = windowLow(RUN, 'leafC', from, to);
        const high = windowHigh(RUN, 'leafC', from, to);
        expect(valueAtC(RUN, 'leafC', low.at)).toBeCloseTo(low.valueC, 9);
        expect(valueAtC(RUN, 'leafC', high.at)).toBeCloseTo(high.valueC, 9);
        expect(low.at >= from && low.at <= to && high.at >= from && high.at <= to).toBe(true);
        if (any < from || any > to) return;
        expect(valueAtC(RUN, 'leafC', any)).toBeGreaterThanOrEqual(low.valueC - 1e-9);
        expect(valueAtC(RUN, 'leafC', any)).toBeLessThanOrEqual(high.valueC + 1e-9);
      }),
    );
  });

  test('reaches a limit at an instant that has it, and not before', () => {
    fc.assert(
      fc.property(instant, instant, fc.double({ min: -6, max: 25, noNaN: true }), (one, other, limitC) => {
        const [from, to] = one <= other ? [one, other] : [other, one];
        const reached = firstReaches(RUN, 'thermometerC', limitC, from, to);
        if (reached === undefined) {
          expect(windowHigh(RUN, 'thermometerC', from, to).valueC).toBeLessThan(limitC);
        } else if (reached.getTime() === from.getTime()) {
          expect(valueAtC(RUN, 'thermometerC', from)).toBeGreaterThanOrEqual(limitC);
        } else {
          expect(valueAtC(RUN, 'thermometerC', reached)).toBeCloseTo(limitC, 3);
          const before = new Date(Math.max(from.getTime(), reached.getTime() - 60_000));
          expect(windowHigh(RUN, 'thermometerC', from, before).valueC).toBeLessThanOrEqual(limitC + 1e-3);
        }
      }),
    );
  });

  test('that leaves the run, or runs backwards, is refused', () => {
    const early = new Date(INPUT.start.getTime() - 1);
    expect(() => windowLow(RUN, 'leafC', early, INPUT.end)).toThrow('does not lie within the run');
    expect(() => windowLow(RUN, 'leafC', INPUT.end, INPUT.start)).toThrow('does not lie within the run');
    expect(() => windowLow(RUN, 'leafC', new Date(Number.NaN), INPUT.end)).toThrow('no instant');
  });
});
