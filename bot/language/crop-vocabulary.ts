import { AMBIGUOUS_WORDS, cropNames, GROUP_WORDS, ORDINARY_WORDS } from '../../rules/index.ts';
import { buildVocabulary, type Vocabulary } from './vocabulary.ts';

let built: Vocabulary | undefined;

/** The words of the crop and cover tables, built at the first question and kept. */
export function cropVocabulary(): Vocabulary {
  built ??= buildVocabulary({
    names: cropNames(),
    ambiguous: AMBIGUOUS_WORDS,
    groups: GROUP_WORDS,
    ordinary: ORDINARY_WORDS,
  });
  return built;
}
