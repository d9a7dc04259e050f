import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { Club, HOME, wordsOf } from './club.ts';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
});
afterEach(() => club.close());

const lowsOf = (line: string) =>
  [...line.matchAll(/(−?\d+) °F/g)].map(([, degrees]) => Number(degrees?.replace('−', '-')));

describe('compare covers', () => {
  test('stands them side by side for the own night and the reference night, the warmest first', async () => {
    await club.say(HOME);
    await club.say('bed add name:Tunnel crop:lettuce covers:"low tunnel"');
    const reply = await club.say('compare covers covers:"low tunnel or quilt over low tunnel or row cover"');
    const rows = reply.sections[0]?.lines ?? [];
    expect(rows).toHaveLength(3);
    expect(rows[0]).toMatch(
      /^Quilt over low tunnel: leaf low \d+ °F tonight, \d+ °F on the reference night\. Lettuce /,
    );
    expect(rows[0]).toMatch(/By day \d+ % of the light/);
    const lows = rows.map((row) => lowsOf(row)[0] ?? Number.NaN);
    expect(lows).toEqual([...lows].sort((a, b) => b - a));
    expect(reply.headline).toMatch(/^Tonight quilt over low tunnel keeps the leaf warmest, \d+ °F ahead of /);
    expect(reply.private).toBe(true);
  });

  test('adds what lies on a named bed, and judges its crops', async () => {
    await club.say(HOME);
    await club.say('bed add name:Tunnel crop:kale covers:"low tunnel"');
    await club.say('bed add name:Frame crop:spinach covers:"cold frame"');
    const rows = (await club.say('compare covers covers:"quilt over low tunnel or blanket over low tunnel" bed:Tunnel'))
      .sections[0]?.lines;
    expect(rows?.map((row) => row.split(':')[0])).toContain('Low tunnel');
    expect(rows?.join(' ')).toMatch(/[Kk]ale/);
    expect(rows?.join(' ')).not.toMatch(/[Ss]pinach/);
  });

  test('takes a low and crops that are named in place of the own ones', async () => {
    const reply = await club.say('compare covers covers:"sheet or quilt" crop:kale low:14F');
    expect(reply.headline).toMatch(/^At 14 °F /);
    expect(wordsOf(reply)).toMatch(/That night: outside low 14 °F/);
    expect(wordsOf(reply)).not.toMatch(/reference/i);
  });

  test('without a place compares on the reference night', async () => {
    const words = wordsOf(await club.say('compare covers covers:"low tunnel, cold frame"'));
    expect(words).toMatch(/Reference night: outside low 25 °F, clear and calm/);
    expect(words).not.toMatch(/tonight/);
  });

  test('a frame comes with the cautions on glass, old paint and treated timber; a blanket with none', async () => {
    const frame = await club.say('compare covers covers:"cold frame or low tunnel"');
    expect(frame.cautions?.map((caution) => caution.split(':')[0])).toEqual([
      'Glass lights break',
      'Old windows',
      'Treated timber',
    ]);
    expect((await club.say('compare covers covers:"blanket or quilt"')).cautions).toEqual([]);
  });

  test.each([
    ['"low tunnel"', 'Name at least two stacks'],
    ['"sheet or carpet"', 'I do not know "carpet" as a cover'],
    ['"sheet, tarp, quilt, blanket, straw, mat"', 'Name at most 5 stacks'],
    ['"high tunnel under blanket or sheet"', 'Nothing but snow goes over a high tunnel'],
  ])('covers:%s is refused with what would be right', async (covers, words) => {
    const reply = await club.say(`compare covers covers:${covers}`);
    expect([reply.refused, reply.headline]).toEqual([true, expect.stringContaining(words)]);
  });
});

describe('compare frame', () => {
  test('says what other walls, a steeper light and a quilt would change, with the cautions', async () => {
    await club.say(HOME);
    await club.say('bed add name:Frame crop:spinach covers:"cold frame"');
    const reply = await club.say('compare frame');
    expect(reply.headline).toMatch(/^Frame: wooden walls/);
    const lines = reply.sections[0]?.lines ?? [];
    expect(lines[0]).toMatch(/^As it is: leaf low /);
    expect(lines.join(' ')).toMatch(/[Ss]traw-bale walls/);
    expect(lines.join(' ')).toMatch(/Light at 45°, by a higher back \([12]\.\d times the sun/);
    expect(lines.at(-1)).toMatch(/^A quilt laid on the light for the night: \d+ °F warmer/);
    expect(reply.cautions).toHaveLength(3);
  });

  test('without a bed speaks of the common frame, and refuses a bed without one', async () => {
    expect((await club.say('compare frame')).headline).toMatch(/^The common frame: /);
    await club.say(HOME);
    await club.say('bed add name:Row crop:kale');
    expect((await club.say('compare frame bed:Row')).headline).toBe('Row has no cold frame. Name a bed that has one.');
  });
});
