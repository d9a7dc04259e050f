import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nightRun, pickTime, valueAtC } from '../../../rules/index.ts';
import { arbitraryFacts, DAY_STACKS, type PlainDay, plainDay, shutInput } from './arbitrary-day.ts';

function picked(plain: PlainDay, keys: (typeof DAY_STACKS)[number] | readonly []) {
  const run = nightRun(shutInput(plain, keys));
  const { sunsetBefore, sunrise, sunset } = plain.day;
  return { run, pick: pickTime({ run, nightFrom: sunsetBefore, sunrise, sunset }) };
}

const anyStack = fc.constantFrom(...DAY_STACKS, []);
const RUNS = { numRuns: 60 };
const facts = { date: '2026-01-20', latitudeDeg: 43, rangeK: 10, cloudFraction: 0, windMPerS: 1, soilC: 3 };

describe('pick time', () => {
  test('lies in daylight, and ends when the leaves freeze again', () => {
    fc.assert(
      fc.property(arbitraryFacts, anyStack, (arbitrary, keys) => {
        const plain = plainDay(arbitrary);
        const { pick } = picked(plain, keys);
        if (pick.kind !== 'thawed') return;
        const { sunrise, sunset } = plain.day;
        const until = pick.until ?? sunset;
        const order = [sunrise, pick.at, until, sunset].map((at) => at.getTime());
        expect(order).toEqual([...order].sort((a, b) => a - b));
      }),
      RUNS,
    );
  });

  test('comes when the leaves have been warm for an hour', () => {
    fc.assert(
      fc.property(arbitraryFacts, anyStack, (arbitrary, keys) => {
        const plain = plainDay(arbitrary);
        const { run, pick } = picked(plain, keys);
        if (pick.kind !== 'thawed' || pick.at <= plain.day.sunrise) return;
        const minutes = [0, 20, 40, 60].map((before) => new Date(pick.at.getTime() - before * 60_000));
        // Between two steps of ten minutes the line may dip a little below.
        for (const at of minutes) expect(valueAtC(run, 'leafC', at)).toBeGreaterThan(0.9);
      }),
      RUNS,
    );
  });

  test('any time will do after a night without frost', () => {
    expect(picked(plainDay({ ...facts, lowC: 5 }), ['cold-frame']).pick).toEqual({ kind: 'not-frozen' });
  });

  test('a sunny frost day has its hours', () => {
    const { pick } = picked(plainDay({ ...facts, lowC: -8 }), ['cold-frame']);
    expect(pick.kind).toBe('thawed');
  });

  test('is not put off by an evening that is colder than the night before', () => {
    const plain = plainDay({ ...facts, lowC: -4 });
    const { weather, day } = plain;
    const duskStep = (day.sunset.getTime() - weather.first.getTime()) / 3_600_000 - 2;
    const screenC = weather.screenC.map((value, step) => (step < duskStep ? value : value - 12));
    const { pick, run } = picked({ ...plain, weather: { ...weather, screenC } }, ['row-cover-medium', 'hoops']);
    expect(valueAtC(run, 'leafC', day.sunset)).toBeLessThan(valueAtC(run, 'leafC', day.sunrise));
    expect(pick.kind).toBe('thawed');
  });

  test('not today when it stays well below freezing', () => {
    expect(picked(plainDay({ ...facts, lowC: -25, cloudFraction: 1 }), []).pick).toEqual({ kind: 'not-today' });
  });
});
