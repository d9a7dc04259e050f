import { MS_PER_H } from '../../rules/index.ts';
import { placeKey } from './asked-place.ts';
import { colderOf } from './compare.ts';
import { CREDITS, SERVICE_TITLES } from './credits.ts';
import type {
  ForecastDesk,
  ForecastNight,
  ForecastNote,
  ForecastPlace,
  ForecastService,
  ForecastSource,
  ForecastWish,
  Haste,
  HourlyForecast,
  OfficialWarnings,
  WarningSource,
} from './forecast.ts';
import { ForecastServiceError } from './forecast-error.ts';
import { ForecastMemory } from './forecast-memory.ts';
import { isOld, isStale, notesWithAge } from './freshness.ts';
import { reaches } from './night-low.ts';
import { noForecast } from './no-forecast.ts';
import { mayBeNwsArea } from './nws-area.ts';
import { withPast } from './past.ts';

/** With less weather behind it than a whole day the warmth that the soil has stored is a guess. */
const WANTED_PAST_H = 24;
/** The service that tells of days gone by. */
const TELLS_THE_PAST: ForecastService = 'openmeteo';
const SERVES_FASTEST: readonly ForecastService[] = ['metno', 'openmeteo', 'nws'];

export interface DeskParts {
  readonly sources: Readonly<Record<ForecastService, ForecastSource>>;
  readonly warnings: WarningSource;
  readonly order: readonly ForecastService[];
  readonly close: () => Promise<void>;
  readonly memory?: ForecastMemory;
}

interface Question {
  readonly place: ForecastPlace;
  readonly now: Date;
  readonly night: ForecastNight | undefined;
  readonly haste: Haste;
}

/** Chooses among services: the order by place, the next one when one fails, the colder one when two disagree. */
export class Desk implements ForecastDesk {
  readonly #parts: DeskParts;
  readonly #memory: ForecastMemory;
  /** Questions under way, so that a club asking at once asks a service once. */
  readonly #asking = new Map<string, Promise<HourlyForecast>>();

  constructor(parts: DeskParts) {
    this.#parts = parts;
    this.#memory = parts.memory ?? new ForecastMemory();
  }

  /** A second service is asked when wished, when the first is old, or when a night is wished and the first tells too little past. */
  async forecastFor(place: ForecastPlace, now: Date, wish: ForecastWish = {}): Promise<HourlyForecast> {
    const haste = wish.nightly === true ? 'nightly' : 'asked';
    const question = { place, now, night: wish.night, haste } as const;
    const order = this.#orderFor(place);
    const failures: ForecastServiceError[] = [];
    const first =
      (await this.#firstGood(order, question, failures)) ?? (await this.#patient(order, question, failures));
    if (first === undefined) return this.#stored(question, failures);
    const main = { ...first, notes: [...first.notes, ...fellBack(failures, first.service)] };
    return this.#compared(main, question, wish);
  }

  /** The forecast, or a second one where that is wished or the first is not enough. */
  async #compared(main: HourlyForecast, question: Question, wish: ForecastWish): Promise<HourlyForecast> {
    const { place, now } = question;
    const late = wish.night !== undefined && wish.pastKnown !== true && startsLate(main, now);
    const old = isOld(main, now);
    if (!late && !old && wish.compare !== true) return main;
    const order = this.#orderFor(place);
    const rest = order.slice(order.indexOf(main.service) + 1);
    const haste = question.haste === 'nightly' ? 'nightly' : 'second';
    const second = await this.#firstGood(late ? pastFirst(rest) : rest, { ...question, haste }, []);
    if (second === undefined) return main;
    const [one, other] = old ? [second, main] : [main, second];
    const chosen = wish.night === undefined ? one : colderOf(one, other, wish.night);
    return late ? withPast(chosen, chosen.service === main.service ? second : main) : chosen;
  }

