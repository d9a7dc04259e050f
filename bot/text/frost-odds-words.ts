import { type AverageFrost, frostYearsFraction, MS_PER_DAY, oneYearInTen, spokenOdds } from '../../rules/index.ts';
import { temperature } from '../ground/units.ts';
import type { Section } from '../talk/reply.ts';
import type { Reader } from './reader.ts';
import { dayWords } from './season-words.ts';

/** 32, 28 and 24 °F: first frost, killing frost for most summer crops, hard freeze. [°C] */
const LOWS_C = [0, -20 / 9, -40 / 9] as const;
/** Weeks from the average day. */
const WEEKS = { first: [-2, -1, 0, 1, 2, 3, 4], last: [-4, -3, -2, -1, 0, 1, 2] } as const;
const DAYS_PER_WEEK = 7;

/** Odds of frost by week, and when to set out, from average days that the gardener gave. */
export function frostOddsSections(averages: readonly AverageFrost[], timeZone: string, reader: Reader): Section[] {
  const sections = averages.map(({ at, which }) => ({
    title:
      which === 'first'
        ? 'Odds that a low this cold has come by then, from the average first frost that you gave'
        : 'Odds that a low this cold still comes after then, from the average last frost that you gave',
    lines: WEEKS[which].map((weeks) => weekLine({ at, which }, weeks, timeZone, reader)),
  }));
  const last = averages.find(({ which }) => which === 'last');
  return last === undefined ? sections : [settingOut(last, timeZone, reader), ...sections];
}

/** "Oct 12: 32 °F about even; 28 °F 1 in 10; 24 °F next to none." */
function weekLine(average: AverageFrost, weeks: number, timeZone: string, reader: Reader): string {
  const day = new Date(average.at.getTime() + weeks * DAYS_PER_WEEK * MS_PER_DAY);
  const odds = LOWS_C.map(
    (lowC) => `${temperature(lowC, reader.units)} ${spokenOdds(frostYearsFraction(average, day, lowC))}`,
  );
  return `${dayWords(day, timeZone, reader)}: ${odds.join('; ')}.`;
}

function settingOut(last: AverageFrost, timeZone: string, reader: Reader): Section {
  const day = (lowC: number) => dayWords(oneYearInTen(last, lowC), timeZone, reader);
  const [frostC, , hardC] = LOWS_C;
  return {
    title: 'Setting out',
    lines: [
      `Tomatoes, peppers, squash and their like without cover: from ${day(frostC)}; a later frost then comes in 1 year of 10. The average day itself is no safe day: half the years have a frost after it.`,
      `Hardened cabbage, kale, lettuce and onions: from ${day(hardC)}, when lows of ${temperature(hardC, reader.units)} are as rare; keep a cover ready.`,
      'Years differ by two weeks either way, and a hollow has its last frost later than the records tell.',
    ],
  };
}
