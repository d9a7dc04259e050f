import { describe, expect, test } from 'vitest';
import {
  type BedAsLaid,
  type BedNight,
  bedNight,
  type CoverKey,
  coldestLowC,
  ordinaryNight,
  ordinaryNights,
} from '../../../rules/index.ts';

const leafAbove = (limitC: number) => (night: BedNight) => night.leafLowC > limitC;

describe('the ordinary nights of a bed', () => {
  test.each([-30, -7, 4])('at a low of %d °C are those worked out alone, without the thaw', (lowC) => {
    const bed: BedAsLaid = { covers: ['row-cover', 'hoops'] };
    const nights = ordinaryNights(bed, { sky: 'half' });
    nights(-12);
    const { run: _hours, thawAt: _thaw, ...alone } = nightAlone(lowC, bed);
    expect(nights(lowC)).toMatchObject(alone);
    expect(nights(lowC)).not.toHaveProperty('thawAt');
    expect(nights(lowC)).toBe(nights(lowC));
  });

  function nightAlone(lowC: number, bed: BedAsLaid): BedNight {
    const night = bedNight({ ...ordinaryNight(lowC, { sky: 'half' }), bed });
    if (night.kind !== 'night') throw new Error(night.kind);
    return night;
  }
});

describe('how cold it may get outside', () => {
  test.each<[CoverKey[]]>([[[]], [['row-cover', 'hoops']], [['quilt', 'cold-frame']]])(
    'under %j is where the leaf just holds, to a tenth of a kelvin',
    (covers) => {
      const coldest = coldestLowC(leafAbove(-6), ordinaryNights({ covers }));
      if (coldest.kind !== 'low') throw new Error(coldest.kind);
      const at = (lowC: number) => bedNight({ ...ordinaryNight(lowC), bed: { covers } });
      expect(coldest.night.leafLowC).toBeGreaterThan(-6);
      const colder = at(coldest.lowC - 0.1);
      expect(colder.kind === 'night' && colder.leafLowC).toBeLessThanOrEqual(-6);
    },
  );

  test('is colder the better the cover', () => {
    const lows = (['row-cover', 'cold-frame', 'quilt'] as CoverKey[]).map((key) => {
      const coldest = coldestLowC(
        leafAbove(-5),
        ordinaryNights({ covers: key === 'quilt' ? ['quilt', 'cold-frame'] : [key] }),
      );
      return coldest.kind === 'low' ? coldest.lowC : Number.NaN;
    });
    expect(lows).toEqual(lows.toSorted((a, b) => b - a));
  });

  test('is less cold on a calm clear night than under cloud', () => {
    const lowC = (sky: 'clear' | 'overcast') => {
      const coldest = coldestLowC(leafAbove(-5), ordinaryNights({ covers: ['low-tunnel'] }, { sky, wind: 'calm' }));
      return coldest.kind === 'low' ? coldest.lowC : Number.NaN;
    };
    expect(lowC('overcast')).toBeLessThan(lowC('clear'));
  });

  test('has no limit for what always holds, and none for what never does', () => {
    expect(coldestLowC(() => true, ordinaryNights({ covers: [] }))).toEqual({ kind: 'any' });
    expect(coldestLowC(() => false, ordinaryNights({ covers: [] }))).toEqual({ kind: 'none' });
  });

  test('is not asked of covers that cannot lie so', () => {
    expect(coldestLowC(() => true, ordinaryNights({ covers: ['blanket', 'high-tunnel'] }))).toMatchObject({
      kind: 'unsound',
    });
  });
});
