import fc from 'fast-check';
import psychrolib from 'psychrolib';
import { dewPointFromHumidityC, saturationVapourHPa } from '../../../rules/index.ts';
import type { Comparison } from './comparison.ts';
import { evenly, sampled } from './sampled.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

/** The WMO Magnus constants are fitted to −45…60 °C with one exponential: that is their error in the warm half. [%] */
export const SATURATION_PERCENT = 0.35;
export const DEW_POINT_K = 0.05;

const warmAirC = evenly(0.02, 60);
const dampAir = fc
  .tuple(evenly(5, 45), evenly(0.3, 1))
  .filter(([airC, humidityFraction]) => psychrolib.GetTDewPointFromRelHum(airC, humidityFraction) > 0.02);

export function saturationPercentOff(airC: number): number {
  return (100 * saturationVapourHPa(airC)) / (psychrolib.GetSatVapPres(airC) / 100) - 100;
}

export function dewPointOffK(airC: number, humidityFraction: number): number {
  return dewPointFromHumidityC(airC, humidityFraction) - psychrolib.GetTDewPointFromRelHum(airC, humidityFraction);
}

/** Against PsychroLib: the equations of the ASHRAE Handbook — Fundamentals 2017, chapter 1 (Hyland & Wexler). */
export function humidityComparisons(): readonly Comparison[] {
  return [
    {
      quantity: 'Vapour pressure over water, 0 to 60 °C',
      unit: '%',
      source: 'PsychroLib (ASHRAE 2017)',
      standing: 'library',
      tolerance: '0.35 %: one exponential from −45 to 60 °C',
      rows: sampled(warmAirC).map(([draw, airC]) => ({
        id: `${draw}, ${airC.toFixed(1)} °C`,
        ours: saturationPercentOff(airC),
        theirs: 0,
        tolerance: SATURATION_PERCENT,
      })),
    },
    {
      quantity: 'Dew point above freezing',
      unit: 'K',
      source: 'PsychroLib (ASHRAE 2017)',
      standing: 'library',
      tolerance: '0.05 K, from the same',
      rows: sampled(dampAir).map(([draw, [airC, humidityFraction]]) => ({
        id: `${draw}, ${airC.toFixed(1)} °C, ${(100 * humidityFraction).toFixed(0)} %`,
        ours: dewPointOffK(airC, humidityFraction),
        theirs: 0,
        tolerance: DEW_POINT_K,
      })),
    },
  ];
}
