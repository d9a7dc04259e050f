import { describe, expect, test } from 'vitest';
import { COVER_KEYS, type CoverKey, commonFrame, coverStack, openable } from '../../../rules/index.ts';

const FRAME = commonFrame(43);
const way = (...keys: CoverKey[]) => openable(keys, FRAME)?.way;

describe('what opens', () => {
  test('is the light of a frame, the side of a low tunnel, the sides of a high one; fabric comes off', () => {
    expect(way('cold-frame', 'row-cover')).toBe('prop-light');
    expect(way('low-tunnel')).toBe('raise-side');
    expect(way('high-tunnel', 'low-tunnel')).toBe('roll-up-sides');
    expect(way('row-cover', 'hoops')).toBe('uncover');
  });

  test('is the cover under a blanket, which is off by day', () => {
    expect(openable(['blanket', 'cold-frame'], FRAME)?.cover).toBe('cold-frame');
  });

  test('is nothing over a bare bed, straw, or under snow', () => {
    expect([way(), way('straw'), way('snow', 'cold-frame'), way('blanket')]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });

  test('leaves a stack that can lie so, whatever the cover', () => {
    const stacks = COVER_KEYS.flatMap((outer) =>
      COVER_KEYS.map((inner) => [outer, inner, 'row-cover', 'hoops'] as const),
    );
    const sound = stacks.filter((keys) => coverStack(keys).kind === 'stack');
    const left = sound.flatMap((keys) => openable(keys, FRAME)?.without ?? []).length;
    expect(left).toBeGreaterThan(20);
    for (const keys of sound) {
      const without = openable(keys, FRAME)?.without ?? [];
      expect([keys, coverStack(without).kind]).toEqual([keys, 'stack']);
    }
  });

  test('opens wider with every size', () => {
    for (const key of ['cold-frame', 'low-tunnel', 'high-tunnel'] as const) {
      const ratios = openable([key], FRAME)?.openings.map(({ areaRatio }) => areaRatio) ?? [];
      expect(ratios.length).toBeGreaterThan(3);
      expect(ratios).toEqual([...ratios].sort((a, b) => a - b));
    }
  });
});
