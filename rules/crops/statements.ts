import type { CoverKey } from '../covers/cover-key.ts';
import { SOURCES } from '../sources.ts';
import { HARDINESS_ROWS } from './hardiness-list.ts';
import type { HardinessRow, PlantState, Thermometer } from './hardiness-row.ts';
import {
  ALIKE_SOFT_FACTOR,
  BESIDE_SD_K,
  CLASS_SOFT_FACTOR,
  COVER_SD_K,
  HARMLESS_SOFT_FACTOR,
  MEMORY_SOFT_FACTOR,
  NAMED_SOFT_FACTOR,
  PART_SOFT_FACTOR,
  SURFACE_SD_K,
  UNKNOWN_INDEX,
} from './limit-priors-table.ts';
import { organLowC, organNight } from './organ-night.ts';
import { OUTCOME_ROWS } from './outcome-list.ts';
import type { OutcomeRow, Seen } from './outcome-row.ts';
import { plantSize } from './plant-size-table.ts';
import { setAsideReason } from './set-aside-table.ts';
import { spacing } from './spacing.ts';
import { STARTING_PAIRS } from './starting-pairs-table.ts';
import type { Statement } from './statement.ts';
import { statementSense } from './statement-sense.ts';
import type { Subject } from './subjects.ts';

/** What lay over the plants, by where the thermometer of a source stood; absent where it stood with the plants. */
const COVERS: Partial<Record<Thermometer, readonly CoverKey[]>> = {
  screen: [],
  'row-cover': ['row-cover'],
  'tunnel-and-sheet': ['low-tunnel', 'sheet'],
  'cold-frame': ['cold-frame'],
};

/** From big or small plants to ordinary ones: what a big head or a small rosette counts for tonight, undone (`circumstance-steps`). [K] */
const TO_ORDINARY_K = { big: -1.5, small: 1.5 } as const;

function toOrdinaryK(row: HardinessRow | OutcomeRow): number {
  const size = plantSize(row);
  return size === undefined ? 0 : TO_ORDINARY_K[size];
}

/** Rows of the hardiness list that name the subject, and why some of them are not used. */
export function listedRows(subject: Subject): readonly { readonly row: HardinessRow; readonly reason?: string }[] {
  const rows = HARDINESS_ROWS.filter((row) => isNamed(subject, row.crop, row.part));
  return rows.map((row) => {
    const reason = setAsideReason(row) ?? unfitReason(row, subject);
    return reason === undefined ? { row } : { row, reason };
  });
}

/** What growers and services saw of the subject. */
export function seenRows(subject: Subject): readonly OutcomeRow[] {
  return OUTCOME_ROWS.filter((row) =>
    row.part === 'plant'
      ? subject.plants.includes(row.crop) && !(row.seen === 'alive' && subject.ofTwo === 'first')
      : isNamed(subject, row.crop, row.part),
  );
}

/**
 * All that the sources say of one organ of one crop.
 *
 * @param subject - The organ.
 * @returns One statement for each row in use, none where nothing is known but the kind of crop. Runs the night model for
 * every outside low that is new to it, some milliseconds each.
 *
 * @remarks
 * A plant unharmed has every part unharmed; a plant alive has its hardier part alive; a plant harmed has its more tender
 * part harmed, and of the other it says so more softly; a plant lost has lost both.
 */
export function statementsOn(subject: Subject): readonly Statement[] {
  const listed = listedRows(subject).filter(({ reason }) => reason === undefined);
  return [
    ...listed.map(({ row }) => listedStatement(row, subject)),
    ...seenRows(subject).map((row) => seenStatement(row, subject)),
    ...(subject.alike === undefined ? [] : alikeStatements(subject, subject.alike)),
  ];
}

/** What is said of the crop at large, for one of its kinds: more softly. */
function alikeStatements(subject: Subject, rows: Subject['rows']): readonly Statement[] {
  const { alike: _, ...atLarge } = { ...subject, rows, plants: [] };
  return statementsOn(atLarge).map((statement) => ({
    ...statement,
    softFactor: statement.softFactor * ALIKE_SOFT_FACTOR,
  }));
}

