import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { ForecastPlace } from '../../bot/forecast/forecast.ts';
import { MS_PER_S } from '../../rules/index.ts';
import { SyntheticForecasts } from './synthetic-forecasts.ts';

/** Open-Meteo on this machine with made-up weather for every place; it counts how often each is asked for. */
export class SyntheticOpenMeteo {
  readonly weather = new SyntheticForecasts();
  /** Requests by place. */
  readonly asked = new Map<string, number>();
  readonly #server: Server;
  readonly #now: () => Date;

  private constructor(now: () => Date, headers: Readonly<Record<string, string>>) {
    this.#now = now;
    this.#server = createServer((request, response) => {
      const { pathname, searchParams } = new URL(request.url ?? '/', 'http://double');
      if (pathname !== '/v1/forecast') return void response.writeHead(404).end();
      this.#body(searchParams)
        .then((body) => {
          response.writeHead(200, { 'content-type': 'application/json; charset=utf-8', ...headers });
          response.end(body);
        })
        .catch(() => response.destroy());
    });
  }

  /** @param headers - Sent with each forecast, such as how long it may be kept. */
  static async start(now: () => Date, headers: Readonly<Record<string, string>> = {}): Promise<SyntheticOpenMeteo> {
    const made = new SyntheticOpenMeteo(now, headers);
    await new Promise<void>((ready) => made.#server.listen(0, '127.0.0.1', ready));
    return made;
  }

  get base(): string {
    return `http://127.0.0.1:${(this.#server.address() as AddressInfo).port}`;
  }

  async close(): Promise<void> {
    this.#server.closeAllConnections();
    await new Promise((done) => this.#server.close(done));
  }

  async #body(query: URLSearchParams): Promise<string> {
    const place: ForecastPlace = {
      latitudeDeg: Number(query.get('latitude')),
      longitudeDeg: Number(query.get('longitude')),
    };
    const key = `${place.latitudeDeg},${place.longitudeDeg},${query.get('elevation') ?? ''}`;
    this.asked.set(key, (this.asked.get(key) ?? 0) + 1);
    const { first, hours, columns } = await this.weather.forecastFor(place, this.#now());
    const time = Array.from({ length: hours }, (_, i) => first.getTime() / MS_PER_S + i * 3600);
    const percent = columns.cloudFraction?.map((fraction) => (fraction ?? 0) * 100);
    return JSON.stringify({
      ...{ latitude: place.latitudeDeg, longitude: place.longitudeDeg, elevation: 150 },
      ...{ utc_offset_seconds: 0, timezone: 'GMT' },
      hourly: {
        time,
        temperature_2m: columns.screenC,
        dew_point_2m: columns.dewPointC,
        cloud_cover: percent,
        wind_speed_10m: columns.wind10MPerS,
      },
      hourly_units: { temperature_2m: '°C', dew_point_2m: '°C', cloud_cover: '%', wind_speed_10m: 'm/s' },
    });
  }
}
