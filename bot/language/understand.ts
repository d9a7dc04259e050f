import { type UnitSystem, unitSystemOf } from '../ground/units.ts';
import { readBeds } from './beds.ts';
import { cautionTopics, isCautionQuestion } from './caution-topics.ts';
import { type CoversRead, readCovers, readWornCovers } from './covers.ts';
import { type CropsRead, readCrops } from './crops.ts';
import { declined } from './declined.ts';
import { cuesOf, type Facts, namesPlant } from './facts.ts';
import { continued, continues } from './follow-up.ts';
import { intentOf } from './intent-rules.ts';
import { asksOfSeveralNights } from './intents-of-outlook.ts';
import { missingFrom } from './missing.ts';
import { isOtherTongue } from './other-tongue.ts';
import { readPlantState } from './plant-state.ts';
import { readSky } from './sky.ts';
import { isCue, type Span, senseOf } from './span.ts';
import { spansOf } from './spans.ts';
import { askingSentences, tellingSentences } from './telling-sentences.ts';
import { readTemperature, type TemperatureRead } from './temperature.ts';
import type { Assumption, Intent, Problem, SaidBeds, Understood, Unit, When } from './understood.ts';
import type { Vocabulary } from './vocabulary.ts';
import { readNight, readWhen, settledWhen } from './when.ts';

export interface Context {
  readonly vocabulary: Vocabulary;
  /** The units that the member chose; else those of `locale`. */
  readonly units?: UnitSystem;
  /** BCP 47 tag; `en-US` when not known. */
  readonly locale?: string;
  /** A place is known, so that a night's forecast can stand for a temperature not said. */
  readonly hasPlace?: boolean;
  readonly hasBeds?: boolean;
  readonly bedNames?: readonly string[];
  /** What was understood just before in the same conversation; the caller forgets it after ten minutes. */
  readonly previous?: Understood;
}

/** A longer text is no question about a bed, and nothing is read of it. */
export const LONGEST_QUESTION = 4000;

/**
 * What a grower's question says. Pure, and linear in the length of the text; never throws. Everything that it reports as
 * said stands in the text, or in `context.previous` where the text only continues it.
 */
export function understand(text: string, context: Context): Understood {
  if (text.length > LONGEST_QUESTION) return declined('too-long');
  return understandUnbounded(text, context);
}

/** An answer to what `previous` asked back for. */
export function followUp(previous: Understood, answer: string, context: Context): Understood {
  return understand(answer, { ...context, previous });
}

/** {@link understand} for a text of any length; the measurement of its speed uses it. */
export function understandUnbounded(text: string, context: Context): Understood {
  const spans = tellingSentences(spansOf(text, context.vocabulary, context.bedNames));
  if (spans.every(({ kind }) => kind === 'mark')) return declined('empty');
  if (isOtherTongue(spans)) return declined('not-english');
  const read = readAll(spans, context);
  const facts = read.facts;
  const asked = intentAsked(facts);
  const now = ofCropAsked(assemble(read, asked), facts);
  const { previous } = context;
  const isContinued = previous !== undefined && continues(facts, now, previous);
  if (asked === 'decline' && !isContinued) return declined('off-topic');
  const whole = namedUnknown(isContinued ? continued(facts, now, previous) : now);
  const missing = missingFrom(whole, context);
  return { ...whole, ...(missing && { missing }) };
}

/** "Frame over the spinach, nothing on the romaine. Does the romaine make it?": that one alone is asked about. */
function ofCropAsked(whole: Understood, { spans }: Facts): Understood {
  const asking = askingSentences(spans);
  const named = asking === spans ? [] : readCrops(asking).crops;
  if (whole.intent === 'which-crops' || named.length === 0 || named.length >= whole.crops.length) return whole;
  const { byCrop, ...rest } = whole;
  const [only] = named;
  const own = named.length === 1 ? byCrop?.find(({ cropId }) => cropId === only?.id) : undefined;
  return { ...rest, crops: named, ...(own ? { covers: own.covers } : byCrop && { byCrop }) };
}

