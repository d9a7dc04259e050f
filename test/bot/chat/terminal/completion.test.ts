import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { completion } from '../../../../bot/chat/terminal/completion.ts';
import { COMMANDS } from '../../../../bot/commands/commands.ts';
import { Club, who } from '../../commands/club.ts';

describe('Tab at the terminal', () => {
  let club: Club;
  beforeAll(async () => {
    club = await Club.open();
    await club.say('site set lat:42.9 lon:-78.8');
    await club.say('bed add name:"Long tunnel" crop:kale covers:"low tunnel"');
  });
  afterAll(() => club.close());

  const completed = (line: string) =>
    completion(line, who({}), { commands: COMMANDS, services: club.services, doorWords: ['quit', 'sample'] });

  test.each([
    ['to', ['tonight']],
    ['/win', ['winter']],
    ['qu', ['quit']],
    ['bed a', ['add']],
    ['bed add cr', ['crop:']],
    ['bed add name:A cov', ['covers:']],
    ['bed add crop:spi', ['Spinach']],
    ['tonight night:tom', ['Tomorrow']],
    ['will my spina', ['spinach']],
    ['will kale survive under a low tu', ['low tunnel']],
    ['x', []],
  ])('%s goes on with %j', async (line, hits) => {
    const [found] = await completed(line);
    for (const hit of hits) expect(found.map((each) => each.toLowerCase())).toContain(hit.toLowerCase());
    if (hits.length === 0) expect(found).toEqual([]);
  });

  test('own beds are completed by their names, quoted where a name has blanks', async () => {
    expect(await completed('bed pull bed:lo')).toEqual([['"Long tunnel"'], 'lo']);
  });

  test('every hit begins as what it takes the place of, and that is the end of the line', async () => {
    for (const line of [
      'b',
      'bed ',
      'bed add ',
      'bed add crop:k',
      'vent b',
      'will my cab',
      'outcome ',
      'help command:w',
    ]) {
      const [hits, fragment] = await completed(line);
      expect(line.endsWith(fragment)).toBe(true);
      for (const hit of hits) expect(hit.replace(/^"/, '').toLowerCase().startsWith(fragment.toLowerCase())).toBe(true);
    }
  });
});
