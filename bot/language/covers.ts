import type { CoverKey, WallKey } from '../../rules/index.ts';
import { type CoverMention, coverMentions } from './cover-mentions.ts';
import { type Stack, stackOf } from './cover-stacks.ts';
import { standingsOf } from './cover-standing.ts';
import { type CropUnder, coversByCrop } from './covers-by-crop.ts';
import { isCue, isMark, type Span, senseOf } from './span.ts';
import type { Assumption, Problem } from './understood.ts';

export interface CoversRead {
  readonly covers?: readonly CoverKey[];
  readonly options?: readonly (readonly CoverKey[])[];
  readonly unknownCovers: readonly string[];
  readonly walls?: WallKey;
  readonly assumptions: readonly Assumption[];
  readonly problem?: Problem;
  /** What lies over each crop, where that is told of each. */
  readonly byCrop?: readonly CropUnder[];
  /** What lies there if the covers that may or may not be on are not. */
  readonly coversOtherwise?: readonly CoverKey[];
}

/** The covers of a question: one stack, or the stacks that it weighs against each other. */
export function readCovers(spans: readonly Span[]): CoversRead {
  return coversRead(spans, coverMentions(spans));
}

/**
 * The covers that lie over the plants on the night asked about: without those that the text says are off, open or
 * somebody else's. Where it leaves open whether one is on, `coversOtherwise` is the stack without it.
 */
export function readWornCovers(spans: readonly Span[], ofLastNight: boolean): CoversRead {
  const mentions = coverMentions(spans);
  if (weighsWithAndWithout(spans, mentions)) return coversRead(spans, mentions);
  const standings = standingsOf(spans, mentions, ofLastNight);
  const all = mentions.map((mention) => ({ ...mention, denied: false }));
  const worn = all.filter((_, index) => standings[index] !== 'absent');
  const sure = all.filter((_, index) => standings[index] === 'laid');
  const byCrop = coversByCrop(
    spans,
    mentions,
    (some) =>
      coversRead(
        spans,
        worn.filter(({ at }) => some.some((each) => each.at === at)),
      ).covers ?? [],
  );
  if (byCrop !== undefined) return { unknownCovers: [], assumptions: [], byCrop };
  const read = coversRead(spans, worn);
  if (mentions.length > 0 && worn.length === 0) return { ...read, covers: [] };
  if (sure.length === worn.length || read.options !== undefined) return read;
  const { covers: coversOtherwise = [] } = coversRead(spans, sure);
  return { ...read, coversOtherwise };
}

/** "with or without fleece", "a blanket or no blanket": the question is what the cover does. */
function weighsWithAndWithout(spans: readonly Span[], mentions: readonly CoverMention[]): boolean {
  return mentions.some(({ at, optional }) => {
    const lead = spans.slice(Math.max(0, at - 3), at);
    const or = lead.findIndex((span) => isCue(span, 'or', 'versus'));
    return optional || isDeniedElse(spans, at) || (or >= 0 && isCue(lead[or + 1], 'without'));
  });
}

function coversRead(spans: readonly Span[], mentions: readonly CoverMention[]): CoversRead {
  const unknownCovers = unknownCoversIn(spans);
  const walls = wallsIn(spans, mentions);
  const rest = { unknownCovers, ...(walls && { walls }) };
  if (mentions.length === 0)
    return { ...rest, assumptions: [], ...(unknownCovers.length > 0 && { problem: 'unknown-cover' }) };
  const stacks = eitherWay(spans, mentions) ?? alternativesOf(spans, mentions).map((group) => stackOf(spans, group));
  const different = differentStacks(stacks);
  const impossible = stacks.some((stack) => stack.impossible);
  const problem = unknownCovers.length > 0 ? 'unknown-cover' : impossible ? 'impossible-stack' : undefined;
  const keys = different.map((stack) => stack.keys);
  return {
    ...rest,
    ...(keys.length > 1 ? { options: keys } : { covers: keys[0] ?? [] }),
    assumptions: assumptionsOf(mentions, keys.flat()),
    ...(problem && { problem }),
  };
}

/** "fleece inside or outside the tunnel": the same two covers, either way round. */
function eitherWay(spans: readonly Span[], mentions: readonly CoverMention[]): readonly Stack[] | undefined {
  const [first, second] = mentions;
  if (first === undefined || second === undefined || mentions.length !== 2) return undefined;
  const between = spans.slice(first.at + 1, second.at);
  const or = between.findIndex((span) => isCue(span, 'or'));
  const asksBoth = [between[or - 1], between[or + 1]].every((span) => isCue(span, 'under', 'over'));
  const isAskedAfter = isCue(spans[second.at + 1], 'or') && isCue(spans[second.at + 2], 'inside-it', 'on-it');
  if (!(or >= 0 && asksBoth) && !isAskedAfter) return undefined;
  if (isAskedAfter && isCue(spans[second.at + 2], 'inside-it')) return bothWays(first, second);
  return bothWays(second, first);
}

