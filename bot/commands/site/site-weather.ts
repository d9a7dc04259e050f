import type { ForecastDesk } from '../../forecast/forecast.ts';
import { PlainProblem } from '../../ground/errors.ts';
import type { Services } from '../services.ts';

/** The forecasts, where they may be asked for. */
export function forecastsOf({ forecasts }: Services): ForecastDesk {
  if (forecasts === undefined) {
    throw new PlainProblem('I cannot look up a forecast: who runs me has to set FORECAST_CONTACT first.');
  }
  return forecasts;
}
