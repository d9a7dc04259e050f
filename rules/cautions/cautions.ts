import type { CoverKey, WallKey } from '../covers/cover-key.ts';
import type { SourceKey } from '../sources.ts';

/** What can hurt somebody on a frost night or after it, by a stable key of our own. */
export const CAUTION_KEYS = [
  'fuel-heat',
  'electric-heat',
  'glass',
  'snow-load',
  'old-paint',
  'treated-timber',
  'antifreeze',
  'salt',
  'hot-water',
  'rhubarb',
  'potato',
  'nitrate',
  'frozen-leaves',
  'wind',
  'official-first',
] as const;

export type CautionKey = (typeof CAUTION_KEYS)[number];

export interface Caution {
  readonly text: string;
  readonly source: SourceKey;
}

/** The usual cautions. They defer to local codes and licensed practice and are said before any other advice on the matter. */
export const CAUTIONS: Readonly<Record<CautionKey, Caution>> = {
  'fuel-heat': {
    text: 'Never burn anything under a cover: no heater, candle, lamp, grill or charcoal. A closed cover fills with carbon monoxide, which has no smell and kills, and fabric and film catch fire.',
    source: 'caution-fuel',
  },
  'electric-heat': {
    text: 'Heat cables, mats and lamps: only ones made for outdoor wet use, on a residual-current (ground-fault) protected supply, well clear of fabric, straw and leaves. Local electrical code and a licensed electrician come first.',
    source: 'caution-electric',
  },
  glass: {
    text: 'Glass lights break: wear gloves and eye protection, keep children and pets away, never lean or stand on a light, and never lift one in wind. Overhead, only safety glass as the local code asks.',
    source: 'caution-paint-timber-glass',
  },
  'snow-load': {
    text: 'Snow: wet snow can bring a light or a tunnel down. Push it off gently from outside with a soft broom, never from underneath and never by standing on anything glazed; stay out of a tunnel that carries snow.',
    source: 'snow-load',
  },
  'old-paint': {
    text: 'Old windows: paint from before 1978 may hold lead. Do not sand, burn or scrape it, keep flakes out of the bed, and have it tested before you use it over food.',
    source: 'caution-paint-timber-glass',
  },
  'treated-timber': {
    text: 'Treated timber: older green-treated wood (before 2004) may hold arsenic, and railway sleepers hold tar oils. Use untreated or food-safe wood against soil you eat from, and never burn the old kind.',
    source: 'caution-paint-timber-glass',
  },
  antifreeze: {
    text: 'Antifreeze and washer fluid poison people and pets and protect no plant: keep them out of the garden.',
    source: 'judgement',
  },
  salt: {
    text: 'Salt kills roots and stays in the soil: never use it, or any de-icer, against frost near plants.',
    source: 'judgement',
  },
  'hot-water': {
    text: 'Do not pour hot or warm water on frozen plants: fast thawing tears the leaves, and the water freezes again; let them thaw slowly, out of the sun.',
    source: 'judgement',
  },
  rhubarb: {
    text: 'Rhubarb after a hard freeze: eat only stalks that stand firm and upright; throw limp or blackened ones away, and never eat the leaves.',
    source: 'caution-rhubarb',
  },
  potato: {
    text: 'Potatoes: tubers that froze or turned green are not for eating. New growth after the tops are frosted is normal.',
    source: 'caution-potato',
  },
  nitrate: {
    text: 'Low winter light raises nitrate in spinach, lettuce, arugula, chard and beet leaves: do not give them to babies under one year without asking a doctor or health visitor, and pick in the afternoon after a bright day.',
    source: 'caution-nitrate',
  },
  'frozen-leaves': {
    text: 'Do not touch, pick or uncover leaves while they are frozen; wait until they have thawed all through.',
    source: 'caution-frozen-leaves',
  },
  wind: {
    text: 'Wind: weigh lids down and anchor edges every metre or so; take light film tunnels down or double the anchors when gusts pass 35 mph (16 m/s).',
    source: 'wind-anchor',
  },
  'official-first': {
    text: 'Official frost and weather warnings come before this bot.',
    source: 'judgement',
  },
};

/** What an answer touches, as far as it decides which cautions are due. */
export interface CautionOccasion {
  readonly covers: readonly CoverKey[];
  readonly walls?: WallKey;
  readonly foodSafety: readonly ('rhubarb' | 'potato' | 'nitrate')[];
  /** The leaves are expected to freeze. */
  readonly freezes: boolean;
  readonly snow: boolean;
  /** Strongest gust expected, when known. [m s⁻¹] */
  readonly gustMPerS?: number;
}

/** Gust at which light film tunnels want a second anchor: 35 mph (30–45), extension consensus. [m s⁻¹] */
const STRONG_GUST_M_PER_S = 15.6;

/**
 * The cautions due for an answer, most dangerous first and at most three, so that they are read.
 *
 * @param occasion - What the answer touches.
 * @returns Keys of {@link CAUTIONS}; empty when nothing is due.
 */
export function cautionsFor(occasion: CautionOccasion): readonly CautionKey[] {
  const glazed = occasion.covers.some((key) => key === 'cold-frame');
  const roofed = occasion.covers.some((key) => key.includes('tunnel') || key.startsWith('cold-frame'));
  const due: CautionKey[] = [];
  if (occasion.snow && roofed) due.push('snow-load');
  if (occasion.gustMPerS !== undefined && occasion.gustMPerS >= STRONG_GUST_M_PER_S && occasion.covers.length > 0) {
    due.push('wind');
  }
  if (occasion.snow && glazed) due.push('glass');
  if (occasion.freezes) {
    due.push('frozen-leaves', ...occasion.foodSafety.filter((key) => key !== 'nitrate'));
  }
  return due.slice(0, 3);
}
