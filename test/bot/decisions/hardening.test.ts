import { describe, expect, test } from 'vitest';
import type { GardenBed } from '../../../bot/outlook/garden.ts';
import type { CropId } from '../../../rules/index.ts';
import { bed, days, fahrenheit, type InventedSpell, nightsC, nightsF } from './invented-week.ts';
import { toldTonight } from './told.ts';

/** Decisions of common practice and extension bulletins, written down before the program was asked. */
function tonight(locale: string, spell: InventedSpell, ...beds: GardenBed[]) {
  const told = toldTonight({ locale, spell, beds });
  const verdicts = new Map(
    told.outlook.beds.flatMap(({ verdict }) =>
      verdict.plantings.map((each) => [
        each.planting.crop.id,
        { word: each.verdict, index: each.planting.hardeningIndex },
      ]),
    ),
  );
  return { words: told.words, of: (crop: CropId) => verdicts.get(crop) };
}
const AT_RISK = ['on the edge', 'leaf burn', 'winterkill'];

describe('weeks of frost harden', () => {
  test('kale in November after frosts of 22 to 31 °F is fully hardened, and 18 °F does not kill it', () => {
    const told = tonight(
      'en-US',
      {
        latitudeDeg: 44,
        today: '2026-11-16',
        past: nightsF([22, 31, 28, 25, 30, 27, 24], 14),
        ahead: nightsF([18, 25]),
      },
      bed('Kale', ['kale']),
    );
    expect(told.of('kale')?.index).toBeGreaterThan(0.85);
    expect(['holds', 'on the edge']).toContain(told.of('kale')?.word);
    expect(told.words).toMatch(/Hardening assumed from the past week here: kale fully hardened\./);
    expect(told.words).toMatch(/If they are not hardened: Kale: (leaf burn|winterkill)\./);
  });

  test('broad beans in June at 43° S have had their winter', () => {
    const told = tonight(
      'en-GB',
      { latitudeDeg: -43, today: '2026-06-22', past: nightsC([-2, 0, 2, 1, -1, 0, 2], 9), ahead: nightsC([-5, 0]) },
      bed('Broad beans', [{ cropId: 'fava-bean', stage: 'growing' }]),
    );
    expect(told.of('fava-bean')?.index).toBeGreaterThan(0.85);
    expect(told.of('fava-bean')?.word).not.toBe('winterkill');
  });

  test('cabbage plants two weeks outside at 35 to 45 °F are hardened, and live at 27 °F', () => {
    const told = tonight(
      'en-US',
      { latitudeDeg: 42, today: '2027-04-12', past: days(14, 7, 2), ahead: nightsF([27, 35]) },
      bed('Cabbage', [{ cropId: 'cabbage', stage: 'growing' }]),
    );
    expect(told.of('cabbage')?.index).toBeGreaterThan(0.7);
    expect(told.of('cabbage')?.word).not.toBe('winterkill');
  });

  test('spinach after months of frost is fully hardened at 44° N', () => {
    const told = tonight(
      'en-US',
      {
        latitudeDeg: 44,
        today: '2027-01-18',
        past: nightsF([8, 10, 15, 20, 12, 9, 14], 14),
        ahead: nightsF([5, 12], 14),
      },
      bed('Spinach', ['spinach'], 'row-cover-medium', 'hoops'),
    );
    expect(told.words).toMatch(/spinach fully hardened/);
    expect(told.words).toMatch(/(a|an|another) .* (over|under) the medium row cover/);
  });
});

