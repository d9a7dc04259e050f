import { readSavedForecast } from '../../bot/forecast/recorded.ts';
import { nightWeather } from '../../bot/weather/night.ts';
import type { Row } from './row.ts';

const HOURS = 182;
const RUNS = 100;
const LAYERS_OF_WORDS = 26;
const NUMBERS = [
  'temperature',
  'dewpoint',
  'relativeHumidity',
  'skyCover',
  'windSpeed',
  'windGust',
  'quantitativePrecipitation',
  'snowfallAmount',
];
const UNUSED = [
  'apparentTemperature',
  'windChill',
  'windDirection',
  'snowLevel',
  'visibility',
  'ceilingHeight',
  'mixingHeight',
  'transportWindSpeed',
];

/** Times reading a full American grid, as large as the service sends it, and making a night of it. */
export function benchForecast(): readonly Row[] {
  const text = fullGrid();
  const night = { sunset: new Date('2026-01-21T23:25:00Z'), sunrise: new Date('2026-01-22T13:45:00Z') };
  const now = new Date('2026-01-20T19:00:00Z');
  for (let run = 0; run < RUNS; run += 1) nightWeather(readSavedForecast(text), night, now);
  const reading = timed(() => readSavedForecast(text));
  const forecast = readSavedForecast(text);
  const nights = timed(() => nightWeather(forecast, night, now));
  return [
    { name: `read a full grid of ${Math.round(text.length / 1000)} kB`, value: reading, unit: 'ms' },
    { name: 'make a night of it', value: nights, unit: 'ms' },
  ];
}

function timed(work: () => unknown): number {
  const begun = performance.now();
  for (let run = 0; run < RUNS; run += 1) work();
  return (performance.now() - begun) / RUNS;
}

/** Every hour its own interval: more than the service, which merges equal hours. */
function fullGrid(): string {
  const start = Date.parse('2026-01-20T12:00:00Z');
  const interval = (hour: number, hours: number, value: unknown) => ({
    validTime: `${new Date(start + hour * 3_600_000).toISOString().replace('.000Z', '+00:00')}/PT${hours}H`,
    value,
  });
  const layer = (seed: number) => ({
    uom: 'wmoUnit:percent',
    values: Array.from({ length: HOURS }, (_, hour) => interval(hour, 1, ((hour * 7 + seed) % 40) + 5.555555555555556)),
  });
  const layers = [...NUMBERS, ...UNUSED].map((name, i) => [name, { ...layer(i), uom: unitOf(name) }] as const);
  const empty = Array.from({ length: LAYERS_OF_WORDS }, (_, i) => [`unusedLayer${i}`, { values: [] }] as const);
  const lows = { uom: 'wmoUnit:degC', values: Array.from({ length: 8 }, (_, day) => interval(day * 24 + 13, 14, 2.5)) };
  const properties = {
    updateTime: '2026-01-20T18:40:00+00:00',
    validTimes: '2026-01-20T12:00:00+00:00/P7DT14H',
    ...Object.fromEntries([...layers, ...empty]),
    minTemperature: lows,
  };
  return JSON.stringify({ type: 'Feature', properties }, null, 2);
}

function unitOf(name: string): string {
  if (/emperature|dewpoint|Chill/.test(name)) return 'wmoUnit:degC';
  if (/Speed|Gust/.test(name)) return 'wmoUnit:km_h-1';
  return /Precipitation|snowfall/.test(name) ? 'wmoUnit:mm' : 'wmoUnit:percent';
}
