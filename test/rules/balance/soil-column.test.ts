import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Link } from '../../../rules/balance/heat-network.ts';
import { heatNode } from '../../../rules/balance/heat-node.ts';
import { SOIL_LAYER_CENTRES_M, SoilColumn, soilStartC } from '../../../rules/balance/soil-column.ts';
import type { Soil } from '../../../rules/index.ts';
import { MOIST_LOAM } from '../night/spec-stacks.ts';

/** Drives a column with a given surface temperature; heat into the ground is counted from the surface. */
function drive(soil: Soil, startC: number, surfaceC: (hour: number) => number, hours: number, stepS = 600) {
  const column = new SoilColumn(
    soil,
    0,
    Array.from({ length: SOIL_LAYER_CENTRES_M.length + 1 }, () => startC),
  );
  const surface = heatNode(0, startC);
  const link: Link = { row: 0, otherRow: undefined, perUnit: Number.NaN, outsideValue: Number.NaN };
  const firstHeat = column.heatJPerM2();
  let gainedJPerM2 = 0;
  for (let s = stepS; s <= hours * 3600; s += stepS) {
    surface.nowC = surfaceC(s / 3600);
    for (let pass = 0; pass < 12; pass++) {
      column.setLink(link, 1, stepS);
      if (!column.follow(surface)) break;
    }
    const intoGround = link.perUnit * (surface.nowC - link.outsideValue);
    column.settle(surface);
    gainedJPerM2 += stepS * (intoGround + column.bottomGainWPerM2);
  }
  return { column, gainedJPerM2, storedJPerM2: column.heatJPerM2() - firstHeat };
}

describe('the ground', () => {
  test('has layers from one to twenty-seven centimetres that end at one metre', () => {
    expect(SOIL_LAYER_CENTRES_M).toHaveLength(12);
    expect(SOIL_LAYER_CENTRES_M[0]).toBeCloseTo(0.005, 12);
    const last = SOIL_LAYER_CENTRES_M.at(-1) ?? 0;
    const beforeLast = SOIL_LAYER_CENTRES_M.at(-2) ?? 0;
    // The last layer is 1.347 times as thick as the one above: both halves make up the distance of their centres.
    expect(last + ((last - beforeLast) * 1.347) / 2.347).toBeCloseTo(1, 3);
  });

  test('follows a daily wave with the damping of the heat equation', () => {
    // Carslaw & Jaeger: at depth z the wave is damped by exp(−z/d) and late by z/d radians, d = √(2κ/ω).
    const { column } = drive(MOIST_LOAM, 5, (hour) => 5 + 4 * Math.sin((2 * Math.PI * hour) / 24), 24 * 6 + 6);
    const dampingM = Math.sqrt((2 * 1.1) / 2.3e6 / ((2 * Math.PI) / 86_400));
    const lag = 0.1 / dampingM;
    const wantedC = 5 + 4 * Math.exp(-lag) * Math.sin(Math.PI / 2 - lag);
    expect(Math.abs(column.tenCmC() - wantedC)).toBeLessThan(0.15);
  });

  test('loses or gains no heat, freezing and thawing as it may', () => {
    const swing = fc.double({ min: -20, max: 20, noNaN: true });
    const fraction = fc.double({ min: 0, max: 0.6, noNaN: true });
    fc.assert(
      fc.property(swing, swing, fc.double({ min: -5, max: 5, noNaN: true }), fraction, (meanC, swingK, startC, ice) => {
        const soil = { ...MOIST_LOAM, freezableFraction: ice };
        const surfaceC = (hour: number) => meanC + swingK * Math.sin(hour);
        const { gainedJPerM2, storedJPerM2 } = drive(soil, startC, surfaceC, 30);
        expect(Math.abs(storedJPerM2 - gainedJPerM2)).toBeLessThan(1);
      }),
    );
  });

  test('holds its temperature near freezing until its water is ice', () => {
    // Neumann's problem: the frost goes down as the square root of time, so after four times the hours twice as deep.
    const frostM = (hours: number) => {
      const { column } = drive({ ...MOIST_LOAM, freezableFraction: 0.4 }, 0.01, () => -6, hours);
      const index = column.temperaturesC().findIndex((soilC) => soilC > -0.5);
      const [aboveC, belowC] = [column.temperaturesC()[index - 1] ?? 0, column.temperaturesC()[index] ?? 0];
      const [aboveM, belowM] = [SOIL_LAYER_CENTRES_M[index - 1] ?? 0, SOIL_LAYER_CENTRES_M[index] ?? 0];
      return aboveM + ((-0.5 - aboveC) / (belowC - aboveC)) * (belowM - aboveM);
    };
    const ratio = frostM(48) / frostM(12);
    expect(ratio).toBeGreaterThan(1.75);
    expect(ratio).toBeLessThan(2.25);
    // Stefan's estimate √(2λΔT t/L), a little less deep with the warmth of soil and ice counted.
    const stefanM = Math.sqrt((2 * 1.1 * 6 * 48 * 3600) / (334e6 * 0.4));
    expect(frostM(48)).toBeGreaterThan(0.75 * stefanM);
    expect(frostM(48)).toBeLessThan(stefanM);
  });

  test('starts at a profile that is even above its first and below its last point', () => {
    const startC = soilStartC([
      { depthM: 0.1, soilC: 6 },
      { depthM: 0.8, soilC: 9 },
    ]);
    expect(startC[0]).toBe(6);
    expect(startC.at(-1)).toBe(9);
    const [middleM, middleC] = [SOIL_LAYER_CENTRES_M[8] ?? 0, startC[8] ?? 0];
    expect(middleC).toBeCloseTo(6 + (3 * (middleM - 0.1)) / 0.7, 10);
  });
});
