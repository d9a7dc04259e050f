import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { OfficialWarning } from '../../../bot/forecast/forecast.ts';
import { cellOf } from '../../../bot/jobs/cell.ts';
import { directPlace } from '../../../bot/store/delivery-key.ts';
import { addClub, addGrower, HOME } from './club.ts';
import { type JobsWorld, jobsWorld } from './jobs-world.ts';

const CLUB = 'club-1';
const ANNE = '100000000000000021';
const BEN = '100000000000000022';
const STARTER = '100000000000000001';
const NIGHT = '2026-12-01';
const BEFORE = new Date('2026-11-01T12:00:00Z');
/** At the gardens: seven in the morning; covers must be shut by 2:31 pm, so warnings are due at 11:31. */
const MORNING = new Date('2026-12-01T12:00:00Z');
const at = (time: string) => new Date(`2026-12-01T${time}:00Z`);
const DUE = at('16:31');
const SHUT = at('19:31');

let world: JobsWorld;
beforeEach(async () => {
  world = await jobsWorld(MORNING);
  world.forecasts.meanC = -6;
});
afterEach(() => world.close());

const rows = (place = CLUB) => world.store.deliveries.ofNight(place, NIGHT);
const warning = async (place = CLUB) => (await rows(place)).find(({ kind }) => kind === 'warning');

