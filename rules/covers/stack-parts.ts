import type { CoverKey } from './cover-key.ts';
import { isSoft } from './cover-order.ts';
import { COVERS } from './cover-table.ts';

/** Covers that make one layer of a stack because they touch. */
export interface StackPart {
  /** Tunnel, frame, snow on the crop, or straw and leaves; absent for soft covers alone. */
  readonly base?: CoverKey;
  /** Soft covers lying on the base, or touching each other, from outside to inside. */
  readonly soft: readonly CoverKey[];
  /** Soft covers without a base are on hoops, off the leaves. */
  readonly held: boolean;
}

/**
 * Splits a sound order of covers into layers with air between them.
 *
 * @param keys - Covers from outside to inside, without jugs and without snow on top of another cover.
 * @returns Layers from outside to inside. Hoops with nothing soft over them make none.
 */
export function stackParts(keys: readonly CoverKey[]): readonly StackPart[] {
  const parts: StackPart[] = [];
  let soft: CoverKey[] = [];
  const close = (part: Omit<StackPart, 'soft'>): void => {
    parts.push({ ...part, soft });
    soft = [];
  };
  for (const key of keys) {
    if (isSoft(key)) soft.push(key);
    else if (key !== 'hoops') close({ base: key, held: false });
    else if (soft.length > 0) close({ held: true });
  }
  if (soft.length > 0) close({ held: false });
  return parts;
}

/**
 * Whether a cover comes off by day where growers lay it for the night only (common practice): sheets, blankets, quilts,
 * tarps and mats. What passes light, straw and snow stay.
 */
export function comesOffByDay(key: CoverKey): boolean {
  const { kind, offByDay = false } = COVERS[key];
  return kind === 'cloth' || kind === 'mat' || offByDay;
}

/**
 * At most so many layers: the innermost are counted as touching until they fit, which is colder than the truth.
 *
 * @param parts - Layers from outside to inside.
 * @param mostCount - Layers that fit. [1…]
 */
export function fewerParts(parts: readonly StackPart[], mostCount: number): readonly StackPart[] {
  if (parts.length <= mostCount) return parts;
  const outer = parts.findLastIndex((part, index) => {
    const inner = parts[index + 1];
    return inner !== undefined && (part.base === undefined || inner.base === undefined);
  });
  const first = parts[outer];
  const second = parts[outer + 1];
  // Two tunnels and straw have nothing soft to merge: the inner tunnel is left out.
  if (first === undefined || second === undefined) return fewerParts(parts.toSpliced(parts.length - 2, 1), mostCount);
  return fewerParts(parts.toSpliced(outer, 2, touchingParts(first, second)), mostCount);
}

function touchingParts(outer: StackPart, inner: StackPart): StackPart {
  const base = inner.base ?? outer.base;
  return { ...(base && { base }), soft: [...outer.soft, ...inner.soft], held: inner.held && base === undefined };
}

/** The same layers without what comes off by day; a layer of nothing else is gone. */
export function partsByDay(parts: readonly StackPart[]): readonly StackPart[] {
  return parts
    .filter(({ base }) => base === undefined || !comesOffByDay(base))
    .map((part) => ({ ...part, soft: part.soft.filter((key) => !comesOffByDay(key)) }))
    .filter((part) => part.base !== undefined || part.soft.length > 0);
}
