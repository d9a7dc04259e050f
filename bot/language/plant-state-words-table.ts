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
      'seedling, seedlings, transplant, transplants, starts, plug plants, plugs, young plants, young, little plants, small plants, newly germinated, just germinated, just sprouted, sprouted, just emerged, sprouting, ' +
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
