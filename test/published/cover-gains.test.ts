import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { GAIN_ROWS } from './accuracy/cover-gains.ts';
import { coverMaterialComparisons } from './accuracy/cover-materials.ts';

const COMPILATION = new URL('../../../shared/reference/covers.csv', import.meta.url);

/** The rows themselves are held against the model with all others, in accuracy.test.ts. */
describe('published figures on covers', () => {
  test('that print a gain are all accounted for: compared, or told why not', () => {
    expect(GAIN_ROWS).toHaveLength(53);
    expect(GAIN_ROWS.filter(({ notCompared }) => notCompared === undefined)).toHaveLength(44);
    expect(GAIN_ROWS.filter(({ exception }) => exception !== undefined)).toHaveLength(11);
  });

  test('are as the compilation has them, and with the materials make up all of it', (context) => {
    if (!existsSync(COMPILATION)) context.skip('the compilation of published figures is not at hand');
    const text = readFileSync(COMPILATION, 'utf8');
    for (const { cover, source } of GAIN_ROWS) {
      expect(text).toContain(cover);
      expect(text.replaceAll('""', '"')).toContain(source);
    }
    const printed = text.trim().split('\n').length - 1;
    expect(GAIN_ROWS.length + materialRows()).toBe(printed);
  });
});

/** Two of Hanson's films and two panes of the trade overview print two numbers in one row; three remembered materials do, too. */
function materialRows(): number {
  const numbers = coverMaterialComparisons().flatMap(({ rows, leftOut = [] }) => [...rows, ...leftOut]);
  return new Set(numbers.map(({ id }) => id.replace(/, (light|longwave)$/, ''))).size;
}
