import { describe, expect, it } from 'vitest';
import { decided, itDecides } from './decision.ts';

describe('snow counts by its depth and by where it lies (common practice)', () => {
  itDecides([
    { ask: '10 inches of snow tonight will my kale die', says: [/covers the plants/], neverSays: [/10 °F/] },
    {
      ask: 'Spinach is under 10 inches of snow and its going to 0',
      month: 1,
      says: [/10 in of snow on the plants/],
      verdict: ['holds'],
    },
    {
      ask: 'There is a foot of snow on the ground, 5F, will my kale live?',
      month: 1,
      says: [/on the ground, not on the plants/, /covers the plants whole: holds/],
      verdict: ['winterkill', 'leaf burn'],
    },
    {
      ask: 'strawberries no mulch yet and 8F friday, no snow',
      month: 11,
      says: [/uncovered/],
      neverSays: [/snow on the plants/],
    },
    {
      ask: '8 inches of heavy wet snow forecast, PVC hoops with plastic',
      month: 3,
      says: [/Push it off now/, /bears 3 lb/, /soft broom/],
    },
    { ask: 'we got a dusting, maybe an inch. does that protect?', month: 11, says: [/too little to count on/] },
    {
      ask: 'Can I shovel snow onto the carrot bed?',
      locale: 'en-GB',
      month: 1,
      says: [/^Yes/, /salt/, /Do not tread/],
    },
    {
      ask: 'fabric with snow on it is lying on my lettuce',
      says: [/Leave it until it thaws/, /hoops/],
      neverSays: [/Rip/],
    },
    {
      ask: "20 cm of snow and -12 tonight, lamb's lettuce in open ground",
      locale: 'en-GB',
      month: 1,
      says: [/20 cm of snow/, /−12 °C/],
      verdict: ['holds', 'on the edge'],
    },
    { ask: 'Snowed on my lettuce last night, it was 31. Brush off?', month: 4, says: [/let snow melt/] },
  ]);

  it('keeps more warmth the deeper it lies', () => {
    const lowC = (depth: string) =>
      decided({ ask: `${depth} of snow on my kale at 5F`, says: [] }).answers[0]?.leafLowC ?? Number.NaN;
    expect(lowC('12 inches')).toBeGreaterThan(lowC('6 inches') + 0.5);
    expect(lowC('6 inches')).toBeGreaterThan(lowC('2 inches') + 0.5);
  });
});
