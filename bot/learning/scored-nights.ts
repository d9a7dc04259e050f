import type { ToldAndMeasured } from '../../rules/index.ts';
import type { ScoredNight } from '../store/port/readings.ts';

/** What was told last of each bed's night before it was over, in order of nights. */
export function lastTold(scored: readonly ScoredNight[]): readonly ScoredNight[] {
  const last = new Map<string, ScoredNight>();
  // The newest issue of a night stands last.
  for (const each of scored) {
    if (each.prediction.leadH > 0) last.set(`${each.prediction.bedId} ${each.prediction.night}`, each);
  }
  return [...last.values()];
}

/** The low under the cover, where a reading was taken under the covers that it was told for. */
export function underCover({ prediction, reading }: ScoredNight): ToldAndMeasured | undefined {
  if (reading.underCoverLowC === undefined || prediction.covers.join() !== reading.covers.join()) return undefined;
  return {
    toldLowC: prediction.underCoverLowC,
    toldSdK: prediction.underCoverSpreadK,
    measuredLowC: reading.underCoverLowC,
  };
}

export function outside({ prediction, reading }: ScoredNight): ToldAndMeasured | undefined {
  if (reading.outsideLowC === undefined || !(prediction.outsideSpreadK > 0)) return undefined;
  return {
    toldLowC: prediction.outsideLowC,
    toldSdK: prediction.outsideSpreadK,
    measuredLowC: reading.outsideLowC,
  };
}