describe('warm weeks leave plants soft', () => {
  test('lettuce on 20 October after a week of 8 to 20 °C is not taken as hardened', () => {
    const told = tonight(
      'en-GB',
      { latitudeDeg: 52, today: '2026-10-20', past: days(7, 20, 8), ahead: nightsC([-2, 2]) },
      bed('Lettuce', ['leaf-lettuce']),
    );
    expect(told.of('leaf-lettuce')?.index).toBeLessThan(0.25);
    expect(told.words).toMatch(/leaf lettuce not hardened/);
  });

  test('collards at 35° N after a week of 75 °F are soft, and 20 °F harms them', () => {
    const told = tonight(
      'en-US',
      {
        latitudeDeg: 35,
        today: '2026-12-15',
        past: days(7, fahrenheit(73), fahrenheit(55)),
        ahead: nightsF([20, 25], 25),
      },
      bed('Collards', ['collards']),
    );
    expect(told.of('collards')?.index).toBeLessThan(0.25);
    expect(AT_RISK).toContain(told.of('collards')?.word);
    expect(told.words).toMatch(/If they are fully hardened: Collards: (holds|on the edge)\./);
  });

  test('leaf lettuce in Georgia before its first freeze has had no cold', () => {
    const told = tonight(
      'en-US',
      {
        latitudeDeg: 34,
        today: '2026-11-16',
        past: days(14, fahrenheit(71), fahrenheit(52)),
        ahead: nightsF([27, 35], 25),
      },
      bed('Leaf lettuce', ['leaf-lettuce']),
    );
    expect(told.words).toMatch(/leaf lettuce not hardened/);
    expect(AT_RISK).toContain(told.of('leaf-lettuce')?.word);
  });

  test('before the first frost of autumn at 50° N plants are only partly hardened', () => {
    const told = tonight(
      'en-CA',
      { latitudeDeg: 50, today: '2026-09-28', past: nightsC([4, 6, 9, 7, 5, 8, 4], 10), ahead: nightsC([-3, 2], 14) },
      bed('Spinach', ['spinach']),
      bed('Chard', ['chard']),
    );
    const index = told.of('spinach')?.index ?? 1;
    expect(index).toBeGreaterThan(0.1);
    expect(index).toBeLessThan(0.6);
    expect(told.words).toMatch(/Hardening assumed from the past week here: .*quarter hardened/);
  });
});

describe('plants that nobody hardened', () => {
  test.each([
    ['kale', 25],
    ['lettuce', 29],
  ] as const)('%s just set out is taken as soft, and that is said', (crop, lowF) => {
    const told = tonight(
      'en-US',
      { latitudeDeg: 44, today: '2027-04-16', past: days(7, 12, 2), ahead: nightsF([lowF, 35]) },
      bed('Row', [{ cropId: crop, stage: 'just-set-out' }]),
    );
    expect(told.of(crop)?.index).toBe(0);
    expect(AT_RISK).toContain(told.of(crop)?.word);
    expect(told.words).toMatch(/Hardening assumed from their being just set out/);
  });

  test('tomatoes are not hardened by anything, and nothing is said of it', () => {
    const told = tonight(
      'en-US',
      { latitudeDeg: 44, today: '2027-05-17', past: days(10, 18, 6), ahead: nightsF([30, 40], 25) },
      bed('Tomatoes', ['tomato']),
    );
    expect(told.of('tomato')?.word).toBe('winterkill');
    expect(told.words).not.toMatch(/[Hh]arden/);
  });
});

test('what the grower or the bot knows comes before the weather, and is not called assumed', () => {
  const told = tonight(
    'en-US',
    { latitudeDeg: 44, today: '2026-10-20', past: days(7, 20, 8), ahead: nightsF([27, 35]) },
    bed('Kale', [{ cropId: 'kale', stage: 'grown', hardeningIndex: 1 }]),
  );
  expect(told.of('kale')?.index).toBe(1);
  expect(told.words).toMatch(/Kale is fully hardened\./);
  expect(told.words).not.toMatch(/assumed/);
});

test('under a warm cover plants are softer than in the open on the same day', () => {
  const spell = {
    latitudeDeg: 44,
    today: '2026-11-02',
    past: nightsC([1, 2, 3, 2, 1, 3, 2], 9),
    ahead: nightsC([-4, 0]),
  };
  const open = tonight('en-GB', spell, bed('Open', ['kale'])).of('kale')?.index ?? 0;
  const covered =
    tonight('en-GB', spell, bed('Tunnel', ['kale'], 'low-tunnel', 'row-cover-heavy')).of('kale')?.index ?? 1;
  expect(covered).toBeLessThan(open);
});
