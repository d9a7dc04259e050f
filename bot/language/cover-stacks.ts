import { type CoverKey, orderProblem, soundOrder } from '../../rules/index.ts';
import { belongsToCover, type CoverMention } from './cover-mentions.ts';
import { isCue, type Span } from './span.ts';

/** How a cover lies to the one named before it. */
type Relation = 'outside' | 'outside-loosely' | 'inside' | 'unsaid';

export interface Stack {
  /** Outside to inside. */
  readonly keys: readonly CoverKey[];
  /** It was plainly said to lie in an order that cannot be. */
  readonly impossible: boolean;
}

/** From outside to inside, where the text leaves it open and rules know several orders (common practice). */
const OPEN_ORDER: readonly CoverKey[] = [
  'high-tunnel',
  'high-tunnel-double',
  'snow',
  'tarp',
  'mat',
  'quilt',
  'blanket',
  'sheet',
  'cold-frame',
  'cold-frame-twin-wall',
  'cold-frame-film',
  'low-tunnel',
  'low-tunnel-perforated',
  'low-tunnel-infrared',
  'row-cover-heavy',
  'row-cover-medium',
  'row-cover',
  'row-cover-light',
  'hoops',
  'straw',
  'leaves',
  'jugs',
];

/** The stack that several mentions make together, in the order said, or else in the order that can be. */
export function stackOf(spans: readonly Span[], mentions: readonly CoverMention[]): Stack {
  const said = mentions.filter(({ keys, denied }) => keys.length > 0 && !denied);
  const named = withoutConsumedHoops(oneOfAKind(said));
  const worn = named.filter(({ keys }) => !keys.includes('jugs'));
  const jugs: readonly CoverKey[] = worn.length < named.length ? ['jugs'] : [];
  const relations = worn.slice(1).map((mention, index) => relationTo(spans, worn[index], mention));
  const orders = [true, false].map((overAll) => [...orderSaid(worn, relations, overAll), ...jugs]);
  const inOrder = orders.find((order) => orderProblem(order) === undefined) ?? orders[1] ?? [];
  if (!relations.includes('unsaid')) {
    if (orderProblem(inOrder) === undefined) return { keys: inOrder, impossible: false };
    if (!relations.includes('outside-loosely')) return { keys: inOrder, impossible: true };
  }
  const keys =
    soundOrder(inOrder) ?? inOrder.toSorted((one, other) => OPEN_ORDER.indexOf(one) - OPEN_ORDER.indexOf(other));
  return { keys, impossible: orderProblem(keys) !== undefined };
}

/** A bed has one frame, one high tunnel, one litter: "a cold frame with a polycarbonate lid", "a low tunnel with plastic". */
function oneOfAKind(mentions: readonly CoverMention[]): readonly CoverMention[] {
  const kept: CoverMention[] = [];
  for (const mention of mentions) {
    const kind = structureOf(mention);
    const at = kind === undefined ? -1 : kept.findIndex((other) => structureOf(other) === kind);
    const earlier = kept[at];
    if (earlier === undefined) kept.push(mention);
    else kept[at] = { ...earlier, keys: moreTelling(earlier.keys, mention.keys) };
  }
  return kept;
}

function structureOf({ keys, assumes }: CoverMention): string | undefined {
  const key = keys[0] ?? '';
  if (key.startsWith('cold-frame')) return 'frame';
  if (key.startsWith('high-tunnel')) return 'high tunnel';
  if (key === 'straw' || key === 'leaves') return 'litter';
  if (key === 'snow') return 'snow';
  return key.startsWith('low-tunnel') && (assumes !== undefined || keys.length === 1) ? 'low tunnel' : undefined;
}

/** "cold-frame-twin-wall" says more than "cold-frame". */
function moreTelling(one: readonly CoverKey[], other: readonly CoverKey[]): readonly CoverKey[] {
  return (other[0]?.length ?? 0) > (one[0]?.length ?? 0) ? other : one;
}

