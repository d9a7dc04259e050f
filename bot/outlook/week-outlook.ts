import { harmFraction } from '../../rules/index.ts';
import type { HourlyForecast } from '../forecast/forecast.ts';
import { NightForecastError } from '../forecast/forecast-error.ts';
import type { Garden } from './garden.ts';
import { type NamedNight, nightsFrom } from './named-night.ts';
import { type NightOutlook, nightOutlook } from './night-outlook.ts';

export const NIGHTS_OF_WEEK = 7;

/** A garden's nights from tonight on, as far as the forecast goes. */
export interface WeekOutlook {
  readonly garden: Garden;
  readonly forecast: HourlyForecast;
  /** In order of time, at least one. */
  readonly known: readonly [WeekNight, ...WeekNight[]];
  /** Nights of the seven that the forecast does not carry; nothing is told of them. */
  readonly unknown: readonly NamedNight[];
}

export interface WeekNight {
  readonly named: NamedNight;
  readonly outlook: NightOutlook;
  /** 0 is tonight. */
  readonly nightsAhead: number;
}

/**
 * Seven nights of a garden; undefined where the sun does not set.
 *
 * @param now - What time it is.
 * @throws NightForecastError when the forecast does not carry any of them.
 */
export function weekOutlook(garden: Garden, forecast: HourlyForecast, now: Date): WeekOutlook | undefined {
  const named = nightsFrom(now, NIGHTS_OF_WEEK, garden);
  const known: WeekNight[] = [];
  const unknown: NamedNight[] = [];
  let problem: NightForecastError | undefined;
  for (const [nightsAhead, night] of named.entries()) {
    try {
      known.push({ named: night, outlook: nightOutlook(garden, forecast, night.span, now), nightsAhead });
    } catch (error) {
      if (!(error instanceof NightForecastError)) throw error;
      problem = error;
      unknown.push(night);
    }
  }
  const [first, ...others] = known;
  if (first !== undefined) return { garden, forecast, known: [first, ...others], unknown };
  if (problem !== undefined) throw problem;
  return undefined;
}

/** The night that does most harm; where none does any, the coldest. */
export function worstNight({ known }: WeekOutlook): WeekNight {
  return known.reduce((worst, night) => (isWorse(night, worst) ? night : worst));
}

/** The night with the coldest air outside. */
export function coldestNight({ known }: WeekOutlook): WeekNight {
  return known.reduce((coldest, night) => (outsideLowC(night) < outsideLowC(coldest) ? night : coldest));
}

export function isRiskyNight({ outlook }: WeekNight): boolean {
  return outlook.beds.some(({ verdict }) => verdict.worst.verdict !== 'holds');
}

function outsideLowC({ outlook }: WeekNight): number {
  return outlook.weather.summary.lowC;
}

/** Odds that hardly differ are decided by the cold. */
const SAME_HARM = 0.005;

function isWorse(one: WeekNight, other: WeekNight): boolean {
  const [harm, than] = [harmOf(one), harmOf(other)];
  return Math.abs(harm - than) > SAME_HARM ? harm > than : outsideLowC(one) < outsideLowC(other);
}

function harmOf({ outlook }: WeekNight): number {
  const [first] = outlook.beds;
  return first === undefined ? 0 : harmFraction(first.verdict.worst.odds);
}
