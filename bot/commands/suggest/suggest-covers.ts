import { COVER_KEYS, COVERS, type CoverKey, orderProblem, plainPhrase, stackWords } from '../../../rules/index.ts';
import { COVER_WORDS } from '../../language/cover-words-table.ts';
import { phrasesOf } from '../../language/phrases.ts';
import { capitalised } from '../../text/phrases.ts';
import { type Reader, readerOf } from '../../text/reader.ts';
import type { OptionSpec, Suggestion } from '../command.ts';
import { OVER, typedCovers } from '../typed/covers.ts';
import { type Entry, matching } from './matching.ts';

const MOST = 25;

/** Completes a stack of covers: what is typed as understood, then the last cover completed. */
export const suggestCovers: NonNullable<OptionSpec['suggest']> = async (typed, { locale }) => {
  const reader = readerOf(locale);
  if (typed.trim() === '') return [{ label: 'No cover', value: 'none' }, ...completed([], '', reader)];
  const whole = typedCovers(typed.trim(), reader);
  const understood = whole.ok ? [suggestion(whole.value, reader)] : [];
  const { before, fragment } = lastCover(typed, reader);
  return once([...understood, ...completed(before, fragment, reader)]).slice(0, MOST);
};

/** Completes the name of one cover, for a spare in the shed. */
export const suggestCover: NonNullable<OptionSpec['suggest']> = async (typed, { locale }) => {
  const { dialect } = readerOf(locale);
  return matching(typed, ENTRIES)
    .filter((key) => key !== 'snow')
    .slice(0, MOST)
    .map((key) => ({ label: capitalised(COVERS[key][dialect]), value: key }));
};

/** "blanket over low tu": the covers before the last "over", if they can be read, and what is being typed now. */
function lastCover(typed: string, reader: Reader): { before: readonly CoverKey[]; fragment: string } {
  const cut = Math.max(typed.lastIndexOf(OVER), typed.lastIndexOf(','));
  const before = cut < 0 ? undefined : typedCovers(typed.slice(0, cut).trim(), reader);
  if (before?.ok !== true) return { before: [], fragment: typed };
  const rest = typed.slice(cut);
  return { before: before.value, fragment: rest.startsWith(OVER) ? rest.slice(OVER.length) : rest.slice(1) };
}

function completed(before: readonly CoverKey[], fragment: string, reader: Reader): Suggestion[] {
  return matching(fragment, ENTRIES)
    .map((key) => [...before, key])
    .filter((keys) => orderProblem(keys) === undefined && keys.some((key) => key !== 'hoops'))
    .map((keys) => suggestion(keys, reader));
}

function suggestion(keys: readonly CoverKey[], { dialect }: Reader): Suggestion {
  return { label: capitalised(stackWords(keys, dialect)), value: keys.length === 0 ? 'none' : keys.join(OVER) };
}

function once(suggestions: readonly Suggestion[]): Suggestion[] {
  const seen = new Set<string>();
  return suggestions.filter(({ value }) => seen.size < seen.add(value).size);
}

const ENTRIES: readonly Entry<CoverKey>[] = COVER_KEYS.map((key) => ({
  of: key,
  phrases: [
    plainPhrase(key),
    plainPhrase(COVERS[key].american),
    plainPhrase(COVERS[key].british),
    ...COVER_WORDS.filter((row) => row.key === key && row.fronts === undefined).flatMap((row) =>
      phrasesOf(row.phrases),
    ),
  ],
}));
