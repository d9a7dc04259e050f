import type { CautionKey } from '../cautions/cautions.ts';
import type { SourceKey } from '../sources.ts';
import type { Organ, OtherOrgan } from './crop.ts';
import type { PlantPart } from './hardiness-row.ts';
import type { PairKey } from './starting-pairs-table.ts';

/** The part that is not eaten, where growers keep the two apart. */
export interface OtherPart {
  /** As the answer says it: "the tops". */
  readonly name: OtherOrgan['name'];
  readonly pair: PairKey;
  readonly rows: readonly (readonly [crop: string, part: PlantPart])[];
  /** True where it outlives the part that is eaten. */
  readonly isHardier?: true;
  /** The exposed leaf unless said. */
  readonly judgedBy?: 'surface';
}

/** What the table says of a crop besides its names: from this its limits are derived. */
export interface CropTraits {
  readonly organ: Organ;
  /** Which computed temperature judges it; the exposed leaf unless said. */
  readonly judgedBy?: 'surface';
  readonly pair: PairKey;
  /** Rows of the sources that speak of this organ: crop as the sources call it, and part. */
  readonly rows: readonly (readonly [crop: string, part: PlantPart])[];
  /** True where ice spoils the organ, so that its freezing point is its first mark. */
  readonly spoiltByIce?: true;
  /** Rows on the crop at large, of which this is one kind. */
  readonly alike?: CropTraits['rows'];
  readonly other?: OtherPart;
  readonly maturityDays?: number;
  readonly cautions?: readonly CautionKey[];
  readonly ventAboveC?: { readonly tempC: number; readonly source: SourceKey };
}