describe('a cold night', () => {
  test('is told of once, a lead before shutting time, with the message kept in the ledger', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }, { id: BEN }], BEFORE);
    const round = world.round();
    await world.runUntil(at('16:25'), round);
    expect(world.poster.posts).toEqual([]);
    await world.runUntil(at('23:00'), round);
    const [post, ...others] = world.poster.to(CLUB);
    expect(others).toEqual([]);
    expect(post?.text).toMatch(/^\d+ of 12 beds at risk tonight\. Shut by 2:30 pm\./);
    expect(await warning()).toMatchObject({ state: 'sent', attempts: 1, messageId: post?.messageId });
    expect(world.poster.searches).toBe(0);
    expect(world.told).toEqual([]);
  });

  test('of one who lost a minus sign moves nobody else’s, and tells of that garden alone', async () => {
    const growers = [{ id: ANNE }, { id: BEN }, { id: STARTER }];
    await addClub(world.store, { id: CLUB }, growers, BEFORE);
    const lost = { latitudeDeg: 43.1, longitudeDeg: 76.3, timeZone: 'Asia/Bishkek' };
    const later = new Date(BEFORE.getTime() + 86_400_000);
    await addGrower(world.store, CLUB, { id: '100000000000000029', site: lost, bedCount: 1 }, later);
    world.now = at('04:00');
    const round = world.round();
    await world.runUntil(at('16:25'), round);
    const [early, ...more] = world.poster.to(CLUB);
    expect(more).toEqual([]);
    expect(early?.text).toMatch(/1 bed\b/);
    expect(early?.text).not.toMatch(/18 beds|2:30 pm/);
    await world.runUntil(at('20:00'), round);
    const [, second, ...others] = world.poster.to(CLUB);
    expect(others).toEqual([]);
    expect(second?.text).toMatch(/^\d+ of 18 beds at risk tonight\. Shut by 2:30 pm\./);
    expect(
      world.postedAt
        .get(second?.messageId ?? '')
        ?.toISOString()
        .slice(11, 15),
    ).toBe('16:3');
  });

  test('is reckoned with the forecast for its own night, though it is gathered before sunrise', async () => {
    await addClub(world.store, { id: CLUB, leadH: 12 }, [{ id: ANNE }], BEFORE);
    world.now = at('06:00');
    await world.runUntil(at('08:00'), world.round());
    expect(world.poster.to(CLUB)).toHaveLength(1);
    const nights = world.forecasts.asked.map(({ wish }) => wish.night?.sunset.toISOString().slice(0, 13));
    expect(new Set(nights)).toEqual(new Set(['2026-12-01T21']));
  });

  test('comes earlier for a channel that wants more time', async () => {
    await addClub(world.store, { id: CLUB, leadH: 6 }, [{ id: ANNE }], BEFORE);
    await world.runUntil(at('13:40'), world.round());
    expect(world.poster.to(CLUB)).toHaveLength(1);
  });

  test('asks each cell once for all members there, whichever process does the work', async () => {
    const growers = Array.from({ length: 12 }, (_, i) => ({
      id: `20000000000000000${i}`,
      bedCount: 1,
      site: { latitudeDeg: HOME.latitudeDeg + (i % 3) * 0.05 },
    }));
    for (const id of ['a', 'b', 'c', 'd']) await addClub(world.store, { id }, growers.slice(0, 0), BEFORE);
    for (const [i, grower] of growers.entries())
      await addGrower(world.store, ['a', 'b', 'c', 'd'][i % 4] ?? '', grower, BEFORE);
    world.now = at('16:00');
    const rounds = [world.round(), world.round()];
    for (; world.now < at('17:00'); world.now = new Date(world.now.getTime() + 60_000)) {
      await Promise.all(rounds.map((round) => round.tick()));
      await Promise.all(rounds.map((round) => round.drained()));
    }
    expect(world.poster.posts).toHaveLength(4);
    expect(world.forecasts.asked).toHaveLength(3);
  });

  test('is worked out in the minutes before it is due, without asking or telling anybody', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    let looks = 0;
    const { gardens } = world.store.channels;
    world.store.channels.gardens = (id) => {
      looks += 1;
      return gardens.call(world.store.channels, id);
    };
    const round = world.round();
    await world.runUntil(at('16:25'), round, 1);
    const asked = world.forecasts.asked.length;
    looks = 0;
    await world.runUntil(at('16:31'), round, 1);
    expect([looks, world.forecasts.asked.length, world.poster.sends]).toEqual([1, asked, 0]);
  });

  test('keeps what was told of each bed, and the hours of the cell, for learning', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    await world.runUntil(at('16:45'), world.round());
    const beds = await world.store.beds.list(ANNE);
    const kept = await world.store.predictions.latest(
      beds.map(({ id }) => id),
      NIGHT,
    );
    expect(kept.size).toBe(6);
    for (const { leafLowC, outsideLowC, leadH, covers } of kept.values()) {
      expect(leafLowC).toBeLessThan(10);
      expect(outsideLowC).toBeLessThan(0);
      expect(leadH).toBeGreaterThan(8);
      expect(beds.some((bed) => bed.covers.join() === covers.join())).toBe(true);
    }
    const hours = await world.store.weather.hours(cellOf(HOME).id, at('00:00'), at('23:00'));
    expect(hours).toHaveLength(23);
  });

  test('names the worst of the nights to come', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    await world.runUntil(at('16:45'), world.round());
    expect(world.poster.to(CLUB)[0]?.text).toMatch(
      /\n(Wednesday|Thursday|Friday) looks like the worst night, outside low about/,
    );
  });
});

describe('a second post', () => {
  const runBoth = async (shiftK: number) => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    const round = world.round();
    await world.runUntil(at('17:00'), round);
    world.forecasts.shiftK = shiftK;
    await world.runUntil(at('23:00'), round);
    return world.poster.to(CLUB);
  };

  test('comes when the leaf low of a bed has fallen by two kelvin, before covers are shut', async () => {
    const posts = await runBoth(-4);
    expect(posts).toHaveLength(2);
    expect(posts[1]?.text).toMatch(/^Worse tonight than I said, for \d beds?\. Shut by 2:30 pm\./);
    expect((await rows()).find(({ kind }) => kind === 'worse-1')).toMatchObject({ state: 'sent' });
  });

  test('says worse in a member’s own copy as well', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE, wantsDirect: true }], BEFORE);
    const round = world.round();
    await world.runUntil(at('17:00'), round);
    world.forecasts.shiftK = -4;
    await world.runUntil(at('20:00'), round);
    expect(world.poster.to(`dm-${ANNE}`).map(({ text }) => text.startsWith('Worse than I said. Home: '))).toEqual([
      false,
      true,
    ]);
  });

  test('does not come for a small change', async () => {
    expect(await runBoth(-0.3)).toHaveLength(1);
  });

  test('does not come for milder news', async () => {
    expect(await runBoth(4)).toHaveLength(1);
  });

  test('is the first where the evening had looked harmless', async () => {
    world.forecasts.meanC = 14;
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    const round = world.round();
    await world.runUntil(at('17:00'), round);
    expect(world.poster.posts).toEqual([]);
    world.forecasts.shiftK = -20;
    await world.runUntil(at('23:00'), round);
    expect(world.poster.to(CLUB).map(({ text }) => text)).toEqual([
      expect.stringMatching(/^Worse tonight than I said/),
    ]);
  });
});

