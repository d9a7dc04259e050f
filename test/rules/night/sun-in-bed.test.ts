import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type CoverStack,
  clearSkyGlobalWPerM2,
  diffuseFraction,
  type EnergyLedger,
  nightRun,
  solarPosition,
} from '../../../rules/index.ts';
import { randomRun } from './random-run.ts';
import { BARE, frame, hoops, referenceInput } from './spec-stacks.ts';

const NOON = new Date('2025-12-01T17:00Z');
const SUN = solarPosition(NOON, 40, -75);
const GLOBAL = clearSkyGlobalWPerM2(SUN.cosZenith);
const DIFFUSE = GLOBAL * diffuseFraction(GLOBAL, SUN.cosZenith, SUN.eccentricity);
/** Absorbed by leaves of area 1 and by soil with albedo 0.15, of what reaches the crop. */
const KEPT = 0.78 * (1 - Math.exp(-0.6)) + 0.85 * Math.exp(-0.6);

function ledgers(stack: CoverStack): EnergyLedger[] {
  const found: EnergyLedger[] = [];
  nightRun(referenceInput(stack), { onStep: (ledger) => found.push(ledger) });
  return found;
}

function noonSunWPerM2(stack: CoverStack): number {
  return ledgers(stack).find(({ atMs }) => atMs === NOON.getTime())?.sunWPerM2 ?? Number.NaN;
}

describe('the sun in a bed', () => {
  test('falls on a bare bed as on level ground', () => {
    expect(noonSunWPerM2(BARE)).toBeCloseTo(KEPT * GLOBAL, 6);
  });

  test('comes through fabric scattered, each part by its own share, and warms the fabric a little', () => {
    const through = 0.85 * (0.97 * (GLOBAL - DIFFUSE) + 0.92 * DIFFUSE);
    expect(noonSunWPerM2(hoops('F19'))).toBeCloseTo(0.02 * GLOBAL + KEPT * through, 6);
  });

  test('comes through a tilted light by its angle, and a tenth stays in the walls', () => {
    const tilt = (4.8 * Math.PI) / 180;
    const cosIncidence = Math.cos(tilt) * SUN.cosZenith - Math.sin(tilt) * SUN.north;
    const beam = ((GLOBAL - DIFFUSE) * cosIncidence) / (SUN.cosZenith * Math.cos(tilt));
    const through = 0.84 * ((1 - 0.1 * (1 / cosIncidence - 1)) * beam + 0.92 * DIFFUSE);
    const inside = 0.1 * through + 0.9 * KEPT * through;
    expect(noonSunWPerM2(frame('GL', 'wood'))).toBeCloseTo(0.08 * (beam + DIFFUSE) + inside, 6);
  });

  test('is shut out by a blanket, and dimmed by snow', () => {
    const span = { from: new Date('2025-12-01T12:00Z'), to: new Date('2025-12-02T21:00Z') };
    const blanket = { resistanceM2KPerW: 0.2, heatCapacityJPerM2K: 0, ...span };
    const plain = hoops('PE');
    expect(noonSunWPerM2({ ...plain, blanket })).toBe(0);
    const snow = { depthM: 0.05, conductivityWPerMK: 0.1 };
    const absorbed = 0.04 * GLOBAL;
    const dimmed = noonSunWPerM2({ ...plain, snow }) - absorbed;
    expect(dimmed).toBeCloseTo((noonSunWPerM2(plain) - absorbed) / Math.E, 6);
  });

  test('never gives a negative warmth, nor more than a tilted light may catch of a low sun: four times level ground', () => {
    fc.assert(
      fc.property(randomRun, (input) => {
        nightRun(input, {
          onStep: ({ atMs, sunWPerM2 }) => {
            const sun = solarPosition(new Date(atMs), input.site.latitudeDeg, input.site.longitudeDeg);
            const most = clearSkyGlobalWPerM2(sun.cosZenith);
            expect(sunWPerM2).toBeGreaterThanOrEqual(0);
            expect(sunWPerM2).toBeLessThanOrEqual(most * 4 + 1e-9);
          },
        });
      }),
      { numRuns: 25 },
    );
  });
});
