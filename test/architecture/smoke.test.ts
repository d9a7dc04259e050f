import { expect, test } from 'vitest';

test('a', () => {
  expect(new Date(0).getHours()).toBe(12);
});
