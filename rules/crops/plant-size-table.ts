import type { SourceKey } from '../sources.ts';
import type { HardinessRow } from './hardiness-row.ts';
import type { OutcomeRow } from './outcome-row.ts';

export type PlantSize = 'big' | 'small';

/** Rows whose source says that it means big or small plants; `noted` are the words of the note that say so. */
interface SizedRows {
  readonly source: SourceKey;
  readonly crop: string;
  readonly noted: string;
  readonly size: PlantSize;
}

/** The table is for ordinary plants; the same growers list one crop at several sizes. Whatever is not named here is ordinary. */
export const SIZED_ROWS: readonly SizedRows[] = [
  { source: 'winterkill-list-2012', crop: 'lettuce', noted: 'large leaves', size: 'big' },
  { source: 'winterkill-list-2018', crop: 'lettuce', noted: 'large leaves', size: 'big' },
  { source: 'mountain-log', crop: 'lettuce (romaine)', noted: 'mature romaine', size: 'big' },
  { source: 'yuma-freeze', crop: 'lettuce (crisphead)', noted: 'harvest', size: 'big' },
  { source: 'yuma-freeze', crop: 'lettuce (romaine)', noted: 'harvest', size: 'big' },
  { source: 'winterkill-list-2020', crop: 'garlic', noted: 'large tops', size: 'big' },
  { source: 'winterkill-list-2020', crop: 'garlic', noted: 'even small tops', size: 'small' },
  { source: 'winterkill-list-2020', crop: 'onion (potato/multiplier)', noted: 'large tops', size: 'big' },
  { source: 'winterkill-list-2020', crop: 'sorrel (broad-leaf)', noted: 'smaller leaves', size: 'small' },
  { source: 'winterkill-list-2020', crop: 'spinach', noted: 'smaller savoyed leaves', size: 'small' },
];

/**
 * The size of plant that a row speaks of.
 *
 * @param row - A row of the sources.
 * @returns `undefined` for ordinary plants, or where the source does not say.
 */
export function plantSize(row: HardinessRow | OutcomeRow): PlantSize | undefined {
  return SIZED_ROWS.find(
    ({ source, crop, noted }) => source === row.source && crop === row.crop && (row.note ?? '').includes(noted),
  )?.size;
}
