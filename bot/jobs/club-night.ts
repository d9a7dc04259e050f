import { setImmediate as nextTurn } from 'node:timers/promises';
import { MS_PER_H } from '../../rules/index.ts';
import { type HourlyForecast, inForce, type OfficialWarnings } from '../forecast/forecast.ts';
import { NightForecastError } from '../forecast/forecast-error.ts';
import { nightLowC } from '../forecast/night-low.ts';
import { learnedGarden } from '../learning/learned-site.ts';
import { bedsOf } from '../learning/told-night.ts';
import type { GardenBed, Garden as LaidOut } from '../outlook/garden.ts';
import { type NightOutlook, nightOutlook, type OutlooksShared } from '../outlook/night-outlook.ts';
import { SharedNights } from '../outlook/shared-nights.ts';
import type { Bed } from '../store/port/beds.ts';
import type { Garden, JoinedGarden } from '../store/port/channels.ts';
import type { DeliveryKey } from '../store/port/deliveries.ts';
import type { Store } from '../store/store.ts';
import type { LastKnown } from '../text/no-forecast-words.ts';
import { parties, type Timed } from './apart.ts';
import { Calendar, type CalendarNight } from './calendar.ts';
import { type Cell, cellOf } from './cell.ts';
import type { CellDesk } from './cell-desk.ts';
import { suffixOf } from './work.ts';

/** A member's garden and its night, worked out. */
export interface GardenNight {
  readonly garden: Garden;
  readonly cell: Cell;
  readonly night: CalendarNight;
  readonly outlook: NightOutlook;
  /** Which kept bed each bed of the outlook is. */
  readonly bedOf: ReadonlyMap<GardenBed, Bed>;
  readonly official: OfficialWarnings;
}

/** A garden for whose night no forecast can be had. */
export interface UnknownNight {
  readonly garden: Garden;
  readonly night: CalendarNight;
  readonly last: LastKnown;
  readonly official: OfficialWarnings;
}

/** A night of all gardens of a channel. Where the sun does not set there is none. */
export interface ClubNight {
  readonly name: string;
  readonly known: readonly GardenNight[];
  readonly unknown: readonly UnknownNight[];
  /** Gardens that could not be worked out through a fault of ours. */
  readonly failedCount: number;
}

/** Does the work, or tells the operator why not and returns undefined: one garden's fault stays with it. */
export type Isolated = <T>(work: () => Promise<T>) => Promise<T | undefined>;

/** What counts as lately. */
const RECENT_H = 14 * 24;

/** Works out nights; what gardens share is worked out once. */
export class NightDesk {
  readonly calendar = new Calendar();
  #shared: OutlooksShared = new SharedNights(false);
  readonly #store: Store;
  readonly #cells: CellDesk;
  readonly #isolated: Isolated;

  constructor(store: Store, cells: CellDesk, isolated: Isolated) {
    this.#store = store;
    this.#cells = cells;
    this.#isolated = isolated;
  }

  get shared(): OutlooksShared {
    return this.#shared;
  }

  /** Lets go of what was worked out: it counts for the hour, and may be some megabytes. */
  forgetShared(): void {
    this.#shared = new SharedNights(false);
  }

  async clubNight(gardens: readonly Garden[], name: string, now: Date): Promise<ClubNight> {
    const known: GardenNight[] = [];
    const unknown: UnknownNight[] = [];
    let failedCount = 0;
    for (const garden of gardens) {
      const night = await this.#isolated(() => this.gardenNight(garden, name, now));
      if (night === undefined) failedCount += 1;
      else if (night !== 'no-night') {
        if ('outlook' in night) known.push(night);
        else unknown.push(night);
      }
      // Whoever asks the bot something meanwhile is answered between two gardens.
      await nextTurn();
    }
    return { name, known, unknown, failedCount };
  }

