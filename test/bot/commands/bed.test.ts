import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { Club, HOME, wordsOf } from './club.ts';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
  await club.say(HOME);
});
afterEach(() => club.close());

const beds = () => club.store.beds.list('anna');

describe('bed add', () => {
  test('keeps crops with their stage, the stack, soil, mulch and the frame as built', async () => {
    const reply = await club.say(
      'bed add name:"Old frame" crop:"spinich, corn salad" stage:grown hardened:yes covers:"row cover under cold frame" soil:dry mulch:straw size:"3 x 6 ft" back:14in walls:straw-bale',
    );
    expect(reply.private).toBe(true);
    expect(wordsOf(reply)).toContain('Spinach (grown, hardened) and mache (grown, hardened).');
    expect(wordsOf(reply)).toContain('Covers: a cold frame over row cover.');
    expect(wordsOf(reply)).toContain(
      'Frame 3 × 6 ft, 14 in at the back, 8 in in front, facing south, straw-bale walls.',
    );
    expect(wordsOf(reply)).toContain('Dry soil, mulched with straw or leaves.');
    const [bed] = await beds();
    expect(bed).toMatchObject({ name: 'Old frame', soil: 'dry', mulch: 'straw', covers: ['cold-frame', 'row-cover'] });
    expect(bed?.frame).toMatchObject({ walls: 'straw-bale', depthM: 0.914, lengthM: 1.829, frontM: 0.203 });
    // Local day at the garden, whatever the zone of this machine.
    expect(bed?.plantings.map(({ crop, stage, hardened, since }) => [crop, stage, hardened, since])).toEqual([
      ['spinach', 'grown', true, '2026-01-20'],
      ['mache', 'grown', true, '2026-01-20'],
    ]);
  });

  test('says which frame it assumes where none is described, and keeps none', async () => {
    const reply = await club.say('bed add name:Frame covers:"cold frame"');
    expect(wordsOf(reply)).toContain(
      'Frame 4 × 8 ft, 12 in at the back, 8 in in front, facing south, wooden walls (1½ in) (assumed).',
    );
    expect((await beds())[0]?.frame).toBeUndefined();
  });

  test('in metric units lengths are read and told so', async () => {
    const brit = { member: 'ben', locale: 'en-GB' };
    await club.say('site set lat:53 lon:-2', brit);
    const reply = await club.say('bed add name:Frame covers:"cold frame" size:"1 x 2" back:40 front:25', brit);
    expect(wordsOf(reply)).toContain('Frame 1 × 2 m, 40 cm at the back, 25 cm in front');
  });

  test('keeps where a frame faces, and shows it back', async () => {
    await club.say('bed add name:Frame crop:kale covers:"cold frame" facing:east');
    expect((await beds())[0]?.frame).toMatchObject({ facingDeg: 90, depthM: 1.22 });
    const reply = await club.say('bed change bed:Frame facing:"south west"');
    expect(wordsOf(reply)).toContain('8 in in front, facing south-west, wooden walls (1½ in).');
    expect((await beds())[0]?.frame).toMatchObject({ facingDeg: 225, depthM: 1.22 });
  });

  test('keeps the day of sowing or setting out, the latest of that name, and shows it back', async () => {
    const reply = await club.say('bed add name:Row crop:"spinach, kale" stage:grown sown:"Aug 20"');
    expect(wordsOf(reply)).toContain('Spinach (grown, sown Aug 20, 2025) and kale (grown, sown Aug 20, 2025).');
    const plants = await club.say('bed plant bed:Row crop:"lettuce, kale" set-out:"15 Jan"');
    expect(wordsOf(plants)).toContain('kale (grown, sown Aug 20, 2025, set out Jan 15, 2026)');
    expect(wordsOf(plants)).toContain('lettuce (set out Jan 15, 2026)');
  });

  test('a bed may begin with nothing in it and nothing over it', async () => {
    const reply = await club.say('bed add name:Plot');
    expect(wordsOf(reply)).toContain('Nothing grows in it yet: /bed plant.');
    expect(wordsOf(reply)).toContain('Covers: no cover.');
  });

  test.each([
    ['bed add', 'Give the bed a name'],
    ['bed add name:***', 'Give a bed a name with a letter'],
    ['bed add name:q crop:dragonfruit', '"dragonfruit" is not in my table'],
    ['bed add name:q crop:cress', 'name one: garden cress'],
    ['bed add name:q covers:newspaper', 'I do not know "newspaper" as a cover'],
    ['bed add name:q covers:"cold frame over low tunnel"', 'do not fit over the same bed'],
    ['bed add name:q soil:loam', 'The soil is one of moist, dry, wet, sandy, clay or raised-bed.'],
    ['bed add name:q mulch:bark', 'The mulch is one of none, straw or plastic.'],
    ['bed add name:q stage:old', 'The stage is one of just-set-out, growing or grown.'],
    ['bed add name:q crop:kale hardened:perhaps', 'Answer hardened with yes or no.'],
    ['bed add name:q size:"4 x 8 ft"', 'name one among the covers'],
    ['bed add name:q covers:"cold frame" size:big', 'I cannot read "big" as a size'],
    ['bed add name:q covers:"cold frame" size:"90 x 8 ft"', 'The sides of a frame are 1 to 40 ft'],
    ['bed add name:q covers:"cold frame" back:9ft', 'A frame is 2 in to 6 ft'],
    ['bed add name:q covers:"cold frame" front:"12 cubits"', 'I do not know the unit "cubits"'],
    ['bed add name:q covers:"cold frame" back:5in front:9in', 'no higher than its back'],
    ['bed add name:q covers:"cold frame" walls:paper', 'walls is one of wood, straw-bale, log, concrete or metal.'],
    ['bed add name:q covers:"cold frame" facing:up', 'facing is one of north, north-east, east,'],
    ['bed add name:q facing:south', 'size, back, front, facing and walls describe a cold frame'],
    ['bed add name:q crop:kale sown:lately', 'I cannot read "lately" as a day; write it like Oct 12 or 12 October.'],
    ['bed add name:q crop:kale set-out:31/31', 'I cannot read "31/31" as a day'],
    ['bed add name:q site:Moon', 'You have no site called "Moon"'],
    [
      `bed add name:q crop:"${'spinach, kale, leek, parsnip, tatsoi, mizuna, chard, arugula, cabbage, celery, '.repeat(2)}beet, carrot, fennel, garlic, onion, pea, radish, tomato, turnip, endive, lettuce, cilantro"`,
      'A bed holds at most 20 crops',
    ],
  ])('%s is refused with what would be right, and nothing is kept', async (line, words) => {
    const reply = await club.say(line);
    expect([reply.refused, reply.private]).toEqual([true, true]);
    expect(reply.headline).toContain(words);
    expect(await beds()).toEqual([]);
  });

  test('two beds of a site have two names; at two sites they may have one', async () => {
    await club.say('bed add name:Frame');
    expect((await club.say('bed add name:FRAME')).headline).toContain('A bed of that name is already kept there.');
    await club.say('site set lat:52 lon:5 name:Allotment');
    expect((await club.say('bed add name:Frame site:Allotment')).headline).toBe('Frame (Allotment) is noted.');
    expect((await club.say('bed show bed:frame')).headline).toBe(
      'Which bed do you mean: Frame (Home) or Frame (Allotment)?',
    );
    expect((await club.say('bed show bed:"Frame (Allotment)"')).headline).toBe('Frame (Allotment).');
  });

  test('a member keeps at most forty', async () => {
    for (let count = 1; count <= 40; count += 1) await club.say(`bed add name:Bed${count}`);
    expect((await club.say('bed add name:More')).headline).toContain('40 beds already');
  });

  test('without a site it tells how to set one', async () => {
    expect((await club.say('bed add name:Frame', { member: 'ben' })).headline).toContain('Tell me with /site set');
  });
});