/** First with `outer` over `inner`, then the other way round. */
function bothWays(outer: CoverMention, inner: CoverMention): readonly Stack[] {
  return [
    [...outer.keys, ...inner.keys],
    [...inner.keys, ...outer.keys],
  ].map((keys) => ({ keys, impossible: false }));
}

function assumptionsOf(mentions: readonly CoverMention[], keys: readonly CoverKey[]): readonly Assumption[] {
  const assumed = mentions.filter((mention) => mention.keys.some((key) => keys.includes(key)));
  const onHoops = mentions.some((mention) => mention.keys.includes('hoops'));
  return [
    ...new Set(
      assumed.flatMap(({ assumes }) =>
        assumes === undefined || (assumes === 'plastic-on-hoops' && onHoops) ? [] : [assumes],
      ),
    ),
  ];
}

function differentStacks(stacks: readonly Stack[]): readonly Stack[] {
  const seen = new Set<string>();
  return stacks.filter(({ keys }) => {
    const name = keys.join('>');
    return seen.size < seen.add(name).size;
  });
}

/** Groups of mentions that belong together; more than one where the question leaves a choice. */
function alternativesOf(
  spans: readonly Span[],
  mentions: readonly CoverMention[],
): readonly (readonly CoverMention[])[] {
  const optional = mentions.filter((mention) => mention.optional);
  if (optional.length > 0) return [mentions, mentions.filter((mention) => !mention.optional)];
  const [first] = mentions;
  if (first && mentions.length === 1 && isNeededElse(spans, first.at)) return [[], mentions];
  if (first && mentions.length === 1 && isDeniedElse(spans, first.at)) return [mentions, []];
  const joins = mentions.slice(1).map((mention, index) => joinOf(spans, mentions[index], mention));
  if (!joins.includes('choice')) return splitByComparing(spans, mentions, joins);
  const shared = leadingBase(spans, mentions, joins);
  const groups = addingToFirst(spans, groupsOf(mentions.slice(shared.length), joins.slice(shared.length)));
  return withTrailingBase(spans, groups).map((group) => [...shared, ...group]);
}

/** "is it ok at 20 or does it need a blanket": bare against covered. */
function isNeededElse(spans: readonly Span[], at: number): boolean {
  const before = spans.slice(Math.max(0, at - 6), at);
  const or = before.findIndex((span) => isCue(span, 'or'));
  return or >= 0 && before.slice(or + 1).some((span) => isCue(span, 'need', 'should'));
}

/** "with fleece or without". */
function isDeniedElse(spans: readonly Span[], at: number): boolean {
  return isCue(spans[at + 1], 'or') && isCue(spans[at + 2], 'without');
}

type Join = 'together' | 'choice' | 'comma';

function joinOf(spans: readonly Span[], before: CoverMention | undefined, mention: CoverMention): Join {
  if (mention.alternative) return 'choice';
  const between = spans.slice((before?.at ?? 0) + 1, mention.at);
  if (between.some((span) => isCue(span, 'or', 'versus'))) return 'choice';
  const words = between.filter((span) => !isArticle(span));
  return words.length === 1 && isMark(words[0], ',', '/') ? 'comma' : 'together';
}

function isArticle(span: Span): boolean {
  return ['a', 'an', 'the', 'some', 'my', 'just', 'old'].includes(span.plain) || senseOf(span, 'weight') !== undefined;
}

/** Without "or": "compare fleece and a sheet", "the difference between a frame and a tunnel", "sheet, quilt: which?" */
function splitByComparing(
  spans: readonly Span[],
  mentions: readonly CoverMention[],
  joins: readonly Join[],
): readonly (readonly CoverMention[])[] {
  const isList = joins.every((join) => join === 'comma') && spans.some((span) => isCue(span, 'which'));
  const compares =
    isList ||
    spans.some((span) => ['compare', 'comparing', 'difference', 'difference between', 'between'].includes(span.plain));
  return compares && mentions.length > 1 ? mentions.map((mention) => [mention]) : [mentions];
}

/** Commas before an "or" part choices as well: "sheet, blanket or quilt". */
function groupsOf(mentions: readonly CoverMention[], joins: readonly Join[]): readonly (readonly CoverMention[])[] {
  const groups: CoverMention[][] = [];
  for (const [index, mention] of mentions.entries()) {
    const join = joins[index - 1];
    const group = groups.at(-1);
    const parts = join === 'choice' || (join === 'comma' && joins.slice(index).includes('choice'));
    if (group === undefined || parts) groups.push([mention]);
    else group.push(mention);
  }
  return groups;
}

/** "in my high tunnel, fleece or a low tunnel": what is said first and set off belongs to each choice. */
function leadingBase(
  spans: readonly Span[],
  mentions: readonly CoverMention[],
  joins: readonly Join[],
): readonly CoverMention[] {
  const [first, second] = mentions;
  if (first === undefined || second === undefined || joins[0] === 'choice') return [];
  const lead = spans.slice(Math.max(0, first.at - 3), first.at);
  const gap = spans.slice(first.at + 1, second.at);
  const setOff = gap.some((span) => isMark(span, ',', ':', ';') || isCue(span, 'should', 'will', 'which', 'what'));
  return setOff && isRoof(first) && lead.some((span) => isCue(span, 'under')) ? [first] : [];
}

