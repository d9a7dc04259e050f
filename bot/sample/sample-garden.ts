import type { HourlyForecast } from '../forecast/forecast.ts';
import type { Garden } from '../outlook/garden.ts';

/** A garden of our own invention, so that the program can be tried without any account. */
export const SAMPLE_GARDEN: Garden = {
  name: 'Tern Lane Garden (sample)',
  latitudeDeg: 43.1,
  longitudeDeg: -76.3,
  elevationM: 150,
  exposure: 'open',
  timeZone: 'America/New_York',
  shed: ['quilt', 'row-cover-medium'],
  beds: [
    {
      name: 'Frame by the shed',
      covers: ['cold-frame', 'row-cover-medium'],
      plantings: [{ cropId: 'spinach', stage: 'grown', hardeningIndex: 1 }],
    },
    {
      name: 'Long tunnel',
      covers: ['low-tunnel'],
      plantings: [
        { cropId: 'kale', stage: 'grown', hardeningIndex: 1 },
        { cropId: 'tatsoi', stage: 'growing', hardeningIndex: 1 },
      ],
    },
    {
      name: 'High tunnel, middle row',
      covers: ['high-tunnel', 'row-cover-heavy', 'hoops'],
      plantings: [
        { cropId: 'mache', stage: 'growing', hardeningIndex: 1 },
        { cropId: 'claytonia', stage: 'growing', hardeningIndex: 1 },
      ],
    },
    {
      name: 'Root bed',
      covers: ['straw'],
      plantings: [{ cropId: 'parsnip', stage: 'grown', hardeningIndex: 1 }],
    },
  ],
};

/** Noon of the sample day, a little after the sample forecast was last changed. */
export const SAMPLE_NOW = new Date('2026-01-20T17:05:00Z');

const UPDATED_AT = new Date('2026-01-20T16:40:00Z');
const FIRST = new Date('2026-01-18T12:00:00Z');

/** Turning points of the invented weather: hours after the first, air and dew point in °C, cloud, wind in m/s. */
const TURNS: readonly (readonly [hour: number, screenC: number, dewPointC: number, cloud: number, wind: number])[] = [
  [0, -4.5, -7, 0.2, 2],
  [8, 2, -6, 0.4, 3.5],
  [18, -2.5, -5.5, 0.9, 3],
  [24, -3.5, -6, 0.95, 3],
  [32, 0.5, -6, 0.8, 4],
  [42, -3.5, -8, 0.5, 4],
  [48, -5, -9.5, 0.1, 3.5],
  [56, -1.5, -10, 0, 3],
  [62, -5.5, -11, 0, 1.5],
  [68, -6.4, -10.4, 0, 1],
  [72, -7.2, -10.9, 0, 1],
  [80, -0.5, -9, 0.1, 2],
  [90, -4.5, -8, 0.7, 3],
  [96, -5, -7.5, 0.95, 3.5],
  [104, 2, -5, 1, 4],
  [120, -1, -4, 0.9, 3],
  [128, 3, -2, 0.8, 3],
  [144, 0, -3, 0.9, 3],
  [152, 1.5, -6, 0.6, 4],
  [168, -9.5, -13, 0, 1.5],
  [176, -5, -13, 0, 2],
  [192, -13, -16, 0, 1],
  [200, -4, -12, 0.2, 2],
  [216, -9, -12, 0.4, 2],
  [224, 1, -5, 0.9, 3],
];

/** Two days behind and seven ahead, hour by hour. Invented: no place had this weather. */
export function sampleForecast(): HourlyForecast {
  const hours = (TURNS.at(-1)?.[0] ?? 0) + 1;
  const column = (field: 1 | 2 | 3 | 4) => Array.from({ length: hours }, (_, hour) => between(hour, field));
  return {
    service: 'openmeteo',
    invented: true,
    updatedAt: UPDATED_AT,
    fetchedAt: SAMPLE_NOW,
    place: { latitudeDeg: SAMPLE_GARDEN.latitudeDeg, longitudeDeg: SAMPLE_GARDEN.longitudeDeg },
    gridElevationM: 150,
    first: FIRST,
    hours,
    columns: {
      screenC: column(1),
      dewPointC: column(2),
      cloudFraction: column(3),
      wind10MPerS: column(4),
    },
    lowWindows: [],
    credits: [],
    notes: [],
  };
}

function between(hour: number, field: 1 | 2 | 3 | 4): number {
  const next = TURNS.findIndex(([at]) => at >= hour);
  const to = TURNS[next];
  const from = TURNS[Math.max(0, next - 1)];
  if (to === undefined || from === undefined) return 0;
  const span = to[0] - from[0];
  const share = span === 0 ? 1 : (hour - from[0]) / span;
  // Eased, so that afternoons and dawns are round rather than pointed.
  const eased = (1 - Math.cos(Math.PI * share)) / 2;
  return Math.round((from[field] + eased * (to[field] - from[field])) * 100) / 100;
}
