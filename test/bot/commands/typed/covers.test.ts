import fc from 'fast-check';
import { expect, test } from 'vitest';
import { OVER, typedCovers } from '../../../../bot/commands/typed/covers.ts';
import { readerOf } from '../../../../bot/text/reader.ts';
import { COVER_KEYS, COVERS, orderProblem, stackWords } from '../../../../rules/index.ts';

const reader = readerOf('en-US');

function keysOf(text: string) {
  const covers = typedCovers(text, reader);
  return covers.ok ? covers.value : covers.problem;
}

test.each([
  ['blanket over low tunnel', ['blanket', 'low-tunnel']],
  ['a blanket over a low tunnel', ['blanket', 'low-tunnel']],
  ['row cover under cold frame', ['cold-frame', 'row-cover']],
  ['row cover, low tunnel', ['low-tunnel', 'row-cover']],
  ['coldframe', ['cold-frame']],
  ['fleece', ['row-cover']],
  ['low tunel', ['low-tunnel']],
  ['two layers of row cover', ['row-cover', 'row-cover']],
  ['none', []],
  ['No cover', []],
])('%s is read from the outside in', (text, keys) => expect(keysOf(text)).toEqual(keys));

test.each([
  ['newspaper', 'I do not know "newspaper" as a cover'],
  ['gobbledygook', 'I do not know "gobbledygook" as a cover'],
  ['', 'I find no cover in ""'],
  ['cold frame or blanket', 'leaves a choice'],
  ['cold frame over low tunnel', 'do not fit over the same bed'],
  ['low tunnel over low tunnel over low tunnel', 'does not fit over one bed'],
])('%s is refused with what would be right', (text, words) => expect(keysOf(text)).toContain(words));

test('every cover by its key or its name, joined as suggestions join them, is read back exactly', () => {
  const name = fc
    .constantFrom(...COVER_KEYS)
    .chain((key) =>
      fc.constantFrom(key, COVERS[key].american, COVERS[key].british).map((text) => [key, text] as const),
    );
  fc.assert(
    fc.property(fc.array(name, { minLength: 1, maxLength: 4 }), (names) => {
      const keys = names.map(([key]) => key);
      fc.pre(orderProblem(keys) === undefined);
      expect(keysOf(names.map(([, text]) => text).join(OVER))).toEqual(keys);
    }),
  );
});

test.each(COVER_KEYS.filter((key) => key !== 'hoops' && key !== 'jugs'))(
  'the words in which the bot names %s are understood',
  (key) => {
    expect(keysOf(stackWords([key], 'american'))).toEqual([key]);
    expect(keysOf(stackWords([key], 'british'))).toEqual([key]);
  },
);

test('whatever is typed, covers that can lie so or a sentence come of it', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      const covers = typedCovers(text, reader);
      if (covers.ok) expect(orderProblem(covers.value)).toBeUndefined();
      else expect(covers.problem).toMatch(/\.$/);
    }),
  );
});
