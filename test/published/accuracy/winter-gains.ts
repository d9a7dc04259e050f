import type { ComparedRow, Comparison } from './comparison.ts';
import type { WinterNight } from './winters.ts';

export const FROST_BELOW_C = 1;
/** Standard deviation of a tunnel's gain from night to night, judged from the Montana log. [K] */
const TUNNEL_SD_K = 2;

/** Gains of a high tunnel over whole winters of daily records, frost nights only, against means of seasons. */
export function winterGainComparison(tunnelNights: readonly WinterNight[]): Comparison {
  const rows = ['New York', 'Seattle'].flatMap((place) => {
    const gainsK = tunnelNights
      .filter((night) => night.place === place)
      .map(({ night, lowC }) => night.airLowC - lowC)
      .sort((one, other) => one - other);
    const meanK = gainsK.reduce((sum, gainK) => sum + gainK, 0) / gainsK.length;
    const at = (share: number) => gainsK[Math.floor(share * (gainsK.length - 1))] ?? Number.NaN;
    return [
      row(`${place}, mean: Savage 1980`, meanK, 1.3),
      row(`${place}, mean: Red Lodge, Montana, two sunny weeks`, meanK, 2.9, SUNNY),
      row(`${place}, coldest twentieth: Red Lodge`, at(0.05), -0.4),
      row(`${place}, warmest twentieth: Red Lodge`, at(0.95), 7.8, SUNNY),
    ];
  });
  return {
    quantity: 'Gain of a high tunnel over three winters of frost nights',
    unit: 'K',
    source: 'Savage 1980; Red Lodge log; NOAA daily records',
    standing: 'read',
    tolerance: '2 K, the spread from night to night: other places, other years',
    rows,
  };
}

const SUNNY =
  'A hobby greenhouse in high sun; our winters are maritime and dull, their wind is the day’s mean and blows on through the computed night. Too cold is the safe side.';

function row(id: string, ours: number, theirs: number, excuse?: string): ComparedRow {
  const outside = Math.abs(ours - theirs) > TUNNEL_SD_K;
  return { id, ours, theirs, tolerance: TUNNEL_SD_K, ...(outside && excuse !== undefined && { excuse }) };
}
