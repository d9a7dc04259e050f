import type { CoverStack, NightInput, Vent } from '../balance/night-input.ts';
import { type NightRun, type NightRunOptions, nightRun } from '../balance/night-run.ts';
import { type Extreme, firstReaches, windowHigh } from '../night/window-summary.ts';
import type { Opening } from './vent-opening.ts';

/** Where leafy winter greens begin to soften and bolt: 75 °F on a thermometer among the leaves (common practice). */
export const OPENING_LIMIT_C = 24;
/** Openings that a grower can set with a stick and a brick (common practice). */
export const PROP_SIZES_M = [0.01, 0.02, 0.05, 0.1, 0.15, 0.2, 0.3] as const;
/** A bed held this near to the limit is held: the model cannot tell finer. */
const HELD_K = 0.1;
/** Above the limit by less than this nobody needs to walk out: a day's high is good to about a kelvin (judgement). */
export const WORTH_OPENING_K = 1;
/** For less nobody opens (judgement). */
const LEAST_OPEN_MS = 15 * 60_000;
/** An opened bed that was too hot is given this time to cool before it is judged (judgement: air is exchanged within minutes). */
const COOLS_WITHIN_MS = 30 * 60_000;
/** Shutting time is found to this. */
const SHUT_STEP_MS = 10 * 60_000;

/** A day whose covers may have to be opened. */
export interface DayPlan {
  /** The run with its covers shut; it reaches past the end of the day. Vents that it has are left out. */
  readonly input: NightInput;
  /** First instant at which somebody could open. */
  readonly from: Date;
  /** When the covers are to be shut at the latest. */
  readonly shutBy: Date;
  /** End of the sun. */
  readonly to: Date;
  /** Ways to open that a grower can set, the least first; empty for a cover that is either on or off. */
  readonly openings: readonly SizedOpening[];
  /** What is left over the bed when the outermost cover is taken off; absent when it cannot be. */
  readonly uncovered?: CoverStack;
  /** Thermometer among the leaves at which to open. [°C; default 24] */
  readonly limitC?: number;
}

/** An opening with the size that a grower sets. [m] */
export interface SizedOpening extends Opening {
  readonly sizeM: number;
}

/** What happens if it stays shut. */
export interface ShutDay {
  readonly thermometerHigh: Extreme;
  readonly airHigh: Extreme;
  readonly run: NightRun;
}

interface Opened {
  readonly shut: ShutDay;
  readonly openAt: Date;
  /** From here on the bed can be shut without passing the limit again, or it is time for it: it keeps the rest of the sun. */
  readonly shutAt: Date;
  /** While it is open as advised. */
  readonly thermometerHigh: Extreme;
  /** The day opened and shut as advised. */
  readonly run: NightRun;
}

/** What to do with the covers by day. */
export type OpeningAdvice =
  /** The bed stays below the limit, or so near to it, or passes it so late, that opening is not worth the walk. */
  | { readonly kind: 'stay-shut'; readonly shut: ShutDay }
  | (Opened & { readonly kind: 'open'; readonly sizeM: number })
  /** Even the widest opening is not enough: take the cover off, or open all that opens. */
  | (Opened & { readonly kind: 'off' });

/**
 * When to open a cover by day, how wide, and when to shut it again so that it keeps the sun's warmth.
 *
 * @param plan - The day, the covers shut.
 * @param options - Shared weather, or the end of an earlier run.
 * @returns Advice, and what happens if it stays shut.
 * @throws RangeError when the plan does not lie within its weather or a number is out of range.
 *
 * @remarks
 * The least opening that holds the limit on a run of the whole day; the widest where a lower limit cannot be held but the usual one can. The cover opens when the shut bed first reaches the limit.
 * Doubling a wide opening adds little, so the largest size before taking the cover off is 30 cm.
 */
