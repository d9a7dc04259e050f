import type { SourceKey } from '../sources.ts';

/** Where the thermometer of a source stood. */
export const THERMOMETERS = ['organ', 'screen', 'inside-air', 'row-cover', 'tunnel-and-sheet', 'cold-frame'] as const;

/**
 * `organ`: in the tissue. `screen`: outside low, plant bare. `inside-air`: beside the plant under glass or film.
 * `row-cover`, `tunnel-and-sheet`, `cold-frame`: outside low, plant under that cover.
 */
export type Thermometer = (typeof THERMOMETERS)[number];

/** How much a source weighs, from measured to hearsay. */
export type Authority = 'journal' | 'station' | 'growers' | 'weblog' | 'trade';

export type PlantPart = 'leaf' | 'head' | 'root' | 'fruit';

/** `any`: the source does not say; garden plants in autumn. */
export type PlantState = 'unhardened' | 'hardened' | 'tender' | 'any';

export type ColdEffect = 'first-damage' | 'lt50' | 'kill' | 'freezing-point';

/** Value as read [°C], or a temperature at which the plant was still alive (or unmarked) [°C]. */
export type ReadValue = number | { readonly colderThanC: number };

/** Rows of one source, in the shape they are kept in. */
export interface HardinessBatch {
  readonly source: SourceKey;
  readonly authority: Authority;
  readonly thermometer: Thermometer;
  /** Holds for every row. */
  readonly note?: string;
  readonly rows: readonly (readonly [
    crop: string,
    part: PlantPart,
    state: PlantState,
    effect: ColdEffect,
    value: ReadValue,
    rangeC?: readonly [number, number] | undefined,
    note?: string,
  ])[];
}

/** One figure of one source on one crop, as read. */
export interface HardinessRow {
  readonly crop: string;
  readonly part: PlantPart;
  readonly state: PlantState;
  readonly effect: ColdEffect;
  readonly value: ReadValue;
  readonly rangeC?: readonly [number, number] | undefined;
  readonly note: string;
  readonly source: SourceKey;
  readonly authority: Authority;
  readonly thermometer: Thermometer;
}
