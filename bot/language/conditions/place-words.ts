import type { SaidExposure } from '../understood.ts';
import type { SpanText } from './span-text.ts';

/** How the garden lies, in words. All common practice. */
const EXPOSURE_WORDS: readonly (readonly [SaidExposure, RegExp])[] = [
  [
    'hollow',
    / (?:frost pocket|frost hollow|in a hollow|a hollow|low spot|low lying|bottom of (?:the|a) (?:hill|slope|valley)|valley floor|valley bottom|in a dip|cold pocket)(?= )/,
  ],
  [
    'ridge',
    / (?:hill top|hilltop|on a hill|on the hill|on a ridge|ridge|upper slope|exposed hill|top of (?:the|a) hill)(?= )/,
  ],
  [
    'wall',
    / (?:(?:against|beside|next to|along|near|by|under|up against|close to|in front of) (?:the |a |my |our )?(?:south |south facing |warm |sunny |brick |stone |house |east |west |north |facing )*(?:wall|house|masonry|building|garage|foundation|shed wall))(?= )|south wall(?= )/,
  ],
  ['tree', / (?:under|beneath|near|beside|below) (?:a |the |my |an |our )?(?:\S+ )?trees?(?= )/],
  [
    'sheltered',
    / (?:sheltered|courtyard|walled garden|city garden|out of the wind|behind a hedge|hedged|fenced|patio|porch|balcony)(?= )/,
  ],
];

export function readExposure({ text }: SpanText): SaidExposure | undefined {
  return EXPOSURE_WORDS.find(([, words]) => words.test(text))?.[0];
}

/** What people say of a night and a place that the answer does not use, in the words that it says back. All common practice. */
const UNUSED_WORDS: readonly (readonly [string, RegExp])[] = [
  [
    'the pots',
    / (?:in (?:a |my |the )?(?:pots?|containers?|planters?|tubs?|grow bags?|window boxe?s?)|potted|container grown)(?= )/,
  ],
  [
    'the coast',
    / (?:coast|coastal|by the sea|seaside|near the (?:sea|ocean|lake)|lakeside|by the lake|maritime|ocean|on the water)(?= )/,
  ],
  ['the rain', / (?:rain|rained|raining|rainy|drizzle|drizzling|sleet|freezing rain|showers)(?= )/],
  ['the hardiness zone', / (?:usda )?zone \d+[ab]?(?= )| zone \d+ [ab](?= )/],
  ['the humidity', / (?:humidity|humid)(?= )/],
  [
    'the height',
    / (?:\d+ (?:ft|feet|foot|m|metres|meters) (?:elevation|altitude|up|above sea level)|high elevation|high altitude|mountains?|at altitude)(?= )/,
  ],
];

export function readUnused({ text }: SpanText): readonly string[] {
  return UNUSED_WORDS.filter(([, words]) => words.test(text)).map(([name]) => name);
}
