import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CROPS, cropById, grownAt, pickingSizeAt, WINTER_CROPS } from '../../../rules/index.ts';
import { between, thisCentury } from '../sun/arbitrary-places.ts';

describe('a planting', () => {
  test('that was just set out takes longer than one that is growing, and less than one that is sown', () => {
    const slow = CROPS.filter(({ maturityDays = 0 }) => maturityDays > 45);
    fc.assert(
      fc.property(fc.constantFrom(...slow), thisCentury, between(-60, 60), (crop, since, latitudeDeg) => {
        const out = grownAt(crop, { stage: 'just-set-out', since }, latitudeDeg)?.getTime() ?? Number.NaN;
        const growing = grownAt(crop, { stage: 'growing', since }, latitudeDeg)?.getTime() ?? Number.NaN;
        expect(growing).toBeLessThanOrEqual(out);
        expect(out).toBeLessThanOrEqual(pickingSizeAt(crop.maturityDays ?? 1, since, latitudeDeg).getTime());
      }),
    );
  });

  test('is reckoned from the day of sowing, else from that of setting out, whatever its stage is called', () => {
    const slow = CROPS.filter(({ maturityDays = 0 }) => maturityDays > 45);
    fc.assert(
      fc.property(
        fc.constantFrom(...slow),
        thisCentury,
        thisCentury,
        between(-60, 60),
        (crop, since, day, latitudeDeg) => {
          const grown = (facts: object) => grownAt(crop, { stage: 'growing', since, ...facts }, latitudeDeg);
          expect(grown({ sown: day, setOut: since })).toEqual(pickingSizeAt(crop.maturityDays ?? 1, day, latitudeDeg));
          expect(grown({ setOut: day })).toEqual(grownAt(crop, { stage: 'just-set-out', since: day }, latitudeDeg));
        },
      ),
    );
  });

  test('that is grown is so since then, and what stands for years has no day', () => {
    const since = new Date('2025-10-01T12:00:00Z');
    const [spinach, thyme] = ['spinach', 'thyme'].map((id) => cropById(id));
    if (spinach === undefined || thyme === undefined) throw new Error('no such crops');
    expect(grownAt(spinach, { stage: 'grown', since }, 43)).toBe(since);
    expect(grownAt(thyme, { stage: 'growing', since }, 43)).toBeUndefined();
  });
});

test('what is usually sown for winter hardens and has its days on the packet', () => {
  for (const id of WINTER_CROPS) {
    const crop = cropById(id);
    expect([id, crop?.hardens, (crop?.maturityDays ?? 0) > 0]).toEqual([id, true, true]);
  }
});
