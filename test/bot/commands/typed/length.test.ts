import fc from 'fast-check';
import { expect, test } from 'vitest';
import { typedLengthM, typedSizeM } from '../../../../bot/commands/typed/length.ts';

test.each([
  ['12 in', 0.305],
  ['12"', 0.305],
  ['12 inches', 0.305],
  ["4'", 1.219],
  ['4 ft.', 1.219],
  ['1.22 m', 1.22],
  ['1,22m', 1.22],
  ['30 CM', 0.3],
  ['-5 m', -5],
  ['7', 0.07],
])('%s is a length', (text, metres) => {
  const length = typedLengthM(text, 'cm');
  expect(length.ok && length.value).toBeCloseTo(metres, 9);
});

test.each([
  ['tall', 'I cannot read "tall" as a length'],
  ['', 'I cannot read ""'],
  ['4 furlongs', 'I do not know the unit "furlongs"'],
  ['4 ft 6 in', 'I do not know the unit'],
])('"%s" is no length, and it is said why', (text, words) => {
  const length = typedLengthM(text, 'cm');
  expect(length.ok ? '' : length.problem).toContain(words);
});

test.each([
  ['4 x 8 ft', [1.219, 2.438]],
  ['4×8', [1.219, 2.438]],
  ["4' x 8'", [1.219, 2.438]],
  ['1.2 m by 2.4 m', [1.2, 2.4]],
  ['1.2 by 2.4m', [1.2, 2.4]],
  ['120cm * 2 m', [1.2, 2]],
])('%s is a size', (text, sides) => {
  const size = typedSizeM(text, 'ft');
  const found = size.ok ? size.value : [Number.NaN, Number.NaN];
  for (const [index, side] of sides.entries()) expect(found[index]).toBeCloseTo(side, 9);
});

test.each(['4 ft', '4 x 8 x 2 ft', 'x', 'big by small'])('"%s" is no size', (text) => {
  expect(typedSizeM(text, 'ft').ok).toBe(false);
});

test('whatever is typed, a finite length or a sentence comes of it', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      const length = typedLengthM(text, 'm');
      if (length.ok) expect(Number.isFinite(length.value)).toBe(true);
      else expect(length.problem).toMatch(/\.$/);
    }),
  );
});
