import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { Club, HOME, wordsOf } from './club.ts';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
});
afterEach(() => club.close());

describe('site set', () => {
  test('keeps the place with its time zone and tells it back to the member alone', async () => {
    const reply = await club.say('site set lat:"48°12′30″N 16°22′E" height:171m exposure:hollow');
    expect(reply.private).toBe(true);
    expect(wordsOf(reply)).toContain('48.2083° N, 16.3667° E, 561 ft above the sea.');
    expect(wordsOf(reply)).toContain('Frost hollow or valley floor. Clock of Europe/Vienna.');
    expect(wordsOf(reply)).toContain('The sun sets there at 4:35 pm; covers are shut by 2:35 pm.');
    const [site] = await club.store.sites.list('anna');
    expect(site).toMatchObject({ name: 'Home', heightM: 171, exposure: 'hollow', timeZone: 'Europe/Vienna' });
    expect(site?.isDefault).toBe(true);
  });

  test('keeps several sites, the first being the usual one', async () => {
    await club.say(HOME);
    await club.say('site set lat:52.1 lon:5.3 name:Allotment');
    expect((await club.store.sites.list('anna')).map(({ name, isDefault }) => [name, isDefault])).toEqual([
      ['Home', true],
      ['Allotment', false],
    ]);
  });

  test('tells where the sun does not set at the time', async () => {
    const reply = await club.say('site set lat:-80 lon:0');
    expect(wordsOf(reply)).toContain('The sun does not set there at this time of the year.');
  });

  test('keeps what hides the sun, shows it back, and takes it away again', async () => {
    const reply = await club.say('site set lat:43 lon:-76 horizon:"S 10, south-west 35°"');
    expect(wordsOf(reply)).toContain('The sun is hidden up to 10° in the south and 35° in the south-west.');
    expect((await club.store.sites.list('anna'))[0]?.horizonDeg).toEqual([0, 0, 0, 0, 10, 35, 0, 0]);
    const even = await club.say('site change site:Home horizon:15');
    expect(wordsOf(even)).toContain('The sun is hidden up to 15° all round.');
    const open = await club.say('site change site:Home horizon:open');
    expect(wordsOf(open)).not.toContain('hidden');
    expect((await club.store.sites.list('anna'))[0]?.horizonDeg).toEqual([]);
  });

  test('takes a bare height in the units of the reader', async () => {
    await club.say('site set lat:43 lon:-76 height:490');
    await club.say('site set lat:53 lon:-2 height:150', { member: 'ben', locale: 'en-GB' });
    const heightOf = async (member: string) => (await club.store.sites.list(member))[0]?.heightM;
    expect(await heightOf('anna')).toBeCloseTo(149.4, 1);
    expect(await heightOf('ben')).toBe(150);
  });

  test.each([
    ['site set', 'Say where: lat and lon'],
    ['site set lat:95 lon:10', 'Latitude 95 is off the globe'],
    ['site set lat:10 lon:190', 'Longitude 190 is off the globe'],
    ['site set lat:43.1', 'I need a latitude and a longitude'],
    ['site set lat:here lon:there', 'I cannot read "here" as a coordinate'],
    ['site set lat:43 lon:-76 height:9000m', 'A garden lies between −430 m'],
    ['site set lat:43 lon:-76 height:high', 'I cannot read "high" as a length'],
    ['site set lat:43 lon:-76 exposure:roof', 'The exposure is one of open, sheltered, hollow, ridge or wall.'],
    ['site set lat:43 lon:-76 horizon:trees', 'I cannot read "trees" as a horizon; write degrees by direction'],
    ['site set lat:43 lon:-76 horizon:"up 10"', '"up" is no direction; write degrees by direction'],
    ['site set lat:43 lon:-76 horizon:"S 95"', 'What hides the sun in the south is 0 to 85° high'],
    ['site set lat:43 lon:-76 name:***', 'Give a site a name'],
    [`site set lat:${'4'.repeat(400)} lon:3`, 'That is too long'],
  ])('%s is refused with what would be right', async (line, words) => {
    const reply = await club.say(line);
    expect([reply.refused, reply.private]).toEqual([true, true]);
    expect(reply.headline).toContain(words);
    expect(await club.store.sites.list('anna')).toEqual([]);
  });

  test('a second site needs a name of its own', async () => {
    await club.say(HOME);
    const reply = await club.say('site set lat:43 lon:-76 name:home');
    expect(reply.headline).toContain('You have a site called home already: change it with /site change');
  });

  test('there are at most ten', async () => {
    for (let count = 1; count <= 10; count += 1) await club.say(`site set lat:43 lon:-76 name:Plot${count}`);
    expect((await club.say('site set lat:43 lon:-76 name:More')).headline).toContain('10 sites already');
  });
});

