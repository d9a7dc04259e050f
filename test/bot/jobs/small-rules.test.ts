import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tryAgainAt } from '../../../bot/jobs/try-again.ts';
import { checkKind, gatherKind, ownPartKind, pauseKind, workOf } from '../../../bot/jobs/work.ts';
import { hasWorsened } from '../../../bot/jobs/worsened.ts';
import type { BedOutlook } from '../../../bot/outlook/night-outlook.ts';
import { cellPlace, directPlace } from '../../../bot/store/delivery-key.ts';
import type { Prediction } from '../../../bot/store/port/readings.ts';
import { VERDICTS, type Verdict } from '../../../rules/index.ts';

const told = (leafLowC: number, verdict: Verdict, step = 'nothing') => ({ leafLowC, verdict, step }) as Prediction;
const now = (leafLowC: number, verdict: Verdict, added?: string) =>
  ({
    verdict: { night: { leafLowC }, worst: { verdict } },
    step: added === undefined ? { kind: 'nothing' } : { kind: 'add', added: [added] },
  }) as BedOutlook;
const rank = (verdict: Verdict) => VERDICTS.indexOf(verdict);
const low = fc.double({ min: -30, max: 15, noNaN: true });
const verdict = fc.constantFrom(...VERDICTS);

describe('a bed has become worse', () => {
  test('by one and a half kelvin where leaves freeze, whatever its verdict', () => {
    expect(hasWorsened(told(-3, 'holds'), now(-4.51, 'holds'))).toBe(true);
    expect(hasWorsened(told(-3, 'holds'), now(-4.49, 'holds'))).toBe(false);
    expect(hasWorsened(told(9, 'holds'), now(3, 'holds'))).toBe(false);
  });

  test('by another thing to do, once it has fallen by more than a second reckoning differs', () => {
    expect(hasWorsened(told(-5, 'holds'), now(-5.1, 'on the edge', 'quilt'))).toBe(false);
    const edge = told(-5, 'on the edge', 'add blanket');
    expect(hasWorsened(edge, now(-5.25, 'on the edge', 'quilt'))).toBe(true);
    expect(hasWorsened(edge, now(-5.3, 'leaf burn', 'blanket'))).toBe(false);
    expect(hasWorsened(edge, now(-4.9, 'on the edge', 'quilt'))).toBe(false);
    expect(hasWorsened({ ...edge, step: undefined } as unknown as Prediction, now(-5.25, 'on the edge', 'quilt'))).toBe(
      false,
    );
  });

  test('by a worse verdict, unless it only passed into the next by less than the model can tell', () => {
    expect(hasWorsened(told(-5, 'on the edge'), now(-5, 'winterkill'))).toBe(true);
    expect(hasWorsened(told(-5, 'on the edge'), now(-5.3, 'leaf burn'))).toBe(false);
    expect(hasWorsened(told(-5, 'holds'), now(-5.2, 'on the edge'))).toBe(false);
    expect(hasWorsened(told(-5, 'holds'), now(-5.6, 'on the edge'))).toBe(true);
  });

  test('if nothing was told of it and it does not hold', () => {
    expect(VERDICTS.map((each) => hasWorsened(undefined, now(-5, each)))).toEqual([false, true, true, true]);
  });

  test('never when it is no colder and its verdict no worse', () => {
    fc.assert(
      fc.property(
        low,
        fc.double({ min: 0, max: 10, noNaN: true }),
        verdict,
        verdict,
        (lowC, milderK, before, after) => {
          fc.pre(rank(after) <= rank(before));
          expect(hasWorsened(told(lowC, before), now(lowC + milderK, after))).toBe(false);
        },
      ),
    );
  });

  test('all the more when it is colder still', () => {
    fc.assert(
      fc.property(
        low,
        low,
        fc.double({ min: 0, max: 10, noNaN: true }),
        verdict,
        verdict,
        (was, is, moreK, before, after) => {
          fc.pre(hasWorsened(told(was, before), now(is, after)));
          expect(hasWorsened(told(was, before), now(is - moreK, after))).toBe(true);
        },
      ),
    );
  });
});

describe('a delivery is tried again', () => {
  const at = new Date('2026-12-01T16:30:00Z');
  const waitS = (attempts: number, askedS?: number, random?: () => number) =>
    (tryAgainAt(at, attempts, askedS, random).getTime() - at.getTime()) / 1000;

  test('after waits that double up to five minutes, each cut short at random by half at most', () => {
    expect([1, 2, 3, 6, 50].map((attempts) => waitS(attempts, 0, () => 1))).toEqual([10, 20, 40, 300, 300]);
    expect([1, 2, 3, 6, 50].map((attempts) => waitS(attempts, 0, () => 0))).toEqual([5, 10, 20, 150, 150]);
  });

  test('never before the service wants to be asked again', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 }),
        fc.double({ min: 0, max: 7200, noNaN: true }),
        (attempts, askedS) => {
          expect(waitS(attempts, askedS)).toBeGreaterThanOrEqual(askedS - 0.001);
        },
      ),
    );
  });
});

test('a row’s key says what it asks for', () => {
  const due = new Date('2026-12-01T16:31:00Z');
  const place = directPlace('123456789012345678');
  const night = '2026-12-01';
  const kinds: readonly (readonly [string, string, object])[] = [
    ['987', 'warning', { kind: 'warning' }],
    ['987', checkKind('-at-01T09'), { kind: 'check' }],
    ['987', 'opening', { kind: 'opening' }],
    ['987', 'warning-at-01T09', { kind: 'warning' }],
    ['987', 'opening-at-01T23', { kind: 'opening' }],
    ['987', 'hardening', { kind: 'hardening' }],
    [cellPlace('43.12,-76.30,150'), gatherKind(due), { kind: 'gather' }],
    [
      place,
      ownPartKind(checkKind(''), 'a-site'),
      { kind: 'own-part', memberId: '123456789012345678', siteId: 'a-site' },
    ],
    [place, pauseKind('987'), { kind: 'pause-notice', memberId: '123456789012345678', channelId: '987' }],
  ];
  for (const [placeId, kind, work] of kinds) expect(workOf({ placeId, night, kind })).toEqual(work);
  expect(workOf({ placeId: '987', night, kind: 'of-a-later-version' })).toBeUndefined();
});

test('posts due in one hour share a fetch, those of the next hour do not', () => {
  expect(gatherKind(new Date('2026-12-01T16:00:00Z'))).toBe(gatherKind(new Date('2026-12-01T16:59:59Z')));
  expect(gatherKind(new Date('2026-12-01T17:00:00Z'))).not.toBe(gatherKind(new Date('2026-12-01T16:59:59Z')));
});
