import { type FrameBuild, WALL_KEYS } from '../../../rules/index.ts';
import type { Bed, BedFacts, Planting } from '../port/beds.ts';
import type { BedRow, PlantingRow } from '../schema.ts';
import { chunks, type Db, instant } from './row-values.ts';

/** Beds with the covers and plantings that belong to them, in the order of the rows. */
export async function bedsFrom(db: Db, rows: readonly BedRow[]): Promise<readonly Bed[]> {
  const covers = new Map<string, string[]>();
  const plantings = new Map<string, Planting[]>();
  for (const part of chunks(rows)) {
    const ids = part.map((row) => row.id);
    for (const row of await coverRows(db, ids)) listIn(covers, row.bed_id).push(row.cover);
    for (const row of await plantingRows(db, ids)) listIn(plantings, row.bed_id).push(plantingFrom(row));
  }
  return rows.map((row) => bedFrom(row, covers.get(row.id) ?? [], plantings.get(row.id) ?? []));
}

function coverRows(db: Db, bedIds: readonly string[]) {
  return db
    .selectFrom('bed_cover')
    .select(['bed_id', 'cover'])
    .where('bed_id', 'in', bedIds)
    .orderBy('bed_id')
    .orderBy('position')
    .execute();
}

function plantingRows(db: Db, bedIds: readonly string[]) {
  return db
    .selectFrom('planting')
    .selectAll()
    .where('bed_id', 'in', bedIds)
    .orderBy('bed_id')
    .orderBy('position')
    .execute();
}

export function listIn<T>(lists: Map<string, T[]>, key: string): T[] {
  const list = lists.get(key) ?? [];
  lists.set(key, list);
  return list;
}

function bedFrom(row: BedRow, covers: readonly string[], plantings: readonly Planting[]): Bed {
  return {
    id: row.id,
    memberId: row.member_id,
    siteId: row.site_id,
    name: row.name,
    soil: row.soil,
    mulch: row.mulch ?? undefined,
    frame: frameFrom(row),
    hardeningNote: row.hardening_note ?? undefined,
    covers,
    coversSince: instant(row.covers_since_ms),
    plantings,
    since: instant(row.since_ms),
  };
}

export function plantingFrom(row: PlantingRow): Planting {
  const { hardening_fraction: fraction, hardening_ms: ms } = row;
  return {
    id: row.id,
    crop: row.crop,
    stage: row.stage,
    since: row.since,
    hardened: row.hardened === null ? undefined : row.hardened === 1,
    sown: row.sown ?? undefined,
    setOut: row.set_out ?? undefined,
    hardening: fraction === null || ms === null ? undefined : { fraction, at: instant(ms) },
  };
}

type FrameRow = Pick<
  BedRow,
  'frame_walls' | 'frame_depth_m' | 'frame_length_m' | 'frame_back_m' | 'frame_front_m' | 'frame_facing_deg'
>;

/** The schema sees to it that a frame is there whole or not at all. */
function frameFrom(row: FrameRow): FrameBuild | undefined {
  const walls = WALL_KEYS.find((key) => key === row.frame_walls);
  if (walls === undefined) return undefined;
  return {
    walls,
    depthM: row.frame_depth_m ?? 0,
    lengthM: row.frame_length_m ?? 0,
    backM: row.frame_back_m ?? 0,
    frontM: row.frame_front_m ?? 0,
    facingDeg: row.frame_facing_deg ?? 0,
  };
}

export function frameRow(frame: BedFacts['frame']): FrameRow {
  return {
    frame_walls: frame?.walls ?? null,
    frame_depth_m: frame?.depthM ?? null,
    frame_length_m: frame?.lengthM ?? null,
    frame_back_m: frame?.backM ?? null,
    frame_front_m: frame?.frontM ?? null,
    frame_facing_deg: frame?.facingDeg ?? null,
  };
}
