import { type ToldAndMeasured, trackRecord } from '../../rules/index.ts';
import { difference, temperature, temperatureWithRange } from '../ground/units.ts';
import { counted } from './phrases.ts';
import type { Reader } from './reader.ts';

/** "11 of 14 nights inside the range; off by 2 °F, on the whole 1 °F colder than told." */
export function recordWords(nights: readonly ToldAndMeasured[], { units }: Reader): string | undefined {
  const record = trackRecord(nights);
  if (record === undefined) return undefined;
  const inside = Math.round(record.insideFraction * record.nights);
  const lean = difference(Math.abs(record.meanErrorK), units);
  const isEven = lean.startsWith('0 ');
  const whole = isEven
    ? 'neither warmer nor colder on the whole'
    : `on the whole ${lean} ${record.meanErrorK > 0 ? 'warmer' : 'colder'} than told`;
  return `${inside} of ${counted(record.nights, 'night')} inside the range; off by ${difference(record.meanAbsoluteErrorK, units)}, ${whole}.`;
}

/** "told 18 °F (14 to 22), was 21 °F". */
export function nightWords({ toldLowC, toldSdK, measuredLowC }: ToldAndMeasured, { units }: Reader): string {
  return `told ${temperatureWithRange(toldLowC, toldSdK, units)}, was ${temperature(measuredLowC, units)}`;
}
