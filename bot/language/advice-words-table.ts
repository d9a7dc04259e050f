import type { AdviceKey } from '../../rules/index.ts';

/** Of each line of `says` one phrase stands in the question, and none of `unless`. Phrases are parted by commas; `*` ends a stem. */
export interface AdviceWords {
  readonly key: AdviceKey;
  readonly says: readonly string[];
  readonly unless?: string;
}

const FROSTED =
  'black overnight, turned black, collapsed, flopped, killed, after a hard freeze, after a hard frost, hard freeze, frosted, got frosted, frost bitten, frostbitten, froze, frozen, got hit, hit by frost, hit by a frost, nipped, touched by frost, frost damaged, frost damage, blackened, black, after the frost, after a frost, after frost, after the freeze, after a freeze, frost last night, freeze last night, frosty';
const WHAT_NOW =
  'dig*, now, overnight, need, lift*, do they, do tubers, come in, worry, worried, what now, now what, what do, what should, what can, do i, should i, can i, will they, will it, is it, are they, are the, is the, dead, recover, save*, rescue, salvage, ruined, come back, eat, eaten, edible, safe, use, usable, still good, any good, ok, okay, ripen, pick, pull, lost, done, finished, cut, trim, keep, store, throw, help, gone, goner*';
const FABRIC = 'row cover*, fleece, fabric, cover*, sheet*, blanket*, cloth, tarp*, burlap, remay, agribon';
const TENDER_FRUIT =
  'tomato*, pepper*, chili*, chilli*, eggplant*, aubergine*, cucumber*, zucchini*, courgette*, bean*, tomatillo*, okra, melon*, watermelon*, corn';

