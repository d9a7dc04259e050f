import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { sampleWarning } from '../../../bot/sample/sample-warning.ts';
import { FIXTURE_NOW } from '../../fakes/forecast-services.ts';
import { Club, HOME, TERMINAL, wordsOf } from './club.ts';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
});
afterEach(() => club.close());

async function withBeds(member = 'anna'): Promise<void> {
  await club.say(HOME, { member });
  await club.say('bed add name:"Cold frame" crop:spinach stage:grown covers:"row cover under cold frame"', { member });
  await club.say('bed add name:Tunnel crop:lettuce covers:"low tunnel"', { member });
}

const hoursOn = (hours: number) => new Date(FIXTURE_NOW.getTime() + hours * 3_600_000);

test('the night at the member’s site: official warnings first, then what to do, each bed once', async () => {
  await withBeds();
  const reply = await club.say('tonight');
  expect(reply.private).toBe(true);
  expect(reply.headline).toMatch(/^Home: \d of 2 beds at risk tonight\. Shut by 3:25 pm\.$/);
  expect(reply.sections[0]?.title).toBe('Official warning, which comes first');
  for (const bed of ['Cold frame', 'Tunnel']) {
    expect(reply.sections.flatMap(({ lines }) => lines).filter((line) => line.startsWith(bed))).toHaveLength(1);
  }
  expect(reply.credits?.map(({ text }) => text)).toContain('National Weather Service');
  expect(wordsOf(reply)).not.toMatch(/41\.2|96\.6/);
});

test('spare covers in the shed are what is advised', async () => {
  await withBeds();
  await club.say('shed put cover:quilt');
  expect(wordsOf(await club.say('tonight'))).toMatch(/quilt from the shed|from the shed, a quilt/);
});

test('tomorrow and a weekday are other nights', async () => {
  await withBeds();
  expect((await club.say('tonight night:tomorrow')).headline).toContain('tomorrow night');
  // 20 January 2026 is a Tuesday.
  expect((await club.say('tonight night:tuesday')).headline).toContain('at risk tonight');
  expect((await club.say('tonight night:wednesday')).headline).toContain('on Wednesday night');
});

test('a night that no forecast reaches is said to be so', async () => {
  await withBeds();
  const reply = await club.say('tonight night:monday');
  expect([reply.refused, reply.private]).toEqual([true, true]);
  expect(reply.headline).toContain('No forecast reaches that night yet');
});

test('no service answers: that is said, for silence would read as safe', async () => {
  await withBeds();
  club.forecasts.script('/', { status: 503 });
  const reply = await club.say('tonight');
  expect(reply.refused).toBe(true);
  expect(reply.headline).toContain('No forecast could be had');
  expect(reply.headline).toContain('cover as for a colder night');
});

test('official warnings that cannot be read are said to be unknown', async () => {
  await withBeds();
  club.forecasts.script('/alerts', { status: 500 });
  expect(wordsOf(await club.say('tonight'))).toContain('I could not read the official warnings just now');
});

test('the polar day has no night, and says so', async () => {
  await club.say('site set lat:-80 lon:0 name:"Far south"');
  const reply = await club.say('tonight');
  expect(reply.headline).toBe('Far south: the sun does not set there then, so there is no night to reckon with.');
});

test.each([
  ['tonight night:later', 'The night is one of tonight, tomorrow, monday'],
  ['tonight site:Moon', 'You have no site called "Moon". You have Home.'],
])('%s is refused with what would be right', async (line, words) => {
  await club.say(HOME);
  const reply = await club.say(line);
  expect([reply.refused, reply.private]).toEqual([true, true]);
  expect(reply.headline).toContain(words);
});

test('without a site it tells how to set one', async () => {
  expect((await club.say('tonight')).headline).toContain('Tell me with /site set');
});

test('a site without beds is said to have none, with how to add one', async () => {
  await club.say(HOME);
  const reply = await club.say('tonight');
  expect(reply.headline).toBe('Home: no bed has a crop in it.');
  expect(wordsOf(reply)).toContain('Tell me your beds with /bed add.');
  expect(reply.buttons).toEqual([]);
});

test('a host who gave no contact is told what to set', async () => {
  await withBeds();
  await club.services.forecasts?.close();
  club.without('forecasts');
  expect((await club.say('tonight')).headline).toContain('has to set FORECAST_CONTACT');
});

