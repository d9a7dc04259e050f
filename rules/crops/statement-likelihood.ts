import { normalFraction } from '../verdict/normal-fraction.ts';
import { UNRELATED_FRACTION } from './limit-priors-table.ts';
import type { Statement } from './statement.ts';

/** Slope and curvature of the logarithm of a statement's chance. */
export interface Pull {
  /** Positive where the statement wants the limit warmer. [1/K] */
  readonly slopePerK: number;
  /** Never negative, so that every step of the search goes uphill. [1/K²] */
  readonly curvePerK2: number;
}

/** Keeps the search well-posed where a statement says nothing more. [1/K²] */
const LEAST_CURVE = 1e-9;

/**
 * How a statement pulls at a limit that is thought to lie at `limitC`.
 *
 * @param statement - Near, colder than or warmer than its reading.
 * @param limitC - The limit as now believed. [°C]
 * @param sdK - Whole error of the statement. [K, > 0]
 *
 * @remarks Near: a normal error. One-sided: a probit, of which a small share is about something else.
 */
export function pullOf({ limit, organC }: Pick<Statement, 'limit' | 'organC'>, limitC: number, sdK: number): Pull {
  if (limit === 'near') return { slopePerK: (organC - limitC) / sdK ** 2, curvePerK2: 1 / sdK ** 2 };
  const sign = limit === 'colder' ? -1 : 1;
  const z = (sign * (limitC - organC)) / sdK;
  const density = Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
  const related = 1 - UNRELATED_FRACTION;
  const ratio = (related * density) / (UNRELATED_FRACTION / 2 + related * normalFraction(z));
  return { slopePerK: (sign * ratio) / sdK, curvePerK2: Math.max(LEAST_CURVE, ratio * (ratio + z)) / sdK ** 2 };
}
