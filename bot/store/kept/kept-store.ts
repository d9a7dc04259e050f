import { sql } from 'kysely';
import type { Engine } from '../engine/opened-database.ts';
import type { MemberExport, Store } from '../store.ts';
import { KeptBeds } from './beds.ts';
import { KeptChannels } from './channels.ts';
import { KeptCoveredMarks } from './covered-marks.ts';
import { KeptDeliveries } from './deliveries.ts';
import { eraseMember, exportMember } from './member-data.ts';
import { KeptMembers } from './members.ts';
import { KeptOutcomes } from './outcomes.ts';
import { KeptPlantings } from './plantings.ts';
import { KeptPredictions } from './predictions.ts';
import { KeptReadings } from './readings.ts';
import type { Db } from './row-values.ts';
import { KeptShed } from './shed.ts';
import { KeptSites } from './sites.ts';
import { KeptWeather } from './weather.ts';

const PROBE = 'probe';
/** More than fits into room that is left over in pages. */
const PROBE_BYTES = 65_536;

/** The store over a database that is open, durable and up to date. */
export class KeptStore implements Store {
  readonly members: KeptMembers;
  readonly sites: KeptSites;
  readonly beds: KeptBeds;
  readonly plantings: KeptPlantings;
  readonly shed: KeptShed;
  readonly channels: KeptChannels;
  readonly deliveries: KeptDeliveries;
  readonly readings: KeptReadings;
  readonly predictions: KeptPredictions;
  readonly outcomes: KeptOutcomes;
  readonly covered: KeptCoveredMarks;
  readonly weather: KeptWeather;
  readonly #db: Db;
  readonly #engine: Engine;
  readonly #afterClose: () => void;
  readonly #disk: { isFull: boolean };

  constructor(db: Db, engine: Engine, afterClose: () => void, disk = { isFull: false }) {
    this.#disk = disk;
    this.members = new KeptMembers(db);
    this.sites = new KeptSites(db);
    this.beds = new KeptBeds(db);
    this.plantings = new KeptPlantings(db);
    this.shed = new KeptShed(db);
    this.channels = new KeptChannels(db);
    this.deliveries = new KeptDeliveries(db, engine);
    this.readings = new KeptReadings(db);
    this.predictions = new KeptPredictions(db);
    this.outcomes = new KeptOutcomes(db);
    this.covered = new KeptCoveredMarks(db);
    this.weather = new KeptWeather(db);
    this.#db = db;
    this.#engine = engine;
    this.#afterClose = afterClose;
  }

  exportMember(memberId: string): Promise<MemberExport | undefined> {
    return exportMember(this.#db, memberId);
  }

  eraseMember(memberId: string): Promise<boolean> {
    return eraseMember(this.#db, this.#engine, memberId);
  }

  async ping(): Promise<void> {
    await sql`select 1`.execute(this.#db);
    // A full disk still reads: only a write tells whether there is room again.
    if (this.#disk.isFull) await this.#tryToWrite();
  }

  async #tryToWrite(): Promise<void> {
    const at = new Date(0);
    const probe = { cellId: PROBE, service: PROBE, fetchedAt: at, freshUntil: at, text: ' '.repeat(PROBE_BYTES) };
    await this.weather.keepForecast(probe);
    await this.#db.deleteFrom('cell_forecast').where('cell_id', '=', PROBE).execute();
    this.#disk.isFull = false;
  }

  async close(): Promise<void> {
    await this.#db.destroy();
    this.#afterClose();
  }
}