describe('with several sites', () => {
  beforeEach(async () => {
    await withBeds();
    await club.say('site set lat:48.2 lon:16.4 name:Allotment');
    await club.say('bed add name:Far crop:chard covers:blanket site:Allotment');
  });

  test('each stands under its name, and the worst is told first', async () => {
    const reply = await club.say('tonight');
    expect(reply.headline).toMatch(/^2 sites: \d of 3 beds at risk tonight\.$/);
    const titles = reply.sections.map(({ title }) => title);
    expect(titles.filter((title) => title === 'Home' || title === 'Allotment')).toEqual(['Home', 'Allotment']);
    const links = reply.credits?.map(({ url }) => url) ?? [];
    expect(new Set(links).size).toBe(links.length);
    expect(reply.buttons?.[0]).toEqual({ id: 'covered:2026-01-20', label: 'Covered' });
    expect(reply.buttons?.slice(1).every(({ label }) => label.startsWith('Curve: '))).toBe(true);
  });

  test('one alone can be asked for', async () => {
    expect((await club.say('tonight site:Allotment')).headline).toMatch(/^Allotment: /);
  });

  test('one without a night does not silence the others', async () => {
    await club.say('site set lat:-80 lon:0 name:South');
    const reply = await club.say('tonight');
    expect(reply.headline).toContain('2 sites:');
    expect(reply.sections.find(({ title }) => title === 'South')?.lines[0]).toContain('the sun does not set there');
  });

  test('when none can be worked out, that is the headline', async () => {
    club.forecasts.script('/', { status: 503 });
    const reply = await club.say('tonight');
    expect([reply.headline, reply.refused]).toEqual(['I could not work out that night for any of your sites.', true]);
  });
});

describe('the button under a night', () => {
  test('marks the beds as covered, is told back, and goes away', async () => {
    await withBeds();
    const before = await club.say('tonight');
    const [button] = before.buttons ?? [];
    expect(button?.label).toBe('Covered');
    const pressed = await club.press(button?.id ?? '');
    expect([pressed.headline, pressed.private]).toEqual(['Noted: 2 beds covered for the night.', true]);
    const beds = await club.store.beds.list('anna');
    const marked = await club.store.covered.marked(
      beds.map(({ id }) => id),
      '2026-01-20',
    );
    expect(marked.size).toBe(2);
    const after = await club.say('tonight');
    expect(after.buttons?.map(({ label }) => label)).not.toContain('Covered');
    expect(wordsOf(after)).toContain('Marked as done: 2 of 2 beds.');
  });

  test('counts for the pressing member’s own beds, whosever message it was', async () => {
    await withBeds();
    const [button] = (await club.say('tonight')).buttons ?? [];
    expect((await club.press(button?.id ?? '', { member: 'ben' })).headline).toContain('You have no bed here yet.');
    await withBeds('ben');
    expect((await club.press('covered:2026-01-20', { member: 'ben' })).headline).toContain('2 beds covered');
    const annas = (await club.store.beds.list('anna')).map(({ id }) => id);
    expect((await club.store.covered.marked(annas, '2026-01-20')).size).toBe(0);
  });

  test.each(['covered:2026-01-17', 'covered:', 'covered:someday'])('%s is over', async (buttonId) => {
    await withBeds();
    const reply = await club.press(buttonId);
    expect([reply.refused, reply.headline]).toEqual([
      true,
      'That was for a night that is over. For the coming one: /tonight.',
    ]);
  });

  test('serves until the morning after, wherever the garden is', async () => {
    await withBeds();
    expect((await club.press('covered:2026-01-20', { now: hoursOn(16) })).refused).toBeUndefined();
  });
});

describe('the button "My beds" under a warning for all', () => {
  test('opens the pressing member’s own night, for that member alone', async () => {
    await withBeds();
    const reply = await club.press('my-beds');
    expect(reply.private).toBe(true);
    expect(reply.headline).toMatch(/^Home: /);
  });

  test('tells who has no site how to set one', async () => {
    expect((await club.press('my-beds')).headline).toContain('Tell me with /site set');
  });
});

test('where no account is needed, who has no garden yet sees the sample, and then the own one', async () => {
  club.with({ sample: sampleWarning });
  const there = { member: 'terminal', place: TERMINAL };
  const sample = await club.say('tonight', there);
  expect(sample.headline).toContain('(sample)');
  expect(wordsOf(sample)).toContain('A sample garden of our own invention.');
  await withBeds('terminal');
  expect((await club.say('tonight', there)).headline).toMatch(/^Home: /);
});
