import { type HarmfulWeather, MS_PER_H } from '../../rules/index.ts';
import { bridged } from '../forecast/bridged.ts';
import type { HourlyForecast } from '../forecast/forecast.ts';
import { LONGEST_STEP_H } from '../forecast/night-low.ts';

/** Without a word on snow, what falls in air up to this is taken for snow (judgement). [°C] */
const SNOW_UP_TO_C = 0.5;
/** Fresh snow of a millimetre of water is a centimetre deep (judgement: 100 kg m⁻³). [m mm⁻¹] */
const SNOW_M_PER_MM = 0.01;
/** Rain freezes on what it meets between these; colder, it falls as snow or ice grains (judgement). [°C] */
const FREEZING_RAIN_C = { from: -8, to: 0 } as const;
/** Rain of the hours before the first frost is still in the fabric. */
const WET_FOR_H = 6;

/** What the hours ahead bring that breaks things, with the times to tell. */
export type HarmfulHours = Omit<HarmfulWeather, 'sunlessDays'> & {
  readonly gustAt?: Date;
  readonly iceAt?: Date;
};

interface Hour {
  readonly at: Date;
  readonly airC: number | undefined;
  readonly gustMPerS: number | undefined;
  readonly rainMm: number | undefined;
  readonly newSnowM: number | undefined;
}

/** Reads gusts, snow and ice from the hours between two instants. What the service does not tell is absent, never none. */
export function harmfulHours(forecast: HourlyForecast, from: Date, to: Date): HarmfulHours {
  const hours = hoursOf(forecast, from, to);
  return { ...gusts(hours), ...snowfall(hours), ...freezingRain(hours), ...rainBeforeFrost(hours) };
}

function hoursOf({ first, hours, columns }: HourlyForecast, from: Date, to: Date): Hour[] {
  const air = bridged(columns.screenC ?? [], LONGEST_STEP_H).values;
  const indexAt = (at: Date) => Math.floor((at.getTime() - first.getTime()) / MS_PER_H);
  const start = Math.max(0, indexAt(from));
  const end = Math.min(hours - 1, indexAt(to));
  return Array.from({ length: Math.max(0, end - start + 1) }, (_, i) => {
    const index = start + i;
    return {
      at: new Date(first.getTime() + index * MS_PER_H),
      airC: air[index],
      gustMPerS: columns.gustMPerS?.[index],
      rainMm: columns.precipitationMm?.[index],
      newSnowM: columns.newSnowM?.[index],
    };
  });
}

function gusts(hours: readonly Hour[]): Pick<HarmfulHours, 'gustMPerS' | 'gustAt'> {
  let strongest: Hour | undefined;
  for (const hour of hours) if ((hour.gustMPerS ?? -1) > (strongest?.gustMPerS ?? -1)) strongest = hour;
  return strongest?.gustMPerS === undefined ? {} : { gustMPerS: strongest.gustMPerS, gustAt: strongest.at };
}

function snowfall(hours: readonly Hour[]): Pick<HarmfulHours, 'snowfall'> {
  const snowing = hours.flatMap((hour) => {
    const depthM = snowDepthM(hour);
    return depthM === undefined || depthM <= 0 ? [] : [{ ...hour, depthM }];
  });
  if (snowing.length === 0) return {};
  const depthM = sum(snowing.map((hour) => hour.depthM));
  const waters = snowing.map(({ rainMm }) => rainMm);
  const told = waters.filter((water) => water !== undefined);
  const airs = snowing.map(({ airC, depthM: ofHour }) => (airC ?? 0) * ofHour);
  const airC = sum(airs) / depthM;
  return { snowfall: { depthM, airC, ...(told.length === waters.length && { waterKgPerM2: sum(told) }) } };
}

function snowDepthM({ newSnowM, rainMm, airC }: Hour): number | undefined {
  if (newSnowM !== undefined) return newSnowM;
  return rainMm === undefined || airC === undefined || airC > SNOW_UP_TO_C ? undefined : rainMm * SNOW_M_PER_MM;
}

/** Only where the service tells that it is no snow. */
function freezingRain(hours: readonly Hour[]): Pick<HarmfulHours, 'freezingRainMm' | 'iceAt'> {
  const icy = hours.filter(
    ({ airC, rainMm, newSnowM }) =>
      airC !== undefined &&
      airC >= FREEZING_RAIN_C.from &&
      airC < FREEZING_RAIN_C.to &&
      (rainMm ?? 0) > 0 &&
      newSnowM === 0,
  );
  const [first] = icy;
  return first === undefined ? {} : { freezingRainMm: sum(icy.map(({ rainMm }) => rainMm ?? 0)), iceAt: first.at };
}

function rainBeforeFrost(hours: readonly Hour[]): Pick<HarmfulHours, 'rainBeforeFreezeMm'> {
  const frost = hours.findIndex(({ airC }) => airC !== undefined && airC <= 0);
  if (frost < 0) return {};
  const wet = hours.slice(Math.max(0, frost - WET_FOR_H), frost).flatMap(({ rainMm }) => rainMm ?? []);
  return wet.length === 0 ? {} : { rainBeforeFreezeMm: sum(wet) };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
