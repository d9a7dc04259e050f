import type { CoverKey } from '../../rules/index.ts';
import { fabricKey, fabricWeightsAt, isFabric } from './fabric-weight.ts';
import { isLyingSnow } from './lying-snow.ts';
import { isCue, type Span, senseOf } from './span.ts';
import { isPlural } from './temperature-numbers.ts';
import type { Assumption } from './understood.ts';

/** A cover, or the lack of one, named at a place in the text. */
export interface CoverMention {
  /** Index of its span. */
  readonly at: number;
  /** One key a layer; none when it says that nothing lies there. */
  readonly keys: readonly CoverKey[];
  readonly assumes?: Assumption;
  /** "no blanket", "without a blanket". */
  readonly denied: boolean;
  /** "with or without a blanket". */
  readonly optional: boolean;
  /** An alternative to the mention before it, by its own words: "one layer or two". */
  readonly alternative: boolean;
}

const MOST_LAYERS = 6;

/** More covers than any question names; bounds the work on a text that names nothing else. */
const MOST_MENTIONS = 40;

/** Kinds that come in layers; of frames, high tunnels, hoops and jugs there is one to a bed. */
const LAYERED: ReadonlySet<CoverKey> = new Set<CoverKey>([
  'row-cover',
  'row-cover-light',
  'row-cover-medium',
  'row-cover-heavy',
  'sheet',
  'blanket',
  'quilt',
  'tarp',
  'mat',
  'low-tunnel',
  'low-tunnel-perforated',
  'low-tunnel-infrared',
]);

/** Every cover named, in the order of the text; one that is named again is the same one. */
export function coverMentions(spans: readonly Span[]): readonly CoverMention[] {
  const all = allMentions(spans).slice(0, MOST_MENTIONS);
  return all.filter(
    (mention, index) => !isSaidInOne(mention, all[index + 1]) && !isNamedBefore(spans, mention, all.slice(0, index)),
  );
}

/** "fabric row cover": two names of one. */
function isSaidInOne({ at, keys }: CoverMention, next: CoverMention | undefined): boolean {
  const isOfFabric = keys.length > 0 && keys.every((key) => key.startsWith('row-cover'));
  return isOfFabric && next?.at === at + 1 && next.keys.every((key) => key.startsWith('row-cover'));
}

/** "I have fleece on … will the fleece do?", "a high tunnel … the tunnel". */
function isNamedBefore(spans: readonly Span[], mention: CoverMention, earlier: readonly CoverMention[]): boolean {
  const key = mention.keys[0];
  if (key === undefined || mention.alternative || mention.optional || mention.denied) return false;
  const isGeneric = mention.assumes === 'tunnel-is-low' || mention.assumes === 'plastic-on-hoops';
  const isDefinite = isCue(spans[mention.at - 1], 'the', 'it') || (isGeneric && isCue(spans[mention.at - 1], 'mine'));
  if (!isDefinite) return false;
  if (belongsToOtherChoice(spans, mention.at, earlier.at(-1)?.at ?? 0)) return false;
  const likeIt = earlier.some(({ keys }) => keys.some((one) => one === key || (isGeneric && one.includes('tunnel'))));
  return likeIt && mention.keys.length === 1;
}

/** "Fleece inside the tunnel or a blanket over the tunnel": each choice has it. */
function belongsToOtherChoice(spans: readonly Span[], at: number, before: number): boolean {
  const or = spans.findLastIndex((span, place) => place < before && isCue(span, 'or', 'versus'));
  return or >= 0 && before - or <= 3 && isCue(spans[at - 2], 'over', 'under') && before >= at - 4;
}

function allMentions(spans: readonly Span[]): readonly CoverMention[] {
  return spans.flatMap((span, at) => {
    const cover = senseOf(span, 'cover');
    if (cover) return mentionsAt(spans, at, cover.key, cover.assumes);
    if (isLitter(spans, at)) return mentionsAt(spans, at, 'leaves');
    if (isLyingSnow(spans, at)) return mentionsAt(spans, at, 'snow');
    if (isWindowOverBed(spans, at)) return mentionsAt(spans, at, 'cold-frame');
    return isBare(spans, at) ? [{ at, keys: [], denied: false, optional: false, alternative: false }] : [];
  });
}

function mentionsAt(spans: readonly Span[], at: number, key: CoverKey, assumes?: Assumption): readonly CoverMention[] {
  const before = leadAt(spans, at);
  const marks = {
    denied: isCue(before.span, 'without'),
    optional: isCue(before.span, 'with-or-without'),
    ...(assumes && { assumes }),
  };
  const counts = layersAt(spans, at, before.layersFrom);
  const said = isFabric(key) ? fabricWeightsAt(spans, at) : [];
  const weights = said.length > 0 ? said : [undefined];
  const stacks = counts.flatMap((count) =>
    weights.map((weight) => layers(weight === undefined ? key : fabricKey(key, weight), count)),
  );
  return stacks.map((keys, index) => ({ at, keys, ...marks, alternative: index > 0 }));
}

function layers(key: CoverKey, count: number): readonly CoverKey[] {
  return new Array<CoverKey>(LAYERED.has(key) ? Math.min(count, MOST_LAYERS) : 1).fill(key);
}

