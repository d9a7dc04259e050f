import { z } from 'zod';
import { BoundedMap } from '../ground/bounded-map.ts';
import { type AnswerContext, shaped } from './answer-body.ts';
import { answerJson, read } from './answer-json.ts';
import { askedPlace } from './asked-place.ts';
import type {
  ForecastPlace,
  ForecastSource,
  Haste,
  HourlyForecast,
  OfficialWarning,
  WarningSource,
} from './forecast.ts';
import { ForecastServiceError } from './forecast-error.ts';
import { accepted } from './freshness.ts';
import { readWarnings } from './nws-alerts.ts';
import { readNwsGrid } from './nws-grid.ts';
import type { Answer, AskedHow, Transport } from './transport.ts';

const HEADERS = { accept: 'application/geo+json' };
/** Grids are renumbered without notice, so the way to one is looked up again every week. */
const RESOLVE_AFTER_MS = 7 * 24 * 3_600_000;
const REMEMBERED_PLACES = 5000;

const pointSchema = z.looseObject({
  properties: z.looseObject({
    forecastGridData: z.url(),
    timeZone: z.string().max(60).optional().catch(undefined),
  }),
});
const bodySchema = z.looseObject({ properties: z.unknown() });

/** Where the forecast of a place is; `undefined` path: the service said that it does not cover the place. */
interface Spot {
  readonly gridPath: string | undefined;
  readonly timeZone: string | undefined;
  readonly resolvedAtMs: number;
}

interface SpotWish extends AskedHow {
  readonly remembered: boolean;
}

/** US National Weather Service: the raw grid, and the warnings in force. */
export class NwsSource implements ForecastSource, WarningSource {
  readonly service = 'nws';
  readonly #transport: Transport;
  readonly #clockMs: () => number;
  readonly #spots = new BoundedMap<string, Spot>(REMEMBERED_PLACES);
  /** Forecast and warnings of a place want to know the same at the same time. */
  readonly #looking = new Map<string, Promise<Spot>>();

  constructor(transport: Transport, clockMs: () => number = () => performance.now()) {
    this.#transport = transport;
    this.#clockMs = clockMs;
  }

  async forecastFor(place: ForecastPlace, now: Date, haste: Haste = 'asked'): Promise<HourlyForecast> {
    const asked = askedPlace(place);
    const known = await this.#spot(asked, { haste, remembered: true });
    const first = await this.#grid(known, haste);
    if (first.status !== 404) return this.#read(first, asked, known, now);
    const fresh = await this.#spot(asked, { haste, remembered: false });
    return this.#read(await this.#grid(fresh, haste), asked, fresh, now);
  }

  async warningsFor(place: ForecastPlace, now: Date, haste: Haste = 'asked'): Promise<readonly OfficialWarning[]> {
    const asked = askedPlace(place);
    refuseOutside(await this.#spot(asked, { haste, remembered: true, aside: true }));
    const path = `/alerts/active?point=${pointOf(asked)}`;
    const answer = await this.#transport.get('nws', path, { headers: HEADERS, haste, aside: true });
    const body = answerJson('nws', answer);
    return read('nws', answer, () => readWarnings(body, now));
  }

  async #spot(place: ForecastPlace, { remembered, ...how }: SpotWish): Promise<Spot> {
    const point = pointOf(place);
    const known = this.#spots.get(point);
    if (remembered && known !== undefined && this.#clockMs() - known.resolvedAtMs < RESOLVE_AFTER_MS) return known;
    const underWay = this.#looking.get(point);
    if (underWay !== undefined) return underWay;
    const headers = known === undefined ? HEADERS : { ...HEADERS, 'cache-control': 'no-cache' };
    const looking = this.#lookedUp(point, { ...how, headers }).finally(() => this.#looking.delete(point));
    this.#looking.set(point, looking);
    return looking;
  }

  async #lookedUp(point: string, how: AskedHow): Promise<Spot> {
    const answer = await this.#transport.get('nws', `/points/${point}`, how);
    const spot = { ...this.#resolved(answer), resolvedAtMs: this.#clockMs() };
    this.#spots.set(point, spot);
    return spot;
  }

  #resolved(answer: Answer): Omit<Spot, 'resolvedAtMs'> {
    if (answer.status === 404) return { gridPath: undefined, timeZone: undefined };
    const body = answerJson('nws', answer);
    const { forecastGridData, timeZone } = read('nws', answer, () =>
      shaped(pointSchema, body, 'The answer about the place'),
    ).properties;
    const { pathname } = new URL(forecastGridData);
    if (!pathname.startsWith('/gridpoints/')) {
      answer.unreadable();
      throw new ForecastServiceError('nws', 'bad-answer', 'The National Weather Service points to no forecast grid.');
    }
    return { gridPath: pathname, timeZone };
  }

  /** Only the path of the given address is followed, below the configured base. */
  async #grid(spot: Spot, haste: Haste): Promise<Answer> {
    return this.#transport.get('nws', refuseOutside(spot), { headers: HEADERS, haste });
  }

  #read(answer: Answer, place: ForecastPlace, { timeZone }: Spot, now: Date): HourlyForecast {
    const body = answerJson('nws', answer);
    const context: AnswerContext = {
      fetchedAt: new Date(now.getTime() - answer.ageS * 1000),
      place,
      ...(timeZone === undefined ? {} : { timeZone }),
    };
    const forecast = read('nws', answer, () =>
      readNwsGrid(shaped(bodySchema, body, 'The forecast grid').properties, context),
    );
    return accepted(forecast, now);
  }
}

/** The path of the grid. An empty list of warnings would read as safe where the service does not look. */
function refuseOutside({ gridPath }: Spot): string {
  if (gridPath !== undefined) return gridPath;
  throw new ForecastServiceError('nws', 'not-covered', 'The National Weather Service has no forecast for this place.');
}

function pointOf({ latitudeDeg, longitudeDeg }: ForecastPlace): string {
  return `${latitudeDeg},${longitudeDeg}`;
}