describe('site change, default, list and remove', () => {
  beforeEach(async () => {
    await club.say(HOME);
    await club.say('site set lat:52.1 lon:5.3 name:Allotment');
  });

  test('change moves the usual site and its clock, and leaves the rest', async () => {
    const reply = await club.say('site change lat:"43.1, -76.3" exposure:wall');
    expect(wordsOf(reply)).toContain('43.1° N, 76.3° W, 1115 ft above the sea.');
    const [site] = await club.store.sites.list('anna');
    expect(site).toMatchObject({ name: 'Home', exposure: 'wall', timeZone: 'America/New_York', heightM: 340 });
  });

  test('change names the site that is meant by the beginning of its name', async () => {
    await club.say('site change site:allot name:Meadow');
    expect((await club.store.sites.list('anna')).map(({ name }) => name)).toEqual(['Home', 'Meadow']);
  });

  test.each([
    ['site change', 'Say what to change: name, lat and lon, height, exposure or horizon.'],
    ['site change lon:4', 'Give lat with lon'],
    ['site change lat:4', 'I need a latitude and a longitude'],
    ['site change lat:95 lon:3', 'Latitude 95 is off the globe'],
    ['site change site:Moon height:3m', 'You have no site called "Moon". You have Home and Allotment.'],
    ['site default', 'Say which site'],
    ['site default site:Moon', 'You have no site called "Moon".'],
    ['site remove', 'Say which site to remove'],
    ['site remove site:Moon', 'You have no site called "Moon".'],
    ['site remove site:Home sure:perhaps', 'Answer sure with yes or no.'],
  ])('%s is refused with what would be right', async (line, words) => {
    const reply = await club.say(line);
    expect([reply.refused, reply.private]).toEqual([true, true]);
    expect(reply.headline).toContain(words);
  });

  test('a name that is taken is refused, and nothing changes', async () => {
    const reply = await club.say('site change site:Allotment name:HOME');
    expect(reply.refused).toBe(true);
    expect(reply.headline).toMatch(/name/);
    expect((await club.store.sites.list('anna'))[1]?.name).toBe('Allotment');
  });

  test('default chooses the site that is used', async () => {
    await club.say('site default site:Allotment');
    await club.say('bed add name:Frame');
    const [usual] = await club.store.sites.list('anna');
    expect(usual?.name).toBe('Allotment');
    expect((await club.store.beds.list('anna'))[0]?.siteId).toBe(usual?.id);
  });

  test('list shows each site with its beds', async () => {
    await club.say('bed add name:Frame site:Allotment');
    const reply = await club.say('site list');
    expect(reply.sections.map(({ title, lines }) => [title, lines.at(-1)])).toEqual([
      ['Home (used unless you name another)', '0 beds.'],
      ['Allotment', '1 bed.'],
    ]);
    expect(reply.private).toBe(true);
  });

  test('a site without beds is removed at once, and another becomes the usual one', async () => {
    const reply = await club.say('site remove site:Home');
    expect(wordsOf(reply)).toContain('Home is forgotten.');
    expect(wordsOf(reply)).toContain('Allotment is now used');
  });

  test('a site with beds is removed after a press, by its owner alone', async () => {
    await club.say('bed add name:Frame');
    const reply = await club.say('site remove site:Home');
    expect(reply.headline).toBe('Remove Home with 1 bed and all their readings?');
    const [button] = reply.buttons ?? [];
    const stranger = await club.press(button?.id ?? '', { member: 'ben' });
    expect(stranger.headline).toBe('You have no such site any more.');
    expect(await club.store.sites.list('anna')).toHaveLength(2);
    expect((await club.press(button?.id ?? '')).headline).toBe('Home is forgotten.');
    expect(await club.store.beds.list('anna')).toEqual([]);
    expect((await club.press(button?.id ?? '')).refused).toBe(true);
  });

  test('a site with beds is removed at once when one is sure', async () => {
    await club.say('bed add name:Frame');
    expect((await club.say('site remove site:Home sure:yes')).headline).toBe('Home is forgotten.');
  });
});

