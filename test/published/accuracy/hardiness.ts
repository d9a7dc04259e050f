import { bareNights, closingCheck } from '../../../rules/crops/closing-check.ts';
import type { Crop } from '../../../rules/crops/crop.ts';
import { CROP_TRAITS } from '../../../rules/crops/crop-traits-table.ts';
import { CROPS } from '../../../rules/crops/crops.ts';
import { HARDINESS_ROWS } from '../../../rules/crops/hardiness-list.ts';
import type { Authority, HardinessRow } from '../../../rules/crops/hardiness-row.ts';
import { organReading } from '../../../rules/crops/statements.ts';
import { SOURCES } from '../../../rules/sources.ts';
import { nightVerdict } from '../../../rules/verdict/night-verdict.ts';
import { CLOSING_EXCEPTIONS, HARDINESS_EXCEPTIONS } from '../crop-hardiness-exceptions.ts';
import type { ComparedRow, Comparison, LeftOutRow } from './comparison.ts';
import { type JudgedOutcome, outOfSample } from './outcomes.ts';

/** A plant whose state the source does not give is taken as half hardened. */
const INDEX = { hardened: 1, any: 0.5, unhardened: 0, tender: 0 } as const;

const KINDS: Readonly<Record<Authority, string>> = {
  journal: 'journals',
  station: 'stations and extension',
  growers: 'growers’ lists',
  weblog: 'gardeners’ logs',
  trade: 'trade',
};

/** A row that stood in its source, for a crop of ours that it speaks of. */
interface ReadCase {
  readonly name: string;
  readonly row: HardinessRow;
  readonly crop: Crop;
}

export const READ_ROWS = HARDINESS_ROWS.filter((row) => SOURCES[row.source].standing === 'READ');

export function readCases(): readonly ReadCase[] {
  return READ_ROWS.flatMap((row) => cropsOf(row).map((crop) => ({ row, crop, name: nameOf(row, crop) })));
}

/** Verdicts and outside lows against the rows that the limits were made from: they show that nothing slipped, not that it is right. */
export function hardinessConsistency(): readonly Comparison[] {
  return [...verdictComparisons(), closingComparison()];
}

/** Crops whose organ the row speaks of; a root in the soil only where the tissue itself was measured. */
export function cropsOf(row: HardinessRow): readonly Crop[] {
  return CROPS.filter((crop) => {
    const ofOrgan = CROP_TRAITS[crop.id].rows.some(([name, part]) => name === row.crop && part === row.part);
    return ofOrgan && (crop.judgedBy === 'leaf' || row.thermometer === 'organ');
  });
}

function verdictComparisons(): readonly Comparison[] {
  return Object.entries(KINDS).map(([authority, source]) => ({
    quantity: 'Verdict not contradicted',
    unit: '–',
    source,
    standing: 'read',
    tolerance: 'never dead where a source saw it alive, never holding where a source saw it killed',
    rows: readCases()
      .filter(({ row }) => row.authority === authority)
      .map(verdictRow),
    leftOut: READ_ROWS.filter((row) => row.authority === authority && cropsOf(row).length === 0).map(otherOrgan),
  }));
}

/** 1 where the verdict contradicts the row. */
function verdictRow({ row, crop, name }: ReadCase): ComparedRow {
  const readC = typeof row.value === 'number' ? row.value : row.value.colderThanC;
  const { organC, sdK } = organReading(row.thermometer, readC, crop);
  const hardeningIndex = row.effect === 'freezing-point' ? 1 : INDEX[row.state];
  const { verdict } = nightVerdict({ crop, hardeningIndex, leafLowC: organC, surfaceLowC: organC, sdK });
  const contradicted = {
    alive: verdict === 'winterkill',
    dead: verdict === 'holds',
    frozen: crop.hardens && CROP_TRAITS[crop.id].spoiltByIce !== true && verdict !== 'holds',
  }[outcomeOf(row)];
  const excuse = HARDINESS_EXCEPTIONS[name];
  return { id: name, ours: contradicted ? 1 : 0, theirs: 0, tolerance: 0, ...(excuse !== undefined && { excuse }) };
}

/** What a row says that a verdict can contradict. */
function outcomeOf(row: HardinessRow): 'alive' | 'dead' | 'frozen' {
  if (row.effect === 'freezing-point') return 'frozen';
  return typeof row.value !== 'number' || row.effect === 'first-damage' ? 'alive' : 'dead';
}

function otherOrgan(row: HardinessRow): LeftOutRow {
  return {
    id: `${row.crop}, ${row.part}: ${row.source}, ${row.effect} ${valueText(row)}`,
    reason: 'Of an organ or stage that no crop of the table stands for, or an outside low for a root in the soil.',
  };
}

const CONTRADICTED =
  'Sources contradict each other on one crop at one low: variety, wind, cloud and what came before are seldom told.';

/** What was seen of a crop against limits fitted without that source. */
export function outcomeComparisons(): readonly Comparison[] {
  const all = outOfSample();
  const line = (
    what: string,
    seen: readonly JudgedOutcome['row']['seen'][],
    wrong: readonly JudgedOutcome['verdict'][],
  ) => ({
    quantity: what,
    unit: '–',
    source: 'growers and services, each source left out once',
    standing: 'read' as const,
    tolerance: `never ${wrong.join(' or ')} there`,
    rows: all
      .filter(({ row }) => seen.includes(row.seen))
      .map(({ row, crop, verdict }) => {
        const id = `${row.id}, ${crop.id} at ${row.lowC}: ${row.said}`;
        const found = { id, ours: wrong.includes(verdict) ? 1 : 0, theirs: 0, tolerance: 0 };
        return found.ours === 0 ? found : { ...found, excuse: CONTRADICTED };
      }),
  });
  return [
    line('No alarm where no harm was seen', ['unmarked'], ['leaf burn', 'winterkill']),
    line('Not "holds" where harm was seen', ['marked', 'lost'], ['holds']),
    line('Not "winterkill" where the plant lived', ['alive'], ['winterkill']),
  ];
}

function closingComparison(): Comparison {
  const nights = bareNights();
  return {
    quantity: 'Outside low that kills half of a bare crop',
    unit: 'K',
    source: 'growers’ winter-kill lists',
    standing: 'read',
    tolerance: 'the entries, widened by the crop’s spread and the doubt between thermometer and leaf',
    rows: CROPS.flatMap((crop) => {
      const check = closingCheck(crop, nights);
      const excuse = CLOSING_EXCEPTIONS[crop.id];
      if (check === undefined) return [];
      const { chainC, fromC, toC } = check;
      return [
        { id: crop.id, ours: chainC, theirs: [fromC, toC], tolerance: 0, ...(excuse !== undefined && { excuse }) },
      ];
    }),
  };
}

function nameOf(row: HardinessRow, crop: Crop): string {
  return `${crop.id}: ${row.source}, ${row.effect} ${valueText(row)}`;
}

function valueText({ value }: HardinessRow): string {
  return typeof value === 'number' ? String(value) : `alive at ${value.colderThanC}`;
}