  /**
   * Works out a night to come without asking any service, so that it need not be when it is due.
   *
   * @returns Undefined while a forecast is not there yet.
   */
  async prepare(gardens: readonly Garden[], name: string, at: Date): Promise<readonly GardenNight[] | undefined> {
    const known: GardenNight[] = [];
    for (const garden of gardens) {
      const night = this.nightOf(garden, name);
      if (night === undefined) continue;
      if ((await this.#cells.fresh(cellOf(garden.site), { night, name, now: at })) === undefined) return undefined;
      const worked = await this.#isolated(() => this.gardenNight(garden, name, at));
      if (worked !== undefined && worked !== 'no-night' && 'outlook' in worked) known.push(worked);
      await nextTurn();
    }
    return known;
  }

  nightOf({ site }: Pick<Garden, 'site'>, name: string): CalendarNight | undefined {
    return this.calendar.named({ ...cellOf(site).place, timeZone: site.timeZone }, name);
  }

  /** Of a channel's gardens those whom a row of the ledger looks after. */
  lookedAfter(gardens: readonly JoinedGarden[], { night, kind }: DeliveryKey, leadH: number): readonly JoinedGarden[] {
    const timed = gardens.flatMap((garden) => {
      const shutBy = this.nightOf(garden, night)?.shutBy;
      return shutBy === undefined ? [] : { garden, at: shutBy, since: garden.since };
    });
    return partyOf(timed, kind, leadH);
  }

  /** The same by sunrise. */
  wokenWith(gardens: readonly JoinedGarden[], { night, kind }: DeliveryKey): readonly JoinedGarden[] {
    const timed = gardens.flatMap((garden) => {
      const place = { ...cellOf(garden.site).place, timeZone: garden.site.timeZone };
      const sunrise = this.calendar.dayNamed(place, night)?.sunrise;
      return sunrise === undefined ? [] : { garden, at: sunrise, since: garden.since };
    });
    return partyOf(timed, kind, 0);
  }

  async gardenNight(garden: Garden, name: string, now: Date): Promise<GardenNight | UnknownNight | 'no-night'> {
    const cell = cellOf(garden.site);
    const night = this.nightOf(garden, name);
    if (night === undefined) return 'no-night';
    const told = await this.#cells.known(cell, { night, name, now });
    const official = inForce(told.official, night);
    // On the cell's middle, so that neighbours share what is worked out.
    const laidOut = { ...(await learnedGarden(this.#store, garden, now)), ...cell.place };
    const outlook = told.kind === 'unknown' ? undefined : this.#outlook(laidOut, told.forecast, night, now);
    if (outlook === undefined) {
      const last = told.kind === 'unknown' ? told.last : told.forecast;
      return { garden, night, last: await this.#lastKnown(cell, last, night, now), official };
    }
    return { garden, cell, night, outlook, bedOf: bedsOf(laidOut.beds, garden.beds), official };
  }

  /** Undefined where the forecast cannot carry the night. */
  #outlook(garden: LaidOut, forecast: HourlyForecast, night: CalendarNight, now: Date): NightOutlook | undefined {
    try {
      return nightOutlook(garden, forecast, night, now, this.#shared);
    } catch (error) {
      if (error instanceof NightForecastError) return undefined;
      throw error;
    }
  }

  /** The old forecast's low for the night, else the coldest of the last two weeks. */
  async #lastKnown(cell: Cell, last: HourlyForecast | undefined, night: CalendarNight, now: Date): Promise<LastKnown> {
    const lowC = last && nightLowC(last, night);
    if (last !== undefined && lowC !== undefined) {
      return { kind: 'old-forecast', lowC, ageMs: now.getTime() - last.updatedAt.getTime() };
    }
    const hours = await this.#store.weather.hours(cell.id, new Date(now.getTime() - RECENT_H * MS_PER_H), now);
    if (hours.length === 0) return { kind: 'nothing' };
    return { kind: 'coldest-lately', lowC: Math.min(...hours.map(({ airC }) => airC)) };
  }
}

function partyOf(
  timed: readonly (Timed & { readonly garden: JoinedGarden })[],
  kind: string,
  leadH: number,
): readonly JoinedGarden[] {
  const party = parties(timed, leadH).find(({ suffix }) => suffix === suffixOf(kind));
  const members = new Set(party?.all.map(({ garden }) => garden));
  // In order of joining, as they came.
  return timed.flatMap(({ garden }) => (members.has(garden) ? garden : []));
}
