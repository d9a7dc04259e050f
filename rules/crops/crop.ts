import type { CautionKey } from '../cautions/cautions.ts';
import type { SourceKey } from '../sources.ts';
import type { CropName } from './crop-name.ts';
import type { CropId } from './crop-names-table.ts';

/** The part of the plant that a grower stands to lose. */
export const ORGANS = ['leaf', 'stalk', 'head', 'curd', 'fruit', 'flower', 'bulb', 'root', 'crown'] as const;

export type Organ = (typeof ORGANS)[number];

/** Three limits of one organ in one state, as temperatures of the organ itself. Never rising from line to line. */
export interface Tolerance {
  /** First visible mark. [°C] */
  readonly firstMarkC: number;
  /** Half of the plants (or organs) are lost. [°C] */
  readonly lt50C: number;
  /** All but a few are lost. [°C] */
  readonly killC: number;
  /** Standard deviation of the limits, from variety, stage and the spread of the sources. [K] */
  readonly sdK: number;
}

/** The limits of one organ in both states; the same in both where cold does not harden it. */
export interface OrganLimits {
  /** Grown warm. */
  readonly unhardened: Tolerance;
  /** Fully hardened by weeks of cold. */
  readonly hardened: Tolerance;
}

/** The part that is not eaten, where growers keep the two apart. */
export interface OtherOrgan extends OrganLimits {
  readonly name: 'tops' | 'leaves' | 'outer leaves' | 'bulbs';
  readonly judgedBy: 'leaf' | 'surface';
  readonly hardens: boolean;
}

/** One crop of the table. */
export interface Crop extends OrganLimits {
  readonly id: CropId;
  readonly name: CropName;
  readonly organ: Organ;
  /** Which computed temperature the limits are held against: of the exposed leaf, or of the soil surface. */
  readonly judgedBy: 'leaf' | 'surface';
  /** False where cold weather does not make it hardier; both states are then the same. */
  readonly hardens: boolean;
  /** False where no statement of a source speaks of it: it is then judged by its kind alone. */
  readonly isKnown: boolean;
  readonly other?: OtherOrgan;
  /** Open at this temperature among the leaves where sources ask for less than the usual 24 °C. [°C] */
  readonly ventAboveC?: { readonly tempC: number; readonly source: SourceKey };
  /** From sowing to picking size in spring weather, as on seed packets; absent for what stands for years. [d] */
  readonly maturityDays?: number;
  readonly cautions: readonly CautionKey[];
}
