import { bookNight, MS_PER_H, type Step } from '../../rules/index.ts';
import type { GardenBed } from '../outlook/garden.ts';
import type { BedOutlook, NightOutlook } from '../outlook/night-outlook.ts';
import type { Bed } from '../store/port/beds.ts';
import type { Prediction } from '../store/port/readings.ts';

/** A member's night as it is told. */
export interface ToldNight {
  readonly memberId: string;
  /** Local day of its evening, `2026-12-31`. */
  readonly name: string;
  readonly outlook: NightOutlook;
  /** Which kept bed each bed of the outlook is. */
  readonly bedOf: ReadonlyMap<GardenBed, Bed>;
}

/** What is told of a garden's beds, to be held against readings later and against a newer forecast the same afternoon. */
export function predictionsOf(told: ToldNight, now: Date): Prediction[] {
  return told.outlook.beds.flatMap((each) => {
    const bed = told.bedOf.get(each.bed);
    return bed === undefined ? [] : predictionOf(told, each, bed, now);
  });
}

function predictionOf(
  { memberId, name, outlook }: ToldNight,
  { bed: laidOut, verdict, step }: BedOutlook,
  bed: Bed,
  now: Date,
): Prediction {
  const { night, keys, worst } = verdict;
  // As told, and as it was before anything learned.
  const told = bookNight(night, { covers: keys, ...(laidOut.frame && { walls: laidOut.frame.walls }) });
  const book = night.book ?? told;
  return {
    memberId,
    bedId: bed.id,
    night: name,
    issuedAt: now,
    service: outlook.forecast.service,
    leadH: Math.max(0, (outlook.weather.summary.lowAt.getTime() - now.getTime()) / MS_PER_H),
    outsideLowC: told.outsideLowC,
    outsideSpreadK: told.outsideSdK,
    underCoverLowC: told.underCoverLowC,
    underCoverSpreadK: told.underCoverSdK,
    book: {
      outsideLowC: book.outsideLowC,
      outsideSpreadK: book.outsideSdK,
      underCoverLowC: book.underCoverLowC,
      underCoverSpreadK: book.underCoverSdK,
    },
    leafLowC: night.leafLowC,
    leafSpreadK: told.underCoverSdK,
    verdict: worst.verdict,
    covers: keys,
    step: stepKey(step),
  };
}

/** A step as a key that tells it from others. */
export function stepKey(step: Step): string {
  return step.kind === 'add' ? `add ${step.added.join(' ')}` : step.kind;
}

/** The kept bed of each bed of a garden made from them. */
export function bedsOf(laidOut: readonly GardenBed[], kept: readonly Bed[]): ReadonlyMap<GardenBed, Bed> {
  return new Map(laidOut.flatMap((bed, index) => pair(bed, kept[index])));
}

function pair(bed: GardenBed, kept: Bed | undefined): [GardenBed, Bed][] {
  return kept === undefined ? [] : [[bed, kept]];
}
