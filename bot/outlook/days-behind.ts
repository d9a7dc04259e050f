import { type DayBehind, MS_PER_H, type WeatherSeries } from '../../rules/index.ts';

const HOURS_PER_DAY = 24;
/** Half of full hardness is gained in three days: what lies further back hardly shows. */
const MOST_DAYS = 14;

/**
 * The whole days outside that end where a night begins, as far back as the weather goes, the last one last. Their
 * high is that of the second half: the afternoon before still warms the first hours.
 */
export function daysBehind({ first, stepH, screenC }: WeatherSeries, nightBegins: Date): DayBehind[] {
  const perDay = HOURS_PER_DAY / stepH;
  const end = Math.floor((nightBegins.getTime() - first.getTime()) / (stepH * MS_PER_H)) + 1;
  const count = Math.min(MOST_DAYS, Math.floor(end / perDay));
  return Array.from({ length: Math.max(0, count) }, (_, i) => {
    const from = end - (count - i) * perDay;
    const hours = screenC.slice(from, from + perDay);
    const meanC = hours.reduce((sum, value) => sum + value, 0) / hours.length;
    return { lowC: Math.min(...hours), meanC, highC: Math.max(...hours.slice(hours.length / 2)) };
  });
}