describe('a bed that is kept', () => {
  beforeEach(async () => {
    await club.say('bed add name:"Long tunnel" crop:"lettuce, kale" covers:"low tunnel"');
  });

  test('show tells one bed, or all of them', async () => {
    expect((await club.say('bed show bed:long')).headline).toBe('Long tunnel.');
    const all = await club.say('bed show');
    expect(all.headline).toBe('You have 1 bed.');
    expect(all.sections[0]?.lines[0]).toBe('Lettuce (growing) and kale (growing).');
  });

  test('change lays other covers and keeps the rest', async () => {
    const reply = await club.say('bed change bed:long covers:"blanket over low tunnel" name:Tunnel mulch:plastic');
    expect(wordsOf(reply)).toContain('Covers: a blanket over a low tunnel.');
    expect((await beds())[0]).toMatchObject({ name: 'Tunnel', covers: ['blanket', 'low-tunnel'], mulch: 'plastic' });
    await club.say('bed change bed:tunnel covers:none');
    expect((await beds())[0]?.covers).toEqual([]);
  });

  test('a frame stays as described until the bed has none any more', async () => {
    await club.say('bed change bed:long covers:"cold frame" size:"5 x 6 ft"');
    await club.say('bed change bed:long covers:"blanket over cold frame" back:16in');
    expect((await beds())[0]?.frame).toMatchObject({ depthM: 1.524, lengthM: 1.829, backM: 0.406, frontM: 0.203 });
    await club.say('bed change bed:long covers:"low tunnel"');
    expect((await beds())[0]?.frame).toBeUndefined();
  });

  test('a bed moves to another site', async () => {
    await club.say('site set lat:52 lon:5 name:Allotment');
    expect((await club.say('bed change bed:long site:Allotment')).headline).toBe('Long tunnel (Allotment) is changed.');
  });

  test('plant adds crops, and tells anew how far one is', async () => {
    await club.say('bed plant bed:long crop:arugula stage:just-set-out');
    await club.say('bed plant bed:long crop:"arugula, chard" stage:grown hardened:no');
    const [bed] = await beds();
    expect(bed?.plantings.map(({ crop, stage, hardened }) => [crop, stage, hardened])).toEqual([
      ['lettuce', 'growing', undefined],
      ['kale', 'growing', undefined],
      ['arugula', 'grown', false],
      ['chard', 'grown', false],
    ]);
  });

  test('pull takes out what is named, all or nothing', async () => {
    const missing = await club.say('bed pull bed:long crop:"kale, leek"');
    expect(missing.headline).toBe('Leek does not grow in Long tunnel; there is lettuce (growing) and kale (growing).');
    const reply = await club.say('bed pull bed:long crop:"kale, lettuce"');
    expect(reply.headline).toBe('Kale and lettuce: out of Long tunnel.');
    expect((await beds())[0]?.plantings).toEqual([]);
    expect((await club.say('bed pull bed:long crop:kale')).headline).toContain('nothing does');
  });

  test('remove forgets it', async () => {
    expect((await club.say('bed remove bed:"Long tunnel"')).headline).toBe('Long tunnel is forgotten.');
    expect(await beds()).toEqual([]);
  });

  test.each([
    ['bed show bed:zzz', 'You have no bed called "zzz". You have Long tunnel.'],
    ['bed change', 'Say which bed'],
    ['bed change bed:long', 'Say what to change: covers'],
    ['bed change bed:zzz soil:dry', 'You have no bed called "zzz"'],
    ['bed change bed:long covers:newspaper', 'I do not know "newspaper" as a cover'],
    ['bed change bed:long size:"4 x 8 ft"', 'name one among the covers'],
    ['bed change bed:long soil:loam', 'The soil is one of'],
    ['bed change bed:long site:Moon', 'You have no site called "Moon"'],
    ['bed plant bed:long', 'Name the crop'],
    ['bed plant bed:long crop:dragonfruit', 'is not in my table'],
    ['bed plant bed:long crop:kale stage:old', 'The stage is one of'],
    ['bed plant crop:kale', 'Say which bed'],
    ['bed pull bed:long', 'Name the crop'],
    ['bed pull bed:zzz crop:kale', 'You have no bed called "zzz"'],
    ['bed remove', 'Say which bed to remove'],
    ['bed remove bed:zzz', 'You have no bed called "zzz"'],
  ])('%s is refused with what would be right', async (line, words) => {
    const before = await beds();
    const reply = await club.say(line);
    expect([reply.refused, reply.private]).toEqual([true, true]);
    expect(reply.headline).toContain(words);
    expect(await beds()).toEqual(before);
  });
});

