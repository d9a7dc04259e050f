import type { CautionKey, CoverKey, WallKey } from '../../rules/index.ts';
import type { Cue } from './cue-words-table.ts';
import type { Assumption, SaidSky, Stage, When } from './understood.ts';

/** What a phrase of the vocabulary means, before its neighbours are looked at. */
export type Sense =
  | CropSense
  /** A plant that people ask about and the table does not hold. */
  | { readonly kind: 'plant' }
  | CoverSense
  /** Something laid over plants that is not in the table of covers. */
  | { readonly kind: 'other-cover' }
  | { readonly kind: 'bare' }
  | { readonly kind: 'weight'; readonly weight: Weight }
  | { readonly kind: 'layers'; readonly count?: number }
  | { readonly kind: 'walls'; readonly walls: WallKey }
  | { readonly kind: 'when'; readonly when: When | 'tomorrow' }
  | { readonly kind: 'state'; readonly hardened?: boolean; readonly stage?: Stage }
  | { readonly kind: 'sky'; readonly sky: SaidSky }
  | { readonly kind: 'hazard'; readonly topics: readonly CautionKey[] }
  | { readonly kind: 'bed'; readonly name?: string }
  | { readonly kind: 'cue'; readonly cue: Cue }
  /** Known, and of no weight: ordinary English. */
  | { readonly kind: 'ordinary' };

export type Weight = 'light' | 'medium' | 'heavy';

export interface CropSense {
  readonly kind: 'crop';
  /** More than one where the word is several crops. */
  readonly ids: readonly string[];
  /** The crop most people mean by it. */
  readonly usualId?: string;
  /** A variety: it steps back behind a crop named beside it. */
  readonly variety: boolean;
  /** A common misspelling; nothing is corrected into it. */
  readonly misspelt: boolean;
  /** An ordinary word too: a crop only where one is expected. */
  readonly ordinary: boolean;
}

export interface CoverSense {
  readonly kind: 'cover';
  readonly key: CoverKey;
  readonly assumes?: Assumption;
}

/** A phrase of the vocabulary with one of its meanings. */
export type Entry = readonly [phrase: string, sense: Sense];
