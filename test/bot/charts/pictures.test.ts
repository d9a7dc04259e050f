import { afterAll, beforeAll, expect, test } from 'vitest';
import { rendered } from '../../../bot/chat/discord/render.ts';
import { drawn } from '../../../bot/talk/plain-text.ts';
import { Club, HOME, wordsOf } from '../commands/club.ts';

let club: Club;
beforeAll(async () => {
  club = await Club.open();
  await club.say(HOME);
  await club.say('bed add name:Tunnel crop:kale covers:"low tunnel"');
  await club.toldLastNight();
  await club.say('reading inside:24F outside:16F');
});
afterAll(() => club.close());

test.each(['tonight', 'vent', 'record'])('%s carries a picture, with words for who cannot see it', async (line) => {
  const reply = await club.say(line);
  expect([...(reply.picture?.png.subarray(1, 4) ?? [])]).toEqual([...Buffer.from('PNG')]);
  expect(reply.picture?.altText).toMatch(/Tunnel.*\d+ °F|Tunnel.*1 of 1 night/);
  expect(reply.picture?.altText).not.toMatch(/41\.2|96\.6/);
  const { body, files } = rendered(reply);
  expect(files[0]?.name).toMatch(/\.png$/);
  expect(body.attachments[0]?.description).toBe(reply.picture?.altText);
});

test.each(['tonight', 'vent'])(
  'the terminal draws the curve of %s under its bed’s name, in 80 columns',
  async (line) => {
    const lines = drawn(await club.say(line), 80).split('\n');
    const begin = lines.findIndex((each) => /^Tunnel, (Tue|Wed) \d+ Jan$/.test(each));
    expect(begin).toBeGreaterThan(0);
    expect(lines[begin + 1]).toMatch(/^ *−?\d+° \|/);
    expect(Math.max(...lines.slice(begin, begin + 16).map(({ length }) => length))).toBeLessThanOrEqual(80);
  },
);

test('the same picture is not drawn twice', async () => {
  const [one, other] = [await club.say('record'), await club.say('record')];
  expect(wordsOf(one)).toBe(wordsOf(other));
  expect(one.picture?.png).toBe(other.picture?.png);
});
