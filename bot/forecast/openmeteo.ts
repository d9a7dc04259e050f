import { answerJson, read } from './answer-json.ts';
import { askedPlace } from './asked-place.ts';
import type { ForecastPlace, ForecastSource, Haste, HourlyForecast } from './forecast.ts';
import { accepted } from './freshness.ts';
import { readOpenMeteo } from './openmeteo-body.ts';
import type { Transport } from './transport.ts';

/** Ten columns over two weeks: just what still counts as a single call. */
const HOURLY = [
  'temperature_2m',
  'dew_point_2m',
  'cloud_cover',
  'wind_speed_10m',
  'wind_gusts_10m',
  'precipitation',
  'snow_depth',
  'shortwave_radiation',
  'soil_temperature_0cm',
  'soil_temperature_6cm',
];
/** The past week tells the soil's warmth; times in seconds, since its local times have no usable offset. */
const QUERY = {
  hourly: HOURLY.join(','),
  wind_speed_unit: 'ms',
  timeformat: 'unixtime',
  timezone: 'GMT',
  past_days: '7',
  forecast_days: '7',
};

/** Open-Meteo: the best model of each place, with a week of the past, radiation and soil. */
export class OpenMeteoSource implements ForecastSource {
  readonly service = 'openmeteo';
  readonly #transport: Transport;

  constructor(transport: Transport) {
    this.#transport = transport;
  }

  async forecastFor(place: ForecastPlace, now: Date, haste: Haste = 'asked'): Promise<HourlyForecast> {
    const asked = askedPlace(place);
    const query = new URLSearchParams({
      latitude: String(asked.latitudeDeg),
      longitude: String(asked.longitudeDeg),
      ...(asked.elevationM === undefined ? {} : { elevation: String(asked.elevationM) }),
      ...QUERY,
    });
    const answer = await this.#transport.get('openmeteo', `/v1/forecast?${query}`, {
      haste,
      headers: { accept: 'application/json' },
    });
    const body = answerJson('openmeteo', answer);
    const context = { fetchedAt: new Date(now.getTime() - answer.ageS * 1000), place: asked };
    return accepted(
      read('openmeteo', answer, () => readOpenMeteo(body, context)),
      now,
    );
  }
}
