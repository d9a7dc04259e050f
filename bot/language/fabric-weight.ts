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

/** The weight said beside a fabric: in words, in g/m² or in oz/yd². */
export function fabricWeightNear(spans: readonly Span[], at: number): Weight | undefined {
  for (const near of [at - 1, at - 2, at + 1, at + 2, at + 3]) {
    const gPerM2 = gPerM2At(spans, near);
    if (gPerM2 !== undefined) return weightOf(gPerM2);
  }
  return senseOf(spans[at - 1], 'weight')?.weight;
}

/** Reads "30 g/m²" whose unit stands at a place. */
function gPerM2At(spans: readonly Span[], at: number): number | undefined {
  const unit = spans[at];
  const number = isMark(spans[at - 1], '-') ? spans[at - 2]?.value : spans[at - 1]?.value;
  if (number === undefined) return undefined;
  if (isCue(unit, 'grams')) return number;
  return isCue(unit, 'ounces') ? number * G_PER_M2_OF_OZ_PER_YD2 : undefined;
}

function weightOf(gPerM2: number): Weight {
  if (gPerM2 < LIGHTEST_MEDIUM_G_PER_M2) return 'light';
  return gPerM2 < LIGHTEST_HEAVY_G_PER_M2 ? 'medium' : 'heavy';
}
