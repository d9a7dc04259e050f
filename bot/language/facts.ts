import type { AdviceKey } from '../../rules/index.ts';
import type { Cue } from './cue-words-table.ts';
import { isCue, type Span, senseOf } from './span.ts';
import type { When } from './understood.ts';

/** What the rules of intent look at. */
export interface Facts {
  readonly spans: readonly Span[];
  /** Crops named, or words that may be several. */
  readonly hasCrop: boolean;
  /** A word that stands where a plant would. */
  readonly hasPlantLike: boolean;
  readonly hasLow: boolean;
  /** The temperature said is no frost but that of a closed frame in the sun. */
  readonly isWarm: boolean;
  /** A cover is named, or that there is none. */
  readonly hasCover: boolean;
  readonly hasRoof: boolean;
  readonly optionCount: number;
  readonly hasBed: boolean;
  readonly when: When | 'tomorrow' | undefined;
  readonly asksCaution: boolean;
  readonly advice: AdviceKey | undefined;
  /** Enough is told of the night, of water or heat, to answer without a crop. */
  readonly tellsNight: boolean;
  readonly says: (...cues: readonly Cue[]) => boolean;
}

/** Asks a text for its cues, each looked up once. */
export function cuesOf(spans: readonly Span[]): Facts['says'] {
  const said = new Set(
    spans.flatMap(({ senses }) => senses.flatMap((sense) => (sense.kind === 'cue' ? [sense.cue] : []))),
  );
  return (...cues) => cues.some((cue) => said.has(cue));
}

/** A crop, or something that stands where a plant would. */
export function namesPlant({ hasCrop, hasPlantLike }: Facts): boolean {
  return hasCrop || hasPlantLike;
}

/** "my beds", "which beds": beds, but none by number or name. */
export function namesBeds({ spans }: Facts): boolean {
  return spans.some((span) => senseOf(span, 'bed') !== undefined);
}

/** A temperature, a cover or a night is named. */
export function namesNight({ hasLow, hasCover, when }: Facts): boolean {
  return hasLow || hasCover || when !== undefined;
}

/** "will … live, do, freeze, be fine". */
export function asksOfFate({ says }: Facts): boolean {
  return says('survive', 'fare', 'harm', 'risk', 'worry', 'fine');
}

/** The whole of "does this crop live at that low". */
export function asksOfLife(facts: Facts): boolean {
  return facts.hasCrop && facts.hasLow && asksOfFate(facts);
}

/** The text is little more than a crop, a cover or a temperature: "kale 10F", "and at 5?". */
export function isFragment({ spans }: Facts): boolean {
  return spans.filter(isContent).length === 0;
}

const SHORTEST_CONTENT = 3;

/** Ordinary words that a fragment may hold. */
const LIGHT_WORDS: ReadonlySet<string> = new Set(
  (
    'the and for but not yet got get are out too now any all you this with from into just only even very some like about ' +
    'maybe please say still here there think guess plus also well there some guys then next day night degrees old big ' +
    'small little new young few couple nice good outside tonight today'
  ).split(' '),
);

/** Words that say more than a fragment does. */
function isContent(span: Span, at: number, spans: readonly Span[]): boolean {
  if (span.kind === 'unexplained') return true;
  if (span.kind !== 'phrase' || span.plain.length < SHORTEST_CONTENT || LIGHT_WORDS.has(span.plain)) return false;
  if (senseOf(spans[at + 1], 'crop')) return false;
  return span.senses.every((sense) => sense.kind === 'ordinary');
}

/** "it", "them"; but "its going to 27" speaks of the night. */
export function isThing(span: Span): boolean {
  return isCue(span, 'it') && span.plain !== 'its';
}

/** Is one cue followed by another within a few words? */
export function follows(spans: readonly Span[], first: Cue, second: Cue, within: number): boolean {
  return spans.some(
    (span, at) => isCue(span, first) && spans.slice(at + 1, at + 1 + within).some((later) => isCue(later, second)),
  );
}