export function openingAdvice(plan: DayPlan, options: NightRunOptions = {}): OpeningAdvice {
  const { from, to, shutBy, openings } = plan;
  const limitC = plan.limitC ?? OPENING_LIMIT_C;
  const run = nightRun(shutInput(plan.input), options);
  const shut = {
    run,
    thermometerHigh: windowHigh(run, 'thermometerC', from, to),
    airHigh: windowHigh(run, 'airC', from, to),
  };
  const lastAt = new Date(shutBy.getTime() - LEAST_OPEN_MS);
  const openAt = from < lastAt ? firstReaches(run, 'thermometerC', limitC, from, lastAt) : undefined;
  if (openAt === undefined || shut.thermometerHigh.valueC <= limitC + WORTH_OPENING_K) {
    return { kind: 'stay-shut', shut };
  }
  const openRun = (way: Way, shutAt: Date) => nightRun(openedInput(plan.input, way, openAt, shutAt), options);
  const judgedFrom = new Date(Math.min(to.getTime(), openAt.getTime() + COOLS_WITHIN_MS));
  const highC = (way: Way, shutAt: Date) => windowHigh(openRun(way, shutAt), 'thermometerC', judgedFrom, to).valueC;
  const holds = (way: Way, shutAt: Date) => highC(way, shutAt) <= limitC + HELD_K;
  const found =
    leastHolding(openings, (opening) => holds(opening, to)) ?? wideEnough(openings, (way) => highC(way, to));
  const way = found ?? plan.uncovered ?? openings.at(-1);
  if (way === undefined) return { kind: 'stay-shut', shut };
  const shutAt = found === undefined ? shutBy : earliestShut(openAt, shutBy, (at) => holds(found, at));
  const opened = openRun(way, shutAt);
  const thermometerHigh = windowHigh(opened, 'thermometerC', judgedFrom < shutAt ? judgedFrom : shutAt, shutAt);
  const common = { shut, openAt, shutAt, run: opened, thermometerHigh };
  return found === undefined ? { kind: 'off', ...common } : { kind: 'open', ...common, sizeM: found.sizeM };
}

/** A vent, or what lies over the bed instead. */
type Way = Opening | CoverStack;

function shutInput({ changes, ...rest }: NightInput): NightInput {
  return {
    ...rest,
    stack: withVent(rest.stack, undefined),
    ...(changes && { changes: changes.map(({ at, stack }) => ({ at, stack: withVent(stack, undefined) })) }),
  };
}

function openedInput(input: NightInput, way: Way, from: Date, to: Date): NightInput {
  if ('layers' in way) return uncoveredInput(shutInput(input), way, from, to);
  const vent = { areaRatio: way.areaRatio, heightM: way.heightM, from, to };
  const { changes, ...rest } = input;
  return {
    ...rest,
    stack: withVent(rest.stack, vent),
    ...(changes && { changes: changes.map(({ at, stack }) => ({ at, stack: withVent(stack, vent) })) }),
  };
}

function withVent({ vent: _left, ...stack }: CoverStack, vent: Vent | undefined): CoverStack {
  return vent === undefined ? stack : { ...stack, vent };
}

/** The run with the cover off between two instants. */
function uncoveredInput(input: NightInput, uncovered: CoverStack, from: Date, to: Date): NightInput {
  const changes = input.changes ?? [];
  const before = changes.filter(({ at }) => at < from);
  const within = changes.filter(({ at }) => at >= from && at <= to);
  const after = changes.filter(({ at }) => at > to);
  const covered = (within.at(-1) ?? before.at(-1))?.stack ?? input.stack;
  return {
    ...input,
    changes: [...before, { at: from, stack: uncovered }, { at: to, stack: covered }, ...after],
  };
}

/** Wider is cooler, so halving the list finds the least opening that holds. */
function leastHolding(
  openings: readonly SizedOpening[],
  holds: (opening: SizedOpening) => boolean,
): SizedOpening | undefined {
  let low = 0;
  let high = openings.length;
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    const opening = openings[middle];
    if (opening !== undefined && holds(opening)) high = middle;
    else low = middle + 1;
  }
  return openings[low];
}

/** Taking a light off is work: under a limit lower than usual the widest opening will do if it keeps the usual one. */
function wideEnough(openings: readonly SizedOpening[], highC: (way: Way) => number): SizedOpening | undefined {
  const widest = openings.at(-1);
  return widest !== undefined && highC(widest) <= OPENING_LIMIT_C + HELD_K ? widest : undefined;
}

function earliestShut(openAt: Date, shutBy: Date, holds: (at: Date) => boolean): Date {
  let tooEarlyMs = openAt.getTime() + LEAST_OPEN_MS;
  let fineMs = shutBy.getTime();
  while (fineMs - tooEarlyMs > SHUT_STEP_MS) {
    const middle = new Date((tooEarlyMs + fineMs) / 2);
    if (holds(middle)) fineMs = middle.getTime();
    else tooEarlyMs = middle.getTime();
  }
  return new Date(fineMs);
}
