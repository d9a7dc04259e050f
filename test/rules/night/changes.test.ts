import { describe, expect, test } from 'vitest';
import { type CoverStack, type NightInput, type NightRun, nightRun, valueAtC } from '../../../rules/index.ts';
import { BARE, DOUBLE_TUNNEL, fabricInHighTunnel, frame, hoops, referenceInput, specLayer } from './spec-stacks.ts';

const DUSK = new Date('2025-12-01T21:17Z');
const DAWN = new Date('2025-12-02T13:08Z');
const MIDNIGHT = new Date('2025-12-02T05:00Z');

function largestGapK(one: NightRun, other: NightRun, fromMs: number): number {
  let worst = 0;
  for (const [i, atMs] of one.timesMs.entries()) {
    if (atMs < fromMs) continue;
    worst = Math.max(worst, Math.abs((one.leafC[i] ?? 0) - valueAtC(other, 'leafC', new Date(atMs))));
  }
  return worst;
}

function withBlanket(stack: CoverStack): CoverStack {
  return { ...stack, blanket: { resistanceM2KPerW: 0.2, heatCapacityJPerM2K: 1500, from: DUSK, to: DAWN } };
}

describe('covers that come and go', () => {
  test('steps end at every change, odd minutes too', () => {
    const input = { ...referenceInput(withBlanket(hoops('PE'))), changes: [{ at: MIDNIGHT, stack: BARE }] };
    const times = nightRun(input).timesMs;
    expect(times).toContain(DUSK.getTime());
    expect(times).toContain(DAWN.getTime());
    expect(times).toContain(MIDNIGHT.getTime());
    for (const [i, atMs] of times.entries()) expect(atMs).toBeGreaterThan(times[i - 1] ?? 0);
  });

  test('a blanket for the night warms the leaf of a film tunnel by what the specification says', () => {
    // Section 13, night additions: blanket +4.8 K on the leaf minimum of a PE tunnel, from 21:30 to 13:30 UTC.
    const low = (input: NightInput) => Math.min(...nightRun(input).leafC.slice(60, 151));
    const gainK = low(referenceInput(withBlanket(hoops('PE')))) - low(referenceInput(hoops('PE')));
    expect(Math.abs(gainK - 4.8)).toBeLessThan(0.3);
  });

  // The film starts dry again, which costs the soil a little warmth.
  test('a change to the same covers in the night is nearly forgotten within two hours', () => {
    const plain = referenceInput(hoops('PE'));
    const changed = { ...plain, changes: [{ at: MIDNIGHT, stack: { ...hoops('PE') } }] };
    const later = MIDNIGHT.getTime() + 2 * 3_600_000;
    expect(largestGapK(nightRun(changed), nightRun(plain), later)).toBeLessThan(0.2);
  });

  test('soil keeps its warmth when a cover is taken off, the leaf does not', () => {
    const run = nightRun({ ...referenceInput(DOUBLE_TUNNEL), changes: [{ at: MIDNIGHT, stack: BARE }] });
    const later = new Date(MIDNIGHT.getTime() + 600_000);
    const fallK = (series: 'leafC' | 'soil10CmC') => valueAtC(run, series, MIDNIGHT) - valueAtC(run, series, later);
    expect(fallK('leafC')).toBeGreaterThan(5);
    expect(Math.abs(fallK('soil10CmC'))).toBeLessThan(0.1);
    expect(run.coverCount[run.timesMs.indexOf(MIDNIGHT.getTime())]).toBe(2);
    expect(run.coverCount.at(-1)).toBe(0);
  });

  test('the last of several changes before the start counts, changes after the end do not', () => {
    const early = (hours: number, stack: CoverStack) => ({ at: new Date(Date.UTC(2025, 11, 1, hours)), stack });
    const input = referenceInput(BARE);
    const run = nightRun({ ...input, changes: [early(8, DOUBLE_TUNNEL), early(12, hoops('PE')), early(60, BARE)] });
    expect(run).toEqual(nightRun(referenceInput(hoops('PE'))));
  });

  test('a night run in two halves is the night run at once', () => {
    const whole = referenceInput({
      ...frame('GL', 'wood'),
      waterMass: { kgPerM2: 20, areaRatio: 0.56, startC: 6 },
    });
    const evening = nightRun({ ...whole, end: MIDNIGHT });
    const morning = nightRun({ ...whole, start: MIDNIGHT }, { from: evening.end });
    const later = MIDNIGHT.getTime() + 2 * 3_600_000;
    expect(largestGapK(morning, nightRun(whole), later)).toBeLessThan(0.05);
  });

  test('the path keeps its own soil, also while no path is needed', () => {
    const inTunnel = fabricInHighTunnel('F30');
    const input = referenceInput(inTunnel);
    const changes = [
      { at: DUSK, stack: { ...inTunnel, layers: inTunnel.layers.slice(0, 1) } },
      { at: MIDNIGHT, stack: inTunnel },
    ];
    const { end } = nightRun({ ...input, changes });
    expect(end.pathSoilC).toHaveLength(end.soilC.length);
    expect(end.pathSoilC?.[0]).not.toBe(end.soilC[0]);
  });

  test('an open vent cools, and counts as shut below a blanket', () => {
    const vent = { areaRatio: 0.1, heightM: 0.1, from: DUSK, to: DAWN };
    const leafC = (stack: CoverStack) => valueAtC(nightRun(referenceInput(stack)), 'leafC', MIDNIGHT);
    const glass = frame('GL', 'wood');
    expect(leafC({ ...glass, vent })).toBeLessThan(leafC(glass) - 0.5);
    expect(leafC({ ...withBlanket(glass), vent })).toBe(leafC(withBlanket(glass)));
  });

  test('a dusting of snow changes nothing, a blanket of it insulates', () => {
    const leafC = (depthM: number) => {
      const snow = { depthM, conductivityWPerMK: 0.1 };
      return valueAtC(nightRun(referenceInput({ ...hoops('PE'), snow })), 'leafC', MIDNIGHT);
    };
    expect(leafC(0.019)).toBe(leafC(0));
    expect(leafC(0.05)).toBeGreaterThan(leafC(0) + 3);
  });
});

