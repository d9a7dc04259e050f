import { COVER_KEYS, type CoverKey, type Crop, cropById, type UnsoundOrder } from '../../../rules/index.ts';
import { PlainProblem } from '../../ground/errors.ts';
import type { Understood } from '../../language/understood.ts';
import type { Bed, Planting } from '../../store/port/beds.ts';
import { list } from '../../text/phrases.ts';
import type { AskedNight } from './asked-night.ts';
import { type Judged, judged, type PlantState } from './judged.ts';

/** A crop as it is asked about: what lies over it, how it stands, and in which of the member's own beds. */
export interface Plot {
  readonly crop: Crop;
  /** Outside to inside. */
  readonly covers: readonly CoverKey[];
  readonly state: PlantState;
  readonly bedName?: string;
}

/** The crops named, under each of the stacks named. */
export function plotsAsked(understood: Understood, crops: readonly Crop[]): readonly Plot[] {
  const { options, covers = [], coversOtherwise, byCrop, hardened, stage } = understood;
  if (byCrop !== undefined) return plotsByCrop(byCrop, crops, { hardened, stage });
  const stacks = options ?? (coversOtherwise === undefined ? [covers] : [covers, coversOtherwise]);
  return stacks.flatMap((keys) => crops.map((crop) => ({ crop, covers: keys, state: { hardened, stage } })));
}

/** "Kale is bare, lettuce is in a cold frame": each under its own. */
function plotsByCrop(
  byCrop: NonNullable<Understood['byCrop']>,
  crops: readonly Crop[],
  state: PlantState,
): readonly Plot[] {
  return crops.map((crop) => ({ crop, covers: byCrop.find(({ cropId }) => cropId === crop.id)?.covers ?? [], state }));
}

/** What the night comes to for each; or why covers cannot lie as they were said to. */
export function judgedPlots(plots: readonly Plot[], night: AskedNight): readonly Judged[] | UnsoundOrder {
  const all: Judged[] = [];
  for (const { crop, covers, state, bedName } of plots) {
    const one = judged(crop, covers, night, state);
    if ('problem' in one) return one;
    all.push(bedName === undefined ? one : { ...one, bedName });
  }
  return all;
}

/**
 * The beds that a question names by number or name; undefined where it names none.
 *
 * @throws PlainProblem where a number is none of the member's beds.
 */
export function bedsNamed({ beds: said }: Understood, beds: readonly Bed[]): readonly Bed[] | undefined {
  if (said.numbers.length === 0 && said.named.length === 0) return undefined;
  const strange = said.numbers.find((number) => number > beds.length);
  if (strange !== undefined) {
    const names = beds.map(({ name }, index) => `${index + 1} ${name}`);
    throw new PlainProblem(
      `You have no bed ${strange} here. Your beds: ${names.length === 0 ? 'none yet' : list(names)}.`,
    );
  }
  return beds.filter(({ name }, index) => said.named.includes(name) || said.numbers.includes(index + 1));
}

/** The member's beds in which one of the crops asked about grows. */
export function bedsGrowing({ crops }: Understood, beds: readonly Bed[]): readonly Bed[] {
  return beds.filter(({ plantings }) => plantings.some(({ crop }) => crops.some(({ id }) => id === crop)));
}

/**
 * What is asked about, in the member's own beds: each crop under what lies over it there, unless the question says other
 * covers. With no crop named it is everything in the beds named, or in all.
 */
export function ownPlots(understood: Understood, beds: readonly Bed[]): readonly Plot[] {
  const named = bedsNamed(understood, beds);
  const among = named ?? beds;
  const ids = new Set(understood.crops.map(({ id }) => id));
  const grown = among.flatMap((bed) =>
    bed.plantings
      .filter(({ crop }) => ids.size === 0 || ids.has(crop))
      .flatMap((planting) => grownIn(bed, planting, understood)),
  );
  const missing = understood.crops.filter(({ id }) => !grown.some(({ crop }) => crop.id === id));
  const crops = missing.flatMap(({ id }) => cropById(id) ?? []);
  if (named === undefined || crops.length === 0) return [...grown, ...plotsAsked(understood, crops)];
  // "Would kale live in bed 2?"
  const tried = named.flatMap((bed) => plotsAsked(understood, crops).flatMap((plot) => inBed(bed, plot, understood)));
  return [...grown, ...tried];
}

function grownIn(bed: Bed, planting: Planting, understood: Understood): readonly Plot[] {
  const crop = cropById(planting.crop);
  if (crop === undefined) return [];
  const stage = understood.stage ?? (planting.stage === 'just-set-out' ? 'seedling' : undefined);
  const hardened = understood.hardened ?? planting.hardened;
  const followedIndex = planting.hardening?.fraction;
  const state = { hardened, stage, ...(followedIndex !== undefined && { followedIndex }) };
  return plotsAsked(understood, [crop]).flatMap((plot) => inBed(bed, { ...plot, state }, understood));
}

function inBed(bed: Bed, plot: Plot, { covers, options, byCrop }: Understood): Plot {
  const isSaid = covers !== undefined || options !== undefined || byCrop !== undefined;
  const lying = bed.covers.flatMap((cover) => COVER_KEYS.filter((key) => key === cover));
  return { ...plot, covers: isSaid ? plot.covers : lying, bedName: bed.name };
}
