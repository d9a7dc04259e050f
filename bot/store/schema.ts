import type { Stage } from './port/beds.ts';
import type { ChannelKind } from './port/channels.ts';
import type { DeliveryState } from './port/deliveries.ts';
import type { UnitSystem } from './port/members.ts';
import type { OutcomeKind, ReadingOrigin } from './port/readings.ts';
import type { Exposure } from './port/sites.ts';

/**
 * Rows as both engines hold them: ids made by the program, instants in epoch milliseconds, yes and no as 1 and 0, local
 * dates as text, lists as JSON text. A name's key is the name without its case, for finding doubles.
 */
export interface Database {
  readonly member: MemberRow;
  readonly site: SiteRow;
  readonly bed: BedRow;
  readonly bed_cover: BedCoverRow;
  readonly planting: PlantingRow;
  readonly spare_cover: SpareCoverRow;
  readonly channel: ChannelRow;
  readonly channel_member: ChannelMemberRow;
  readonly delivery: DeliveryRow;
  readonly reading: ReadingRow;
  readonly prediction: PredictionRow;
  readonly outcome: OutcomeRow;
  readonly covered_mark: CoveredMarkRow;
  readonly cell_hour: CellHourRow;
  readonly cell_forecast: CellForecastRow;
}

type Flag = 0 | 1;

export interface MemberRow {
  id: string;
  units: UnitSystem | null;
  locale: string | null;
  direct_messages: Flag;
  since_ms: number;
}

export interface SiteRow {
  id: string;
  member_id: string;
  name: string;
  name_key: string;
  latitude_deg: number;
  longitude_deg: number;
  height_m: number | null;
  exposure: Exposure;
  time_zone: string;
  horizon_deg: string;
  is_default: Flag;
  since_ms: number;
}

export interface BedRow {
  id: string;
  member_id: string;
  site_id: string;
  name: string;
  name_key: string;
  soil: string;
  mulch: string | null;
  frame_walls: string | null;
  frame_depth_m: number | null;
  frame_length_m: number | null;
  frame_back_m: number | null;
  frame_front_m: number | null;
  frame_facing_deg: number | null;
  hardening_note: string | null;
  covers_since_ms: number;
  since_ms: number;
}

export interface BedCoverRow {
  bed_id: string;
  /** Zero is the outermost. */
  position: number;
  cover: string;
}

export interface PlantingRow {
  id: string;
  bed_id: string;
  crop: string;
  stage: Stage;
  since: string;
  hardened: Flag | null;
  hardening_fraction: number | null;
  hardening_ms: number | null;
  position: number;
  sown: string | null;
  set_out: string | null;
}

export interface SpareCoverRow {
  member_id: string;
  cover: string;
  count: number;
}

export interface ChannelRow {
  id: string;
  kind: ChannelKind;
  guild_id: string | null;
  started_by: string | null;
  lead_h: number;
  morning_post: Flag;
  all_clear: Flag;
  paused_reason: string | null;
  paused_ms: number | null;
  since_ms: number;
}

export interface ChannelMemberRow {
  channel_id: string;
  member_id: string;
  site_id: string | null;
  wants_direct: Flag;
  since_ms: number;
}

export interface DeliveryRow {
  place_id: string;
  night: string;
  kind: string;
  due_ms: number;
  give_up_ms: number;
  state: DeliveryState;
  attempts: number;
  worker: string | null;
  first_claimed_ms: number | null;
  claimed_ms: number | null;
  /** Zero where nobody holds the row. */
  lease_ms: number;
  message_id: string | null;
  last_problem: string | null;
}

export interface ReadingRow {
  id: string;
  member_id: string;
  bed_id: string;
  night: string;
  outside_low_c: number | null;
  under_cover_low_c: number | null;
  origin: ReadingOrigin;
  doubt: string | null;
  covers: string;
  recorded_ms: number;
}

export interface PredictionRow {
  member_id: string;
  bed_id: string;
  night: string;
  issued_ms: number;
  service: string;
  lead_h: number;
  outside_low_c: number;
  outside_spread_k: number;
  under_cover_low_c: number;
  under_cover_spread_k: number;
  book_outside_low_c: number;
  book_outside_spread_k: number;
  book_under_cover_low_c: number;
  book_under_cover_spread_k: number;
  leaf_low_c: number;
  leaf_spread_k: number;
  verdict: string;
  covers: string;
  step: string | null;
}

export interface OutcomeRow {
  member_id: string;
  bed_id: string;
  night: string;
  crop: string;
  outcome: OutcomeKind;
  leaf_low_c: number;
  hardening_fraction: number;
  recorded_ms: number;
}

export interface CoveredMarkRow {
  member_id: string;
  bed_id: string;
  night: string;
  marked_ms: number;
}

export interface CellHourRow {
  cell_id: string;
  at_ms: number;
  air_c: number;
  dew_point_c: number | null;
  cloud_fraction: number | null;
  wind_10m_m_per_s: number | null;
  global_w_per_m2: number | null;
  fetched_ms: number;
}

export interface CellForecastRow {
  cell_id: string;
  service: string;
  fetched_ms: number;
  fresh_until_ms: number;
  body: string;
}
