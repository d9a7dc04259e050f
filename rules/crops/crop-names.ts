import { type CropName, type CropPhrase, plainPhrase } from './crop-name.ts';
import { CROP_NAMES } from './crop-names-table.ts';

/** Kinds in the order in which they claim a phrase that stands twice. */
const KINDS: readonly [CropPhrase['kind'], (name: CropName) => readonly (string | undefined)[]][] = [
  ['name', (name) => [name.american, name.british, name.plural]],
  ['alias', (name) => name.aliases ?? []],
  ['variety', (name) => name.varieties ?? []],
  ['misspelling', (name) => name.misspellings ?? []],
];

/**
 * The vocabulary of crops: every way of saying one that the table knows, each phrase once.
 *
 * @returns Phrases as {@link plainPhrase} leaves them, longest first, so that "corn salad" is found before "corn".
 *
 * @remarks
 * Some phrases are ordinary words too (`ORDINARY_WORDS`) or have several meanings (`AMBIGUOUS_WORDS`): look there
 * before believing a match. Group words ("greens") are not here but in `GROUP_WORDS`.
 *
 * @see crop-names-table.ts; names are common practice.
 */
export function cropNames(): readonly CropPhrase[] {
  const found = new Map<string, CropPhrase>();
  for (const [kind, words] of KINDS) {
    for (const name of CROP_NAMES) {
      for (const word of words(name)) {
        const phrase = plainPhrase(word ?? '');
        if (phrase !== '' && !found.has(phrase)) found.set(phrase, { cropId: name.id, phrase, kind });
      }
    }
  }
  return [...found.values()].sort((a, b) => b.phrase.length - a.phrase.length || (a.phrase < b.phrase ? -1 : 1));
}
