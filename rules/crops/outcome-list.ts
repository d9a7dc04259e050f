import type { OutcomeRow } from './outcome-row.ts';
import { OUTCOME_BATCHES } from './outcome-rows.ts';

/** Every outcome of every source. */
export const OUTCOME_ROWS: readonly OutcomeRow[] = OUTCOME_BATCHES.flatMap(({ source, rows }) =>
  rows.map(([id, crop, part, state, seen, lowC, said, more]) => ({
    id,
    crop,
    part,
    state,
    seen,
    lowC,
    said,
    source,
    ...more,
  })),
);
