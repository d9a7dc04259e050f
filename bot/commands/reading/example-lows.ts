import type { UnitSystem } from '../../ground/units.ts';

/** Lows as they may be typed, for a reader of °F or °C. */
export const EXAMPLE_LOWS: Readonly<Record<UnitSystem, { readonly inside: string; readonly outside: string }>> = {
  us: { inside: 'inside:21F', outside: 'outside:14F' },
  metric: { inside: 'inside:-6C', outside: 'outside:-10C' },
};
