import type { HourlyColumn } from './forecast.ts';

/** A column with its gaps bridged as far as that is honest. */
export interface Bridged {
  readonly values: readonly (number | undefined)[];
  /** 0 where the service gave the hour; else the distance of the two values that the hour lies between. [h] */
  readonly bridgedH: readonly number[];
}

/** Straight lines between values at most `longestH` hours apart. Nothing is drawn beyond the first and the last value. */
export function bridged(column: HourlyColumn, longestH: number): Bridged {
  const values = [...column];
  const bridgedH = new Array<number>(values.length).fill(0);
  let left = -1;
  for (const [right, value] of column.entries()) {
    if (value === undefined) continue;
    const from = column[left];
    const distance = right - left;
    if (from !== undefined && distance > 1 && distance <= longestH) {
      for (let i = left + 1; i < right; i += 1) {
        values[i] = from + ((value - from) * (i - left)) / distance;
        bridgedH[i] = distance;
      }
    }
    left = right;
  }
  return { values, bridgedH };
}
