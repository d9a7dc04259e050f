import fc from 'fast-check';
import type { OptionValue } from '../../bot/talk/request.ts';

/** Pieces that have a meaning somewhere: to Discord, to a terminal, to SQL, to a spreadsheet, to our own readers. */
const PIECES = [
  '@everyone',
  '<@123456789012345678>',
  '<@&1>',
  '<t:0:R>',
  '[a](https://a.example)',
  '**b**',
  '```',
  '||',
  '# ',
  '\u001b[31m',
  '\u0000',
  '\ud800',
  '\u202e',
  "'; drop table bed; --",
  '=1+1',
  '"',
  ',',
  ';',
  '\n',
  '\r\n',
  '\t',
  '14F',
  '-10 C',
  '1e999',
  '-0',
  'NaN',
  '99999999999999999999',
  '−3',
  '2026-01-20',
  '41.2, -96.6',
  '6 in',
  'kale',
  'spinach under blanket',
  'cold frame',
  'tonight',
  'Home',
  '__proto__',
  'constructor',
  'ſ',
  'İ',
  '🥬',
  'a\u0301',
  '%s%n',
  '../../.env',
] as const;

export const hostileText: fc.Arbitrary<string> = fc.oneof(
  fc
    .array(fc.oneof(fc.constantFrom(...PIECES), fc.string({ unit: 'binary', maxLength: 8 })), { maxLength: 12 })
    .map((pieces) => pieces.join('')),
  fc.array(fc.constantFrom(...PIECES), { maxLength: 8 }).map((pieces) => pieces.join(' ')),
  fc.tuple(fc.constantFrom(...PIECES), fc.integer({ min: 100, max: 3000 })).map(([piece, n]) => piece.repeat(n)),
);

/** Whatever a door could hand over for an option, whatever kind it should have. */
export const hostileValue: fc.Arbitrary<OptionValue> = fc.oneof(
  { weight: 6, arbitrary: hostileText },
  fc.double(),
  fc.integer(),
  fc.boolean(),
  fc.constant(undefined),
  hostileText.map((text) => ({
    name: text.slice(0, 40),
    sizeBytes: text.length,
    contentType: undefined,
    text: async () => text,
  })),
);
