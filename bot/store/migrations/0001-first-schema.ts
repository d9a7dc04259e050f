import { type ColumnDataType, type CreateTableBuilder, type Kysely, sql } from 'kysely';

// The words of both engines at once: text, bigint, integer and double precision mean the same to SQLite and PostgreSQL.
const WHOLE: ColumnDataType = 'integer';
const INSTANT: ColumnDataType = 'bigint';
const REAL: ColumnDataType = 'double precision';

type Building = CreateTableBuilder<string, string>;

/** The schema of the first release. Never edited: what changes later is a migration of its own. */
export async function createFirstSchema(db: Kysely<unknown>): Promise<void> {
  const tables = [
    ...[memberTable, siteTable, bedTable, bedCoverTable, plantingTable, spareCoverTable],
    ...[channelTable, channelMemberTable, deliveryTable],
    ...[readingTable, predictionTable, outcomeTable, coveredMarkTable, cellHourTable, cellForecastTable],
  ];
  for (const table of tables) await table(db).execute();
  await createIndexes(db);
}

function memberTable(db: Kysely<unknown>): Building {
  return db.schema
    .createTable('member')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('units', 'text')
    .addColumn('locale', 'text')
    .addColumn('direct_messages', WHOLE, (c) => c.notNull())
    .addColumn('since_ms', INSTANT, (c) => c.notNull())
    .addCheckConstraint('member_id_length', sql`length(id) between 1 and 200`)
    .addCheckConstraint('member_units', sql`units in ('metric', 'us')`)
    .addCheckConstraint('member_direct', sql`direct_messages in (0, 1)`);
}

function siteTable(db: Kysely<unknown>): Building {
  return db.schema
    .createTable('site')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('member_id', 'text', (c) => c.notNull().references('member.id').onDelete('cascade'))
    .addColumn('name', 'text', (c) => c.notNull())
    .addColumn('name_key', 'text', (c) => c.notNull())
    .addColumn('latitude_deg', REAL, (c) => c.notNull())
    .addColumn('longitude_deg', REAL, (c) => c.notNull())
    .addColumn('height_m', REAL)
    .addColumn('exposure', 'text', (c) => c.notNull())
    .addColumn('time_zone', 'text', (c) => c.notNull())
    .addColumn('horizon_deg', 'text', (c) => c.notNull())
    .addColumn('is_default', WHOLE, (c) => c.notNull())
    .addColumn('since_ms', INSTANT, (c) => c.notNull())
    .addUniqueConstraint('site_name', ['member_id', 'name_key'])
    .addUniqueConstraint('site_owner', ['member_id', 'id'])
    .addCheckConstraint('site_name_length', sql`length(name) between 1 and 100`)
    .addCheckConstraint('site_latitude', sql`latitude_deg between -90 and 90`)
    .addCheckConstraint('site_longitude', sql`longitude_deg between -180 and 180`)
    .addCheckConstraint('site_exposure', sql`exposure in ('open', 'sheltered', 'hollow', 'ridge', 'wall')`)
    .addCheckConstraint('site_default', sql`is_default in (0, 1)`);
}

function bedTable(db: Kysely<unknown>): Building {
  return (
    db.schema
      .createTable('bed')
      .addColumn('id', 'text', (c) => c.primaryKey().notNull())
      .addColumn('member_id', 'text', (c) => c.notNull())
      .addColumn('site_id', 'text', (c) => c.notNull())
      .addColumn('name', 'text', (c) => c.notNull())
      .addColumn('name_key', 'text', (c) => c.notNull())
      .addColumn('soil', 'text', (c) => c.notNull())
      .addColumn('mulch', 'text')
      .addColumn('frame_walls', 'text')
      .addColumn('frame_depth_m', REAL)
      .addColumn('frame_length_m', REAL)
      .addColumn('frame_back_m', REAL)
      .addColumn('frame_front_m', REAL)
      .addColumn('frame_facing_deg', REAL)
      .addColumn('hardening_note', 'text')
      .addColumn('covers_since_ms', INSTANT, (c) => c.notNull())
      .addColumn('since_ms', INSTANT, (c) => c.notNull())
      .addUniqueConstraint('bed_name', ['member_id', 'site_id', 'name_key'])
      .addUniqueConstraint('bed_owner', ['member_id', 'id'])
      // Both columns together: a bed cannot lie on another member's site.
      .addForeignKeyConstraint('bed_site', ['member_id', 'site_id'], 'site', ['member_id', 'id'], (f) =>
        f.onDelete('cascade'),
      )
      .addCheckConstraint('bed_name_length', sql`length(name) between 1 and 100`)
      .addCheckConstraint(
        'bed_frame_whole',
        sql`(frame_walls is null) = (frame_depth_m is null) and (frame_walls is null) = (frame_length_m is null)
        and (frame_walls is null) = (frame_back_m is null) and (frame_walls is null) = (frame_front_m is null)
        and (frame_walls is null) = (frame_facing_deg is null)`,
      )
  );
}

