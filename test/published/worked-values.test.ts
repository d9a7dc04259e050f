import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkedRow, WORKED_ROWS, WORKED_SOURCES } from './worked-values.ts';

const COMPILED = new URL('../../../shared/reference/worked-values.csv', import.meta.url);

/** The rows themselves are held against ours with all others, in accuracy.test.ts. */
describe('worked values', () => {
  test('cover every row of every source: none is dropped', () => {
    const counts: Record<string, Record<string, number>> = {};
    for (const row of WORKED_ROWS) {
      const { kind } = checkedRow(row);
      const bySource = counts[row.source] ?? {};
      counts[row.source] = { ...bySource, [kind]: (bySource[kind] ?? 0) + 1 };
    }
    expect(counts).toEqual(ROWS_PER_SOURCE);
    expect(Object.keys(WORKED_SOURCES).sort()).toEqual(Object.keys(ROWS_PER_SOURCE).sort());
    expect(new Set(WORKED_ROWS.map((row) => row.id)).size).toBe(114);
  });

  test('are those of the compiled list, number by number', (ctx) => {
    if (!existsSync(COMPILED)) return ctx.skip('the compiled list of published numbers is not beside this checkout');
    const lines = readFileSync(COMPILED, 'utf8').trim().split('\n').slice(1);
    expect(lines).toHaveLength(WORKED_ROWS.length);
    for (const [index, row] of WORKED_ROWS.entries()) {
      const line = lines[index] ?? '';
      expect(line.startsWith(`${row.id},`)).toBe(true);
      expect(line).toContain(`,${row.expected},${row.unit},${row.tolerance}`);
      expect(line).toContain(row.inputs);
      expect(line.endsWith(WORKED_SOURCES[row.source]?.standing ?? 'no standing')).toBe(true);
    }
  });
});

/** Rows per source and what became of them; a row that is dropped or quietly excused changes these numbers. */
const ROWS_PER_SOURCE: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  'canada-wind-chill': { 'not-applicable': 3 },
  'fao56-example-02': { checked: 2 },
  'fao56-example-03': { checked: 1 },
  'fao56-example-05': { checked: 1, 'not-applicable': 1 },
  'fao56-example-08': { checked: 2 },
  'fao56-example-09': { checked: 1 },
  'fao56-example-12': { 'not-applicable': 1 },
  'fao56-example-13': { 'not-applicable': 1 },
  'fao56-example-15': { 'not-applicable': 1 },
  'fao56-example-17': { checked: 1 },
  'fao56-example-18': { 'not-applicable': 1 },
  'fao56-example-20': { checked: 1 },
  'fao56-table-2.2': { 'other-definition': 3 },
  'fao56-table-2.3': { checked: 1, 'other-definition': 4 },
  'fao56-table-2.6': { checked: 9 },
  'fao56-table-2.7': { checked: 6 },
  'fao56-table-2.8': { 'other-definition': 5 },
  'frost-handbook-equation': { 'not-applicable': 1 },
  'frost-handbook-humidity': { checked: 2, 'other-definition': 1, 'not-applicable': 3 },
  'frost-handbook-radiation': { checked: 4 },
  'frost-handbook-regression': { 'not-applicable': 2 },
  'frost-handbook-trend': { 'not-applicable': 4 },
  'frost-handbook-vegetables': { checked: 6 },
  'nws-wind-chill-article': { 'not-applicable': 1 },
  'nws-wind-chill-chart': { 'not-applicable': 36 },
  'spencer-ten-hours': { checked: 9 },
};
