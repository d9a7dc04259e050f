import { expect, test } from 'vitest';
import { cropKinds } from '../../../rules/crops/crop-kinds.ts';
import { CROPS } from '../../../rules/crops/crops.ts';

test('winter leeks stand more than autumn leeks, green chard more than coloured', () => {
  const words = (id: 'leek' | 'chard') => cropKinds(id).map(({ words }) => words);
  expect(words('leek')).toEqual(['autumn types', 'winter types']);
  expect(words('chard')).toEqual(['multi-coloured type', 'green types hardier']);
});

test('kinds stand the tenderest first, and each has an outside low', () => {
  for (const { id } of CROPS) {
    const lows = cropKinds(id).map(({ outsideC }) => outsideC);
    expect(lows).toEqual(lows.toSorted((one, other) => other - one));
    expect(lows.every(Number.isFinite)).toBe(true);
  }
});

test('a crop whose kinds no source tells apart has none', () => {
  expect(cropKinds('tomato')).toEqual([]);
});
