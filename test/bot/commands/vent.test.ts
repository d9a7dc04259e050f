import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { sampleDay } from '../../../bot/sample/sample-day.ts';
import { FIXTURE_NOW } from '../../fakes/forecast-services.ts';
import { CHANNEL, Club, HOME, TERMINAL, wordsOf } from './club.ts';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
});
afterEach(() => club.close());

const hoursOn = (hours: number) => new Date(FIXTURE_NOW.getTime() + hours * 3_600_000);

async function withBeds(): Promise<void> {
  await club.say(HOME);
  await club.say('bed add name:"Cold frame" crop:spinach stage:grown covers:"row cover under cold frame"');
  await club.say('bed add name:Tunnel crop:lettuce covers:"low tunnel"');
  await club.say('bed add name:Row crop:kale');
}

describe('vent', () => {
  test('tells the day at the member’s site, to that member alone, from the forecast that tonight is told from', async () => {
    await withBeds();
    const [reply, tonight] = [await club.say('vent'), await club.say('tonight')];
    expect(reply.private).toBe(true);
    expect(reply.headline).toMatch(/^Home: (open|nothing to open)/);
    expect(wordsOf(reply)).not.toMatch(/41\.2|96\.6/);
    expect(reply.credits).toEqual(tonight.credits);
    const forecast = /Forecast: [^,]+/;
    expect(forecast.exec(wordsOf(reply))?.[0]).toBe(forecast.exec(wordsOf(tonight))?.[0]);
  });

  test('says of each covered bed how warm it gets, and of none that has nothing to open', async () => {
    await withBeds();
    const lines = (await club.say('vent')).sections.flatMap((section) =>
      section.title === 'Leave shut' || section.title === 'Open' ? section.lines : [],
    );
    expect(lines).toHaveLength(2);
    for (const line of lines)
      expect(line).toMatch(/^(Cold frame|Tunnel) \(.+\): .*(highest|reaches) \d+ °F near \d+:[03]0 [ap]m/);
  });

  test('counts what hides the sun, and where a frame faces', async () => {
    await club.say(HOME);
    await club.say('bed add name:Frame crop:spinach covers:"cold frame" back:24in');
    const highF = async () => Number(/(?:highest|reaches) (\d+) °F/.exec(wordsOf(await club.say('vent')))?.[1]);
    const south = await highF();
    await club.say('bed change bed:Frame facing:north');
    const north = await highF();
    await club.say('bed change bed:Frame facing:south');
    await club.say('site change site:Home horizon:"SE 40, S 40, SW 40"');
    const shaded = await highF();
    expect(north).toBeLessThan(south);
    expect(shaded).toBeLessThan(south);
  });

  test('says in the weeks of short days that little opening is needed', async () => {
    await club.say(HOME);
    await club.say('bed add name:Tunnel crop:lettuce covers:"low tunnel"');
    expect(wordsOf(await club.say('vent'))).toContain('In these weeks of short days little or no opening is needed.');
  });

  test('leaves frozen leaves alone, with the caution', async () => {
    await withBeds();
    const words = wordsOf(await club.say('vent day:tomorrow'));
    expect(words).toMatch(/Pick, once thawed/);
    expect(words).toContain('Do not touch, pick or uncover leaves while they are frozen');
  });

  test('after the time to shut it speaks of tomorrow, and refuses today', async () => {
    await withBeds();
    const now = hoursOn(3);
    expect((await club.say('vent', { now })).headline).toMatch(/tomorrow/);
    const reply = await club.say('vent day:today', { now });
    expect([reply.refused, reply.headline]).toEqual([
      true,
      'It is past the time to shut for today. For tomorrow: /vent day:tomorrow.',
    ]);
  });

  test('asks for a bed where there is none, and for a place where that is not known', async () => {
    expect((await club.say('vent')).headline).toContain('/site set');
    await club.say(HOME);
    expect(wordsOf(await club.say('vent'))).toContain('Tell me your beds with /bed add.');
  });

  test('shows a newcomer at the terminal the sample garden, and says that it is one', async () => {
    club.with({ sampleDay });
    const words = wordsOf(await club.say('vent', { place: TERMINAL }));
    expect(words).toMatch(/^Tern Lane Garden \(sample\): /);
    expect(words).toContain('A sample garden of our own invention.');
  });

  test('says so when no forecast can be had', async () => {
    await withBeds();
    club.forecasts.script('/', { status: 503 });
    const reply = await club.say('vent');
    expect([reply.refused, reply.headline]).toEqual([true, expect.stringContaining('No forecast could be had')]);
  });
});

describe('asked in words', () => {
  test.each([
    ['when do I open the tunnel?', /^Home: nothing to open today\.$/],
    ['when do I open the frame tomorrow?', /tomorrow/],
    ['when should I shut the covers?', /^Home: shut by 3:25 pm today, two hours before sunset\.$/],
    ['can I pick the lettuce?', /^Home: (pick|do not pick|no picking)/],
  ])('%s is answered from the own place, in private even in a channel', async (question, headline) => {
    await withBeds();
    const reply = await club.say(`ask ${question}`, { place: CHANNEL });
    expect(reply.headline).toMatch(headline);
    expect(reply.private).toBe(true);
  });

  test('the beds that are named are the ones told of', async () => {
    await withBeds();
    const words = wordsOf(await club.say('ask when do I open the tunnel?'));
    expect(words).toContain('Tunnel (lettuce)');
    expect(words).not.toContain('Cold frame (');
  });

  test('without a place the rules of the trade answer, for all to see', async () => {
    const reply = await club.say('ask when do I open the tunnel?');
    expect([reply.headline, reply.private]).toEqual([expect.stringContaining('75 °F'), false]);
  });
});
