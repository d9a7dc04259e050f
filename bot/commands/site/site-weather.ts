import type { ForecastDesk } from '../../forecast/forecast.ts';
import { PlainProblem } from '../../ground/errors.ts';
import type { Services } from '../services.ts';

const ASK_THE_HOST = 'I can’t look up a forecast: whoever runs me has to set FORECAST_CONTACT first.';

/**
 * The forecasts, where they may be asked for.
 *
 * @throws PlainProblem that says who has to do what first.
 */
export function forecastsOf({ forecasts, noForecasts = ASK_THE_HOST }: Services): ForecastDesk {
  if (forecasts === undefined) throw new PlainProblem(noForecasts);
  return forecasts;
}
