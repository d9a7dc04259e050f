import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { HARDINESS_ROWS } from '../../rules/crops/hardiness-list.ts';
import { SOURCES } from '../../rules/sources.ts';
import { cropsOf, READ_ROWS, readCases } from './accuracy/hardiness.ts';
import { HARDINESS_EXCEPTIONS, READ_ROWS_PER_SOURCE } from './crop-hardiness-exceptions.ts';

const COMPILED = new URL('../../../shared/reference/hardiness.csv', import.meta.url);

/** The rows themselves are held against the verdicts with all others, in accuracy.test.ts. */
describe('a figure that stood in its source', () => {
  test('is excused only by name and with a reason, and no excuse is left over', () => {
    const names = new Set(readCases().map(({ name }) => name));
    for (const [name, reason] of Object.entries(HARDINESS_EXCEPTIONS)) {
      expect([name, names.has(name)]).toEqual([name, true]);
      expect(reason.length).toBeGreaterThan(20);
    }
  });

  test('is counted: judged, or of an organ or stage that no crop of the table stands for', () => {
    const counts: Record<string, { judged: number; other: number }> = {};
    for (const row of READ_ROWS) {
      const { judged, other } = counts[row.source] ?? { judged: 0, other: 0 };
      const used = cropsOf(row).length > 0;
      counts[row.source] = { judged: judged + (used ? 1 : 0), other: other + (used ? 0 : 1) };
    }
    expect(counts).toEqual(READ_ROWS_PER_SOURCE);
  });
});

/** A rule of thumb, and two facts of the trade that no source is known for. */
const BESIDE_THE_LIST: readonly string[] = ['pomological-1982', 'common-practice'];

test('the table holds every row of the compiled list, one of the rules of thumb and two facts of the trade', (ctx) => {
  if (!existsSync(COMPILED)) return ctx.skip('the compiled list of hardiness is not beside this checkout');
  const [head = [], ...lines] = csvRows(readFileSync(COMPILED, 'utf8'));
  const cell = (line: readonly string[], column: string) => line[head.indexOf(column)] ?? '';
  const printed = lines.map((line) => {
    const bound = cell(line, 'temp_c') === '' || cell(line, 'note').includes('colder than high_c');
    const value = bound ? `<${Number(cell(line, 'high_c'))}` : String(Number(cell(line, 'temp_c')));
    const standing = cell(line, 'read_or_memory');
    return [...['crop', 'part', 'state', 'effect'].map((column) => cell(line, column)), value, standing].join('|');
  });
  const kept = HARDINESS_ROWS.filter((row) => !BESIDE_THE_LIST.includes(row.source)).map((row) => {
    const value = typeof row.value === 'number' ? String(row.value) : `<${row.value.colderThanC}`;
    return [row.crop, row.part, row.state, row.effect, value, SOURCES[row.source].standing].join('|');
  });
  expect(kept.sort()).toEqual(printed.sort());
  expect(HARDINESS_ROWS).toHaveLength(printed.length + 3);
});

/** Cells of a comma-separated text with quoted cells and doubled quotes. */
function csvRows(text: string): readonly (readonly string[])[] {
  return text
    .trim()
    .split('\n')
    .map((line) =>
      [...line.matchAll(/("(?:[^"]|"")*"|[^",]*)(,|$)/g)]
        .map(([, cell = '']) => (cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell))
        .slice(0, 12),
    );
}
