import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { Club, wordsOf } from '../commands/club.ts';

/** Decisions of common practice about the year at a place, written down before the program was asked. */
let club: Club;
beforeEach(async () => {
  club = await Club.open();
});
afterEach(() => club.close());

const SPRING = new Date('2026-03-10T15:00:00Z');
const AUGUST = new Date('2026-08-10T15:00:00Z');
async function winterAt(latitudeDeg: number, options: string, now: Date, locale = 'en-US') {
  await club.say(`site set lat:${latitudeDeg} lon:-93 name:Here`, { locale, now });
  const reply = await club.say(`winter ${options}`, { locale, now });
  const lines = (title: string) => reply.sections.find((section) => section.title?.startsWith(title))?.lines ?? [];
  return { reply, words: wordsOf(reply), lines };
}

describe('frosts', () => {
  test('an average last frost of 15 May is no safe day: tomatoes wait some two weeks', async () => {
    const { lines } = await winterAt(43, 'last-frost:"May 15"', SPRING);
    const [tender] = lines('Setting out');
    expect(tender).toMatch(/from (May 2[6-9]|May 3[01]|Jun 1); a later frost then comes in 1 year of 10/);
    expect(tender).toMatch(/half the years have a frost after it/);
  });

  test('peppers at 45° N with an average last frost of 20 May: about 1 June or later', async () => {
    const { lines } = await winterAt(45, 'last-frost:"May 20"', SPRING, 'en-CA');
    expect(lines('Setting out')[0]).toMatch(/from (3[01] May|[1-5] Jun);/);
  });

  test('hardened cabbage goes out weeks before the tender crops', async () => {
    const { lines } = await winterAt(44, 'last-frost:"May 15"', SPRING);
    expect(lines('Setting out')[1]).toMatch(/Hardened cabbage.*: from (Apr 2\d|Apr 30|May [1-9]),/);
  });

  test('a week before the average first frost it comes in about one year of four', async () => {
    const { lines } = await winterAt(44, 'first-frost:"Sep 27"', AUGUST);
    const odds = lines('Odds that a low this cold has come');
    expect(odds.find((line) => line.startsWith('Sep 20'))).toMatch(/32 °F 1 in (3|4)/);
    expect(odds.find((line) => line.startsWith('Sep 27'))).toMatch(/32 °F about even/);
  });

  test('28 °F comes later than 32: in the second week of October about three years in ten have had it, half by the 17th', async () => {
    const { lines } = await winterAt(44, 'first-frost:"Oct 1"', AUGUST);
    const odds = lines('Odds that a low this cold has come');
    expect(odds.find((line) => line.startsWith('Oct 8'))).toMatch(/28 °F (1 in 3|2 in 5|1 in 4)/);
    expect(odds.find((line) => line.startsWith('Oct 15'))).toMatch(/28 °F (about even|better than even)/);
  });

  test('without a record nothing is invented, and it is said where to get one', async () => {
    const { words, lines } = await winterAt(53, '', SPRING, 'en-GB');
    expect(words).toMatch(/I know no average frosts of your place and invent none/);
    expect(lines('Odds')).toEqual([]);
  });

  test('what the odds rest on is named, with how far years differ', async () => {
    const { words } = await winterAt(44, 'first-frost:"Oct 1" last-frost:"May 10"', AUGUST);
    expect(words).toMatch(/from the average first frost that you gave/);
    expect(words).toMatch(/Years differ by two weeks either way, and a hollow has its last frost later/);
  });
});

describe('light', () => {
  test('growth stops about 6 November at 44° N and comes back in early February', async () => {
    const { reply } = await winterAt(44, '', AUGUST);
    expect(reply.headline).toMatch(/from Nov [4-9] to Feb [2-7]\./);
  });

  test('spinach for an autumn crop at 44° N is sown by early September at the latest', async () => {
    const { words } = await winterAt(44, '', AUGUST);
    expect(words).toMatch(/(Aug \d+|Sep [1-9]): [^\n]*[Ss]pinach/);
  });

  test('at 35° N the short days are few, and sowing goes on later than at 44', async () => {
    const { reply } = await winterAt(35, '', AUGUST);
    expect(reply.headline).toMatch(/from (Nov 2\d|Nov 30|Dec \d) to Jan (1\d|2\d)\./);
  });

  test('at 43° S the short days lie from May to August', async () => {
    const { reply } = await winterAt(-43, '', new Date('2026-02-10T15:00:00Z'), 'en-GB');
    expect(reply.headline).toMatch(/from \d+ May to \d+ Aug\./);
  });

  test('at 52° N they begin in late October', async () => {
    const { reply } = await winterAt(52, '', AUGUST, 'en-GB');
    expect(reply.headline).toMatch(/from (2[3-9]) Oct to (1[3-9]) Feb\./);
  });
});
