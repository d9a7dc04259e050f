import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type RecordChart, recordLayout, recordSvg } from '../../../bot/charts/record-chart.ts';
import { meeting } from './arbitrary-chart.ts';

const tempC = fc.double({ min: -25, max: 12, noNaN: true });
const records: fc.Arbitrary<RecordChart> = fc.record({
  title: fc.constant('Long tunnel'),
  subtitle: fc.constant('11 of 14 nights inside the range'),
  units: fc.constantFrom('us' as const, 'metric' as const),
  nights: fc.array(
    fc.record({
      label: fc.integer({ min: 1, max: 31 }).map(String),
      toldLowC: tempC,
      toldSdK: fc.double({ min: 0.3, max: 4, noNaN: true }),
      measuredLowC: tempC,
    }),
    { minLength: 1, maxLength: 21 },
  ),
  altText: fc.constant(''),
});

test('no two labels meet', () => {
  fc.assert(
    fc.property(records, (chart) => {
      const { grid, dates, names } = recordLayout(chart);
      expect(meeting([...grid.map(({ label }) => label), ...dates, ...names])).toEqual([]);
    }),
  );
});

test('a night counts as inside exactly where its dot lies on its bar', () => {
  fc.assert(
    fc.property(records, (chart) => {
      for (const { inside, measured, top, bottom } of recordLayout(chart).nights) {
        if (Math.abs(measured - top) < 1e-3 || Math.abs(measured - bottom) < 1e-3) continue;
        expect(measured > top && measured < bottom).toBe(inside);
      }
    }),
  );
});

test('nights stand in order, the last one dated', () => {
  fc.assert(
    fc.property(records, (chart) => {
      const { nights, dates } = recordLayout(chart);
      expect(nights.map(({ x }) => x)).toEqual(nights.map(({ x }) => x).toSorted((a, b) => a - b));
      expect(dates.at(-1)?.lines).toEqual([chart.nights.at(-1)?.label]);
    }),
  );
});

test('a night outside is drawn hollow: it differs by more than its colour', () => {
  const night = { label: '3', toldLowC: -4, toldSdK: 1, measuredLowC: 2 };
  const chart = { title: '', subtitle: '', units: 'metric' as const, altText: '' };
  const fillOf = (svg: string) => /<circle[^>]* fill="(#\w+)"/.exec(svg)?.[1];
  expect(fillOf(recordSvg({ ...chart, nights: [night] }))).toBe('#fbf9f4');
  expect(fillOf(recordSvg({ ...chart, nights: [{ ...night, measuredLowC: -4 }] }))).not.toBe('#fbf9f4');
});
