import { afterEach, beforeEach, expect, test } from 'vitest';
import { typedLine } from '../../../bot/chat/terminal/typed-line.ts';
import { BUTTONS, COMMANDS } from '../../../bot/commands/commands.ts';
import { shortAnswer, shortAnswerPress } from '../../../bot/commands/more.ts';
import { PHONE_CHARACTERS } from '../../../bot/talk/short-reply.ts';
import { FIXTURE_NOW } from '../../fakes/forecast-services.ts';
import { CHANNEL, Club, HOME, wordsOf } from './club.ts';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
  await club.say(HOME);
  for (let i = 1; i <= 20; i += 1) await club.say(`bed add name:"Long bed ${i}" crop:lettuce covers:"low tunnel"`);
});
afterEach(() => club.close());

const who = (memberId = 'anna') => ({
  ...{ memberId, place: CHANNEL, locale: 'en-US', mayManageChannel: false, now: FIXTURE_NOW },
});
const say = (line: string, member?: string) => {
  const typed = typedLine(line, COMMANDS);
  if (!typed.ok) throw new Error(typed.problem);
  return shortAnswer({ ...typed.value, ...who(member) }, club.services, COMMANDS);
};
const press = (buttonId: string, member?: string) =>
  shortAnswerPress({ buttonId, ...who(member) }, club.services, BUTTONS);

test('a long answer is cut for a phone, and the rest comes by button and by word until all is told', async () => {
  const whole = wordsOf(await club.say('tonight'));
  const first = await say('tonight');
  expect(wordsOf(first).length).toBeLessThanOrEqual(PHONE_CHARACTERS);
  const button = first.buttons?.at(-1);
  expect(button?.label).toBe('More');
  let told = wordsOf(first);
  let next = await press(button?.id ?? '');
  told += wordsOf(next);
  while (next.buttons?.at(-1)?.label === 'More') {
    next = await say('more');
    told += wordsOf(next);
  }
  for (const line of whole.split('\n')) expect(told).toContain(line);
});

test('nobody else sees the rest of a private answer', async () => {
  const button = (await say('tonight')).buttons?.at(-1);
  const stranger = await press(button?.id ?? '', 'ben');
  expect([stranger.refused, stranger.headline]).toEqual([
    true,
    'I no longer have the rest of that answer. Please ask again.',
  ]);
});

test('after a short answer there is no more to show', async () => {
  await say('tonight');
  await say('units');
  expect(await say('more')).toMatchObject({ refused: true, headline: 'There is no more to show of the last answer.' });
});
