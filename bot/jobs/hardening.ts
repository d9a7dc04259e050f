import { setImmediate as nextTurn } from 'node:timers/promises';
import { cropById, type HardeningDay, hardeningIndex, MS_PER_DAY, OPENING_LIMIT_C } from '../../rules/index.ts';
import type { HourlyForecast } from '../forecast/forecast.ts';
import { localDay } from '../ground/times.ts';
import type { GardenBed, Garden as LaidOut } from '../outlook/garden.ts';
import { type Bench, benchOf, nightUnder } from '../outlook/night-outlook.ts';
import { storedGarden } from '../outlook/stored-garden.ts';
import type { Bed, Hardening, Planting } from '../store/port/beds.ts';
import type { Garden } from '../store/port/channels.ts';
import type { Store } from '../store/store.ts';
import { type Calendar, type CalendarNight, solarDay } from './calendar.ts';
import { type Cell, cellOf } from './cell.ts';
import { forecastFromHours } from './cell-hours.ts';
import type { Isolated } from './club-night.ts';

/** What lies further back hardly shows: half of full hardness is gained in three days. */
const DAYS = 14;
/** With fewer, nothing is followed yet. */
const FEWEST_DAYS = 3;

/** The days under one stack of covers at one place, oldest first. */
interface FollowedDay extends HardeningDay {
  readonly name: string;
}

interface World {
  readonly store: Store;
  readonly calendar: Calendar;
  readonly isolated: Isolated;
}

/** Follows how hard a channel's plants have become, from the kept weather of their cells and what lies over them. */
export async function followHardening(gardens: readonly Garden[], now: Date, world: World): Promise<void> {
  const places = new Map<string, Promise<readonly FollowedBench[]>>();
  const days = new Map<string, readonly FollowedDay[]>();
  for (const garden of gardens) {
    const followed = await world.isolated(() => gardenHardening(garden, now, world, { places, days }));
    if (followed !== undefined && followed.size > 0) await world.store.plantings.keepHardening(followed);
    await nextTurn();
  }
}

interface Shared {
  readonly places: Map<string, Promise<readonly FollowedBench[]>>;
  readonly days: Map<string, readonly FollowedDay[]>;
}

async function gardenHardening(
  garden: Garden,
  now: Date,
  world: World,
  shared: Shared,
): Promise<ReadonlyMap<string, Hardening>> {
  const cell = cellOf(garden.site);
  const laidOut = { ...storedGarden(garden), ...cell.place };
  const place = `${cell.id} ${garden.site.exposure} ${garden.site.horizonDeg.join()} ${garden.site.timeZone}`;
  const known = shared.places.get(place) ?? benchesOf(laidOut, cell, now, world);
  shared.places.set(place, known);
  const benches = await known;
  const followed = new Map<string, Hardening>();
  for (const [index, bed] of garden.beds.entries()) {
    const laid = laidOut.beds[index];
    if (laid === undefined || !bed.plantings.some(hardens)) continue;
    const key = `${place} ${JSON.stringify([laid.covers, laid.frame, laid.soilKind, laid.mulch])}`;
    const days = shared.days.get(key) ?? daysUnder(laid, benches);
    shared.days.set(key, days);
    for (const planting of bed.plantings.filter(hardens)) {
      const fraction = hardeningOf(planting, bed, days, garden.site.timeZone);
      if (fraction !== undefined) followed.set(planting.id, { fraction, at: now });
    }
  }
  return followed;
}

function hardens({ crop }: Planting): boolean {
  return cropById(crop)?.hardens === true;
}

/** A day from noon to noon with the night in its middle. */
interface FollowedBench {
  readonly night: CalendarNight;
  readonly bench: Bench;
  readonly noonMs: number;
}

async function benchesOf(
  laidOut: LaidOut,
  cell: Cell,
  now: Date,
  { store, calendar }: World,
): Promise<FollowedBench[]> {
  const hours = await store.weather.hours(cell.id, new Date(now.getTime() - (DAYS + 2) * MS_PER_DAY), now);
  const forecast = forecastFromHours(hours);
  const first = hours[0]?.at;
  if (forecast === undefined || first === undefined) return [];
  const place = { ...cell.place, timeZone: laidOut.timeZone };
  const today = solarDay(now, cell.place.longitudeDeg);
  return Array.from({ length: DAYS }, (_, i) => today - DAYS + i).flatMap((day) => {
    const night = calendar.night(place, day);
    const noonMs = calendar.day(place, day).noon.getTime();
    const isPast = noonMs + MS_PER_DAY <= now.getTime() && noonMs >= first.getTime();
    if (night === undefined || !isPast) return [];
    const bench = benchIfWhole(laidOut, forecast, night);
    return bench === undefined ? [] : [{ night, bench, noonMs }];
  });
}

/** Undefined where hours of that night are missing: the bot did not run, or no service answered. */
function benchIfWhole(laidOut: LaidOut, forecast: HourlyForecast, night: CalendarNight): Bench | undefined {
  const known = (at: Date) =>
    forecast.columns.screenC?.[Math.round((at.getTime() - forecast.first.getTime()) / 3_600_000)];
  const hours = Math.ceil((night.sunrise.getTime() - night.sunset.getTime()) / 3_600_000);
  const whole = Array.from({ length: hours + 1 }, (_, i) => known(new Date(night.sunset.getTime() + i * 3_600_000)));
  if (whole.includes(undefined)) return undefined;
  return benchOf(laidOut, { ...forecast, updatedAt: night.sunset, fetchedAt: night.sunset }, night, night.sunset);
}

function daysUnder(laid: GardenBed, benches: readonly FollowedBench[]): FollowedDay[] {
  return benches.flatMap(({ night, bench, noonMs }) => {
    const run = nightUnder(laid, laid.covers, bench)?.run;
    if (run === undefined) return [];
    const airC: number[] = [];
    run.timesMs.forEach((atMs, i) => {
      // Whoever grows under glass opens it before it gets hotter.
      if (atMs >= noonMs && atMs <= noonMs + MS_PER_DAY)
        airC.push(Math.min(OPENING_LIMIT_C, run.airC[i] ?? Number.NaN));
    });
    const meanC = airC.reduce((sum, value) => sum + value, 0) / airC.length;
    return [{ name: night.name, lowC: Math.min(...airC), meanC }];
  });
}

/** Days before it was planted do not count; where the covers have changed, it goes on from what was followed before. */
function hardeningOf(
  { since, sown, setOut, stage, hardened, hardening }: Planting,
  { coversSince }: Bed,
  days: readonly FollowedDay[],
  timeZone: string,
): number | undefined {
  const first = days[0]?.name;
  if (first === undefined) return undefined;
  const changed = localDay(coversSince, timeZone);
  if (hardening !== undefined && changed > first) {
    const since = localDay(hardening.at, timeZone);
    const newer = days.filter(({ name }) => name >= since);
    return newer.length === 0 ? undefined : hardeningIndex(newer, hardening.fraction);
  }
  const planted = setOut ?? sown ?? since;
  const own = days.filter(({ name }) => name >= planted);
  if (own.length < FEWEST_DAYS) return undefined;
  const said = hardened === undefined ? (stage === 'just-set-out' ? 0 : undefined) : Number(hardened);
  return hardeningIndex(own, planted > first ? said : undefined);
}
