import { sql } from 'kysely';
import { afterAll, beforeAll, beforeEach, describe } from 'vitest';
import { TABLE_NAMES } from '../../../bot/store/columns-table.ts';
import { databaseAddress } from '../../../bot/store/database-address.ts';
import { openDatabase, openStore } from '../../../bot/store/open-store.ts';
import { postgresEngine, sqliteEngine, type TestEngine } from './engines.ts';
import { bedsSpecification } from './specification/beds.ts';
import { channelsSpecification } from './specification/channels.ts';
import { deliveriesSpecification } from './specification/deliveries.ts';
import { membersSpecification } from './specification/members.ts';
import { privacySpecification } from './specification/privacy.ts';
import { readingsSpecification } from './specification/readings.ts';
import { schemaSpecification } from './specification/schema.ts';
import { sitesSpecification } from './specification/sites.ts';
import { valuesSpecification } from './specification/values.ts';
import { weatherSpecification } from './specification/weather.ts';
import { openedOnly, type World } from './specification/world.ts';

const PARTS = {
  'the members': membersSpecification,
  'the sites': sitesSpecification,
  'the beds': bedsSpecification,
  'the channels': channelsSpecification,
  'the ledger': deliveriesSpecification,
  'the readings': readingsSpecification,
  'the weather': weatherSpecification,
  'odd values': valuesSpecification,
  'what belongs to a member': privacySpecification,
  'the schema': schemaSpecification,
};

describe.each([sqliteEngine(), postgresEngine()])('$name', (engine) => {
  const world = emptiedWorld(engine);
  for (const [name, specification] of Object.entries(PARTS)) {
    describe(name, () => specification(world));
  }
});

/** One database for all tests of an engine, emptied before each: a new one on PostgreSQL takes half a second. */
function emptiedWorld(engine: TestEngine): World {
  let world: Omit<World, 'engine'> | undefined;
  let unavailable: string | undefined;
  beforeAll(async () => {
    unavailable = await engine.start();
    if (unavailable !== undefined) return;
    const url = await engine.freshUrl();
    const store = await openStore(url);
    const { db } = await openDatabase(databaseAddress(url));
    world = { url, store, db };
  });
  afterAll(async () => {
    await world?.store.close();
    await world?.db.destroy();
    await engine.stop();
  });
  beforeEach(async (test) => {
    if (unavailable !== undefined) test.skip(unavailable);
    for (const table of TABLE_NAMES.toReversed())
      await sql`delete from ${sql.table(table)}`.execute(openedOnly(world).db);
  });
  return {
    engine: engine.name,
    get url() {
      return openedOnly(world).url;
    },
    get store() {
      return openedOnly(world).store;
    },
    get db() {
      return openedOnly(world).db;
    },
  };
}
