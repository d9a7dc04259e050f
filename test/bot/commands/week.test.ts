import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { sampleWarning } from '../../../bot/sample/sample-warning.ts';
import { SyntheticForecasts } from '../../fakes/synthetic-forecasts.ts';
import { CHANNEL, Club, HOME, TERMINAL, wordsOf } from './club.ts';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
});
afterEach(() => club.close());

/** 20 January 2026 is a Tuesday. */
async function withBeds(): Promise<void> {
  await club.say(HOME);
  await club.say('bed add name:"Cold frame" crop:spinach stage:grown covers:"row cover under cold frame"');
  await club.say('bed add name:Tunnel crop:lettuce covers:"low tunnel"');
  await club.services.forecasts?.close();
  club.with({ forecasts: new SyntheticForecasts() });
}
const titled = (reply: Awaited<ReturnType<Club['say']>>, title: string) =>
  reply.sections.find((section) => section.title === title)?.lines ?? [];

describe('the week', () => {
  beforeEach(withBeds);

  test('has one line a night as far as the forecast goes, the worst in the headline, and a picture', async () => {
    const reply = await club.say('tonight night:week');
    expect(reply.private).toBe(true);
    expect(reply.headline).toMatch(/^Home: \d of \d nights (is|are) a risk\. Worst: |^Home: /);
    const lines = titled(reply, 'Night by night');
    expect(lines.length).toBeGreaterThanOrEqual(4);
    const days = ['Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun', 'Mon'].slice(0, lines.length);
    expect(lines.map((line) => line.slice(0, 3))).toEqual(days);
    expect(lines.every((line) => /^\w{3} −?\d+ °F\. /.test(line))).toBe(true);
    expect(wordsOf(reply)).toMatch(/The forecast does not reach .* night yet/);
    expect(reply.picture?.altText).toMatch(/^Lows outside, Tue to /);
    expect(reply.credits?.length).toBeGreaterThan(0);
    expect(wordsOf(reply)).not.toMatch(/41\.2|96\.6/);
  });

  test.each(['ask which nights this week are bad?', 'ask what is the coldest night?', 'ask when does the cold end?'])(
    '%s is the same answer',
    async (line) => {
      // A conversation of its own: an earlier question about spinach would be gone on with.
      const asker = { place: { ...CHANNEL, conversationId: line } };
      expect((await club.say(line, asker)).headline).toBe((await club.say('tonight night:week')).headline);
    },
  );

  test('of one crop is of the bed that it grows in, under what lies there', async () => {
    const reply = await club.say('ask will my spinach survive this week?');
    expect(wordsOf(reply)).not.toContain('Tunnel');
    expect(titled(reply, 'Night by night').length).toBeGreaterThanOrEqual(4);
  });

  test('of a crop that grows in no bed is judged as it was said to lie', async () => {
    const reply = await club.say('ask will arugula under a blanket survive this week?');
    expect(wordsOf(reply)).toMatch(/Arugula under a blanket/);
    expect(wordsOf(reply)).not.toContain('Tunnel');
  });

  test('a named night gets that night’s low, never tonight’s', async () => {
    const lows = new Map(
      titled(await club.say('tonight night:week'), 'Night by night').map((line) => [
        line.slice(0, 3),
        /−?\d+ °F/.exec(line)?.[0],
      ]),
    );
    expect(new Set(lows.values()).size).toBeGreaterThan(1);
    for (const [option, day] of [
      ['tonight', 'Tue'],
      ['tomorrow', 'Wed'],
      ['thursday', 'Thu'],
      ['friday', 'Fri'],
    ] as const) {
      expect(wordsOf(await club.say(`tonight night:${option}`))).toContain(`Outside low about ${lows.get(day)}`);
    }
    expect(wordsOf(await club.say('ask will my spinach survive thursday night?'))).toContain(lows.get('Thu'));
  });

  test('without beds it is still told how cold the nights get', async () => {
    await club.say(HOME, { member: 'ben' });
    const reply = await club.say('tonight night:week', { member: 'ben' });
    expect(reply.headline).toMatch(/^Home: .+ is the coldest of \d nights, low about −?\d+ °F/);
  });

  test('several sites stand under their names, and one without nights does not silence the others', async () => {
    await club.say('site set lat:48.2 lon:16.4 name:Allotment');
    await club.say('site set lat:-80 lon:0 name:South');
    const reply = await club.say('tonight night:week');
    expect(reply.headline).toMatch(/^2 sites: (none|\d) with beds at risk this week\.$/);
    const titles = reply.sections.map(({ title }) => title);
    expect(titles).toEqual(expect.arrayContaining(['Home', 'Allotment', 'South']));
    expect(titled(reply, 'South')[0]).toContain('the sun does not set there');
  });

  test('when no service answers, that is said', async () => {
    const silent = new SyntheticForecasts();
    silent.silent = true;
    club.with({ forecasts: silent });
    expect(await club.say('tonight night:week')).toMatchObject({
      refused: true,
      headline: expect.stringContaining('No forecast could be had'),
    });
  });
});

test('who has no garden yet is shown the sample’s week and any night of it by name', async () => {
  club.with({ sample: sampleWarning });
  const asker = { place: TERMINAL };
  expect((await club.say('tonight night:week', asker)).headline).toMatch(
    /^Tern Lane Garden \(sample\): \d of 7 nights/,
  );
  expect((await club.say('ask which nights this week are bad?', asker)).headline).toMatch(/\d of 7 nights/);
  expect((await club.say('tonight night:friday', asker)).headline).toContain('on Friday night');
});
