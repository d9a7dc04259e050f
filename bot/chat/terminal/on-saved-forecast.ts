import type { Services } from '../../commands/services.ts';
import { savedDesk } from '../../forecast/saved-desk.ts';
import { savedFile } from '../../forecast/saved-file.ts';

/**
 * The same services on a saved forecast: no service is asked, and the clock stands where the file was saved.
 *
 * @throws PlainProblem when the file cannot be read, or holds no forecast.
 */
export async function onSavedForecast(services: Services, file: string): Promise<Services> {
  const forecast = await savedFile(file);
  const clock = { now: () => forecast.fetchedAt, rehearsal: services.clock.rehearsal };
  return { ...services, clock, forecasts: savedDesk(forecast) };
}
