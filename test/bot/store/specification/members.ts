import { expect, it } from 'vitest';
import { minute, type World } from './world.ts';

export function membersSpecification(world: World): void {
  it('does not know a member of whom nothing is kept', async () => {
    expect(await world.store.members.find('discord:1')).toBeUndefined();
  });

  it('makes a member known by the first change, with nothing else decided', async () => {
    const member = await world.store.members.change('discord:1', { units: 'us' }, minute(1));
    expect(member).toEqual({
      id: 'discord:1',
      units: 'us',
      locale: undefined,
      directMessages: false,
      since: minute(1),
    });
    expect(await world.store.members.find('discord:1')).toEqual(member);
  });

  it('changes only what a change names, and clears what it names as undefined', async () => {
    const { members } = world.store;
    await members.change('discord:1', { units: 'metric', locale: 'de-AT', directMessages: true }, minute(1));
    const changed = await members.change('discord:1', { units: undefined }, minute(2));
    expect(changed).toMatchObject({ units: undefined, locale: 'de-AT', directMessages: true, since: minute(1) });
    expect(await members.change('discord:1', {}, minute(3))).toEqual(changed);
  });

  it('refuses an empty id', async () => {
    await expect(world.store.members.change('', {}, minute(0))).rejects.toMatchObject({ code: 'bad-value' });
  });
}