function bedCoverTable(db: Kysely<unknown>): Building {
  return db.schema
    .createTable('bed_cover')
    .addColumn('bed_id', 'text', (c) => c.notNull().references('bed.id').onDelete('cascade'))
    .addColumn('position', WHOLE, (c) => c.notNull())
    .addColumn('cover', 'text', (c) => c.notNull())
    .addPrimaryKeyConstraint('bed_cover_key', ['bed_id', 'position']);
}

function plantingTable(db: Kysely<unknown>): Building {
  return db.schema
    .createTable('planting')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('bed_id', 'text', (c) => c.notNull().references('bed.id').onDelete('cascade'))
    .addColumn('crop', 'text', (c) => c.notNull())
    .addColumn('stage', 'text', (c) => c.notNull())
    .addColumn('since', 'text', (c) => c.notNull())
    .addColumn('hardened', WHOLE)
    .addColumn('hardening_fraction', REAL)
    .addColumn('hardening_ms', INSTANT)
    .addColumn('position', WHOLE, (c) => c.notNull())
    .addCheckConstraint('planting_stage', sql`stage in ('just-set-out', 'growing', 'grown')`)
    .addCheckConstraint('planting_hardened', sql`hardened in (0, 1)`)
    .addCheckConstraint('planting_hardening', sql`hardening_fraction between 0 and 1`)
    .addCheckConstraint('planting_followed', sql`(hardening_fraction is null) = (hardening_ms is null)`);
}

function spareCoverTable(db: Kysely<unknown>): Building {
  return db.schema
    .createTable('spare_cover')
    .addColumn('member_id', 'text', (c) => c.notNull().references('member.id').onDelete('cascade'))
    .addColumn('cover', 'text', (c) => c.notNull())
    .addColumn('count', WHOLE, (c) => c.notNull())
    .addPrimaryKeyConstraint('spare_cover_key', ['member_id', 'cover'])
    .addCheckConstraint('spare_cover_count', sql`count >= 1`);
}

function channelTable(db: Kysely<unknown>): Building {
  return db.schema
    .createTable('channel')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('kind', 'text', (c) => c.notNull())
    .addColumn('guild_id', 'text')
    .addColumn('started_by', 'text', (c) => c.references('member.id').onDelete('set null'))
    .addColumn('lead_h', REAL, (c) => c.notNull())
    .addColumn('morning_post', WHOLE, (c) => c.notNull())
    .addColumn('all_clear', WHOLE, (c) => c.notNull())
    .addColumn('paused_reason', 'text')
    .addColumn('paused_ms', INSTANT)
    .addColumn('since_ms', INSTANT, (c) => c.notNull())
    .addCheckConstraint('channel_kind', sql`kind in ('channel', 'direct')`)
    .addCheckConstraint('channel_lead', sql`lead_h between 0 and 24`)
    .addCheckConstraint('channel_morning', sql`morning_post in (0, 1)`)
    .addCheckConstraint('channel_all_clear', sql`all_clear in (0, 1)`)
    .addCheckConstraint('channel_pause', sql`(paused_reason is null) = (paused_ms is null)`);
}

