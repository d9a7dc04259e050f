import { checkedRow, WORKED_ROWS, WORKED_SOURCES, type WorkedRow } from '../worked-values.ts';
import type { ComparedRow, Comparison, LeftOutRow, Standing } from './comparison.ts';

const PRINTED_TOLERANCE = 'as printed with the row';

/** Lines of the table: which sources of the worked values make one, and in what their errors are told. */
const LINES: readonly (Omit<Comparison, 'rows' | 'tolerance'> & { readonly keys: readonly string[] })[] = [
  {
    quantity: 'Pressure and vapour',
    unit: '%',
    source: 'FAO paper 56, examples 2–5, 17, 20',
    standing: 'read',
    keys: ['fao56-example-02', 'fao56-example-03', 'fao56-example-05', 'fao56-example-17', 'fao56-example-20'],
  },
  {
    quantity: 'Pressure and vapour',
    unit: '%',
    source: 'FAO paper 56, tables 2.2 and 2.3',
    standing: 'memory',
    keys: ['fao56-table-2.2', 'fao56-table-2.3'],
  },
  {
    quantity: 'Dew point from humidity',
    unit: 'K',
    source: 'FAO frost handbook',
    standing: 'memory',
    keys: ['frost-handbook-humidity'],
  },
  {
    quantity: 'Sun above the air, day length',
    unit: '%',
    source: 'FAO paper 56, examples 8 and 9',
    standing: 'read',
    keys: ['fao56-example-08', 'fao56-example-09'],
  },
  {
    quantity: 'Sun above the air, day length',
    unit: '%',
    source: 'FAO paper 56, tables 2.6 and 2.7',
    standing: 'memory',
    keys: ['fao56-table-2.6', 'fao56-table-2.7'],
  },
  {
    quantity: 'Heat of a black body',
    unit: '%',
    source: 'FAO paper 56, table 2.8',
    standing: 'memory',
    keys: ['fao56-table-2.8'],
  },
  {
    quantity: 'Night longwave: constant, emission, net loss',
    unit: 'W/m²',
    source: 'FAO frost handbook',
    standing: 'memory',
    keys: ['frost-handbook-radiation'],
  },
  {
    quantity: 'First and last day under ten hours',
    unit: 'd',
    source: 'Spencer 1971 and standard refraction',
    standing: 'formula',
    keys: ['spencer-ten-hours'],
  },
  {
    quantity: 'Freezing point of picked produce',
    unit: 'K',
    source: 'FAO frost handbook, from USDA',
    standing: 'memory',
    keys: ['frost-handbook-vegetables'],
  },
  {
    quantity: 'Methods that we do not use',
    unit: '–',
    source: 'FAO paper 56 and frost handbook',
    standing: 'read',
    keys: [
      'fao56-example-12',
      'fao56-example-13',
      'fao56-example-15',
      'fao56-example-18',
      'frost-handbook-equation',
      'frost-handbook-regression',
      'frost-handbook-trend',
    ],
  },
  {
    quantity: 'Wind chill, never applied to a leaf',
    unit: '–',
    source: 'US and Canadian tables of 2001',
    standing: 'read',
    keys: ['canada-wind-chill', 'nws-wind-chill-article', 'nws-wind-chill-chart'],
  },
];

/** Worked examples and table values, row by row. */
export function workedComparisons(): readonly Comparison[] {
  return LINES.map(({ keys, ...line }) => {
    const printed = WORKED_ROWS.filter((row) => keys.includes(row.source));
    const rows: ComparedRow[] = [];
    const leftOut: LeftOutRow[] = [];
    for (const row of printed) {
      const check = checkedRow(row);
      if (check.kind === 'not-applicable') leftOut.push({ id: named(row), reason: check.reason });
      else rows.push(comparedRow(row, check, line.unit === '%'));
    }
    return { ...line, tolerance: PRINTED_TOLERANCE, rows, leftOut };
  });
}

/** How each source of the worked values stands, for the count of rows per source. */
export function workedStanding(source: string): Standing {
  return WORKED_SOURCES[source]?.standing === 'READ' ? 'read' : 'memory';
}

type Checked = Exclude<ReturnType<typeof checkedRow>, { readonly kind: 'not-applicable' }>;

function comparedRow(row: WorkedRow, check: Checked, isRelative: boolean): ComparedRow {
  const scale = isRelative ? 100 / Math.abs(check.expected) : 1;
  return {
    id: named(row),
    ours: check.ours * scale,
    theirs: check.expected * scale,
    tolerance: row.tolerance * scale,
    ...(check.kind === 'other-definition' && { excuse: check.reason, excusedWithin: check.tolerance * scale }),
  };
}

function named({ id, quantity, inputs }: WorkedRow): string {
  return `${id} ${quantity} (${inputs})`;
}
