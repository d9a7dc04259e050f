import type { Intent, Missing, Problem, Stage, UnitReason, When } from '../../../bot/language/understood.ts';
import type { CautionKey, CoverKey, WallKey } from '../../../rules/index.ts';

/** What must be understood of one question. A slot that is not listed must come out absent, false or empty. */
export interface Expected {
  readonly crops?: readonly string[];
  readonly unknown?: readonly string[];
  readonly choices?: readonly string[];
  /** The low in °F or °C, as the asker would have said it in that unit. */
  readonly lowF?: number;
  readonly lowC?: number;
  /** How the unit came about; `said` when not listed. */
  readonly unit?: UnitReason;
  readonly hours?: number;
  readonly covers?: readonly CoverKey[];
  readonly options?: readonly (readonly CoverKey[])[];
  readonly unknownCovers?: readonly string[];
  readonly walls?: WallKey;
  readonly when?: When;
  readonly hardened?: boolean;
  readonly stage?: Stage;
  readonly cloud?: 'clear' | 'half' | 'overcast';
  readonly wind?: 'calm' | 'breezy' | 'windy';
  readonly snow?: boolean;
  readonly mine?: boolean;
  readonly beds?: readonly number[];
  readonly named?: readonly string[];
  readonly cautions?: readonly CautionKey[];
  readonly missing?: Missing;
  readonly problem?: Problem;
}

export interface CorpusQuestion {
  readonly group: string;
  readonly ask: string;
  readonly intent: Intent;
  readonly expected: Expected;
  /** Asked just before in the same conversation. */
  readonly after?: string;
  /** Reads °C, by locale or by choice. */
  readonly celsius?: boolean;
  /** Has neither told a place nor any beds. */
  readonly nowhere?: boolean;
}

interface Setting {
  readonly after?: string;
  readonly celsius?: boolean;
  readonly nowhere?: boolean;
}

type Row = readonly [ask: string, intent: Intent, expected?: Expected, setting?: Setting];

/** A group of questions written as short rows. */
export function group(name: string, rows: readonly Row[]): readonly CorpusQuestion[] {
  return rows.map(([ask, intent, expected, setting]) => ({
    group: name,
    ask,
    intent,
    expected: expected ?? {},
    ...setting,
  }));
}
