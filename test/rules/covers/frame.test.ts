import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { commonFrame, frameGeometry, frameWalls, innerFrameAreaRatio, WALL_KEYS, WALLS } from '../../../rules/index.ts';

const anyFrame = fc.record({
  walls: fc.constantFrom(...WALL_KEYS),
  depthM: fc.double({ min: 0.3, max: 3, noNaN: true }),
  lengthM: fc.double({ min: 0.3, max: 10, noNaN: true }),
  frontM: fc.double({ min: 0.1, max: 0.5, noNaN: true }),
  backM: fc.double({ min: 0.5, max: 1, noNaN: true }),
  facingDeg: fc.double({ min: 0, max: 359, noNaN: true }),
});

describe('a cold frame', () => {
  test('the common one, 4 ft deep, 12 in behind and 8 in before, tilts 4.8° and has walls of 0.63 of its floor', () => {
    const frame = commonFrame(40);
    expect(frameGeometry(frame).tiltDeg).toBeCloseTo(4.8, 1);
    expect(frameGeometry(frame).heightM).toBeCloseTo(0.25, 2);
    expect(frameWalls(frame).areaRatio).toBeCloseTo(0.63, 1);
  });

  test('faces the equator unless told otherwise', () => {
    expect(commonFrame(45).facingDeg).toBe(180);
    expect(commonFrame(-38).facingDeg).toBe(0);
  });

  test('walls hold heat in the order straw bale, log, wood, concrete, metal, each within its range', () => {
    const byResistance = WALL_KEYS.toSorted(
      (one, other) => WALLS[other].resistanceM2KPerW - WALLS[one].resistanceM2KPerW,
    );
    expect(byResistance).toEqual(['straw-bale', 'log', 'wood', 'concrete', 'metal']);
    for (const { resistanceM2KPerW, resistanceRangeM2KPerW } of Object.values(WALLS)) {
      expect(resistanceM2KPerW).toBeGreaterThanOrEqual(resistanceRangeM2KPerW[0]);
      expect(resistanceM2KPerW).toBeLessThanOrEqual(resistanceRangeM2KPerW[1]);
    }
  });

  test('of any size has a light of less than 72° and walls that count for at most their whole area inside a tunnel', () => {
    fc.assert(
      fc.property(anyFrame, (frame) => {
        const { areaRatio } = frameWalls(frame);
        expect(frameGeometry(frame).tiltDeg).toBeGreaterThanOrEqual(0);
        expect(frameGeometry(frame).tiltDeg).toBeLessThan(72);
        expect(innerFrameAreaRatio(frame)).toBeGreaterThan(1);
        expect(innerFrameAreaRatio(frame)).toBeLessThanOrEqual(1 + areaRatio);
      }),
    );
  });

  test('of no size, or higher in front, is refused by name', () => {
    expect(() => frameGeometry({ ...commonFrame(40), depthM: 0 })).toThrow('depthM 0 is outside 0…30 m');
    expect(() => frameWalls({ ...commonFrame(40), frontM: Number.NaN })).toThrow('frontM NaN');
    expect(() => frameWalls({ ...commonFrame(40), frontM: 0.4 })).toThrow('frontM 0.4 is above backM 0.305');
  });
});
