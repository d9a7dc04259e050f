import type { Advice, AdviceKey } from './advice-key.ts';

/** Of snow, pots, makeshift covers and what is done before the night. */
export const FURTHER_ADVICE = {
  'frosted-crown': {
    headline: 'No loss: the tops die back in frost, what is below the ground lives.',
    lines: ['Cut the dead tops back; it comes again in spring.'],
    cautions: [],
    source: 'common-practice',
  },
  'frosted-rhubarb': {
    headline: 'Pick the firm, upright stalks; pull limp or blackened ones and throw them away. Never eat the leaves.',
    lines: ['The crown is fine and sends new stalks.'],
    cautions: ['rhubarb'],
    source: 'common-practice',
  },
  'roots-in-ground': {
    headline: 'Yes: leave them in the ground and lift as you need them.',
    lines: [
      'Frost sweetens parsnips, salsify, carrots and leeks; the soil keeps the roots.',
      'Mulch a foot deep before the soil freezes hard, so that you can still dig. Eat them before they sprout in spring.',
    ],
    cautions: [],
    source: 'common-practice',
  },
  'snow-blanket': {
    headline:
      'Yes, where it covers the plants whole and lies about a hand deep: then leave it. A dusting or an inch is too little to count on.',
    lines: [
      'Snow on the ground beside tall kale or sprouts does nothing for what stands out of it; over snow clear nights are colder.',
      'It counts only while it lies: once it has melted, cover as for a bare bed. Name the low and the depth and I work it out.',
    ],
    cautions: [],
    source: 'common-practice',
  },
  'snow-off-plants': {
    headline: 'Leave it: let snow melt off the plants by itself.',
    lines: [
      'Under it they stay near freezing. Shake only tall stems that bend under wet snow, gently, once they have thawed.',
    ],
    cautions: [],
    source: 'common-practice',
  },
  'shovel-snow': {
    headline: 'Yes: loose clean snow, a foot deep, is a good blanket for roots, garlic and crowns.',
    lines: [
      'No snow from roads: salt. Do not tread or pack it; over straw it is better still.',
      'Off tunnels and frames it goes, not onto them.',
    ],
    cautions: [],
    source: 'common-practice',
  },
  'snow-on-fabric': {
    headline: 'Leave it until it thaws: the snow keeps the plants warm, and pulling tears them.',
    lines: ['Leaves that the fabric presses may burn. Lift it once it lets go, and put hoops under it next time.'],
    cautions: [],
    source: 'common-practice',
  },
  'forgot-to-close': {
    headline:
      'Look once it has thawed: an open lid gives almost no protection, so count on the full cold of the night.',
    lines: [
      'Hardened leaves are burnt at worst and the hearts grow again; tender plants are lost. Leave them alone while they are frozen.',
      'Shut it about two hours before sunset tonight.',
    ],
    cautions: ['frozen-leaves'],
    source: 'common-practice',
  },
  'hole-in-cover': {
    headline:
      'Tape or peg it shut: a hand-sized hole costs little on a calm night, but the plants right under it are at risk.',
    lines: ['In wind it costs more, and the hole tears on.'],
    cautions: [],
    source: 'common-practice',
  },
  'wet-fabric': {
    headline: 'Get it off the leaves: wet or iced fabric keeps little and freezes on what it touches.',
    lines: ['Hoops under it, or a dry layer over it. Lay dry fabric after the rain if you can.'],
    cautions: [],
    source: 'common-practice',
  },
  'straw-no-cure': {
    headline:
      'No: loose straw is no cure for leaves, heads or fruit. It gets into the heads, breaks stems and they still freeze or rot.',
    lines: [
      'Pick what is ready, or lay fabric or a blanket on hoops; buckets or boxes over single plants.',
      'Straw is for roots, garlic and crowns.',
    ],
    cautions: [],
    source: 'common-practice',
  },
  'pots-in': {
    headline: 'Carry the tender ones in: least work. Hardy ones stand together on the ground against the house.',
    lines: [
      'Basil, peppers, tomatoes and rosemary in; chives, thyme, sage, mint and parsley can stay out.',
      'Roots in pots freeze sooner than in the ground: off the bench, close together, wrapped.',
    ],
    cautions: [],
    source: 'common-practice',
  },
  'plastic-tarp': {
    headline: 'Use it, but on stakes or hoops so that it does not touch the leaves, down to the ground all round.',
    lines: [
      'Leaves that touch plastic freeze. A blanket, old curtains or a box under it is better.',
      'Weigh the edges down and take it off in the morning.',
    ],
    cautions: [],
    source: 'common-practice',
  },
  'late-evening': {
    headline:
      'First pick ripe fruit and basil, then carry pots in, then buckets, boxes and blankets over the rest, down to the ground.',
    lines: [
      'Tender crops first; lettuce, kale, roots and onions can wait.',
      "It is not too late: a cover laid at dusk still keeps most of the ground's warmth.",
    ],
    cautions: [],
    source: 'common-practice',
  },
  'led-lights': {
    headline: 'No: LED lights give hardly any heat.',
    lines: ['A second cover is simpler. Old incandescent strings made for outdoor use give some.'],
    cautions: ['electric-heat'],
    source: 'common-practice',
  },
  'mulch-back': {
    headline:
      'Yes, round tender plants on a frost night: bare moist soil gives the leaves more warmth than strawed soil.',
    lines: ['Put it back when it is mild. Cover the plants too; roots and garlic keep their mulch.'],
    cautions: [],
    source: 'common-practice',
  },
  'loose-soil': {
    headline: 'No: loose, dry soil holds and gives less heat. Firm, moist soil without weeds is warmest.',
    lines: ['It is a small thing: covers do far more.'],
    cautions: [],
    source: 'common-practice',
  },
  stones: {
    headline: 'A little, after a sunny day: less than water does.',
    lines: ['Water holds about four times the heat of stone of the same weight. Bring tender plants in anyway.'],
    cautions: [],
    source: 'common-practice',
  },
  'jugs-froze': {
    headline: 'Leave them: freezing gave out their heat, and once the sun has melted them they give it again.',
    lines: ['In grey weeks they stay frozen and give nothing: do not rely on them, add a cover.'],
    cautions: [],
    source: 'common-practice',
  },
  'cold-hollow': {
    headline:
      'Yes: on calm clear nights cold air pools at the bottom, and plants there are some degrees colder than the forecast.',
    lines: [
      'Plan for frost there first. A hedge or solid fence below holds the cold in; a gap lets it drain.',
      'Set your site to "hollow" and I reckon with it.',
    ],
    cautions: [],
    source: 'common-practice',
  },
} as const satisfies Partial<Record<AdviceKey, Advice>>;
