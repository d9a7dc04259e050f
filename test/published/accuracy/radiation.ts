import { clearSkyGlobalWPerM2, solarPosition } from '../../../rules/index.ts';
import type { ComparedRow, Comparison } from './comparison.ts';

/** Noon and day sum of clear-sky radiation on level ground at longitude 0. */
export function clearDay(date: string, latitudeDeg: number) {
  let noonDeg = -90;
  let noonWPerM2 = 0;
  let sumMJPerM2 = 0;
  for (let minute = 0; minute < 1440; minute += 1) {
    const at = new Date(Date.parse(`${date}T00:00:00Z`) + minute * 60_000);
    const sun = solarPosition(at, latitudeDeg, 0);
    const globalWPerM2 = clearSkyGlobalWPerM2(sun.cosZenith);
    noonDeg = Math.max(noonDeg, sun.elevationDeg);
    noonWPerM2 = Math.max(noonWPerM2, globalWPerM2);
    sumMJPerM2 += globalWPerM2 * 60e-6;
  }
  return { noonDeg, noonWPerM2, sumMJPerM2 };
}

/** Haurwitz knows neither haze nor season. [%] */
const CLEAR_SKY_PERCENT = 5.5;

export function radiationComparisons(): readonly Comparison[] {
  const december = clearDay('2025-12-21', 40);
  const june = clearDay('2025-06-21', 40);
  const reason = '5.5 %: the formula knows neither haze nor season';
  return [
    {
      quantity: 'Clear-day radiation at 40° N',
      unit: '%',
      source: 'ASHRAE clear-day tables',
      standing: 'memory',
      tolerance: reason,
      rows: [
        percent('21 December, noon', december.noonWPerM2, 451),
        percent('21 December, day', december.sumMJPerM2, 8.9),
        percent('21 June, noon', june.noonWPerM2, 943),
        percent('21 June, day', june.sumMJPerM2, 30.1),
      ],
    },
    {
      quantity: 'Clear-day radiation, Belgium in July',
      unit: '%',
      source: 'FAO paper 56, example 18',
      standing: 'read',
      tolerance: reason,
      rows: [percent('6 July at 50.8° N; date and place from memory', clearDay('2025-07-06', 50.8).sumMJPerM2, 30.9)],
    },
  ];
}

function percent(id: string, ours: number, theirs: number): ComparedRow {
  return { id, ours: (100 * ours) / theirs, theirs: 100, tolerance: CLEAR_SKY_PERCENT };
}
