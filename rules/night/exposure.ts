import type { NightSite } from '../site-and-weather.ts';

/** How a garden lies, in a grower's words. */
export const EXPOSURES = ['open', 'sheltered', 'hollow', 'ridge', 'wall'] as const;

export type Exposure = (typeof EXPOSURES)[number];

type Openness = Pick<NightSite, 'skyViewFraction' | 'shelterFraction' | 'inversionK'>;

/**
 * Sky view, shelter and inversion by exposure: open level ground, hedged or fenced garden, frost hollow, hill top, beside a
 * house wall. Values within the brackets of the physics page (`rules/balance/README.md`, section 3); the choice inside them is judgement.
 */
const OPENNESS: Readonly<Record<Exposure, Openness>> = {
  open: { skyViewFraction: 1, shelterFraction: 0.8, inversionK: 3 },
  sheltered: { skyViewFraction: 0.85, shelterFraction: 0.5, inversionK: 3 },
  hollow: { skyViewFraction: 0.95, shelterFraction: 0.5, inversionK: 5.5 },
  ridge: { skyViewFraction: 1, shelterFraction: 1, inversionK: 1 },
  wall: { skyViewFraction: 0.65, shelterFraction: 0.5, inversionK: 2 },
};

/**
 * A place with its exposure, ready for the energy balance.
 *
 * @param exposure - How the garden lies.
 * @param place - Coordinates and height above the sea. [°, °, m]
 */
export function exposedSite(
  exposure: Exposure,
  place: Pick<NightSite, 'latitudeDeg' | 'longitudeDeg' | 'elevationM'>,
): NightSite {
  const { latitudeDeg, longitudeDeg, elevationM } = place;
  return { latitudeDeg, longitudeDeg, elevationM, ...OPENNESS[exposure] };
}
