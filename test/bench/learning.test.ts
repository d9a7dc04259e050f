import { describe, expect, test } from 'vitest';
import { emptyTally, liveGarden } from './learning/simulation.ts';
import { AS_PUBLISHED, KINDS } from './learning.ts';

const GARDENS = 36;
const NIGHTS = 30;

/** A small part of the study that `npm run bench -- learning` makes in full; so few gardens come out worse than five hundred. */
describe('in invented gardens that differ as published gains do', () => {
  const tally = emptyTally();
  for (let garden = 0; garden < GARDENS; garden += 1) {
    const kind = KINDS[garden % KINDS.length];
    if (kind !== undefined) liveGarden(AS_PUBLISHED, kind, 1 + garden, NIGHTS, tally);
  }

  test.each(['givenWeather', 'givenOutside', 'fromForecast'] as const)(
    'ten readings take a fifth of the error: %s',
    (asked) => {
      const { bookK2, tenK2 } = tally[asked];
      expect(Math.sqrt(tenK2 / bookK2)).toBeLessThan(0.8);
    },
  );

  test('the range holds 75 to 85 of a hundred nights, at the thermometer and at the leaf', () => {
    for (const inside of [tally.learnedInside, tally.leafInside]) {
      expect(inside / tally.fromForecast.nights).toBeGreaterThan(0.75);
      expect(inside / tally.fromForecast.nights).toBeLessThan(0.85);
    }
  });

  test('the range told becomes narrower than that of the book', () => {
    expect(tally.learnedSdK).toBeLessThan(0.9 * tally.bookSdK);
  });
});
