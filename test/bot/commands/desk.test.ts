import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { commandDefinitions } from '../../../bot/chat/discord/definitions.ts';
import { typedLine } from '../../../bot/chat/terminal/typed-line.ts';
import { Allowance } from '../../../bot/commands/allowance.ts';
import type { Action } from '../../../bot/commands/command.ts';
import { BUTTONS, COMMANDS } from '../../../bot/commands/commands.ts';
import { answer } from '../../../bot/commands/dispatch.ts';
import { CHANNEL, Club, HOME, posterWith, wordsOf } from './club.ts';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
  club.with({ poster: posterWith([]) });
});
afterEach(() => club.close());

const ACTIONS: readonly (readonly [name: string, action: Action])[] = COMMANDS.flatMap((command) =>
  command.action === undefined
    ? Object.entries(command.actions).map(([name, action]) => [`${command.name} ${name}`, action] as const)
    : [[command.name, command.action] as const],
);

/** Commands that speak of one member's own things. */
const OWN =
  /^(tonight|vent|winter|compare|reading|outcome|record|site|bed|shed|units|more|mydata|help|warnings (show|join|leave))/;

describe('every command', () => {
  test('there are the seventeen of them', () => {
    expect(COMMANDS.map(({ name }) => name)).toEqual(
      'ask check tonight vent winter compare reading outcome record site bed shed warnings units more mydata help'.split(
        ' ',
      ),
    );
  });

  test.each(ACTIONS)('%s answers in private exactly when it is about one member’s own', (name, action) => {
    expect(action.private).toBe(OWN.test(name));
  });

  test('more has nothing to show where nothing was left out', async () => {
    expect((await club.say('more')).headline).toContain('no more to show');
  });

  // `more` needs a long answer before it: its own test has that.
  test.each(ACTIONS.filter(([name]) => name !== 'more'))(
    'the example of %s is a line of that command, and is answered',
    async (name, action) => {
      await club.say(HOME);
      await club.say('site set lat:52 lon:5 name:Allotment');
      await club.say('bed add name:"Long tunnel" crop:kale covers:"low tunnel"');
      await club.say('shed put cover:straw');
      if (!name.startsWith('warnings start')) await club.say('warnings start', { manager: true });
      if (name === 'warnings leave') await club.say('warnings join');
      if (name === 'site set') await club.say('site remove site:Home sure:yes');
      if (name === 'bed add') await club.say('bed remove bed:"Long tunnel"');
      await club.toldLastNight();
      const typed = typedLine(action.example, COMMANDS);
      expect(typed.ok && `${typed.value.command} ${typed.value.action ?? ''}`.trim()).toBe(name);
      const reply = await club.say(action.example, { manager: true });
      expect(reply.refused ?? false, reply.headline).toBe(false);
    },
  );

  test('fits into what Discord takes, descriptions and all', () => {
    const definitions = commandDefinitions(COMMANDS);
    expect(definitions).toHaveLength(COMMANDS.length);
    for (const definition of definitions) expect(JSON.stringify(definition).length).toBeLessThan(8000);
  });

  test.each(ACTIONS)('%s survives options of every wrong kind with one sentence', async (name, action) => {
    const [command = '', sub] = name.split(' ');
    for (const wrong of ['', '\u0000', '@everyone', 'x'.repeat(5000), Number.NaN, -1, true, {}]) {
      const options = Object.fromEntries(action.options.map((option) => [option.name, wrong as string]));
      const who = { memberId: 'anna', place: CHANNEL, locale: 'en-US', mayManageChannel: true, now: new Date(0) };
      const request = { command, ...(sub !== undefined && { action: sub }), options, ...who };
      const reply = await answer(request, club.services, COMMANDS);
      expect(reply.headline).not.toContain('Something went wrong');
      expect(reply.headline.length).toBeGreaterThan(0);
    }
    expect(club.logged.join('')).not.toContain('"level":50');
  });
});

test('buttons do not take each other’s presses', () => {
  for (const one of BUTTONS) {
    expect(BUTTONS.filter((other) => other.prefix.startsWith(one.prefix))).toEqual([one]);
  }
});

test('a button that is not known any more is answered politely', async () => {
  expect((await club.press('spin:1')).headline).toBe('That button is from an older message. Please ask again.');
});

describe('help', () => {
  test('lists every command', async () => {
    const words = wordsOf(await club.say('help'));
    for (const { name } of COMMANDS) expect(words).toContain(`/${name}: `);
  });

  test.each(COMMANDS.map(({ name }) => name))('tells what %s needs, with examples', async (name) => {
    const reply = await club.say(`help command:${name}`);
    for (const [action, { example }] of ACTIONS.filter(([each]) => each.split(' ')[0] === name)) {
      expect(wordsOf(reply), action).toContain(`Example: /${example}`);
    }
  });

  test('takes a leading slash, any case and an action too, and refuses what is no command', async () => {
    expect((await club.say('help command:/BED')).headline).toContain('/bed: ');
    expect((await club.say('help bed add')).headline).toContain('/bed: ');
    const reply = await club.say('help command:dance');
    expect([reply.refused, reply.headline]).toEqual([
      true,
      'There is no command "dance". There are ask, check, tonight, vent, winter, compare, reading, outcome, record, site, bed, shed, warnings, units, more, mydata and help.',
    ]);
  });

  test('says which actions are for managers', async () => {
    expect(wordsOf(await club.say('help command:warnings'))).toContain('For who may manage the server.');
  });
});

describe('the allowance', () => {
  test('who asks too much is put off politely, and others are not', async () => {
    club.with({ allowance: new Allowance(2, 60_000) });
    await club.say('units');
    await club.press('my-beds');
    const reply = await club.say('units');
    expect([reply.refused, reply.private]).toEqual([true, true]);
    expect(reply.headline).toContain('Please wait half a minute');
    expect((await club.say('units', { member: 'ben' })).refused).toBeUndefined();
  });
});

test('a command that keeps something needs a store, and says so', async () => {
  await club.store.close();
  club.without('store');
  for (const line of [HOME, 'bed show', 'shed list', 'units', 'mydata export', 'tonight']) {
    expect((await club.say(line)).headline).toBe('Nothing can be kept here; start the bot itself for that.');
  }
});
