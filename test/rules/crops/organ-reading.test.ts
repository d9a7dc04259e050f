import { expect, test } from 'vitest';
import type { CoverKey } from '../../../rules/covers/cover-key.ts';
import { HARDINESS_ROWS } from '../../../rules/crops/hardiness-list.ts';
import type { Thermometer } from '../../../rules/crops/hardiness-row.ts';
import { organReading } from '../../../rules/crops/organ-reading.ts';
import { bedNight } from '../../../rules/night/bed-night.ts';
import { ordinaryNight } from '../../../rules/night/ordinary-night.ts';

test('an outside low stands for a leaf 2 K colder, a tissue reading for itself', () => {
  const row = listed('winterkill-list-2012', 'arugula');
  expect(organReading(row)).toMatchObject({ organC: -7.6, sdK: 1, aliveThere: false });
  expect(organReading({ ...row, thermometer: 'organ' })).toMatchObject({ organC: -5.6, sdK: 0 });
});

test('a plant seen alive gives a bound', () => {
  const row = listed('winterkill-list-2012', 'arugula');
  expect(organReading({ ...row, value: { colderThanC: -10 } })).toMatchObject({ organC: -12, aliveThere: true });
});

// Half a kelvin: the step is one number for row covers of any weight and outside lows from -9 to -13.
test.each<readonly [Thermometer, string, string, readonly CoverKey[]]>([
  ['row-cover', 'colorado-2013', 'chard', ['row-cover-light']],
  ['row-cover', 'virginia-2013', 'spinach', ['row-cover-medium']],
  ['tunnel-and-sheet', 'mountain-log', 'spinach', ['low-tunnel', 'sheet']],
  ['cold-frame', 'common-practice', 'lettuce', ['cold-frame']],
])('a plant under %s in %s (%s) is read as the night model has its leaf', (thermometer, source, crop, covers) => {
  const row = listed(source, crop, thermometer);
  const outsideC = typeof row.value === 'number' ? row.value : row.value.colderThanC;
  const night = bedNight({ ...ordinaryNight(outsideC), bed: { covers } });
  if (night.kind !== 'night') throw new Error('the covers of the source can be laid');
  expect(Math.abs(organReading(row).organC - night.leafLowC)).toBeLessThan(0.6);
});

function listed(source: string, crop: string, thermometer?: Thermometer) {
  const row = HARDINESS_ROWS.find(
    (one) =>
      one.source === source && one.crop === crop && (thermometer === undefined || one.thermometer === thermometer),
  );
  if (row === undefined) throw new Error(`${source} has no row for ${crop}`);
  return row;
}
