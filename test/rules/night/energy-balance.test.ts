import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type EnergyLedger, type NightInput, nightRun } from '../../../rules/index.ts';
import { randomRun } from './random-run.ts';
import { BARE, DOUBLE_TUNNEL, DRY_LOAM, fabricInHighTunnel, frame, hoops, referenceInput } from './spec-stacks.ts';

/** Fluxes are of the order of 100 W m⁻²; ten digits of that, and more for the heat that freezing soil holds. */
const ROUNDING_W_PER_M2 = 1e-6;

function lostWPerM2(ledger: EnergyLedger): number {
  const { longwaveWPerM2, outsideAirWPerM2, vapourWPerM2, sunWPerM2, deepSoilWPerM2, storedWPerM2 } = ledger;
  return longwaveWPerM2 + outsideAirWPerM2 + vapourWPerM2 + sunWPerM2 + deepSoilWPerM2 - storedWPerM2;
}

function largestLossWPerM2(input: NightInput): { steps: number; worst: number } {
  let steps = 0;
  let worst = 0;
  nightRun(input, {
    onStep: (ledger) => {
      steps += 1;
      worst = Math.max(worst, Math.abs(lostWPerM2(ledger)));
    },
  });
  return { steps, worst };
}

describe('the energy of a bed', () => {
  test.each([
    ['bare', referenceInput(BARE)],
    ['under film', referenceInput(hoops('PE'))],
    ['with walls, jugs that freeze and a blanket', freezingFrame()],
    ['with a path beside fabric', referenceInput(fabricInHighTunnel('F30'), { cloud: 0.7, windMPerS: 4 })],
    [
      'on freezing soil',
      referenceInput(DOUBLE_TUNNEL, { soil10CmC: -0.3, soil: { ...DRY_LOAM, freezableFraction: 0.3 } }),
    ],
  ])('%s is stored or crosses its outside, to rounding, every step', (_name, input) => {
    const { steps, worst } = largestLossWPerM2(input);
    expect(steps).toBeGreaterThanOrEqual(198);
    expect(worst).toBeLessThan(ROUNDING_W_PER_M2);
  });

  test('is kept in any weather under any covers', () => {
    fc.assert(
      fc.property(randomRun, (input) => {
        expect(largestLossWPerM2(input).worst).toBeLessThan(ROUNDING_W_PER_M2);
      }),
      { numRuns: 60 },
    );
  });
});

function freezingFrame(): NightInput {
  const plain = referenceInput(frame('GL', 'wood'), { soil10CmC: 0.5 });
  const blanket = {
    resistanceM2KPerW: 0.4,
    heatCapacityJPerM2K: 3000,
    from: new Date('2025-12-01T21:33Z'),
    to: new Date('2025-12-02T06:10Z'),
  };
  return { ...plain, stack: { ...plain.stack, blanket, waterMass: { kgPerM2: 20, areaRatio: 0.6, startC: 0.2 } } };
}
