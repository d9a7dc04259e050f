import fc from 'fast-check';
import {
  type CoverKey,
  commonFrame,
  coverStack,
  type DaySpan,
  dayFrom,
  type NightInput,
  type NightSite,
  soilOf,
  soilProfile,
  type WeatherSeries,
} from '../../../rules/index.ts';
import { dailyCurveC } from '../../../rules/night/daily-curve.ts';
import { between } from '../sun/arbitrary-places.ts';

const HOUR_MS = 3_600_000;
const HOURS_BEFORE_SUNRISE = 26;
const HOURS = 62;

export interface PlainDay {
  readonly latitudeDeg: number;
  readonly day: DaySpan;
  readonly site: NightSite;
  readonly weather: WeatherSeries;
  readonly soilC: number;
}

export interface DayFacts {
  readonly date: string;
  readonly latitudeDeg: number;
  readonly lowC: number;
  readonly rangeK: number;
  readonly cloudFraction: number;
  readonly windMPerS: number;
  readonly soilC: number;
}

/** Even weather: the same low on two mornings, and one sky and wind. */
export function plainDay(facts: DayFacts): PlainDay {
  const { date, latitudeDeg, lowC, rangeK, cloudFraction, windMPerS, soilC } = facts;
  const longitudeDeg = -75;
  const day = dayFrom(new Date(`${date}T17:00:00Z`), latitudeDeg, longitudeDeg);
  if (day === undefined) throw new Error('the sun does not rise there');
  const firstMs = (Math.floor(day.sunrise.getTime() / HOUR_MS) - HOURS_BEFORE_SUNRISE) * HOUR_MS;
  const sunriseHour = (day.sunrise.getTime() - firstMs) / HOUR_MS;
  const peakAfterH = (day.sunset.getTime() - day.sunrise.getTime()) / HOUR_MS / 2 + 2;
  const hours = Array.from({ length: HOURS }, (_, hour) => hour);
  return {
    latitudeDeg,
    day,
    site: { latitudeDeg, longitudeDeg, elevationM: 0, skyViewFraction: 1, shelterFraction: 0.8, inversionK: 3 },
    weather: {
      first: new Date(firstMs),
      stepH: 1,
      screenC: hours.map((hour) => dailyCurveC({ lowC, rangeK, peakAfterH }, hour - sunriseHour)),
      dewPointC: hours.map(() => lowC - 3),
      cloudFraction: hours.map(() => cloudFraction),
      wind10MPerS: hours.map(() => windMPerS),
    },
    soilC,
  };
}

export const arbitraryFacts: fc.Arbitrary<DayFacts> = fc.record({
  date: fc.constantFrom('2025-10-10', '2025-11-15', '2025-12-21', '2026-01-20', '2026-02-20', '2026-03-25'),
  latitudeDeg: between(32, 56),
  lowC: between(-14, 8),
  rangeK: between(4, 14),
  cloudFraction: between(0, 1),
  windMPerS: between(0, 8),
  soilC: between(0, 12),
});

export const DAY_STACKS: readonly (readonly CoverKey[])[] = [
  ['cold-frame'],
  ['cold-frame-twin-wall', 'row-cover-medium'],
  ['low-tunnel'],
  ['low-tunnel-perforated'],
  ['high-tunnel', 'row-cover-heavy', 'hoops'],
  ['row-cover-medium', 'hoops'],
];

/** The day's run with the covers shut, from the day before on. */
export function shutInput({ site, weather, day, soilC, latitudeDeg }: PlainDay, keys: readonly CoverKey[]): NightInput {
  const stack = coverStack(keys, { frame: commonFrame(latitudeDeg) });
  if (stack.kind !== 'stack') throw new Error('the covers cannot lie so');
  const endMs = Math.ceil(day.sunset.getTime() / HOUR_MS) * HOUR_MS;
  return {
    site,
    start: weather.first,
    end: new Date(endMs),
    weather,
    soil: soilOf('moist'),
    soilProfile: soilProfile(soilC, soilC + 2),
    canopy: { leafAreaIndex: 1, leafSizeM: 0.05 },
    stack: stack.day,
  };
}
