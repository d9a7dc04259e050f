import type { AmbiguousWord, CropPhrase, GroupWord } from '../../rules/index.ts';
import { spellingsOf } from './phrases.ts';
import type { CropSense, Entry } from './sense.ts';

/** What the table of crops hands over: a new crop there needs nothing here. */
export interface CropWords {
  readonly names: readonly CropPhrase[];
  readonly ambiguous: readonly AmbiguousWord[];
  readonly groups: readonly GroupWord[];
  /** Phrases that are ordinary words as well. */
  readonly ordinary: ReadonlySet<string>;
}

/** Every way to say a crop. Singulars, plurals and joined spellings are made where the table has none. */
export function cropEntries({ names, ambiguous, groups, ordinary }: CropWords): readonly Entry[] {
  const own = new Map(names.filter(({ kind }) => kind === 'name').map(({ phrase, cropId }) => [phrase, cropId]));
  // "Kale" is kale: only a word that is no crop's own name leaves something to say.
  const open = ambiguous.filter(({ word, usualId }) => usualId === undefined || own.get(word) !== usualId);
  const unsure = new Set(open.map(({ word }) => word));
  const certain = names
    .filter(({ phrase }) => !unsure.has(phrase))
    .map((name): [string, CropSense] => [name.phrase, certainSense(name, ordinary)]);
  const taken = new Set([...unsure, ...certain.map(([phrase]) => phrase)]);
  const spelled = certain
    .filter(([, sense]) => !sense.variety && !sense.misspelt && !sense.ordinary)
    .flatMap(([phrase, sense]) => spellingsOf(phrase).map((spelling): [string, CropSense] => [spelling, sense]))
    .filter(([spelling]) => taken.size < taken.add(spelling).size);
  return [...certain, ...spelled, ...open.map((word) => unsureEntry(word, ordinary)), ...groups.flatMap(groupEntries)];
}

function certainSense({ cropId, phrase, kind }: CropPhrase, ordinary: ReadonlySet<string>): CropSense {
  return {
    kind: 'crop',
    ids: [cropId],
    variety: kind === 'variety',
    misspelt: kind === 'misspelling',
    ordinary: ordinary.has(phrase),
  };
}

function unsureEntry({ word, cropIds, usualId }: AmbiguousWord, ordinary: ReadonlySet<string>): Entry {
  const known = { kind: 'crop', ids: cropIds, variety: false, misspelt: false, ordinary: ordinary.has(word) } as const;
  return [word, usualId === undefined ? known : { ...known, usualId }];
}

function groupEntries({ words, cropIds }: GroupWord): readonly Entry[] {
  return words.map((word) => [word, { kind: 'crop', ids: cropIds, variety: false, misspelt: false, ordinary: false }]);
}
