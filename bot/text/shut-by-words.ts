import { deadline } from '../ground/times.ts';
import type { Reader } from './reader.ts';

/** When a garden's covers must be shut, by its own clock. */
export interface Shutting {
  readonly shutBy: Date;
  readonly timeZone: string;
}

/** Gardens whose times lie closer together are told one time, the earliest (judgement). */
const SAME_TIME_MS = 15 * 60_000;

/** The earliest time, with its clock where gardens keep several: "2:15 pm", "2:15 pm New York time". */
export function shutByWords(shuttings: readonly Shutting[], reader: Reader): string {
  const [first] = shuttings.toSorted(byTime);
  if (first === undefined) return 'dark';
  const time = deadline(first.shutBy, first.timeZone, reader.units === 'us');
  return zonesOf(shuttings).length > 1 ? `${time} ${clockName(first.timeZone)}` : time;
}

/** Each clock's times, where one time does not do for all gardens. */
export function shutByLines(shuttings: readonly Shutting[], reader: Reader): string[] {
  const inOrder = shuttings.toSorted(byTime);
  const zones = zonesOf(inOrder);
  const [first] = inOrder;
  const last = inOrder.at(-1);
  if (first === undefined || last === undefined) return [];
  if (zones.length === 1 && last.shutBy.getTime() - first.shutBy.getTime() <= SAME_TIME_MS) return [];
  return zones.map((zone) => {
    const own = inOrder.filter(({ timeZone }) => timeZone === zone);
    const [from = '', to = ''] = [own[0], own.at(-1)].map((each) =>
      each === undefined ? '' : deadline(each.shutBy, zone, reader.units === 'us'),
    );
    const times = from === to ? from : `${from} to ${to}, by garden`;
    return zones.length === 1 ? times : `${clockName(zone)}: ${times}`;
  });
}

function zonesOf(shuttings: readonly Shutting[]): string[] {
  return [...new Set(shuttings.map(({ timeZone }) => timeZone))];
}

/** "New York time" for `America/New_York`. */
function clockName(timeZone: string): string {
  return `${(timeZone.split('/').at(-1) ?? timeZone).replaceAll('_', ' ')} time`;
}

function byTime(a: Shutting, b: Shutting): number {
  return a.shutBy.getTime() - b.shutBy.getTime();
}
