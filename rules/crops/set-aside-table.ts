import type { SourceKey } from '../sources.ts';
import type { ColdEffect, HardinessRow, PlantPart, PlantState } from './hardiness-row.ts';

/** Rows that a reader of all sources would not use for this crop, and why. */
interface SetAside {
  readonly source: SourceKey;
  readonly crop: string;
  readonly part?: PlantPart;
  readonly state?: PlantState;
  readonly effect?: ColdEffect;
  /** Words of the note that mark the row, where the source has several. */
  readonly noted?: string;
  readonly reason: string;
}

/** Judgement on the conflicts between sources; whatever is not named here is used. */
export const SET_ASIDE: readonly SetAside[] = [
  {
    source: 'seed-trade-broccoli',
    crop: 'broccoli',
    reason: 'trade figure against two growers’ records and an extension note: discarded',
  },
  {
    source: 'fuller-1994',
    crop: 'cauliflower',
    reason: 'isolated florets supercool; an intact curd hardly does, so -1 to -2 stands',
  },
  {
    source: 'kansas-column',
    crop: 'cauliflower',
    reason: 'class of the plant; growers see curds die at freezing, so -1 to -2 stands',
  },
  {
    source: 'michigan-2016',
    crop: 'cauliflower',
    reason: 'class of the plant; growers see curds die at freezing, so -1 to -2 stands',
  },
  {
    source: 'oregon-breeder-2013',
    crop: 'cauliflower',
    reason: 'class of the plant; growers see curds die at freezing, so -1 to -2 stands',
  },
  { source: 'michigan-2016', crop: 'rhubarb', reason: 'hardy by its crown, not by its stalks' },
  { source: 'kansas-column', crop: 'potato', reason: 'hardy by its tuber; the leaf dies at -2 to -3' },
  {
    source: 'tamura-2002',
    crop: 'spinach',
    effect: 'first-damage',
    reason: 'slight electrolyte loss in the study that gives the median; visible injury comes 2 to 4 K warmer',
  },
  {
    source: 'tamura-2002',
    crop: 'komatsuna',
    effect: 'first-damage',
    reason: 'slight electrolyte loss in the study that gives the median; visible injury comes 2 to 4 K warmer',
  },
  { source: 'gusta-2004', crop: 'rape / winter canola', noted: 'partially', reason: 'between the two states' },
  {
    source: 'ventskevich-1958',
    crop: 'beet',
    noted: 'flowering',
    reason: 'flowering shoot, not the leaf that is eaten',
  },
  { source: 'ventskevich-1958', crop: 'cabbage', noted: 'flowering', reason: 'flowering shoot, not the head' },
  { source: 'ventskevich-1958', crop: 'potato', noted: 'flowering', reason: 'flower, not the leaf' },
  {
    source: 'winterkill-list-2020',
    crop: 'cauliflower (overwintering)',
    reason: 'one remembered figure, colder than any kale: not believed until checked',
  },
  ...(['engineering-foods', 'korean-food-2016', 'usda-handbook-66'] as const).map((source) => ({
    source,
    crop: 'strawberry',
    part: 'fruit' as const,
    reason: 'ripe berry, not the blossom',
  })),
  { source: 'nc-strawberry-2014', crop: 'strawberry', part: 'fruit', reason: 'tight buds, not open blossom' },
];

/** Why a row is not used, if it is one of those; `undefined` for a row in use. */
export function setAsideReason(row: HardinessRow): string | undefined {
  return SET_ASIDE.find(
    (entry) =>
      entry.source === row.source &&
      entry.crop === row.crop &&
      (entry.part ?? row.part) === row.part &&
      (entry.state ?? row.state) === row.state &&
      (entry.effect ?? row.effect) === row.effect &&
      row.note.includes(entry.noted ?? ''),
  )?.reason;
}
