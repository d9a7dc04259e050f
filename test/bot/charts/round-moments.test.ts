import fc from 'fast-check';
import { expect, test } from 'vitest';
import { actBy, safeFrom } from '../../../bot/charts/round-moments.ts';

const instants = fc.date({ min: new Date('2026-01-01'), max: new Date('2026-12-31'), noInvalidDate: true });

test('a time to act by is never later than the truth, nor five minutes before it', () => {
  fc.assert(
    fc.property(instants, (at) => {
      const early = at.getTime() - actBy(at).getTime();
      expect(early).toBeGreaterThanOrEqual(0);
      expect(early).toBeLessThan(300_000);
    }),
  );
});

test('a time from which leaves are safe is never earlier than the truth, nor a quarter of an hour after it', () => {
  fc.assert(
    fc.property(instants, (at) => {
      const late = safeFrom(at).getTime() - at.getTime();
      expect(late).toBeGreaterThanOrEqual(0);
      expect(late).toBeLessThan(900_000);
    }),
  );
});
