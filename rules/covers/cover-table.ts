import type { SourceKey } from '../sources.ts';
import type { CoverKey } from './cover-key.ts';
import type { MaterialKey } from './material-table.ts';

/**
 * What a thing does in a stack: `fabric` passes light and stays on; `cloth` and `mat` come off by day; `litter` lies
 * loose on the crop; a `bell` is turned over one plant; `hoops` and `jugs` are no covers.
 */
export type CoverKind =
  | 'fabric'
  | 'cloth'
  | 'mat'
  | 'litter'
  | 'snow'
  | 'low-tunnel'
  | 'frame'
  | 'high-tunnel'
  | 'bell'
  | 'hoops'
  | 'jugs';

/** What a cover adds when it lies on another one for the night: its resistance with the air trapped under it. */
export interface NightAddition {
  readonly resistanceM2KPerW: number;
  readonly heatCapacityJPerM2K: number;
  readonly source: SourceKey;
}

/** What is known of a cover besides its material. */
export interface CoverFacts {
  readonly kind: CoverKind;
  /** Singular, as a grower in North America or in Britain says it. */
  readonly american: string;
  readonly british: string;
  /** Takes “a” or “an”: a blanket, but straw. */
  readonly counted: boolean;
  /** Skins from outside to inside; none for hoops and jugs. */
  readonly materials: readonly MaterialKey[];
  /**
   * Trouble to add it this afternoon: 1 is fetching a blanket, 2 carrying and weighing down, 3 setting up.
   * Absent when nobody adds one for a night. All judgement.
   */
  readonly effort?: number;
  readonly nightAddition?: NightAddition;
  /** A bell that lets no light through comes off every morning. */
  readonly offByDay?: boolean;
}

/**
 * Every cover by its key. Names use the trade's weights. A `row-cover` of unknown weight is reckoned as the medium one,
 * `leaves` as straw (judgement).
 */
