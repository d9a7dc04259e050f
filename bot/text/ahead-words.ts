import { coverWords, forecastLowSdK } from '../../rules/index.ts';
import { weekdayName } from '../ground/times.ts';
import { temperature, temperatureWithRange } from '../ground/units.ts';
import type { BedOutlook, NightOutlook } from '../outlook/night-outlook.ts';
import { isCover, shortStack } from './night-words.ts';
import { list } from './phrases.ts';
import { cropWord, type Reader } from './reader.ts';

/** A night to come that is worse than this one, and the bed that is worst off in it. */
export interface AheadTelling {
  readonly nightsAhead: number;
  readonly outlook: NightOutlook;
  readonly worst: BedOutlook;
}

/** A night to come with the low outside. */
export interface LowAhead {
  readonly weekday: string;
  /** [°C] */
  readonly lowC: number;
}

/** "Lows ahead: Wed 22 °F, Thu 19 °F."; empty where the forecast goes no further. */
export function lowsAheadLines(lows: readonly LowAhead[], { units }: Reader): string[] {
  if (lows.length === 0) return [];
  return [
    `Lows ahead: ${lows.map(({ weekday, lowC }) => `${weekday.slice(0, 3)} ${temperature(lowC, units)}`).join(', ')}.`,
  ];
}

/** "Friday looks like the worst night, outside low about 8 °F (4 to 12): have a blanket ready for spinach under low tunnel." */
export function aheadLine({ nightsAhead, outlook, worst }: AheadTelling, reader: Reader): string {
  const { summary } = outlook.weather;
  const sdK = forecastLowSdK(
    { kind: 'forecast', nightsAhead },
    { site: { inversionK: 0 }, cloudFraction: summary.cloudFraction, windMPerS: summary.wind10MPerS },
  );
  const day = weekdayName(outlook.night.sunset, outlook.garden.timeZone);
  const low = temperatureWithRange(summary.lowC, sdK, reader.units);
  return `${day} looks like the worst night, outside low about ${low}: ${adviceWords(worst, reader)}`;
}

function adviceWords({ bed, step, verdict }: BedOutlook, reader: Reader): string {
  const stack = bed.covers.some(isCover) ? `under ${shortStack(bed.covers, reader)}` : 'in the open';
  const crop = `${cropWord(verdict.worst.planting.crop, reader)} ${stack}`;
  if (step.kind !== 'add') return `plan to pick what is ready of ${crop} before it.`;
  const covers = list(step.added.filter(isCover).map((key) => coverWords(key, reader.dialect)));
  return `have ${covers}${step.fromShed ? ' from the shed' : ''} ready for ${crop}.`;
}
