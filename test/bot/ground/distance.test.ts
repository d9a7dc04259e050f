import fc from 'fast-check';
import { expect, test } from 'vitest';
import { distanceKm } from '../../../bot/ground/distance.ts';

const point = fc.record({
  latitudeDeg: fc.double({ min: -90, max: 90, noNaN: true }),
  longitudeDeg: fc.double({ min: -180, max: 180, noNaN: true }),
});

// A degree of a great circle on a sphere of the mean radius is π/180 · 6371.0088 km = 111.195 km (geometry).
test.each([
  [{ latitudeDeg: 0, longitudeDeg: 0 }, { latitudeDeg: 0, longitudeDeg: 1 }, 111.195],
  [{ latitudeDeg: 60, longitudeDeg: 179.5 }, { latitudeDeg: 60, longitudeDeg: -179.5 }, 55.6],
  [{ latitudeDeg: -43, longitudeDeg: 10 }, { latitudeDeg: 47, longitudeDeg: 10 }, 90 * 111.195],
])('%o and %o lie %d km apart', (one, other, km) => {
  expect(distanceKm(one, other)).toBeCloseTo(km, 1);
});

test('the distance is the same both ways, never negative and at most half round the earth', () => {
  fc.assert(
    fc.property(point, point, (one, other) => {
      const km = distanceKm(one, other);
      expect(km).toBeGreaterThanOrEqual(0);
      expect(km).toBeLessThanOrEqual(180 * 111.1951);
      expect(distanceKm(other, one)).toBeCloseTo(km, 6);
    }),
  );
});
