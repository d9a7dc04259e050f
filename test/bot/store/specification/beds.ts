import { expect, it } from 'vitest';
import { bedFacts, homeFacts, minute, type World, withBed } from './world.ts';

const FRAME = {
  walls: 'wood',
  depthM: 1.22,
  lengthM: 2.44,
  backM: 0.3,
  frontM: 0.2,
  facingDeg: 170,
} as const;

export function bedsSpecification(world: World): void {
  it('gives back a bed as it was told, covers from outside to inside', async () => {
    const { store } = world;
    const site = await store.sites.add('discord:1', homeFacts, minute(0));
    const facts = bedFacts(site.id, {
      frame: FRAME,
      mulch: 'straw',
      hardeningNote: 'sown under glass',
      covers: ['tarp', 'cold-frame', 'hoops', 'blanket'],
    });
    const bed = await store.beds.add('discord:1', facts, minute(1));
    expect(bed).toMatchObject({ ...facts, memberId: 'discord:1', coversSince: minute(1), plantings: [] });
    expect(await store.beds.find('discord:1', bed.id)).toEqual(bed);
  });

  it('remembers since when a stack lies, and only a different stack starts anew', async () => {
    const { store } = world;
    const { bedId } = await withBed(store, 'discord:1');
    const same = await store.beds.change('discord:1', bedId, { covers: ['cold-frame', 'blanket'] }, minute(5));
    expect(same.coversSince).toEqual(minute(0));
    const turned = await store.beds.change('discord:1', bedId, { covers: ['blanket', 'cold-frame'] }, minute(6));
    expect(turned).toMatchObject({ covers: ['blanket', 'cold-frame'], coversSince: minute(6) });
    const bare = await store.beds.change('discord:1', bedId, { covers: [] }, minute(7));
    expect(await store.beds.find('discord:1', bedId)).toEqual(bare);
    expect(bare.covers).toEqual([]);
  });

  it('changes what a change names and takes a frame away when it is named as undefined', async () => {
    const { store } = world;
    const { bedId } = await withBed(store, 'discord:1');
    const framed = await store.beds.change('discord:1', bedId, { frame: FRAME, soil: 'dry-loam' }, minute(1));
    expect(framed).toMatchObject({ frame: FRAME, soil: 'dry-loam', name: 'Frame by the wall' });
    const unframed = await store.beds.change('discord:1', bedId, { frame: undefined }, minute(2));
    expect(unframed).toEqual({ ...framed, frame: undefined });
  });

  it('lists beds by age, of one site or of all', async () => {
    const { store } = world;
    const home = await store.sites.add('discord:1', homeFacts, minute(0));
    const plot = await store.sites.add('discord:1', { ...homeFacts, name: 'Allotment' }, minute(0));
    await store.beds.add('discord:1', bedFacts(plot.id, { name: 'B' }), minute(2));
    await store.beds.add('discord:1', bedFacts(home.id, { name: 'A' }), minute(1));
    expect((await store.beds.list('discord:1')).map((bed) => bed.name)).toEqual(['A', 'B']);
    expect((await store.beds.list('discord:1', plot.id)).map((bed) => bed.name)).toEqual(['B']);
  });

  it("cannot be laid on another member's site", async () => {
    const { store } = world;
    const { siteId, bedId } = await withBed(store, 'discord:1');
    const other = await withBed(store, 'discord:2');
    const stolen = store.beds.add('discord:2', bedFacts(siteId, { name: 'New' }), minute(1));
    await expect(stolen).rejects.toMatchObject({ code: 'not-found' });
    const moved = store.beds.change('discord:2', other.bedId, { siteId }, minute(1));
    await expect(moved).rejects.toMatchObject({ code: 'not-found' });
    const changed = store.beds.change('discord:2', bedId, { name: 'Mine' }, minute(1));
    await expect(changed).rejects.toMatchObject({ code: 'not-found' });
    expect(await store.beds.remove('discord:2', bedId)).toBe(false);
    expect(await store.beds.find('discord:2', bedId)).toBeUndefined();
  });

  it('refuses a second bed of the same name on one site', async () => {
    const { store } = world;
    const { siteId } = await withBed(store, 'discord:1');
    const again = store.beds.add('discord:1', bedFacts(siteId, { name: 'FRAME BY THE WALL' }), minute(1));
    await expect(again).rejects.toMatchObject({ code: 'name-taken' });
  });

  it('leaves no half of a bed behind when one of its rows is refused', async () => {
    const { store } = world;
    const { siteId } = await withBed(store, 'discord:1');
    const halved = store.beds.add(
      'discord:1',
      bedFacts(siteId, { name: 'Half', covers: ['tarp', 'no\0tarp'] }),
      minute(1),
    );
    await expect(halved).rejects.toMatchObject({ code: 'bad-value' });
    expect((await store.beds.list('discord:1')).map((bed) => bed.name)).toEqual(['Frame by the wall']);
  });

  it('gives back a bed with what grows in it, and keeps neither when a planting is refused', async () => {
    const { store } = world;
    const { siteId } = await withBed(store, 'discord:1');
    const kale = {
      crop: 'kale',
      stage: 'growing',
      since: '2026-10-05',
      hardened: undefined,
      sown: '2026-08-20',
    } as const;
    const leek = { crop: 'leek', stage: 'grown', since: '2026-10-05', hardened: true, setOut: '2026-07-01' } as const;
    const bed = await store.beds.add('discord:1', bedFacts(siteId, { name: 'Planted' }), minute(1), [kale, leek]);
    expect(bed.plantings).toMatchObject([kale, leek]);
    expect(await store.beds.find('discord:1', bed.id)).toEqual(bed);
    const refused = [kale, { ...leek, crop: 'le\0ek' }];
    const halved = store.beds.add('discord:1', bedFacts(siteId, { name: 'Half' }), minute(1), refused);
    await expect(halved).rejects.toMatchObject({ code: 'bad-value' });
    expect((await store.beds.list('discord:1')).map(({ name }) => name)).toEqual(['Frame by the wall', 'Planted']);
  });

  it('keeps the days of sowing and setting out until a change names them', async () => {
    const { store } = world;
    const { bedId } = await withBed(store, 'discord:1');
    const facts = {
      crop: 'kale',
      stage: 'growing',
      since: '2026-10-05',
      hardened: undefined,
      sown: '2026-08-20',
    } as const;
    const kale = await store.plantings.add('discord:1', bedId, facts);
    expect(kale).toMatchObject({ sown: '2026-08-20', setOut: undefined });
    const later = await store.plantings.change('discord:1', kale.id, { setOut: '2026-09-12' });
    expect(later).toEqual({ ...kale, setOut: '2026-09-12' });
    const cleared = await store.plantings.change('discord:1', kale.id, { sown: undefined });
    expect(cleared).toEqual({ ...later, sown: undefined });
  });

  it('keeps plantings in the order in which they were set', async () => {
    const { store } = world;
    const { bedId } = await withBed(store, 'discord:1');
    for (const crop of ['spinach', 'kale', 'claytonia']) {
      await store.plantings.add('discord:1', bedId, { crop, stage: 'growing', since: '2026-10-05', hardened: true });
    }
    const bed = await store.beds.find('discord:1', bedId);
    expect(bed?.plantings.map((planting) => planting.crop)).toEqual(['spinach', 'kale', 'claytonia']);
  });

  it('follows the hardening of plantings and passes over those pulled meanwhile', async () => {
    const { store } = world;
    const { bedId } = await withBed(store, 'discord:1');
    const facts = { crop: 'kale', stage: 'grown', since: '2026-09-01', hardened: undefined } as const;
    const kale = await store.plantings.add('discord:1', bedId, facts);
    const hardening = { fraction: 0.625, at: minute(9) };
    await store.plantings.keepHardening(
      new Map([
        ['pulled', hardening],
        [kale.id, hardening],
      ]),
    );
    const bed = await store.beds.find('discord:1', bedId);
    expect(bed?.plantings).toEqual([{ ...facts, id: kale.id, hardening }]);
  });

  it('lets only the owner change or pull a planting', async () => {
    const { store } = world;
    const { bedId } = await withBed(store, 'discord:1');
    const facts = { crop: 'kale', stage: 'growing', since: '2026-09-01', hardened: false } as const;
    const kale = await store.plantings.add('discord:1', bedId, facts);
    await expect(store.plantings.add('discord:2', bedId, facts)).rejects.toMatchObject({ code: 'not-found' });
    await expect(store.plantings.change('discord:2', kale.id, { crop: 'leek' })).rejects.toMatchObject({
      code: 'not-found',
    });
    expect(await store.plantings.remove('discord:2', kale.id)).toBe(false);
    const changed = await store.plantings.change('discord:1', kale.id, { stage: 'grown', hardened: undefined });
    expect(changed).toEqual({ ...kale, stage: 'grown', hardened: undefined });
    expect(await store.plantings.remove('discord:1', kale.id)).toBe(true);
  });

  it('counts spare covers, and forgets a cover of which none is left', async () => {
    const { shed } = world.store;
    await shed.put('discord:1', { cover: 'tarp', count: 1 }, minute(0));
    await shed.put('discord:1', { cover: 'blanket', count: 3 }, minute(0));
    await shed.put('discord:1', { cover: 'blanket', count: 2 }, minute(1));
    await shed.put('discord:2', { cover: 'mat', count: 1 }, minute(1));
    expect(await shed.list('discord:1')).toEqual([
      { cover: 'blanket', count: 2 },
      { cover: 'tarp', count: 1 },
    ]);
    await shed.put('discord:1', { cover: 'tarp', count: 0 }, minute(2));
    expect(await shed.list('discord:1')).toEqual([{ cover: 'blanket', count: 2 }]);
  });
}
