import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { PostError } from '../../../bot/talk/channel-poster.ts';
import { CHANNEL, Club, DIRECT, GUILD, HOME, posterWith, TERMINAL, wordsOf } from './club.ts';

const OTHER_CHANNEL = '200000000000000009';
const manager = { manager: true };

let club: Club;
beforeEach(async () => {
  club = await Club.open();
  club.with({ poster: posterWith([]) });
});
afterEach(() => club.close());

const kept = (id = CHANNEL.channelId ?? '') => club.store.channels.find(id);

describe('start', () => {
  test('keeps the usual settings and says what comes when, for all to see', async () => {
    const reply = await club.say('warnings start', manager);
    expect([reply.headline, reply.private]).toEqual(['Warnings come in this channel from now on.', false]);
    expect(wordsOf(reply)).toContain('3 hours before the earliest shutting time of those who have joined');
    expect(await kept()).toMatchObject({
      ...{ kind: 'channel', guildId: GUILD, startedBy: 'anna', leadH: 3 },
      ...{ morningPost: false, allClear: false, paused: undefined },
    });
  });

  test('takes settings and another channel', async () => {
    const reply = await club.say(`warnings start lead:5 morning:yes all-clear:yes channel:${OTHER_CHANNEL}`, manager);
    expect(reply.headline).toBe('Warnings come in that channel from now on.');
    expect(await kept(OTHER_CHANNEL)).toMatchObject({ leadH: 5, morningPost: true, allClear: true });
    expect(await kept()).toBeUndefined();
  });

  test('lets paused warnings run again as they were set', async () => {
    await club.say('warnings start lead:6', manager);
    await club.say('warnings pause', manager);
    await club.say('warnings start morning:yes', manager);
    expect(await kept()).toMatchObject({ leadH: 6, morningPost: true, paused: undefined });
  });

  test.each([
    [['Send Messages'], 'I lack Send Messages.'],
    [['View Channel', 'Attach Files'], 'I lack View Channel and Attach Files.'],
    [new PostError('channel-gone', 'gone'), 'That channel is not there any more; choose another.'],
    [new PostError('missing-access', 'no'), 'I cannot see that channel'],
    [new PostError('unavailable', 'no'), 'Discord does not tell me my rights just now; nothing was changed.'],
    [new PostError('rate-limited', 'no'), 'Try again in a minute.'],
    [new PostError('refused', 'inner words'), 'Something went wrong on my side'],
  ])('is refused where the bot may not post: %s', async (rights, words) => {
    club.with({ poster: posterWith(rights) });
    const reply = await club.say('warnings start', manager);
    expect([reply.refused, reply.private]).toEqual([true, true]);
    expect(reply.headline).toContain(words);
    expect(await kept()).toBeUndefined();
  });

  test('in direct messages anyone starts their own, which look after the own site', async () => {
    expect((await club.say('warnings start', { place: DIRECT })).headline).toContain('Tell me with /site set');
    await club.say(HOME);
    const reply = await club.say('warnings start', { place: DIRECT });
    expect(reply.headline).toBe('Warnings come to you from now on.');
    const [garden] = await club.store.channels.gardens(DIRECT.channelId ?? '');
    expect(garden?.site.name).toBe('Home');
    expect(garden?.member.directMessages).toBe(true);
  });
});

describe('who and where', () => {
  test.each(['start', 'change lead:4', 'pause', 'stop'])('%s is for who may manage the server', async (action) => {
    await club.say('warnings start', manager);
    const before = await kept();
    const reply = await club.say(`warnings ${action}`, { member: 'ben' });
    expect([reply.refused, reply.private]).toEqual([true, true]);
    expect(reply.headline).toBe('Only members who may manage this server can change its warnings.');
    expect(await kept()).toEqual(before);
  });

  test('between people nothing can be posted', async () => {
    const { guildId: _none, ...between } = CHANNEL;
    const reply = await club.say('warnings start', { place: between, manager: true });
    expect(reply.headline).toContain('I cannot post between people');
  });

  test('a terminal has no channel', async () => {
    const reply = await club.say('warnings start', { place: TERMINAL, manager: true });
    expect(reply.headline).toContain('There is no channel here');
  });

  test('from direct messages no channel of a server can be chosen', async () => {
    const reply = await club.say(`warnings start channel:${OTHER_CHANNEL}`, { place: DIRECT });
    expect(reply.headline).toBe('Give this command in the server of that channel.');
  });

  test('the warnings of another server are none of this one’s', async () => {
    await club.say('warnings start', manager);
    const elsewhere = { ...CHANNEL, guildId: '100000000000000002', channelId: OTHER_CHANNEL };
    const line = `warnings stop channel:${CHANNEL.channelId}`;
    expect((await club.say(line, { place: elsewhere, manager: true })).headline).toContain(
      'No warnings come in that channel yet',
    );
    expect(await kept()).toBeDefined();
  });

  test('a channel of another server is refused, and its own warnings stay', async () => {
    await club.say('warnings start', manager);
    const elsewhere = { ...CHANNEL, guildId: '100000000000000002', channelId: OTHER_CHANNEL };
    for (const action of ['start', 'stop']) {
      const line = `warnings ${action} channel:${CHANNEL.channelId}`;
      expect((await club.say(line, { member: 'mallory', place: elsewhere, manager: true })).refused).toBe(true);
    }
    expect(await kept()).toMatchObject({ guildId: GUILD, startedBy: 'anna' });
  });

  test('without anything to post with, that is said', async () => {
    const { poster: _none, ...rest } = club.services;
    club.services = rest;
    expect((await club.say('warnings start', manager)).headline).toContain('they need Discord');
  });
});

