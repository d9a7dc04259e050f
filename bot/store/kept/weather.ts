import { type Expression, type SqlBool, sql } from 'kysely';
import type { CellForecast, CellHour, Weather } from '../port/weather.ts';
import type { CellForecastRow, CellHourRow } from '../schema.ts';
import { chunks, type Db, instant } from './row-values.ts';

/** Clocks of two processes are never so far apart. */
const AHEAD_MS = 3_600_000;

export class KeptWeather implements Weather {
  readonly #db: Db;

  constructor(db: Db) {
    this.#db = db;
  }

  async keepHours(cellId: string, hours: readonly CellHour[], fetchedAt: Date): Promise<void> {
    // One row per instant, in order: a statement may not meet a row twice, nor two processes wait crosswise.
    const byInstant = new Map(hours.map((hour) => [hour.at.getTime(), hour]));
    const rows = [...byInstant.values()]
      .toSorted((a, b) => a.at.getTime() - b.at.getTime())
      .map((hour) => hourRow(cellId, hour, fetchedAt));
    await this.#db.transaction().execute(async (db) => {
      for (const part of chunks(rows)) {
        await db
          .insertInto('cell_hour')
          .values(part)
          .onConflict((conflict) =>
            conflict
              .columns(['cell_id', 'at_ms'])
              .doUpdateSet((eb) => ({
                air_c: eb.ref('excluded.air_c'),
                dew_point_c: eb.ref('excluded.dew_point_c'),
                cloud_fraction: eb.ref('excluded.cloud_fraction'),
                wind_10m_m_per_s: eb.ref('excluded.wind_10m_m_per_s'),
                global_w_per_m2: eb.ref('excluded.global_w_per_m2'),
                fetched_ms: eb.ref('excluded.fetched_ms'),
              }))
              .where((eb) => isNewer(eb.ref('excluded.fetched_ms'), eb.ref('cell_hour.fetched_ms'))),
          )
          .execute();
      }
    });
  }

  async hours(cellId: string, from: Date, before: Date): Promise<readonly CellHour[]> {
    const rows = await this.#db
      .selectFrom('cell_hour')
      .selectAll()
      .where('cell_id', '=', cellId)
      .where('at_ms', '>=', from.getTime())
      .where('at_ms', '<', before.getTime())
      .orderBy('at_ms')
      .execute();
    return rows.map(hourFrom);
  }

  async keepForecast(forecast: CellForecast): Promise<void> {
    const news: Omit<CellForecastRow, 'cell_id'> = {
      service: forecast.service,
      fetched_ms: forecast.fetchedAt.getTime(),
      fresh_until_ms: forecast.freshUntil.getTime(),
      body: forecast.text,
    };
    await this.#db
      .insertInto('cell_forecast')
      .values({ cell_id: forecast.cellId, ...news })
      .onConflict((conflict) =>
        conflict
          .column('cell_id')
          .doUpdateSet(news)
          .where((eb) => isNewer(eb.ref('excluded.fetched_ms'), eb.ref('cell_forecast.fetched_ms'))),
      )
      .execute();
  }

  async forecast(cellId: string): Promise<CellForecast | undefined> {
    const row = await this.#db.selectFrom('cell_forecast').selectAll().where('cell_id', '=', cellId).executeTakeFirst();
    return row === undefined ? undefined : forecastFrom(row);
  }

  async forget(before: Date): Promise<void> {
    await this.#db.transaction().execute(async (db) => {
      await db.deleteFrom('cell_hour').where('at_ms', '<', before.getTime()).execute();
      await db.deleteFrom('cell_forecast').where('fetched_ms', '<', before.getTime()).execute();
    });
  }
}

/** Of two processes the later fetch stands; one from far ahead is of a clock that has been put right since. */
function isNewer(fetchedMs: Expression<number>, keptMs: Expression<number>) {
  return sql<SqlBool>`(${fetchedMs} >= ${keptMs} or ${keptMs} > ${fetchedMs} + ${sql.lit(AHEAD_MS)})`;
}

function hourRow(cellId: string, hour: CellHour, fetchedAt: Date): CellHourRow {
  return {
    cell_id: cellId,
    at_ms: hour.at.getTime(),
    air_c: hour.airC,
    dew_point_c: hour.dewPointC ?? null,
    cloud_fraction: hour.cloudFraction ?? null,
    wind_10m_m_per_s: hour.wind10MPerS ?? null,
    global_w_per_m2: hour.globalWPerM2 ?? null,
    fetched_ms: fetchedAt.getTime(),
  };
}

function hourFrom(row: CellHourRow): CellHour {
  return {
    at: instant(row.at_ms),
    airC: row.air_c,
    dewPointC: row.dew_point_c ?? undefined,
    cloudFraction: row.cloud_fraction ?? undefined,
    wind10MPerS: row.wind_10m_m_per_s ?? undefined,
    globalWPerM2: row.global_w_per_m2 ?? undefined,
  };
}

function forecastFrom(row: CellForecastRow): CellForecast {
  return {
    cellId: row.cell_id,
    service: row.service,
    fetchedAt: instant(row.fetched_ms),
    freshUntil: instant(row.fresh_until_ms),
    text: row.body,
  };
}
