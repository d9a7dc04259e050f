import { isLyingSnow } from './lying-snow.ts';
import { isCue, type Span, senseOf } from './span.ts';
import type { SaidSky } from './understood.ts';

/** The sky and wind that a question names. */
export function readSky(spans: readonly Span[]): SaidSky | undefined {
  const said = spans.flatMap((span, at) => {
    if (span.plain === 'still' && isAmongSky(spans, at)) return [{ wind: 'calm' } as const];
    if (senseOf(span, 'hazard')?.topics.includes('snow-load')) return [{ snow: true } as const];
    const sense = senseOf(span, 'sky');
    return sense && !isOtherwiseMeant(spans, at) ? [sense.sky] : [];
  });
  if (said.length === 0) return undefined;
  return Object.assign({}, ...said.toReversed());
}

/** "still" says no wind only beside other words of the weather. */
function isAmongSky(spans: readonly Span[], at: number): boolean {
  const before = isLink(spans[at - 1]) ? spans[at - 2] : spans[at - 1];
  const after = isLink(spans[at + 1]) ? spans[at + 2] : spans[at + 1];
  return senseOf(before, 'sky') !== undefined || senseOf(after, 'sky') !== undefined || after?.plain === 'night';
}

function isLink(span: Span | undefined): boolean {
  return span?.kind === 'mark' || isCue(span, 'and');
}

/** "clear the snow", "clear plastic", "under the snow". */
function isOtherwiseMeant(spans: readonly Span[], at: number): boolean {
  if (spans[at]?.plain !== 'clear') return isLyingSnow(spans, at);
  const next = spans[at + 1];
  const isDeed = isCue(next, 'the', 'mine', 'off') || senseOf(next, 'sky')?.sky.snow === true;
  return isDeed || senseOf(next, 'cover') !== undefined;
}
