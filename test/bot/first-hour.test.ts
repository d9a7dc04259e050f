import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Club, posterWith } from './commands/club.ts';

const README = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');

/** The lines to be typed, in order, of one reader of the page. */
function linesOf(reader: string): readonly string[] {
  const begun = README.slice(README.indexOf(`### ${reader}`) + 4);
  const part = begun.slice(0, begun.search(/^##/m));
  return [...part.matchAll(/^ *\/(.+)$/gm)].map(([, line = '']) => line);
}

describe('the first hour in the README', { shuffle: false }, () => {
  let club: Club;
  beforeAll(async () => {
    club = await Club.open();
    club.with({ poster: posterWith([]) });
    await club.say('warnings start', { member: 'coach', manager: true });
  });
  afterAll(() => club.close());

  test.each(linesOf('A member'))('a member types /%s and it is done', async (line) => {
    const reply = await club.say(line);
    expect(reply.refused ?? false, reply.headline).toBe(false);
  });

  test.each(linesOf('A coach'))('a coach types /%s and it is done', async (line) => {
    const reply = await club.say(line, { member: 'coach', manager: true });
    expect(reply.refused ?? false, reply.headline).toBe(false);
  });

  test('has steps for both', () => {
    expect([linesOf('A member').length, linesOf('A coach').length]).toEqual([7, 5]);
  });
});
