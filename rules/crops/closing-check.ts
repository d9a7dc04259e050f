import type { SourceKey } from '../sources.ts';
import type { Crop } from './crop.ts';
import { CROP_TRAITS } from './crop-traits-table.ts';
import { HARDINESS_ROWS } from './hardiness-list.ts';
import { organLowC, organNight } from './organ-night.ts';
import { setAsideReason } from './set-aside-table.ts';

/** A bare bed on an ordinary frost night: clear, 2 m s⁻¹. */
export interface BareNight {
  /** Low at 2 m. [°C] */
  readonly outsideC: number;
  readonly leafLowC: number;
  readonly surfaceLowC: number;
}

/** Outside lows at which a crop died, as growers list them, against the outside low that the chain comes to. */
export interface ClosingCheck {
  readonly cropId: string;
  readonly entries: readonly { readonly outsideC: number; readonly source: SourceKey; readonly note: string }[];
  /** Outside low at which the bare, hardened crop is lost in half of the cases. [°C] */
  readonly chainC: number;
  /** Entries widened by the crop's spread and by the doubt in turning an outside low into a leaf temperature. [°C] */
  readonly fromC: number;
  readonly toC: number;
  readonly within: boolean;
}

const COLDEST_C = -40;
const WARMEST_C = 10;
const STEP_C = 2;

/** The bare bed on ordinary frost nights, from the coldest to the warmest. */
export function bareNights(): readonly BareNight[] {
  const nights: BareNight[] = [];
  for (let outsideC = COLDEST_C; outsideC <= WARMEST_C; outsideC += STEP_C) {
    const { leafLowC, surfaceLowC } = organNight(outsideC);
    nights.push({ outsideC, leafLowC, surfaceLowC });
  }
  return nights;
}

/**
 * Holds a crop's limit and the night model together against what growers saw outdoors.
 *
 * @param crop - A crop of the table.
 * @param nights - From {@link bareNights}.
 * @returns The check; `undefined` for a crop on which no list gives an outside low.
 *
 * @remarks
 * The lists were turned into temperatures of the organ by the same night, so that this holds what all other sources
 * together say of the crop against its lists.
 *
 * @see two-thermometers
 */
export function closingCheck(crop: Crop, nights: readonly BareNight[]): ClosingCheck | undefined {
  const entries = listEntries(crop);
  if (entries.length === 0) return undefined;
  const { lt50C, sdK } = crop.hardened;
  const chainC = outsideAtC(nights, lt50C, crop.judgedBy);
  const spreadK = Math.hypot(sdK, organNight(chainC).sdK);
  const fromC = Math.min(...entries.map((entry) => entry.outsideC)) - spreadK;
  const toC = Math.max(...entries.map((entry) => entry.outsideC)) + spreadK;
  return { cropId: crop.id, entries, chainC, fromC, toC, within: chainC >= fromC && chainC <= toC };
}

/** Outside lows at which the bare crop was seen to die. */
function listEntries(crop: Crop): ClosingCheck['entries'] {
  return HARDINESS_ROWS.flatMap((row) => {
    const ofCrop = CROP_TRAITS[crop.id].rows.some(([name, part]) => name === row.crop && part === row.part);
    const outdoors = row.thermometer === 'screen' && row.effect === 'kill' && row.state !== 'unhardened';
    if (!ofCrop || !outdoors || typeof row.value !== 'number' || setAsideReason(row) !== undefined) return [];
    return [{ outsideC: row.value, source: row.source, note: row.note }];
  });
}

/**
 * Outside low that goes with a low of the organ, between computed nights.
 *
 * @throws RangeError when `organC` is outside what the nights span.
 */
export function outsideAtC(nights: readonly BareNight[], organC: number, judgedBy: Crop['judgedBy']): number {
  const organ = (night: BareNight) => organLowC(night, judgedBy);
  for (const [index, warmer] of nights.entries()) {
    const colder = nights[index - 1];
    if (colder === undefined || organ(warmer) < organC) continue;
    const shareFraction = (organC - organ(colder)) / (organ(warmer) - organ(colder));
    return colder.outsideC + shareFraction * (warmer.outsideC - colder.outsideC);
  }
  throw new RangeError(`organC ${organC} is outside what the nights span`);
}
