import type { CoverKey } from '../../rules/index.ts';
import type { CoverMention } from './cover-mentions.ts';
import { isMark, type Span, senseOf } from './span.ts';

/** What lies over one of several crops, where a text tells it of each. */
export interface CropUnder {
  readonly cropId: string;
  readonly covers: readonly CoverKey[];
}

const PARTS: ReadonlySet<string> = new Set('and but while whereas so plus then'.split(' '));

/**
 * "Kale is bare, lettuce is in a cold frame": each crop with the covers of its own clause. Undefined unless every clause
 * that names a cover names one crop, at least two crops are told of, and not all of them the same.
 */
export function coversByCrop(
  spans: readonly Span[],
  mentions: readonly CoverMention[],
  stackOf: (some: readonly CoverMention[]) => readonly CoverKey[] | undefined,
): readonly CropUnder[] | undefined {
  const pairs = new Map<string, readonly CoverKey[]>();
  for (const { from, next } of clausesOf(spans)) {
    const inside = mentions.filter(({ at }) => at >= from && at < next);
    const crops = cropsIn(spans.slice(from, next));
    const isOut = inside.length === 0 && spans.slice(from, next).some(({ plain }) => OUTSIDE.test(plain));
    if (inside.length === 0 && !(isOut && crops.length === 1)) continue;
    const [cropId] = crops;
    const stack = stackOf(inside);
    if (cropId === undefined || crops.length > 1 || stack === undefined || pairs.has(cropId)) return undefined;
    pairs.set(cropId, stack);
  }
  const stacks = new Set([...pairs.values()].map((keys) => keys.join()));
  const isOfAll = cropsIn(spans).every((id) => pairs.has(id));
  if (pairs.size < 2 || stacks.size < 2 || !isOfAll) return undefined;
  return [...pairs].map(([cropId, covers]) => ({ cropId, covers }));
}

const OUTSIDE = /^(outside|outdoors|out)$/;

interface Clause {
  readonly from: number;
  readonly next: number;
}

function clausesOf(spans: readonly Span[]): readonly Clause[] {
  const ends = spans.flatMap((span, at) =>
    isMark(span, ',', '.', ';', '!', '?') || PARTS.has(span.plain) ? [at] : [],
  );
  return [-1, ...ends].map((end, index) => ({ from: end + 1, next: ends[index] ?? spans.length }));
}

function cropsIn(spans: readonly Span[]): readonly string[] {
  const ids = spans.flatMap((span) => {
    const crop = senseOf(span, 'crop');
    return crop === undefined || crop.variety || crop.ordinary ? [] : [crop.usualId ?? crop.ids[0] ?? ''];
  });
  return [...new Set(ids)];
}
