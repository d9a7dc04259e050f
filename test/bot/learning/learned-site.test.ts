import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { laidOn, learnedSite } from '../../../bot/learning/learned-site.ts';
import { nightLater } from '../../../bot/learning/night-days.ts';
import type { ReadingFacts } from '../../../bot/store/port/readings.ts';
import { FIXTURE_NOW } from '../../fakes/forecast-services.ts';
import { Club, HOME, LAST_NIGHT, posterWith, wordsOf } from '../commands/club.ts';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
  await club.say(HOME);
  await club.say('bed add name:Tunnel crop:kale covers:"low tunnel"');
});
afterEach(() => club.close());

const bedCalled = async (name: string) => {
  const bed = (await club.store.beds.list('anna')).find((each) => each.name === name);
  if (bed === undefined) throw new Error(`no bed is called ${name}`);
  return bed;
};

/** Told −6 °C under the cover and −9 °C outside each night; `lows` are what the thermometers showed. */
async function read(name: string, nights: number, lows: Partial<ReadingFacts>): Promise<void> {
  const bed = await bedCalled(name);
  for (let ago = 0; ago < nights; ago += 1) {
    const night = nightLater(LAST_NIGHT, -ago);
    await club.toldLastNight('anna', { night });
    const facts = { bedId: bed.id, night, origin: 'typed', doubt: undefined, covers: bed.covers } as const;
    const none = { outsideLowC: undefined, underCoverLowC: undefined };
    await club.store.readings.record('anna', [{ ...facts, ...none, ...lows }], FIXTURE_NOW);
  }
}

async function learned(name: string) {
  const [site] = await club.store.sites.list('anna');
  if (site === undefined) throw new Error('no site is kept');
  const found = await learnedSite(club.store, { site, beds: await club.store.beds.list('anna') }, FIXTURE_NOW);
  return found.beds.get((await bedCalled(name)).id);
}

describe('what a site has taught', () => {
  test('is nothing before the first reading', async () => {
    await club.toldLastNight();
    expect(await learned('Tunnel')).toBeUndefined();
  });

  test('moves the bed that was read, and counts its nights', async () => {
    await read('Tunnel', 5, { underCoverLowC: -4, outsideLowC: -9 });
    const found = await learned('Tunnel');
    expect(found).toMatchObject({ underCoverNights: 5, outsideNights: 5 });
    expect(found?.belief.coverOffsetK).toBeGreaterThan(1);
    expect(found?.belief.coverOffsetK).toBeLessThan(2);
  });

  test('from one thermometer outside serves the other beds of the site', async () => {
    await club.say('bed add name:Frame crop:spinach covers:"cold frame"');
    await read('Tunnel', 5, { outsideLowC: -11 });
    const found = await learned('Frame');
    expect(found).toMatchObject({ underCoverNights: 0, outsideNights: 5 });
    expect(found?.belief.siteOffsetK).toBeLessThan(-0.8);
    expect(found?.belief.coverOffsetK).toBeCloseTo(0, 9);
  });

  test('leaves out readings in doubt', async () => {
    await read('Tunnel', 3, { underCoverLowC: 20, doubt: 'too-warm' });
    expect(await learned('Tunnel')).toBeUndefined();
  });

  test('under covers that were not told for teaches nothing of these', async () => {
    await read('Tunnel', 3, { underCoverLowC: 0, covers: ['blanket', 'low-tunnel'] });
    expect(await learned('Tunnel')).toBeUndefined();
  });

  test('holds in part once other covers lie there', async () => {
    await read('Tunnel', 12, { underCoverLowC: -4, outsideLowC: -9 });
    const before = (await learned('Tunnel'))?.belief.coverOffsetK ?? 0;
    await club.say('bed change bed:Tunnel covers:"cold frame"');
    const after = (await learned('Tunnel'))?.belief.coverOffsetK ?? 0;
    expect(after).toBeGreaterThan(0.2 * before);
    expect(after).toBeLessThan(0.8 * before);
  });

  test('of covers that a later version may keep passes over what it does not know', () => {
    expect(laidOn(['cold-frame', 'dome-of-2031'], { frame: undefined })).toEqual({ covers: ['cold-frame'] });
  });
});