/** What the asking sentences are about, with all that the others tell; where they leave it open, what the whole is about. */
function intentAsked(facts: Facts): Intent {
  const spans = askingSentences(facts.spans);
  if (spans === facts.spans) return intentOf(facts);
  const intent = intentOf({ ...facts, spans, says: cuesOf(spans) });
  return intent === 'decline' ? intentOf(facts) : intent;
}

interface Read {
  readonly spans: readonly Span[];
  readonly facts: Facts;
  readonly crops: CropsRead;
  /** As named, whether or not they are on. */
  readonly covers: CoversRead;
  /** As they lie on the night asked about. */
  readonly worn: CoversRead;
  readonly low: TemperatureRead;
  readonly beds: SaidBeds;
  readonly topics: Understood['cautionTopics'];
}

function readAll(spans: readonly Span[], context: Context): Read {
  const crops = readCrops(spans);
  const when = readWhen(spans);
  const covers = readCovers(spans);
  const worn = readWornCovers(spans, when === 'last-night');

  const beds = readBeds(spans, context.bedNames ?? []);
  const says = cuesOf(spans);
  const hasCrop = crops.crops.length > 0 || crops.choices.length > 0;
  const low = readTemperature(spans, preferredUnit(context), !hasCrop && says('open', 'hot'));
  const hasRoof = [...(covers.covers ?? []), ...(covers.options ?? []).flat()].some(isRoof);
  const topics = cautionTopics({
    spans,
    says,
    hasRoof,
    hasLow: low.temperature !== undefined,
    cropIds: crops.crops.map(({ id }) => id),
  });
  const facts: Facts = {
    spans,
    says,
    hasCrop,
    hasPlantLike: crops.unknownCrops.length > 0 || crops.plantLike.length > 0,
    hasLow: low.temperature !== undefined && !(low.isAside && says('limit')),
    isWarm: low.lowC !== undefined && low.lowC >= WARM_C,
    hasCover: namesCover(covers),
    hasRoof,
    optionCount: worn.options?.length ?? 0,
    hasBed: beds.numbers.length > 0 || beds.named.length > 0,
    when,
    asksCaution: isCautionQuestion(topics, hasCrop && low.temperature !== undefined),
  };
  return { spans, facts, crops, covers, worn, low, beds, topics };
}

function preferredUnit({ units, locale = 'en-US' }: Context): Unit {
  return (units ?? unitSystemOf(locale)) === 'us' ? 'F' : 'C';
}

function namesCover({ covers, options, unknownCovers }: CoversRead): boolean {
  return covers !== undefined || options !== undefined || unknownCovers.length > 0;
}

/** Nobody asks whether a plant lives through this. */
const WARM_C = 12;

function isRoof(key: string): boolean {
  return key.includes('tunnel') || key.startsWith('cold-frame');
}

function assemble({ spans, facts, crops, covers, worn, low, beds, topics }: Read, asked: Intent): Understood {
  const { assumptions: ofCovers, problem: ofStack, ...coverSlots } = coversAsked(asked, covers, worn);
  const { assumptions: ofLow, problem: ofTemperature, ...lowSlots } = lowAsked(asked, low);
  const problem: Problem | undefined = ofTemperature ?? ofStack;
  const when = whenOf(facts, asked);
  const sky = readSky(spans);
  const isCaution = asked === 'caution';
  const mine = beds.mine || (!namesPlant(facts) && OF_OWN_BEDS.has(asked) && namesOwn(spans));
  return {
    intent: asked,
    asked,
    crops: crops.crops,
    unknownCrops: isCaution ? [] : unknownCropsOf(crops, facts),
    ...lowSlots,
    ...coverSlots,
    ...(when && { when }),
    ...readPlantState(spans),
    ...(sky && { sky }),
    beds: { ...beds, mine },
    readAs: readAs(spans),
    cautionTopics: topics,
    choices: crops.choices,
    assumptions: [...crops.assumptions, ...ofLow, ...ofCovers, ...assumedOfNight(facts, when)],
    ...(isCaution ? { unknownCovers: [] } : problem && { problem }),
  };
}

