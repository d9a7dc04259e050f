import { describe } from 'vitest';
import { itDecides } from './decision.ts';

describe('remedies come as a grower ranks them (common practice)', () => {
  itDecides([
    { ask: 'what should i do for tomatoes at 30F', month: 5, says: [/holds under/], neverSays: [/straw/] },
    { ask: 'what should i cover lettuce with at 20F', says: [/holds under/], neverSays: [/straw/] },
    { ask: 'can I just throw straw over lettuce heads', month: 10, says: [/^No: loose straw is no cure/] },
    { ask: 'Straw on my tomato plants to save them from -2?', locale: 'en-GB', month: 5, says: [/^No/] },
    {
      ask: 'Least work for kale at 22?',
      month: 1,
      says: [/holds/],
      verdict: ['holds'],
      neverSays: [/To make it hold/],
    },
    { ask: 'carrots 12 F coming, what have I got: bags of leaves', says: [/dry leaves from the shed/] },
    { ask: 'pots of herbs, 28 tonight, quickest way?', month: 10, says: [/Carry the tender ones in/] },
    {
      ask: 'its 6pm, frost tonight, nothing ready, 30',
      month: 10,
      says: [/First pick ripe fruit/, /lettuce, kale, roots.*can wait/],
    },
    { ask: 'cauliflower, quick fix for 28 tonight?', month: 10, says: [/own leaves over the curd/] },
    { ask: 'will LED string lights keep my lettuce warm', says: [/^No: LED lights give hardly any heat/] },
  ]);
});