describe('a night that needs nothing', () => {
  test('goes unsaid, and is settled all the same', async () => {
    world.forecasts.meanC = 14;
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    await world.runUntil(at('23:00'), world.round());
    expect(world.poster.posts).toEqual([]);
    expect(await warning()).toMatchObject({ state: 'sent' });
  });

  test('is told in one line where the channel wants to hear so', async () => {
    world.forecasts.meanC = 14;
    await addClub(world.store, { id: CLUB, allClear: true }, [{ id: ANNE }], BEFORE);
    await world.runUntil(at('23:00'), world.round());
    expect(world.poster.posts.map(({ reply }) => reply.headline)).toEqual([
      'Nothing to do tonight: all 6 beds hold. No frost at any leaf.',
    ]);
  });
});

describe('without any forecast', () => {
  beforeEach(() => {
    world.forecasts.silent = true;
  });

  test('the channel is told so when its warning is due, once, with the plain advice', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    const round = world.round();
    await world.runUntil(at('16:32'), round, 1);
    expect(world.poster.posts).toEqual([]);
    await world.runUntil(at('16:40'), round, 1);
    expect(world.poster.posts.map(({ text }) => text)).toEqual([
      [
        'No forecast can be had for tonight. Cover as for a cold night, by 2:30 pm.',
        'No forecast',
        'Cover as for the coldest night you have had lately.',
      ].join('\n'),
    ]);
    await world.runUntil(at('23:00'), round);
    expect(world.poster.posts).toHaveLength(1);
  });

  test('of a break of seconds at the time of gathering nobody hears', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    const round = world.round();
    await world.runUntil(at('16:29'), round, 1);
    world.forecasts.silent = false;
    await world.runUntil(at('16:35'), round, 1);
    expect(world.poster.posts.map(({ text }) => text)).toEqual([
      expect.stringMatching(/^\d of 6 beds at risk tonight/),
    ]);
  });

  test('the last figures are told with their age', async () => {
    world.forecasts.silent = false;
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    world.now = new Date('2026-11-30T16:00:00Z');
    const round = world.round();
    await world.runUntil(new Date('2026-11-30T16:45:00Z'), round);
    expect(world.poster.posts).toHaveLength(1);
    world.forecasts.silent = true;
    world.now = at('16:00');
    await world.runUntil(at('19:15'), round);
    expect(world.poster.posts[1]?.text).toMatch(
      /The last one I had, 24 hours old, said an outside low of about \d+ °F\. Cover as for a colder night than that\./,
    );
  });

  test('a forecast of this morning still serves, with its age', async () => {
    world.forecasts.silent = false;
    await addClub(world.store, { id: CLUB, leadH: 9 }, [{ id: ANNE }], BEFORE);
    await addClub(world.store, { id: 'late' }, [{ id: BEN }], BEFORE);
    world.now = at('10:00');
    const round = world.round();
    await world.runUntil(at('11:00'), round);
    world.forecasts.silent = true;
    await world.runUntil(at('17:00'), round);
    expect(world.poster.to('late')[0]?.text).toMatch(
      /at risk tonight[\s\S]*No service answers now: this is the last forecast I had, fetched \d hours ago\./,
    );
  });

  test('news comes as soon as a forecast can be had again', async () => {
    await addClub(world.store, { id: CLUB, leadH: 12 }, [{ id: ANNE, wantsDirect: true }], BEFORE);
    world.now = at('07:00');
    const round = world.round();
    await world.runUntil(at('18:00'), round);
    world.forecasts.silent = false;
    await world.runUntil(at('18:10'), round, 1);
    const [first, second, ...others] = world.poster.to(CLUB).map(({ text }) => text);
    expect(first).toMatch(/^No forecast can be had for tonight/);
    expect(second).toMatch(/^I have a forecast now\. \d of 6 beds at risk tonight/);
    expect(others).toEqual([]);
    expect(world.poster.to(`dm-${ANNE}`).map(({ text }) => text.split('\n')[0])).toEqual([
      expect.stringMatching(/^No forecast can be had/),
      expect.stringMatching(/^Home: \d of 6 beds at risk tonight/),
    ]);
    await world.runUntil(at('23:00'), round);
    expect(world.poster.to(CLUB)).toHaveLength(2);
  });

  test('news that nothing is to be done corrects the plain advice', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    const round = world.round();
    await world.runUntil(at('16:40'), round, 1);
    world.forecasts.silent = false;
    world.forecasts.meanC = 14;
    await world.runUntil(at('17:00'), round);
    expect(world.poster.to(CLUB)[1]?.text).toMatch(/^I have a forecast now\. Nothing to do tonight: all 6 beds hold\./);
  });

  test('a garden whose cell has none is told apart, and the others get their night', async () => {
    world.forecasts.silent = false;
    const { forecastFor } = world.forecasts;
    world.forecasts.forecastFor = (place, now, wish) => {
      world.forecasts.silent = place.latitudeDeg > 44;
      return forecastFor.call(world.forecasts, place, now, wish);
    };
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }, { id: BEN, site: { latitudeDeg: 44.5 } }], BEFORE);
    await world.runUntil(at('16:45'), world.round());
    const [post] = world.poster.to(CLUB);
    expect(post?.text).toMatch(/^\d of 6 beds that I could work out at risk tonight/);
    expect(post?.text).toContain('No forecast for 1 garden\nCover as for the coldest night you have had lately.');
  });
});

