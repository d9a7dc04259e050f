import type { CautionKey } from '../cautions/cautions.ts';
import type { SourceKey } from '../sources.ts';

/** Questions of a winter that no night's figures answer, by a stable key of our own. */
export const ADVICE_KEYS = [
  'frozen-fabric',
  'rinse-frost',
  'limp-leaves',
  'frosted-fruit',
  'frosted-squash',
  'frosted-tubers',
  'frosted-roots',
  'frozen-heads',
  'frosted-plants',
  'eat-frosted',
  'uncover-after',
  'water-soil',
  'sprinkle-plants',
  'heaved-plants',
  'frosted-crown',
  'frosted-rhubarb',
  'roots-in-ground',
  'snow-blanket',
  'snow-off-plants',
  'shovel-snow',
  'snow-on-fabric',
  'forgot-to-close',
  'hole-in-cover',
  'wet-fabric',
  'straw-no-cure',
  'pots-in',
  'plastic-tarp',
  'late-evening',
  'led-lights',
  'mulch-back',
  'loose-soil',
  'stones',
  'jugs-froze',
  'cold-hollow',
] as const;

export type AdviceKey = (typeof ADVICE_KEYS)[number];

export interface Advice {
  /** What to do first. */
  readonly headline: string;
  readonly lines: readonly string[];
  readonly cautions: readonly CautionKey[];
  readonly source: SourceKey;
}