  async warningsFor(
    place: ForecastPlace,
    now: Date,
    wish: Pick<ForecastWish, 'nightly'> = {},
  ): Promise<OfficialWarnings> {
    if (!mayBeNwsArea(place)) return { kind: 'not-covered' };
    try {
      const haste = wish.nightly === true ? 'nightly' : 'asked';
      const warnings = await this.#parts.warnings.warningsFor(place, now, haste);
      return { kind: 'known', warnings, credits: [CREDITS.nws] };
    } catch (cause) {
      if (!(cause instanceof ForecastServiceError)) throw cause;
      return cause.code === 'not-covered' ? { kind: 'not-covered' } : { kind: 'unknown', because: cause.code };
    }
  }

  async close(): Promise<void> {
    await this.#parts.close();
  }

  #orderFor(place: ForecastPlace): readonly ForecastService[] {
    return this.#parts.order.filter((service) => service !== 'nws' || mayBeNwsArea(place));
  }

  /** The first of these services that answers and reaches the night; the failures of those before it are added to the list. */
  async #firstGood(
    services: readonly ForecastService[],
    question: Question,
    failures: ForecastServiceError[],
  ): Promise<HourlyForecast | undefined> {
    for (const service of services) {
      try {
        const forecast = await this.#ask(service, question);
        if (question.night === undefined || reaches(forecast, question.night.sunrise)) return forecast;
        failures.push(
          new ForecastServiceError(service, 'too-short', `${SERVICE_TITLES[service]} does not reach that night.`),
        );
      } catch (cause) {
        if (!(cause instanceof ForecastServiceError)) throw cause;
        failures.push(cause);
      }
    }
    return undefined;
  }

  /** Where services were only too busy, those that serve fastest are waited for: a slow answer beats none. */
  async #patient(
    order: readonly ForecastService[],
    question: Question,
    failures: ForecastServiceError[],
  ): Promise<HourlyForecast | undefined> {
    const busy = new Set(failures.filter(({ code }) => code === 'busy').map(({ service }) => service));
    const fastest = SERVES_FASTEST.filter((service) => busy.has(service) && order.includes(service));
    return this.#firstGood(fastest, { ...question, haste: 'last' }, failures);
  }

  #ask(service: ForecastService, { place, now, haste }: Question): Promise<HourlyForecast> {
    const key = `${service} ${placeKey(place)}`;
    const underWay = this.#asking.get(key);
    if (underWay !== undefined) return underWay;
    const asking = this.#parts.sources[service]
      .forecastFor(place, now, haste)
      .then((forecast) => this.#memory.kept(place, forecast))
      .finally(() => this.#asking.delete(key));
    this.#asking.set(key, asking);
    return asking;
  }

  /** The newest stored forecast that still serves. @throws NoForecastError when there is none. */
  #stored({ place, now, night }: Question, failures: readonly ForecastServiceError[]): HourlyForecast {
    const usable = this.#orderFor(place)
      .flatMap((service) => this.#memory.last(place, service) ?? [])
      .filter((forecast) => !isStale(forecast, now) && (night === undefined || reaches(forecast, night.sunrise)))
      .sort((a, b) => b.updatedAt.getTime() - a.updatedAt.getTime());
    const [newest] = usable;
    if (newest === undefined) throw noForecast(failures);
    const ageH = Math.max(0, now.getTime() - newest.fetchedAt.getTime()) / MS_PER_H;
    return { ...newest, notes: [...notesWithAge(newest, now), { code: 'stored-forecast', ageH }] };
  }
}

function fellBack(failures: readonly ForecastServiceError[], to: ForecastService): ForecastNote[] {
  return failures
    .filter(({ code }) => code !== 'not-covered')
    .map(({ service, code }) => ({ code: 'fell-back', from: service, to, because: code }));
}

function startsLate(forecast: HourlyForecast, now: Date): boolean {
  return now.getTime() - forecast.first.getTime() < WANTED_PAST_H * MS_PER_H;
}

function pastFirst(services: readonly ForecastService[]): readonly ForecastService[] {
  return [...services].sort((a, b) => Number(b === TELLS_THE_PAST) - Number(a === TELLS_THE_PAST));
}
