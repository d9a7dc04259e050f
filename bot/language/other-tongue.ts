import { ENGLISH_SMALL_WORDS, FOREIGN_SMALL_WORDS } from './foreign-words-table.ts';
import type { Span } from './span.ts';

/** Fewer words that nothing explains may be a rare plant or a typing slip. */
const FEWEST_FOREIGN_WORDS = 3;
/** One small foreign word may be a piece of a name. */
const FEWEST_SMALL_WORDS = 2;

/**
 * Is the text in another language? Its small words tell ("quelle … la … sous"); without any, words that nothing explains
 * do where they outnumber the rest and no small word is English.
 */
export function isOtherTongue(spans: readonly Span[]): boolean {
  const words = spans.filter(({ kind, plain }) => (kind === 'phrase' && plain.length > 2) || kind === 'unexplained');
  const foreign = words.filter(({ kind, corrected }) => kind === 'unexplained' || corrected);
  const outnumbers = foreign.length * 2 > words.length;
  if (foreign.some(({ plain }) => /[^\p{Script=Latin}\p{M}']/u.test(plain))) return outnumbers;
  const english = spans.filter(saysEnglish).length;
  const small = spans.filter(({ plain }) => FOREIGN_SMALL_WORDS.has(plain)).length;
  if (small >= FEWEST_SMALL_WORDS) return small > english;
  return english === 0 && foreign.length >= FEWEST_FOREIGN_WORDS && outnumbers;
}

function saysEnglish({ plain }: Span): boolean {
  return plain.split(' ').some((word) => ENGLISH_SMALL_WORDS.has(word));
}
