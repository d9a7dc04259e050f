import { isLyingSnow } from './lying-snow.ts';
import { isCue, type Span, senseOf } from './span.ts';
import type { SaidSky } from './understood.ts';

/** The colder first: of a sky that changes in the night the colder end counts. */
const COLDER_CLOUD = ['clear', 'half', 'overcast'] as const;
const COLDER_WIND = ['calm', 'light', 'breezy', 'windy'] as const;

/** The sky and wind that a question names. Of several, as in "windy until midnight, then calm", the colder. */
export function readSky(spans: readonly Span[]): SaidSky | undefined {
  const said = spans.flatMap((span, at) => {
    if (span.plain === 'still' && isAmongSky(spans, at)) return [{ wind: 'calm' } as const];
    if (senseOf(span, 'hazard')?.topics.includes('snow-load')) return [{ snow: true } as const];
    const sense = senseOf(span, 'sky');
    return sense && !isOtherwiseMeant(spans, at) ? [denied(spans, at, sense.sky)] : [];
  });
  if (said.length === 0) return undefined;
  const cloud = COLDER_CLOUD.find((each) => said.some((sky) => sky.cloud === each));
  const wind = COLDER_WIND.find((each) => said.some((sky) => sky.wind === each));
  const snow = said.some((sky) => sky.snow === true);
  return { ...(cloud && { cloud }), ...(wind && { wind }), ...(snow && { snow }) };
}

/** "not cloudy" is clear, "not clear" is taken as half clear, "isn't windy" is calm. */
function denied(spans: readonly Span[], at: number, sky: SaidSky): SaidSky {
  const before = [spans[at - 1], isVery(spans[at - 1]) ? spans[at - 2] : undefined];
  if (!before.some((span) => DENYING.has(span?.plain ?? ''))) return sky;
  const { cloud, wind } = sky;
  return {
    ...(cloud && { cloud: cloud === 'clear' ? 'half' : 'clear' }),
    ...(wind && { wind: wind === 'calm' ? 'breezy' : 'calm' }),
  };
}

function isVery(span: Span | undefined): boolean {
  return ['very', 'too', 'that', 'really', 'so', 'at all', 'any', 'much'].includes(span?.plain ?? '');
}

const DENYING: ReadonlySet<string> = new Set([
  'not',
  'isnt',
  'wont be',
  'no',
  'never',
  'without',
  'arent',
  'aint',
  'wasnt',
  'no longer',
]);

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
