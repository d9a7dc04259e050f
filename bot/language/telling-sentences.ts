import { DOUBTFUL_ANYWHERE } from './cover-standing-table.ts';
import { isCue, isMark, type Span, senseOf } from './span.ts';

/** A shorter text is about the night as a whole. */
const SHORTEST_STORY = 45;

/**
 * Of a long story the sentences that bear on the night: those that name a crop, a cover or a hazard, speak of tonight, or
 * ask. Prices, ages and last week's weather stand in the others. A short text stays whole.
 */
export function tellingSentences(spans: readonly Span[]): readonly Span[] {
  if (spans.length < SHORTEST_STORY) return spans;
  const kept = sentencesOf(spans).filter(isTelling);
  return kept.length === 0 ? spans : kept.flat();
}

function sentencesOf(spans: readonly Span[]): readonly (readonly Span[])[] {
  const sentences: Span[][] = [];
  let sentence: Span[] = [];
  for (const span of spans) {
    sentence.push(span);
    if (!isMark(span, '.', '?', '!')) continue;
    sentences.push(sentence);
    sentence = [];
  }
  return sentence.length > 0 ? [...sentences, sentence] : sentences;
}

function isTelling(sentence: readonly Span[]): boolean {
  const words = sentence.map(({ plain }) => plain).join(' ');
  if (LAST_WEEK.test(words) && !sentence.some(isCropOrAsking)) return false;
  return sentence.some(isOfNight) || isMark(sentence.at(-1), '?') || DOUBTFUL_ANYWHERE.test(words);
}

const LAST_WEEK = /(^| )(last week|last winter|last month|in (19|20)\d\d)( |$)/;

function isCropOrAsking(span: Span): boolean {
  return isCrop(span) || isMark(span, '?');
}

function isCrop(span: Span): boolean {
  const crop = senseOf(span, 'crop');
  return crop !== undefined && !crop.ordinary && !crop.variety;
}

function isOfNight(span: Span): boolean {
  if (isCrop(span) || senseOf(span, 'cover') || senseOf(span, 'hazard') || senseOf(span, 'plant')) return true;
  if (senseOf(span, 'bare') && span.plain !== 'nothing') return true;
  return (
    ['tonight', 'week', 'tomorrow-night'].includes(senseOf(span, 'when')?.when ?? '') || isCue(span, 'nights', 'lid')
  );
}
