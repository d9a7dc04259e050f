import type { ColdEffect, HardinessRow } from './hardiness-row.ts';
import {
  CLASS_SOFT_FACTOR,
  FREEZING_SD_K,
  HARMLESS_SOFT_FACTOR,
  LIST_SD_K,
  SOFT_FACTOR,
  SOME_MOVE_K,
} from './limit-priors-table.ts';

/** What a row of the hardiness list says, before its reading is turned into a temperature of the organ. */
export interface StatementSense {
  readonly about: 'mark' | 'loss';
  readonly limit: 'near' | 'colder' | 'warmer';
  /** The reading to use, where the source gives a range. [°C] */
  readonly readC: number;
  /** Added to the reading to come to the limit. [K] */
  readonly moveK: number;
  /** Error beyond those of thermometer, night and variety. [K] */
  readonly extraSdK: number;
  /** Factor on the whole error: 1 for a plain statement. */
  readonly softFactor: number;
}

const SOFT_WORDS = /\b(some|probably|may|maybe|most|many|approximate|low confidence)\b/;
/** A class that takes so much: its weaker end is meant for every crop of it. */
const TOLERATING_CLASS = /\b(tolerated|withstands)\b/;
/** A class that is damaged somewhere in a range: at its colder end every crop of it is. */
const DAMAGED_CLASS = /\b(may burn foliage|class: damaged)\b/;
const SEEN_DAMAGED = /\b(badly damaged|significant injury)\b/;
/** The hardiest varieties: an ordinary one is lost before. */
const HARDIEST = /\b(hardiest|hardy|hardier cultivars|winter types|selected)\b/;

/**
 * What a row says of the two limits of its organ.
 *
 * @param row - A row in use.
 * @param organ - Whether it has the temperature of the soil surface, and how far its end lies below half lost. [K]
 * @see limit-statements (judgement)
 */
export function statementSense(
  row: HardinessRow,
  { inSoil, killK }: { readonly inSoil: boolean; readonly killK: number },
): StatementSense {
  const plain: StatementSense = {
    about: ABOUT[row.effect],
    limit: 'near',
    readC: typeof row.value === 'number' ? row.value : row.value.colderThanC,
    moveK: 0,
    extraSdK: 0,
    softFactor: SOFT_WORDS.test(row.note) ? SOFT_FACTOR : 1,
  };
  if (typeof row.value !== 'number')
    return { ...plain, limit: 'colder', softFactor: plain.softFactor * HARMLESS_SOFT_FACTOR };
  switch (row.effect) {
    case 'lt50':
      return plain;
    case 'freezing-point':
      // A thick organ in the air is warmer than the bare leaf that it is judged by: no more than a bound.
      return inSoil ? { ...plain, extraSdK: FREEZING_SD_K } : { ...plain, limit: 'colder' };
    case 'first-damage':
      return damageSense(row, plain);
    case 'kill':
      return killSense(row, plain, killK);
  }
}

const ABOUT: Readonly<Record<ColdEffect, StatementSense['about']>> = {
  'first-damage': 'mark',
  'freezing-point': 'mark',
  lt50: 'loss',
  kill: 'loss',
};

function damageSense({ note, rangeC, authority }: HardinessRow, plain: StatementSense): StatementSense {
  const [colderC, warmerC] = rangeC ?? [plain.readC, plain.readC];
  if (TOLERATING_CLASS.test(note)) return { ...plain, limit: 'colder', readC: warmerC, softFactor: CLASS_SOFT_FACTOR };
  if (DAMAGED_CLASS.test(note)) return { ...plain, limit: 'warmer', readC: colderC, softFactor: CLASS_SOFT_FACTOR };
  return authority === 'weblog' || SEEN_DAMAGED.test(note) ? { ...plain, limit: 'warmer' } : plain;
}

/** A list says where a crop ends, a garden that it had ended; a station's "killed" is the end of all but a few. */
function killSense({ note, authority }: HardinessRow, plain: StatementSense, killK: number): StatementSense {
  if (authority === 'weblog') return { ...plain, limit: 'warmer' };
  if (authority !== 'growers') return { ...plain, moveK: killK };
  if (HARDIEST.test(note)) return { ...plain, limit: 'warmer' };
  return { ...plain, extraSdK: LIST_SD_K, moveK: plain.softFactor === 1 ? 0 : -SOME_MOVE_K };
}
