import { expect, it } from 'vitest';
import type { Outcome, Prediction, ReadingFacts } from '../../../../bot/store/port/readings.ts';
import { clubChannel, minute, type World, withBed } from './world.ts';

function reading(bedId: string, more: Partial<ReadingFacts> = {}): ReadingFacts {
  return {
    bedId,
    night: '2026-12-01',
    outsideLowC: -6.5,
    underCoverLowC: -2.25,
    origin: 'typed',
    doubt: undefined,
    covers: ['cold-frame'],
    ...more,
  };
}

function prediction(memberId: string, bedId: string, more: Partial<Prediction> = {}): Prediction {
  return {
    memberId,
    bedId,
    night: '2026-12-01',
    issuedAt: minute(0),
    service: 'metno',
    leadH: 15.5,
    outsideLowC: -7,
    outsideSpreadK: 1.5,
    underCoverLowC: -3,
    underCoverSpreadK: 1.8,
    book: { outsideLowC: -6.5, outsideSpreadK: 1.75, underCoverLowC: -3.5, underCoverSpreadK: 2.25 },
    leafLowC: -3.5,
    leafSpreadK: 2,
    verdict: 'holds',
    covers: ['cold-frame'],
    ...more,
  };
}

export function readingsSpecification(world: World): void {
  it('gives back readings in order of nights, from a night on', async () => {
    const { store } = world;
    const { bedId } = await withBed(store, 'discord:1');
    const nights = ['2026-12-03', '2026-12-01', '2026-12-02'];
    const logged = nights.map((night) => reading(bedId, { night, origin: 'logger', outsideLowC: undefined }));
    await store.readings.record('discord:1', logged, minute(1));
    const kept = await store.readings.ofBed('discord:1', bedId);
    expect(kept.map((row) => row.night)).toEqual(nights.toSorted());
    expect(kept[0]).toEqual({ ...logged[1], id: kept[0]?.id, recordedAt: minute(1) });
    expect(await store.readings.ofBed('discord:1', bedId, '2026-12-02')).toHaveLength(2);
  });

  it('lets a later reading of the same night replace the earlier, but not what it leaves out', async () => {
    const { store } = world;
    const { bedId } = await withBed(store, 'discord:1');
    await store.readings.record('discord:1', [reading(bedId, { doubt: 'too-warm' })], minute(1));
    await store.readings.record(
      'discord:1',
      [reading(bedId, { outsideLowC: -8, underCoverLowC: undefined })],
      minute(2),
    );
    const [kept] = await store.readings.ofBed('discord:1', bedId);
    expect(kept).toMatchObject({ outsideLowC: -8, underCoverLowC: -2.25, doubt: undefined, recordedAt: minute(2) });
  });

  it("records all of a list or none, and nothing for another member's bed", async () => {
    const { store } = world;
    const own = await withBed(store, 'discord:1');
    const other = await withBed(store, 'discord:2');
    const mixed = [reading(own.bedId), reading(other.bedId)];
    await expect(store.readings.record('discord:1', mixed, minute(1))).rejects.toMatchObject({ code: 'not-found' });
    const silent = [
      reading(own.bedId),
      reading(own.bedId, { night: '2026-12-02', outsideLowC: undefined, underCoverLowC: undefined }),
    ];
    await expect(store.readings.record('discord:1', silent, minute(1))).rejects.toMatchObject({ code: 'bad-value' });
    expect(await store.readings.ofBed('discord:1', own.bedId)).toEqual([]);
    expect(await store.readings.ofBed('discord:2', other.bedId)).toEqual([]);
  });

  it('keeps a doubted reading apart until the member confirms it', async () => {
    const { store } = world;
    const { bedId } = await withBed(store, 'discord:1');
    await store.predictions.keep([prediction('discord:1', bedId)]);
    await store.readings.record('discord:1', [reading(bedId, { doubt: 'too-warm' })], minute(1));
    expect(await store.predictions.scored({ kind: 'all' }, '2026-12-01')).toEqual([]);
    const [doubted] = await store.readings.ofBed('discord:1', bedId);
    expect(await store.readings.confirm('discord:2', doubted?.id ?? '')).toBe(false);
    expect(await store.readings.confirm('discord:1', doubted?.id ?? '')).toBe(true);
    expect(await store.predictions.scored({ kind: 'all' }, '2026-12-01')).toHaveLength(1);
    expect(await store.readings.remove('discord:2', doubted?.id ?? '')).toBe(false);
    expect(await store.readings.remove('discord:1', doubted?.id ?? '')).toBe(true);
  });

  it('knows the newest prediction of each bed, and passes over beds that are gone', async () => {
    const { store } = world;
    const { bedId } = await withBed(store, 'discord:1');
    const newer = prediction('discord:1', bedId, { issuedAt: minute(9), leafLowC: -5, verdict: 'leaf burn' });
    await store.predictions.keep([newer, prediction('discord:1', bedId), prediction('discord:1', 'gone')]);
    await store.predictions.keep([prediction('discord:2', bedId, { issuedAt: minute(20) })]);
    expect(await store.predictions.latest([bedId, 'gone'], '2026-12-01')).toEqual(new Map([[bedId, newer]]));
    expect(await store.predictions.latest([bedId], '2026-12-02')).toEqual(new Map());
  });

  it('sets predictions beside readings for a bed, for a channel and for all', async () => {
    const { store } = world;
    const own = await withBed(store, 'discord:1');
    const other = await withBed(store, 'discord:2');
    await store.channels.start(clubChannel('club', 'discord:9'), minute(0));
    await store.channels.join('club', 'discord:2', { siteId: undefined, wantsDirect: false }, minute(0));
    for (const [memberId, bedId] of [
      ['discord:1', own.bedId],
      ['discord:2', other.bedId],
    ] as const) {
      await store.predictions.keep([
        prediction(memberId, bedId),
        prediction(memberId, bedId, { night: '2026-11-30' }),
        prediction(memberId, bedId, { night: '2026-12-02' }),
      ]);
      await store.readings.record(memberId, [reading(bedId), reading(bedId, { night: '2026-11-30' })], minute(1));
    }
    const [scored, ...others] = await store.predictions.scored(
      { kind: 'beds', memberId: 'discord:1', bedIds: [own.bedId, other.bedId] },
      '2026-12-01',
    );
    const [kept] = await store.readings.ofBed('discord:1', own.bedId, '2026-12-01');
    expect(scored).toEqual({ prediction: prediction('discord:1', own.bedId), reading: kept });
    expect(others).toEqual([]);
    const club = await store.predictions.scored({ kind: 'channel', channelId: 'club' }, '2026-12-01');
    expect(club.map((night) => night.prediction.bedId)).toEqual([other.bedId]);
    expect(await store.predictions.scored({ kind: 'all' }, '2026-11-01')).toHaveLength(4);
  });

  it('tells how crops came through for a member and the members of the same channels, and for nobody else', async () => {
    const { store } = world;
    for (const memberId of ['discord:1', 'discord:2', 'discord:3']) {
      const { bedId } = await withBed(store, memberId);
      const outcome: Outcome = {
        ...{ bedId, night: '2026-12-01', crop: 'kale', outcome: 'no-mark', leafLowC: -8, hardeningFraction: 1 },
      };
      await store.outcomes.record(memberId, outcome, minute(1));
    }
    await store.channels.start(clubChannel('club', 'discord:9'), minute(0));
    await store.channels.start(clubChannel('other-club', 'discord:9'), minute(0));
    for (const [club, memberId] of [
      ['club', 'discord:1'],
      ['club', 'discord:2'],
      ['other-club', 'discord:3'],
    ] as const) {
      await store.channels.join(club, memberId, { siteId: undefined, wantsDirect: false }, minute(0));
    }
    const around = await store.outcomes.around('discord:1', ['kale', 'leek']);
    expect(around.map(({ otherIndex }) => otherIndex).toSorted()).toEqual([0, undefined]);
    expect(await store.outcomes.around('discord:1', ['leek'])).toEqual([]);
    expect(await store.outcomes.around('discord:3', ['kale'])).toHaveLength(1);
  });

  it('keeps how crops came through, the last answer for a night standing', async () => {
    const { store } = world;
    const { bedId } = await withBed(store, 'discord:1');
    const outcome: Outcome = {
      bedId,
      night: '2026-12-01',
      crop: 'kale',
      outcome: 'no-mark',
      leafLowC: -8.5,
      hardeningFraction: 0.75,
    };
    await store.outcomes.record('discord:1', outcome, minute(1));
    await store.outcomes.record('discord:1', { ...outcome, outcome: 'leaf-burn' }, minute(2));
    await store.outcomes.record('discord:1', { ...outcome, crop: 'leek' }, minute(2));
    await expect(store.outcomes.record('discord:2', outcome, minute(3))).rejects.toMatchObject({ code: 'not-found' });
    expect(await store.outcomes.ofMember('discord:1', 'kale')).toEqual([{ ...outcome, outcome: 'leaf-burn' }]);
    await store.channels.start(clubChannel('club', 'discord:9'), minute(0));
    expect(await store.outcomes.ofChannel('club', 'kale')).toEqual([]);
    await store.channels.join('club', 'discord:1', { siteId: undefined, wantsDirect: false }, minute(0));
    expect(await store.outcomes.ofChannel('club', 'kale')).toHaveLength(1);
  });

  it("marks a member's own beds as covered for a night, as often as the button is pressed", async () => {
    const { store } = world;
    const own = await withBed(store, 'discord:1');
    const other = await withBed(store, 'discord:2');
    const beds = [own.bedId, other.bedId, 'gone'];
    expect(await store.covered.mark('discord:1', beds, '2026-12-01', minute(1))).toBe(1);
    expect(await store.covered.mark('discord:1', beds, '2026-12-01', minute(2))).toBe(1);
    expect(await store.covered.marked(beds, '2026-12-01')).toEqual(new Set([own.bedId]));
    expect(await store.covered.marked(beds, '2026-12-02')).toEqual(new Set());
  });
}
