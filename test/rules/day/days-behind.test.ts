import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nightRun } from '../../../rules/balance/night-run.ts';
import { leftProfile, profileC } from '../../../rules/balance/soil-column.ts';
import {
  type CoverKey,
  commonFrame,
  coverStack,
  dayFrom,
  exposedSite,
  OPEN_GREENS,
  openable,
  openingAdvice,
  sharedPast,
  soilAfterDays,
  soilOf,
  soilStart,
  type WeatherSeries,
} from '../../../rules/index.ts';

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;
const SITE = exposedSite('open', { latitudeDeg: 44, longitudeDeg: -90, elevationM: 200 });
const FIRST = new Date('2026-03-20T11:00Z');
const START = FIRST;
const DAYS = 7;
const END = new Date(START.getTime() + DAYS * DAY_MS);

/** Days of one course: as cold as wanted at 6, 10 K warmer at 15 local time. */
function week(lowC: number, cloudFraction: number): WeatherSeries {
  const hours = Array.from({ length: DAYS * 24 + 25 }, (_, hour) => hour);
  return {
    first: FIRST,
    stepH: 1,
    screenC: hours.map((hour) => lowC + 5 - 5 * Math.cos((2 * Math.PI * hour) / 24)),
    dewPointC: hours.map(() => lowC - 2),
    cloudFraction: hours.map(() => cloudFraction),
    wind10MPerS: hours.map(() => 2),
  };
}

function soilAfter(covers: readonly CoverKey[], weather: WeatherSeries): number {
  const first = soilStart({ site: SITE, at: START, weekMeanC: 3, coveredForWeeks: covers });
  return soilAfterDays(SITE, { covers }, first, sharedPast(SITE, weather, START, END)).soil10CmC;
}

/** The same days one by one, each opened and shut as the advice of that day says. */
function afterAdvice(covers: readonly CoverKey[], weather: WeatherSeries): number {
  const frame = commonFrame(SITE.latitudeDeg);
  const stack = coverStack(covers, { frame });
  const found = openable(covers, frame);
  if (stack.kind === 'unsound' || found === undefined) throw new Error('these covers lie soundly and open');
  const bare = found.without && coverStack(found.without, { frame });
  const first = soilStart({ site: SITE, at: START, weekMeanC: 3, coveredForWeeks: covers });
  let from: ReturnType<typeof nightRun>['end'] | undefined;
  for (let startMs = START.getTime(); startMs < END.getTime(); startMs += DAY_MS) {
    const day = dayFrom(new Date(startMs + 7 * HOUR_MS), SITE.latitudeDeg, SITE.longitudeDeg);
    if (day === undefined) throw new Error('the sun rises at 44° N');
    const advice = openingAdvice(
      {
        input: {
          ...{ site: SITE, weather, canopy: OPEN_GREENS, stack: stack.day, soil: soilOf('moist') },
          start: new Date(startMs),
          end: new Date(startMs + DAY_MS),
          soilProfile: first.profile,
        },
        ...{ from: day.sunrise, shutBy: day.shutBy, to: day.sunset, openings: found.openings },
        ...(bare?.kind === 'stack' && { uncovered: bare.day }),
      },
      from && { from },
    );
    from = (advice.kind === 'stay-shut' ? advice.shut : advice).run.end;
  }
  return profileC(leftProfile(from?.soilC ?? []), 0.1);
}

describe('the soil that a week of days leaves', () => {
  test.each<[CoverKey[], number, number]>([
    [['cold-frame'], -3, 0],
    [['cold-frame'], 4, 0],
    [['cold-frame'], -3, 0.8],
    [['low-tunnel'], 4, 0],
    [['high-tunnel'], 4, 0.5],
    [['row-cover-medium', 'hoops'], 4, 0],
  ])(
    'under %j after lows of %d °C and cloud %d is that of days opened by the day’s advice, within 1.3 K',
    (covers, lowC, cloud) => {
      const weather = week(lowC, cloud);
      // Up to 1.2 K of it is the light that dirt and dew take, which the advice of a day leaves out.
      expect(Math.abs(soilAfter(covers, weather) - afterAdvice(covers, weather))).toBeLessThan(1.3);
    },
  );

  test('under a frame is far colder than if nobody had opened it', () => {
    const weather = week(6, 0);
    const stack = coverStack(['cold-frame'], { frame: commonFrame(44) });
    if (stack.kind === 'unsound') throw new Error('a frame lies soundly');
    const first = soilStart({ site: SITE, at: START, weekMeanC: 3, coveredForWeeks: ['cold-frame'] });
    const shut = nightRun({
      ...{ site: SITE, weather, canopy: OPEN_GREENS, stack: stack.day, soil: soilOf('moist'), start: START, end: END },
      soilProfile: first.profile,
    });
    expect(profileC(leftProfile(shut.end.soilC), 0.1)).toBeGreaterThan(soilAfter(['cold-frame'], weather) + 2);
  });

  test('is never colder for a warmer week, and no sun never warms it', () => {
    const low = fc.double({ min: -15, max: 8, noNaN: true });
    fc.assert(
      fc.property(low, fc.double({ min: 0, max: 6, noNaN: true }), (lowC, byK) => {
        expect(soilAfter(['low-tunnel'], week(lowC + byK, 0.4))).toBeGreaterThan(
          soilAfter(['low-tunnel'], week(lowC, 0.4)) - 0.3,
        );
        expect(soilAfter(['low-tunnel'], week(lowC, 1))).toBeLessThan(soilAfter(['low-tunnel'], week(lowC, 0)) + 0.3);
      }),
      { numRuns: 15 },
    );
  });

  test('starts again where it was left: the profile carries frozen water', () => {
    const soilC = soilAfter(['cold-frame'], week(-15, 1));
    expect(soilC).toBeGreaterThan(-8);
    expect(soilC).toBeLessThan(3);
  });
});
