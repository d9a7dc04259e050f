import { describe, expect, it } from 'vitest';
import { PUBLIC_COVER_NAMES, publicCoverName, publicCovers } from '../../../bot/language/public-cover-names.ts';
import { COVER_KEYS } from '../../../rules/index.ts';

describe('the names of covers for other programs', () => {
  it('are given for every cover, and for hoops and jugs are not', () => {
    const unnamed = COVER_KEYS.filter((key) => publicCoverName(key) === undefined);
    expect(unnamed).toEqual(['hoops', 'jugs']);
  });

  it('come from the promised list alone', () => {
    for (const name of publicCovers(COVER_KEYS)) expect(PUBLIC_COVER_NAMES).toContain(name);
  });

  it('tell a bed said to be bare from covers not said', () => {
    expect(publicCovers(undefined)).toEqual([]);
    expect(publicCovers([])).toEqual(['none']);
    expect(publicCovers(['jugs'])).toEqual(['none']);
  });

  it('keep the order from outside to inside', () => {
    expect(publicCovers(['quilt', 'cold-frame-twin-wall', 'row-cover', 'hoops'])).toEqual([
      'blanket',
      'cold-frame',
      'row-cover',
    ]);
  });
});