test.each(['bed show', 'bed show bed:x', 'bed change bed:x soil:dry', 'bed plant bed:x crop:kale', 'bed remove bed:x'])(
  '%s without a bed tells how to add one',
  async (line) => {
    expect((await club.say(line)).headline).toContain('Tell me one with /bed add.');
  },
);

describe('shed', () => {
  test('put keeps spare covers, and takes one off the list at zero', async () => {
    await club.say('shed put cover:blanket count:2');
    await club.say('shed put cover:"heavy fleece"');
    expect((await club.say('shed list')).sections[0]?.lines).toEqual([
      '2 × blanket',
      '1 × heavy row cover (1.5 oz/yd²)',
    ]);
    const reply = await club.say('shed put cover:blanket count:0');
    expect(reply.sections[0]?.lines).toEqual(['1 × heavy row cover (1.5 oz/yd²)']);
    expect((await club.say('shed put cover:"heavy fleece" count:0')).sections[0]?.lines).toEqual(['Nothing.']);
  });

  test.each([
    ['shed list', 'Your shed is empty here.'],
    ['shed put', 'Name one cover, such as cover:blanket.'],
    ['shed put cover:newspaper', 'I do not know "newspaper" as a cover'],
    ['shed put cover:"blanket over low tunnel"', 'Name one cover at a time'],
    ['shed put cover:none', 'Name one cover at a time'],
    ['shed put cover:snow', 'Snow does not keep in a shed'],
    ['shed put cover:blanket count:-1', 'count is a whole number from 0 to 99.'],
    ['shed put cover:blanket count:1.5', 'count is a whole number from 0 to 99.'],
    ['shed put cover:blanket count:100', 'count is a whole number from 0 to 99.'],
  ])('%s is refused with what would be right', async (line, words) => {
    const reply = await club.say(line);
    expect([reply.refused, reply.private]).toEqual([true, true]);
    expect(reply.headline).toContain(words);
  });

  test('another member’s shed is another shed', async () => {
    await club.say('shed put cover:blanket');
    expect((await club.say('shed list', { member: 'ben' })).headline).toContain('Your shed is empty here.');
  });
});
