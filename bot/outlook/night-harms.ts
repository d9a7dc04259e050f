import { MS_PER_H, type WeatherHarm, weatherHarms } from '../../rules/index.ts';
import { type HarmfulHours, harmfulHours } from '../weather/harmful-weather.ts';
import type { GardenBed } from './garden.ts';
import { gardenSite, type NightOutlook } from './night-outlook.ts';

/** What the hours up to the end of a night do to the covers that lie on the beds then. */
export interface NightHarms {
  readonly hours: HarmfulHours;
  readonly beds: readonly { readonly bed: GardenBed; readonly harms: readonly WeatherHarm[] }[];
}

export function nightHarms(outlook: NightOutlook, now: Date): NightHarms {
  const { garden, night, forecast, sunlessDays } = outlook;
  const from = now > night.shutBy ? now : night.shutBy;
  const hours = harmfulHours(forecast, from, new Date(night.sunrise.getTime() + MS_PER_H));
  const { shelterFraction } = gardenSite(garden, 0);
  const beds = outlook.beds.map(({ bed, step }) => ({
    bed,
    harms: weatherHarms(step.kind === 'add' ? step.keys : bed.covers, { ...hours, sunlessDays }, shelterFraction),
  }));
  return { hours, beds };
}