export const COVERS: Readonly<Record<CoverKey, CoverFacts>> = {
  'row-cover': {
    kind: 'fabric',
    american: 'row cover',
    british: 'fleece',
    counted: false,
    materials: ['fabric-medium'],
    effort: 1,
  },
  'row-cover-light': {
    kind: 'fabric',
    american: 'light row cover (0.55 oz/yd²)',
    british: 'light fleece (19 g/m²)',
    counted: false,
    materials: ['fabric-light'],
    effort: 1,
  },
  'row-cover-medium': {
    kind: 'fabric',
    american: 'medium row cover (0.9 oz/yd²)',
    british: 'fleece (30 g/m²)',
    counted: false,
    materials: ['fabric-medium'],
    effort: 1,
  },
  'row-cover-heavy': {
    kind: 'fabric',
    american: 'heavy row cover (1.5 oz/yd²)',
    british: 'heavy fleece (50 g/m²)',
    counted: false,
    materials: ['fabric-heavy'],
    effort: 1,
  },
  sheet: {
    kind: 'cloth',
    american: 'bed sheet',
    british: 'bed sheet',
    counted: true,
    materials: ['sheet'],
    effort: 1,
    // Its own 0.012 and a trapped air film of 0.1, as for the others.
    nightAddition: { resistanceM2KPerW: 0.11, heatCapacityJPerM2K: 200, source: 'judgement' },
  },
  blanket: {
    kind: 'cloth',
    american: 'blanket',
    british: 'blanket',
    counted: true,
    materials: ['blanket'],
    effort: 1,
    nightAddition: { resistanceM2KPerW: 0.2, heatCapacityJPerM2K: 1500, source: 'cloth-memory' },
  },
  quilt: {
    kind: 'cloth',
    american: 'quilt',
    british: 'duvet',
    counted: true,
    materials: ['quilt'],
    effort: 1,
    nightAddition: { resistanceM2KPerW: 0.4, heatCapacityJPerM2K: 3000, source: 'cloth-memory' },
  },
  tarp: {
    kind: 'cloth',
    american: 'tarp',
    british: 'tarpaulin',
    counted: true,
    materials: ['tarp'],
    effort: 1,
    nightAddition: { resistanceM2KPerW: 0.12, heatCapacityJPerM2K: 500, source: 'cloth-memory' },
  },
  mat: {
    kind: 'mat',
    american: 'straw mat',
    british: 'straw mat',
    counted: true,
    materials: ['mat'],
    effort: 2,
    nightAddition: { resistanceM2KPerW: 0.6, heatCapacityJPerM2K: 6000, source: 'cloth-memory' },
  },
  straw: {
    kind: 'litter',
    american: 'loose straw',
    british: 'loose straw',
    counted: false,
    materials: ['litter'],
    effort: 2,
  },
  leaves: {
    kind: 'litter',
    american: 'dry leaves',
    british: 'dry leaves',
    counted: false,
    materials: ['litter'],
    effort: 2,
  },
  snow: { kind: 'snow', american: 'snow', british: 'snow', counted: false, materials: ['snow'] },
  'low-tunnel': {
    kind: 'low-tunnel',
    american: 'low tunnel',
    british: 'low tunnel',
    counted: true,
    materials: ['film'],
    effort: 3,
  },
  'low-tunnel-perforated': {
    kind: 'low-tunnel',
    american: 'perforated low tunnel',
    british: 'perforated low tunnel',
    counted: true,
    materials: ['film-perforated'],
    effort: 3,
  },
  'low-tunnel-infrared': {
    kind: 'low-tunnel',
    american: 'low tunnel of infrared film',
    british: 'low tunnel of thermic film',
    counted: true,
    materials: ['film-infrared'],
    effort: 3,
  },
  'cold-frame': {
    kind: 'frame',
    american: 'cold frame',
    british: 'cold frame',
    counted: true,
    materials: ['glass'],
    effort: 4,
  },
  'cold-frame-twin-wall': {
    kind: 'frame',
    american: 'twin-wall cold frame',
    british: 'twin-wall cold frame',
    counted: true,
    materials: ['twin-wall-4'],
    effort: 4,
  },
  'cold-frame-film': {
    kind: 'frame',
    american: 'cold frame with a film light',
    british: 'cold frame with a film light',
    counted: true,
    materials: ['film'],
    effort: 4,
  },
  'high-tunnel': {
    kind: 'high-tunnel',
    american: 'high tunnel',
    british: 'polytunnel',
    counted: true,
    materials: ['film'],
  },
  'high-tunnel-double': {
    kind: 'high-tunnel',
    american: 'double-skin high tunnel',
    british: 'double-skin polytunnel',
    counted: true,
    materials: ['film', 'film'],
  },
  'greenhouse-glass': {
    kind: 'high-tunnel',
    american: 'glass greenhouse',
    british: 'glasshouse',
    counted: true,
    materials: ['glass'],
  },
  'greenhouse-twin-wall': {
    kind: 'high-tunnel',
    american: 'twin-wall greenhouse',
    british: 'twin-wall greenhouse',
    counted: true,
    materials: ['twin-wall-4'],
  },
  bucket: {
    kind: 'bell',
    american: 'bucket',
    british: 'bucket',
    counted: true,
    materials: ['bucket'],
    effort: 1,
    offByDay: true,
  },
  cloche: {
    kind: 'bell',
    american: 'jug cloche',
    british: 'bottle cloche',
    counted: true,
    materials: ['bottle-plastic'],
    effort: 1,
  },
  cardboard: {
    kind: 'bell',
    american: 'cardboard box',
    british: 'cardboard box',
    counted: true,
    materials: ['cardboard'],
    effort: 1,
    offByDay: true,
  },
  'water-wall': {
    kind: 'bell',
    american: 'wall of water',
    british: 'wall of water',
    counted: true,
    materials: ['water-tubes'],
    effort: 3,
  },
  burlap: {
    kind: 'cloth',
    american: 'burlap',
    british: 'hessian',
    counted: false,
    materials: ['burlap'],
    effort: 1,
    nightAddition: { resistanceM2KPerW: 0.11, heatCapacityJPerM2K: 450, source: 'judgement' },
  },
  'bubble-wrap': {
    kind: 'cloth',
    american: 'bubble wrap',
    british: 'bubble wrap',
    counted: false,
    materials: ['bubble-wrap'],
    effort: 1,
    nightAddition: { resistanceM2KPerW: 0.23, heatCapacityJPerM2K: 400, source: 'judgement' },
  },
  hoops: { kind: 'hoops', american: 'hoops', british: 'hoops', counted: false, materials: [], effort: 1 },
  jugs: { kind: 'jugs', american: 'water jugs', british: 'water bottles', counted: false, materials: [], effort: 2 },
};
