import { setTimeout as pause } from 'node:timers/promises';
import { MS_PER_H, MS_PER_MIN, type NightSpan } from '../../rules/index.ts';
import type { ForecastDesk, HourlyForecast, OfficialWarnings } from '../forecast/forecast.ts';
import { NoForecastError } from '../forecast/forecast-error.ts';
import { isFromTheFuture, isStale, notesWithAge } from '../forecast/freshness.ts';
import { reaches } from '../forecast/night-low.ts';
import { BoundedMap } from '../ground/bounded-map.ts';
import { cellPlace } from '../store/delivery-key.ts';
import type { CellForecast } from '../store/port/weather.ts';
import type { Store } from '../store/store.ts';
import type { Cell } from './cell.ts';
import { hoursBetween, tellOfYesterday, withKeptPast } from './cell-hours.ts';
import { type CellNews, newsFrom, newsText } from './kept-cell.ts';

/** What can be told of a cell's weather. */
export type CellKnown =
  | ({ readonly kind: 'known' } & CellNews)
  /** No forecast can be had; `last` is the last one there was, too old to reckon with. */
  | { readonly kind: 'unknown'; readonly last: HourlyForecast | undefined; readonly official: OfficialWarnings };

export interface CellWish {
  readonly night: NightSpan;
  /** The night's name in the ledger. */
  readonly name: string;
  readonly now: Date;
}

/** All three services renew their forecasts hourly at most (judgement). */
const FRESH_MIN = 50;
/** The soil's warmth needs a week. */
const PAST_H = 7 * 24;
const KEPT_BACK_H = 48;
const KEPT_AHEAD_H = 36;
/** Forecasts kept read in memory, some 60 kB each. */
const REMEMBERED_CELLS = 300;
/** Another process that is fetching needs so long at most; short of the time in which a delivery must be posted. */
const WAIT_FOR_OTHERS_MS = 12_000;
const LOOK_AGAIN_MS = 250;

interface Remembered extends CellNews {
  readonly freshUntil: Date;
}

/** Forecasts by cell: fetched once while they are fresh, whichever process asks, and kept for when no service answers. */
export class CellDesk {
  readonly #store: Store;
  readonly #forecasts: ForecastDesk;
  readonly #remembered = new BoundedMap<string, Remembered>(REMEMBERED_CELLS);
  readonly #asking = new Map<string, Promise<CellKnown>>();
  readonly #onAsked: (cellId: string) => void;

  /** @param onAsked - Is told of each cell of which the services are asked. */
  constructor(store: Store, forecasts: ForecastDesk, onAsked: (cellId: string) => void = () => undefined) {
    this.#store = store;
    this.#forecasts = forecasts;
    this.#onAsked = onAsked;
  }

  /** What is fresh; else what another process is just fetching; else what the services say. */
  async known(cell: Cell, wish: CellWish): Promise<CellKnown> {
    const fresh = await this.fresh(cell, wish);
    if (fresh !== undefined) return fresh;
    await this.#waitForOthers(cell, wish);
    return this.gathered(cell, wish);
  }

  /** The same without waiting for others: for who holds the row that says to fetch. */
  async gathered(cell: Cell, wish: CellWish): Promise<CellKnown> {
    const underWay = this.#asking.get(cell.id);
    if (underWay !== undefined) return underWay;
    const asking = this.#freshOrAsked(cell, wish).finally(() => this.#asking.delete(cell.id));
    this.#asking.set(cell.id, asking);
    return asking;
  }