function channelMemberTable(db: Kysely<unknown>): Building {
  return (
    db.schema
      .createTable('channel_member')
      .addColumn('channel_id', 'text', (c) => c.notNull().references('channel.id').onDelete('cascade'))
      .addColumn('member_id', 'text', (c) => c.notNull().references('member.id').onDelete('cascade'))
      .addColumn('site_id', 'text')
      .addColumn('wants_direct', WHOLE, (c) => c.notNull())
      .addColumn('since_ms', INSTANT, (c) => c.notNull())
      .addPrimaryKeyConstraint('channel_member_key', ['channel_id', 'member_id'])
      // No cascade: who removes a site first sets its members back to their default.
      .addForeignKeyConstraint('channel_member_site', ['member_id', 'site_id'], 'site', ['member_id', 'id'])
      .addCheckConstraint('channel_member_direct', sql`wants_direct in (0, 1)`)
  );
}

function deliveryTable(db: Kysely<unknown>): Building {
  return db.schema
    .createTable('delivery')
    .addColumn('place_id', 'text', (c) => c.notNull())
    .addColumn('night', 'text', (c) => c.notNull())
    .addColumn('kind', 'text', (c) => c.notNull())
    .addColumn('due_ms', INSTANT, (c) => c.notNull())
    .addColumn('give_up_ms', INSTANT, (c) => c.notNull())
    .addColumn('state', 'text', (c) => c.notNull())
    .addColumn('attempts', WHOLE, (c) => c.notNull())
    .addColumn('worker', 'text')
    .addColumn('first_claimed_ms', INSTANT)
    .addColumn('claimed_ms', INSTANT)
    .addColumn('lease_ms', INSTANT, (c) => c.notNull())
    .addColumn('message_id', 'text')
    .addColumn('last_problem', 'text')
    .addPrimaryKeyConstraint('delivery_key', ['place_id', 'night', 'kind'])
    .addCheckConstraint('delivery_state', sql`state in ('due', 'sending', 'sent', 'gave_up', 'missed')`);
}

