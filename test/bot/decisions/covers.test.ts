import { describe, expect, it } from 'vitest';
import { decided, itDecides } from './decision.ts';

describe('covers that growers own get a low, and what stands open is shut first (common practice)', () => {
  itDecides([
    {
      ask: 'lettuce at 25F under a bucket',
      says: [/under a bucket/, /Leaf low about 2[1-7] °F/],
      verdict: ['on the edge', 'holds', 'leaf burn'],
    },
    {
      ask: 'milk jug cloche over pepper seedlings, 30 clear calm',
      month: 5,
      says: [/jug cloche/, /To make it hold/],
      verdict: ['winterkill', 'leaf burn', 'on the edge'],
    },
    {
      ask: 'cardboard box over the peppers tonight 31',
      month: 5,
      says: [/cardboard box/],
      verdict: ['holds', 'on the edge'],
    },
    { ask: 'walls of water on tomatoes, 25', month: 5, says: [/wall of water/], verdict: ['holds', 'on the edge'] },
    {
      ask: 'burlap over beans, 30',
      month: 5,
      says: [/under burlap/],
      verdict: ['on the edge', 'leaf burn', 'winterkill'],
    },
    {
      ask: 'storm window over straw bales, 20 F, lettuce',
      month: 11,
      says: [/under a cold frame/],
      verdict: ['holds', 'on the edge'],
    },
    {
      ask: 'lettuce 20F in an unheated polycarbonate greenhouse',
      says: [/twin-wall greenhouse/],
      verdict: ['holds', 'on the edge'],
    },
    { ask: 'low tunnel one end open lettuce 24F', says: [/Shut it first/, /costs about \d/, /shut \d+ °F/] },
    { ask: 'my row cover has a hole the size of a hand', month: 11, says: [/Tape or peg it shut/] },
    {
      ask: 'old glasshouse with two broken panes, 27 outside, tomatoes inside',
      month: 10,
      says: [/at 27 °F/],
      verdict: ['on the edge', 'leaf burn', 'winterkill'],
    },
  ]);

  it('finds a second layer of fabric worth something, and less than twice the first', () => {
    const lowC = (cover: string) =>
      decided({ ask: `lettuce at 20F ${cover}`, says: [] }).answers[0]?.leafLowC ?? Number.NaN;
    const [bare, one, two] = [lowC('uncovered'), lowC('under row cover'), lowC('under two layers of row cover')];
    expect(two).toBeGreaterThan(one + 0.5);
    expect(two - one).toBeLessThan(1.2 * (one - bare));
  });
});
