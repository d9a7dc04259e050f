import { expect, it } from 'vitest';
import { bedFacts, clubChannel, homeFacts, minute, planned, type World, withBed } from './world.ts';

export function channelsSpecification(world: World): void {
  it('gives back a subscription as it was started, and running', async () => {
    const { channels } = world.store;
    const channel = await channels.start(
      clubChannel('club', 'discord:1', { leadH: 2.5, morningPost: true }),
      minute(0),
    );
    expect(channel).toEqual({
      ...clubChannel('club', 'discord:1', { leadH: 2.5, morningPost: true }),
      since: minute(0),
      paused: undefined,
    });
    expect(await channels.find('club')).toEqual(channel);
    expect(await channels.find('other')).toBeUndefined();
  });

  it('changes what a change names, and refuses a lead of more than a day', async () => {
    const { channels } = world.store;
    const channel = await channels.start(clubChannel('club', 'discord:1'), minute(0));
    expect(await channels.change('club', { allClear: true })).toEqual({ ...channel, allClear: true });
    await expect(channels.change('club', { leadH: 25 })).rejects.toMatchObject({ code: 'bad-value' });
    await expect(channels.change('other', { leadH: 2 })).rejects.toMatchObject({ code: 'not-found' });
  });

  it('tells only one of two that pause it at once', async () => {
    const { channels } = world.store;
    await channels.start(clubChannel('club', 'discord:1'), minute(0));
    const pause = { reason: 'missing-rights', at: minute(1) };
    const told = await Promise.all([channels.pause('club', pause), channels.pause('club', pause)]);
    expect(told.filter(Boolean)).toHaveLength(1);
    expect((await channels.find('club'))?.paused).toEqual(pause);
    expect(await channels.resume('club')).toBe(true);
    expect(await channels.resume('club')).toBe(false);
    expect((await channels.find('club'))?.paused).toBeUndefined();
  });

  it('gives up what is still due when it is paused or stopped, and nothing else', async () => {
    const { channels, deliveries } = world.store;
    for (const id of ['paused', 'stopped', 'running']) {
      await channels.start(clubChannel(id, 'discord:1'), minute(0));
      await deliveries.plan([planned(id)]);
    }
    await channels.pause('paused', { reason: 'missing-rights', at: minute(1) });
    expect(await channels.stop('stopped')).toBe(true);
    expect(await channels.stop('stopped')).toBe(false);
    const states = await Promise.all(
      ['paused', 'stopped', 'running'].map((id) => deliveries.ofNight(id, '2026-12-01')),
    );
    expect(states.flat().map(({ state, lastProblem }) => [state, lastProblem])).toEqual([
      ['gave_up', 'missing-rights'],
      ['gave_up', 'stopped'],
      ['due', undefined],
    ]);
  });

  it('runs again when it is started anew', async () => {
    const { channels } = world.store;
    await channels.start(clubChannel('club', 'discord:1'), minute(0));
    await channels.pause('club', { reason: 'missing-rights', at: minute(1) });
    const again = await channels.start(clubChannel('club', 'discord:2', { leadH: 4 }), minute(2));
    expect(again).toMatchObject({ leadH: 4, startedBy: 'discord:2', paused: undefined, since: minute(0) });
  });

  it('remembers how a member has joined, and lets them change it and leave', async () => {
    const { store } = world;
    const { siteId } = await withBed(store, 'discord:1');
    await store.channels.start(clubChannel('club', 'discord:9'), minute(0));
    await store.channels.join('club', 'discord:1', { siteId: undefined, wantsDirect: false }, minute(1));
    const changed = await store.channels.join('club', 'discord:1', { siteId, wantsDirect: true }, minute(2));
    expect(changed).toEqual({
      channelId: 'club',
      memberId: 'discord:1',
      siteId,
      wantsDirect: true,
      since: minute(1),
    });
    expect(await store.channels.joinedBy('discord:1')).toEqual([changed]);
    expect(await store.channels.leave('club', 'discord:1')).toBe(true);
    expect(await store.channels.leave('club', 'discord:1')).toBe(false);
  });

  it("cannot be joined with another member's site, nor where there is no subscription", async () => {
    const { store } = world;
    const { siteId } = await withBed(store, 'discord:1');
    await store.channels.start(clubChannel('club', 'discord:9'), minute(0));
    for (const [channelId, facts] of [
      ['club', { siteId, wantsDirect: false }],
      ['nowhere', { siteId: undefined, wantsDirect: false }],
    ] as const) {
      const joined = store.channels.join(channelId, 'discord:2', facts, minute(1));
      await expect(joined).rejects.toMatchObject({ code: 'not-found' });
    }
  });

  it('hands the planner every running channel once, page by page, with the places of its members', async () => {
    const { store } = world;
    const plot = await store.sites.add('discord:1', { ...homeFacts, name: 'Plot', latitudeDeg: -33.4 }, minute(0));
    await withBed(store, 'discord:1');
    for (const id of ['a', 'b', 'c', 'd', 'e']) await store.channels.start(clubChannel(id, 'discord:9'), minute(0));
    await store.channels.pause('c', { reason: 'asked', at: minute(1) });
    await store.channels.join('b', 'discord:1', { siteId: plot.id, wantsDirect: false }, minute(1));
    await store.channels.join('b', 'discord:2', { siteId: undefined, wantsDirect: false }, minute(1));
    const pages = [await store.channels.running(undefined, 2), await store.channels.running('b', 2)];
    expect(pages.map((page) => page.map(({ channel }) => channel.id))).toEqual([
      ['a', 'b'],
      ['d', 'e'],
    ]);
    expect(pages[0]?.[1]?.places).toEqual([
      {
        ...{ latitudeDeg: -33.4, longitudeDeg: homeFacts.longitudeDeg, heightM: homeFacts.heightM },
        ...{ timeZone: 'Europe/Vienna', since: minute(1) },
      },
    ]);
    expect(await store.channels.running('e', 2)).toEqual([]);
  });

  it("gathers the members' gardens, each at the site joined with, else at the default", async () => {
    const { store } = world;
    const { siteId } = await withBed(store, 'discord:1');
    const plot = await store.sites.add('discord:1', { ...homeFacts, name: 'Plot' }, minute(1));
    await store.beds.add('discord:1', bedFacts(plot.id, { name: 'Plot bed', covers: [] }), minute(1));
    await withBed(store, 'discord:2');
    await store.shed.put('discord:2', { cover: 'tarp', count: 2 }, minute(1));
    await store.channels.start(clubChannel('club', 'discord:9'), minute(0));
    await store.channels.join('club', 'discord:1', { siteId: plot.id, wantsDirect: true }, minute(2));
    await store.channels.join('club', 'discord:2', { siteId: undefined, wantsDirect: false }, minute(1));
    await store.channels.join('club', 'discord:3', { siteId: undefined, wantsDirect: false }, minute(1));
    const gardens = await store.channels.gardens('club');
    expect(gardens.map(({ member, site, beds }) => [member.id, site.name, beds.map((bed) => bed.name)])).toEqual([
      ['discord:2', 'Home', ['Frame by the wall']],
      ['discord:1', 'Plot', ['Plot bed']],
    ]);
    expect(gardens[0]).toMatchObject({ spareCovers: [{ cover: 'tarp', count: 2 }], wantsDirect: false });
    await store.sites.makeDefault('discord:1', plot.id);
    await store.sites.remove('discord:1', plot.id);
    const after = await store.channels.gardens('club');
    expect(after.map(({ site }) => site.id)).toContain(siteId);
  });
}