describe('show, change, pause and stop', () => {
  beforeEach(() => club.say('warnings start', manager));

  test('change sets what is named and leaves the rest', async () => {
    await club.say('warnings change morning:yes', manager);
    await club.say('warnings change lead:4', manager);
    expect(await kept()).toMatchObject({ leadH: 4, morningPost: true, allClear: false });
  });

  test('pause stops them for a while, once', async () => {
    expect((await club.say('warnings pause', manager)).headline).toBe(
      'No warnings come in this channel until /warnings start.',
    );
    expect((await kept())?.paused?.reason).toBe('asked');
    expect((await club.say('warnings pause', manager)).headline).toContain('They are paused already.');
    const shown = await club.say('warnings show');
    expect(shown.headline).toBe('Warnings come in this channel, but are paused.');
    expect(wordsOf(shown)).toContain('Paused because somebody asked for it.');
  });

  test('show says why the bot itself paused them', async () => {
    await club.store.channels.pause(CHANNEL.channelId ?? '', { reason: 'missing-rights', at: new Date(0) });
    expect(wordsOf(await club.say('warnings show'))).toContain('Paused because I could not post there.');
  });

  test('stop ends them and forgets who had joined', async () => {
    await club.say(HOME);
    await club.say('warnings join');
    expect((await club.say('warnings stop', manager)).headline).toContain('who had joined is forgotten');
    expect(await kept()).toBeUndefined();
    expect(await club.store.channels.joinedBy('anna')).toEqual([]);
  });

  test('show tells the settings and the own part, to the asker alone', async () => {
    await club.say(HOME);
    const before = await club.say('warnings show');
    expect(before.private).toBe(true);
    expect(wordsOf(before)).toContain('They look after 0 sites. You have not joined: /warnings join.');
    await club.say('warnings join');
    expect(wordsOf(await club.say('warnings show'))).toContain('They look after 1 site. You have joined.');
  });

  test.each([
    ['warnings start lead:0', 'lead is a whole number from 1 to 12.'],
    ['warnings start lead:13', 'lead is a whole number from 1 to 12.'],
    ['warnings start lead:soon', 'lead is a whole number from 1 to 12.'],
    ['warnings start morning:perhaps', 'Answer morning with yes or no.'],
    ['warnings start channel:garden', 'Choose a channel of this server.'],
    ['warnings change', 'Say what to change: lead, morning or all-clear.'],
    ['warnings change all-clear:perhaps', 'Answer all-clear with yes or no.'],
    ['warnings join direct:perhaps', 'Answer direct with yes or no.'],
  ])('%s is refused with what would be right', async (line, words) => {
    const before = await kept();
    const reply = await club.say(line, manager);
    expect([reply.refused, reply.private, reply.headline]).toEqual([true, true, words]);
    expect(await kept()).toEqual(before);
  });
});

