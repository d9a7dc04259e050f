import { isCue, type Span, senseOf } from './span.ts';

/** Snow that lies on the bed, not snow in the forecast: "under the snow", "snow on kale", "will snow protect it". */
export function isLyingSnow(spans: readonly Span[], at: number): boolean {
  if (senseOf(spans[at], 'sky')?.sky.snow !== true) return false;
  const before = isCue(spans[at - 1], 'the') ? spans[at - 2] : spans[at - 1];
  if (isCue(before, 'under', 'covered-with', 'or', 'versus') || isCue(spans[at + 1], 'versus')) return true;
  if (isCue(spans[at + 1], 'over')) return senseOf(spans[at + 2], 'crop') !== undefined || isCue(spans[at + 2], 'it');
  return PROTECTING.has(spans[at + 1]?.plain ?? '');
}

const PROTECTING: ReadonlySet<string> = new Set([
  'protect',
  'protects',
  'insulate',
  'save',
  'saves',
  'keep',
  'keeps',
  'shield',
]);