test('official warnings come first, once each, with their link', async () => {
  const frost: OfficialWarning = {
    ...{
      kind: 'hard-freeze',
      event: 'Hard Freeze Warning',
      headline: 'Hard Freeze Warning',
      sender: 'NWS Binghamton NY',
    },
    ...{ from: at('23:00'), until: new Date('2026-12-02T14:00:00Z') },
    ...{ url: 'https://api.weather.gov/alerts/an-invented-one', key: 'BGM.HZ.W.7' },
  };
  world.forecasts.official = {
    kind: 'known',
    warnings: [frost],
    credits: [{ text: 'National Weather Service', url: 'https://www.weather.gov/' }],
  };
  await addClub(world.store, { id: CLUB }, [{ id: ANNE }, { id: BEN, site: { latitudeDeg: 43.3 } }], BEFORE);
  await world.runUntil(at('16:45'), world.round());
  const [post] = world.poster.to(CLUB);
  expect(post?.reply.sections[0]).toEqual({
    title: 'Official warning, which comes first',
    lines: [
      'Hard Freeze Warning until Wed 2 Dec, 9:00 am (NWS Binghamton NY): https://api.weather.gov/alerts/an-invented-one',
    ],
  });
  expect(post?.text.split('Hard Freeze Warning')).toHaveLength(2);
  expect(post?.reply.credits?.map(({ text }) => text)).toContain('National Weather Service');
});

