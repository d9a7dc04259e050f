import { afterEach, beforeEach, expect, test } from 'vitest';
import type { Action } from '../../bot/commands/command.ts';
import { BUTTONS, COMMANDS } from '../../bot/commands/commands.ts';
import { answer } from '../../bot/commands/dispatch.ts';
import { drawn } from '../../bot/talk/plain-text.ts';
import { CHANNEL, Club, HOME, posterWith } from '../bot/commands/club.ts';
import { FIXTURE_NOW } from '../fakes/forecast-services.ts';

let club: Club;
let annasIds: readonly string[];
beforeEach(async () => {
  club = await Club.open();
  club.with({ poster: posterWith([]) });
  await club.say('warnings start', { manager: true, member: 'coach' });
  await club.say(`${HOME} name:Zebrafinch`);
  await club.say('bed add name:"Ostrich tunnel" crop:kale covers:"low tunnel"');
  await club.say('shed put cover:straw');
  await club.say('warnings join');
  annasIds = [...JSON.stringify(await annas()).matchAll(/"id":"([^"]+)"/g)].map(([, id = '']) => id);
});
afterEach(() => club.close());

const annas = () => club.store.exportMember('anna');

const ACTIONS: readonly (readonly [string, Action])[] = COMMANDS.flatMap((command) =>
  command.action === undefined
    ? Object.entries(command.actions).map(([name, action]) => [`${command.name} ${name}`, action] as const)
    : [[command.name, command.action] as const],
);

test('the ids that another could try are there to be tried', () => {
  expect(annasIds.length).toBeGreaterThanOrEqual(3);
});

test.each(ACTIONS)(
  '%s, filled in with what is another member’s, shows and changes nothing of it',
  async (name, action) => {
    const before = await annas();
    const [command = '', sub] = name.split(' ');
    for (const value of ['Zebrafinch', 'Ostrich tunnel', 'anna', ...annasIds]) {
      const options = Object.fromEntries(action.options.map((option) => [option.name, value]));
      const who = { memberId: 'ben', place: CHANNEL, locale: 'en-US', mayManageChannel: false, now: FIXTURE_NOW };
      const request = { command, ...(sub !== undefined && { action: sub }), options, ...who };
      const words = drawn(await answer(request, club.services, COMMANDS));
      for (const secret of ['41.2', '96.6', 'Zebrafinch', 'Ostrich']) {
        if (!value.includes(secret)) expect(words).not.toContain(secret);
      }
      if (sub === 'set' || sub === 'add') await club.store.eraseMember('ben');
    }
    expect(await annas()).toEqual(before);
  },
);

test('buttons with another member’s ids show and change nothing of theirs', async () => {
  const before = await annas();
  const ids = ['', 'anna', 'Zebrafinch', ...annasIds];
  const tries = BUTTONS.flatMap(({ prefix }) =>
    ids.flatMap((id) => [prefix + id, `${prefix}${id}:2026-01-20`, `${prefix}2026-01-20:${id}`]),
  );
  // Each by a member of their own: what one has asked before may be taken up again in the talk.
  for (const [index, buttonId] of tries.entries()) {
    expectNoSecret(drawn(await club.press(buttonId, { member: `ben-${index}` })), buttonId);
  }
  expect(await annas()).toEqual(before);
});

/** What the asking person typed may be repeated to that person. */
function expectNoSecret(words: string, typed: string): void {
  for (const secret of ['41.2', '96.6', 'Zebrafinch', 'Ostrich']) {
    if (!typed.includes(secret)) expect(words).not.toContain(secret);
  }
}
