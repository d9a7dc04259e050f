import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { answerCount, withAnswers } from './answers.ts';

const README = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

test('the README shows at least one answer, and each line of it as the program gives it', () => {
  expect(answerCount(README)).toBeGreaterThan(0);
  expect(withAnswers(README)).toBe(README);
});

test('an answer that has changed is noticed', () => {
  const stale = README.replace(/(> will my spinach[^\n]*\n\n {4})[^\n]+/, '$1Spinach: something else.');
  expect(stale).not.toBe(README);
  expect(withAnswers(stale)).toBe(README);
});

test('the README fits the ten minutes that a newcomer gives it', () => {
  expect(README.length).toBeLessThanOrEqual(10_000);
});
