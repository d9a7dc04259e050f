import fc from 'fast-check';
import { expect, it } from 'vitest';
import { atInstant, gridOver, laidOut, plausible, type Stretch } from '../../../bot/forecast/hour-grid.ts';

const H = 3_600_000;
const START = Date.parse('2026-01-20T12:00:00Z');
const GRID = { firstMs: START, hours: 6 };
const stretch = (fromH: number, toH: number, value: number): Stretch => ({
  fromMs: START + fromH * H,
  toMs: START + toH * H,
  value,
});

it('expands a merged interval to every hour in it, without its end', () => {
  const { columns } = laidOut(GRID, [
    { column: 'screenC', name: 't', stretches: [stretch(0, 2, -1), stretch(2, 5, -2)] },
  ]);
  expect(columns.screenC).toEqual([-1, -1, -2, -2, -2, undefined]);
});

it('leaves hours untold where the layer is silent, so layers may end apart', () => {
  const { columns } = laidOut(GRID, [
    { column: 'screenC', name: 't', stretches: [stretch(0, 6, 1)] },
    { column: 'cloudFraction', name: 'c', stretches: [stretch(1, 2, 0.5), stretch(3, 4, 0.25)] },
  ]);
  expect(columns.cloudFraction).toEqual([undefined, 0.5, undefined, 0.25, undefined, undefined]);
});

it('lets the later of two overlapping intervals count', () => {
  const { columns } = laidOut(GRID, [
    { column: 'screenC', name: 't', stretches: [stretch(0, 3, 1), stretch(1, 2, 9)] },
  ]);
  expect(columns.screenC?.slice(0, 3)).toEqual([1, 9, 1]);
});

it('spreads an amount evenly over the hours of its interval', () => {
  const { columns } = laidOut(GRID, [
    { column: 'precipitationMm', name: 'p', spread: true, stretches: [stretch(0, 6, 3)] },
  ]);
  expect(columns.precipitationMm).toEqual([0.5, 0.5, 0.5, 0.5, 0.5, 0.5]);
});

it('keeps intervals that begin before the first hour', () => {
  const { columns } = laidOut(GRID, [{ column: 'screenC', name: 't', stretches: [stretch(-7, 1, 4)] }]);
  expect(columns.screenC?.[0]).toBe(4);
});

it('has no column for a layer without values', () => {
  expect(laidOut(GRID, [{ column: 'snowDepthM', name: 's', stretches: [] }]).columns).toEqual({});
});

it('drops values that no field can have and says so', () => {
  const { columns, notes } = laidOut(GRID, [
    { column: 'screenC', name: 'temperature', stretches: [stretch(0, 1, 3000), stretch(1, 2, -4)] },
  ]);
  expect(columns.screenC?.slice(0, 2)).toEqual([undefined, -4]);
  expect(notes).toEqual([{ code: 'layer-refused', layer: 'temperature', reason: 'absurd-values' }]);
});

it('moves rounding beyond a limit to the limit, but not a fill value', () => {
  expect(plausible('globalWPerM2', -0.3)).toBe(0);
  expect(plausible('snowDepthM', -0.01)).toBe(0);
  expect(plausible('cloudFraction', 1.01)).toBe(1);
  expect(plausible('snowDepthM', -9999)).toBeUndefined();
  expect(plausible('screenC', -70.1)).toBeUndefined();
  expect(plausible('screenC', 60.1)).toBeUndefined();
  expect(plausible('screenC', Number.NaN)).toBeUndefined();
});

it('counts hours from the phase of a place whose hours are not whole hours of UTC', () => {
  const half = START + H / 2;
  expect(gridOver([atInstant(half, 1), atInstant(half + 3 * H, 1)], half)).toEqual({ firstMs: half, hours: 4 });
});

it('makes no hours of nothing, nor of more than any service sends', () => {
  expect(gridOver([])).toBeUndefined();
  expect(gridOver([stretch(0, 1, 0), stretch(50_000, 50_001, 0)])).toBeUndefined();
});

const stretches = fc.array(
  fc.record({
    from: fc.integer({ min: -10, max: 30 }),
    length: fc.integer({ min: 1, max: 40 }),
    value: fc.double({ min: -60, max: 50, noNaN: true }),
  }),
  { minLength: 1, maxLength: 30 },
);

it('gives every hour a value of an interval that holds it, or none, for any intervals', () => {
  fc.assert(
    fc.property(stretches, (list) => {
      const all = list.map(({ from, length, value }) => stretch(from, from + length, value));
      const grid = gridOver(all);
      if (grid === undefined) throw new Error('no grid');
      const { columns } = laidOut(grid, [{ column: 'screenC', name: 't', stretches: all }]);
      const laid = columns.screenC ?? [];
      expect(laid).toHaveLength(grid.hours);
      for (const [i, value] of laid.entries()) {
        const atMs = grid.firstMs + i * H;
        const holding = all.filter(({ fromMs, toMs }) => fromMs <= atMs && atMs < toMs);
        expect(value).toBe(holding.at(-1)?.value);
      }
    }),
  );
});

it('neither loses nor makes rain, for any intervals side by side', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.integer({ min: 1, max: 12 }), fc.double({ min: 0, max: 20, noNaN: true })), {
        minLength: 1,
        maxLength: 20,
      }),
      (list) => {
        let at = 0;
        const all = list.map(([length, value]) => {
          at += length;
          return stretch(at - length, at, value);
        });
        const { columns } = laidOut({ firstMs: START, hours: at }, [
          { column: 'precipitationMm', name: 'p', spread: true, stretches: all },
        ]);
        const total = (columns.precipitationMm ?? []).reduce<number>((sum, value) => sum + (value ?? 0), 0);
        expect(total).toBeCloseTo(
          list.reduce((sum, [, value]) => sum + value, 0),
          6,
        );
      },
    ),
  );
});
