import type { HardinessRow } from './hardiness-row.ts';
import { HARDINESS_BATCHES } from './hardiness-rows.ts';

/** Every figure of every source, as read. */
export const HARDINESS_ROWS: readonly HardinessRow[] = HARDINESS_BATCHES.flatMap((batch) =>
  batch.rows.map(([crop, part, state, effect, value, rangeC, note]) => ({
    crop,
    part,
    state,
    effect,
    value,
    rangeC,
    note: [note, batch.note].filter((text) => text !== undefined).join('; '),
    source: batch.source,
    authority: batch.authority,
    thermometer: batch.thermometer,
  })),
);