test('an official warning that runs out before the night leads it no more', async () => {
  const frost: OfficialWarning = {
    ...{ kind: 'freeze', event: 'Freeze Warning', headline: 'Freeze Warning', sender: 'NWS Binghamton NY' },
    ...{ from: at('06:00'), until: at('18:00'), url: 'https://www.weather.gov/', key: 'BGM.FZ.W.7' },
  };
  world.forecasts.official = { kind: 'known', warnings: [frost], credits: [] };
  await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
  await world.runUntil(at('16:45'), world.round());
  expect(world.poster.to(CLUB)[0]?.text).not.toContain('Freeze Warning');
});

describe('privacy', () => {
  test('a member who asks gets the own part directly, and only there are beds and site named', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE, wantsDirect: true }, { id: BEN }], BEFORE);
    await world.runUntil(at('23:00'), world.round());
    expect(world.poster.posts.map(({ channelId }) => channelId).toSorted()).toEqual([CLUB, `dm-${ANNE}`]);
    const [own] = world.poster.to(`dm-${ANNE}`);
    expect(own?.text).toMatch(/^Home: \d of 6 beds at risk tonight[\s\S]*Bed \d/);
    expect((await rows(directPlace(ANNE))).map(({ state }) => state)).toEqual(['sent']);
    const [club] = world.poster.to(CLUB);
    const shown = JSON.stringify([club?.text, club?.reply.buttons]);
    for (const secret of ['Home', 'Bed ', ANNE, BEN, '43.1', '-76.3']) expect(shown).not.toContain(secret);
  });

  test('who leaves before the own part is sent gets nothing', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE, wantsDirect: true }], BEFORE);
    world.poster.fail(`dm-${ANNE}`, 'unavailable', { times: 1 });
    const round = world.round();
    await world.runUntil(at('16:35'), round);
    await world.store.eraseMember(ANNE);
    await world.runUntil(at('18:00'), round);
    expect(world.poster.to(`dm-${ANNE}`)).toEqual([]);
  });

  test('no place and no bed of anybody stands in the log', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    world.poster.fail(CLUB, 'unavailable');
    world.forecasts.forecastFor = () => Promise.reject(new Error('43.11,-76.31'));
    await world.runUntil(at('23:00'), world.round(), 20);
    expect(world.told.length).toBeGreaterThan(0);
    for (const secret of ['43.11,', '-76.31', 'Home', 'Bed ']) expect(JSON.stringify(world.told)).not.toContain(secret);
  });
});

