import type { SourceKey } from '../sources.ts';
import type { HardinessRow } from './hardiness-row.ts';
import type { OutcomeRow } from './outcome-row.ts';

/** One thing a source says of one organ: on which of its two limits, and on which side of that the organ was. */
export interface Statement {
  /** First mark, or half lost. */
  readonly about: 'mark' | 'loss';
  /** The limit lies near the reading, on its colder side, or on its warmer side. */
  readonly limit: 'near' | 'colder' | 'warmer';
  /** How hard the plants were: 0 grown warm … 1 fully hardened. */
  readonly hardeningIndex: number;
  /** The reading as a temperature of the organ of an ordinary plant. [°C] */
  readonly organC: number;
  /** Its error: thermometer and night, variety and stage, softness of the words. [K] */
  readonly sdK: number;
  /** Factor for softness of words. */
  readonly softFactor: number;
  readonly source: SourceKey;
  readonly row: HardinessRow | OutcomeRow;
}
