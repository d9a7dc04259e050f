import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MATERIALS } from '../../../rules/covers/material-table.ts';
import {
  COVER_KEYS,
  type CoverKey,
  commonFrame,
  coverStack,
  orderProblem,
  type SoundStack,
  type StackOptions,
} from '../../../rules/index.ts';

const NIGHT_COVER = { from: new Date('2025-12-01T20:00Z'), to: new Date('2025-12-02T13:00Z') };
const anySoundOrder = fc
  .array(fc.constantFrom(...COVER_KEYS), { maxLength: 6 })
  .filter((keys) => orderProblem(keys) === undefined);

function sound(keys: readonly CoverKey[], options: StackOptions = {}): SoundStack {
  const stack = coverStack(keys, options);
  if (stack.kind === 'unsound') throw new Error(stack.problem);
  return stack;
}

describe('a stack of covers', () => {
  test('of none is a bare bed at crop height', () => {
    const { night, day, notes } = sound([]);
    expect(night).toEqual({
      layers: [],
      geometry: { kind: 'flat', heightM: 0.15, tiltDeg: 0, azimuthDeg: 0 },
      floorFraction: 1,
    });
    expect(day).toBe(night);
    expect(notes).toEqual([]);
  });

  test('that cannot be is refused, not guessed', () => {
    expect(coverStack(['blanket', 'high-tunnel']).kind).toBe('unsound');
  });

  test('fabric lies on the leaves unless hoops are named inside it', () => {
    expect(sound(['row-cover-medium']).night.layers[0]).toMatchObject({
      areaRatio: 1.1,
      spaceM: 0.1,
      contactWPerM2K: 4,
      leak2MmSPerM2: 0.8,
    });
    expect(sound(['row-cover-medium']).touchesLeaves).toBe(true);
    expect(sound(['row-cover-medium', 'hoops']).night.layers[0]).toMatchObject({
      areaRatio: 1.4,
      spaceM: 0.4,
      contactWPerM2K: 0,
      leak2MmSPerM2: 1.2,
    });
    expect(sound(['row-cover-medium', 'hoops']).touchesLeaves).toBe(false);
  });

  test('what insulates does not chill the leaves that it touches', () => {
    expect(sound(['tarp']).touchesLeaves).toBe(true);
    expect(sound(['quilt']).touchesLeaves).toBe(false);
    expect(sound(['straw']).touchesLeaves).toBe(false);
  });

  test('covers that touch are one layer, covers on hoops of their own are two', () => {
    expect(sound(['row-cover', 'row-cover', 'hoops']).night.layers).toHaveLength(1);
    expect(sound(['row-cover', 'hoops', 'row-cover', 'hoops']).night.layers).toHaveLength(2);
    expect(sound(['row-cover', 'straw']).night.layers).toHaveLength(1);
    expect(sound(['row-cover', 'hoops', 'straw']).night.layers).toHaveLength(2);
    expect(sound(['row-cover', 'low-tunnel']).night.layers).toHaveLength(1);
  });

  test('hoops of a low tunnel are its own, and hoops under nothing carry nothing', () => {
    expect(sound(['low-tunnel', 'hoops']).night).toEqual(sound(['low-tunnel']).night);
    expect(sound(['cold-frame', 'hoops']).notes).toContain('hoops-bare');
    expect(sound(['hoops']).night.layers).toEqual([]);
  });

  test('a blanket over a tunnel lies there for the night only; the film stays as it is', () => {
    const { night, day, takenOffByDay } = sound(['blanket', 'low-tunnel'], { nightCover: NIGHT_COVER });
    expect(night.blanket).toEqual({ resistanceM2KPerW: 0.2, heatCapacityJPerM2K: 1500, ...NIGHT_COVER });
    expect(night.layers).toEqual(sound(['low-tunnel']).night.layers);
    expect(day).toBe(night);
    expect(takenOffByDay).toEqual(['blanket']);
  });

  test('a blanket alone, inside a tunnel or over fabric is a layer that is gone by day', () => {
    expect(sound(['blanket']).day.layers).toEqual([]);
    expect(sound(['low-tunnel', 'blanket']).day).toEqual(sound(['low-tunnel']).night);
    expect(sound(['blanket', 'row-cover', 'hoops']).day.layers).toEqual(sound(['row-cover', 'hoops']).night.layers);
    expect(sound(['blanket', 'row-cover', 'hoops']).night.layers[0]?.longwaveTransmittedDryFraction).toBe(0);
  });

  test('what passes light, straw and snow stay by day', () => {
    for (const keys of [
      ['row-cover', 'hoops'],
      ['low-tunnel', 'row-cover'],
      ['straw'],
      ['snow', 'blanket', 'low-tunnel'],
    ] as CoverKey[][]) {
      const { night, day, takenOffByDay } = sound(keys);
      expect(day).toBe(night);
      expect(takenOffByDay).toEqual([]);
    }
  });

  test('two blankets and quilts on a tunnel add up', () => {
    expect(sound(['quilt', 'blanket', 'low-tunnel']).night.blanket).toMatchObject({
      resistanceM2KPerW: expect.closeTo(0.6),
      heatCapacityJPerM2K: 4500,
    });
  });

  test('a frame has walls, a tilted light and the glazing that was named', () => {
    const { night } = sound(['cold-frame-twin-wall'], {
      frame: { ...commonFrame(50), walls: 'straw-bale', twinWallMm: 10 },
    });
    expect(night.walls?.resistanceM2KPerW).toBe(6);
    expect(night.geometry).toMatchObject({ kind: 'tilt', azimuthDeg: 180 });
    expect(night.layers[0]?.resistanceM2KPerW).toBe(MATERIALS['twin-wall-10'].skin.resistanceM2KPerW);
    expect(sound(['cold-frame-twin-wall']).night.layers[0]?.resistanceM2KPerW).toBe(
      MATERIALS['twin-wall-4'].skin.resistanceM2KPerW,
    );
  });

  test('a frame inside a high tunnel has no wall to the outside, but more area to lose through', () => {
    const { night } = sound(['high-tunnel', 'cold-frame']);
    expect(night.walls).toBeUndefined();
    expect(night.layers[1]?.areaRatio).toBeGreaterThan(1);
  });

  test('beds take six tenths of a high tunnel when something lies over them', () => {
    expect(sound(['high-tunnel', 'row-cover', 'hoops']).night.floorFraction).toBe(0.6);
    expect(sound(['high-tunnel']).night.floorFraction).toBe(1);
  });

  test('two skins are two layers alone, and one with air in it over inner covers', () => {
    expect(sound(['high-tunnel-double']).night.layers).toHaveLength(2);
    const [outer] = sound(['high-tunnel-double', 'row-cover']).night.layers;
    expect(outer?.resistanceM2KPerW).toBeCloseTo(0.134, 12);
  });

  test('snow lies on top, or on the crop where nothing else does; a dusting counts for nothing', () => {
    expect(sound(['snow', 'low-tunnel'], { snowDepthM: 0.1 }).night.snow).toEqual({
      depthM: 0.1,
      conductivityWPerMK: 0.2,
    });
    expect(sound(['snow'], { snowDepthM: 0.1, snowIsFresh: true }).night.layers[0]?.resistanceM2KPerW).toBeCloseTo(
      1,
      12,
    );
    expect(sound(['snow', 'low-tunnel'], { snowDepthM: 0.01 }).night.snow).toBeUndefined();
    expect(sound(['snow', 'hoops'], { snowDepthM: 0.1 }).night.layers).toHaveLength(1);
  });

  test('jugs count under cover and not in the open', () => {
    expect(sound(['low-tunnel', 'jugs'], { waterKgPerM2: 40, waterStartC: 8 }).night.waterMass).toEqual({
      kgPerM2: 40,
      areaRatio: expect.closeTo(1.12),
      startC: 8,
    });
    expect(sound(['jugs']).night.waterMass).toBeUndefined();
    expect(sound(['jugs']).notes).toEqual(['jugs-in-the-open']);
  });

  test('what had to be assumed is said', () => {
    expect(sound(['snow', 'cold-frame', 'row-cover', 'leaves', 'jugs']).notes).toEqual([
      'row-cover-weight-assumed',
      'leaves-as-straw',
      'frame-assumed',
      'snow-depth-assumed',
      'water-assumed',
    ]);
  });

  test('an unnamed weight of row cover is reckoned as the medium one', () => {
    expect(sound(['row-cover', 'hoops']).night).toEqual(sound(['row-cover-medium', 'hoops']).night);
  });

  test('more layers than three are counted as touching, and that is said', () => {
    const { night, notes } = sound(['high-tunnel', 'low-tunnel', 'row-cover', 'hoops', 'straw']);
    expect(night.layers).toHaveLength(3);
    expect(notes).toContain('inner-covers-as-touching');
    expect(sound(['high-tunnel', 'low-tunnel', 'low-tunnel', 'straw']).night.layers).toHaveLength(3);
  });

  test('of any sound order has at most three layers, each within what the energy balance takes', () => {
    fc.assert(
      fc.property(anySoundOrder, (keys) => {
        const { night, day, sunTransmittedFraction } = sound(keys);
        for (const { layers, floorFraction } of [night, day]) {
          expect(layers.length).toBeLessThanOrEqual(3);
          expect(floorFraction === 1 || layers.length >= 2).toBe(true);
          for (const layer of layers) {
            expect(layer.longwaveTransmittedDryFraction + layer.longwaveReflectedDryFraction).toBeLessThanOrEqual(1);
            expect(layer.areaRatio).toBeGreaterThanOrEqual(1);
            expect(layer.spaceM).toBeGreaterThan(0);
            expect(layer.resistanceM2KPerW).toBeGreaterThanOrEqual(0.002);
          }
        }
        expect(sunTransmittedFraction).toBeGreaterThanOrEqual(0);
        expect(sunTransmittedFraction).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('out-of-range snow and water are refused by name', () => {
    expect(() => coverStack(['snow'], { snowDepthM: -1 })).toThrow('snowDepthM -1 is outside 0…10');
    expect(() => coverStack(['jugs'], { waterKgPerM2: Number.NaN })).toThrow('waterKgPerM2 NaN is outside 0…200');
  });
});
