import type { CoverKey } from '../covers/cover-key.ts';
import type { SourceKey } from '../sources.ts';
import type { PlantPart, PlantState } from './hardiness-row.ts';

/** `unmarked`: no harm. `marked`: harm was seen. `alive`: not lost. `lost`: dead, or the harvest gone. */
export type Seen = 'unmarked' | 'marked' | 'alive' | 'lost';

/** One part of the plant, or `plant` where the source does not say which. */
export type SeenPart = PlantPart | 'plant';

/** Rows of one source, in the shape they are kept in. */
export interface OutcomeBatch {
  readonly source: SourceKey;
  readonly rows: readonly (readonly [
    id: string,
    crop: string,
    part: SeenPart,
    state: PlantState,
    seen: Seen,
    /** Outside low. */
    lowC: number,
    said: string,
    more?: OutcomeMore,
  ])[];
}

interface OutcomeMore {
  /** From outside to inside; bare when absent. */
  readonly covers?: readonly CoverKey[];
  /** The thermometer stood among the plants. */
  readonly atPlant?: true;
  /** Variety and stage, as the source has them. */
  readonly note?: string;
}

/** What a grower or a service saw, or says of a class of crops, at one outside low. */
export interface OutcomeRow extends OutcomeMore {
  readonly id: string;
  readonly crop: string;
  readonly part: SeenPart;
  readonly state: PlantState;
  readonly seen: Seen;
  /** Outside low, or that of the air among the plants (`atPlant`). [°C] */
  readonly lowC: number;
  /** In the source's sense: "observed: frozen", "class: tolerates". */
  readonly said: string;
  readonly source: SourceKey;
}