/** Questions after a frost night and about old remedies; the first that fits is meant. All common practice. */
export const ADVICE_WORDS: readonly AdviceWords[] = [
  {
    key: 'sprinkle-plants',
    says: ['spray*, mist*, wet*', 'leaves, plants, foliage', 'dusk, evening, night, tonight, before, frost'],
    unless: 'snow, fabric, row cover, soil, hole',
  },
  {
    key: 'water-soil',
    says: [
      'bone dry, dry soil, soil is dry, dry ground, drought',
      'soil, ground, bed, drought',
      'matter, help*, water, frost, worse, colder',
    ],
  },
  {
    key: 'frosted-rhubarb',
    says: ['rhubarb', FROSTED + ', hit', 'pick, ok, okay, safe, harvest, cut, stalks, use, eat, what now, what do'],
  },
  {
    key: 'frosted-crown',
    says: [
      'mint, horseradish, sunchoke*, jerusalem artichoke*, chives, asparagus, artichoke*, garlic, oregano',
      FROSTED + ', brown, turned brown, black, died back, dead',
      WHAT_NOW,
    ],
    unless: 'spears',
  },
  { key: 'led-lights', says: ['led, leds'] },
  {
    key: 'jugs-froze',
    says: ['jug*, bottle*, barrel*', 'froze, frozen, solid', 'any use, still, help, use, now what, what now'],
  },
  {
    key: 'shovel-snow',
    says: [
      'shovel*, pile snow, piling snow, heap snow, throw snow, put snow',
      'snow',
      'onto, on, over, bed, carrot*, garlic, plants',
    ],
    unless: 'tunnel*, frame*, roof, off, greenhouse, glass',
  },
  {
    key: 'snow-on-fabric',
    says: [
      FABRIC,
      'snow',
      'lying on, on my, on the, pressed, flattened, touching, sagging',
      'fabric, fleece, row cover*, sheet*, blanket*',
    ],
    unless: 'tunnel*, frame*, glass, plastic, shovel, under snow',
  },
  {
    key: 'snow-off-plants',
    says: [
      'snow*',
      'brush*, shake, knock*, clear, clean, wipe, take it off, get it off',
      'lettuce*, plants, kale, seedlings, spinach, leeks, broccoli, sprouts, cabbage*, leaves, greens, them',
    ],
    unless: 'tunnel*, frame*, glass, roof, hoop*, fabric, row cover, greenhouse, cloche*',
  },
  {
    key: 'snow-blanket',
    says: [
      'snow, dusting, inch, inches',
      'protect*, insulat*, help, keep them warm, enough, die, survive, kill, hurt, matter, damage, ok, okay, count',
      'snow, dusting',
    ],
    unless: 'tunnel*, frame*, glass, roof, hoop*, collapse*, load, weight, shovel, fabric, straw',
  },
  {
    key: 'forgot-to-close',
    says: [
      'forgot, left, overnight',
      'close, shut, open, lid, lids, door',
      'was, last night, all night, overnight, this morning, got down',
    ],
    unless: 'tonight, should i, can i',
  },
  {
    key: 'hole-in-cover',
    says: [
      'hole, holes, tear, torn, rip, ripped, split, gap',
      FABRIC + ', film, plastic, tunnel, glass, pane*, greenhouse, frame',
    ],
    unless: 'perforated, plastic with holes, film with holes, with holes, holes in it, voles',
  },
  {
    key: 'wet-fabric',
    says: ['wet, soaked, soaking, iced, icy, freezing rain, rained on, damp, ice on', FABRIC],
    unless: 'moist soil, soil, wet snow, snow',
  },
  {
    key: 'straw-no-cure',
    says: [
      'straw, hay, leaves, mulch',
      'throw, pile, bury, over, on, put, use, cover',
      'lettuce head*, heads, tomato*, pepper*, cauliflower*, courgette*, zucchini*, basil, cucumber*, bean*, squash',
    ],
    unless: 'bale*, shed, buckets, sheets, tarp, row cover, fleece, under, pull*, back, garlic, carrot*, around, round',
  },
  {
    key: 'mulch-back',
    says: [
      'mulch, straw',
      'pull*, rake*, take, remove, push*, draw',
      'back, off, away, aside',
      'frost, before, freeze, tonight, cold',
    ],
    unless: 'spring, garlic, strawberr*',
  },
  {
    key: 'loose-soil',
    says: [
      'dig over, cultivate, hoe, till, tilling, loosen*, loose, fork over, turn over',
      'frost, freeze, tonight, before, cold',
    ],
  },
  {
    key: 'stones',
    says: [
      'brick*, stone*, rock*, pavers, slab*',
      'between, beside, around, among, under, in the, near, do they',
      'help, heat, warm*, pots, plants, matter',
    ],
    unless: 'wall, walls, brick wall, house, terracotta',
  },
  {
    key: 'cold-hollow',
    says: [
      'bottom of, slope, hollow, dip, low spot, valley, frost pocket, downhill, foot of the hill',
      'colder, cold, worse, warmer, frost',
    ],
    unless: 'lettuce, kale, spinach, tomato*, pepper*',
  },
  {
    key: 'pots-in',
    says: [
      'pots, potted, containers, planters',
      'quickest, quick, easiest, least work, bring, carry, inside, indoors, what should, what do, move',
    ],
    unless: 'tray*, bench, wall, bricks, under pots, flower pots',
  },
  {
    key: 'late-evening',
    says: [
      'nothing ready, not ready, where do i start, what first, whats first, what do i do first, running out of time, no time, too late to do, late already, dark already, already dark, getting dark',
      'frost, freeze, tonight, cold',
    ],
  },
  {
    key: 'plastic-tarp',
    says: ['only thing, only have, all i have, just have, nothing but', 'tarp*, plastic, plastic sheet*'],
  },
  {
    key: 'roots-in-ground',
    says: [
      'parsnip*, salsify, carrot*, beet*, leek*, swede*, rutabaga*, turnip*, scorzonera, celeriac, horseradish, sunchoke*, jerusalem artichoke*',
      'all winter, over winter, through winter, through the winter, winter long, leave in the ground, left in the ground, stay in the ground',
      'ground, soil, bed, winter, leave',
    ],
    unless: 'sow, plant, before, how cold',
  },
  {
    key: 'frozen-fabric',
    says: [
      FABRIC,
      'frozen to, froze to, frozen onto, frozen on to, stuck to, stuck on, frozen down, frozen solid to, iced to, frozen stiff to, froze onto, stuck, frozen on',
    ],
    unless: 'to the ground for',
  },
  {
    key: 'rinse-frost',
    says: [
      'hose, hosing, rinse*, rinsing, spray*, water off, wash*, warm water, melt*, pour*',
      'frost, frosted, frozen, ice, froze, thaw',
    ],
    unless: 'soil, the ground, all night, overnight, jugs, jug, bottles, tonight',
  },
  {
    key: 'sprinkle-plants',
    says: [
      'sprinkler*, sprinkl*, mist, misting, overhead irrigation, spray*, wet the leaves, wetting the leaves, ice coat*, coat of ice',
      'frost, freeze, freezing, protect*, cold, all night, overnight, tonight, ice',
    ],
  },
  {
    key: 'water-soil',
    says: [
      'watering, spray water, spraying water, water the, water my, water before, water them, should i water, irrigate, irrigating, moist soil, wet soil, damp soil, dry soil, soak',
      'frost, freeze, freezing, cold, tonight, before, soil, help*',
    ],
    unless: 'jug*, barrel*, bottle*, wall*, walls of water, wall of water, bucket*, butt*, drum*',
  },
  {
    key: 'heaved-plants',
    says: [
      'heav*, pushed up, lifted out of the ground, popped out of the ground',
      'frost, freeze, garlic, strawberr*, roots, soil, plants, ground',
    ],
  },
  { key: 'frosted-tubers', says: ['potato*, sweet potato*', FROSTED, WHAT_NOW], unless: 'fork' },
  {
    key: 'frosted-squash',
    says: ['squash, squashes, pumpkin*, butternut*, gourd*', FROSTED, WHAT_NOW],
    unless: 'summer squash',
  },
  { key: 'frosted-fruit', says: [TENDER_FRUIT, FROSTED, WHAT_NOW] },
  {
    key: 'frozen-heads',
    says: [
      'cabbage*, head, heads, broccoli, cauliflower*, sprouts, brussels sprouts, radicchio, romanesco',
      'frozen, froze, frosted, frozen solid, frozen through, frost damaged, frost last night, after the freeze, after a freeze',
      WHAT_NOW,
    ],
  },
  {
    key: 'frosted-roots',
    says: [
      'carrot*, beet*, beetroot*, parsnip*, turnip*, rutabaga*, swede*, radish*, celeriac, roots',
      FROSTED,
      WHAT_NOW,
    ],
  },
  {
    key: 'limp-leaves',
    says: [
      'limp, wilt*, droop*, floppy, flopped, glassy, dark and, translucent, stiff, frozen, flat on the ground, water soaked, frosted',
      'this morning, morning, lettuce*, spinach, kale, chard, greens, leaves, leeks, plants, collards, mache, arugula, salad',
      'frozen, frost*, froze, freeze, limp, cold',
    ],
    unless:
      'safe to eat, can i eat, eat, ok to pick, can i pick, should i pick, pick, harvest, when can, when do, before, will freeze, going to freeze, ground is frozen, frozen ground',
  },
  {
    key: 'eat-frosted',
    says: ['eat, edible, safe to eat, poisonous, toxic, ok to eat, fit to eat, use in the kitchen', FROSTED],
    unless: 'rhubarb, when, frozen kale this, pick',
  },
  {
    key: 'uncover-after',
    says: [
      'take the covers off, take covers off, uncover, take off, remove, take them off, take it off, come off, take the sheets off, take the blankets off, take the cover off',
      'after, frost, freeze, blanket*, sheet*, bucket*, cardboard, tarp*, quilt*, in the morning, next morning, tomorrow morning, cover*',
    ],
    unless:
      'frame*, tunnel*, lid*, light*, hoop house, high tunnel, snow, today, row cover, fleece, vent*, greenhouse, this morning, tonight',
  },
  {
    key: 'frosted-plants',
    says: [
      'plants, plant, seedlings, garden, everything, leaves, transplants, basil, beds, crops',
      'got frosted, hit by frost, hit by a frost, frost damage, frost damaged, blackened, turned black, got nipped, frostbitten, frosted last night, got hit, froze last night, frosted',
      WHAT_NOW,
    ],
  },
];
