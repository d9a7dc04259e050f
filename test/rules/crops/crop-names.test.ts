import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plainPhrase } from '../../../rules/crops/crop-name.ts';
import { cropNames } from '../../../rules/crops/crop-names.ts';
import { CROP_NAMES } from '../../../rules/crops/crop-names-table.ts';
import { AMBIGUOUS_WORDS, GROUP_WORDS, ORDINARY_WORDS } from '../../../rules/crops/crop-words-table.ts';

const VOCABULARY = new Map(cropNames().map((name) => [name.phrase, name]));
const IDS: readonly string[] = CROP_NAMES.map((name) => name.id);

test('every crop has a key of its own in kebab-case', () => {
  expect(new Set(IDS).size).toBe(IDS.length);
  for (const id of IDS) expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
});

test('there are at least eighty crops', () => {
  expect(IDS.length).toBeGreaterThanOrEqual(80);
});

test.each([
  ['rocket', 'arugula'],
  ['aubergine', 'eggplant'],
  ['courgettes', 'zucchini'],
  ['swede', 'rutabaga'],
  ["lamb's lettuce", 'mache'],
  ['lambs lettuce', 'mache'],
  ['Mâche', 'mache'],
  ['corn salad', 'mache'],
  ['coriander', 'cilantro'],
  ['broad beans', 'fava-bean'],
  ['spring onions', 'scallion'],
  ['beetroot', 'beet'],
  ['Swiss chard', 'chard'],
  ['cavolo nero', 'tuscan-kale'],
  ['dinosaur kale', 'tuscan-kale'],
  ['red russian', 'red-russian-kale'],
  ['winterbor', 'kale'],
  ['winter density', 'romaine'],
  ['black-seeded Simpson', 'leaf-lettuce'],
  ['bright lights', 'chard'],
  ['brocolli', 'broccoli'],
  ['lettus', 'lettuce'],
  ['spinich', 'spinach'],
])('"%s" is %s', (said, cropId) => {
  expect(VOCABULARY.get(plainPhrase(said))?.cropId).toBe(cropId);
});

test('every phrase is plain, belongs to a crop, and stands after every longer one', () => {
  let before = Number.POSITIVE_INFINITY;
  for (const { phrase, cropId } of cropNames()) {
    expect(plainPhrase(phrase)).toBe(phrase);
    expect(IDS).toContain(cropId);
    expect(phrase.length).toBeLessThanOrEqual(before);
    before = phrase.length;
  }
});

test('no word of the table names two crops, so nothing depends on the order of the table', () => {
  const owner = new Map<string, string>();
  const twice: string[] = [];
  for (const name of CROP_NAMES) {
    const { aliases = [], misspellings = [], varieties = [], british = name.american } = { ...WITHOUT_LISTS, ...name };
    for (const word of [name.american, british, name.plural, ...aliases, ...misspellings, ...varieties]) {
      const phrase = plainPhrase(word);
      if ((owner.get(phrase) ?? name.id) !== name.id) twice.push(phrase);
      owner.set(phrase, name.id);
    }
  }
  expect(twice).toEqual([]);
});

/** Gives every entry of the table the lists that some leave out. */
const WITHOUT_LISTS: {
  readonly british?: string;
  readonly aliases?: readonly string[];
  readonly misspellings?: readonly string[];
  readonly varieties?: readonly string[];
} = {};

test('a word with several meanings names known crops, its usual one among them', () => {
  for (const { word, cropIds, usualId } of AMBIGUOUS_WORDS) {
    expect(plainPhrase(word)).toBe(word);
    expect(cropIds.length).toBeGreaterThan(0);
    if (usualId !== undefined) expect(cropIds).toContain(usualId);
  }
  expect(new Set(AMBIGUOUS_WORDS.map((entry) => entry.word)).size).toBe(AMBIGUOUS_WORDS.length);
});

test('a group word is no crop of its own', () => {
  for (const { words } of GROUP_WORDS) {
    for (const word of words) {
      expect(plainPhrase(word)).toBe(word);
      expect(VOCABULARY.has(word)).toBe(false);
    }
  }
});

test('every ordinary word warned of is in the vocabulary', () => {
  expect([...ORDINARY_WORDS].filter((word) => !VOCABULARY.has(word))).toEqual([]);
});

test('a plain phrase stays as it is, and holds nothing but letters, digits and single spaces', () => {
  fc.assert(
    fc.property(fc.string(), (text) => {
      const plain = plainPhrase(text);
      expect(plainPhrase(plain)).toBe(plain);
      expect(plain).toMatch(/^([a-z0-9]+( [a-z0-9]+)*)?$/);
    }),
  );
});
