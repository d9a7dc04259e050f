import { bedNight, type CoverKey, ordinaryNight, soilOf } from '../../../rules/index.ts';
import { type Departures, referenceLows } from '../../rules/covers/reference-night.ts';
import type { ComparedRow, Comparison, LeftOutRow } from './comparison.ts';

/** Where the night may be wrong: the states in which covers disappoint, against what was seen in them. */
export function limitComparisons(): readonly Comparison[] {
  return [
    {
      quantity: 'Air and leaf near the ground, dry and perforated film',
      unit: 'K',
      source: 'Leuning, Savage, Sugiyama, Oregon, Guttormsen, NC State',
      standing: 'read',
      tolerance: 'the range as printed',
      rows: [...groundRows(), ...dryFilmRows()],
      leftOut: UNSEEN,
    },
    {
      quantity: 'Share of the gain left in wind, and after a sunless day',
      unit: 'share',
      source: 'NC State 2011 and extension: about half',
      standing: 'memory',
      tolerance: 'half, give or take a fifth',
      rows: [...windRows(), ...sunlessRows()],
    },
    {
      quantity: 'Snow on a tunnel, cover on the leaf',
      unit: 'K',
      source: 'textbooks and growers',
      standing: 'memory',
      tolerance: 'the range as remembered',
      rows: [...snowRows(), ...touchRows()],
    },
  ];
}

const HALF_HOUR_MS = 1_800_000;
const SUNSET = new Date('2025-12-01T21:36Z');
const DRY: Departures = { soil: soilOf('dry') };
const DRY_MULCHED: Departures = { soil: soilOf('dry', 'plastic') };

const UNSEEN: readonly LeftOutRow[] = [
  {
    id: 'wet fabric before a freeze, a risk (NC State R075)',
    reason:
      'Only dew on a cover is known, and it makes one warmer. Rain-soaked fabric sags on leaves and freezes there: not computed.',
  },
  {
    id: 'flapping covers bruise leaves (NC State R049)',
    reason: 'Bruises are no temperature; bare leaves in wind above 5 m/s are judged 1.5 K more tender.',
  },
  {
    id: 'frozen ground',
    reason:
      'No measured gain over frozen soil was found. Computed: a film tunnel gains half of what it does over soil at 6 °C.',
  },
  {
    id: 'big lids, cold corners, frost creeping in from the sides',
    reason:
      'One bed is one column: lids of 4 by 8 and 8 by 16 ft come out alike within 0.1 K. Plants near the edge are colder.',
  },
  {
    id: 'roots in cold soil',
    reason:
      'No trial gives soil and shoulder together. Judged by the computed soil surface, some kelvin colder than 10 cm down.',
  },
  {
    id: 'two weeks without sun: barrels froze and the gain fell (R045)',
    reason: 'No number. The soil is started from the week’s air, so its cooling counts; jugs start with the soil.',
  },
];

function groundRows(): readonly ComparedRow[] {
  const below = [0.5, 1, 2, 3, 5].map((windMPerS) => {
    const { run, leafLowIndex, leafC } = referenceLows([], { windMPerS });
    return range(
      `bare leaf below the air beside it, ${windMPerS} m/s (Leuning & Cremer 1988)`,
      (run.cropLevelAirC[leafLowIndex] ?? Number.NaN) - leafC,
      [1, 3],
    );
  });
  const { outsideC } = referenceLows([]);
  return [...below, range('canopy air below the shelter, clear and calm (NC State R073)', -4 - outsideC, [1, 4])];
}

function dryFilmRows(): readonly ComparedRow[] {
  const lateK = (covers: readonly CoverKey[], departures: Departures) => {
    const { airC, outsideC } = referenceLows(covers, departures);
    return airC - outsideC;
  };
  const leafK = (departures: Departures) =>
    referenceLows(['low-tunnel'], departures).leafC - referenceLows([], departures).leafC;
  const perforatedK = referenceLows(['low-tunnel']).leafC - referenceLows(['low-tunnel-perforated']).leafC;
  return [
    range('inside less outside air in the first hours after sunset, dry soil (Savage 1980)', duskK(DRY), COLDER),
    range(
      'the same over moist soil (Savage 1980)',
      duskK({}),
      COLDER,
      'Over moist soil the computed film is wet before dusk, while the air outside is already cooling at the ground. A reading at dusk is not the night’s gain and is not used as such.',
    ),
    range(
      'film tunnel late on a clear night, dry mulched soil (Sugiyama 1967)',
      lateK(['low-tunnel'], DRY_MULCHED),
      COLDER,
    ),
    range('leaf under film over dry mulched soil less bare leaf (Oregon State 1988)', leafK(DRY_MULCHED), [-2.8, 0.6]),
    range(
      'the same in 3 m/s',
      leafK({ ...DRY_MULCHED, windMPerS: 3 }),
      [-2.8, 0.6],
      'Wind warms the bare leaf at once and the dry tunnel hardly; flutter and the gaps of a real tunnel mix its air. Too cold is the safe side.',
    ),
    range('perforation lowers the night (Guttormsen 1972)', perforatedK, [0, 1]),
  ];
}

