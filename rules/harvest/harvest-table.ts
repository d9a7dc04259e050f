import type { Crop } from '../crops/crop.ts';
import type { CropId } from '../crops/crop-names-table.ts';

/** What a grower takes from a crop, as far as frost and keeping make a difference. */
export const HARVEST_KINDS = [
  'tender-fruit',
  'hard-squash',
  'tender-leaf',
  'tuber',
  'root',
  'curd',
  'head',
  'stalk',
  'leaf',
  'bulb',
  'perennial',
] as const;

export type HarvestKind = (typeof HARVEST_KINDS)[number];

export interface HarvestFacts {
  /** What has to come in where the night spoils it. */
  readonly pick: string;
  /** Why it can stay where it holds. */
  readonly leave: string;
  /** How it keeps once it is picked. */
  readonly keeps: string;
}

/** Picking and keeping by kind. All common practice; times in store as printed in storage tables of extension services. */
export const HARVESTS: Readonly<Record<HarvestKind, HarvestFacts>> = {
  'tender-fruit': {
    pick: 'Pick every fruit that is full-size or colouring: once it has frozen it is lost, and frozen fruit does not keep.',
    leave: 'Pick what is ripe all the same: the next frost ends it.',
    keeps:
      'Full-size green tomatoes ripen indoors at room temperature; peppers, cucumbers and beans keep a week in the cool.',
  },
  'hard-squash': {
    pick: 'Cut every squash with a stub of stem before frost touches the skin: frosted fruit rots in store.',
    leave: 'The vines are near their end: cut what has a hard skin.',
    keeps: 'Cure ten days in the warm and dry, then keep at 10 to 13 °C (50 to 55 °F) for months.',
  },
  'tender-leaf': {
    pick: 'Cut all that you can use: these leaves blacken at the first frost.',
    leave: 'Cut what is ready all the same: the next frost ends it.',
    keeps: 'Basil keeps in a glass of water at room temperature, not in the refrigerator.',
  },
  tuber: {
    pick: 'Dig what lies shallow before the soil freezes; frosted tops do no harm to what lies deep.',
    leave: 'Tubers are safe under the soil as long as it does not freeze; dig within two weeks of the tops dying.',
    keeps: 'Keep potatoes dark and cool; cure sweet potatoes a week in the warm. What froze does not keep.',
  },
  root: {
    pick: 'Lift those whose shoulders stand out of the soil, or earth and mulch them over before dark.',
    leave:
      'Leave them in the ground: cold sweetens them. Mulch before the soil freezes hard, so that you can still dig.',
    keeps: 'Twist off the tops; in damp sand or a perforated bag near freezing they keep for months.',
  },
  curd: {
    pick: 'Cut every curd of a usable size: one that freezes turns brown and watery.',
    leave: 'Fold the leaves over the curd and tie them.',
    keeps: 'A curd keeps two to three weeks in the refrigerator.',
  },
  head: {
    pick: 'Cut the firm heads: a head that freezes through goes slimy from inside. Loose ones can stay under cover.',
    leave: 'Let firm heads stand while they hold; a light frost sweetens them.',
    keeps: 'Cabbage keeps for months near freezing; lettuce one to two weeks.',
  },
  stalk: {
    pick: 'Cut what is ready: a stalk that freezes through goes hollow and soft.',
    leave: 'It can stand; earth or mulch round the stems helps.',
    keeps: 'Stalks keep two to four weeks in the refrigerator.',
  },
  leaf: {
    pick: 'Cut the best outer leaves and leave the hearts: they often grow again.',
    leave: 'Leave it: cold sweetens the leaves. Pick after they have thawed.',
    keeps: 'Leaves keep a week or so in the refrigerator: what you cannot use soon is better on the plant.',
  },
  bulb: {
    pick: 'Lift what you would use now; the rest comes again from the bulb.',
    leave: 'Leave it: burnt tips do no harm to the bulb.',
    keeps: 'Green tops keep a week in the refrigerator.',
  },
  perennial: {
    pick: 'Cut what stands above the ground: frost spoils it, but the plant comes again from below.',
    leave: 'Nothing needs picking.',
    keeps: 'Use what you cut within days.',
  },
};

const KIND_OF: Readonly<Partial<Record<CropId, HarvestKind>>> = {
  'winter-squash': 'hard-squash',
  pumpkin: 'hard-squash',
  basil: 'tender-leaf',
  purslane: 'tender-leaf',
  'new-zealand-spinach': 'tender-leaf',
  nasturtium: 'tender-leaf',
  potato: 'tuber',
  'sweet-potato': 'tuber',
  peanut: 'tuber',
  'jerusalem-artichoke': 'tuber',
  garlic: 'bulb',
  'elephant-garlic': 'bulb',
  onion: 'bulb',
  shallot: 'bulb',
  'multiplier-onion': 'bulb',
  'walking-onion': 'bulb',
  fennel: 'stalk',
  rhubarb: 'perennial',
  asparagus: 'perennial',
  artichoke: 'perennial',
  cardoon: 'perennial',
  mint: 'perennial',
  'strawberry-blossom': 'perennial',
  strawberry: 'perennial',
};

/**
 * What a grower takes from a crop.
 *
 * @param crop - The crop.
 */
export function harvestKind(crop: Crop): HarvestKind {
  const known = KIND_OF[crop.id];
  if (known !== undefined) return known;
  switch (crop.organ) {
    case 'root':
      return 'root';
    case 'curd':
      return 'curd';
    case 'head':
      return 'head';
    case 'stalk':
      return 'stalk';
    case 'leaf':
      return crop.hardens ? 'leaf' : 'tender-fruit';
    default:
      return crop.organ === 'bulb' ? 'bulb' : 'perennial';
  }
}
