import type { CoverKey, WallKey } from '../covers/cover-key.ts';
import type { BedNight } from '../night/bed-night.ts';
import type { BookNight } from '../night/book-night.ts';
import { spreadGroup } from '../night/spread.ts';
import { SPREADS } from '../night/spread-table.ts';

/** A stack as far as its spread goes. */
export interface LaidCovers {
  /** From outside to inside. */
  readonly covers: readonly CoverKey[];
  /** Of a frame. */
  readonly walls?: WallKey;
}

/** How sure the book is, before any reading. */
export interface BookSpread {
  /** Lasting difference between forecast and garden. [K, > 0] */
  readonly siteSdK: number;
  /** Lasting difference between computed and true effect of the cover. [K, > 0] */
  readonly coverSdK: number;
}

/** A night's error without its lasting part. */
export interface NightParts {
  /** Change of the inside low per kelvin of outside low. [0…1.1] */
  readonly slopeRatio: number;
  /** Of this one night's forecast. [K, > 0] */
  readonly forecastSdK: number;
  /** Of this one night's computed cover effect. [K, > 0] */
  readonly nightSdK: number;
}

/** Of the usual 1.8 K of a forecast low, what stays the same all season at one garden: under half of the variance (`judgement`). */
const SITE_SD_K = 1.2;
/**
 * Of the model's variance, what changes from night to night; the rest lasts. Draws of its inputs give 0.35 to 0.65 by cover
 * (`learning-bench`). Published gains differ more from garden to garden; a wider prior learned those no sooner, and followed
 * the thermometer's own error more (same bench).
 */
const NIGHTLY_SHARE = 0.5;
/** No single night is foretold better than this (`judgement`). [K] */
const LEAST_FORECAST_SD_K = 0.8;
const LEAST_NIGHT_SD_K = 0.4;

/**
 * Lasting spreads of a garden and of a cover before any reading.
 *
 * @param laid - The stack.
 * @see model-spread, learning-bench
 */
export function bookSpread({ covers, walls }: LaidCovers): BookSpread {
  const [clearAndCalmSdK] = SPREADS[spreadGroup(covers, walls)].modelSdK;
  return { siteSdK: SITE_SD_K, coverSdK: Math.sqrt(1 - NIGHTLY_SHARE) * clearAndCalmSdK };
}

/**
 * The part of a night's error that is its own, from the spreads that the book states.
 *
 * @param laid - The stack.
 * @param book - Spread of the low outside and under the cover. [K]
 */
export function nightParts(laid: LaidCovers, book: Pick<BookNight, 'outsideSdK' | 'underCoverSdK'>): NightParts {
  const slopeRatio = SPREADS[spreadGroup(laid.covers, laid.walls)].perForecastK;
  const modelK2 = book.underCoverSdK ** 2 - (slopeRatio * book.outsideSdK) ** 2;
  return {
    slopeRatio,
    forecastSdK: rootAbove(LEAST_FORECAST_SD_K, book.outsideSdK ** 2 - SITE_SD_K ** 2),
    nightSdK: rootAbove(LEAST_NIGHT_SD_K, NIGHTLY_SHARE * modelK2),
  };
}

/**
 * The lows that readings are held against, from a night computed without anything learned.
 *
 * @param night - As computed.
 * @param laid - The stack that it was computed for.
 */
export function bookNight(night: BedNight, laid: LaidCovers): BookNight {
  const { perForecastK } = SPREADS[spreadGroup(laid.covers, laid.walls)];
  const forecastPartK = night.spread.parts.find(({ cause }) => cause === 'forecast')?.sdK ?? 0;
  return {
    outsideLowC: night.screenLowC,
    outsideSdK: forecastPartK / perForecastK,
    underCoverLowC: night.thermometerLowC,
    underCoverSdK: night.spread.sdK,
  };
}

function rootAbove(leastK: number, varianceK2: number): number {
  return Math.max(leastK, Math.sqrt(Math.max(0, varianceK2)));
}
