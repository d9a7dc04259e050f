/**
 * The covers that a grower can name, by a stable key of our own. A stack is a list of keys from outside to inside.
 * `hoops` directly inside a fabric, sheet, blanket or tarp means that it is held off the leaves; `jugs` are water jugs
 * on the soil. Neither is a cover by itself.
 */
export const COVER_KEYS = [
  'row-cover',
  'row-cover-light',
  'row-cover-medium',
  'row-cover-heavy',
  'sheet',
  'blanket',
  'quilt',
  'tarp',
  'mat',
  'straw',
  'leaves',
  'snow',
  'low-tunnel',
  'low-tunnel-perforated',
  'low-tunnel-infrared',
  'cold-frame',
  'cold-frame-twin-wall',
  'cold-frame-film',
  'high-tunnel',
  'high-tunnel-double',
  'greenhouse-glass',
  'greenhouse-twin-wall',
  'bucket',
  'cloche',
  'cardboard',
  'water-wall',
  'burlap',
  'bubble-wrap',
  'hoops',
  'jugs',
] as const;

export type CoverKey = (typeof COVER_KEYS)[number];

/** What the walls of a cold frame are made of. */
export const WALL_KEYS = ['wood', 'straw-bale', 'log', 'concrete', 'metal'] as const;

export type WallKey = (typeof WALL_KEYS)[number];

/** A cold frame as built. The common one is 4 ft deep, 8 ft long, 12 in at the back and 8 in at the front (common practice). */
export interface FrameBuild {
  readonly walls: WallKey;
  /** Front to back. [m] */
  readonly depthM: number;
  readonly lengthM: number;
  readonly backM: number;
  readonly frontM: number;
  /** Direction that the light faces, from north through east. [°] */
  readonly facingDeg: number;
  /** Thickness of a twin-wall light; cold-frame kits carry 4 mm, which is assumed when absent. [mm] */
  readonly twinWallMm?: 4 | 10;
}
