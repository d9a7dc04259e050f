import { COVER_KEYS, type CoverKey } from './cover-key.ts';
import { COVERS, type CoverKind } from './cover-table.ts';

/** More than this is no bed that anyone has; it also bounds the search for an order. */
const MOST_KEYS = 8;

/** Why covers cannot lie in the order named. */
export const ORDER_PROBLEMS = [
  'too-many',
  'snow-under-cover',
  'over-high-tunnel',
  'mat-inside',
  'litter-outside',
  'frame-with-low-tunnel',
  'twice',
  'hoops-outside',
] as const;

export type OrderProblem = (typeof ORDER_PROBLEMS)[number];

/** An order that cannot be, the covers that clash, and an order of the same covers that can. */
export interface UnsoundOrder {
  readonly kind: 'unsound';
  readonly problem: OrderProblem;
  /** Outer one first. */
  readonly between: readonly CoverKey[];
  /** Absent when these covers fit together in no order. */
  readonly expectedOrder?: readonly CoverKey[];
}

type CoverInOrder = Exclude<CoverKind, 'hoops' | 'jugs'>;

/** What may lie further in than what, anywhere. */
const MAY_LIE_INSIDE: Readonly<Record<CoverInOrder, readonly CoverInOrder[]>> = {
  snow: ['fabric', 'cloth', 'mat', 'litter', 'low-tunnel', 'frame', 'high-tunnel', 'bell'],
  'high-tunnel': ['fabric', 'cloth', 'mat', 'litter', 'low-tunnel', 'frame', 'bell'],
  'low-tunnel': ['fabric', 'cloth', 'litter', 'low-tunnel', 'bell'],
  frame: ['fabric', 'cloth', 'litter', 'bell'],
  fabric: ['fabric', 'cloth', 'mat', 'litter', 'low-tunnel', 'frame', 'bell'],
  cloth: ['fabric', 'cloth', 'mat', 'litter', 'low-tunnel', 'frame', 'bell'],
  mat: ['fabric', 'cloth', 'mat', 'litter', 'low-tunnel', 'frame', 'bell'],
  bell: ['litter', 'bell'],
  litter: [],
};

/** How often a kind fits into one bed. */
const MOST_OF_KIND: Readonly<Partial<Record<CoverKind, number>>> = {
  snow: 1,
  litter: 1,
  frame: 1,
  'low-tunnel': 2,
  'high-tunnel': 1,
  bell: 2,
};

/** Growers put the weatherproof and heavy outside of the light; tunnels and frames are no part of this. */
const USUAL_FROM_OUTSIDE: readonly CoverKey[] = [
  'tarp',
  'mat',
  'quilt',
  'blanket',
  'bubble-wrap',
  'sheet',
  'burlap',
  'row-cover-heavy',
  'row-cover-medium',
  'row-cover',
  'row-cover-light',
];

/**
 * What is wrong with an order of covers, from outside to inside.
 *
 * @param keys - Covers as named. Jugs stand on the soil wherever they are named, and are left out of account.
 * @returns The first clash; `undefined` when the covers can lie so, whether or not anyone lays them so.
 */
export function orderProblem(keys: readonly CoverKey[]): UnsoundOrder | undefined {
  const clash = firstClash(withoutJugs(keys));
  if (clash === undefined) return undefined;
  const expectedOrder = clash.problem === 'too-many' ? undefined : (soundOrder(keys) ?? nearestOrder(keys));
  return { kind: 'unsound', ...clash, ...(expectedOrder && { expectedOrder }) };
}

/**
 * The order, from outside to inside, in which growers lay a set of covers.
 *
 * @param keys - The covers in any order, repeated ones repeated.
 * @returns The one usual order, jugs last; `undefined` when there is none, or more than one: a blanket goes on top of a
 * tunnel as well as inside it.
 *
 * @remarks
 * Usual (judgement): fabric inside film or glass, not on it; the heavier of two soft covers outside; hoops under all soft
 * covers around them. The answer does not depend on the order of `keys`.
 */
export function soundOrder(keys: readonly CoverKey[]): readonly CoverKey[] | undefined {
  const sorted = withoutJugs(keys).toSorted((one, other) => COVER_KEYS.indexOf(one) - COVER_KEYS.indexOf(other));
  const orders = possibleOrders(sorted, isUsual, 2);
  return orders.length === 1 ? withJugs(orders[0] ?? [], keys) : undefined;
}

/**
 * Whether growers lay covers in this order: it can be, and it is what {@link soundOrder} looks for.
 *
 * @param keys - Covers from outside to inside.
 */
export function isUsualOrder(keys: readonly CoverKey[]): boolean {
  const order = withoutJugs(keys);
  return firstClash(order) === undefined && isUsual(order);
}

/** Two of them that can lie neither way round, so that no order needs to be tried. */
function cannotBeTogether(keys: readonly CoverKey[]): boolean {
  return keys.some((one, index) =>
    keys.slice(index + 1).some((other) => !mayLieInside(one, other) && !mayLieInside(other, one)),
  );
}

function mayLieInside(outer: CoverKey, inner: CoverKey): boolean {
  const outerKind = COVERS[outer].kind;
  const innerKind = COVERS[inner].kind;
  if (outerKind === 'hoops' || outerKind === 'jugs' || innerKind === 'hoops' || innerKind === 'jugs') return true;
  return MAY_LIE_INSIDE[outerKind].includes(innerKind);
}