describe('when posting fails', () => {
  test('a channel that is forbidden is paused, who started it is told once, and the others get theirs', async () => {
    for (const id of [CLUB, 'other']) await addClub(world.store, { id, startedBy: STARTER }, [], BEFORE);
    await addGrower(world.store, CLUB, { id: ANNE }, BEFORE);
    await addGrower(world.store, 'other', { id: BEN }, BEFORE);
    world.poster.fail(CLUB, 'missing-permission');
    const round = world.round();
    await world.runUntil(at('23:00'), round);
    world.now = new Date('2026-12-02T12:00:00Z');
    await world.runUntil(new Date('2026-12-02T23:00:00Z'), round, 20);
    expect(world.poster.to('other').length).toBeGreaterThanOrEqual(1);
    expect(world.poster.to(`dm-${STARTER}`).map(({ text }) => text)).toEqual([
      [
        'The warnings that you started on Sun 1 Nov are paused: I could not post them.',
        '',
        'I may not write in that channel any more. Give me Send Messages and Attach Files there.',
        'They run again with /warnings start there.',
      ].join('\n'),
    ]);
    expect((await world.store.channels.find(CLUB))?.paused?.reason).toBe('missing-permission');
    expect(world.told.filter(({ msg }) => msg === 'a channel is paused')).toHaveLength(1);
  });

  test('a wait that the service asks for is kept', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    world.poster.fail(CLUB, 'rate-limited', { times: 1, retryAfterS: 1200 });
    const round = world.round();
    await world.runUntil(at('16:50'), round, 1);
    expect(world.poster.sends).toBe(1);
    await world.runUntil(at('17:00'), round, 1);
    expect(world.poster.to(CLUB)).toHaveLength(1);
  });

  test('a service that is down is tried again with growing waits until it is back', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    world.poster.fail(CLUB, 'unavailable', { times: 6 });
    const round = world.round();
    await world.runUntil(at('19:00'), round, 1);
    expect(world.poster.to(CLUB)).toHaveLength(1);
    expect(world.poster.sends).toBe(7);
    expect(await warning()).toMatchObject({ state: 'sent', attempts: 7 });
  });

  test('what could not be posted while it was of use is never posted, and the operator is told', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    world.poster.fail(CLUB, 'unavailable');
    const round = world.round();
    await world.runUntil(at('20:40'), round);
    world.poster.heal();
    await world.runUntil(at('23:00'), round);
    expect(world.poster.to(CLUB)).toEqual([]);
    expect(await warning()).toMatchObject({ state: 'gave_up', lastProblem: 'unavailable' });
    expect(world.told.some(({ msg }) => msg === 'a post came to nothing before it was stale')).toBe(true);
  });

  test('a member who takes no direct messages loses nothing else', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE, wantsDirect: true }], BEFORE);
    world.poster.fail(`dm-${ANNE}`, 'dm-closed');
    await world.runUntil(at('23:00'), world.round());
    expect(world.poster.to(CLUB)).toHaveLength(1);
    expect(await rows(directPlace(ANNE))).toMatchObject([{ state: 'gave_up', lastProblem: 'dm-closed' }]);
  });

  test('an answer that was lost after the post does not make a second one, even when nonces are forgotten', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    world.poster.fail(CLUB, 'unavailable', { times: 1, posted: true });
    const round = world.round();
    await world.runUntil(at('16:32'), round, 1);
    world.poster.forgetNonces();
    await world.runUntil(at('18:00'), round);
    expect(world.poster.to(CLUB)).toHaveLength(1);
    expect(await warning()).toMatchObject({ state: 'sent', messageId: world.poster.to(CLUB)[0]?.messageId });
  });

  test('who may not read back posts again rather than stay silent', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    world.poster.unreadable.add(CLUB);
    world.poster.fail(CLUB, 'unavailable', { times: 1 });
    await world.runUntil(at('18:00'), world.round());
    expect(world.poster.to(CLUB)).toHaveLength(1);
  });
});

describe('one garden’s fault', () => {
  test('does not keep the others from their night, and is owned up to', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    await addGrower(world.store, CLUB, { id: BEN, beds: [[['snow', 'blanket', 'snow'], 'kale']] }, BEFORE);
    await world.runUntil(at('16:45'), world.round());
    const [post] = world.poster.to(CLUB);
    expect(post?.text).toMatch(/^\d of 6 beds that I could work out at risk tonight/);
    expect(post?.text).toContain(
      'One garden I could not work out, through a fault of mine: cover as for a colder night.',
    );
    expect(world.told.map(({ msg }) => msg)).toContain('a garden could not be worked out');
  });
});

