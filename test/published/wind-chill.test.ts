import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import * as rules from '../../rules/index.ts';

const RULES = new URL('../../rules/', import.meta.url);
const WIND_CHILL = /wind[\s_-]*chill|feels[\s_-]*like|apparent[\s_-]*temperature/i;

// The 40 wind-chill rows of worked-values.json describe skin, which makes heat. A leaf is never colder than the balance of sky and air.
test('no wind chill is exported by the rules', () => {
  expect(Object.keys(rules).length).toBeGreaterThan(10);
  expect(Object.keys(rules).filter((name) => WIND_CHILL.test(name))).toEqual([]);
});

test('no file of the rules computes a wind chill', () => {
  const files = readdirSync(RULES, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.ts'));
  expect(files.length).toBeGreaterThan(10);
  expect(files.filter((file) => WIND_CHILL.test(readFileSync(new URL(file, RULES), 'utf8')))).toEqual([]);
});
