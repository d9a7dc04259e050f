import { expect, it } from 'vitest';
import type { CellHour } from '../../../../bot/store/port/weather.ts';
import { minute, type World } from './world.ts';

const hour = (n: number, airC: number): CellHour => ({
  at: new Date(Date.UTC(2026, 11, 1, n)),
  airC,
  dewPointC: airC - 2,
  cloudFraction: 0.25,
  wind10MPerS: 1.5,
  globalWPerM2: undefined,
});

const at = (n: number): Date => hour(n, 0).at;

export function weatherSpecification(world: World): void {
  it('gives back the hours of a cell in order, and only those asked for', async () => {
    const { weather } = world.store;
    await weather.keepHours('metno:1', [hour(3, -3), hour(1, -1), hour(2, -2)], minute(0));
    await weather.keepHours('metno:2', [hour(2, 9)], minute(0));
    expect(await weather.hours('metno:1', at(1), at(3))).toEqual([hour(1, -1), hour(2, -2)]);
  });

  it('lets a newer fetch replace an hour and an older one change nothing', async () => {
    const { weather } = world.store;
    await weather.keepHours('metno:1', [hour(1, -1), hour(2, -2)], minute(5));
    await weather.keepHours('metno:1', [hour(2, -2.5)], minute(6));
    await weather.keepHours('metno:1', [hour(1, 7), hour(2, 7)], minute(4));
    expect(await weather.hours('metno:1', at(0), at(9))).toEqual([hour(1, -1), hour(2, -2.5)]);
  });

  it('takes the last of two values for the same hour in one fetch', async () => {
    const { weather } = world.store;
    await weather.keepHours('metno:1', [hour(1, -1), hour(1, -4)], minute(0));
    expect(await weather.hours('metno:1', at(0), at(9))).toEqual([hour(1, -4)]);
  });

  it("keeps a service's last answer for a cell, newest fetch standing", async () => {
    const { weather } = world.store;
    const forecast = {
      cellId: 'metno:1',
      service: 'metno',
      fetchedAt: minute(5),
      freshUntil: minute(35),
      text: '{"properties":{"timeseries":[]}}',
    };
    await weather.keepForecast(forecast);
    await weather.keepForecast({ ...forecast, fetchedAt: minute(4), text: 'old' });
    expect(await weather.forecast('metno:1')).toEqual(forecast);
    expect(await weather.forecast('metno:2')).toBeUndefined();
  });

  it('forgets what is older than it is told to keep', async () => {
    const { weather } = world.store;
    await weather.keepHours('metno:1', [hour(1, -1), hour(2, -2)], minute(0));
    const forecast = { cellId: 'metno:1', service: 'metno', fetchedAt: at(1), freshUntil: at(2), text: '' };
    await weather.keepForecast(forecast);
    await weather.forget(at(2));
    expect(await weather.hours('metno:1', at(0), at(9))).toEqual([hour(2, -2)]);
    expect(await weather.forecast('metno:1')).toBeUndefined();
  });

  it('keeps a whole month of hours given at once', async () => {
    const { weather } = world.store;
    const month = Array.from({ length: 720 }, (_, n) => hour(n, n / 10));
    await weather.keepHours('metno:1', month, minute(0));
    expect(await weather.hours('metno:1', at(0), at(720))).toEqual(month);
  });
}
