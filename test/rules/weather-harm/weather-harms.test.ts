import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COVER_KEYS, type CoverKey, type HarmfulWeather, weatherHarms } from '../../../rules/index.ts';
import { between } from '../sun/arbitrary-places.ts';

const CALM: HarmfulWeather = { sunlessDays: 0 };
const kinds = (keys: readonly CoverKey[], weather: Partial<HarmfulWeather>) =>
  weatherHarms(keys, { ...CALM, ...weather }, 0.8).map(({ kind }) => kind);
const arbitraryWeather = fc.record({
  gustMPerS: between(0, 50),
  snowfall: fc.record({ depthM: between(0, 0.6), airC: between(-15, 2) }),
  rainBeforeFreezeMm: between(0, 30),
  freezingRainMm: between(0, 10),
  sunlessDays: fc.integer({ min: 0, max: 20 }),
});

describe('harmful weather', () => {
  test('finds nothing to break on a bare bed', () => {
    fc.assert(
      fc.property(arbitraryWeather, (weather) => {
        expect(weatherHarms([], weather, 1)).toEqual([]);
        expect(weatherHarms(['hoops', 'jugs'], weather, 1)).toEqual([]);
      }),
    );
  });

  test('does no harm where nothing is told', () => {
    for (const key of COVER_KEYS) expect(kinds([key], {})).toEqual([]);
  });

  test('tells each harm once, and none less for worse weather', () => {
    fc.assert(
      fc.property(fc.constantFrom(...COVER_KEYS), arbitraryWeather, between(1, 2), (key, weather, times) => {
        const harms = weatherHarms([key], weather, 0.8).map(({ kind }) => kind);
        expect(new Set(harms).size).toBe(harms.length);
        const worse = weatherHarms(
          [key],
          {
            ...weather,
            gustMPerS: weather.gustMPerS * times,
            snowfall: { ...weather.snowfall, depthM: weather.snowfall.depthM * times },
            rainBeforeFreezeMm: weather.rainBeforeFreezeMm * times,
            freezingRainMm: weather.freezingRainMm * times,
          },
          0.8,
        ).map(({ kind }) => kind);
        for (const kind of harms) expect(worse).toContain(kind);
      }),
    );
  });

  test('wet fabric before a freeze concerns fabric that lies open to the rain', () => {
    expect(kinds(['row-cover', 'hoops'], { rainBeforeFreezeMm: 8 })).toEqual(['wet-fabric']);
    expect(kinds(['low-tunnel', 'row-cover'], { rainBeforeFreezeMm: 8 })).toEqual([]);
  });

  test('freezing rain glazes whatever lies outermost', () => {
    expect(kinds(['cold-frame'], { freezingRainMm: 2 })).toEqual(['freezing-rain']);
  });

  test('three days without sun are told where covers live on it', () => {
    expect(kinds(['low-tunnel'], { sunlessDays: 3 })).toEqual(['sunless']);
    expect(kinds(['low-tunnel'], { sunlessDays: 2 })).toEqual([]);
    expect(kinds(['straw'], { sunlessDays: 9 })).toEqual([]);
  });
});
