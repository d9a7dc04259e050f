import type { CoverKey } from '../../rules/index.ts';

/** Names of covers as the JSON answers of `ask` give them; a promise to other programs. */
export const PUBLIC_COVER_NAMES = [
  'row-cover-light',
  'row-cover-medium',
  'row-cover-heavy',
  'row-cover',
  'sheet',
  'blanket',
  'tarp',
  'straw',
  'snow',
  'low-tunnel',
  'cold-frame',
  'high-tunnel',
  'bucket',
  'cloche',
  'cardboard',
  'water-wall',
  'burlap',
  'bubble-wrap',
  'none',
] as const;

export type PublicCoverName = (typeof PUBLIC_COVER_NAMES)[number];

const PUBLIC_NAME: Readonly<Record<CoverKey, PublicCoverName | undefined>> = {
  'row-cover': 'row-cover',
  'row-cover-light': 'row-cover-light',
  'row-cover-medium': 'row-cover-medium',
  'row-cover-heavy': 'row-cover-heavy',
  sheet: 'sheet',
  blanket: 'blanket',
  quilt: 'blanket',
  tarp: 'tarp',
  mat: 'straw',
  straw: 'straw',
  leaves: 'straw',
  snow: 'snow',
  'low-tunnel': 'low-tunnel',
  'low-tunnel-perforated': 'low-tunnel',
  'low-tunnel-infrared': 'low-tunnel',
  'cold-frame': 'cold-frame',
  'cold-frame-twin-wall': 'cold-frame',
  'cold-frame-film': 'cold-frame',
  'high-tunnel': 'high-tunnel',
  'high-tunnel-double': 'high-tunnel',
  'greenhouse-glass': 'high-tunnel',
  'greenhouse-twin-wall': 'high-tunnel',
  bucket: 'bucket',
  cloche: 'cloche',
  cardboard: 'cardboard',
  'water-wall': 'water-wall',
  burlap: 'burlap',
  'bubble-wrap': 'bubble-wrap',
  hoops: undefined,
  jugs: undefined,
};

/** `undefined` for hoops and jugs, which are no covers. */
export function publicCoverName(key: CoverKey): PublicCoverName | undefined {
  return PUBLIC_NAME[key];
}

/** Covers as they go out: empty when none were said, `none` when the bed was said to be bare. */
export function publicCovers(covers: readonly CoverKey[] | undefined): readonly PublicCoverName[] {
  if (covers === undefined) return [];
  const names = covers.map(publicCoverName).filter((name) => name !== undefined);
  return names.length > 0 ? names : ['none'];
}
