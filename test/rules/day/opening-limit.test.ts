import { describe, expect, test } from 'vitest';
import { cropById, hardeningLimit, openingLimit, type Planting } from '../../../rules/index.ts';

function planting(cropId: string, hardeningIndex: number): Planting {
  const crop = cropById(cropId);
  if (crop === undefined) throw new Error(`no crop ${cropId}`);
  return { crop, hardeningIndex };
}

describe('limit for opening', () => {
  test('is 24 °C, common practice, unless a crop asks for less', () => {
    expect(openingLimit([planting('kale', 0)])).toEqual({ limitC: 24, because: 'usual' });
    // R002, garden reference website, read: greens under unvented tunnels wilt above 60 °F on sunny winter days (spinach, Iowa).
    expect(openingLimit([planting('kale', 0), planting('spinach', 0)])).toEqual({ limitC: 15.6, because: 'crop' });
  });

  const usual = { limitC: 24, because: 'usual' } as const;

  test('is lowered for hardened plants that a warm day would soften', () => {
    expect(hardeningLimit(usual, [planting('kale', 1)], 15).because).toBe('hardening');
  });

  test('is left for a short sunny spell between frost nights', () => {
    expect(hardeningLimit(usual, [planting('kale', 1)], 8)).toBe(usual);
  });

  test('is left for plants that have no hardness to lose', () => {
    expect(hardeningLimit(usual, [planting('kale', 0.1), planting('tomato', 0)], 15)).toBe(usual);
  });

  test('is never raised', () => {
    const low = { limitC: 12, because: 'crop' } as const;
    expect(hardeningLimit(low, [planting('kale', 1)], 15)).toBe(low);
  });
});
