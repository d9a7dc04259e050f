import type { CoverKey } from '../../rules/index.ts';
import type { Weight } from './sense.ts';
import { isCue, isMark, type Span, senseOf } from './span.ts';

const G_PER_M2_OF_OZ_PER_YD2 = 33.906;

/** Between the trade's 17–20, 30 and 50 g/m². */
const LIGHTEST_MEDIUM_G_PER_M2 = 25;
const LIGHTEST_HEAVY_G_PER_M2 = 40;

export function isFabric(key: CoverKey): boolean {
  return key.startsWith('row-cover');
}

export function fabricKey(key: CoverKey, weight: Weight): CoverKey {
  return isFabric(key) ? `row-cover-${weight}` : key;
}

interface SaidWeight {
  readonly weight: Weight;
  /** Index of its first span. */
  readonly from: number;
}

/**
 * The weights said of a fabric, in words, in g/m² or in oz/yd²: none, one, or two where the text leaves a choice
 * ("light or heavy fleece", "30 g vs 50 g fleece").
 */
export function fabricWeightsAt(spans: readonly Span[], at: number): readonly Weight[] {
  const own = weightEndingAt(spans, at - 1) ?? weightEndingAt(spans, at - 2) ?? weightAfter(spans, at);
  if (own === undefined) return [];
  const choice = isChoice(spans, own.from - 1) ? weightEndingAt(spans, own.from - 2, at - 1) : undefined;
  return choice === undefined ? [own.weight] : [choice.weight, own.weight];
}

function isChoice(spans: readonly Span[], at: number): boolean {
  return isCue(spans[at], 'or', 'versus') || (isCue(spans[at], 'and') && spans.some((span) => isCue(span, 'compare')));
}

/** Reads "heavy", "30 g/m²"; a number alone takes its unit from `unitAt`: "30 or 50 g". */
function weightEndingAt(spans: readonly Span[], at: number, unitAt = at): SaidWeight | undefined {
  const weight = senseOf(spans[at], 'weight')?.weight;
  if (weight !== undefined) return { weight, from: at };
  if (spans[at]?.value !== undefined && unitAt !== at) return weightOf(spans[at]?.value, spans[unitAt], at);
  const from = isMark(spans[at - 1], '-') ? at - 2 : at - 1;
  return weightOf(spans[from]?.value, spans[at], from);
}

/** "fleece (30 g/m²)". */
function weightAfter(spans: readonly Span[], at: number): SaidWeight | undefined {
  const unitAt = [at + 2, at + 3].find((near) => isCue(spans[near], 'grams', 'ounces'));
  return unitAt === undefined ? undefined : weightOf(spans[unitAt - 1]?.value, spans[unitAt], unitAt - 1);
}

function weightOf(value: number | undefined, unit: Span | undefined, from: number): SaidWeight | undefined {
  if (value === undefined || !isCue(unit, 'grams', 'ounces')) return undefined;
  const gPerM2 = isCue(unit, 'grams') ? value : value * G_PER_M2_OF_OZ_PER_YD2;
  if (gPerM2 < LIGHTEST_MEDIUM_G_PER_M2) return { weight: 'light', from };
  return { weight: gPerM2 < LIGHTEST_HEAVY_G_PER_M2 ? 'medium' : 'heavy', from };
}
