import { describe } from 'vitest';
import { itDecides } from './decision.ts';

describe('what is done before the night is told in degrees, or that it brings nothing (common practice)', () => {
  itDecides([
    { ask: 'should I water before the frost?', month: 5, says: [/water the soil, not the leaves/, /by noon/] },
    { ask: 'soil is bone dry after drought, does it matter', month: 10, says: [/Moist soil/] },
    { ask: 'milk jugs of water inside my tunnel, how many and how much help', says: [/gallon jugs/, /about [1-4] °F/] },
    { ask: 'do water barrels help', says: [/in the open bring nothing/] },
    { ask: '6 gallon jugs of water in my cold frame at 15F lettuce', says: [/6 gallon jugs/, /with, \d+ °F without/] },
    { ask: '100 watt soil cable in a cold frame, how many degrees at 15F', says: [/wet use/, /100 W/, /about \d+ °F/] },
    {
      ask: 'peppers in pots next to brick wall, 33',
      month: 10,
      says: [/The wall: about [1-5] °F/, /Not used: the pots/],
    },
    { ask: 'lettuce under a tree at 27F', month: 4, says: [/The tree: about [1-4] °F/] },
    { ask: 'spray water on the leaves at dusk?', locale: 'en-GB', month: 5, says: [/^No/, /Water the soil/] },
    { ask: 'pull the mulch back before a frost?', month: 5, says: [/^Yes/, /bare moist soil/] },
  ]);
});
