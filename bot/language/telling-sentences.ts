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

/**
 * The sentences of a text that ask: those with a question mark, else those in which a question begins. What the others
 * tell is no part of what is asked: "Everyone says cover it. Will it live?"
 */
export function askingSentences(spans: readonly Span[]): readonly Span[] {
  const sentences = sentencesOf(spans);
  const marked = sentences.filter((sentence) => isMark(sentence.at(-1), '?'));
  const asking = marked.length > 0 ? marked : sentences.filter(beginsAsking);
  return asking.length === 0 || asking.length === sentences.length ? spans : asking.flat();
}

/** "… and will it come through …", "how cold can they get". */
function beginsAsking(sentence: readonly Span[]): boolean {
  return sentence.some((span, at) => {
    const next = sentence[at + 1];
    const isVerb =
      isCue(span, 'will', 'can', 'should', 'fare') &&
      /^(will|would|wil|does|do|can|could|should|is|are|shall|did)\b/.test(span.plain);
    return (
      isCue(span, 'limit', 'which', 'when', 'how') ||
      (isVerb && (isCue(next, 'it', 'the', 'mine') || (next !== undefined && isCrop(next))))
    );
  });
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
