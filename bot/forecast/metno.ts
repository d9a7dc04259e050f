import { answerJson, read } from './answer-json.ts';
import { askedPlace } from './asked-place.ts';
import type { ForecastPlace, ForecastSource, Haste, HourlyForecast } from './forecast.ts';
import { accepted } from './freshness.ts';
import { readMetno } from './metno-body.ts';
import type { Transport } from './transport.ts';

/** MET Norway Locationforecast 2.0, complete. */
export class MetnoSource implements ForecastSource {
  readonly service = 'metno';
  readonly #transport: Transport;

  constructor(transport: Transport) {
    this.#transport = transport;
  }

  async forecastFor(place: ForecastPlace, now: Date, haste: Haste = 'asked'): Promise<HourlyForecast> {
    const asked = askedPlace(place);
    const altitude = asked.elevationM === undefined ? '' : `&altitude=${asked.elevationM}`;
    const path = `/weatherapi/locationforecast/2.0/complete?lat=${asked.latitudeDeg}&lon=${asked.longitudeDeg}${altitude}`;
    const answer = await this.#transport.get('metno', path, { haste });
    const body = answerJson('metno', answer);
    const context = {
      fetchedAt: new Date(now.getTime() - answer.ageS * 1000),
      place: asked,
      ...(answer.modifiedAt === undefined ? {} : { modifiedAt: answer.modifiedAt }),
    };
    return accepted(
      read('metno', answer, () => readMetno(body, context)),
      now,
    );
  }
}
