import { describe, expect, test } from 'vitest';
import { bed, days, nightsC, nightsF } from './invented-week.ts';
import { toldTonight, toldWeek } from './told.ts';

/** Decisions of common practice about cold that lasts, written down before the program was asked. */
const FAVA = { cropId: 'fava-bean', stage: 'growing' } as const;

describe('nights without a thaw', () => {
  const spell = {
    latitudeDeg: 52,
    today: '2027-01-18',
    past: days(7, 6, 3),
    ahead: nightsC([-6, -6, -6, -6, -6, -6, -6], 5),
  };

  test('one night may pass; the third in a row is worse at the same low', () => {
    const { week } = toldWeek({ locale: 'en-GB', spell, beds: [bed('Broad beans', [FAVA])] });
    const marked = week.known.map(({ outlook }) => 1 - (outlook.beds[0]?.verdict.worst.odds.noMark ?? 1));
    const frozen = week.known.map(({ outlook }) => outlook.beds[0]?.past.frozenNights);
    expect(frozen).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(marked[2]).toBeGreaterThan((marked[1] ?? 1) + 0.05);
  });

  test('the count is told, and what it changes', () => {
    const { words } = toldWeek({ locale: 'en-GB', spell, beds: [bed('Broad beans', [FAVA])] });
    expect(words).toMatch(/(Third|Fourth|Fifth|Sixth|Seventh) night in a row without a thaw: plants take 1\.5 °C less/);
    expect(words).toMatch(/No end in sight by Sunday night/);
  });

  test('a day above freezing begins the count anew', () => {
    const thaw = {
      ...spell,
      ahead: [...nightsC([-6, -6], 5), { highC: 4, lowC: -6 }, ...nightsC([-6, -6, -6, -6], 5)],
    };
    const { week } = toldWeek({ locale: 'en-GB', spell: thaw, beds: [bed('Broad beans', [FAVA])] });
    expect(week.known.map(({ outlook }) => outlook.beds[0]?.past.frozenNights)).toEqual([1, 2, 1, 2, 3, 4, 5]);
  });

  test('nights of frost with thawing days between them are not counted together', () => {
    const mild = { ...spell, ahead: nightsC([-6, -6, -6, -6, -6, -6, -6], 11) };
    expect(toldWeek({ locale: 'en-GB', spell: mild, beds: [bed('Broad beans', [FAVA])] }).words).not.toMatch(
      /in a row/,
    );
  });

  test('a tunnel thaws by day what stays frozen in the open', () => {
    const open = toldWeek({ locale: 'en-GB', spell, beds: [bed('Kale', ['kale'])] });
    const tunnel = toldWeek({ locale: 'en-GB', spell, beds: [bed('Kale', ['kale'], 'low-tunnel')] });
    const last = (told: typeof open) => told.week.known.at(-1)?.outlook.beds[0]?.past.frozenNights ?? 0;
    expect(last(open)).toBe(7);
    expect(last(tunnel)).toBeLessThanOrEqual(1);
  });
});

describe('frozen ground', () => {
  const week = { latitudeDeg: 42, today: '2027-01-18', past: nightsF([15, 14, 12, 13, 10, 11, 12], 14) };

  test('carrots without mulch after a week below freezing are at risk: dig or mulch', () => {
    const told = toldTonight({
      locale: 'en-US',
      spell: { ...week, ahead: nightsF([12, 11], 14) },
      beds: [bed('Carrots', ['carrot'])],
    });
    expect(told.outlook.beds[0]?.verdict.worst.verdict).not.toBe('holds');
    expect(told.words).toMatch(
      /Ground without mulch or snow is likely frozen about \d+ in deep\. Dig roots before it goes deeper, or mulch them thickly/,
    );
  });

  test('kale in sun and wind over frozen ground dries: shelter, and no watering', () => {
    const wind = { wind10MPerS: 6.7 };
    const spell = {
      latitudeDeg: 44,
      today: '2027-02-08',
      past: nightsF([10, 12, 15, 13, 11, 14, 12], 14, wind),
      ahead: nightsF([12, 13], 14, wind),
    };
    const { words } = toldTonight({ locale: 'en-US', spell, beds: [bed('Kale', ['kale'])] });
    expect(words).toMatch(/Frozen roots drink nothing: shelter leaves from the wind/);
    expect(words).not.toMatch(/[Ww]ater (it|them|the)/);
  });

  test('leeks at 60° N: the frost in the ground is told', () => {
    const spell = {
      latitudeDeg: 60,
      today: '2027-01-18',
      past: nightsC([-4, -5, -6, -5, -4, -6, -7], 3),
      ahead: nightsC([-4, -6, -9, -8, -7, -6, -9], 3),
    };
    expect(toldWeek({ locale: 'en-GB', spell, beds: [bed('Leeks', ['leek'])] }).words).toMatch(
      /frozen about \d+ cm deep\./,
    );
  });

  test('after a thawing week nothing is said of frozen ground', () => {
    const spell = { ...week, past: days(7, 8, 0), ahead: nightsF([25, 30], 14) };
    expect(toldTonight({ locale: 'en-US', spell, beds: [bed('Carrots', ['carrot'])] }).words).not.toMatch(
      /is likely frozen/,
    );
  });
});

describe('a run of cold nights', () => {
  test('lettuce under one fabric through five nights of 20 to 24 °F: each is a risk, and a second layer is advised', () => {
    const spell = {
      latitudeDeg: 42,
      today: '2026-11-16',
      past: days(7, 8, 0),
      ahead: [...nightsF([22, 20, 23, 24, 21], 20), ...nightsF([30, 32])],
    };
    const told = toldWeek({
      locale: 'en-US',
      spell,
      beds: [bed('Lettuce', [{ cropId: 'leaf-lettuce', stage: 'growing' }], 'row-cover-medium', 'hoops')],
    });
    expect(told.reply.headline).toMatch(/^Plot: [5-7] of 7 nights are a risk/);
    expect(told.words).toMatch(/Add .* over the medium row cover/);
  });

  test('broccoli heads in a southern arctic week are lost under light fabric; collards are the lesser trouble', () => {
    const spell = {
      latitudeDeg: 35,
      today: '2027-01-18',
      past: nightsF([35, 38, 42, 45, 40, 39, 41], 15),
      ahead: [...nightsF([15, 8, 10, 12], 18), ...nightsF([20, 28, 33], 18)],
    };
    const told = toldWeek({
      locale: 'en-US',
      spell,
      beds: [bed('Broccoli', ['broccoli'], 'row-cover-light'), bed('Collards', ['collards'], 'row-cover-light')],
    });
    expect(told.reply.headline).toMatch(/Worst: Tuesday night, low about 8 °F .*Broccoli: winterkill/);
    expect(told.words).toMatch(/Do first, tonight\. Broccoli: /);
  });

  test('cauliflower nearly ready through three nights of −5 °C at 43° S: the curd does not hold', () => {
    const spell = {
      latitudeDeg: -43,
      today: '2026-07-13',
      past: nightsC([0, 1, -1, 0, 1, 0, -1], 9),
      ahead: [...nightsC([-5, -5, -5], 14), ...nightsC([2, 2, 3, 3])],
    };
    const told = toldWeek({ locale: 'en-GB', spell, beds: [bed('Cauliflower', ['cauliflower'])] });
    expect(told.reply.headline).toMatch(
      /Worst: (tonight|Tuesday night|Wednesday night), .*Cauliflower: (leaf burn|winterkill)/,
    );
  });
});
