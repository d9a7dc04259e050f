import type { Database } from './schema.ts';

/** A column's kind; a question mark where it may be null. */
export type ColumnKind = 'text' | 'text?' | 'integer' | 'integer?' | 'instant' | 'instant?' | 'real' | 'real?';

interface Table<Row> {
  /** The primary key: the order in which rows are copied. */
  readonly key: readonly (keyof Row & string)[];
  readonly columns: Readonly<Record<keyof Row, ColumnKind>>;
}

/** Every table of the latest schema, owners before what they own. A test holds it against both engines. */
export const TABLES: { readonly [Name in keyof Database]: Table<Database[Name]> } = {
  member: {
    key: ['id'],
    columns: { id: 'text', units: 'text?', locale: 'text?', direct_messages: 'integer', since_ms: 'instant' },
  },
  site: {
    key: ['id'],
    columns: {
      id: 'text',
      member_id: 'text',
      name: 'text',
      name_key: 'text',
      latitude_deg: 'real',
      longitude_deg: 'real',
      height_m: 'real?',
      exposure: 'text',
      time_zone: 'text',
      horizon_deg: 'text',
      is_default: 'integer',
      since_ms: 'instant',
    },
  },
  bed: {
    key: ['id'],
    columns: {
      id: 'text',
      member_id: 'text',
      site_id: 'text',
      name: 'text',
      name_key: 'text',
      soil: 'text',
      mulch: 'text?',
      frame_walls: 'text?',
      frame_depth_m: 'real?',
      frame_length_m: 'real?',
      frame_back_m: 'real?',
      frame_front_m: 'real?',
      frame_facing_deg: 'real?',
      hardening_note: 'text?',
      covers_since_ms: 'instant',
      since_ms: 'instant',
    },
  },
  bed_cover: { key: ['bed_id', 'position'], columns: { bed_id: 'text', position: 'integer', cover: 'text' } },
  planting: {
    key: ['id'],
    columns: {
      id: 'text',
      bed_id: 'text',
      crop: 'text',
      stage: 'text',
      since: 'text',
      hardened: 'integer?',
      hardening_fraction: 'real?',
      hardening_ms: 'instant?',
      position: 'integer',
      sown: 'text?',
      set_out: 'text?',
    },
  },
  spare_cover: { key: ['member_id', 'cover'], columns: { member_id: 'text', cover: 'text', count: 'integer' } },
  channel: {
    key: ['id'],
    columns: {
      id: 'text',
      kind: 'text',
      guild_id: 'text?',
      started_by: 'text?',
      lead_h: 'real',
      morning_post: 'integer',
      all_clear: 'integer',
      paused_reason: 'text?',
      paused_ms: 'instant?',
      since_ms: 'instant',
    },
  },
  channel_member: {
    key: ['channel_id', 'member_id'],
    columns: { channel_id: 'text', member_id: 'text', site_id: 'text?', wants_direct: 'integer', since_ms: 'instant' },
  },
  delivery: {
    key: ['place_id', 'night', 'kind'],
    columns: {
      place_id: 'text',
      night: 'text',
      kind: 'text',
      due_ms: 'instant',
      give_up_ms: 'instant',
      state: 'text',
      attempts: 'integer',
      worker: 'text?',
      first_claimed_ms: 'instant?',
      claimed_ms: 'instant?',
      lease_ms: 'instant',
      message_id: 'text?',
      last_problem: 'text?',
    },
  },
  reading: {
    key: ['id'],
    columns: {
      id: 'text',
      member_id: 'text',
      bed_id: 'text',
      night: 'text',
      outside_low_c: 'real?',
      under_cover_low_c: 'real?',
      origin: 'text',
      doubt: 'text?',
      covers: 'text',
      recorded_ms: 'instant',
    },
  },
  prediction: {
    key: ['bed_id', 'night', 'issued_ms'],
    columns: {
      member_id: 'text',
      bed_id: 'text',
      night: 'text',
      issued_ms: 'instant',
      service: 'text',
      lead_h: 'real',
      outside_low_c: 'real',
      outside_spread_k: 'real',
      under_cover_low_c: 'real',
      under_cover_spread_k: 'real',
      book_outside_low_c: 'real',
      book_outside_spread_k: 'real',
      book_under_cover_low_c: 'real',
      book_under_cover_spread_k: 'real',
      leaf_low_c: 'real',
      leaf_spread_k: 'real',
      verdict: 'text',
      covers: 'text',
      step: 'text?',
    },
  },
  outcome: {
    key: ['bed_id', 'night', 'crop'],
    columns: {
      member_id: 'text',
      bed_id: 'text',
      night: 'text',
      crop: 'text',
      outcome: 'text',
      leaf_low_c: 'real',
      hardening_fraction: 'real',
      recorded_ms: 'instant',
    },
  },
  covered_mark: {
    key: ['bed_id', 'night'],
    columns: { member_id: 'text', bed_id: 'text', night: 'text', marked_ms: 'instant' },
  },
  cell_hour: {
    key: ['cell_id', 'at_ms'],
    columns: {
      cell_id: 'text',
      at_ms: 'instant',
      air_c: 'real',
      dew_point_c: 'real?',
      cloud_fraction: 'real?',
      wind_10m_m_per_s: 'real?',
      global_w_per_m2: 'real?',
      fetched_ms: 'instant',
    },
  },
  cell_forecast: {
    key: ['cell_id'],
    columns: { cell_id: 'text', service: 'text', fetched_ms: 'instant', fresh_until_ms: 'instant', body: 'text' },
  },
};

export const TABLE_NAMES = Object.keys(TABLES) as readonly (keyof Database)[];