function isNamed({ rows }: Subject, crop: string, part: string): boolean {
  return rows.some(([named, namedPart]) => named === crop && namedPart === part);
}

/** Rows that no organ of this kind can use. */
function unfitReason(row: HardinessRow, { spoiltByIce }: Subject): string | undefined {
  return row.effect === 'freezing-point' && !spoiltByIce ? 'a freezing point is no kill point here' : undefined;
}

function listedStatement(row: HardinessRow, subject: Subject): Statement {
  const { about, limit, readC, moveK, extraSdK, softFactor } = statementSense(row, {
    inSoil: subject.judgedBy === 'surface',
    killK: spacing(STARTING_PAIRS[subject.pair].unhardened).killK,
  });
  const { organC, sdK } = organReading(row.thermometer, readC, subject);
  const state = row.effect === 'freezing-point' ? 'unhardened' : row.state;
  return {
    about,
    limit,
    hardeningIndex: indexOf(state, UNKNOWN_INDEX.list, subject),
    organC: organC + moveK + toOrdinaryK(row),
    sdK: Math.hypot(sdK, extraSdK),
    softFactor: softFactor * (SOURCES[row.source].standing === 'READ' ? 1 : MEMORY_SOFT_FACTOR),
    source: row.source,
    row,
  };
}

/**
 * A reading of the hardiness list as a temperature of the organ, with the doubt of thermometer and night.
 *
 * @param readC - As the source gives it. [°C]
 */
export function organReading(
  thermometer: Thermometer,
  readC: number,
  subject: Pick<Subject, 'judgedBy'>,
): { readonly organC: number; readonly sdK: number } {
  const covers = COVERS[thermometer];
  if (covers !== undefined) return outdoors(readC, covers, subject);
  return { organC: readC, sdK: thermometer === 'organ' ? 0 : BESIDE_SD_K };
}

const SEEN: Readonly<Record<Seen, Pick<Statement, 'about' | 'limit'>>> = {
  unmarked: { about: 'mark', limit: 'colder' },
  marked: { about: 'mark', limit: 'warmer' },
  alive: { about: 'loss', limit: 'colder' },
  lost: { about: 'loss', limit: 'warmer' },
};

function seenStatement(row: OutcomeRow, subject: Subject): Statement {
  const { about, limit } = SEEN[row.seen];
  const beside = { organC: row.lowC, sdK: BESIDE_SD_K };
  const { organC, sdK } = row.atPlant === true ? beside : outdoors(row.lowC, row.covers ?? [], subject);
  const isOtherPart = row.part === 'plant' && row.seen === 'marked' && subject.ofTwo === 'last';
  const softFactor = [
    limit === 'colder' ? HARMLESS_SOFT_FACTOR : 1,
    isClass(row) ? CLASS_SOFT_FACTOR : 1,
    namesVariety(row) ? NAMED_SOFT_FACTOR : 1,
    isOtherPart ? PART_SOFT_FACTOR : 1,
  ].reduce((product, factor) => product * factor);
  const hardeningIndex = indexOf(row.state, UNKNOWN_INDEX.seen, subject);
  return { about, limit, hardeningIndex, organC: organC + toOrdinaryK(row), sdK, softFactor, source: row.source, row };
}

/** Said of a class of crops, or seen by somebody? */
export function isClass(row: OutcomeRow): boolean {
  return row.said.startsWith('class');
}

/** Notes of outcomes begin with the variety, which has a capital. */
function namesVariety({ note = '' }: OutcomeRow): boolean {
  return /^[A-Z]/.test(note);
}

function outdoors(outsideC: number, covers: readonly CoverKey[], { judgedBy }: Pick<Subject, 'judgedBy'>) {
  const night = organNight(outsideC, covers);
  const nightSdK = judgedBy === 'surface' ? Math.max(night.sdK, SURFACE_SD_K) : night.sdK;
  return { organC: organLowC(night, judgedBy), sdK: Math.hypot(nightSdK, covers.length === 0 ? 0 : COVER_SD_K) };
}

function indexOf(state: PlantState, unknown: number, { hardens }: Subject): number {
  if (!hardens) return 1;
  return state === 'any' ? unknown : state === 'unhardened' ? 0 : 1;
}
