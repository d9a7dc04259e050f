import { afterAll, beforeAll, expect, test } from 'vitest';
import { nightLater } from '../../../bot/learning/night-days.ts';
import { FIXTURE_NOW } from '../../fakes/forecast-services.ts';
import { Club, HOME, LAST_NIGHT } from '../commands/club.ts';
import { ran } from './program.ts';

let club: Club;

/** Told −6 °C under the cover and −9 °C outside; the thermometer showed so much more under it. */
async function read(errorsK: readonly number[], told: { readonly service: string; readonly leadH: number }) {
  const [bed] = await club.store.beds.list('anna');
  if (bed === undefined) throw new Error('no bed is kept');
  const offset = told.service === 'nws' ? 0 : 30;
  for (const [ago, errorK] of errorsK.entries()) {
    const night = nightLater(LAST_NIGHT, -ago - offset);
    await club.toldLastNight('anna', { night, ...told });
    const facts = { bedId: bed.id, night, origin: 'typed', doubt: undefined, covers: bed.covers } as const;
    const lows = { outsideLowC: -9, underCoverLowC: -6 + errorK };
    await club.store.readings.record('anna', [{ ...facts, ...lows }], FIXTURE_NOW);
  }
}

beforeAll(async () => {
  club = await Club.open();
  await club.say(HOME);
  await club.say('bed add name:"Secret tunnel" crop:kale covers:"low tunnel"');
  await read([1, 1, 1, 5], { service: 'nws', leadH: 14 });
  await read([-1, -1], { service: 'metno', leadH: 30 });
});
afterAll(() => club.close());

test('the host sees how well all beds were foretold, by service and lead time, and whose they are not', async () => {
  const { code, out, err } = await ran('cli/record', [], { env: { DATABASE_URL: club.url } });
  expect([code, err]).toEqual([0, '']);
  const rows = out
    .trim()
    .split('\n')
    .map((line) => line.trim().split(/\s{2,}/));
  expect(rows[0]).toEqual(['service', 'lead', 'low', 'nights', 'mean K', 'off by K', 'in range']);
  expect(rows.slice(1)).toEqual([
    ['metno', '24 to 36 h', 'outside', '2', '0.00', '0.00', '100 %'],
    ['metno', '24 to 36 h', 'under cover', '2', '-1.00', '1.00', '100 %'],
    ['nws', '12 to 18 h', 'outside', '4', '0.00', '0.00', '100 %'],
    ['nws', '12 to 18 h', 'under cover', '4', '2.00', '2.00', '75 %'],
  ]);
  expect(out).not.toMatch(/Secret|anna|41\.2/);
});
