import {
  type CoverKey,
  type Crop,
  type NightVerdict,
  type Odds,
  spokenOdds,
  stackWords,
  type Tolerance,
} from '../../rules/index.ts';
import { temperature, temperatureWithRange } from '../ground/units.ts';
import { isCover } from './night-words.ts';
import { cropWord, type Reader } from './reader.ts';

/** "under a blanket", "uncovered". */
export function underWords(covers: readonly CoverKey[], reader: Reader): string {
  return covers.some(isCover) ? `under ${stackWords(covers, reader.dialect)}` : 'uncovered';
}

/** "Leaf low about 21 °F (17 to 25)." or, for what grows in the soil, the low of its surface. */
export function organLowLine(crop: Crop, verdict: NightVerdict, sdK: number, reader: Reader): string {
  const what = crop.judgedBy === 'surface' ? 'Soil surface low' : 'Leaf low';
  return `${what} about ${temperatureWithRange(verdict.organLowC, sdK, reader.units)}.`;
}

/** "Odds of a mark 1 in 50, of losing it next to none." */
export function oddsLine({ noMark, winterkill }: Odds): string {
  return `Odds of a mark ${spokenOdds(1 - noMark)}, of losing it ${spokenOdds(winterkill)}.`;
}

/** "Spinach grown cold marks at about 15 °F; half is lost near 8 °F." */
export function toleranceLine(crop: Crop, tolerance: Tolerance, state: string, reader: Reader): string {
  const part = crop.organ === 'leaf' || crop.judgedBy === 'surface' ? '' : ` (the ${crop.organ})`;
  return `${cropWord(crop, reader)}${part}${state} marks at about ${temperature(tolerance.firstMarkC, reader.units)}; half is lost near ${temperature(tolerance.lt50C, reader.units)}.`;
}

/** "at 14 °F" for a low that was named, "tonight (14 °F)" for a forecast. */
export function atWords({ lowC, words }: { readonly lowC: number; readonly words?: string }, reader: Reader): string {
  const low = temperature(lowC, reader.units);
  return words === undefined ? `at ${low}` : `${words} (${low})`;
}
