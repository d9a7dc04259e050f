import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type NightRun, nightRun, windowHigh, windowLow } from '../../../rules/index.ts';
import { randomRun } from './random-run.ts';
import {
  BARE,
  DRY_LOAM,
  fabricInHighTunnel,
  fabricInTunnel,
  frame,
  HIGH_TUNNEL,
  hoops,
  laid,
  referenceInput,
  specLayer,
  WINDOW,
} from './spec-stacks.ts';

/** Properties 3 to 5, 10 and 11 of the physics page, section 17. */

function largestGapK(one: Float64Array, other: Float64Array, first: number): number {
  return one.reduce((worst, value, i) => (i < first ? worst : Math.max(worst, Math.abs(value - (other[i] ?? 0)))), 0);
}

function leafMinC(run: NightRun): number {
  return windowLow(run, 'leafC', WINDOW.from, WINDOW.to).valueC;
}

describe('a bed in the simplest nights', () => {
  test('bare under closed cloud and some wind has leaves as warm as the air beside them', () => {
    const run = nightRun(referenceInput(BARE, { cloud: 1, windMPerS: 3 }));
    for (const [i, atMs] of run.timesMs.entries()) {
      if (atMs < WINDOW.from.getTime() || atMs > WINDOW.to.getTime()) continue;
      expect(Math.abs((run.leafC[i] ?? 0) - (run.cropLevelAirC[i] ?? 0))).toBeLessThan(0.3);
    }
  });

  test('bare on a clear night has leaves 1.3 to 2.4 K below the air beside them, as measured on real ones', () => {
    // Leuning & Cremer 1988 (abstract): 1 to 3 K below adjacent air.
    const belowAirK = (windMPerS: number) => {
      const run = nightRun(referenceInput(BARE, { windMPerS }));
      const index = run.timesMs.indexOf(Date.parse('2025-12-02T08:00Z'));
      return (run.cropLevelAirC[index] ?? Number.NaN) - (run.leafC[index] ?? Number.NaN);
    };
    expect(Math.abs(belowAirK(5) - 1.3)).toBeLessThan(0.2);
    expect(Math.abs(belowAirK(0.5) - 2.4)).toBeLessThan(0.3);
  });

  test('under a perfect lid takes the temperature of its soil', () => {
    const lid = specLayer('GL', {
      resistanceM2KPerW: 1000,
      leak0MmPerS: 0,
      leak1MmPerM: 0,
      sunTransmittedFraction: 0,
      sunAbsorbedFraction: 0,
      longwaveReflectedDryFraction: 0,
      longwaveReflectedWetFraction: 0,
    });
    const plain = referenceInput({ ...hoops('PE'), layers: [lid] }, { deepC: 6 });
    const end = new Date(plain.start.getTime() + 17 * 3_600_000);
    const run = nightRun({ ...plain, end });
    const last = run.timesMs.length - 1;
    const surfaceC = run.soilSurfaceC[last] ?? Number.NaN;
    expect(Math.abs(surfaceC - 6)).toBeLessThan(0.6);
    expect(Math.abs((run.airC[last] ?? Number.NaN) - surfaceC)).toBeLessThan(0.25);
    expect(Math.abs((run.leafC[last] ?? Number.NaN) - surfaceC)).toBeLessThan(0.25);
  });

  test.each([
    ['bare', BARE],
    ['under film', hoops('PE')],
    ['in a frame', frame('GL', 'wood')],
    ['under fabric in a tunnel', fabricInTunnel('F30')],
    ['under fabric in a high tunnel', fabricInHighTunnel('F30')],
  ])('%s in a world of one temperature stays as it is', (_name, stack) => {
    const screenC = Array.from({ length: 11 }, () => 4);
    const waterMass = { kgPerM2: 20, areaRatio: 0.6, startC: 4 };
    const run = nightRun(
      referenceInput(
        { ...stack, waterMass },
        {
          screenC,
          dewPointC: 4,
          soil10CmC: 4,
          deepC: 4,
          site: { skyViewFraction: 0, inversionK: 0 },
          first: new Date('2025-12-01T23:00Z'),
        },
      ),
    );
    for (const series of ['leafC', 'airC', 'soilSurfaceC', 'soil10CmC', 'coverC'] as const) {
      for (const valueC of run[series]) expect(Math.abs(valueC - 4)).toBeLessThan(0.02);
    }
  });
});

describe('the time step', () => {
  test.each([
    ['bare', BARE, {}],
    ['film', hoops('PE'), {}],
    ['fabric, wind', hoops('F19'), { windMPerS: 5 }],
    ['fabric laid on, half cloud', laid('F30'), { cloud: 0.5, windMPerS: 2 }],
    ['glass frame', frame('GL', 'wood'), {}],
    ['film on dry soil that freezes', hoops('PE'), { soil: DRY_LOAM, soil10CmC: 1, dewPointC: -15 }],
    ['twin-wall in straw, cloud', frame('PC10', 'straw'), { cloud: 0.9 }],
    ['high tunnel', HIGH_TUNNEL, { windMPerS: 3 }],
    ['fabric in a high tunnel', fabricInHighTunnel('F30'), {}],
  ])('halved, moves the night minimum under %s by less than 0.05 K', (_name, stack, changes) => {
    const input = referenceInput(stack, changes);
    const gapK = leafMinC(nightRun(input)) - leafMinC(nightRun(input, { stepMin: 5 }));
    expect(Math.abs(gapK)).toBeLessThan(0.05);
  });
});

describe('any weather under any covers', () => {
  test('gives temperatures within reach of the weather, never a runaway', () => {
    fc.assert(
      fc.property(randomRun, (input) => {
        const run = nightRun(input);
        const coldestC = Math.min(...input.weather.screenC, ...input.soilProfile.map(({ soilC }) => soilC));
        const warmestC = Math.max(...input.weather.screenC, ...input.soilProfile.map(({ soilC }) => soilC));
        for (const series of ['leafC', 'airC', 'thermometerC', 'soilSurfaceC', 'coverC', 'soil10CmC'] as const) {
          expect(windowLow(run, series, input.start, input.end).valueC).toBeGreaterThan(coldestC - 35);
          expect(windowHigh(run, series, input.start, input.end).valueC).toBeLessThan(warmestC + 80);
        }
      }),
      { numRuns: 150 },
    );
  });

  test('gives the same night again', () => {
    fc.assert(
      fc.property(randomRun, (input) => {
        expect(largestGapK(nightRun(input).leafC, nightRun(input).leafC, 0)).toBe(0);
      }),
      { numRuns: 20 },
    );
  });
});
