import fc from 'fast-check';
import { expect, test } from 'vitest';
import { typedCrops } from '../../../../bot/commands/typed/crops.ts';
import { readerOf } from '../../../../bot/text/reader.ts';
import { CROPS } from '../../../../rules/index.ts';

function idsOf(text: string, locale = 'en-US') {
  const crops = typedCrops(text, readerOf(locale));
  return crops.ok ? crops.value.map(({ id }) => id) : crops.problem;
}

test.each([
  ['spinach', ['spinach']],
  ['Spinich', ['spinach']],
  ['corn salad', ['mache']],
  ['mâche', ['mache']],
  ['rocket', ['arugula']],
  ['Winterbor kale', ['kale']],
  ['kale, spinach and leeks', ['kale', 'spinach', 'leek']],
  ['kale, kale', ['kale']],
  ['red-russian-kale', ['red-russian-kale']],
  ['beans', ['green-bean']],
])('%s is read', (text, ids) => expect(idsOf(text)).toEqual(ids));

test.each([
  ['dragonfruit', '"dragonfruit" is not in my table. Nearest: '],
  ['cress', 'name one: garden cress, upland cress or watercress.'],
  ['salad', '"salad" can be several crops'],
  ['', 'Name a crop'],
  [', ,', 'Name a crop'],
])('"%s" is refused with what would be right', (text, words) => expect(idsOf(text)).toContain(words));

test('a refusal names crops in the words of the reader', () => {
  expect(idsOf('salad', 'en-GB')).toContain('rocket');
  expect(idsOf('salad', 'en-US')).toContain('arugula');
});

test.each(CROPS.map((crop) => [crop.id, crop] as const))('%s is found by its key and its names', (id, { name }) => {
  for (const text of [id, name.american, name.british ?? id]) expect(idsOf(text)).toEqual([id]);
});

test('whatever is typed, crops or a sentence come of it', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      const found = idsOf(text);
      if (typeof found === 'string') expect(found).toMatch(/\.$/);
      else expect(found.length).toBeGreaterThan(0);
    }),
  );
});