describe('join and leave', () => {
  test('a member joins with a site, and may have the own part written directly', async () => {
    await club.say('warnings start', manager);
    await club.say(HOME);
    await club.say('site set lat:52 lon:5 name:Allotment');
    const reply = await club.say('warnings join site:Allotment direct:yes');
    expect(reply.private).toBe(true);
    expect(reply.headline).toBe('The warnings in this channel look after Allotment from now on.');
    expect(wordsOf(reply)).toContain('Your own part comes to you directly as well.');
    expect(wordsOf(reply)).toContain('Tell me your beds with /bed add.');
    const [garden] = await club.store.channels.gardens(CHANNEL.channelId ?? '');
    expect([garden?.site.name, garden?.wantsDirect, garden?.member.directMessages]).toEqual(['Allotment', true, true]);
  });

  test('without a site named, whatever is the usual one is looked after', async () => {
    await club.say('warnings start', manager);
    await club.say(HOME);
    await club.say('site set lat:52 lon:5 name:Allotment');
    await club.say('warnings join');
    await club.say('site default site:Allotment');
    expect((await club.store.channels.gardens(CHANNEL.channelId ?? ''))[0]?.site.name).toBe('Allotment');
  });

  test('a place far from the others is asked about, and joins when that is right', async () => {
    await club.say('warnings start', manager);
    await club.say('site set lat:43.11 lon:-76.30');
    await club.say('warnings join');
    await club.say('site set lat:43.2 lon:76.30', { member: 'ben' });
    const asked = await club.say('warnings join', { member: 'ben' });
    expect(asked.headline).toMatch(/^Home is far from everybody else here\. Is it right\?$/);
    expect(wordsOf(asked)).toContain('43.2° N, 76.3° E, by the clock of Asia/Almaty');
    expect(await club.store.channels.gardens(CHANNEL.channelId ?? '')).toHaveLength(1);
    await club.press(asked.buttons?.[0]?.id ?? '', { member: 'ben' });
    expect(await club.store.channels.gardens(CHANNEL.channelId ?? '')).toHaveLength(2);
    await club.say('warnings leave', { member: 'ben' });
    await club.say('warnings join sure:yes', { member: 'ben' });
    expect(await club.store.channels.gardens(CHANNEL.channelId ?? '')).toHaveLength(2);
  });

  test('the first to join, and who is not far off, is not asked', async () => {
    await club.say('warnings start', manager);
    for (const [member, lon] of [
      ['anna', '-76.30'],
      ['ben', '-80'],
    ]) {
      await club.say(`site set lat:43.11 lon:${lon}`, { member: member ?? '' });
      expect((await club.say('warnings join', { member: member ?? '' })).headline).toContain('look after Home');
    }
  });

  test('a member who leaves is looked after no longer', async () => {
    await club.say('warnings start', manager);
    await club.say(HOME);
    await club.say('warnings join');
    expect((await club.say('warnings leave')).headline).toContain('leave your beds out from now on');
    expect(await club.store.channels.gardens(CHANNEL.channelId ?? '')).toEqual([]);
    expect((await club.say('warnings leave')).headline).toBe('You had not joined them.');
  });

  test.each(['join', 'leave', 'show', 'stop', 'pause', 'change lead:4'])(
    '%s where no warnings come says so',
    async (action) => {
      await club.say(HOME);
      const reply = await club.say(`warnings ${action}`, manager);
      expect(reply.refused).toBe(true);
      expect(reply.headline).toContain('No warnings come in this channel yet: they start with /warnings start.');
    },
  );

  test('who has no site is told how to set one', async () => {
    await club.say('warnings start', manager);
    expect((await club.say('warnings join', { member: 'ben' })).headline).toContain('Tell me with /site set');
  });
});

describe('the clock of the next warning', () => {
  test('is told once a garden has joined, by that garden’s clock', async () => {
    expect(wordsOf(await club.say('warnings start', manager))).toContain('Nothing comes until somebody has joined');
    await club.say(HOME);
    await club.say('warnings join');
    // Noon UTC is 6 am there; covers are shut about 3 pm in January.
    const early = { ...manager, now: new Date('2026-01-20T12:00:00Z') };
    expect(wordsOf(await club.say('warnings show', early))).toMatch(
      /Next: today about 12:\d\d pm; I look at the forecast again at 2:\d\d pm\./,
    );
    expect(wordsOf(await club.say('warnings change lead:5', early))).toMatch(/Next: today about 10:\d\d am;/);
    const late = { ...manager, now: new Date('2026-01-20T23:00:00Z') };
    expect(wordsOf(await club.say('warnings show', late))).toMatch(/Next: tomorrow about 10:\d\d am;/);
  });

  test('is not told while the warnings are paused', async () => {
    await club.say(HOME);
    await club.say('warnings start', manager);
    await club.say('warnings join');
    await club.say('warnings pause', manager);
    expect(wordsOf(await club.say('warnings show'))).not.toContain('Next:');
  });
});
