import { describe, expect, test } from 'vitest';
import {
  type BedAsLaid,
  type BedNight,
  bedNight,
  type CoverKey,
  coldestLowC,
  type OrdinaryNightsOfBed,
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
    const night = bedNight({ ...ordinaryNight(lowC, { sky: 'half', coveredForWeeks: bed.covers }), bed });
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
      const at = (lowC: number) => bedNight({ ...ordinaryNight(lowC, { coveredForWeeks: covers }), bed: { covers } });
      expect(coldest.night.leafLowC).toBeGreaterThan(-6);
      const colder = at(coldest.lowC - 0.1);
      expect(colder.kind === 'night' && colder.leafLowC).toBeLessThanOrEqual(-6);
    },
  );

  test('is what halving the range finds, with fewer nights', () => {
    const stacks: CoverKey[][] = [[], ['blanket'], ['row-cover', 'hoops'], ['cold-frame']];
    const counts: number[] = [];
    for (const covers of stacks) {
      const at = ordinaryNights({ covers });
      for (const limitC of [-14, -6.5, -2, 1]) {
        const looked = new Set<number>();
        const coldest = coldestLowC(leafAbove(limitC), (lowC) => {
          looked.add(lowC);
          return at(lowC);
        });
        expect(coldest.kind === 'low' && coldest.lowC).toBe(halved(leafAbove(limitC), at));
        counts.push(looked.size);
      }
    }
    expect(counts.reduce((sum, each) => sum + each, 0) / counts.length).toBeLessThan(9);
  });

  test('is found whatever it hangs on, once it fails for every colder night', () => {
    const at = ordinaryNights({ covers: [] });
    const byOutside = (night: BedNight) => night.screenLowC > -17.3;
    const coldest = coldestLowC(byOutside, at);
    expect(coldest.kind === 'low' && coldest.lowC).toBe(halved(byOutside, at));
  });

  function halved(holds: (night: BedNight) => boolean, at: OrdinaryNightsOfBed): number {
    let [holdsC, failsC] = [10, -40];
    while (holdsC - failsC > 0.1) {
      const middleC = (holdsC + failsC) / 2;
      const night = at(middleC);
      if (night.kind === 'night' && holds(night)) holdsC = middleC;
      else failsC = middleC;
    }
    return holdsC;
  }

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
