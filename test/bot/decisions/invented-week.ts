import type { HourlyForecast } from '../../../bot/forecast/forecast.ts';
import { celsiusFrom } from '../../../bot/ground/units.ts';
import type { Garden, GardenBed, GardenPlanting } from '../../../bot/outlook/garden.ts';
import { type CoverKey, type CropId, MS_PER_DAY } from '../../../rules/index.ts';

/** A day of invented weather: the high of the afternoon, the low of the night after it. */
export interface InventedDay {
  readonly highC: number;
  readonly lowC: number;
  /** Clear unless told. [0…1] */
  readonly cloudFraction?: number;
  /** Nearly calm unless told. */
  readonly wind10MPerS?: number;
}

export interface InventedSpell {
  readonly latitudeDeg: number;
  /** First day asked about, `2026-11-16`; it is noon there. */
  readonly today: string;
  /** The last one is yesterday. */
  readonly past: readonly InventedDay[];
  /** From today on. */
  readonly ahead: readonly InventedDay[];
  /** Hour of the lows; six unless told, earlier in a northern summer. */
  readonly lowAtH?: number;
}

const LOW_AT_H = 6;
const HIGH_AT_H = 15;

export const fahrenheit = celsiusFrom;

/** So many days alike. */
export const days = (count: number, highC: number, lowC: number, more: Partial<InventedDay> = {}): InventedDay[] =>
  Array.from({ length: count }, () => ({ highC, lowC, ...more }));

/** Days by their lows in °F, each with its high so many °F above. */
export const nightsF = (lowsF: readonly number[], dayAboveF = 18, more: Partial<InventedDay> = {}): InventedDay[] =>
  lowsF.map((lowF) => ({ lowC: celsiusFrom(lowF), highC: celsiusFrom(lowF + dayAboveF), ...more }));

/** The same in °C. */
export const nightsC = (lowsC: readonly number[], dayAboveK = 8, more: Partial<InventedDay> = {}): InventedDay[] =>
  lowsC.map((lowC) => ({ lowC, highC: lowC + dayAboveK, ...more }));

export function noonOf({ today }: InventedSpell): Date {
  return new Date(`${today}T12:00:00Z`);
}

/** Weather on the zero meridian, hour by hour, the lows at six and the highs at three. Invented: no place had it. */
export function inventedForecast(spell: InventedSpell): HourlyForecast {
  const all = [...spell.past, ...spell.ahead];
  const midnightMs = Date.parse(`${spell.today}T00:00:00Z`) - spell.past.length * MS_PER_DAY;
  const hours = all.length * 24 + LOW_AT_H + 7;
  const dayAt = (hour: number) =>
    all[Math.max(0, Math.min(all.length - 1, Math.floor((hour - HIGH_AT_H + 3) / 24)))] ?? all[0];
  const column = (of: (day: InventedDay | undefined) => number) =>
    Array.from({ length: hours }, (_, hour) => of(dayAt(hour)));
  const screenC = Array.from({ length: hours }, (_, hour) => airC(all, hour, spell.lowAtH ?? LOW_AT_H));
  return {
    service: 'openmeteo',
    ...{ updatedAt: noonOf(spell), fetchedAt: noonOf(spell), first: new Date(midnightMs), hours },
    gridElevationM: 50,
    columns: {
      screenC,
      dewPointC: screenC.map((value) => value - 2),
      cloudFraction: column((day) => day?.cloudFraction ?? 0),
      wind10MPerS: column((day) => day?.wind10MPerS ?? 1),
    },
    lowWindows: [],
    credits: [],
    notes: [],
  };
}

/** Eased between the turning points. */
function airC(all: readonly InventedDay[], hour: number, lowAtH: number): number {
  const turns = all.flatMap(({ highC, lowC }, day) => [
    { hour: day * 24 + HIGH_AT_H, tempC: highC },
    { hour: (day + 1) * 24 + lowAtH, tempC: lowC },
  ]);
  const last = turns.at(-1);
  const first = all[0];
  if (last === undefined || first === undefined) return 0;
  const line = [{ hour: lowAtH, tempC: first.lowC }, ...turns, { hour: last.hour + 9, tempC: last.tempC + 8 }];
  const next = Math.max(
    1,
    line.findIndex((turn) => turn.hour >= hour),
  );
  const [from, to] = [line[next - 1], line[next]];
  if (from === undefined || to === undefined) return first.lowC;
  const share = Math.max(0, Math.min(1, (hour - from.hour) / (to.hour - from.hour)));
  return from.tempC + ((1 - Math.cos(Math.PI * share)) / 2) * (to.tempC - from.tempC);
}

export function bed(name: string, crops: readonly (CropId | GardenPlanting)[], ...covers: CoverKey[]): GardenBed {
  return {
    name,
    covers,
    plantings: crops.map((crop) => (typeof crop === 'string' ? { cropId: crop, stage: 'grown' as const } : crop)),
  };
}

export function gardenOf(
  { latitudeDeg }: Pick<InventedSpell, 'latitudeDeg'>,
  beds: readonly GardenBed[],
  shed: readonly CoverKey[] = [],
): Garden {
  return {
    name: 'Plot',
    ...{ latitudeDeg, longitudeDeg: 0, elevationM: 50, exposure: 'open', timeZone: 'UTC' },
    ...{ beds, shed },
  };
}