function readingTable(db: Kysely<unknown>): Building {
  return db.schema
    .createTable('reading')
    .addColumn('id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('member_id', 'text', (c) => c.notNull())
    .addColumn('bed_id', 'text', (c) => c.notNull())
    .addColumn('night', 'text', (c) => c.notNull())
    .addColumn('outside_low_c', REAL)
    .addColumn('under_cover_low_c', REAL)
    .addColumn('origin', 'text', (c) => c.notNull())
    .addColumn('doubt', 'text')
    .addColumn('covers', 'text', (c) => c.notNull())
    .addColumn('recorded_ms', INSTANT, (c) => c.notNull())
    .addUniqueConstraint('reading_night', ['bed_id', 'night'])
    .addForeignKeyConstraint('reading_bed', ['member_id', 'bed_id'], 'bed', ['member_id', 'id'], (f) =>
      f.onDelete('cascade'),
    )
    .addCheckConstraint('reading_origin', sql`origin in ('typed', 'form', 'logger')`)
    .addCheckConstraint('reading_says_something', sql`outside_low_c is not null or under_cover_low_c is not null`);
}

function predictionTable(db: Kysely<unknown>): Building {
  return db.schema
    .createTable('prediction')
    .addColumn('member_id', 'text', (c) => c.notNull())
    .addColumn('bed_id', 'text', (c) => c.notNull())
    .addColumn('night', 'text', (c) => c.notNull())
    .addColumn('issued_ms', INSTANT, (c) => c.notNull())
    .addColumn('service', 'text', (c) => c.notNull())
    .addColumn('lead_h', REAL, (c) => c.notNull())
    .addColumn('outside_low_c', REAL, (c) => c.notNull())
    .addColumn('outside_spread_k', REAL, (c) => c.notNull())
    .addColumn('under_cover_low_c', REAL, (c) => c.notNull())
    .addColumn('under_cover_spread_k', REAL, (c) => c.notNull())
    .addColumn('book_outside_low_c', REAL, (c) => c.notNull())
    .addColumn('book_outside_spread_k', REAL, (c) => c.notNull())
    .addColumn('book_under_cover_low_c', REAL, (c) => c.notNull())
    .addColumn('book_under_cover_spread_k', REAL, (c) => c.notNull())
    .addColumn('leaf_low_c', REAL, (c) => c.notNull())
    .addColumn('leaf_spread_k', REAL, (c) => c.notNull())
    .addColumn('verdict', 'text', (c) => c.notNull())
    .addColumn('covers', 'text', (c) => c.notNull())
    .addPrimaryKeyConstraint('prediction_key', ['bed_id', 'night', 'issued_ms'])
    .addForeignKeyConstraint('prediction_bed', ['member_id', 'bed_id'], 'bed', ['member_id', 'id'], (f) =>
      f.onDelete('cascade'),
    );
}

function outcomeTable(db: Kysely<unknown>): Building {
  return db.schema
    .createTable('outcome')
    .addColumn('member_id', 'text', (c) => c.notNull())
    .addColumn('bed_id', 'text', (c) => c.notNull())
    .addColumn('night', 'text', (c) => c.notNull())
    .addColumn('crop', 'text', (c) => c.notNull())
    .addColumn('outcome', 'text', (c) => c.notNull())
    .addColumn('leaf_low_c', REAL, (c) => c.notNull())
    .addColumn('hardening_fraction', REAL, (c) => c.notNull())
    .addColumn('recorded_ms', INSTANT, (c) => c.notNull())
    .addPrimaryKeyConstraint('outcome_key', ['bed_id', 'night', 'crop'])
    .addForeignKeyConstraint('outcome_bed', ['member_id', 'bed_id'], 'bed', ['member_id', 'id'], (f) =>
      f.onDelete('cascade'),
    )
    .addCheckConstraint('outcome_kind', sql`outcome in ('no-mark', 'leaf-burn', 'lost')`);
}

function coveredMarkTable(db: Kysely<unknown>): Building {
  return db.schema
    .createTable('covered_mark')
    .addColumn('member_id', 'text', (c) => c.notNull())
    .addColumn('bed_id', 'text', (c) => c.notNull())
    .addColumn('night', 'text', (c) => c.notNull())
    .addColumn('marked_ms', INSTANT, (c) => c.notNull())
    .addPrimaryKeyConstraint('covered_mark_key', ['bed_id', 'night'])
    .addForeignKeyConstraint('covered_mark_bed', ['member_id', 'bed_id'], 'bed', ['member_id', 'id'], (f) =>
      f.onDelete('cascade'),
    );
}

function cellHourTable(db: Kysely<unknown>): Building {
  return db.schema
    .createTable('cell_hour')
    .addColumn('cell_id', 'text', (c) => c.notNull())
    .addColumn('at_ms', INSTANT, (c) => c.notNull())
    .addColumn('air_c', REAL, (c) => c.notNull())
    .addColumn('dew_point_c', REAL)
    .addColumn('cloud_fraction', REAL)
    .addColumn('wind_10m_m_per_s', REAL)
    .addColumn('global_w_per_m2', REAL)
    .addColumn('fetched_ms', INSTANT, (c) => c.notNull())
    .addPrimaryKeyConstraint('cell_hour_key', ['cell_id', 'at_ms']);
}

function cellForecastTable(db: Kysely<unknown>): Building {
  return db.schema
    .createTable('cell_forecast')
    .addColumn('cell_id', 'text', (c) => c.primaryKey().notNull())
    .addColumn('service', 'text', (c) => c.notNull())
    .addColumn('fetched_ms', INSTANT, (c) => c.notNull())
    .addColumn('fresh_until_ms', INSTANT, (c) => c.notNull())
    .addColumn('body', 'text', (c) => c.notNull());
}

async function createIndexes(db: Kysely<unknown>): Promise<void> {
  await db.schema
    .createIndex('site_one_default')
    .unique()
    .on('site')
    .column('member_id')
    .where(sql.ref('is_default'), '=', sql.lit(1))
    .execute();
  // The claim must repeat this predicate to the letter, or it reads a year of finished nights.
  await db.schema
    .createIndex('delivery_open')
    .on('delivery')
    .column('due_ms')
    .where(sql<boolean>`state in ('due', 'sending')`)
    .execute();
  for (const [table, column] of [
    ['planting', 'bed_id'],
    ['outcome', 'member_id'],
    ['channel', 'started_by'],
    ['channel_member', 'member_id'],
    ['cell_hour', 'at_ms'],
  ] as const) {
    await db.schema.createIndex(`${table}_${column}`).on(table).column(column).execute();
  }
}