const COLDER = [Number.NEGATIVE_INFINITY, 0] as const;

/** Lowest inside less outside air within three hours of sunset under a high tunnel. [K] */
function duskK(departures: Departures): number {
  const { run } = referenceLows(['high-tunnel'], departures);
  let lowK = Number.POSITIVE_INFINITY;
  for (const [index, atMs] of run.timesMs.entries()) {
    if (atMs < SUNSET.getTime() || atMs > SUNSET.getTime() + 6 * HALF_HOUR_MS) continue;
    lowK = Math.min(lowK, (run.airC[index] ?? Number.NaN) - (run.cropLevelAirC[index] ?? Number.NaN));
  }
  return lowK;
}

const ABOUT_HALF = [0.3, 0.7] as const;

function windRows(): readonly ComparedRow[] {
  const protectionK = (covers: readonly CoverKey[], windMPerS: number) =>
    referenceLows(covers, { windMPerS }).leafC - referenceLows([], { windMPerS }).leafC;
  const left = (covers: readonly CoverKey[]) => protectionK(covers, 5) / protectionK(covers, 1);
  return [
    range('heavy fabric on hoops, 5 m/s', left(['row-cover-heavy', 'hoops']), ABOUT_HALF),
    range(
      'light fabric on hoops, 5 m/s',
      left(['row-cover-light', 'hoops']),
      ABOUT_HALF,
      'In wind the computed light fabric dries, leaks and chills; a real one flutters and stirs the air. Too cold is the safe side.',
    ),
    range('film tunnel, 5 m/s', left(['low-tunnel']), ABOUT_HALF),
    range('glass frame, 5 m/s', left(['cold-frame']), ABOUT_HALF),
    range('high tunnel, 5 m/s', left(['high-tunnel']), ABOUT_HALF),
  ];
}

const SOFT_EXCUSE =
  'The rule counts the whole warmth that a day leaves. Here the soil is the same on both nights; a run of dull days cools it, which the week’s mean brings in.';

function sunlessRows(): readonly ComparedRow[] {
  const left = (covers: readonly CoverKey[]) => protectionAfter(covers, 1) / protectionAfter(covers, 0);
  return [
    range('fabric on hoops after an overcast day', left(['row-cover-medium', 'hoops']), ABOUT_HALF, SOFT_EXCUSE),
    range('film tunnel after an overcast day', left(['low-tunnel']), ABOUT_HALF, SOFT_EXCUSE),
    range('glass frame after an overcast day', left(['cold-frame']), ABOUT_HALF, SOFT_EXCUSE),
  ];
}

/** Leaf protection on a clear night after a day of the given cloud. [K] */
function protectionAfter(covers: readonly CoverKey[], dayCloudFraction: number): number {
  const plain = ordinaryNight(-4);
  const sunsetH = (plain.window.from.getTime() - plain.weather.first.getTime()) / 3_600_000;
  const weather = {
    ...plain.weather,
    cloudFraction: plain.weather.cloudFraction.map((cloud, hour) => (hour < sunsetH ? dayCloudFraction : cloud)),
  };
  const leafC = (keys: readonly CoverKey[]) => {
    const night = bedNight({ ...plain, weather, bed: { covers: keys } });
    if (night.kind !== 'night') throw new Error(night.problem);
    return night.leafLowC;
  };
  return leafC(covers) - leafC([]);
}

function snowRows(): readonly ComparedRow[] {
  const plainC = referenceLows(['low-tunnel']).leafC;
  const addedK = referenceLows(['low-tunnel'], { duskSnowM: 0.1 }).leafC - plainC;
  return [range('10 cm of snow on a film tunnel, 6 to 15 °F', addedK, [3.3, 8.3])];
}

/** A cover on the leaves runs this much below the air beside them, and so do the leaves that it touches. */
function touchRows(): readonly ComparedRow[] {
  return (['tarp', 'row-cover-light'] as const).map((cover) => {
    const { run, leafLowIndex } = referenceLows([cover]);
    const belowK = (run.airC[leafLowIndex] ?? Number.NaN) - (run.coverC[leafLowIndex] ?? Number.NaN);
    return range(`${cover} on the leaves, below the air beside them`, belowK, [2, 4]);
  });
}

function range(id: string, ours: number, theirs: readonly [number, number], excuse?: string): ComparedRow {
  return { id, ours, theirs, tolerance: 0, ...(excuse !== undefined && { excuse }) };
}
