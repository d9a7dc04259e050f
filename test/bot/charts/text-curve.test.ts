import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { CurveChart } from '../../../bot/charts/curve-chart.ts';
import { textCurve } from '../../../bot/charts/text-curve.ts';
import { nightCharts } from './arbitrary-chart.ts';

const hour = (h: number) => new Date(Date.UTC(2026, 0, 20, 17 + h));
const FALLING: CurveChart = {
  title: 'Long tunnel, Tue 20 Jan',
  subtitle: '',
  units: 'metric',
  timeZone: 'UTC',
  from: hour(0),
  to: hour(8),
  curves: [{ label: 'leaf', role: 'main', points: [0, 4, 8].map((h) => ({ at: hour(h), tempC: -h })) }],
  limits: [{ label: 'kale dies', tempC: -12, weight: 'loss' }],
  moments: [{ label: 'sunset', at: hour(0) }],
  altText: '',
};

test('a falling night falls from the upper left to the right, its limit below', () => {
  expect(textCurve(FALLING, { columns: 16, rows: 7 })).toEqual([
    'Long tunnel, Tue 20 Jan',
    '    0° |**',
    '       |  ****',
    '       |      ****',
    '       |          ****',
    '       |              **',
    '       |',
    '  −12° |================',
    '        18:00 21:00 0:00',
    '  * leaf',
    '  = kale dies −12°',
    '  sunset 17:00',
  ]);
});

test('no line is wider than a narrow terminal', () => {
  fc.assert(
    fc.property(nightCharts, (chart) => {
      for (const line of textCurve(chart)) expect([...line].length).toBeLessThanOrEqual(80);
    }),
  );
});

test('the leaf is seen in every column', () => {
  fc.assert(
    fc.property(nightCharts, (chart) => {
      const rows = textCurve(chart, { columns: 40, rows: 9 }).slice(1, 10);
      for (let column = 0; column < 39; column += 1) {
        expect(rows.some((row) => [...row][8 + column] === '*')).toBe(true);
      }
    }),
  );
});