describe('input that breaks the contract', () => {
  const input = referenceInput(hoops('PE'));

  test.each<[string, NightInput, string]>([
    ['soil', { ...input, soil: { ...input.soil, albedoFraction: 1.2 } }, 'soil.albedoFraction 1.2 is outside 0…1'],
    ['site', { ...input, site: { ...input.site, skyViewFraction: Number.NaN } }, 'site.skyViewFraction NaN'],
    ['crop', { ...input, canopy: { leafAreaIndex: 0, leafSizeM: 0.05 } }, 'canopy.leafAreaIndex 0'],
    ['hours', { ...input, end: input.start }, 'start is not an instant before end'],
    ['profile', { ...input, soilProfile: [] }, 'soilProfile is empty'],
    [
      'layers',
      {
        ...input,
        stack: { ...input.stack, layers: [specLayer('PE'), specLayer('PE'), specLayer('PE'), specLayer('PE')] },
      },
      'layers.length 4 is outside 0…3',
    ],
    [
      'optics',
      { ...input, stack: { ...input.stack, layers: [specLayer('PE', { longwaveReflectedDryFraction: 0.5 })] } },
      'longwaveReflectedDryFraction 0.5',
    ],
    [
      'changes',
      {
        ...input,
        changes: [
          { at: DAWN, stack: BARE },
          { at: DUSK, stack: BARE },
        ],
      },
      'changes[1].at',
    ],
    [
      'later stack',
      { ...input, changes: [{ at: DUSK, stack: { ...BARE, floorFraction: 0 } }] },
      'changes[0].stack.floorFraction 0',
    ],
  ])('in %s is refused by name, value and limit', (_name, bad, message) => {
    expect(() => nightRun(bad)).toThrow(RangeError);
    expect(() => nightRun(bad)).toThrow(message);
  });

  test('is refused for a step that the model was not tried with', () => {
    expect(() => nightRun(input, { stepMin: 60 })).toThrow('stepMin 60 is outside 1…30');
  });
});
