import { describe, expect, test } from 'vitest';
import type { GardenBed } from '../../../bot/outlook/garden.ts';
import { isRiskyNight } from '../../../bot/outlook/week-outlook.ts';
import { bed, days, nightsC, nightsF } from './invented-week.ts';
import { type Asked, toldWeek } from './told.ts';

/**
 * Decisions about a week as a practised grower would take them, written down before the program was asked. Their sources are
 * extension bulletins where a limit is named, common practice elsewhere. Mondays, unless the test says otherwise.
 */
const CALM = { cloudFraction: 0, wind10MPerS: 1 };
const GREY = { cloudFraction: 1, wind10MPerS: 3.5 };

function asked(
  locale: string,
  latitudeDeg: number,
  today: string,
  beds: readonly GardenBed[],
  weather: Pick<Asked['spell'], 'past' | 'ahead'> & Partial<Asked['spell']>,
): Asked {
  return { locale, beds, spell: { latitudeDeg, today, ...weather } };
}
const riskyNights = ({ week }: ReturnType<typeof toldWeek>) =>
  week.known.filter(isRiskyNight).map(({ named }) => named.span.sunset.toUTCString().slice(0, 3));

describe('which nights', () => {
  test('tomatoes at 44° N: the clear nights of 30 and 34 °F count, the cloudy one of 38 does not', () => {
    const told = toldWeek(
      asked('en-US', 44, '2026-09-28', [bed('Tomatoes', ['tomato'])], {
        past: days(7, 20, 8),
        ahead: [...nightsF([41]), ...nightsF([38], 18, GREY), ...nightsF([30, 34], 25, CALM), ...nightsF([42, 45, 47])],
      }),
    );
    expect(riskyNights(told)).toEqual(['Wed', 'Thu']);
    expect(told.reply.headline).toMatch(/Worst: Wednesday night, low about 30 °F .*Tomatoes: winterkill/);
    expect(told.words).toMatch(/Thursday night counts though it stays above freezing/);
    expect(told.words).toMatch(/Do first, Wednesday night\. /);
  });

  test('nothing at 35° N in a mild March: the lowest night is named, and no cover', () => {
    const told = toldWeek(
      asked(
        'en-US',
        35,
        '2027-03-15',
        [bed('Peas', ['pea']), bed('Lettuce', ['leaf-lettuce']), bed('Kale', ['kale'])],
        {
          past: days(7, 18, 7),
          ahead: nightsF([44, 46, 49, 50, 47, 45, 48], 20),
        },
      ),
    );
    expect(riskyNights(told)).toEqual([]);
    expect(told.reply.headline).toMatch(/Coldest: tonight, low about 44 °F/);
    expect(told.words).not.toMatch(/Add |pick what/);
  });

  test('early potatoes at 60° N in June: Wednesday is worst, Tuesday counts, windy Thursday does not', () => {
    const told = toldWeek(
      asked('en-GB', 60, '2026-06-01', [bed('Early potatoes', ['potato'])], {
        past: days(7, 15, 5),
        ahead: [...nightsC([4]), ...nightsC([1, -1], 10, CALM), ...nightsC([2], 8, GREY), ...nightsC([6, 6, 6])],
        lowAtH: 3,
      }),
    );
    expect(riskyNights(told)).toEqual(expect.arrayContaining(['Tue', 'Wed']));
    expect(riskyNights(told)).not.toContain('Thu');
    expect(told.reply.headline).toMatch(/Worst: Wednesday night, low about −1 °C/);
    // Not later: on Monday the odds are one in five.
    expect(told.words).toMatch(/Do first, (tonight|Tuesday night)/);
  });

  test('broad beans at 43° S in July: Tuesday is the coldest, and they are not lost', () => {
    const told = toldWeek(
      asked('en-GB', -43, '2026-07-13', [bed('Broad beans', [{ cropId: 'fava-bean', stage: 'growing' }])], {
        past: nightsC([0, -1, 1, 0, -1, 1, 0]),
        ahead: nightsC([-3, -4, -2, 2, 3, 0, -1]),
      }),
    );
    expect(told.reply.headline).toMatch(/Tuesday night, low about −4 °C/);
    expect(told.words).not.toMatch(/Broad beans: (leaf burn|winterkill), odds/);
    expect(told.words).toMatch(/Thu 2 °C\. Holds/);
  });

  test('beds of peppers, lettuce and kale: the peppers come first, in all three clear nights', () => {
    const told = toldWeek(
      asked(
        'en-CA',
        44,
        '2026-10-12',
        [bed('Peppers', ['pepper']), bed('Lettuce', ['lettuce']), bed('Kale', ['kale'])],
        {
          past: days(7, 14, 4),
          ahead: [
            ...nightsC([3]),
            ...nightsC([1], 6, { cloudFraction: 0.9, wind10MPerS: 7 }),
            ...nightsC([-2, -5, -3], 10, CALM),
            ...nightsC([2, 3]),
          ],
        },
      ),
    );
    expect(riskyNights(told)).toEqual(expect.arrayContaining(['Wed', 'Thu', 'Fri']));
    expect(told.reply.headline).toMatch(/Worst: Thursday night, low about −5 °C .*Peppers: winterkill/);
    expect(told.words).not.toMatch(/°C\. Kale: /);
  });

  test('basil on a deck: a clear night of 37 °F is close', () => {
    const told = toldWeek(
      asked('en-US', 44, '2026-10-05', [bed('Deck', ['basil', 'pepper'])], {
        past: days(7, 20, 8),
        ahead: nightsF([48, 46, 45, 37, 44, 46, 47], 20),
      }),
    );
    expect(told.reply.headline).toMatch(/Worst: Thursday night, low about 37 °F .*Deck, basil: /);
    expect(told.words).toMatch(/Thursday night counts though it stays above freezing/);
  });

  test('tomatoes through grey nights of 35 to 37 °F hold: cloud and wind keep leaves near the air', () => {
    const told = toldWeek(
      asked('en-US', 44, '2026-09-28', [bed('Tomatoes', ['tomato'])], {
        past: days(7, 12, 4, GREY),
        ahead: nightsF([36, 35, 37, 36, 36, 35, 37], 9, GREY),
      }),
    );
    // The forecast of a night five days off leaves a chance of one in five.
    expect(riskyNights(told).length).toBeLessThanOrEqual(1);
    expect(told.words).not.toMatch(/winterkill|leaf burn/);
  });
});