/** By night what lies there counts; by day, and to choose from, what there is. */
function coversAsked(asked: Intent, covers: CoversRead, worn: CoversRead): CoversRead {
  if (asked === 'compare-covers') return comparedWithBare(covers);
  return OF_A_NIGHT.has(asked) || asked === 'pick' ? worn : covers;
}

/** Two readings only where a night is judged; no temperature of now where the limit is asked for. */
function lowAsked(asked: Intent, { isAside, lowOtherwise, ...low }: TemperatureRead): Omit<TemperatureRead, 'isAside'> {
  if (asked === 'how-cold' && isAside) return { assumptions: [] };
  return { ...low, ...(lowOtherwise && OF_A_NIGHT.has(asked) && { lowOtherwise }) };
}

function whenOf(facts: Facts, asked: Intent): When | undefined {
  const when = OF_A_NIGHT.has(asked) ? readNight(facts.spans) : facts.when;
  if (when !== undefined) return settledWhen(when, asked);
  return asked === 'outlook' && asksOfSeveralNights(facts) ? 'week' : undefined;
}

/** Slips that were put right, but for names of crops, which the answer repeats anyway. */
function readAs(spans: readonly Span[]): readonly string[] {
  const mended = spans.filter((span) => span.corrected && senseOf(span, 'crop') === undefined);
  return [...new Set(mended.map(({ plain }) => plain))];
}

/** One cover to compare is compared with none. */
function comparedWithBare(read: CoversRead): CoversRead {
  const { covers, ...rest } = read;
  return covers === undefined || covers.length === 0 ? read : { ...rest, options: [covers, []] };
}

function unknownCropsOf({ unknownCrops, plantLike }: CropsRead, { hasCrop }: Facts): readonly string[] {
  return hasCrop ? unknownCrops : [...unknownCrops, ...plantLike].slice(0, MOST_UNKNOWN);
}

function assumedOfNight({ when: said }: Facts, when: When | undefined): readonly Assumption[] {
  return said === 'tomorrow' && when === 'tomorrow-night' ? ['tomorrow-as-night'] : [];
}

function namesOwn(spans: readonly Span[]): boolean {
  return spans.some((_, at) => isOwnRoofOrBed(spans, at));
}

const MOST_UNKNOWN = 5;

/** Hang on what lies over the plants by night; opening and shutting hang on what there is. */
const OF_A_NIGHT: ReadonlySet<Intent> = new Set<Intent>([
  'survive',
  'what-cover',
  'which-crops',
  'how-cold',
  'outlook',
]);

/** "The frame" is the asker's own where a bed, not a plant, is asked about. */
const OF_OWN_BEDS: ReadonlySet<Intent> = new Set<Intent>(['survive', 'which-crops', 'what-cover', 'vent', 'close']);

function isOwnRoofOrBed(spans: readonly Span[], at: number): boolean {
  const key = senseOf(spans[at], 'cover')?.key;
  if (key !== undefined && isRoof(key)) return isCue(spans[at - 1], 'the');
  return senseOf(spans[at], 'bed') !== undefined && isCue(spans[at - 1], 'the', 'which');
}

const OF_A_PLANT: ReadonlySet<Intent> = new Set<Intent>([
  'survive',
  'how-cold',
  'what-cover',
  'pick',
  'season',
  'compare-covers',
]);

/** A question about nothing but plants outside the table gets no verdict. */
function namedUnknown(slots: Understood): Understood {
  const known = slots.crops.length > 0 || slots.choices.length > 0;
  if (known || slots.unknownCrops.length === 0 || !OF_A_PLANT.has(slots.asked)) return slots;
  return { ...slots, intent: 'unknown-crop' };
}
