import { type CoverKey, soilOf } from '../../../rules/index.ts';
import { REFERENCE_LOW_C, REFERENCE_NIGHT_COVER, referenceLows } from '../../rules/covers/reference-night.ts';
import table from '../cover-gains.json' with { type: 'json' };
import type { ComparedRow, Comparison, LeftOutRow } from './comparison.ts';

const K_PER_F = 5 / 9;
/** Ranges are printed in whole °F: half of one either way. */
const ROUNDING_K = 0.3;
/** One printed figure is a middle of nights that differ by about this much under a single cover. */
const SINGLE_FIGURE_K = 1;

interface Night {
  readonly lowC?: number;
  readonly soil10CmC?: number;
  readonly deepC?: number;
  readonly windMPerS?: number;
  readonly mulch?: 'plastic';
  readonly freshSnowM?: number;
}

/** A printed gain, and what night and measure of ours stands for it. */
export interface GainRow {
  readonly cover: string;
  readonly structure: string;
  readonly gainLowF: number | null;
  readonly gainHighF: number | null;
  readonly source: string;
  readonly standing: string;
  readonly covers?: CoverKey[];
  readonly measure?: 'leaf' | 'air' | 'net' | 'added';
  readonly over?: CoverKey[];
  readonly night?: Night;
  /** Why the computed gain lies outside. */
  readonly exception?: string;
  readonly notCompared?: string;
}

export const GAIN_ROWS = table.rows as readonly GainRow[];

const REMEMBERED = 'extension, trade and textbooks';

/** Which kind of voice a source is; remembered ones are one kind. */
const KINDS: Readonly<Record<string, string>> = {
  'Penn State Extension educator weblog "Veggie garden 101: frost protection", 2020-04': 'handbooks and extension',
  'FAO "Frost protection" vol. 1 (Snyder & de Melo-Abreu 2005), ch. 6, page of row covers': 'handbooks and extension',
  'FAO "Frost protection" vol. 1 (Snyder & de Melo-Abreu 2005), ch. 6, page of row covers (citing Schultz 1961)':
    'handbooks and extension',
  'Olle & Bender review, Jogeva Plant Breeding Institute, Estonia (c. 2010)': 'handbooks and extension',
  'Acta Horticulturae 187 paper 20 (abstract)': 'trials',
  'Michigan State University M.S. thesis, 2014 (abstract)': 'trials',
  'Oregon State University North Willamette 1988, Tables 1-2': 'trials',
  'Savage 1980, Agrochemophysica 12:5-13 (abstract)': 'trials',
  'Purdue University Extension, strawberry winter protection, 2018': 'trials',
  'Michigan State University student organic farm, 2004': 'growers and farms',
  'Purdue University Extension, Feb 2023': 'growers and farms',
  'Grower weblog, Red Lodge, Montana, 2026-01': 'growers and farms',
  'Farm weblog, Anton Chico, New Mexico, 2010-11': 'growers and farms',
  'Garden weblog, Forsyth, Missouri, 2008': 'growers and farms',
  'Garden weblog and comment, 2011': 'growers and farms',
  "Film maker's row-cover sheet (web, undated)": 'trade and web',
  'Garden reference website on row covers (undated)': 'trade and web',
  'Unsourced popular article on frost cloth (undated)': 'trade and web',
  "Retail growers' row-cover guide (web, undated)": 'trade and web',
};

/** Gains under covers on the model's reference night, or on the night that a row names. */
export function coverGainComparisons(): readonly Comparison[] {
  const kinds = ['trials', 'growers and farms', 'handbooks and extension', 'trade and web', REMEMBERED];
  return kinds.map((kind) => {
    const printed = GAIN_ROWS.filter((row) => kindOf(row) === kind);
    return {
      quantity: 'Gain under a cover',
      unit: 'K',
      source: kind,
      standing: kind === REMEMBERED ? 'memory' : 'read',
      tolerance:
        'half a degree Fahrenheit at the ends of a range, 1 K about a single figure: nights differ by that much',
      rows: printed.filter(({ notCompared }) => notCompared === undefined).map(comparedRow),
      leftOut: printed.flatMap(leftOutRow),
    };
  });
}

function kindOf({ source, standing }: GainRow): string {
  if (standing === 'MEMORY') return REMEMBERED;
  const kind = KINDS[source];
  if (kind === undefined) throw new Error(`No kind is known of the source "${source}"`);
  return kind;
}

function comparedRow(row: GainRow): ComparedRow {
  const lowK = (row.gainLowF ?? Number.NEGATIVE_INFINITY) * K_PER_F;
  const highK = (row.gainHighF ?? Number.POSITIVE_INFINITY) * K_PER_F;
  return {
    id: named(row),
    ours: computedGainK(row),
    theirs: [lowK, highK],
    tolerance: row.gainLowF === row.gainHighF ? SINGLE_FIGURE_K : ROUNDING_K,
    ...(row.exception !== undefined && { excuse: row.exception }),
  };
}

function leftOutRow(row: GainRow): LeftOutRow[] {
  return row.notCompared === undefined ? [] : [{ id: named(row), reason: row.notCompared }];
}

function named({ cover, structure, gainLowF, gainHighF, source }: GainRow): string {
  return `${cover}, ${structure}, ${gainLowF ?? 'up'} to ${gainHighF ?? 'more'} °F — ${source}`;
}

function computedGainK({ covers = [], measure, over = [], night = {} }: GainRow): number {
  const { mulch, freshSnowM, ...departures } = night;
  const lows = (keys: CoverKey[]) =>
    referenceLows(keys, {
      ...departures,
      soil: soilOf('moist', mulch),
      stack: {
        nightCover: REFERENCE_NIGHT_COVER,
        ...(freshSnowM !== undefined && { snowDepthM: freshSnowM, snowIsFresh: true }),
      },
    });
  const under = lows(covers);
  if (measure === 'air') return under.airC - under.outsideC;
  if (measure === 'net') return under.leafC - (departures.lowC ?? REFERENCE_LOW_C);
  return under.leafC - lows(measure === 'added' ? over : []).leafC;
}
