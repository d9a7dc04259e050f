/*
 * How far statements and kinds of crop are trusted: all judgement (`limit-statements`). The few that the evidence could tell
 * apart were chosen by leaving each source of outcomes out once; the result hardly moves within a third of any of them.
 */

/** Which column of the priors an organ goes by: leaves that harden, what does not harden, what grows in the soil. */
export type Strength = 'hardy' | 'tender' | 'soil';

type ByStrength = Readonly<Record<Strength, number>>;

/** Standard deviations of the shift when hardened, of the further shift when grown warm, and of the gap. */
interface ShiftSds {
  readonly coldK: number;
  readonly warmK: number;
  readonly gapK: number;
}

/** Variety, stage and watering: how far the crop of one report lies from the crop at large. In the soil all differ by less. [K] */
export const VARIETY_SD_K: ByStrength = { hardy: 1.9, tender: 0.8, soil: 1 };
/** How far the asker's own garden may lie from all others besides. [K] */
export const GARDEN_SD_K: ByStrength = { hardy: 1.5, tender: 0, soil: 0.7 };
/** One offset shared by all statements of a source: its thermometer, its nights, its eye. [K] */
export const SOURCE_SD_K = 1;
/** Thermometer beside the plants rather than in them. [K] */
export const BESIDE_SD_K = 1;
/** The gain of a cover that a source calls by one word (`two-thermometers`). [K] */
export const COVER_SD_K = 2.5;
/** Soil surface of another bed: mulch, shoulders above ground. [K] */
export const SURFACE_SD_K = 1;
/** From the freezing point of picked produce to a first mark in the ground: roots supercool. [K] */
export const FREEZING_SD_K = 1.5;
/** What a winter-kill list of growers adds: one figure for many winters and varieties. [K] */
export const LIST_SD_K = 1.25;
/** Where a list says "some", half go a little later. [K] */
export const SOME_MOVE_K = 1;

/** Factors on the whole error of a statement: "some", "probably", "may". */
export const SOFT_FACTOR = 1.6;
/** A class of crops, not the crop. */
export const CLASS_SOFT_FACTOR = 2;
/** No harm at an outside low: the night may have been cloudy or windy and the leaf warmer; harm has no such excuse. */
export const HARMLESS_SOFT_FACTOR = 1.8;
/** A variety by name is often told of because it is hardy. */
export const NAMED_SOFT_FACTOR = 1.5;
/** Harm to a plant, when the source does not say whether this part was harmed. */
export const PART_SOFT_FACTOR = 1.5;
/** A statement on the crop at large, for one of its kinds that has statements of its own. */
export const ALIKE_SOFT_FACTOR = 6;
/** A figure from memory. */
export const MEMORY_SOFT_FACTOR = 1.3;
/** Share of statements that are about something else: slugs, the wrong bed, a thermometer under a roof. */
export const UNRELATED_FRACTION = 0.02;

/** A plant of a list, of unknown state, is half hardened; what is seen in gardens in the frost season is hardened. */
export const UNKNOWN_INDEX: Readonly<Record<'list' | 'seen', number>> = { list: 0.5, seen: 1 };

/** Standard deviations of a kind of crop round its starting pair, and of a crop round its kind. [K] */
export const KIND_SD_K: Readonly<Record<Strength, ShiftSds>> = {
  hardy: { coldK: 3, warmK: 1.5, gapK: 1.5 },
  tender: { coldK: 2, warmK: 0, gapK: 0.3 },
  soil: { coldK: 2, warmK: 1, gapK: 1 },
};
export const CROP_SD_K: Readonly<Record<Strength, ShiftSds>> = {
  hardy: { coldK: 1.25, warmK: 1, gapK: 1 },
  tender: { coldK: 1, warmK: 0, gapK: 0.3 },
  soil: { coldK: 0.8, warmK: 0.6, gapK: 0.6 },
};
/** All gaps between first mark and half lost together. [K] */
export const ALL_GAPS_SD_K = 0.3;
/** What is hardier than its kind when hardened is so by half as much when grown warm. */
export const WARM_FOLLOWS_FRACTION = 0.5;
/** The gap grows with hardening; of what is learned on it, half counts for plants grown warm. */
export const WARM_GAP_FRACTION = 0.5;
/** First mark and half lost are never closer. [K] */
export const LEAST_GAP_K = 1;
/** No ice, no mark: leaves freeze from -0.1 to -1.8 °C (`usda-handbook-66`). [°C] */
export const ICE_BELOW_C = -0.5;
export const ICE_SD_K = 0.4;
/** A spread narrower or wider than this says nothing more. [K] */
export const LEAST_SD_K: ByStrength = { hardy: 1.5, tender: 1, soil: 1 };
export const MOST_SD_K = 3.5;
