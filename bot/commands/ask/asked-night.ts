import {
  type BedAsLaid,
  type BedNight,
  bedNight,
  type NightSite,
  type OrdinaryNight,
  ordinaryNight,
  type UnsoundOrder,
} from '../../../rules/index.ts';
import type { SaidSky } from '../../language/understood.ts';

/** The night that a question is about, whatever it is computed from. */
export interface AskedNight {
  /** Outside low, as a forecast or a thermometer at 2 m gives it. [°C] */
  readonly lowC: number;
  readonly windMPerS: number;
  /** What was taken for granted about a night of which only the low is known; absent for a forecast night. */
  readonly assumed?: OrdinaryNight['assumed'];
  /** Of a forecast night: "tonight", "on Friday night". */
  readonly words?: string;
  under(bed: BedAsLaid): BedNight | UnsoundOrder;
}

/** Lows that the energy balance is made for. [°C] */
export const COLDEST_ASKED_C = -45;
export const WARMEST_ASKED_C = 25;

/** The ordinary night with a low that somebody named: clear and light wind unless they said otherwise. */
export function statedNight(lowC: number, sky: SaidSky | undefined, now: Date, site?: Partial<NightSite>): AskedNight {
  const night = ordinaryNight(lowC, nightOptions(sky, now, site));
  return {
    lowC,
    windMPerS: night.assumed.windMPerS,
    assumed: night.assumed,
    under: (bed) => bedNight({ ...night, bed }),
  };
}

/** What a question tells of the night besides its low. */
export function nightOptions(sky: SaidSky | undefined, now: Date, site?: Partial<NightSite>) {
  return {
    date: now,
    ...(sky?.cloud && { sky: sky.cloud }),
    ...(sky?.wind && { wind: sky.wind }),
    ...(sky?.snow && { snowLying: true }),
    ...(site && { site }),
  };
}
