import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BedAsLaid,
  type BedNight,
  type BedNightInput,
  bedNight,
  COVER_KEYS,
  type CoverKey,
  NIGHT_SKIES,
  NIGHT_WINDS,
  orderProblem,
  ordinaryNight,
  sharedNight,
  soilProfile,
} from '../../../rules/index.ts';
import { REFERENCE_SITE, REFERENCE_WINDOW, referenceWeather } from '../covers/reference-night.ts';

const REFERENCE: Omit<BedNightInput, 'bed'> = {
  site: REFERENCE_SITE,
  weather: referenceWeather({}),
  soil: { soil10CmC: 6, deepC: 9, profile: soilProfile(6, 9), sdK: 1.5, measured: false },
  window: REFERENCE_WINDOW,
  forecast: { kind: 'stated' },
};

function night(bed: BedAsLaid, input: Omit<BedNightInput, 'bed'> = REFERENCE): BedNight {
  const result = bedNight({ ...input, bed });
  if (result.kind === 'unsound') throw new Error(result.problem);
  return result;
}

describe('the night of a bed', () => {
  // Worked cases of the physics page, section 16: crop-level air, leaf, air and surface minima, ±0.3 K; minimum ±60 min.
  test.each<[string, BedAsLaid, number, number, number, number, string]>([
    ['P01 bare', { covers: [] }, -5.74, -7.78, -5.74, -1.23, '12:00'],
    ['P03 light fabric on hoops', { covers: ['row-cover-light', 'hoops'] }, -5.74, -6.29, -5.06, -0.17, '12:00'],
    ['P05 low tunnel', { covers: ['low-tunnel'] }, -5.74, -5.59, -4.67, 0.36, '12:00'],
    ['P07 glass frame', { covers: ['cold-frame'] }, -5.74, -3.77, -3.31, 1.65, '12:05'],
    [
      'P11 fabric and jugs in a low tunnel',
      { covers: ['low-tunnel', 'row-cover-medium', 'hoops', 'jugs'], waterKgPerM2: 40 },
      -5.74,
      0.25,
      1.55,
      3.79,
      '12:00',
    ],
    [
      'P12 fabric in a high tunnel',
      { covers: ['high-tunnel', 'row-cover-medium', 'hoops'] },
      -5.74,
      -1.64,
      -1.15,
      2.79,
      '12:00',
    ],
  ])('%s comes out as the reference solution has it', (_case, bed, outsideC, leafC, airC, surfaceC, at) => {
    const result = night(bed);
    expect(Math.abs(result.screenLowC - -4)).toBeLessThan(0.01);
    expect(Math.abs(result.outsideAirLowC - outsideC)).toBeLessThanOrEqual(0.3);
    expect(Math.abs(result.leafLowC - leafC)).toBeLessThanOrEqual(0.3);
    expect(Math.abs(result.airLowC - airC)).toBeLessThanOrEqual(0.3);
    expect(Math.abs(result.surfaceLowC - surfaceC)).toBeLessThanOrEqual(0.3);
    expect(Math.abs(result.leafLowAt.getTime() - Date.parse(`2025-12-02T${at}Z`))).toBeLessThanOrEqual(3_600_000);
  });

  test('under covers that cannot lie so is refused', () => {
    expect(bedNight({ ...REFERENCE, bed: { covers: ['quilt', 'high-tunnel'] } })).toMatchObject({ kind: 'unsound' });
  });

  test('puts blankets on two hours before sunset and takes them off an hour after sunrise', () => {
    const { nightCover, start, end } = sharedNight(REFERENCE_SITE, REFERENCE.weather, REFERENCE_WINDOW);
    const { run } = night({ covers: ['blanket'] });
    const covered = [...run.timesMs].filter((_, index) => run.coverCount[index] === 1);
    expect(Math.min(...covered)).toBeGreaterThan(nightCover.from.getTime());
    expect(Math.max(...covered)).toBe(nightCover.to.getTime());
    expect(nightCover.from.toISOString().slice(11, 13)).toBe('19');
    expect(nightCover.to.toISOString().slice(11, 13)).toBe('13');
    expect(start.getTime()).toBeLessThan(REFERENCE_WINDOW.from.getTime());
    expect(end.getTime()).toBeGreaterThan(REFERENCE_WINDOW.to.getTime());
  });

  test('a blanket by night only is warmer than one that keeps out the sun before', () => {
    const byNight = night({ covers: ['blanket', 'low-tunnel'] }).leafLowC;
    const { nightCover, ...shared } = sharedNight(REFERENCE_SITE, REFERENCE.weather, REFERENCE_WINDOW);
    const always = bedNight(
      { ...REFERENCE, bed: { covers: ['blanket', 'low-tunnel'] } },
      { ...shared, nightCover: { from: shared.start, to: nightCover.to } },
    );
    expect(always.kind === 'night' && always.leafLowC).toBeLessThan(byNight - 0.5);
  });

  test('is the same with weather shared among the beds of a place', () => {
    const shared = sharedNight(REFERENCE_SITE, REFERENCE.weather, REFERENCE_WINDOW);
    for (const covers of [[], ['quilt', 'cold-frame'], ['high-tunnel', 'blanket']] as CoverKey[][]) {
      const together = bedNight({ ...REFERENCE, bed: { covers } }, shared);
      expect(together.kind === 'night' && together.leafLowC).toBe(night({ covers }).leafLowC);
    }
  });

  test('begun at dusk, for want of weather, says that the day is unknown', () => {
    const { weather } = REFERENCE;
    const cut = 10;
    const evening = {
      ...REFERENCE,
      weather: {
        first: new Date(weather.first.getTime() + cut * 3_600_000),
        stepH: 1,
        screenC: weather.screenC.slice(cut),
        dewPointC: weather.dewPointC.slice(cut),
        cloudFraction: weather.cloudFraction.slice(cut),
        wind10MPerS: weather.wind10MPerS.slice(cut),
      },
    };
    const causes = ({ spread }: BedNight) => spread.parts.map(({ cause }) => cause);
    expect(causes(night({ covers: ['cold-frame'] }, evening))).toContain('day-unknown');
    expect(causes(night({ covers: ['cold-frame'] }))).not.toContain('day-unknown');
    expect(night({ covers: ['cold-frame'] }, evening).leafLowC).toBeLessThan(
      night({ covers: ['cold-frame'] }).leafLowC,
    );
  });

  test('straw mulch under fabric makes a colder leaf, dry soil too, a sandy bed a warmer one', () => {
    const covers: CoverKey[] = ['row-cover-medium', 'hoops'];
    const moistC = night({ covers }).leafLowC;
    expect(night({ covers, mulch: 'straw' }).leafLowC).toBeLessThan(moistC - 2);
    expect(night({ covers, soilKind: 'dry' }).leafLowC).toBeLessThan(moistC - 1);
    expect(night({ covers, soilKind: 'sandy' }).leafLowC).toBeGreaterThan(moistC);
  });

  test('of a southern garden and under the polar night can be worked out', () => {
    const south = {
      site: { ...REFERENCE_SITE, latitudeDeg: -40 },
      window: { from: new Date('2025-12-02T09:00Z'), to: new Date('2025-12-02T11:00Z') },
    };
    expect(night({ covers: ['cold-frame'] }, { ...REFERENCE, ...south }).leafLowC).toBeLessThan(5);
    const polar = { ...REFERENCE, site: { ...REFERENCE_SITE, latitudeDeg: 78, longitudeDeg: 16 } };
    expect(night({ covers: ['blanket'] }, polar).leafLowC).toBeLessThan(0);
  });

  test('outside the weather is refused', () => {
    const window = { from: new Date('2025-12-09T22:00Z'), to: new Date('2025-12-10T13:00Z') };
    expect(() => bedNight({ ...REFERENCE, window, bed: { covers: [] } })).toThrow(RangeError);
  });

  test('of any sound stack on any ordinary night is a number, between −50 °C and the day’s warmth', () => {
    const anyNight = fc.record({
      lowC: fc.double({ min: -35, max: 10, noNaN: true }),
      sky: fc.constantFrom(...NIGHT_SKIES),
      wind: fc.constantFrom(...NIGHT_WINDS),
      covers: fc
        .array(fc.constantFrom(...COVER_KEYS), { maxLength: 5 })
        .filter((keys) => orderProblem(keys) === undefined),
      soilKind: fc.constantFrom('moist' as const, 'dry' as const, 'raised-bed' as const),
      mulch: fc.constantFrom('none' as const, 'straw' as const, 'plastic' as const),
    });
    fc.assert(
      fc.property(anyNight, ({ lowC, sky, wind, ...bed }) => {
        const result = night(bed, ordinaryNight(lowC, { sky, wind }));
        expect(result.screenLowC).toBeCloseTo(lowC, 6);
        expect(result.leafLowC).toBeGreaterThan(lowC - 12);
        expect(result.leafLowC).toBeLessThan(lowC + 35);
        expect(result.airLowC).toBeGreaterThan(lowC - 12);
        expect(result.frozenFraction).toBeGreaterThanOrEqual(0);
        expect(result.frozenFraction).toBeLessThanOrEqual(0.85);
        expect(result.spread.sdK).toBeGreaterThan(0.5);
        expect(result.thawAt === undefined || result.thawAt > result.leafLowAt).toBe(true);
      }),
      { numRuns: 150 },
    );
  });
});