test.each(['site list', 'site change height:3m', 'site default site:Home', 'site remove site:Home'])(
  '%s without a site tells how to set one',
  async (line) => {
    expect((await club.say(line)).headline).toContain('Tell me with /site set');
  },
);

test('another member never sees a site, however it is asked for', async () => {
  await club.say(`${HOME} name:Hideaway`);
  await club.say('bed add name:Secret crop:spinach');
  const [site] = await club.store.sites.list('anna');
  const [bed] = await club.store.beds.list('anna');
  await club.say('site set lat:52.1 lon:5.3', { member: 'ben' });
  await club.say('bed add name:Own', { member: 'ben' });
  for (const line of [
    'site list',
    'bed show',
    'mydata export',
    `site change site:${site?.id} height:1m`,
    `site default site:${site?.id}`,
    `site remove site:${site?.id} sure:yes`,
    `bed show bed:${bed?.id}`,
    `bed change bed:${bed?.id} soil:dry`,
    `bed remove bed:${bed?.id}`,
    `bed plant bed:${bed?.id} crop:kale`,
    `tonight site:${site?.id}`,
    `warnings join site:${site?.id}`,
  ]) {
    const reply = await club.say(line, { member: 'ben' });
    const seen = JSON.stringify(reply) + (reply.files ?? []).map(({ bytes }) => Buffer.from(bytes).toString()).join();
    expect(seen).not.toMatch(/Hideaway|Secret|41\.2|96\.6/);
  }
  const suggested = [
    ...(await club.suggestions('site change', 'site', '', { member: 'ben' })),
    ...(await club.suggestions('bed show', 'bed', '', { member: 'ben' })),
  ];
  expect(suggested).toEqual(['Home', 'Own']);
  expect(await club.store.sites.list('anna')).toHaveLength(1);
});

test('no coordinate and nothing that a member wrote gets into the log', async () => {
  await club.say(`${HOME} name:Hideaway`);
  await club.say('bed add name:Secret crop:spinach');
  await club.say('site set lat:95 lon:-96.6301234');
  await club.say('tonight');
  club.forecasts.script('/', { status: 500 });
  await club.say('tonight night:tomorrow');
  await club.store.close();
  expect((await club.say('site list')).headline).toContain('Something went wrong on my side');
  expect(club.logged.length).toBeGreaterThan(0);
  expect(club.logged.join('')).not.toMatch(/41\.21|96\.63|Hideaway|Secret|95/);
});

describe('site compare', () => {
  test('tells which site is colder, and what grows worst off in each', async () => {
    await club.say(HOME);
    await club.say('bed add name:Tunnel crop:lettuce covers:"low tunnel"');
    expect((await club.say('site compare')).headline).toContain('You have one site, Home. Add the other');
    await club.say('site set lat:48.2 lon:16.4 name:Allotment');
    await club.say('bed add name:Far crop:chard site:Allotment');
    const reply = await club.say('site compare');
    expect(reply.private).toBe(true);
    expect(reply.headline).toMatch(
      /^(Home|Allotment) is the coldest tonight, \d+ °F below (Home|Allotment)\. |^Your sites are about as cold as each other tonight\. /,
    );
    const lines = reply.sections[0]?.lines ?? [];
    expect(lines).toHaveLength(2);
    expect(lines.join('\n')).toMatch(/Home \(open\): low \d+ °F, [a-z ]+\. Worst: Tunnel, lettuce: /);
    expect(lines.join('\n')).toMatch(/Allotment \(open\): low \d+ °F, [a-z ]+\. Worst: Far, chard: /);
    expect(wordsOf(reply)).not.toMatch(/41\.2|48\.2/);
  });

  test('a site without a night does not silence the others', async () => {
    await club.say(HOME);
    await club.say('site set lat:-80 lon:0 name:South');
    const reply = await club.say('site compare');
    expect(reply.headline).toBe('Home is the only site that I could work out tonight.');
    expect(wordsOf(reply)).toContain('South: the sun does not set there then');
  });
});
