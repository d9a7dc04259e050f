import { describe, expect, test } from 'vitest';
import { proppedLight, raisedSide } from '../../../rules/index.ts';

describe('an opening', () => {
  test('of a light is its front slot and two triangles at its sides', () => {
    // 12 cm on a frame of 1.22 m by 2.44 m: 0.12 · 3.66 / 2.9768; case P10 of the physics page rounds it to 0.147.
    expect(proppedLight(0.12, 1.22, 2.44).areaRatio).toBeCloseTo(0.1475, 3);
  });

  test('of a tunnel is the strip below its raised edge', () => {
    expect(raisedSide(0.3, 1.2)).toEqual({ areaRatio: 0.25, heightM: 0.3 });
  });

  test('of a negative or unknown size is refused by name', () => {
    expect(() => proppedLight(-0.1, 1.22, 2.44)).toThrow('propM -0.1');
    expect(() => proppedLight(0.1, 0, 2.44)).toThrow('depthM 0');
    expect(() => raisedSide(Number.NaN, 1.2)).toThrow('raisedM NaN');
  });
});
