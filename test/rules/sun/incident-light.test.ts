import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clearSkyGlobalWPerM2, incidentLight, solarPosition } from '../../../rules/index.ts';
import { anyLongitudeDeg, between, gardenLatitudeDeg, thisCentury } from './arbitrary-places.ts';

const anyAzimuthDeg = between(0, 360);

describe('light on a cover', () => {
  test('is all of the light on level ground, split in two, under a flat cover or an arch', () => {
    fc.assert(
      fc.property(thisCentury, gardenLatitudeDeg, anyLongitudeDeg, (at, latitudeDeg, longitudeDeg) => {
        const sun = solarPosition(at, latitudeDeg, longitudeDeg);
        const globalWPerM2 = clearSkyGlobalWPerM2(sun.cosZenith);
        for (const kind of ['flat', 'arch'] as const) {
          const light = incidentLight(globalWPerM2, sun, { kind, tiltDeg: 0, azimuthDeg: 180 });
          expect(light.beamWPerM2 + light.diffuseWPerM2).toBeCloseTo(globalWPerM2, 9);
        }
      }),
    );
  });

  test('hardly changes when a light is tilted by next to nothing', () => {
    fc.assert(
      fc.property(thisCentury, gardenLatitudeDeg, anyAzimuthDeg, (at, latitudeDeg, azimuthDeg) => {
        const sun = solarPosition(at, latitudeDeg, 0);
        fc.pre(sun.cosZenith > 0.06);
        const level = incidentLight(500, sun, { kind: 'flat', tiltDeg: 0, azimuthDeg });
        const tilted = incidentLight(500, sun, { kind: 'tilt', tiltDeg: 1e-6, azimuthDeg });
        expect(tilted.beamWPerM2).toBeCloseTo(level.beamWPerM2, 2);
      }),
    );
  });

  test('gains beam by tilting towards the sun and loses it by tilting away', () => {
    fc.assert(
      fc.property(thisCentury, gardenLatitudeDeg, anyLongitudeDeg, between(1, 30), (at, latitudeDeg, lon, tiltDeg) => {
        const sun = solarPosition(at, latitudeDeg, lon);
        fc.pre(sun.cosZenith > 0.06 && sun.cosZenith < 0.999);
        const sunAzimuthDeg = (Math.atan2(sun.east, sun.north) * 180) / Math.PI;
        const beamFacing = (azimuthDeg: number) =>
          incidentLight(500, sun, { kind: 'tilt', tiltDeg, azimuthDeg }).beamWPerM2;
        const level = incidentLight(500, sun, { kind: 'flat', tiltDeg: 0, azimuthDeg: 0 }).beamWPerM2;
        expect(beamFacing(sunAzimuthDeg)).toBeGreaterThan(level);
        expect(beamFacing(sunAzimuthDeg + 180)).toBeLessThan(level);
      }),
    );
  });

  test('never passes four times the beam on level ground, however low the sun', () => {
    fc.assert(
      fc.property(
        thisCentury,
        gardenLatitudeDeg,
        between(0, 60),
        anyAzimuthDeg,
        (at, latitudeDeg, tiltDeg, azimuthDeg) => {
          const sun = solarPosition(at, latitudeDeg, 0);
          const light = incidentLight(100, sun, { kind: 'tilt', tiltDeg, azimuthDeg });
          const level = incidentLight(100, sun, { kind: 'flat', tiltDeg: 0, azimuthDeg });
          expect(light.beamWPerM2).toBeGreaterThanOrEqual(0);
          expect(light.beamWPerM2).toBeLessThanOrEqual(4 * level.beamWPerM2);
          expect(light.cosIncidence).toBeLessThanOrEqual(1 + 1e-9);
        },
      ),
    );
  });

  test('refuses a light that stands upright', () => {
    const sun = solarPosition(new Date('2025-12-01T17:00:00Z'), 40, -75);
    expect(() => incidentLight(300, sun, { kind: 'tilt', tiltDeg: 90, azimuthDeg: 180 })).toThrow(RangeError);
  });
});
