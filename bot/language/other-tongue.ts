import type { Span } from './span.ts';

/** Fewer words that nothing explains may be a rare plant or a typing slip. */
const FEWEST_FOREIGN_WORDS = 3;

/** Is most of the text in another language, as far as words that English does not explain can tell? */
export function isOtherTongue(spans: readonly Span[]): boolean {
  const words = spans.filter(({ kind, plain }) => (kind === 'phrase' && plain.length > 2) || kind === 'unexplained');
  const foreign = words.filter(({ kind, corrected }) => kind === 'unexplained' || corrected);
  if (foreign.some(({ plain }) => /[^\p{Script=Latin}\p{M}']/u.test(plain))) return foreign.length * 2 > words.length;
  return foreign.length >= FEWEST_FOREIGN_WORDS && foreign.length * 2 > words.length;
}
