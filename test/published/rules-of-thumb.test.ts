import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { THUMB_USES } from './rules-of-thumb.ts';

const COMPILED = new URL('../../../shared/reference/rules-of-thumb.csv', import.meta.url);

test('every rule of thumb is compared, used, said or left for a reason', () => {
  const uses = Object.values(THUMB_USES);
  const count = (kind: string) => uses.filter((use) => use.kind === kind).length;
  expect([uses.length, count('compared'), count('used'), count('said'), count('left')]).toEqual([76, 27, 12, 8, 29]);
  for (const [id, { where }] of Object.entries(THUMB_USES)) expect([id, where.length > 3]).toEqual([id, true]);
});

test('the list of them is the compiled one', (context) => {
  if (!existsSync(COMPILED)) return context.skip('the compiled rules of thumb are not beside this checkout');
  const ids = readFileSync(COMPILED, 'utf8').match(/^R\d{3}/gm) ?? [];
  expect(Object.keys(THUMB_USES)).toEqual(ids);
});
