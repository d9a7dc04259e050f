import type { CropSense } from './sense.ts';
import { isCue, isMark, type Span, senseOf } from './span.ts';
import type { Assumption, SaidCrop } from './understood.ts';
import { isNamesake, isPlantSlot, unknownPlants } from './unknown-plants.ts';

export interface CropsRead {
  readonly crops: readonly SaidCrop[];
  /** Crops that a word could mean, when it must be asked. */
  readonly choices: readonly string[];
  /** Plants named beside a crop, or known not to be in the table. */
  readonly unknownCrops: readonly string[];
  /** Words that stand where a plant would, for when no crop is named at all. */
  readonly plantLike: readonly string[];
  readonly assumptions: readonly Assumption[];
}

/** A variety may have this many words that no vocabulary holds between it and its crop. */
const MOST_VARIETY_WORDS = 3;

/** The crops of a question, varieties folded into them. */
export function readCrops(spans: readonly Span[]): CropsRead {
  const places = [...spans.keys()].filter((at) => isNamedCrop(spans, at));
  const named = places.flatMap((at) => mentionAt(spans, at));
  const crops = named.flatMap(({ id, said }) => (id === undefined ? [] : [{ id, said }]));
  const firsts = crops.filter(({ id }, index) => crops.findIndex((crop) => crop.id === id) === index);
  const choices = named.flatMap(({ id, sense }) => (id === undefined ? sense.ids : []));
  const { beside, inSlot } = unknownPlants(spans, new Set(places));
  const assumptions: Assumption[] = [];
  if (named.some(({ id, sense }) => id !== undefined && sense.ids.length > 1)) assumptions.push('crop-chosen');
  if (named.some(({ corrected }) => corrected)) assumptions.push('spelling');
  return {
    crops: firsts,
    choices: crops.length > 0 ? [] : [...new Set(choices)],
    unknownCrops: beside,
    plantLike: inSlot,
    assumptions,
  };
}

interface CropMention {
  readonly sense: CropSense;
  /** Absent when it must be asked which crop is meant. */
  readonly id: string | undefined;
  readonly said: string;
  readonly corrected: boolean;
}

function mentionAt(spans: readonly Span[], at: number): readonly CropMention[] {
  const span = spans[at];
  const sense = senseOf(span, 'crop');
  if (span === undefined || sense === undefined) return [];
  return [{ sense, id: idOf(sense), said: span.said, corrected: span.corrected }];
}

function idOf({ ids, usualId }: CropSense): string | undefined {
  return usualId ?? (ids.length === 1 ? ids[0] : undefined);
}

function isNamedCrop(spans: readonly Span[], at: number): boolean {
  const sense = senseOf(spans[at], 'crop');
  if (sense === undefined || isNamesake(spans, at)) return false;
  if (sense.variety) return isVarietyAlone(spans, at, sense);
  if (sense.ordinary && sense.misspelt && isCue(spans[at + 1], 'under')) return false;
  return !sense.ordinary || (isPlantSlot(spans, at) && !['a', 'an'].includes(spans[at - 1]?.plain ?? ''));
}

/** A variety stands for its crop, but "sierra" or "music" do not; "little gem" does where a plant is expected. */
function isVarietyAlone(spans: readonly Span[], at: number, { ordinary }: CropSense): boolean {
  const isSure = !ordinary || (spans[at]?.plain.includes(' ') === true && isPlantSlot(spans, at));
  return isSure && !standsBesideCrop(spans, at);
}

/** "Winterbor kale", "kale (Winterbor)": the crop is named, the variety only says which. */
function standsBesideCrop(spans: readonly Span[], at: number): boolean {
  for (let next = at + 1; next <= at + MOST_VARIETY_WORDS + 1; next += 1) {
    const span = spans[next];
    if (isProperCrop(span)) return true;
    if (span === undefined || !isVarietyWord(span)) break;
  }
  const before = isMark(spans[at - 1], '(') ? spans[at - 2] : spans[at - 1];
  return isProperCrop(before);
}

function isProperCrop(span: Span | undefined): boolean {
  const sense = senseOf(span, 'crop');
  return sense !== undefined && !sense.variety;
}

function isVarietyWord(span: Span): boolean {
  if (span.kind === 'unexplained' || senseOf(span, 'crop')?.variety) return true;
  return span.senses.length > 0 && span.senses.every((sense) => sense.kind === 'ordinary');
}
