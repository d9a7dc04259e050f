import { DateTime } from 'luxon';
import { MS_PER_H } from '../../rules/index.ts';
import type { CurveChart } from './curve-chart.ts';

/** Hours of the place's clock that are marked, the closest that do not crowd. */
const STEPS_H = [1, 3, 6, 12, 24] as const;
const MOST_MARKS = 8;

/** Marks on the time axis, the chart’s own or by the hour: "6 pm", "midnight", "3 am", or "18", "0", "3". */
export function hourMarks({
  from,
  to,
  timeZone,
  units,
  marks,
}: Pick<CurveChart, 'from' | 'to' | 'timeZone' | 'units' | 'marks'>): { readonly at: Date; readonly label: string }[] {
  if (marks !== undefined) return [...marks];
  const spanH = (to.getTime() - from.getTime()) / MS_PER_H;
  const everyH = STEPS_H.find((step) => spanH / step <= MOST_MARKS) ?? 24;
  const first = DateTime.fromJSDate(from, { zone: timeZone }).startOf('hour');
  return Array.from({ length: Math.ceil(spanH) + 1 }, (_, hours) => first.plus({ hours })).flatMap((time) => {
    const at = time.toJSDate();
    if (at < from || at > to || time.hour % everyH !== 0) return [];
    return { at, label: units === 'us' ? time.toFormat('h a').toLowerCase() : time.toFormat('H:mm') };
  });
}
