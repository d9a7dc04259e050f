import { type UnitSystem, unitSystemOf } from '../ground/units.ts';
import { readAdvice } from './advice.ts';
import { readBeds } from './beds.ts';
import { cautionTopics, isCautionQuestion } from './caution-topics.ts';
import { type Conditions, readConditions } from './conditions/conditions.ts';
import { type CoversRead, readCovers, readWornCovers } from './covers.ts';
import { type CropsRead, readCrops } from './crops.ts';
import { declined } from './declined.ts';
import { cuesOf, type Facts, namesPlant } from './facts.ts';
import { continued, continues } from './follow-up.ts';
import { intentOf } from './intent-rules.ts';
import { asksOfSeveralNights } from './intents-of-outlook.ts';
import { isBeforeNight } from './intents-of-season.ts';
import { missingFrom } from './missing.ts';
import { isOtherTongue } from './other-tongue.ts';
import { readPlantState } from './plant-state.ts';
import { readSky } from './sky.ts';
import { isCue, type Span, senseOf } from './span.ts';
import { spansOf } from './spans.ts';
import { askingSentences, tellingSentences } from './telling-sentences.ts';
import { readTemperature, type TemperatureRead } from './temperature.ts';
import type { Assumption, Intent, Problem, SaidBeds, SaidSky, Understood, Unit, When } from './understood.ts';
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
  readonly conditions: Conditions;
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
  const conditions = readConditions(spans, preferredUnit(context));
  const when = readWhen(spans);
  const covers = readCovers(conditions.forCovers);
  const worn = readWornCovers(conditions.forCovers, when === 'last-night');
  const beds = readBeds(spans, context.bedNames ?? []);
  const says = cuesOf(spans);
  const hasCrop = crops.crops.length > 0 || crops.choices.length > 0;
  const low = lowOf(spans, conditions, preferredUnit(context), !hasCrop && says('open', 'hot'));
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
    tellsNight: tellsNight(conditions, spans, low, covers),
    advice: readAdvice({ spans, hasLow: low.temperature !== undefined, when }),
  };
  return { spans, facts, conditions, crops, covers, worn, low, beds, topics };
}

/** A low with a sky, a wind or snow; water, heat or an open lid with a cover: enough to say something, crop or none. */
function tellsNight(
  { tells, measures, forShed }: Conditions,
  spans: readonly Span[],
  low: TemperatureRead,
  covers: CoversRead,
): boolean {
  const hasSky = tells || spans.some((span) => senseOf(span, 'sky') !== undefined);
  if (low.temperature !== undefined) return hasSky || measures !== undefined || forShed !== undefined;
  const isOfWater = measures?.waterKg !== undefined || (covers.covers ?? []).includes('jugs');
  return isOfWater || (measures?.opening !== undefined && namesCover(covers)) || measures?.soil === 'bench';
}

/** How it feels is no low, but better than none; the answer says so. */
function lowOf(spans: readonly Span[], { forLow }: Conditions, unit: Unit, isInside: boolean): TemperatureRead {
  const low = readTemperature(forLow, unit, isInside);
  if (low.temperature !== undefined) return low;
  const felt = readTemperature(spans, unit, isInside);
  return felt.assumptions.includes('felt-as-air') ? felt : low;
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

function assemble(read: Read, asked: Intent): Understood {
  const { spans, facts, conditions, crops, low, beds, topics } = read;
  const { assumptions: ofCovers, problem: ofStack, ...coverSlots } = coversFor(asked, read);
  const { assumptions: ofLow, problem: ofTemperature, ...lowSlots } = lowAsked(asked, low);
  const problem: Problem | undefined = ofTemperature ?? ofStack;
  const when = whenOf(facts, asked);
  const isCaution = asked === 'caution' || asked === 'advice';
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
    ...placeOf(spans, conditions),
    ...shedOf(conditions, read.covers),
    ...adviceOf(facts, asked),
    beds: { ...beds, mine },
    readAs: readAs(spans),
    cautionTopics: topics,
    choices: crops.choices,
    assumptions: [...crops.assumptions, ...ofLow, ...ofCovers, ...assumedOfNight(facts, when)],
    ...(isCaution ? { unknownCovers: [] } : problem && { problem }),
  };
}

/** The covers as the question means them: as they lie on its night, or as things to weigh. */
function coversFor(asked: Intent, { covers, worn, conditions }: Read): CoversRead {
  if (asked === 'compare-covers') return comparedWithBare(covers);
  // A gap or an open end is reckoned with; the cover is there all the same.
  const opening = conditions.measures?.opening;
  const isThere = opening !== undefined && opening !== 'open';
  return (OF_A_NIGHT.has(asked) || asked === 'pick') && !isThere ? worn : covers;
}

function adviceOf(facts: Facts, asked: Intent): Partial<Understood> {
  return {
    ...(ADVISED.has(asked) && facts.advice && { advice: facts.advice }),
    ...(asked === 'pick' && isBeforeNight(facts) && { beforeNight: true }),
  };
}

/** 3 mph and less is calm. [m s⁻¹] */
const CALM_BELOW_M_PER_S = 1.6;

/** In words and in figures; figures say it better. */
function skyOf(spans: readonly Span[], { windMPerS, gustMPerS, snow }: Conditions): SaidSky | undefined {
  const words = readSky(spans);
  // "25 mph now, calm after midnight": the colder end counts.
  const fallsCalm = words?.wind === 'calm' && (windMPerS ?? 0) > CALM_BELOW_M_PER_S;
  const sky = {
    ...words,
    ...(windMPerS !== undefined && !fallsCalm && { windMPerS }),
    ...(gustMPerS !== undefined && { gustMPerS }),
    ...(snow?.where === 'on-ground' && { snow: true }),
  };
  return Object.keys(sky).length > 0 ? sky : undefined;
}

/** What lies at hand; "another" is one more of what lies on the bed. */
function shedOf({ forShed, hasAnother }: Conditions, { covers: laid = [] }: CoversRead): Partial<Understood> {
  if (forShed === undefined) return {};
  const { covers = [], options = [] } = readCovers(forShed);
  const named = [...covers, ...options.flat()];
  const shed =
    named.length > 0 || !hasAnother ? named : laid.filter((key) => key !== 'hoops' && key !== 'jugs').slice(0, 1);
  return shed.length > 0 ? { shed } : {};
}

function placeOf(spans: readonly Span[], conditions: Conditions): Partial<Understood> {
  const { snow, measures, exposure, unused } = conditions;
  const sky = skyOf(spans, conditions);
  return {
    ...(sky && { sky }),
    ...(snow && { snow }),
    ...(measures && { measures }),
    ...(exposure && { exposure }),
    ...(unused.length > 0 && { unused }),
  };
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

/** What a piece of advice can answer. */
const ADVISED: ReadonlySet<Intent> = new Set<Intent>(['advice', 'pick', 'vent', 'close', 'caution']);

/** A question about nothing but plants outside the table gets no verdict. */
function namedUnknown(slots: Understood): Understood {
  const known = slots.crops.length > 0 || slots.choices.length > 0;
  if (known || slots.unknownCrops.length === 0 || !OF_A_PLANT.has(slots.asked)) return slots;
  return { ...slots, intent: 'unknown-crop' };
}