/** "in a tunnel, or do I need fleece as well?": the second choice is laid on the first. */
function addingToFirst(
  spans: readonly Span[],
  groups: readonly (readonly CoverMention[])[],
): readonly (readonly CoverMention[])[] {
  const [first, second] = groups;
  const at = second?.at(-1)?.at;
  if (groups.length !== 2 || first === undefined || second === undefined || at === undefined) return groups;
  const adds = [spans[at + 1], spans[at + 2]].some((span) => isCue(span, 'as-well'));
  return adds && !(first.some(isRoof) && second.some(isRoof)) ? [first, [...first, ...second]] : groups;
}

/** "blanket or fleece over the low tunnel": the tunnel belongs to each. */
function withTrailingBase(
  spans: readonly Span[],
  groups: readonly (readonly CoverMention[])[],
): readonly (readonly CoverMention[])[] {
  const last = groups.at(-1) ?? [];
  const [inner, roof] = last;
  const earlier = groups.slice(0, -1);
  if (last.length !== 2 || inner === undefined || roof === undefined) return groups;
  if (!isRoof(roof) || isRoof(inner) || earlier.some((group) => group.length === 0 || group.some(isRoof)))
    return groups;
  const linked = spans.slice(inner.at + 1, roof.at).some((span) => isCue(span, 'over', 'under'));
  return linked ? [...earlier.map((group) => [...group, roof]), last] : groups;
}

function isRoof({ keys }: CoverMention): boolean {
  return keys.some((key) => key.includes('tunnel') || key.startsWith('cold-frame'));
}

const LAYING = ['under', 'with', 'over', 'covered-with', 'cover', 'inside-it', 'or', 'without', 'versus'] as const;

/** What plants also stand or grow in: a cover only where it is laid over them. */
const HOLDS_PLANTS =
  /^(bucket|plant pot|flower pot|bin|tote|plastic tub|laundry basket|compost|bark mulch|sawdust|wood ?chip)s?$/;

function unknownCoversIn(spans: readonly Span[]): readonly string[] {
  return spans.flatMap((span, at) => {
    if (isUnknownLaidOver(spans, at) || isBaleRound(spans, at) || isNamelessLayer(spans, at)) return [span.said];
    if (!senseOf(span, 'other-cover') || isCue(spans[at - 1], 'without')) return [];
    return !HOLDS_PLANTS.test(span.plain) || isLaidOver(spans, at) ? [span.said] : [];
  });
}

function isLaidOver(spans: readonly Span[], at: number): boolean {
  const near = spans.slice(Math.max(0, at - 3), at);
  if (near.some(({ plain }) => plain === 'in')) return false;
  return near.some((each) => isCue(each, ...LAYING)) || isCue(spans[at + 1], 'over', 'on-it');
}

/** "bales round it", with no frame that they could be the walls of. */
function isBaleRound(spans: readonly Span[], at: number): boolean {
  if (senseOf(spans[at], 'walls')?.walls !== 'straw-bale') return false;
  const isRound = [1, 2].some((ahead) =>
    /^(around|round|all around|each side|on)$/.test(spans[at + ahead]?.plain ?? ''),
  );
  return isRound && !spans.some((span) => senseOf(span, 'cover'));
}

/** "several thin layers": of what, is not said. */
function isNamelessLayer(spans: readonly Span[], at: number): boolean {
  const span = spans[at];
  if (!senseOf(span, 'layers') || !/layers?$/.test(span?.plain ?? '') || spans[at - 1]?.value !== undefined)
    return false;
  return !spans.some((each) => senseOf(each, 'cover') ?? senseOf(each, 'other-cover')) && isPlainStatement(spans);
}

/** "How many layers?" asks for them. */
function isPlainStatement(spans: readonly Span[]): boolean {
  return !spans.some((span) => isCue(span, 'layers', 'need', 'what', 'which', 'how', 'remedy'));
}

/** "under voile": a cover that nobody here knows. */
function isUnknownLaidOver(spans: readonly Span[], at: number): boolean {
  if (spans[at]?.kind !== 'unexplained') return false;
  const before = ['a', 'an', 'the', 'some', 'my'].includes(spans[at - 1]?.plain ?? '') ? spans[at - 2] : spans[at - 1];
  return before !== undefined && LAID_UNDER.has(before.plain);
}

const LAID_UNDER: ReadonlySet<string> = new Set([
  'under',
  'beneath',
  'underneath',
  'covered with',
  'covered by',
  'covered in',
]);

function wallsIn(spans: readonly Span[], mentions: readonly CoverMention[]): WallKey | undefined {
  if (!mentions.some(({ keys }) => keys.some((key) => key.startsWith('cold-frame')))) return undefined;
  return spans.map((span) => senseOf(span, 'walls')?.walls).find((walls) => walls !== undefined);
}
