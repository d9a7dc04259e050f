import { expect, it } from 'vitest';
import { bedFacts, homeFacts, minute, type World } from './world.ts';

export function sitesSpecification(world: World): void {
  it('gives back a site as it was told, and makes the first one the default', async () => {
    const { sites } = world.store;
    const home = await sites.add('discord:1', homeFacts, minute(0));
    expect(home).toMatchObject({ ...homeFacts, memberId: 'discord:1', isDefault: true, since: minute(0) });
    const plot = await sites.add('discord:1', { ...homeFacts, name: 'Allotment', heightM: undefined }, minute(1));
    expect(plot).toMatchObject({ isDefault: false, heightM: undefined });
    expect(await sites.list('discord:1')).toEqual([home, plot]);
  });

  it('lists the chosen default first and keeps exactly one', async () => {
    const { sites } = world.store;
    await sites.add('discord:1', homeFacts, minute(0));
    const plot = await sites.add('discord:1', { ...homeFacts, name: 'Allotment' }, minute(1));
    await sites.makeDefault('discord:1', plot.id);
    const list = await sites.list('discord:1');
    expect(list.map((site) => [site.name, site.isDefault])).toEqual([
      ['Allotment', true],
      ['Home', false],
    ]);
  });

  it('passes the default on to the oldest site when it is removed', async () => {
    const { sites } = world.store;
    const home = await sites.add('discord:1', homeFacts, minute(0));
    await sites.add('discord:1', { ...homeFacts, name: 'Allotment' }, minute(1));
    await sites.add('discord:1', { ...homeFacts, name: 'School' }, minute(2));
    expect(await sites.remove('discord:1', home.id)).toBe(true);
    const list = await sites.list('discord:1');
    expect(list.map((site) => [site.name, site.isDefault])).toEqual([
      ['Allotment', true],
      ['School', false],
    ]);
  });

  it('takes the beds with a removed site', async () => {
    const { sites, beds } = world.store;
    const home = await sites.add('discord:1', homeFacts, minute(0));
    await beds.add('discord:1', bedFacts(home.id), minute(0));
    await sites.remove('discord:1', home.id);
    expect(await beds.list('discord:1')).toEqual([]);
  });

  it('refuses a name that differs from another of the same member only by case', async () => {
    const { sites } = world.store;
    await sites.add('discord:1', homeFacts, minute(0));
    await expect(sites.add('discord:1', { ...homeFacts, name: 'HOME' }, minute(1))).rejects.toMatchObject({
      code: 'name-taken',
    });
    await expect(sites.add('discord:2', homeFacts, minute(1))).resolves.toMatchObject({ name: 'Home' });
  });

  it('changes what a change names and clears a height named as undefined', async () => {
    const { sites } = world.store;
    const home = await sites.add('discord:1', homeFacts, minute(0));
    const changed = await sites.change('discord:1', home.id, { heightM: undefined, exposure: 'ridge', horizonDeg: [] });
    expect(changed).toEqual({ ...home, heightM: undefined, exposure: 'ridge', horizonDeg: [] });
    expect(await sites.find('discord:1', home.id)).toEqual(changed);
  });

  it("shows nobody another member's site, nor lets them touch it", async () => {
    const { sites } = world.store;
    const home = await sites.add('discord:1', homeFacts, minute(0));
    expect(await sites.find('discord:2', home.id)).toBeUndefined();
    expect(await sites.remove('discord:2', home.id)).toBe(false);
    await expect(sites.change('discord:2', home.id, { name: 'Mine' })).rejects.toMatchObject({ code: 'not-found' });
    await expect(sites.makeDefault('discord:2', home.id)).rejects.toMatchObject({ code: 'not-found' });
    expect(await sites.list('discord:1')).toEqual([home]);
  });

  it('says nothing of the coordinates when it refuses them', async () => {
    const { sites } = world.store;
    const wrong = { ...homeFacts, latitudeDeg: 91.2345, longitudeDeg: 16.9876 };
    const problem: unknown = await sites.add('discord:1', wrong, minute(0)).catch((thrown: unknown) => thrown);
    expect(problem).toMatchObject({ code: 'bad-value' });
    expect(everythingIn(problem)).not.toMatch(/91\.2|16\.9/);
  });

  it('keeps one default even if two sites are added at the same time', async () => {
    const { sites } = world.store;
    await Promise.all(['A', 'B', 'C', 'D'].map((name) => sites.add('discord:1', { ...homeFacts, name }, minute(0))));
    const list = await sites.list('discord:1');
    expect(list.filter((site) => site.isDefault)).toHaveLength(1);
    expect(list).toHaveLength(4);
  });
}

/** An error with all that a logger could find in it. */
function everythingIn(thrown: unknown): string {
  if (!(thrown instanceof Error)) return String(thrown);
  const own = Object.getOwnPropertyNames(thrown).map((name) => String(Reflect.get(thrown, name)));
  return `${thrown.stack} ${own.join(' ')} ${thrown.cause === undefined ? '' : everythingIn(thrown.cause)}`;
}
