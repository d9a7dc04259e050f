import { hardeningThere } from '../../../rules/index.ts';
import { NightForecastError } from '../../forecast/forecast-error.ts';
import { PlainProblem } from '../../ground/errors.ts';
import type { Understood } from '../../language/understood.ts';
import { bedInPast } from '../../outlook/bed-in-past.ts';
import { namedNight } from '../../outlook/named-night.ts';
import { benchOf } from '../../outlook/night-outlook.ts';
import { storedGarden } from '../../outlook/stored-garden.ts';
import type { Site } from '../../store/port/sites.ts';
import type { Services } from '../services.ts';
import type { HardeningUnder } from './asked-night.ts';

const OF_PLANTS: ReadonlySet<Understood['intent']> = new Set([
  'survive',
  'what-cover',
  'which-crops',
  'outlook',
  'how-cold',
  'compare-covers',
]);

/** Does the answer hang on how hard the plants are, of which the question says nothing? */
export function needsHardening({ intent, hardened, stage, problem, missing }: Understood): boolean {
  const isSaid = hardened !== undefined || stage === 'seedling';
  return OF_PLANTS.has(intent) && !isSaid && problem === undefined && missing === undefined;
}

/** How hard the days behind have made plants at a member's site; by the season alone where no forecast tells of them. */
export async function hardeningAt(site: Site, now: Date, { forecasts }: Services): Promise<HardeningUnder | undefined> {
  const night = namedNight('tonight', now, site);
  if (night === undefined) return undefined;
  const { latitudeDeg, longitudeDeg, heightM } = site;
  const bySeason: HardeningUnder = (covers, computed) => {
    const warmerK = covers.length === 0 ? 0 : Math.max(0, computed.airLowC - computed.outsideAirLowC);
    return hardeningThere({ latitudeDeg, elevationM: heightM ?? 0, at: night.span.sunset, days: [], warmerK });
  };
  if (forecasts === undefined) return bySeason;
  const place = { latitudeDeg, longitudeDeg, ...(heightM !== undefined && { elevationM: heightM }) };
  try {
    const forecast = await forecasts.forecastFor(place, now, { night: night.span });
    const bench = benchOf(storedGarden({ site, beds: [], spareCovers: [] }), forecast, night.span, now);
    return (covers, computed) => bedInPast(covers, computed, bench).hardening;
  } catch (error) {
    if (error instanceof PlainProblem || error instanceof NightForecastError) return bySeason;
    throw error;
  }
}
