import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cellFrom, cellOf } from '../../../bot/jobs/cell.ts';
import { gatherAt } from '../../../bot/jobs/gather-time.ts';

const site = fc.record({
  latitudeDeg: fc.double({ min: -90, max: 90, noNaN: true }),
  longitudeDeg: fc.double({ min: -180, max: 180, noNaN: true }),
  heightM: fc.option(fc.double({ min: -400, max: 5000, noNaN: true }), { nil: undefined }),
});
const minute = (at: Date) => (at.getTime() / 60_000) % 60;

test('a garden lies within 0.01° and 25 m of its cell’s middle, and on the globe', () => {
  fc.assert(
    fc.property(site, (garden) => {
      const { place } = cellOf(garden);
      expect(Math.abs(place.latitudeDeg - garden.latitudeDeg)).toBeLessThanOrEqual(0.010_001);
      expect(Math.abs(place.longitudeDeg - garden.longitudeDeg)).toBeLessThanOrEqual(0.010_001);
      expect(Math.abs(place.latitudeDeg)).toBeLessThanOrEqual(90);
      expect(Math.abs(place.longitudeDeg)).toBeLessThanOrEqual(180);
      expect(place.elevationM === undefined).toBe(garden.heightM === undefined);
      expect(Math.abs((place.elevationM ?? 0) - (garden.heightM ?? 0))).toBeLessThanOrEqual(25);
    }),
  );
});

test('a cell is found again by its id, and is its own middle’s cell', () => {
  fc.assert(
    fc.property(site, (garden) => {
      const cell = cellOf(garden);
      expect(cellFrom(cell.id)).toEqual(cell);
      const { latitudeDeg, longitudeDeg, elevationM } = cell.place;
      expect(cellOf({ latitudeDeg, longitudeDeg, heightM: elevationM })).toEqual(cell);
    }),
  );
});

test('what is no id names no cell', () => {
  expect(['', 'a,b,c', '43.1,2', '91,0,'].map(cellFrom)).toEqual([undefined, undefined, undefined, undefined]);
});

test('a forecast is fetched 5 to 34 minutes before it is needed, never within three minutes of the full hour', () => {
  fc.assert(
    fc.property(
      fc.string(),
      fc.date({ min: new Date('2000-01-01'), max: new Date('2040-01-01'), noInvalidDate: true }),
      (id, neededAt) => {
        const at = gatherAt(id, neededAt);
        const beforeMin = (neededAt.getTime() - at.getTime()) / 60_000;
        expect(beforeMin).toBeGreaterThanOrEqual(5);
        expect(beforeMin).toBeLessThanOrEqual(34);
        expect(minute(at)).toBeGreaterThanOrEqual(3);
        expect(minute(at)).toBeLessThan(57);
      },
    ),
  );
});

test('fetches of many cells are spread over the time before they are needed', () => {
  const neededAt = new Date('2026-12-01T18:43:00Z');
  const minutes = Array.from({ length: 600 }, (_, i) => Math.floor(minute(gatherAt(`cell ${i}`, neededAt))));
  const counts = [...new Set(minutes)].map((each) => minutes.filter((other) => other === each).length);
  expect(counts.length).toBeGreaterThan(20);
  expect(Math.max(...counts)).toBeLessThan(60);
});
