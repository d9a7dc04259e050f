import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BedNight,
  bedNight,
  type CoverKey,
  NIGHT_SKIES,
  type OrdinaryNight,
  ordinaryNight,
  sharedNight,
  type WeatherSeries,
  withDayBefore,
} from '../../../rules/index.ts';

/** The forecast without its first hours, as a service gives it that long after sunrise. */
function begunLate({ weather }: OrdinaryNight, hours: number): WeatherSeries {
  const { screenC, dewPointC, cloudFraction, wind10MPerS } = weather;
  return {
    first: new Date(weather.first.getTime() + hours * 3_600_000),
    stepH: 1,
    screenC: screenC.slice(hours),
    dewPointC: dewPointC.slice(hours),
    cloudFraction: cloudFraction.slice(hours),
    wind10MPerS: wind10MPerS.slice(hours),
  };
}

function lowUnder(covers: readonly CoverKey[], night: OrdinaryNight, weather: WeatherSeries): BedNight {
  const soil = night.soilUnder(covers);
  const found = bedNight({ ...night, weather, soil, bed: { covers } }, sharedNight(night.site, weather, night.window));
  if (found.kind !== 'night') throw new Error(found.problem);
  return found;
}

const STACKS: CoverKey[][] = [
  ['row-cover', 'hoops'],
  ['row-cover-heavy'],
  ['low-tunnel'],
  ['cold-frame'],
  ['high-tunnel', 'row-cover', 'hoops'],
];

describe('a forecast that begins after dark', () => {
  test.each(STACKS.map((covers) => [covers] as const))(
    'under %j gives the low of the whole day within half a kelvin',
    (covers) => {
      for (const lowC of [-3, -9, -15]) {
        const night = ordinaryNight(lowC);
        const late = withDayBefore(night.site, begunLate(night, 13), night.window.from);
        expect(
          Math.abs(lowUnder(covers, night, late).leafLowC - lowUnder(covers, night, night.weather).leafLowC),
        ).toBeLessThan(0.5);
      }
    },
  );

  test.each(STACKS.map((covers) => [covers] as const))('does not make %j look colder than no cover', (covers) => {
    const night = ordinaryNight(-9);
    const late = withDayBefore(night.site, begunLate(night, 14), night.window.from);
    expect(lowUnder(covers, night, late).leafLowC).toBeGreaterThan(lowUnder([], night, late).leafLowC + 0.5);
  });

  test('widens the range under covers', () => {
    const night = ordinaryNight(-9);
    const late = withDayBefore(night.site, begunLate(night, 13), night.window.from);
    const whole = lowUnder(['cold-frame'], night, night.weather).spread;
    const guessed = lowUnder(['cold-frame'], night, late).spread;
    expect(guessed.sdK).toBeGreaterThan(whole.sdK + 0.2);
    expect(guessed.parts.map(({ cause }) => cause)).toContain('day-unknown');
  });

  test('keeps every hour that it has, and one that begins by sunrise is left as it is', () => {
    const night = ordinaryNight(-5);
    expect(withDayBefore(night.site, night.weather, night.window.from)).toBe(night.weather);
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 20 }),
        fc.double({ min: -30, max: 10, noNaN: true }),
        fc.constantFrom(...NIGHT_SKIES),
        (hours, lowC, sky) => {
          const of = ordinaryNight(lowC, { sky });
          const late = begunLate(of, hours);
          const whole = withDayBefore(of.site, late, of.window.from);
          const { assumedH = 0 } = whole;
          expect(whole.screenC.slice(assumedH)).toEqual(late.screenC);
          expect(whole.first.getTime() + assumedH * 3_600_000).toBe(late.first.getTime());
          expect(whole.first.getTime()).toBeLessThanOrEqual(of.weather.first.getTime());
          expect(Math.max(...whole.screenC) - lowC).toBeLessThan(20);
          expect(whole.screenC.every(Number.isFinite)).toBe(true);
        },
      ),
    );
  });
});
