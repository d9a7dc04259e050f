/**
 * How a figure of a source came to us. `read`: it stood in a stored copy. `memory`: remembered, no independent confirmation.
 * `library`: another program's answer over random inputs. `formula`: computed from a published formula. `no source`: common practice.
 */
export type Standing = 'read' | 'memory' | 'library' | 'formula' | 'no source';

/** One figure of ours beside one of a source. */
export interface ComparedRow {
  /** What a person would look for in the source. */
  readonly id: string;
  readonly ours: number;
  /** A figure, or a range with an open end where the source leaves one. */
  readonly theirs: number | readonly [low: number, high: number];
  readonly tolerance: number;
  /** Why it may lie outside the tolerance: it must then do so, or the excuse is out of date. */
  readonly excuse?: string;
  /** Where the excuse bounds the difference. */
  readonly excusedWithin?: number;
}

/** A figure of a source that nothing of ours can be held against, and why. */
export interface LeftOutRow {
  readonly id: string;
  readonly reason: string;
}

/** All rows of one source, or one class of sources, on one quantity: one line of the table. */
export interface Comparison {
  readonly quantity: string;
  /** As printed; a dash where the comparison is of words. */
  readonly unit: string;
  readonly source: string;
  readonly standing: Standing;
  /** Why the tolerance is what it is. */
  readonly tolerance: string;
  readonly rows: readonly ComparedRow[];
  readonly leftOut?: readonly LeftOutRow[];
}

/** One line of the accuracy table. Bias, mean and worst are of the errors; a range counts from its nearer end. */
export interface AccuracyLine {
  readonly quantity: string;
  readonly unit: string;
  readonly source: string;
  readonly standing: Standing;
  /** Compared and left out. */
  readonly rows: number;
  readonly compared: number;
  readonly bias: number;
  readonly meanAbsoluteError: number;
  readonly worst: number;
  readonly within: number;
  readonly excused: number;
}

/** Ours less theirs; nought inside a range. */
export function errorOf({ ours, theirs }: ComparedRow): number {
  if (typeof theirs === 'number') return ours - theirs;
  const [low, high] = theirs;
  return ours < low ? ours - low : Math.max(0, ours - high);
}

export function isWithin(row: ComparedRow): boolean {
  return Math.abs(errorOf(row)) <= row.tolerance;
}

export function accuracyLine(comparison: Comparison): AccuracyLine {
  const { quantity, unit, source, standing, rows, leftOut = [] } = comparison;
  const errors = rows.map(errorOf);
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  return {
    quantity,
    unit,
    source,
    standing,
    rows: rows.length + leftOut.length,
    compared: rows.length,
    bias: errors.length === 0 ? 0 : mean(errors),
    meanAbsoluteError: errors.length === 0 ? 0 : mean(errors.map(Math.abs)),
    worst: errors.reduce((worst, error) => (Math.abs(error) > Math.abs(worst) ? error : worst), 0),
    within: rows.filter(isWithin).length,
    excused: rows.filter((row) => !isWithin(row) && row.excuse !== undefined).length,
  };
}
