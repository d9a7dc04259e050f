import { describe, expect, test } from 'vitest';
import { type DatedPlanting, winterPlan } from '../../../bot/outlook/winter-plan.ts';
import type { Reply } from '../../../bot/talk/reply.ts';
import { readerOf } from '../../../bot/text/reader.ts';
import { cropWinterReply, winterReply } from '../../../bot/text/winter-reply.ts';
import { cropById } from '../../../rules/index.ts';
import { PLAIN_GARDEN } from '../outlook/day-garden.ts';

const READER = readerOf('en-US');
const AUGUST = new Date('2026-08-10T12:00:00Z');
const DECEMBER = new Date('2026-12-15T12:00:00Z');
const GUESS = 'What is growing without a day counts as half grown';

function telling(now: Date, { latitudeDeg = 43, planted = [] as readonly DatedPlanting[] } = {}) {
  return { plan: winterPlan({ ...PLAIN_GARDEN, latitudeDeg }, planted, now), frosts: {}, reader: READER, now };
}

const wordsOf = ({ headline, sections }: Reply) =>
  [headline, ...sections.flatMap(({ title = '', lines }) => [title, ...lines])].join('\n');

describe('the winter calendar', () => {
  test('begins with the weeks of short days, ahead or already here', () => {
    expect(winterReply(telling(AUGUST)).headline).toMatch(/^Home: days under ten hours from Nov \d+ to Feb \d+\./);
    expect(winterReply(telling(DECEMBER)).headline).toMatch(/^Home: in the weeks of short days until Feb \d+\./);
  });

  test('tells no sowing date that has passed as one to meet', () => {
    const late = winterReply(telling(DECEMBER));
    expect(late.sections.some(({ title }) => title?.startsWith('Sow by'))).toBe(false);
    expect(late.sections.some(({ title }) => title?.startsWith('Too late'))).toBe(true);
  });

  test('states its method and its doubt', () => {
    expect(wordsOf(winterReply(telling(AUGUST)))).toContain('Good to a week either way');
  });

  test('owns up to a guess only where there is one', () => {
    const since = new Date('2026-08-01T12:00:00Z');
    const growing = { bedName: 'Frame', cropId: 'spinach', stage: 'growing', since } as const;
    expect(wordsOf(winterReply(telling(AUGUST, { planted: [growing] })))).toContain(GUESS);
    expect(wordsOf(winterReply(telling(AUGUST, { planted: [{ ...growing, sown: since }] })))).not.toContain(GUESS);
    expect(wordsOf(winterReply(telling(AUGUST, { planted: [{ ...growing, stage: 'grown' }] })))).not.toContain(GUESS);
  });

  test('fits a phone at every latitude of gardens', () => {
    for (const latitudeDeg of [-43, 20, 35, 43, 52, 58]) {
      for (const now of [AUGUST, DECEMBER, new Date('2027-03-15T12:00:00Z')]) {
        const reply = winterReply(telling(now, { latitudeDeg }));
        for (const line of wordsOf(reply).split('\n')) expect(line.length).toBeLessThanOrEqual(240);
      }
    }
  });

  test('of one crop answers with its date', () => {
    const spinach = cropById('spinach');
    if (spinach === undefined) throw new Error('no spinach');
    expect(cropWinterReply(telling(AUGUST), [spinach]).headline).toMatch(/^Spinach: sow by (Aug|Sep) \d+, /);
    expect(cropWinterReply(telling(DECEMBER), [spinach]).headline).toMatch(
      /^Spinach: too late .+, not before (Feb|Mar) \d+\.$/,
    );
  });
});
