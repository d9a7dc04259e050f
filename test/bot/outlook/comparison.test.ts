import { describe, expect, test } from 'vitest';
import {
  comparedFrames,
  comparedStacks,
  madeUpNight,
  ownNight,
  REFERENCE_LOW_C,
  tiltOf,
} from '../../../bot/outlook/comparison.ts';
import { commonFrame, cropById } from '../../../rules/index.ts';
import { evenForecast, gardenBed, PLAIN_GARDEN } from './day-garden.ts';

const NOW = new Date('2026-01-20T15:00:00Z');
const SHORTEST = new Date('2026-12-21T12:00:00Z');
const kale = cropById('kale');
if (kale === undefined) throw new Error('no kale');
const PLANTINGS = [{ crop: kale, hardeningIndex: 1 }];
const reference = madeUpNight(undefined, NOW);
const own = ownNight(PLAIN_GARDEN, evenForecast(NOW, { lowC: -8 }), NOW);
if (own === undefined) throw new Error('the sun sets there');
const BARE = gardenBed('Row', [], ['kale']);
const FRAME = gardenBed('Frame', ['cold-frame'], ['kale']);

describe('stacks side by side', () => {
  test('stand with the warmest leaf of the first night first, on every night that is given', () => {
    const stacks = comparedStacks([['row-cover'], ['quilt', 'low-tunnel'], ['low-tunnel']], BARE, PLANTINGS, [
      own,
      reference,
    ]);
    const lows = stacks.map(({ leafLowsC }) => leafLowsC[0] ?? Number.NaN);
    expect(lows).toEqual([...lows].sort((a, b) => b - a));
    expect(stacks[0]?.keys).toEqual(['quilt', 'low-tunnel']);
    for (const { leafLowsC, verdict, lightFraction } of stacks) {
      expect([leafLowsC.length, verdict?.plantings.length]).toEqual([2, 1]);
      expect(lightFraction > 0 && lightFraction < 1).toBe(true);
    }
  });

  test('leave out what cannot lie so, and judge nothing without crops', () => {
    const stacks = comparedStacks([['cold-frame', 'low-tunnel'], ['low-tunnel']], BARE, [], [reference]);
    expect(stacks.map(({ keys }) => keys)).toEqual([['low-tunnel']]);
    expect(stacks[0]?.verdict).toBeUndefined();
  });

  test('cost no effort where they lie already', () => {
    const [stack] = comparedStacks([['cold-frame']], FRAME, [], [reference]);
    expect(stack?.effort).toBe(0);
  });
});

describe('nights to compare on', () => {
  test('are the garden’s own with its forecast low, the reference, or a stated one', () => {
    expect([own.kind, Math.round(own.lowC)]).toEqual(['own', -8]);
    expect([reference.kind, reference.lowC]).toEqual(['reference', REFERENCE_LOW_C]);
    expect(madeUpNight(PLAIN_GARDEN, NOW, -12)).toMatchObject({ kind: 'stated', lowC: -12 });
  });

  test('are colder at the leaf the lower they go', () => {
    const lows = [-4, -8, -12].map(
      (lowC) => madeUpNight(undefined, NOW, lowC).under(BARE, ['low-tunnel'])?.leafLowC ?? 0,
    );
    expect(lows).toEqual([...lows].sort((a, b) => b - a));
  });
});

describe('frames side by side', () => {
  const frames = comparedFrames(FRAME, PLAIN_GARDEN, SHORTEST, [reference]);

  test('begin with the one as built, which is not told again', () => {
    expect(frames[0]).toMatchObject({ change: { kind: 'as-built' }, lightRatio: 1 });
    const walls = frames.flatMap(({ change }) => (change.kind === 'walls' ? [change.walls] : []));
    expect(walls).not.toContain('wood');
  });

  test('catch more of the winter sun the steeper the light, when it faces the sun', () => {
    const ratios = frames.flatMap(({ change, lightRatio }) => (change.kind === 'tilt' ? [lightRatio] : []));
    expect(ratios).toHaveLength(3);
    expect([1, ...ratios]).toEqual([1, ...ratios].sort((a, b) => a - b));
  });

  test('lose by a steeper light that faces away', () => {
    const frame = { ...commonFrame(43), facingDeg: 0 };
    const away = comparedFrames({ ...FRAME, frame }, PLAIN_GARDEN, SHORTEST, [reference]);
    for (const { change, lightRatio } of away) if (change.kind === 'tilt') expect(lightRatio).toBeLessThan(1);
  });

  test('are as steep as told', () => {
    for (const { change, frame } of frames)
      if (change.kind === 'tilt') expect(tiltOf(frame)).toBeCloseTo(change.tiltDeg, 6);
  });

  test('gain most by a quilt on the light, which is not offered twice', () => {
    const quilt = frames.find(({ change }) => change.kind === 'quilt');
    const best = Math.max(...frames.map(({ leafLowsC }) => leafLowsC[0] ?? Number.NaN));
    expect(quilt?.leafLowsC[0]).toBe(best);
    const quilted = comparedFrames({ ...FRAME, covers: ['quilt', 'cold-frame'] }, PLAIN_GARDEN, SHORTEST, [reference]);
    expect(quilted.some(({ change }) => change.kind === 'quilt')).toBe(false);
  });
});
