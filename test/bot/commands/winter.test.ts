import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { Club, HOME, wordsOf } from './club.ts';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
  await club.say(HOME);
});
afterEach(() => club.close());

const AUGUST = new Date('2026-08-10T15:00:00Z');
const titled = (reply: Awaited<ReturnType<Club['say']>>, title: string) =>
  reply.sections.find((section) => section.title?.startsWith(title))?.lines ?? [];

describe('winter', () => {
  test('tells the days under ten hours at the place, and nobody else', async () => {
    const reply = await club.say('winter', { now: AUGUST });
    expect(reply.private).toBe(true);
    // At 41.2° N both astronomy libraries of the published checks find 11 November to 30 January, within a day or two.
    expect(reply.headline).toMatch(
      /^Home: days under ten hours from Nov (10|11|12|13) to (Jan 28|Jan 29|Jan 30|Jan 31)\./,
    );
    expect(wordsOf(reply)).not.toMatch(/41\.2|96\.6/);
  });

  test('gives sowing dates that lie ahead, the slow crops first', async () => {
    const lines = titled(await club.say('winter', { now: AUGUST }), 'Sow by');
    expect(lines.length).toBeGreaterThan(2);
    expect(lines[0]).toMatch(/Parsley|Carrot/i);
    expect(lines.at(-1)).toMatch(/Radish/);
  });

  test('in winter says what comes of sowing now instead', async () => {
    const reply = await club.say('winter');
    expect(titled(reply, 'Sow by')).toEqual([]);
    expect(titled(reply, 'Too late')[0]).toMatch(/Radish/);
  });

  test('tells of what is planted, alike plantings in one line', async () => {
    await club.say('bed add name:Frame crop:spinach,kale stage:grown covers:"cold frame"');
    await club.say('bed add name:Row crop:basil');
    const lines = titled(await club.say('winter'), 'In your beds');
    expect(lines).toContain('Big enough, to be picked through the winter: spinach and kale (Frame).');
    expect(lines).toContain('No crop for frost: pick before the cold: basil (Row).');
  });

  test('counts from the day of sowing or setting out where it is told', async () => {
    const now = new Date('2026-10-10T15:00:00Z');
    await club.say('bed add name:A crop:spinach sown:"Aug 1"', { now });
    await club.say('bed add name:B crop:spinach sown:"Sep 28"', { now });
    await club.say('bed add name:C crop:spinach set-out:"Sep 28"', { now });
    const lines = titled(await club.say('winter', { now }), 'In your beds');
    expect(lines[0]).toBe('Big enough, to be picked through the winter: spinach (A).');
    const order = lines.map((line) => /\((.)\)/.exec(line)?.[1]);
    expect(order).toEqual(['A', 'C', 'B']);
  });

  test('invents no average frosts, and shows those that are given in their place', async () => {
    expect(wordsOf(await club.say('winter'))).toContain('I know no average frosts of your place and invent none');
    const reply = await club.say('winter first-frost:"Oct 12" last-frost:"5 May"');
    const dates = titled(reply, 'Dates').map((line) => line.split(':')[0]);
    expect(dates[0]).toBe('Oct 12');
    expect(dates.at(-1)).toBe('May 5');
    expect(wordsOf(reply)).not.toContain('invent none');
  });

  test('states how it is reckoned', async () => {
    expect(titled(await club.say('winter'), 'How this is reckoned')[0]).toMatch(/two weeks more for the cold/);
  });

  test('near the equator says that light is no limit', async () => {
    await club.say('site set lat:20 lon:-100 name:South');
    const reply = await club.say('winter site:South');
    expect(reply.headline).toMatch(/no day is under ten hours there/);
    expect(titled(reply, 'Sown today')).not.toEqual([]);
  });

  test('south of the equator the short days lie around June', async () => {
    await club.say('site set lat:-43.5 lon:172.6 name:Down', { locale: 'en-NZ' });
    expect((await club.say('winter site:Down', { locale: 'en-NZ' })).headline).toMatch(/from \d+ May to \d+ Aug/);
  });

  test('refuses a frost that is no day', async () => {
    const reply = await club.say('winter first-frost:soon');
    expect([reply.refused, reply.headline]).toEqual([true, expect.stringContaining('write it like Oct 12')]);
  });
});

describe('asked in words', () => {
  test('a crop’s sowing date comes first', async () => {
    const reply = await club.say('ask when do I sow spinach for winter?', { now: AUGUST });
    expect(reply.headline).toMatch(
      /^Spinach: sow by Sep \d+, to be big enough before the short days begin on Nov \d+\.$/,
    );
  });

  test('what does not stand frost is told so', async () => {
    const reply = await club.say('ask when do I sow tomatoes?');
    expect(reply.headline).toBe('Tomato does not stand frost: sow it once the frosts are over.');
  });
});
