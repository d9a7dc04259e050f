import type { ForecastDesk } from '../../forecast/forecast.ts';
import { NoForecastError } from '../../forecast/forecast-error.ts';
import { PlainProblem } from '../../ground/errors.ts';

/** What to do where the services may not be asked: who types here is who sets it. */
export const HOW_TO_GET_FORECASTS =
  'I can’t ask for a forecast yet: the services want an address at which they can reach you. Put one line into a file named .env beside package.json, FORECAST_CONTACT=you@example.org, and start me again. Until then, type sample for a made-up night, or add --forecast FILE to a line for a forecast that you saved.';

/** Live forecasts for somebody at this computer: where nothing answers, the connection is what to look at first. */
export function terminalDesk(desk: ForecastDesk): ForecastDesk {
  return {
    async forecastFor(place, now, wish) {
      try {
        return await desk.forecastFor(place, now, wish);
      } catch (error) {
        throw error instanceof NoForecastError && isOffline(error) ? offline(error) : error;
      }
    },
    warningsFor: (place, now) => desk.warningsFor(place, now),
    close: () => desk.close(),
  };
}

function isOffline({ failures }: NoForecastError): boolean {
  return failures.length > 0 && failures.every(({ code }) => code === 'unavailable');
}

function offline(error: NoForecastError): PlainProblem {
  return new PlainProblem(
    'No forecast service answered. Check this computer’s connection to the internet, then ask again. Until then look outside, and cover as for a colder night.',
    { cause: error },
  );
}
