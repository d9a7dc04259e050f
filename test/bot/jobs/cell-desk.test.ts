import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { HourlyForecast } from '../../../bot/forecast/forecast.ts';
import { cellOf } from '../../../bot/jobs/cell.ts';
import { CellDesk, type CellWish } from '../../../bot/jobs/cell-desk.ts';
import { forecastFromHours, hoursBetween, tellOfYesterday, withKeptPast } from '../../../bot/jobs/cell-hours.ts';
import { newsFrom, newsText } from '../../../bot/jobs/kept-cell.ts';
import { nightFrom } from '../../../rules/index.ts';
import { SyntheticForecasts } from '../../fakes/synthetic-forecasts.ts';
import { HOME } from './club.ts';
import { type JobsWorld, jobsWorld } from './jobs-world.ts';

const NOW = new Date('2026-12-01T16:30:00Z');
const later = (minutes: number) => new Date(NOW.getTime() + minutes * 60_000);
const cell = cellOf(HOME);
const night = nightFrom(NOW, cell.place.latitudeDeg, cell.place.longitudeDeg);
if (night === undefined) throw new Error('there are nights at home');
const wish = (now: Date): CellWish => ({ night, name: '2026-12-01', now });

let world: JobsWorld;
beforeEach(async () => {
  world = await jobsWorld(NOW);
});
afterEach(() => world.close());
const desk = () => new CellDesk(world.store, world.forecasts);

describe('a cell’s forecast', () => {
  test('is asked for once while it is fresh, by many at once, later, and in another process', async () => {
    const one = desk();
    await Promise.all([1, 2, 3].map(() => one.known(cell, wish(NOW))));
    await one.known(cell, wish(later(49)));
    const other = await desk().known(cell, wish(later(49)));
    expect(other.kind).toBe('known');
    expect(world.forecasts.asked).toHaveLength(1);
    await one.known(cell, wish(later(51)));
    expect(world.forecasts.asked).toHaveLength(2);
  });

  test('comes back from the store as it was kept', async () => {
    world.forecasts.official = { kind: 'unknown', because: 'unavailable' };
    const told = await desk().known(cell, wish(NOW));
    const kept = await desk().fresh(cell, wish(NOW));
    if (told.kind !== 'known' || kept?.kind !== 'known') throw new Error('expected a forecast');
    expect(kept.forecast).toEqual(told.forecast);
    expect(kept.official).toEqual(told.official);
  });

  test('that does not reach the night is no fresh one', async () => {
    await desk().known(cell, wish(NOW));
    const far = { ...night, sunrise: new Date(night.sunrise.getTime() + 10 * 86_400_000) };
    expect(await desk().fresh(cell, { ...wish(NOW), night: far })).toBeUndefined();
  });

  test('is asked for without its past once that is kept, and carries the kept hours all the same', async () => {
    const past = world.forecasts;
    await desk().known(cell, wish(NOW));
    world.forecasts.forecastFor = async (place, now, asked) => {
      const whole = await SyntheticForecasts.prototype.forecastFor.call(past, place, now, asked);
      return withoutPast(whole, now);
    };
    const told = await desk().known(cell, wish(later(60)));
    expect(past.asked.map(({ wish: asked }) => asked.pastKnown)).toEqual([false, true]);
    if (told.kind !== 'known') throw new Error('expected a forecast');
    const pastH = (later(60).getTime() - told.forecast.first.getTime()) / 3_600_000;
    expect(pastH).toBeGreaterThan(160);
  });

  test('when nobody answers is the kept one with its age, until it is too old to plan by', async () => {
    await desk().known(cell, wish(NOW));
    world.forecasts.silent = true;
    const old = await desk().known(cell, wish(later(10 * 60)));
    if (old.kind !== 'known') throw new Error('expected the kept forecast');
    expect(old.forecast.notes).toContainEqual({ code: 'stored-forecast', ageH: 10 });
    const tooOld = await desk().known(cell, wish(later(19 * 60)));
    expect(tooOld.kind).toBe('unknown');
    expect(tooOld.kind === 'unknown' && tooOld.last?.hours).toBeGreaterThan(100);
  });
});

test('a forecast of a clock that ran a month ahead is no fresh one, nor one to fall back upon', async () => {
  await desk().known(cell, { ...wish(later(30 * 24 * 60)), night: { ...night, sunrise: later(60) } });
  expect(await desk().fresh(cell, wish(NOW))).toBeUndefined();
  world.forecasts.silent = true;
  expect((await desk().known(cell, wish(NOW))).kind).toBe('unknown');
});

describe('kept hours', () => {
  test('are as the forecast said them, from the first instant to before the last', async () => {
    const forecast = await world.forecasts.forecastFor(cell.place, NOW);
    const hours = hoursBetween(forecast, later(-120), later(120));
    expect(hours.map(({ at }) => at.toISOString().slice(11, 16))).toEqual(['15:00', '16:00', '17:00', '18:00']);
    const index = forecast.hours - 5 * 24 - 2;
    expect(hours[0]?.airC).toBe(forecast.columns.screenC?.[index + 1]);
  });

  test('tell of yesterday only if few of its hours are missing', async () => {
    const forecast = await world.forecasts.forecastFor(cell.place, NOW);
    const hours = hoursBetween(forecast, later(-24 * 60), NOW);
    expect(tellOfYesterday(hours, NOW)).toBe(true);
    expect(tellOfYesterday(hours.slice(8), NOW)).toBe(false);
    expect(tellOfYesterday([], NOW)).toBe(false);
  });

  test('stand before a forecast and never in place of its own hours', async () => {
    const whole = await world.forecasts.forecastFor(cell.place, NOW);
    const kept = hoursBetween(whole, later(-50 * 60), later(600)).map((hour) => ({ ...hour, airC: -40 }));
    const joined = withKeptPast(withoutPast(whole, NOW), kept);
    const airC = joined.columns.screenC ?? [];
    expect(airC.slice(0, 49).every((each) => each === -40)).toBe(true);
    expect(airC.slice(49)).not.toContain(-40);
    expect(airC).toHaveLength(joined.hours);
  });

  test('leave a hole where hours are missing, and make no forecast of nothing', () => {
    const hour = (i: number) => ({
      ...{ at: later(i * 60), airC: i, dewPointC: undefined, cloudFraction: 0.5 },
      ...{ wind10MPerS: 1, globalWPerM2: undefined },
    });
    expect(forecastFromHours([hour(0), hour(3)])?.columns.screenC).toEqual([0, undefined, undefined, 3]);
    expect(forecastFromHours([])).toBeUndefined();
  });
});

test('what an earlier version kept is passed over', async () => {
  const forecast = await world.forecasts.forecastFor(cell.place, NOW);
  const text = newsText({ forecast, official: { kind: 'not-covered' } });
  expect(newsFrom(text)?.forecast).toEqual(forecast);
  expect(newsFrom(text.replace('"shape":1', '"shape":0'))).toBeUndefined();
  expect(newsFrom('{}')).toBeUndefined();
});

/** As services send it that tell nothing of the past. */
function withoutPast(forecast: HourlyForecast, now: Date): HourlyForecast {
  const from = Math.floor((now.getTime() - forecast.first.getTime()) / 3_600_000);
  const columns = Object.fromEntries(
    Object.entries(forecast.columns).map(([name, column]: [string, readonly unknown[]]) => [name, column.slice(from)]),
  );
  const first = new Date(forecast.first.getTime() + from * 3_600_000);
  return { ...forecast, columns: columns as HourlyForecast['columns'], first, hours: forecast.hours - from };
}
