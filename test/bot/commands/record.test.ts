import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { nightLater } from '../../../bot/learning/night-days.ts';
import { CHANNEL, Club, HOME, LAST_NIGHT, posterWith, wordsOf } from './club.ts';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
});
afterEach(() => club.close());

/** A member with one bed, told and read for so many nights; each error is measured less told. */
async function withNights(member: string, errorsK: readonly number[]): Promise<void> {
  await club.say(HOME, { member });
  await club.say(`bed add name:"Bed of ${member}" crop:kale covers:"low tunnel"`, { member });
  const [bed] = await club.store.beds.list(member);
  for (const [index, errorK] of errorsK.entries()) {
    const night = nightLater(LAST_NIGHT, -index);
    await club.toldLastNight(member, { night });
    await club.store.readings.record(
      member,
      [
        {
          ...{ bedId: bed?.id ?? '', night, origin: 'typed', doubt: undefined, covers: ['low-tunnel'] },
          ...{ outsideLowC: -9, underCoverLowC: -6 + errorK },
        },
      ],
      new Date('2026-01-20T12:00:00Z'),
    );
  }
}

describe('the record of one’s own beds', () => {
  test('tells how many nights fell inside, how far off and which way', async () => {
    await withNights('anna', [1, 1, 1, 5]);
    const reply = await club.say('record');
    expect(reply.headline).toBe(
      'Bed of anna: 3 of 4 nights inside the range; off by 4 °F, on the whole 4 °F warmer than told.',
    );
    expect(wordsOf(reply)).toContain('19 Jan: told 21 °F (17 to 26), was 23 °F.');
  });

  test('carries a picture that says the same in words', async () => {
    await withNights('anna', [1, -1]);
    const { picture } = await club.say('record');
    expect(picture?.altText).toContain('2 of 2 nights inside the range');
    expect([...(picture?.png.subarray(1, 4) ?? [])]).toEqual([...Buffer.from('PNG')]);
  });

  test('says what has been learned', async () => {
    await withNights('anna', new Array<number>(9).fill(2));
    expect(wordsOf(await club.say('record'))).toMatch(
      /your low tunnel has run \d °F warmer than the book, from 9 nights/,
    );
  });

  test('owns up where the ranges were too narrow', async () => {
    await withNights('anna', [5, -5, 5, -5, 5, -5, 5, -5, 5, -5, 5, -5]);
    expect(wordsOf(await club.say('record'))).toMatch(/My ranges were too narrow here: I widen them by \d+ %/);
  });

  test('without a night yet says how to begin', async () => {
    await club.say(HOME);
    await club.say('bed add name:Tunnel crop:kale covers:"low tunnel"');
    expect((await club.say('record')).headline).toContain('no night yet');
    expect(wordsOf(await club.say('record'))).toContain('/reading bed:"Tunnel" inside:21F');
    expect(wordsOf(await club.say('record', { locale: 'en-GB' }))).toContain('/reading bed:"Tunnel" inside:-6C');
  });

  test('does not call ranges too wide that its nights fell out of', async () => {
    await withNights('anna', new Array<number>(12).fill(4));
    const words = wordsOf(await club.say('record'));
    expect(words).toContain('0 of 12 nights inside the range');
    expect(words).not.toContain('too wide');
  });

  test('leaves readings in doubt out', async () => {
    await withNights('anna', [1, 1]);
    await club.say('reading inside:75F');
    expect((await club.say('record')).headline).toContain('1 of 1 night');
  });
});

describe('the record of a channel', () => {
  async function join(members: readonly string[]): Promise<void> {
    club.with({ poster: posterWith([]) });
    await club.say('warnings start', { manager: true });
    for (const member of members) await club.say('warnings join', { member });
  }

  test('puts all gardens together and names none', async () => {
    const members = ['ada', 'bea', 'cleo'];
    for (const member of members) await withNights(member, [1, 1]);
    await join(members);
    const reply = await club.say('record of:channel', { member: 'dora', place: CHANNEL });
    expect(reply.headline).toMatch(/^3 gardens of this channel: 6 of 6 nights inside the range/);
    expect(wordsOf(reply)).not.toMatch(/ada|bea|cleo/);
  });

  test('tells nothing where so few have read that it would tell on one', async () => {
    for (const member of ['ada', 'bea']) await withNights(member, [1]);
    await join(['ada', 'bea']);
    expect((await club.say('record of:channel')).headline).toContain('At least 3 gardens');
  });
});
