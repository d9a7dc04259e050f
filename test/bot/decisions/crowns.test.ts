import { describe } from 'vitest';
import { itDecides } from './decision.ts';

describe('of crowns, cloves, bulbs and roots it says what dies of the top and what of the plant (common practice)', () => {
  itDecides([
    {
      ask: 'asparagus 10F',
      month: 1,
      says: [/The crown lives/, /Nothing to pick in winter/],
      verdict: ['holds'],
      neverSays: [/pick today/i],
    },
    {
      ask: 'asparagus spears are up, 27 tonight',
      month: 4,
      says: [/Spears and ferns that are up/, /pick what is good today/, /crown lives/],
      verdict: ['holds'],
    },
    {
      ask: 'garlic came up already, 4 inch tops, 10F coming',
      month: 1,
      says: [/cloves live/, /Burnt tips do no harm/],
      verdict: ['holds'],
    },
    {
      ask: 'Chives are green again and it will be -8',
      locale: 'en-GB',
      month: 3,
      says: [/clump lives/],
      verdict: ['holds'],
    },
    { ask: 'mint turned brown after last night at 23. Dead?', month: 10, says: [/No loss/, /comes again in spring/] },
    {
      ask: 'Horseradish leaves collapsed in the frost, do I need to dig it all?',
      month: 10,
      says: [/root is alive/, /before the soil freezes/],
    },
    {
      ask: 'jerusalem artichoke stalks are black, do tubers need to come in',
      month: 11,
      says: [/tubers are alive/, /Leave the tubers in the ground/],
    },
    {
      ask: 'Will my globe artichokes survive -9?',
      locale: 'en-GB',
      month: 1,
      says: [/mulch the crown|at risk/, /straw/],
      verdict: ['on the edge', 'winterkill'],
    },
    { ask: 'salsify in the ground all winter?', locale: 'en-GB', month: 11, says: [/leave them in the ground/] },
    {
      ask: 'rhubarb buds showing red and -7 forecast',
      locale: 'en-GB',
      month: 4,
      says: [/crown lives/],
      verdict: ['holds'],
    },
  ]);
});
