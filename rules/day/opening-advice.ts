import type { CoverStack, NightInput, Vent } from '../night/night-input.ts';
import { type NightRun, type NightRunOptions, nightRun } from '../night/night-run.ts';
import { type Extreme, firstReaches, windowHigh } from '../night/window-summary.ts';
import type { Opening } from './vent-opening.ts';

/** Where leafy winter greens begin to soften and bolt: 75 °F on a thermometer among the leaves (common practice). */
export const OPENING_LIMIT_C = 24;
/** Openings that a grower can set with a stick and a brick (common practice). */
export const PROP_SIZES_M = [0.01, 0.02, 0.05, 0.1, 0.15, 0.2, 0.3] as const;
/** A bed held this near to the limit is held: the model cannot tell finer. */
const HELD_K = 0.1;
const HALVINGS = 12;
/** Shutting time is told to this. */
const SHUT_STEP_MS = 10 * 60_000;

/** A day whose covers may have to be opened. */
export interface DayPlan {
  /** The run with its covers shut; it reaches past the end of the day. Vents that it has are left out. */
  readonly input: NightInput;
  /** First and last instant at which somebody could open. */
  readonly from: Date;
  readonly to: Date;
  /** What an opening of this height means for the cover. [m] */
  readonly opening: (sizeM: number) => Opening;
  /** Thermometer among the leaves at which to open. [°C; default 24] */
  readonly limitC?: number;
}

/** What happens if it stays shut. */
export interface ShutDay {
  readonly thermometerHigh: Extreme;
  readonly airHigh: Extreme;
  readonly run: NightRun;
}

/** What to do with the covers by day. */
export type OpeningAdvice =
  /** The bed stays below the limit. */
  | { readonly kind: 'stay-shut'; readonly shut: ShutDay }
  | {
      readonly kind: 'open';
      readonly shut: ShutDay;
      readonly openAt: Date;
      /** One of `PROP_SIZES_M`, and the opening that would just do. [m] */
      readonly sizeM: number;
      readonly leastSizeM: number;
      readonly thermometerHigh: Extreme;
      /** From here on the bed can be shut without passing the limit again: it keeps the rest of the sun. */
      readonly shutAt: Date;
    }
  /** Even the widest prop is not enough: take it off. */
  | { readonly kind: 'off'; readonly shut: ShutDay; readonly openAt: Date; readonly thermometerHigh: Extreme };

/**
 * When to open a cover by day, how wide, and when to shut it again so that it keeps the sun's warmth.
 *
 * @param plan - The day, the covers shut.
 * @param options - Shared weather, or the end of an earlier run.
 * @returns Advice, and what happens if it stays shut.
 * @throws RangeError when the plan does not lie within its weather or a number is out of range.
 *
 * @remarks
 * The opening is found by halving on runs of the whole day and rounded up to a size that a grower can set. The cover opens when the shut bed
 * first reaches the limit. Doubling a wide opening adds little, so the largest size before taking the cover off is 30 cm.
 */
export function openingAdvice(plan: DayPlan, options: NightRunOptions = {}): OpeningAdvice {
  const { from, to } = plan;
  const limitC = plan.limitC ?? OPENING_LIMIT_C;
  const run = nightRun(vented(plan.input, undefined), options);
  const shut = {
    run,
    thermometerHigh: windowHigh(run, 'thermometerC', from, to),
    airHigh: windowHigh(run, 'airC', from, to),
  };
  const openAt = firstReaches(run, 'thermometerC', limitC, from, to);
  if (openAt === undefined) return { kind: 'stay-shut', shut };

  const high = (sizeM: number, shutAt = to) => thermometerHigh(plan, options, sizeM, openAt, shutAt);
  const holds = (sizeM: number, shutAt = to) => high(sizeM, shutAt).valueC <= limitC + HELD_K;
  const widestM = PROP_SIZES_M[PROP_SIZES_M.length - 1] ?? 0;
  if (!holds(widestM)) return { kind: 'off', shut, openAt, thermometerHigh: high(widestM) };
  const leastSizeM = leastHolding(widestM, holds);
  const sizeM = PROP_SIZES_M.find((size) => size >= leastSizeM) ?? widestM;
  const shutAt = earliestShut(openAt, to, (at) => holds(sizeM, at));
  return { kind: 'open', shut, openAt, sizeM, leastSizeM, thermometerHigh: high(sizeM), shutAt };
}

function thermometerHigh(plan: DayPlan, options: NightRunOptions, sizeM: number, openAt: Date, shutAt: Date): Extreme {
  const run = nightRun(vented(plan.input, { ...plan.opening(sizeM), from: openAt, to: shutAt }), options);
  return windowHigh(run, 'thermometerC', openAt, plan.to);
}

/** The run with this vent in all its stacks, or with none. */
function vented(input: NightInput, vent: Vent | undefined): NightInput {
  const withVent = ({ vent: _left, ...stack }: CoverStack): CoverStack =>
    vent === undefined ? stack : { ...stack, vent };
  const { changes, ...rest } = input;
  return {
    ...rest,
    stack: withVent(input.stack),
    ...(changes && { changes: changes.map(({ at, stack }) => ({ at, stack: withVent(stack) })) }),
  };
}

/** Wider is cooler, so halving finds the least opening that holds. */
function leastHolding(widestM: number, holds: (sizeM: number) => boolean): number {
  let tooSmallM = 0;
  let enoughM = widestM;
  for (let i = 0; i < HALVINGS; i++) {
    const middleM = (tooSmallM + enoughM) / 2;
    if (holds(middleM)) enoughM = middleM;
    else tooSmallM = middleM;
  }
  return enoughM;
}

function earliestShut(openAt: Date, to: Date, holds: (at: Date) => boolean): Date {
  let tooEarlyMs = openAt.getTime();
  let fineMs = to.getTime();
  while (fineMs - tooEarlyMs > SHUT_STEP_MS) {
    const middle = new Date((tooEarlyMs + fineMs) / 2);
    if (holds(middle)) fineMs = middle.getTime();
    else tooEarlyMs = middle.getTime();
  }
  return new Date(fineMs);
}
