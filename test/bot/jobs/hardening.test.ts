import { afterEach, beforeEach, expect, test } from 'vitest';
import { cellOf } from '../../../bot/jobs/cell.ts';
import type { Planting } from '../../../bot/store/port/beds.ts';
import type { CellHour } from '../../../bot/store/port/weather.ts';
import { type CoverKey, type CropId, MS_PER_H } from '../../../rules/index.ts';
import { addClub, HOME } from './club.ts';
import { type JobsWorld, jobsWorld } from './jobs-world.ts';

const CLUB = 'club-1';
const ANNE = '100000000000000021';
const BEFORE = new Date('2026-10-01T12:00:00Z');
/** A little after noon by the sun at the gardens. */
const NOON = new Date('2026-12-01T17:10:00Z');

let world: JobsWorld;
beforeEach(async () => {
  world = await jobsWorld(NOON);
});
afterEach(() => world.close());

/** So many days behind with the given mean and half the daily swing. */
async function keepWeather(days: number, meanC: number, swingK = 4): Promise<void> {
  const hours = Array.from({ length: days * 24 }, (_, i): CellHour => {
    const at = new Date(Math.floor(NOON.getTime() / MS_PER_H) * MS_PER_H - i * MS_PER_H);
    const solarHour = (at.getTime() / MS_PER_H - 5) % 24;
    const airC = meanC - swingK * Math.cos((2 * Math.PI * (solarHour - 4)) / 24);
    return { at, airC, dewPointC: airC - 3, cloudFraction: 0.5, wind10MPerS: 2, globalWPerM2: undefined };
  });
  await world.store.weather.keepHours(cellOf(HOME).id, hours, NOON);
}

async function followed(covers: readonly CoverKey[], crop: CropId = 'spinach'): Promise<Planting | undefined> {
  await addClub(world.store, { id: CLUB }, [{ id: ANNE, beds: [[covers, crop]] }], BEFORE);
  const round = world.round();
  await round.tick();
  await round.drained();
  return (await world.store.beds.list(ANNE))[0]?.plantings[0];
}

test('plants that have had two weeks of cold nights are followed to full hardness', async () => {
  await keepWeather(16, -2);
  const planting = await followed(['low-tunnel']);
  expect(planting?.hardening?.fraction).toBeGreaterThan(0.9);
  expect(planting?.hardening?.at).toEqual(NOON);
  expect(world.told).toEqual([]);
});

test('plants that have had a mild spell are not', async () => {
  await keepWeather(16, 13);
  expect((await followed(['low-tunnel']))?.hardening?.fraction).toBeLessThan(0.2);
});

test('what lies over them decides: the same weather hardens the bare bed more than the covered one', async () => {
  await keepWeather(16, 5, 5);
  const bare = (await followed([]))?.hardening?.fraction ?? Number.NaN;
  await world.close();
  world = await jobsWorld(NOON);
  await keepWeather(16, 5, 5);
  const covered = (await followed(['cold-frame-twin-wall', 'row-cover-heavy']))?.hardening?.fraction ?? Number.NaN;
  expect(covered).toBeLessThan(bare - 0.1);
});

async function fractionAfter(change: (bedId: string, planting: Planting, siteId: string) => Promise<unknown>) {
  await addClub(world.store, { id: CLUB }, [{ id: ANNE, beds: [[['low-tunnel'], 'spinach']] }], BEFORE);
  const [bed] = await world.store.beds.list(ANNE);
  const [planting] = bed?.plantings ?? [];
  if (bed === undefined || planting === undefined) throw new Error('no bed');
  await change(bed.id, planting, bed.siteId);
  const round = world.round();
  await round.tick();
  await round.drained();
  return (await world.store.beds.find(ANNE, bed.id))?.plantings[0]?.hardening?.fraction;
}

test('only the nights since it was set out count, and it began as it is said to have been', async () => {
  await keepWeather(16, -2);
  const fraction = await fractionAfter((_bed, { id }) =>
    world.store.plantings.change(ANNE, id, { setOut: '2026-11-27', hardened: false }),
  );
  expect(fraction).toBeGreaterThan(0.4);
  expect(fraction).toBeLessThan(0.75);
});

test('a day of sowing long ago does not start plants anew', async () => {
  await keepWeather(16, -2);
  const fraction = await fractionAfter((_bed, { id }) =>
    world.store.plantings.change(ANNE, id, { sown: '2026-08-20', hardened: undefined }),
  );
  expect(fraction).toBeGreaterThan(0.9);
});

test('two gardens of one place share no days where something hides the sun of one of them', async () => {
  await keepWeather(16, 6, 5);
  const BERT = '100000000000000022';
  const beds = [[['cold-frame-twin-wall'], 'spinach']] as const;
  await addClub(
    world.store,
    { id: CLUB },
    [
      { id: ANNE, beds },
      { id: BERT, beds },
    ],
    BEFORE,
  );
  const [shaded] = await world.store.sites.list(BERT);
  await world.store.sites.change(BERT, shaded?.id ?? '', { horizonDeg: [60] });
  const round = world.round();
  await round.tick();
  await round.drained();
  const [open, inShade] = await Promise.all(
    [ANNE, BERT].map(
      async (id) => (await world.store.beds.list(id))[0]?.plantings[0]?.hardening?.fraction ?? Number.NaN,
    ),
  );
  expect(inShade).toBeGreaterThan((open ?? Number.NaN) + 0.02);
});

test('with fewer than three days of weather nothing is made up', async () => {
  await keepWeather(2, -2);
  expect((await followed(['low-tunnel']))?.hardening).toBeUndefined();
});

test('a crop that cold does not harden is left alone', async () => {
  await keepWeather(16, -2);
  expect((await followed(['low-tunnel'], 'tomato'))?.hardening).toBeUndefined();
});
