import type { CoverKey } from '../covers/cover-key.ts';

/** What a cover weighs and usually bears, where wind or snow matters to it. */
export interface StructureFacts {
  /** Lid that nothing holds but its weight; absent for what is pegged or fixed. [kg m⁻²] */
  readonly lidKgPerM2?: number;
  /** Snow that it usually bears; absent where snow only presses it on the crop. [kg m⁻²] */
  readonly bearsKgPerM2?: number;
  /** Gust at which film and fabric want a second anchor, and at which light ones come down. [m s⁻¹] */
  readonly anchorFromMPerS?: number;
  readonly takeDownFromMPerS?: number;
}

/** Film of low tunnels: 35 mph, and 45 at the high end (`wind-anchor`). Hoops bear 5 to 8 cm of wet snow (`snow-load`). */
const LOW_TUNNEL: StructureFacts = { bearsKgPerM2: 15, anchorFromMPerS: 15.6, takeDownFromMPerS: 20.1 };
/** Fabric flaps earlier than film: 30 mph, the low end (`wind-anchor`). */
const FABRIC: StructureFacts = { anchorFromMPerS: 13.4 };
/** Laid on for the night with a few stones (judgement). */
const CLOTH: StructureFacts = { anchorFromMPerS: 9 };
/** Doors and sides want shutting from about 50 mph; hoop houses without a rated load bear some 10 lb ft⁻² (judgement). */
const HIGH_TUNNEL: StructureFacts = { bearsKgPerM2: 50, anchorFromMPerS: 22 };

/**
 * Structures by cover. A glass light is 4 mm glass, 10 kg m⁻², in a wooden frame; 4 mm twin-wall and film weigh little more than
 * their frame. What lights bear is judged on the small side: old putty and thin bars go first.
 */
export const STRUCTURES: Readonly<Partial<Record<CoverKey, StructureFacts>>> = {
  'row-cover': FABRIC,
  'row-cover-light': FABRIC,
  'row-cover-medium': FABRIC,
  'row-cover-heavy': FABRIC,
  sheet: CLOTH,
  blanket: CLOTH,
  quilt: CLOTH,
  tarp: CLOTH,
  'low-tunnel': LOW_TUNNEL,
  'low-tunnel-perforated': LOW_TUNNEL,
  'low-tunnel-infrared': LOW_TUNNEL,
  'cold-frame': { lidKgPerM2: 14, bearsKgPerM2: 75 },
  'cold-frame-twin-wall': { lidKgPerM2: 2.5, bearsKgPerM2: 50 },
  'cold-frame-film': { lidKgPerM2: 2, bearsKgPerM2: 30 },
  'high-tunnel': HIGH_TUNNEL,
  'high-tunnel-double': HIGH_TUNNEL,
};