function nearestOrder(keys: readonly CoverKey[]): readonly CoverKey[] | undefined {
  const order = possibleOrders(withoutJugs(keys), () => true, 1)[0];
  return order && withJugs(order, keys);
}

function withoutJugs(keys: readonly CoverKey[]): readonly CoverKey[] {
  return keys.filter((key) => key !== 'jugs');
}

function withJugs(order: readonly CoverKey[], named: readonly CoverKey[]): readonly CoverKey[] {
  return named.includes('jugs') ? [...order, 'jugs'] : order;
}

type Clash = Pick<UnsoundOrder, 'problem' | 'between'>;

function firstClash(keys: readonly CoverKey[]): Clash | undefined {
  if (keys.length > MOST_KEYS) return { problem: 'too-many', between: [] };
  for (let end = 1; end <= keys.length; end += 1) {
    const clash = clashOfLast(keys.slice(0, end));
    if (clash) return clash;
  }
  return undefined;
}

/** The clash of the innermost cover with those outside of it, which do not clash among themselves. */
function clashOfLast(keys: readonly CoverKey[]): Clash | undefined {
  const last = keys.at(-1);
  if (last === undefined) return undefined;
  const outside = keys.slice(0, -1);
  const { kind } = COVERS[last];
  if (kind === 'hoops') return hoopsClash(outside);
  if (kind === 'jugs') return undefined;
  const most = MOST_OF_KIND[kind];
  if (most !== undefined && outside.filter((key) => COVERS[key].kind === kind).length >= most) {
    return { problem: 'twice', between: [last, last] };
  }
  if ((isSoft(last) || isStructure(last)) && hasIdleHoops(outside))
    return { problem: 'hoops-outside', between: ['hoops', last] };
  for (const outer of outside) {
    if (!mayLieInside(outer, last)) return { problem: pairProblem(COVERS[outer].kind, kind), between: [outer, last] };
  }
  return undefined;
}

function pairProblem(outer: CoverKind, inner: CoverKind): OrderProblem {
  if (inner === 'snow') return 'snow-under-cover';
  if (inner === 'high-tunnel') return 'over-high-tunnel';
  if (outer === 'litter') return 'litter-outside';
  if (inner === 'mat') return 'mat-inside';
  return 'frame-with-low-tunnel';
}

/** Hoops hold up what lies directly outside of them; straw needs none, and two sets hold no better than one. */
function hoopsClash(outside: readonly CoverKey[]): Clash | undefined {
  const over = outside.at(-1);
  if (over === 'hoops') return { problem: 'twice', between: ['hoops', 'hoops'] };
  if (over !== undefined && COVERS[over].kind === 'litter')
    return { problem: 'litter-outside', between: [over, 'hoops'] };
  return undefined;
}

/** Hoops that stand under nothing soft: then only straw lies further in, as what is soft would hang on them. */
function hasIdleHoops(outside: readonly CoverKey[]): boolean {
  return outside.some((key, index) => {
    if (key !== 'hoops') return false;
    const over = outside[index - 1];
    return over === undefined || !(isSoft(over) || COVERS[over].kind === 'low-tunnel');
  });
}

/** Hangs or lies as a cloth does. */
export function isSoft(key: CoverKey): boolean {
  const { kind } = COVERS[key];
  return kind === 'fabric' || kind === 'cloth' || kind === 'mat';
}

function isStructure(key: CoverKey): boolean {
  const { kind } = COVERS[key];
  return kind === 'low-tunnel' || kind === 'frame' || kind === 'high-tunnel';
}

/** Whether the innermost of these is where growers would put it, the others being so. */
function isUsual(keys: readonly CoverKey[]): boolean {
  return keys.every((key, index) => lastIsUsual(keys.slice(0, index), key));
}

function lastIsUsual(outside: readonly CoverKey[], last: CoverKey): boolean {
  if (isStructure(last)) {
    const twoTunnels = outside.filter((key) => COVERS[key].kind === 'low-tunnel');
    return (
      !outside.some((key) => COVERS[key].kind === 'fabric' || key === 'hoops') &&
      twoTunnels.every((key) => inKeyOrder(key, last))
    );
  }
  if (!isSoft(last)) return true;
  const sameSpace = outside.slice(outside.findLastIndex(isStructure) + 1);
  if (sameSpace.includes('hoops')) return false;
  return sameSpace.filter(isSoft).every((outer) => usualRank(outer) <= usualRank(last));
}

function inKeyOrder(outer: CoverKey, inner: CoverKey): boolean {
  return COVER_KEYS.indexOf(outer) <= COVER_KEYS.indexOf(inner);
}

function usualRank(key: CoverKey): number {
  return USUAL_FROM_OUTSIDE.indexOf(key);
}

/** Orders of `keys` that can be and are accepted, at most `most`; tried in the order of `keys`, equal keys once. */
function possibleOrders(
  keys: readonly CoverKey[],
  accept: (order: readonly CoverKey[]) => boolean,
  most: number,
): readonly (readonly CoverKey[])[] {
  if (keys.length > MOST_KEYS || cannotBeTogether(keys)) return [];
  const found: (readonly CoverKey[])[] = [];
  const extend = (order: readonly CoverKey[], left: readonly CoverKey[]): void => {
    if (found.length >= most) return;
    if (left.length === 0) {
      found.push(order);
      return;
    }
    for (const next of new Set(left)) {
      const longer = [...order, next];
      if (clashOfLast(longer) !== undefined || !accept(longer)) continue;
      extend(longer, left.toSpliced(left.indexOf(next), 1));
    }
  };
  extend([], keys);
  return found;
}