describe('the coldest night', () => {
  test('spinach that had weeks of frost is not lost at 19 °F, and is to thaw before it is picked', () => {
    const told = toldWeek(
      asked('en-US', 44, '2026-11-16', [bed('Spinach bed', ['spinach'])], {
        past: nightsF([24, 26, 28, 30, 32, 27, 25], 14),
        ahead: nightsF([31, 27, 22, 19, 24, 30, 34]),
      }),
    );
    expect(told.reply.headline).toMatch(/Thursday night, low about 19 °F/);
    expect(told.words).not.toMatch(/Spinach bed: (leaf burn|winterkill), odds/);
    expect(told.words).toMatch(/Hardening assumed from the past week here: spinach (fully|three quarters) hardened/);
    expect(told.words).toMatch(/thawed all through/);
  });
});

describe('when it ends', () => {
  test('leeks and kale at 52° N: Friday is the last frost, and Saturday may still whiten the ground', () => {
    const told = toldWeek(
      asked('en-GB', 52, '2027-01-11', [bed('Leeks', ['leek']), bed('Kale', ['kale'])], {
        past: nightsC([-1, 0, 1, -1, 0, -2, -1], 5),
        ahead: nightsC([-1, -4, -6, -5, -2, 1, 4], 5),
      }),
    );
    expect(told.words).toMatch(
      /Last night below freezing: Friday night; Saturday night, 1 °C, can still bring ground frost/,
    );
    expect(told.words).toMatch(/Wednesday night, low about −6 °C/);
    expect(told.words).not.toMatch(/(Leeks|Kale): winterkill, odds/);
  });

  test('a break of two nights is no end', () => {
    const told = toldWeek(
      asked(
        'en-US',
        40,
        '2027-04-05',
        [bed('Broccoli', [{ cropId: 'broccoli', stage: 'growing' }], 'row-cover-medium')],
        {
          past: days(7, 10, 0),
          ahead: nightsF([25, 23, 29, 39, 42, 27, 24]),
        },
      ),
    );
    expect(told.words).toMatch(/A break .*Thursday night and Friday night, then it is back: keep covers at hand\./);
    expect(told.words).toMatch(/No end in sight by Sunday night/);
    expect(told.reply.headline).toMatch(/Worst: Tuesday night, low about 23 °F/);
  });

  test('a warm Friday is no reason to put covers away before a Saturday of 26 °F', () => {
    const told = toldWeek(
      asked(
        'en-US',
        44,
        '2027-04-16',
        [bed('Lettuce', ['lettuce'], 'row-cover-medium'), bed('Peas', ['pea'], 'row-cover-medium')],
        {
          past: days(7, 12, 2),
          ahead: nightsF([40, 26, 38, 42, 43, 44, 45], 20),
        },
      ),
    );
    expect(riskyNights(told)).toEqual(['Sat']);
    expect(told.words).toMatch(/It eases Sunday night: then every bed holds, as far as Thursday night/);
    expect(told.words).toMatch(/Do first, Saturday night/);
  });
});

test('nights beyond the forecast are named as unknown, and nothing is told of them', () => {
  const told = toldWeek(
    asked('en-US', 44, '2026-10-05', [bed('Peppers', ['pepper'])], {
      past: days(7, 15, 6),
      ahead: nightsF([40, 42, 44, 46]),
    }),
  );
  expect(told.week.known).toHaveLength(4);
  expect(told.words).toMatch(/does not reach Friday, Saturday or Sunday night yet, so I say nothing of them/);
  expect(told.words).not.toMatch(/\n +(Fri|Sat|Sun) /);
});