/** The words that belong to a cover and stand before it: articles, weights, layers, plain adjectives. */
function leadAt(spans: readonly Span[], at: number): { readonly span: Span | undefined; readonly layersFrom: number } {
  let from = at - 1;
  while (at - from <= 4 && (belongsToCover(spans[from]) || spans[from]?.kind === 'unexplained')) from -= 1;
  return { span: spans[from], layersFrom: from + 1 };
}

export function belongsToCover(span: Span | undefined): boolean {
  if (span === undefined || span.kind === 'mark') return false;
  if (span.kind === 'number' || span.plain === 'of' || isCue(span, 'the', 'mine', 'grams', 'ounces', 'another'))
    return true;
  if (senseOf(span, 'weight') || senseOf(span, 'layers')) return true;
  return span.senses.length > 0 && span.senses.every((sense) => sense.kind === 'ordinary');
}

/** How many layers: one number, or two where the text leaves a choice ("one layer or two"). */
function layersAt(spans: readonly Span[], at: number, from: number): readonly number[] {
  const before = spans.slice(from, at);
  const counted = isPlural(spans[at]) || before.some((span) => senseOf(span, 'layers'));
  const said = counted ? layerCount(before) : undefined;
  const choice = isCue(spans[from - 1], 'or') ? layerCount(spans.slice(Math.max(0, from - 3), from - 1)) : undefined;
  if (said !== undefined && choice !== undefined) return [choice, said];
  const after = layersAfter(spans, at);
  if (after?.choice !== undefined) return [said ?? 1, after.choice];
  return [said ?? after?.count ?? 1];
}

/** "two layers of", "double", "three". */
function layerCount(words: readonly Span[]): number | undefined {
  const layered = words.map((word) => senseOf(word, 'layers')?.count).find((count) => count !== undefined);
  if (layered !== undefined) return layered;
  const number = words.find((word, index) => isWholeCount(word) && !isCue(words[index + 1], 'grams', 'ounces'));
  if (number?.value !== undefined) return number.value;
  return words.some((word) => word.plain === 'couple') ? 2 : undefined;
}

function isWholeCount(word: Span): boolean {
  return word.value !== undefined && Number.isInteger(word.value) && word.value >= 1 && word.value <= MOST_LAYERS;
}

/** "fleece or …", and where covers are compared, "fleece with …". */
function isChoiceOfLayers(spans: readonly Span[], at: number): boolean {
  if (isCue(spans[at], 'or', 'versus')) return true;
  return isCue(spans[at], 'with', 'and', 'range-to') && spans.some((span) => isCue(span, 'compare'));
}

/** "fleece doubled", "fleece x2", "fleece in two layers", "a layer of fleece or two". */
function layersAfter(
  spans: readonly Span[],
  at: number,
): { readonly count?: number; readonly choice?: number } | undefined {
  if (isChoiceOfLayers(spans, at + 1)) {
    const choice = layerCount(spans.slice(at + 2, at + 3)) ?? (isCue(spans[at + 2], 'another') ? 2 : undefined);
    const namesOther = [3, 4].some((ahead) => senseOf(spans[at + ahead], 'cover') !== undefined);
    return choice === undefined || namesOther ? undefined : { choice };
  }
  const ahead = spans.slice(at + 1, at + 4);
  const end = ahead.findIndex((span) => senseOf(span, 'layers') !== undefined);
  if (end < 0 || ahead.slice(0, end).some((span) => span.kind === 'mark' || senseOf(span, 'cover'))) return undefined;
  if (senseOf(spans[at + end + 2], 'cover')) return undefined;
  const count = layerCount(ahead.slice(0, end + 1));
  return count === undefined ? undefined : { count };
}

/** "leaves" as a mulch, not those of a plant: laid under or over, or weighed against another cover. */
function isLitter(spans: readonly Span[], at: number): boolean {
  const span = spans[at];
  if (span?.plain !== 'leaves') return false;
  return (
    spans[at - 1]?.plain === 'of' ||
    isCue(spans[at - 1], 'under', 'covered-with', 'or', 'versus', 'with') ||
    isCue(spans[at + 1], 'or', 'versus')
  );
}

/** "under an old window", "straw bales with a glass door on top". */
function isWindowOverBed(spans: readonly Span[], at: number): boolean {
  if (!senseOf(spans[at], 'hazard')?.topics.includes('glass')) return false;
  return isCue(leadAt(spans, at).span, 'under') || isCue(spans[at + 1], 'on-it', 'over');
}

function isBare(spans: readonly Span[], at: number): boolean {
  const span = spans[at];
  if (!senseOf(span, 'bare') || isDeniedBare(spans, at)) return false;
  if (span?.plain !== 'nothing') return true;
  if (/^(wrong|much|special|new|happened|to)$/.test(spans[at + 1]?.plain ?? '')) return false;
  const before = spans[at - 1];
  return before === undefined || before.kind === 'mark' || isCue(before, 'with', 'or', 'versus', 'under');
}

/** "no more naked chard", "it isn't bare". */
function isDeniedBare(spans: readonly Span[], at: number): boolean {
  if (!/^(bare|naked|uncovered|exposed|unprotected)$/.test(spans[at]?.plain ?? '')) return false;
  const before = `${spans[at - 2]?.plain ?? ''} ${spans[at - 1]?.plain ?? ''}`;
  return /(^| )(no more|not|isnt|arent|never|wont be|no longer)$/.test(before);
}