  async #freshOrAsked(cell: Cell, wish: CellWish): Promise<CellKnown> {
    return (await this.fresh(cell, wish)) ?? this.#asked(cell, wish);
  }

  /** What is known without asking anybody, while it is fresh. */
  async fresh(cell: Cell, { night, now }: CellWish): Promise<CellKnown | undefined> {
    const isFresh = ({ freshUntil, forecast }: Remembered) =>
      freshUntil > now && !isFromTheFuture(forecast, now) && reaches(forecast, night.sunrise);
    const remembered = this.#remembered.get(cell.id);
    if (remembered !== undefined && isFresh(remembered)) return { kind: 'known', ...remembered };
    const kept = await this.#store.weather.forecast(cell.id);
    if (kept === undefined || kept.freshUntil <= now) return undefined;
    const read = this.#read(kept);
    return read !== undefined && isFresh(read) ? { kind: 'known', ...read } : undefined;
  }

  #read(kept: CellForecast): Remembered | undefined {
    const news = newsFrom(kept.text);
    if (news === undefined) return undefined;
    const read = { ...news, freshUntil: kept.freshUntil };
    this.#remembered.set(kept.cellId, read);
    return read;
  }

  /** A row that somebody holds says that a fetch is under way. */
  async #waitForOthers(cell: Cell, wish: CellWish): Promise<void> {
    const until = performance.now() + WAIT_FOR_OTHERS_MS;
    while (performance.now() < until && !this.#asking.has(cell.id)) {
      const rows = await this.#store.deliveries.ofNight(cellPlace(cell.id), wish.name);
      if (!rows.some(({ state }) => state === 'sending')) return;
      await pause(LOOK_AGAIN_MS);
      if ((await this.fresh(cell, wish)) !== undefined) return;
    }
  }

  async #asked(cell: Cell, { night, now }: CellWish): Promise<CellKnown> {
    this.#onAsked(cell.id);
    const past = await this.#store.weather.hours(cell.id, hoursFrom(now, -PAST_H), now);
    const pastKnown = tellOfYesterday(past, now);
    const [official, told] = await Promise.all([
      this.#forecasts.warningsFor(cell.place, now, { nightly: true }),
      this.#forecasts.forecastFor(cell.place, now, { night, pastKnown, nightly: true }).catch(noneIfNone),
    ]);
    if (told === undefined) return this.#lastKept(cell, { night, now }, official);
    const news = { forecast: pastKnown ? withKeptPast(told, past) : told, official };
    await this.#keep(cell, news, { now, backH: pastKnown ? KEPT_BACK_H : PAST_H });
    return { kind: 'known', ...news };
  }

  async #keep(cell: Cell, news: CellNews, { now, backH }: { now: Date; backH: number }): Promise<void> {
    const { forecast } = news;
    const old = forecast.notes.some(({ code }) => code === 'stored-forecast');
    const freshUntil = old ? now : new Date(now.getTime() + FRESH_MIN * MS_PER_MIN);
    this.#remembered.set(cell.id, { ...news, freshUntil });
    if (old) return;
    const hours = hoursBetween(forecast, hoursFrom(now, -backH), hoursFrom(now, KEPT_AHEAD_H));
    await this.#store.weather.keepHours(cell.id, hours, now);
    const { service } = forecast;
    await this.#store.weather.keepForecast({
      cellId: cell.id,
      service,
      fetchedAt: now,
      freshUntil,
      text: newsText(news),
    });
  }

  /** When no service answers: what was kept, with its age, while it is young enough to reckon with. */
  async #lastKept(
    cell: Cell,
    { night, now }: Pick<CellWish, 'night' | 'now'>,
    official: OfficialWarnings,
  ): Promise<CellKnown> {
    const kept = await this.#store.weather.forecast(cell.id);
    const last = kept === undefined ? undefined : newsFrom(kept.text)?.forecast;
    if (last === undefined || isStale(last, now) || !reaches(last, night.sunrise)) {
      return { kind: 'unknown', last, official };
    }
    const ageH = Math.max(0, now.getTime() - last.fetchedAt.getTime()) / MS_PER_H;
    const notes = [...notesWithAge(last, now), { code: 'stored-forecast' as const, ageH }];
    return { kind: 'known', forecast: { ...last, notes }, official };
  }
}

/** That no service could answer is an answer here; anything else is a fault. */
function noneIfNone(error: unknown): undefined {
  if (error instanceof NoForecastError) return undefined;
  throw error;
}

function hoursFrom(at: Date, hours: number): Date {
  return new Date(at.getTime() + hours * MS_PER_H);
}
