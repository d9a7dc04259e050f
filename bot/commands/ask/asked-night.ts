import {
  type BedAsLaid,
  type BedNight,
  bedNight,
  type CoverKey,
  type Crop,
  type CropId,
  commonFrame,
  exposedSite,
  type HardeningThere,
  hardeningInAutumn,
  hardinessLearned,
  type LearnedHardiness,
  type NightSite,
  OPEN_GREENS,
  type OrdinaryNight,
  ordinaryNight,
  type SeenOutcome,
  type SharedNight,
  sharedNight,
  type UnsoundOrder,
} from '../../../rules/index.ts';
import { COUNTED_BED_M2, OPENING_SIZES } from '../../language/conditions/measures.ts';
import type { SaidExposure, Understood } from '../../language/understood.ts';

/** How hard plants under covers are at a place, by what the covers do in a night. */
export type HardeningUnder = (covers: readonly CoverKey[], night: BedNight) => HardeningThere;

/** The night that a question is about, whatever it is computed from. */
export interface AskedNight {
  /** Outside low, as a forecast or a thermometer at 2 m gives it. [°C] */
  readonly lowC: number;
  readonly windMPerS: number;
  /** What was taken for granted about a night of which only the low is known; absent for a forecast night. */
  readonly assumed?: OrdinaryNight['assumed'];
  /** Of a forecast night: "tonight", "on Friday night". */
  readonly words?: string;
  /** How crops came through earlier nights there and in the club's gardens; absent where no own bed is meant. */
  readonly outcomes?: ReadonlyMap<CropId, readonly SeenOutcome[]>;
  /** How hard the weather behind has made plants under covers there; absent where no place is known. */
  readonly hardeningUnder?: HardeningUnder;
  under(bed: BedAsLaid): BedNight | UnsoundOrder;
  /** The same night on open ground, where the question puts the bed beside a wall or a tree. */
  inTheOpen?(): AskedNight;
}

/** What outcomes at the asked place have taught of a crop; undefined where there are none. */
export function hardinessThere(
  { outcomes }: Pick<AskedNight, 'outcomes'>,
  crop: Crop,
  hardeningIndex: number,
): LearnedHardiness | undefined {
  return hardinessLearned(crop, hardeningIndex, outcomes?.get(crop.id) ?? []);
}

/** Lows that the energy balance is made for. [°C] */
export const COLDEST_ASKED_C = -45;
export const WARMEST_ASKED_C = 25;

/** What a question tells of the night and of what lies on the bed, besides the low. */
export type SaidOfNight = Pick<Understood, 'sky' | 'snow' | 'exposure' | 'measures' | 'walls'>;

/** The ordinary night with a low that somebody named: clear and light wind unless they said otherwise. */
export function statedNight(lowC: number, said: SaidOfNight, now: Date, site?: Partial<NightSite>): AskedNight {
  const night = ordinaryNight(lowC, nightOptions(said, now, site));
  const laid = saidLaid(said);
  let shared: SharedNight | undefined;
  const autumn = hardeningInAutumn(now);
  return {
    lowC,
    windMPerS: night.assumed.windMPerS,
    ...(autumn !== undefined && { hardeningUnder: () => autumn }),
    assumed: night.assumed,
    ...inTheOpenToo(lowC, said, now, site),
    under: eachOnce((bed) => {
      // No answer tells of the thaw.
      shared ??= sharedNight(night.site, night.weather, night.window, 0);
      return bedNight({ ...night, soil: night.soilUnder(bed.covers), bed: { ...laid, ...bed } }, shared);
    }),
  };
}

function inTheOpenToo(lowC: number, said: SaidOfNight, now: Date, site?: Partial<NightSite>) {
  const { exposure, ...rest } = said;
  return exposure === undefined ? {} : { inTheOpen: () => statedNight(lowC, rest, now, site) };
}

/** An answer comes back to some beds, as they lie and in search of a better cover: each is worked out once. */
export function eachOnce(under: AskedNight['under']): AskedNight['under'] {
  const known = new Map<string, BedNight | UnsoundOrder>();
  return (bed) => {
    const key = JSON.stringify({ ...bed, canopy: bed.canopy ?? OPEN_GREENS });
    const found = known.get(key) ?? under(bed);
    known.set(key, found);
    return found;
  };
}

/** What a question tells of the night besides its low. */
export function nightOptions({ sky, exposure }: SaidOfNight, now: Date, site?: Partial<NightSite>) {
  const windMPerS = sky?.windMPerS ?? meanUnderGusts(sky?.gustMPerS);
  const place = { ...(exposure && openness(exposure)), ...site };
  return {
    date: now,
    ...(sky?.cloud && { sky: sky.cloud }),
    ...(sky?.wind && { wind: sky.wind }),
    ...(windMPerS !== undefined && { windMPerS }),
    ...(sky?.snow && { snowLying: true }),
    site: place,
  };
}

/** Gusts alone tell a mean wind of about six tenths of them (judgement). */
const MEAN_OF_GUST_FRACTION = 0.6;

function meanUnderGusts(gustMPerS: number | undefined): number | undefined {
  return gustMPerS === undefined ? undefined : MEAN_OF_GUST_FRACTION * gustMPerS;
}

/** A crown of leaves or bare twigs hides half of the sky (judgement). */
const UNDER_TREE = { skyViewFraction: 0.5, shelterFraction: 0.5, inversionK: 2 } as const;

function openness(exposure: SaidExposure): Partial<NightSite> {
  if (exposure === 'tree') return UNDER_TREE;
  const { skyViewFraction, shelterFraction, inversionK } = exposedSite(exposure, {
    latitudeDeg: 0,
    longitudeDeg: 0,
    elevationM: 0,
  });
  return { skyViewFraction, shelterFraction, inversionK };
}

/** What was told of the things on the bed. */
export function saidLaid({ snow, measures, walls }: SaidOfNight): Partial<BedAsLaid> {
  const { waterKg, waterAtDuskC, heatWPerM2, opening, soil } = measures ?? {};
  const waterKgPerM2 = waterKg === undefined ? undefined : Math.min(MOST_WATER_KG_PER_M2, waterKg / COUNTED_BED_M2);
  return {
    ...(snow?.depthM !== undefined && { snowDepthM: snow.depthM }),
    ...(snow?.isFresh && { snowIsFresh: true }),
    ...(waterKgPerM2 !== undefined && { waterKgPerM2 }),
    ...(waterAtDuskC !== undefined && { waterAtDuskC }),
    ...(heatWPerM2 !== undefined && { heatWPerM2: Math.min(MOST_HEAT_W_PER_M2, heatWPerM2) }),
    ...(opening && { opening: OPENING_SIZES[opening] }),
    ...(soil && SOIL_AS_LAID[soil]),
    ...(walls && { frame: { ...commonFrame(1), walls } }),
  };
}

/** More stands in no bed; more cable is in none (judgement). */
const MOST_WATER_KG_PER_M2 = 200;
const MOST_HEAT_W_PER_M2 = 500;
const SOIL_AS_LAID: Readonly<Record<NonNullable<NonNullable<Understood['measures']>['soil']>, Partial<BedAsLaid>>> = {
  watered: { soilKind: 'moist' },
  dry: { soilKind: 'dry' },
  'raised-bed': { soilKind: 'raised-bed' },
  bench: {},
};
