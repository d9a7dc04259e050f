import type { Stage } from './understood.ts';

export interface StateWords {
  readonly hardened?: boolean;
  readonly stage?: Stage;
  /** Each stands before each of `phrases`. */
  readonly fronts?: string;
  readonly phrases: string;
}

/** What people say about the state of their plants; a denial before "hardened off" turns it round. */
export const STATE_WORDS: readonly StateWords[] = [
  {
    hardened: true,
    phrases:
      'hardened, been hardening, hardened off, hardened up, well hardened, hardening off, fully hardened, harden off, acclimated, acclimatized, acclimatised, toughened up, toughened, grown cold, grown hard, ' +
      'cold grown, used to the cold, used to cold, used to frost, been outside all fall, been outside all autumn, outside all fall, outside all autumn, outdoors all fall, ' +
      'outdoors all autumn, out all fall, out all autumn, outside all winter, been out all winter, outside since, outdoors since, been outside since, out since, well established, established, cold hardened, ' +
      'winter hardened, already had frost, had several frosts, had some frosts, had a few frosts, through a few frosts, been frosted before, seen frost, seen a few frosts, seen several frosts, ' +
      'outside for weeks, outdoors for weeks, outside for a month, overwintered, overwintering outside, in the ground since, been through frost, been through frosts, been through several frosts, been through a few frosts, outside for months, cold weather grown, been cold for weeks, ' +
      'been cold for a while, after weeks of cold, had a hard frost already, already been through, been outside for, outside for, been outdoors for, used to frosts',
  },
  {
    hardened: false,
    phrases:
      'unhardened, un hardened, tender, soft, soft growth, lush, lush growth, sappy, leggy, after a warm spell, warm spell, mild spell, after a mild spell, after a warm week, warm week, week of warm weather, days of warm weather, weeks of warm weather, week of warmth, week of mild weather, after warm weather, ' +
      'warm weather, after a mild week, mild week, after a thaw, straight from the greenhouse, straight out of the greenhouse, straight from the windowsill, from the windowsill, off the windowsill, ' +
      'straight from indoors, from indoors, grown indoors, started indoors, fresh out of the greenhouse, fresh from the greenhouse, from the store, from the shop, from the nursery, straight from the nursery, straight from the shop, never seen frost, never seen a frost, never had frost, not used to the cold, ' +
      'not used to cold, no hardening, without hardening, without hardening off, no hardening off, non hardened, been warm, been warm lately, been mild, been mild lately, its been warm, its been mild, it has been warm, it has been mild, it was warm all week, ' +
      'been in the 60s, been in the 70s, been in the 50s, spring like weather, springlike weather, indian summer, after a heat wave, unacclimated, not acclimated, no frost yet, grown warm, grown in a heated greenhouse, softened up, de hardened, dehardened',
  },
  {
    hardened: false,
    fronts:
      'came out of, came from, just out of, straight out of, moved from, moved out of, brought out of, brought out from, fresh from, fresh out of, just came out of, just came from, been in, been living in, lived in, grown in, raised in, started in, come out of, taken out of, transplanted from, went out from',
    phrases:
      'the house, my house, the kitchen, my kitchen, the living room, the windowsill, a windowsill, the window, the basement, the grow lights, grow lights, the grow room, a grow tent, the grow tent, a heated greenhouse, the heated greenhouse, the sunroom, the conservatory, the store, the shop, the nursery, the garden center, the garden centre, a garden center, a garden centre, a nursery, the propagator, a propagator, indoors, inside',
  },
  {
    hardened: false,
    phrases:
      'never seen cold, never seen the cold, never felt cold, never felt frost, never been cold, never been outside, never been out, never seen a cold night, never had a cold night, never had a frost, never seen a freeze, no frost so far, not had a frost, not had any frost, not seen frost, not seen a frost, ' +
      'them growing again, it growing again, has them growing, started growing again, are growing again, is growing again, got them growing, put on new growth, new soft growth, bought today, bought yesterday, bought this week, bought them today, bought them yesterday, bought them this week, just bought, store bought, shop bought, newly bought, off the shelf, under grow lights, grown under lights, under lights until, from a heated greenhouse, pampered, moved in this morning, moved out this morning, only moved out',
  },
  {
    hardened: true,
    fronts:
      'weeks of, two weeks of, three weeks of, four weeks of, five weeks of, six weeks of, 2 weeks of, 3 weeks of, 4 weeks of, 5 weeks of, 6 weeks of, a month of, months of, several, many, plenty of, lots of, nights of, had weeks of, a fortnight of, ten nights of, a dozen, loads of',
    phrases:
      'frost, frosts, frosty nights, freezing nights, cold nights, freezes, light frosts, hard frosts, light freezes, frosty mornings, nights below freezing',
  },
  {
    hardened: true,
    phrases:
      'every night for a month, every night for weeks, night after night, every night this month, in the ground all fall, in the ground all autumn, outside the whole time, out since, been out since, used to freezing, had frost already, already frosted, been frosted many times, been frosted several times, hard as nails, lived through, been through worse, weathered, outside all along, out in the cold for',
  },
  {
    stage: 'seedling',
    hardened: false,
    phrases: 'just germinated, only just germinated, germinated this week, germinated yesterday, germinated last week',
  },
  {
    stage: 'seedling',
    hardened: false,
    fronts: 'just, newly, freshly, recently',
    phrases: 'set out, planted out, transplanted, planted, put out, put in, gone in, gone out',
  },
  {
    stage: 'seedling',
    hardened: false,
    fronts: 'set out, planted out, transplanted, planted, put out, put in',
    phrases: 'yesterday, today, this morning, this week, last week',
  },
  {
    stage: 'seedling',
    hardened: false,
    phrases:
      'new transplants, fresh transplants, tender seedlings, tender young, went in yesterday, just went in, just went out, just out of the greenhouse',
  },
  {
    stage: 'seedling',
    phrases:
      'seedling, seedlings, transplant, transplants, starts, plug plants, plugs, young plants, young, little plants, small plants, newly germinated, just sprouted, sprouted, just emerged, sprouting, ' +
      'just up, just coming up, cotyledons, first true leaves, two leaves, tiny plants, baby plants, plantlets, young seedlings, tiny seedlings, newly emerged, seed leaves, small seedlings, just germinating, sprout',
  },
  {
    stage: 'growing',
    phrases:
      'half grown, halfgrown, half size, half sized, mid size, medium sized, mid growth, growing on, juvenile, teenage, partly grown, adolescent, six weeks old, 6 weeks old, part grown',
  },
  {
    stage: 'mature',
    phrases:
      'mature, mature heads, full size, fullsize, full sized, full grown, fully grown, fullgrown, big heads, large heads, headed up, full heads, mature plants, mature head, old plants, big plants, large plants, ready to harvest, ready to cut, ' +
      'ready to pick, heading up, harvest size, at harvest, big mature, full head, nearly mature, big old, harvestable size, heads formed, fully headed, matured',
  },
  {
    stage: 'baby',
    phrases:
      'baby leaf, baby leaves, babyleaf, baby greens, cut and come again, microgreen size, baby size, baby sized, baby salad, salad mix size, small rosettes, rosettes, rosette, baby stage, small leaves',
  },
];
