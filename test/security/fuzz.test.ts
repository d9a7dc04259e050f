import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Club, HOME, posterWith } from '../bot/commands/club.ts';
import { RunningBot, Surroundings } from '../bot/running.ts';
import { csvProperty, forecastBodyProperty } from './hostile-files.ts';
import { optionsProperty, typedLineProperty } from './hostile-options.ts';
import { bytesProperty, signedProperty, unsignedProperty } from './hostile-requests.ts';

// Small here; `npm run bench -- fuzz` runs a hundred thousand.
const FEW = { numRuns: 60 };

describe('the signed HTTP door', () => {
  let around: Surroundings;
  let bot: RunningBot;
  beforeAll(async () => {
    around = await Surroundings.open();
    bot = new RunningBot(await around.settings('signed HTTP'));
    await bot.ready();
  });
  afterAll(async () => {
    await bot.stop();
    await around.close();
  });
  const doorUrl = () => around.double.doorUrl ?? '';
  const isAlive = async () => expect(await around.double.deliver(around.double.ping())).toMatchObject({ status: 200 });

  test('lives on whatever bytes come', async () => {
    await fc.assert(bytesProperty(doorUrl()), FEW);
    await isAlive();
  });

  test('refuses whatever is not signed', async () => {
    await fc.assert(unsignedProperty(doorUrl()), FEW);
    await isAlive();
  });

  test('answers or refuses whatever is signed', async () => {
    const typed = () => around.double.type({ command: 'check', options: { crop: 'kale', low: '14F' } }).interaction;
    await fc.assert(signedProperty(around.double, typed), FEW);
    await isAlive();
    expect(bot.logged.filter((line) => /"level":[56]0/.test(line))).toEqual([]);
  });
});

test('commands answer whatever is filled in, soon, in a sentence, and ping nobody', async () => {
  const club = await Club.open();
  club.with({ poster: posterWith([]) });
  await club.say(HOME);
  await club.say('bed add name:"Long tunnel" crop:kale covers:"low tunnel"');
  const errors = () => club.logged.filter((line) => line.includes('"level":50')).join('');
  await fc.assert(optionsProperty(club.services, errors), { numRuns: 200 });
  expect(errors()).toBe('');
  await club.close();
}, 60_000);

test('the terminal takes whatever is typed', () => {
  fc.assert(typedLineProperty(), { numRuns: 500 });
});

test('what a forecast service sends is read without absurd values or refused', () => {
  fc.assert(forecastBodyProperty(), { numRuns: 150 });
});

test('whatever a logger wrote is read line by line', () => {
  fc.assert(csvProperty(), { numRuns: 300 });
});