describe('the next answer', () => {
  /** Leaf low and range of the only bed, as its picture tells them. [°F] */
  const leafF = (altText = '') => {
    const [, low = '', from = '', to = ''] = /the leaf to (−?\d+) °F \((−?\d+) to (−?\d+)\)/.exec(altText) ?? [];
    const [lowF, fromF, toF] = [low, from, to].map((word) => Number(word.replace('−', '-')));
    return { lowF: lowF ?? Number.NaN, widthF: (toF ?? Number.NaN) - (fromF ?? Number.NaN) };
  };

  test('moves, becomes narrower and says from how many nights', async () => {
    const before = leafF((await club.say('tonight')).picture?.altText);
    await read('Tunnel', 20, { underCoverLowC: -3, outsideLowC: -9 });
    const reply = await club.say('tonight');
    const after = leafF(reply.picture?.altText);
    expect(wordsOf(reply)).toMatch(/Tunnel: your low tunnel has run \d °F warmer than the book, from 20 nights\./);
    expect(after.lowF - before.lowF).toBeGreaterThanOrEqual(3);
    expect(after.lowF - before.lowF).toBeLessThanOrEqual(6);
    expect(after.widthF).toBeLessThan(before.widthF);
  });

  test('to a question about that bed moves alike, and says so too', async () => {
    const question = 'ask will my kale survive tonight?';
    const lowF = (words: string) => Number(/Leaf low about (−?\d+) °F/.exec(words)?.[1]?.replace('−', '-'));
    const before = lowF(wordsOf(await club.say(question)));
    await read('Tunnel', 20, { underCoverLowC: -3, outsideLowC: -9 });
    const after = wordsOf(await club.say(question));
    expect(after).toMatch(/Tunnel: your low tunnel has run \d °F warmer than the book, from 20 nights\./);
    expect(lowF(after)).toBe(leafF((await club.say('tonight')).picture?.altText).lowF);
    expect(lowF(after) - before).toBeGreaterThanOrEqual(3);
  });

  test('of /vent has leaves thaw later in a bed that runs colder', async () => {
    const thawed = async () => wordsOf(await club.say('vent'));
    const before = await thawed();
    await read('Tunnel', 20, { underCoverLowC: -9, outsideLowC: -9 });
    expect(await thawed()).not.toBe(before);
  });
});

describe('outcomes', () => {
  test('move the limits that a question is answered with, as they do those of /tonight', async () => {
    const question = 'ask will my kale survive tonight?';
    const marksF = (words: string) => Number(/marks at about (−?\d+) °F/.exec(words)?.[1]?.replace('−', '-'));
    const before = marksF(wordsOf(await club.say(question)));
    const bed = await bedCalled('Tunnel');
    for (let ago = 0; ago < 4; ago += 1) {
      const facts = { bedId: bed.id, night: nightLater(LAST_NIGHT, -ago), crop: 'kale', hardeningFraction: 1 };
      await club.store.outcomes.record('anna', { ...facts, leafLowC: -10, outcome: 'leaf-burn' }, FIXTURE_NOW);
    }
    const after = marksF(wordsOf(await club.say(question)));
    expect(after - before).toBeGreaterThanOrEqual(3);
    const drawnF = /Kale marks at (−?\d+) °F/.exec((await club.say('tonight')).picture?.altText ?? '')?.[1];
    expect(Number(drawnF?.replace('−', '-'))).toBe(after);
  });

  describe('in the gardens of a club', () => {
    const QUESTION = 'ask will my lettuce survive tonight?';
    beforeEach(async () => {
      club.with({ poster: posterWith([]) });
      await club.say('warnings start', { manager: true });
      await club.say('bed add name:Row crop:lettuce stage:grown hardened:yes');
      await club.say('warnings join');
      for (const member of ['ben', 'cleo']) {
        await club.say(HOME, { member });
        await club.say('bed add name:Row crop:lettuce', { member });
        await club.say('warnings join', { member });
      }
    });

    const saw = async (member: string, nights: number, outcome: 'no-mark' | 'leaf-burn' = 'no-mark') => {
      const bed = (await club.store.beds.list(member)).find(({ name }) => name === 'Row');
      for (let ago = 0; ago < nights; ago += 1) {
        const facts = { bedId: bed?.id ?? '', night: nightLater(LAST_NIGHT, -ago), crop: 'lettuce' };
        const there = { ...facts, leafLowC: -12, hardeningFraction: 1, outcome };
        await club.store.outcomes.record(member, there, FIXTURE_NOW);
      }
    };

    test("one member's six unmarked nights change nothing for another", async () => {
      const [before, warned] = [wordsOf(await club.say(QUESTION)), wordsOf(await club.say('tonight'))];
      await saw('ben', 6);
      expect(wordsOf(await club.say(QUESTION))).toBe(before);
      expect(wordsOf(await club.say('tonight'))).toBe(warned);
    });

    test('two members change it, and that is said', async () => {
      const before = wordsOf(await club.say(QUESTION));
      await saw('ben', 6);
      await saw('cleo', 6);
      const words = wordsOf(await club.say(QUESTION));
      const said =
        /Lettuce: two others of your club saw no mark, so I take it for \d+ °F hardier than the table says\./;
      expect(before).not.toMatch(said);
      expect(words).toMatch(said);
      expect(wordsOf(await club.say('tonight'))).toMatch(said);
    });

    test('nobody who shares no channel hears of it', async () => {
      await saw('ben', 6);
      await saw('cleo', 6);
      await club.say(HOME, { member: 'dora' });
      await club.say('bed add name:Row crop:lettuce', { member: 'dora' });
      expect(wordsOf(await club.say('tonight', { member: 'dora' }))).not.toContain('others of your club');
    });
  });
});
