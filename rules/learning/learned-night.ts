import type { NightRun } from '../balance/night-run.ts';
import { frozenFraction, thawedAt } from '../balance/thaw.ts';
import type { BedNight } from '../night/bed-night.ts';
import type { BookNight } from '../night/book-night.ts';
import type { Spread, SpreadPart } from '../night/spread.ts';
import { spreadGroup } from '../night/spread.ts';
import { SPREADS } from '../night/spread-table.ts';
import { type BedLearning, underStack } from './bed-history.ts';
import { learnedCoverShift, learnedOutsideShift, learnedShift } from './bed-learning.ts';
import { bookNight, type LaidCovers, nightParts } from './book-spread.ts';

/**
 * A computed night moved by what the bed's readings have taught, with the range that then remains.
 *
 * @param night - As computed, without anything learned.
 * @param learned - From the readings of the bed.
 * @param laid - The stack that the night was computed for; it may be another than the readings were taken under.
 * @returns All lows and the run under the covers moved alike; thaw and frozen share worked out anew. `book` keeps what the
 * night was before.
 *
 * @remarks
 * A night whose low the asker named moves by the cover's part alone. The shift of the night is kept for the morning after,
 * so the thaw is as rough as the shift.
 */
export function learnedNight(night: BedNight, learned: BedLearning, laid: LaidCovers): BedNight {
  const book = bookNight(night, laid);
  const belief = underStack(learned.belief, learned.laid, laid);
  const parts = nightParts(laid, book);
  const isStated = book.outsideSdK === 0;
  const inside = isStated ? learnedCoverShift(belief, parts) : learnedShift(belief, parts);
  const { shiftK } = inside;
  const sdK = Math.min(inside.sdK, night.spread.sdK);
  const outside = isStated ? { shiftK: 0, sdK: 0 } : learnedOutsideShift(belief, parts);
  const run = shiftedRun(night.run, shiftK, outside.shiftK);
  const thawAt = thawedAt(run, run.timesMs.indexOf(night.leafLowAt.getTime()));
  const { thawAt: _, ...rest } = night;
  return {
    ...rest,
    leafLowC: night.leafLowC + shiftK,
    airLowC: night.airLowC + shiftK,
    thermometerLowC: night.thermometerLowC + shiftK,
    surfaceLowC: night.surfaceLowC + shiftK,
    screenLowC: night.screenLowC + outside.shiftK,
    outsideAirLowC: night.outsideAirLowC + outside.shiftK,
    frozenFraction: frozenFraction(night.leafLowC + shiftK),
    ...(thawAt && { thawAt }),
    spread: learnedSpread(
      night.spread,
      sdK * learned.spreadRatio,
      parts.slopeRatio * outside.sdK * learned.spreadRatio,
    ),
    run,
    book,
  };
}

/**
 * A run moved by what the bed's readings have taught of its nights.
 *
 * @param run - As computed.
 * @param learned - From the readings of the bed.
 * @param laid - The stack of the run.
 *
 * @remarks Lows teach nothing of the sun: of a day only the morning is to be read from it, until leaves have thawed.
 */
export function learnedRun(run: NightRun, learned: BedLearning, laid: LaidCovers): NightRun {
  const { siteOffsetK, coverOffsetK } = underStack(learned.belief, learned.laid, laid);
  const { perForecastK } = SPREADS[spreadGroup(laid.covers, laid.walls)];
  return shiftedRun(run, perForecastK * siteOffsetK + coverOffsetK, siteOffsetK);
}

/**
 * What a thermometer outside will show, with what the garden's readings have taught.
 *
 * @param book - From forecast alone.
 * @param learned - From the readings of a bed there.
 */
export function learnedOutsideLow(
  book: Pick<BookNight, 'outsideLowC' | 'outsideSdK' | 'underCoverSdK'>,
  learned: BedLearning,
): { readonly lowC: number; readonly sdK: number } {
  if (book.outsideSdK === 0) return { lowC: book.outsideLowC, sdK: 0 };
  const { shiftK, sdK } = learnedOutsideShift(learned.belief, nightParts(learned.laid, book));
  return { lowC: book.outsideLowC + shiftK, sdK: sdK * learned.spreadRatio };
}

/** Forecast and model anew; what neither holds stays as it was, as far as the new spread has room for it. */
function learnedSpread(before: Spread, sdK: number, forecastSdK: number): Spread {
  const forecast = Math.min(forecastSdK, sdK);
  let roomK2 = sdK * sdK - forecast * forecast;
  const parts: SpreadPart[] = forecast > 0 ? [{ cause: 'forecast', sdK: forecast }] : [];
  for (const part of before.parts) {
    if (part.cause === 'forecast' || part.cause === 'model') continue;
    const keptK2 = Math.min(part.sdK ** 2, roomK2 / 2);
    roomK2 -= keptK2;
    if (keptK2 > 0) parts.push({ cause: part.cause, sdK: Math.sqrt(keptK2) });
  }
  if (roomK2 > 0) parts.push({ cause: 'model', sdK: Math.sqrt(roomK2) });
  return { sdK, parts: parts.toSorted((one, other) => other.sdK - one.sdK) };
}

function shiftedRun(run: NightRun, shiftK: number, outsideShiftK: number): NightRun {
  const moved = (values: Float64Array, byK: number) => values.map((value) => value + byK);
  return {
    ...run,
    leafC: moved(run.leafC, shiftK),
    airC: moved(run.airC, shiftK),
    thermometerC: moved(run.thermometerC, shiftK),
    soilSurfaceC: moved(run.soilSurfaceC, shiftK),
    screenC: moved(run.screenC, outsideShiftK),
    cropLevelAirC: moved(run.cropLevelAirC, outsideShiftK),
  };
}