/** Film on hoops is a low tunnel, hoops and all; hoops with nothing else named are taken to carry film. */
function withoutConsumedHoops(mentions: readonly CoverMention[]): readonly CoverMention[] {
  const hasFilm = mentions.some(({ keys }) => keys.some((key) => key.startsWith('low-tunnel')));
  const others = mentions.filter(({ keys }) => !keys.includes('hoops'));
  if (hasFilm) return others;
  const canHang = others.some(({ keys }) => keys.some((key) => !['snow', 'straw', 'leaves', 'jugs'].includes(key)));
  if (canHang || others.length === mentions.length) return mentions;
  return mentions.map((mention) => (mention.keys.includes('hoops') ? { ...mention, keys: ['low-tunnel'] } : mention));
}

/** What lies outside of the one named before it lies over all so far, or (`overAll` false) over that one alone. */
function orderSaid(
  mentions: readonly CoverMention[],
  relations: readonly Relation[],
  overAll: boolean,
): readonly CoverKey[] {
  let order: CoverKey[] = [];
  let previousAt = 0;
  let previousLayers = 0;
  for (const [index, { keys }] of mentions.entries()) {
    const isOutside = relations[index - 1]?.startsWith('outside') ?? false;
    const outside = overAll ? 0 : previousAt;
    const at = isOutside ? outside : previousAt + previousLayers;
    order = order.toSpliced(at, 0, ...keys);
    previousAt = at;
    previousLayers = keys.length;
  }
  return order;
}

function relationTo(spans: readonly Span[], before: CoverMention | undefined, mention: CoverMention): Relation {
  if (before === undefined) return 'unsaid';
  return relationAfter(spans, mention) ?? relationBetween(spans, before, mention);
}

/** "with fleece inside", "and a tarp over it". */
function relationAfter(spans: readonly Span[], { at }: CoverMention): Relation | undefined {
  return relationSaidAt(spans, at + 1) ?? (spans[at + 1]?.kind === 'mark' ? undefined : relationSaidAt(spans, at + 2));
}

function relationSaidAt(spans: readonly Span[], at: number): Relation | undefined {
  const span = spans[at];
  if (isCue(span, 'on-it')) return 'outside-loosely';
  if (isCue(span, 'inside-it')) return 'inside';
  if (!endsClause(spans, at + 1)) return undefined;
  if (isCue(span, 'under')) return 'inside';
  return isCue(span, 'over') ? 'outside' : undefined;
}

/** Nothing follows that the word before could belong to. */
function endsClause(spans: readonly Span[], at: number): boolean {
  const span = spans[at];
  if (span === undefined || span.kind === 'mark') return true;
  return isCue(span, 'and', 'or', 'at-temperature') || span.senses.some(({ kind }) => kind === 'when');
}

/** The word right before the inner cover tells: "over the frame", "inside a high tunnel", "covered with a tarp". */
function relationBetween(spans: readonly Span[], before: CoverMention, { at }: CoverMention): Relation {
  let cue = at - 1;
  while (cue > before.at && belongsToCover(spans[cue])) cue -= 1;
  if (cue <= before.at) return 'unsaid';
  const span = spans[cue];
  if (isCue(span, 'covered-with')) return 'outside';
  if (isCue(span, 'lined-with')) return 'inside';
  if (isCue(span, 'over')) return 'inside';
  if (isCue(span, 'under')) return underRelation(spans, before);
  return 'unsaid';
}

/**
 * In "fleece under a tunnel" the second lies outside. In "lettuce in a high tunnel under fleece" both belong to the
 * lettuce, so an order that cannot be is then not what was meant.
 */
function underRelation(spans: readonly Span[], before: CoverMention): Relation {
  let lead = before.at - 1;
  while (lead >= 0 && belongsToCover(spans[lead])) lead -= 1;
  return isCue(spans[lead], 'under', 'with') ? 'outside-loosely' : 'outside';
}
