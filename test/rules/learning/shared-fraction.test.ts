import { expect, test } from 'vitest';
import { isSameStack, sharedFraction } from '../../../rules/index.ts';

const FRAME = { covers: ['cold-frame'], walls: 'wood' } as const;

test('a blanket over the frame shares more with it than another cover does', () => {
  const more = sharedFraction(FRAME, { covers: ['blanket', 'cold-frame'], walls: 'wood' });
  const other = sharedFraction(FRAME, { covers: ['low-tunnel'] });
  expect(more).toBeGreaterThan(other);
  expect(other).toBeGreaterThan(sharedFraction(FRAME, { covers: [] }));
});

test('it is the same both ways', () => {
  const tunnel = { covers: ['low-tunnel', 'row-cover-medium', 'hoops'] } as const;
  expect(sharedFraction(FRAME, tunnel)).toBe(sharedFraction(tunnel, FRAME));
});

test('hoops alone are bare ground', () => {
  expect(sharedFraction({ covers: ['hoops'] }, { covers: [] })).toBe(0.7);
});

test('other walls make another stack', () => {
  expect(isSameStack(FRAME, { ...FRAME })).toBe(true);
  expect(isSameStack(FRAME, { ...FRAME, walls: 'straw-bale' })).toBe(false);
});
