import { bookNight } from '../../rules/index.ts';
import type { BedOutlook } from '../outlook/night-outlook.ts';
import type { Bed } from '../store/port/beds.ts';
import type { Prediction } from '../store/port/readings.ts';
import type { GardenNight } from './club-night.ts';

const MS_PER_H = 3_600_000;

/** What is told of a garden's beds, to be held against readings later and against a newer forecast the same afternoon. */
export function predictionsOf(night: GardenNight, now: Date): Prediction[] {
  return night.outlook.beds.flatMap((each) => {
    const bed = night.bedOf.get(each.bed);
    return bed === undefined ? [] : predictionOf(night, each, bed, now);
  });
}

function predictionOf(
  { garden, night, outlook }: GardenNight,
  { bed: laidOut, verdict }: BedOutlook,
  bed: Bed,
  now: Date,
): Prediction {
  const { night: told, keys, worst } = verdict;
  const book = told.book ?? bookNight(told, { covers: keys, ...(laidOut.frame && { walls: laidOut.frame.walls }) });
  return {
    memberId: garden.member.id,
    bedId: bed.id,
    night: night.name,
    issuedAt: now,
    service: outlook.forecast.service,
    leadH: Math.max(0, (outlook.weather.summary.lowAt.getTime() - now.getTime()) / MS_PER_H),
    outsideLowC: told.screenLowC,
    outsideSpreadK: book.outsideSdK,
    underCoverLowC: told.thermometerLowC,
    underCoverSpreadK: told.spread.sdK,
    book: {
      outsideLowC: book.outsideLowC,
      outsideSpreadK: book.outsideSdK,
      underCoverLowC: book.underCoverLowC,
      underCoverSpreadK: book.underCoverSdK,
    },
    leafLowC: told.leafLowC,
    leafSpreadK: told.spread.sdK,
    verdict: worst.verdict,
    covers: keys,
  };
}
