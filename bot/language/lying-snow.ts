import { isCue, type Span, senseOf } from './span.ts';

/** Snow that lies on the bed, not snow in the forecast: "under the snow", "snow on kale", "will snow protect it". */
export function isLyingSnow(spans: readonly Span[], at: number): boolean {
  if (senseOf(spans[at], 'sky')?.sky.snow !== true) return false;
  const before = isCue(spans[at - 1], 'the') ? spans[at - 2] : spans[at - 1];
  if (isCue(before, 'under', 'covered-with', 'or', 'versus') || isCue(spans[at + 1], 'versus')) return true;
  if (isCue(spans[at + 1], 'over')) return senseOf(spans[at + 2], 'crop') !== undefined || isCue(spans[at + 2], 'it');
  if (liesOnCrop(spans, at + 1)) return true;
  return PROTECTING.has(spans[at + 1]?.plain ?? '');
}

/** "a foot of snow lies on my garlic". */
function liesOnCrop(spans: readonly Span[], from: number): boolean {
  const on = spans.slice(from, from + 3).findIndex((span) => isCue(span, 'over'));
  if (on < 0 || spans.slice(from, from + on).some(({ kind }) => kind === 'mark')) return false;
  const next = isCue(spans[from + on + 1], 'the', 'mine') ? spans[from + on + 2] : spans[from + on + 1];
  return senseOf(next, 'crop') !== undefined;
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
