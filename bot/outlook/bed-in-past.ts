import {
  type BedNight,
  COVERS,
  type CoverKey,
  type DayBehind,
  frostDepthM,
  frozenNightsInARow,
  GLAZED_DAY_K,
  type HardeningThere,
  hardeningThere,
  type NightSite,
} from '../../rules/index.ts';

/** What the days behind have made of a bed. */
export interface BedInPast {
  /** Of plants that nobody followed. */
  readonly hardening: HardeningThere;
  /** Nights in which its leaves have stayed frozen, this one included; 0 where they do not freeze. */
  readonly frozenNights: number;
  /** How deep the ground under it is likely frozen; 0 under straw, leaves or snow laid as a cover. [m] */
  readonly frostDepthM: number;
}

/** What is needed of the place and the night. */
export interface PastBench {
  readonly site: NightSite;
  readonly window: { readonly from: Date };
  readonly daysBehind: readonly DayBehind[];
}

/** Its covers are taken to have kept it as much warmer in the nights behind as they do in this one. */
export function bedInPast(
  covers: readonly CoverKey[],
  night: BedNight,
  { site, window, daysBehind: days }: PastBench,
): BedInPast {
  const warmerK = covers.length === 0 ? 0 : Math.max(0, night.airLowC - night.outsideAirLowC);
  const isGlazed = covers.some((key) => ['low-tunnel', 'frame', 'high-tunnel'].includes(COVERS[key].kind));
  const isMulched = covers.some((key) => key === 'snow' || COVERS[key].kind === 'litter');
  const { latitudeDeg, elevationM } = site;
  return {
    hardening: hardeningThere({ latitudeDeg, elevationM, at: window.from, days, warmerK }),
    frozenNights: frozenNightsInARow(days, {
      leafLowC: night.leafLowC,
      leafAboveOutsideK: night.leafLowC - night.screenLowC,
      isGlazed,
    }),
    frostDepthM: isMulched ? 0 : frostDepthM(days, warmerK + (isGlazed ? GLAZED_DAY_K : 0)),
  };
}