describe('after a while in which nothing ran', () => {
  test('a warning that is still of use is caught up', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    world.now = at('20:20');
    await world.runUntil(at('20:25'), world.round({ lookBackH: 12 }));
    expect(world.poster.to(CLUB)).toHaveLength(1);
    expect(world.told).toEqual([]);
  });

  test('one that would come too late is recorded as missed and told to the operator', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], new Date('2026-11-29T12:00:00Z'));
    world.now = at('20:45');
    await world.runUntil(at('21:00'), world.round({ lookBackH: 7 * 24 }));
    expect(world.poster.posts).toEqual([]);
    expect(await warning()).toMatchObject({ state: 'missed' });
    expect(world.told).toMatchObject([
      { count: 3, nights: ['2026-11-29', '2026-11-30', NIGHT], msg: 'posts came to nothing before they were stale' },
    ]);
  });

  test('is owned up to in one line with the next post', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    const round = world.round({ lookBackH: 48 });
    world.now = new Date('2026-12-02T13:00:00Z');
    await world.runUntil(new Date('2026-12-02T16:45:00Z'), round);
    const [post, ...others] = world.poster.to(CLUB);
    expect(others).toEqual([]);
    expect(post?.text).toContain('I was not running when last night’s warning was due, and told you nothing.');
  });

  test('a row that a dead worker holds is taken over, after a look for what it has posted', async () => {
    await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
    const giveUpAt = new Date(SHUT.getTime() + 3_600_000);
    await world.store.deliveries.plan([{ placeId: CLUB, night: NIGHT, kind: 'warning', dueAt: DUE, giveUpAt }]);
    world.now = at('16:35');
    await world.store.deliveries.claim({ worker: 'dead', now: world.now, limit: 1, leaseS: 0.2 });
    const round = world.round();
    await round.tick();
    await round.drained();
    expect(world.poster.posts).toEqual([]);
    await pause(250);
    await round.tick();
    await round.drained();
    expect(world.poster.to(CLUB)).toHaveLength(1);
    expect(world.poster.searches).toBe(1);
  });
});

test('while a host rehearses every post says so first', async () => {
  world.rehearsal = true;
  await addClub(world.store, { id: CLUB }, [{ id: ANNE, wantsDirect: true }], BEFORE);
  await world.runUntil(at('23:00'), world.round());
  expect(world.poster.posts).toHaveLength(2);
  for (const { text } of world.poster.posts) expect(text).toMatch(/^Rehearsal, not for tonight: /);
});

test.each([-60, 60])('a clock that jumps by %i minutes makes no second post and loses none', async (jumpMin) => {
  await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
  const round = world.round();
  await world.runUntil(at('16:40'), round, 1);
  world.now = new Date(world.now.getTime() + jumpMin * 60_000);
  await world.runUntil(at('20:00'), round);
  expect(world.poster.to(CLUB)).toHaveLength(1);
});

test('a clock that jumps over the due time still lets the warning come before shutting time', async () => {
  await addClub(world.store, { id: CLUB }, [{ id: ANNE }], BEFORE);
  const round = world.round();
  await world.runUntil(at('16:20'), round);
  world.now = at('17:20');
  await world.runUntil(at('17:25'), round);
  expect(world.poster.to(CLUB)).toHaveLength(1);
});

test('a member’s own subscription is written to as for a garden, not for a club', async () => {
  await addClub(world.store, { id: 'dm-1', kind: 'direct', startedBy: ANNE }, [{ id: ANNE, locale: 'de-DE' }], BEFORE);
  await world.runUntil(at('23:00'), world.round());
  expect(world.poster.to('dm-1').map(({ reply }) => reply.headline)).toEqual([
    expect.stringMatching(/^Home: \d of 6 beds at risk tonight\. Shut by 14:30\.$/),
  ]);
});

test('a channel without members, and one whose members have no beds, is left in peace', async () => {
  await addClub(world.store, { id: CLUB, allClear: true }, [], BEFORE);
  await addClub(world.store, { id: 'no-beds', allClear: true }, [{ id: ANNE, beds: [] }], BEFORE);
  await world.runUntil(at('23:00'), world.round());
  expect(world.poster.posts).toEqual([]);
  expect(world.told).toEqual([]);
});

test('a channel that is stopped or paused after its row was planned gets nothing', async () => {
  for (const id of [CLUB, 'other']) await addClub(world.store, { id }, [{ id: id === CLUB ? ANNE : BEN }], BEFORE);
  for (const id of [CLUB, 'other']) world.poster.fail(id, 'unavailable', { times: 1 });
  const round = world.round();
  await world.runUntil(at('16:35'), round);
  await world.store.channels.stop(CLUB);
  await world.store.channels.pause('other', { reason: 'asked', at: world.now });
  await world.runUntil(at('18:00'), round);
  expect(world.poster.posts).toEqual([]);
});
