import { describe, expect, test } from 'vitest';
import { type CoverKey, frozenFraction, thawedAt } from '../../../rules/index.ts';
import { type Departures, referenceLows } from '../covers/reference-night.ts';

describe('leaves that froze', () => {
  test.each([
    [0, 0],
    [-1, 0],
    [-2, 0.5],
    [-4, 0.75],
    [-20, 0.85],
  ])('at %d °C hold %d of their water as ice', (leafLowC, share) => {
    expect(frozenFraction(leafLowC)).toBeCloseTo(share, 12);
  });

  // Worked cases of the physics page, section 16: share frozen and time thawed (UTC), ±0.05 and ±20 min.
  test.each<[string, CoverKey[], Departures, number, string]>([
    ['P01 bare, clear and calm', [], {}, 0.85, '14:15'],
    ['P02 bare, overcast with 3 m/s', [], { cloudFraction: 1, windMPerS: 3 }, 0.76, '14:15'],
    ['P03 light fabric on hoops', ['row-cover-light', 'hoops'], {}, 0.84, '13:40'],
    ['P04 heavy fabric laid on', ['row-cover-heavy'], { cloudFraction: 0.5, windMPerS: 2 }, 0.82, '14:00'],
    ['P05 low tunnel', ['low-tunnel'], {}, 0.82, '13:35'],
    ['P07 glass frame', ['cold-frame'], {}, 0.73, '13:25'],
    ['P12 fabric in a high tunnel', ['high-tunnel', 'row-cover-medium', 'hoops'], {}, 0.39, '13:05'],
  ])('%s: frozen and thawed as the reference solution has them', (_case, covers, departures, share, thawed) => {
    const { leafC, run, leafLowIndex } = referenceLows(covers, departures);
    expect(Math.abs(frozenFraction(leafC) - share)).toBeLessThanOrEqual(0.05);
    const lateMs = (thawedAt(run, leafLowIndex)?.getTime() ?? Number.NaN) - Date.parse(`2025-12-02T${thawed}Z`);
    expect(Math.abs(lateMs) / 60_000).toBeLessThanOrEqual(20);
  });

  test('have no time of thawing when they did not freeze', () => {
    const { run, leafLowIndex } = referenceLows(['straw']);
    expect(thawedAt(run, leafLowIndex)).toBeUndefined();
  });

  test('are still frozen when the run ends in the cold', () => {
    const { run, leafLowIndex } = referenceLows([], { lowC: -30 });
    expect(thawedAt(run, leafLowIndex)).toBeUndefined();
  });
});
