import { expect, test } from 'vitest';
import { readSavedForecast } from '../../../bot/forecast/recorded.ts';
import { savedDesk } from '../../../bot/forecast/saved-desk.ts';
import { FIXTURE_NOW, FIXTURE_PLACE, fixture } from '../../fakes/forecast-services.ts';

const forecast = readSavedForecast(fixture('nws-grid.json'), FIXTURE_NOW);

test('a saved forecast answers for its own place', async () => {
  expect(await savedDesk(forecast).forecastFor(FIXTURE_PLACE, FIXTURE_NOW)).toBe(forecast);
});

test('for another place it is refused, with both places in words that can be checked', async () => {
  const { latitudeDeg, longitudeDeg } = FIXTURE_PLACE;
  const asked = savedDesk(forecast).forecastFor({ latitudeDeg, longitudeDeg: -longitudeDeg }, FIXTURE_NOW);
  await expect(asked).rejects.toThrow(/is for \d+\.\d° N, \d+\.\d° W, \d+ km from \d+\.\d° N, \d+\.\d° E\. .*signs/);
});

test('no official warnings are claimed', async () => {
  expect(await savedDesk(forecast).warningsFor(FIXTURE_PLACE, FIXTURE_NOW)).toEqual({ kind: 'not-covered' });
});
