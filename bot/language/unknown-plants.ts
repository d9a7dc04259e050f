import { isNearOrdinaryWord } from './near-ordinary.ts';
import { GROWS_AS_VINE, OTHER_KIND, OTHER_KIND_BEFORE, PLANT_NOUNS, VINES } from './plant-words-table.ts';
import { isCue, isMark, type Span, senseOf } from './span.ts';

export interface UnknownPlants {
  /** Known plants that are not in the table, and words listed together with a crop. */
  readonly beside: readonly string[];
  /** Words that nothing explains, standing where a plant is expected. */
  readonly inSlot: readonly string[];
}

interface Chunk {
  readonly from: number;
  readonly next: number;
  readonly said: string;
  readonly isPlant: boolean;
}

/** Plants that the table does not hold. `crops` are the places of those that it does. */
export function unknownPlants(spans: readonly Span[], crops: ReadonlySet<number>): UnknownPlants {
  const chunks = chunksOf(spans).filter(({ from, next }) => !crops.has(from - 1) && !crops.has(next));
  const isListed = (chunk: Chunk) => chunk.isPlant || isListedWithCrop(spans, crops, chunk);
  const isSlotted = (chunk: Chunk) => !isListed(chunk) && isPlantSlot(spans, chunk.from, chunk.next);
  const said = (kept: (chunk: Chunk) => boolean) => chunks.filter(kept).map((chunk) => chunk.said);
  return { beside: said(isListed), inSlot: said(isSlotted) };
}

/** Runs of words that no vocabulary explains, or that name a plant outside the table. */
function chunksOf(spans: readonly Span[]): readonly Chunk[] {
  const chunks: Chunk[] = [];
  for (let from = 0; from < spans.length; from += 1) {
    if (!isForeign(spans, from)) continue;
    let next = from + 1;
    while (isForeign(spans, next) || isNoun(spans[next])) next += 1;
    const words = spans.slice(from, next);
    const isPlant = words.some((span, index) => senseOf(span, 'plant') ?? isNamesake(spans, from + index));
    chunks.push({ from, next, said: words.map(({ said }) => said).join(' '), isPlant });
    from = next - 1;
  }
  return chunks;
}

function isForeign(spans: readonly Span[], at: number): boolean {
  const span = spans[at];
  if (span === undefined) return false;
  const leads = OTHER_KIND_BEFORE.has(span.plain) && senseOf(spans[at + 1], 'crop') !== undefined;
  return leads || span.kind === 'unexplained' || senseOf(span, 'plant') !== undefined || isNamesake(spans, at);
}

function isNoun(span: Span | undefined): boolean {
  return span !== undefined && (PLANT_NOUNS.has(span.plain) || OTHER_KIND.has(span.plain) || VINES.has(span.plain));
}

/**
 * "flumberry kale", "pepper tree": a crop's name bound to a word that makes it another plant, until a table says
 * otherwise. A slip of the finger and a person's name bind nothing.
 */
export function isNamesake(spans: readonly Span[], at: number): boolean {
  const sense = senseOf(spans[at], 'crop');
  if (sense === undefined) return false;
  const after = spans[at + 1]?.plain ?? '';
  const isOtherVine = VINES.has(after) && !sense.ids.some((id) => GROWS_AS_VINE.has(id));
  return (
    OTHER_KIND.has(after) ||
    isOtherVine ||
    OTHER_KIND_BEFORE.has(spans[at - 1]?.plain ?? '') ||
    isStrange(spans[at - 1])
  );
}

const SHORTEST_STRANGER = 5;

function isStrange(span: Span | undefined): boolean {
  if (span?.kind !== 'unexplained' || span.corrected || span.plain.length < SHORTEST_STRANGER) return false;
  return !/['’]?s$/.test(span.said) && !isNearOrdinaryWord(span.plain);
}

/** "kale and grobnuts": joined to a crop by "and", "or", a comma or a stroke. */
function isListedWithCrop(spans: readonly Span[], crops: ReadonlySet<number>, { from, next }: Chunk): boolean {
  const afterCrop = isListLink(spans[from - 1]) && crops.has(from - 2);
  const beforeCrop = isListLink(spans[next]) && crops.has(next + 1) && !isGreeting(spans[from - 1]);
  return afterCrop || beforeCrop;
}

function isListLink(span: Span | undefined): boolean {
  return isCue(span, 'and', 'or') || isMark(span, ',', '/', '&', '+');
}

function isGreeting(span: Span | undefined): boolean {
  return span !== undefined && ['hi', 'hey', 'hello', 'dear', 'thanks', 'yo', 'morning'].includes(span.plain);
}

const ARTICLES: ReadonlySet<string> = new Set(
  'a an some any new young little old big potted fresh small of for about on with'.split(' '),
);

/** Does a plant fit here: at the start or after "my", "will", "can", "of"…, and before a verb, a temperature or the end? */
export function isPlantSlot(spans: readonly Span[], from: number, next = from + 1): boolean {
  return opensSlot(spans[from - 1]) && closesSlot(spans[next]);
}

function opensSlot(span: Span | undefined): boolean {
  if (span === undefined || isMark(span, ',', '.', ':', '-', '?', '!', '(')) return true;
  return (
    isCue(
      span,
      'mine',
      'the',
      'will',
      'can',
      'should',
      'limit',
      'over',
      'with',
      'cover',
      'need',
      'pick',
      'sow',
      'and',
      'or',
    ) ||
    isCue(span, 'follow-on', 'harm', 'it', 'eat', 'how', 'everything', 'frozen') ||
    senseOf(span, 'state') !== undefined ||
    senseOf(span, 'crop') !== undefined ||
    ARTICLES.has(span.plain)
  );
}

function closesSlot(span: Span | undefined): boolean {
  if (span === undefined || span.kind === 'mark' || span.kind === 'number') return true;
  if (CLOSING_WORDS.has(span.plain)) return true;
  return span.senses.some((sense) => {
    if (sense.kind === 'cue') return CLOSING_CUES.has(sense.cue);
    return sense.kind !== 'ordinary' && sense.kind !== 'crop' && sense.kind !== 'plant';
  });
}

const CLOSING_WORDS: ReadonlySet<string> = new Set('while when after before if until because tonight'.split(' '));

const CLOSING_CUES: ReadonlySet<string> = new Set([
  'survive',
  'fare',
  'fine',
  'harm',
  'at-temperature',
  'under',
  'with',
  'without',
  'over',
  'and',
  'or',
  'need',
  'will',
  'can',
  'should',
  'hot',
  'limit',
  'instead',
  'range-to',
  'minus',
  'pick',
  'frozen',
  'frost',
  'covered-with',
  'winter',
  'cover',
  'risk',
  'worry',
  'low-part',
]);
