import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type CurveLayout, curveLayout, type PlacedLabel } from '../../../bot/charts/curve-layout.ts';
import { FRAME, HEIGHT, WIDTH } from '../../../bot/charts/look.ts';
import { fahrenheitFrom } from '../../../bot/ground/units.ts';
import { meeting, nightCharts } from './arbitrary-chart.ts';

function labelsOf({ grid, hours, curves, limits, moments }: CurveLayout): PlacedLabel[] {
  return [grid, hours, curves, limits, moments].flatMap((group) => group.map(({ label }) => label));
}

test('no two labels meet, wherever curves and limits run', () => {
  fc.assert(
    fc.property(nightCharts, (chart) => {
      expect(meeting(labelsOf(curveLayout(chart)))).toEqual([]);
    }),
  );
});

test('the name of a limit stands by its own line, with none of the same crop’s others between', () => {
  fc.assert(
    fc.property(nightCharts, (chart) => {
      const [mark, loss] = chart.limits;
      fc.pre(mark !== undefined && loss !== undefined && Math.abs(mark.tempC - loss.tempC) > 0.5);
      const { limits } = curveLayout({ ...chart, limits: [mark, loss].filter((limit) => limit !== undefined) });
      for (const { y, label } of limits) {
        const others = limits.filter((each) => each.y !== y);
        const middle = (label.box.top + label.box.bottom) / 2;
        for (const other of others) {
          expect(other.y > Math.min(y, middle) && other.y < Math.max(y, middle)).toBe(false);
        }
      }
    }),
  );
});

test('every label stands on the paper', () => {
  fc.assert(
    fc.property(nightCharts, (chart) => {
      for (const { box } of labelsOf(curveLayout(chart))) {
        expect(box.left).toBeGreaterThanOrEqual(0);
        expect(box.right).toBeLessThanOrEqual(WIDTH);
        expect(box.top).toBeGreaterThanOrEqual(0);
        expect(box.bottom).toBeLessThanOrEqual(HEIGHT);
      }
    }),
  );
});

test('curves, ranges and limits stay inside the frame', () => {
  fc.assert(
    fc.property(nightCharts, (chart) => {
      const { curves, limits } = curveLayout(chart);
      for (const { x, y } of curves.flatMap(({ points, band }) => [...points, ...band])) {
        expect(x).toBeGreaterThanOrEqual(FRAME.left);
        expect(x).toBeLessThanOrEqual(FRAME.right);
        expect(y).toBeGreaterThanOrEqual(FRAME.top);
        expect(y).toBeLessThanOrEqual(FRAME.bottom);
      }
      for (const { y } of limits) expect(y).toBeLessThanOrEqual(FRAME.bottom);
    }),
  );
});

test('a point stands as high as its temperature, by the scale that the axis tells', () => {
  fc.assert(
    fc.property(nightCharts, (chart) => {
      const { grid, curves, limits } = curveLayout(chart);
      const [low, high] = [grid[0], grid.at(-1)];
      const told = (label: PlacedLabel | undefined) => Number(label?.lines[0]?.replace('−', '-').replace('°', ''));
      const lowTold = told(low?.label);
      const perUnit = ((high?.y ?? 0) - (low?.y ?? 0)) / (told(high?.label) - lowTold);
      const yOf = (tempC: number) =>
        (low?.y ?? 0) + perUnit * ((chart.units === 'us' ? fahrenheitFrom(tempC) : tempC) - lowTold);
      for (const { curve, points } of curves) {
        for (const [index, { y }] of points.entries()) expect(y).toBeCloseTo(yOf(curve.points[index]?.tempC ?? 0), 6);
      }
      for (const { limit, y } of limits) expect(y).toBeCloseTo(yOf(limit.tempC), 6);
    }),
  );
});

test('the range is as wide above the curve as below it', () => {
  fc.assert(
    fc.property(nightCharts, (chart) => {
      const leaf = curveLayout(chart).curves.find(({ band }) => band.length > 0);
      const { points = [], band = [] } = leaf ?? {};
      for (const [index, { y }] of points.entries()) {
        const [upper, lower] = [band[index]?.y ?? 0, band[band.length - 1 - index]?.y ?? 0];
        expect(y - upper).toBeCloseTo(lower - y, 6);
        expect(upper).toBeLessThan(y);
      }
    }),
  );
});

test('labels of times stand in the order of the times', () => {
  fc.assert(
    fc.property(nightCharts, (chart) => {
      const { moments } = curveLayout({ ...chart, moments: chart.moments.toSorted((a, b) => +a.at - +b.at) });
      const middles = moments.map(({ label }) => label.at.x);
      expect(middles).toEqual(middles.toSorted((a, b) => a - b));
    }),
  );
});
