import type { SpreadGroup } from '../night/spread-table.ts';

/**
 * How much the lasting effect of a cover differs from garden to garden, one standard deviation. [K]
 *
 * The larger of two: half the variance of the model's own spread (`model-spread`), and the spread of published gains
 * (`published-cover-spread`: frame 2, tunnel with inner cover 2.5, high tunnel 2, double cover 1.5, mulch 3 K) less the part that
 * changes from night to night. Bare, fabric, film and night covers follow the model; the others what was published.
 */
export const LASTING_SD_K: Readonly<Record<SpreadGroup, number>> = {
  bare: 0.8,
  'single-fabric': 0.9,
  'film-tunnel': 0.95,
  frame: 1.8,
  'insulated-frame': 1.8,
  'two-covers': 1.2,
  'high-tunnel': 1.8,
  'inside-high-tunnel': 2.3,
  'night-cover': 1.3,
  'litter-or-snow': 2.5,
};
