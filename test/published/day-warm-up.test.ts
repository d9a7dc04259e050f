import { describe, expect, test } from 'vitest';
import {
  type CoverKey,
  commonFrame,
  coverStack,
  type FrameBuild,
  type NightInput,
  nightRun,
  PROP_SIZES_M,
  proppedLight,
  soilOf,
  soilProfile,
  windowHigh,
} from '../../rules/index.ts';
import { dailyCurveC } from '../../rules/night/daily-curve.ts';

const HOUR_MS = 3_600_000;
/**
 * Soil "3 to 11 °C by season" is not printed day by day, nor is the dew point or the run-up. The specification's own worked case P09
 * (45.4 °C, met to 0.8 K elsewhere) lies 2.4 K above its row of this table, so the table is held to 3 K.
 */
const TABLE_K = 3;

interface PrintedDay {
  readonly date: string;
  readonly lowC: number;
  readonly highC: number;
  /** Our reading of "3 to 11 °C by season"; the upper ones of December, January and March stand in the worked cases. */
  readonly soilC: number;
  readonly deepC: number;
  /** Highest thermometer among the leaves: F30, PE tunnel, glass in wood, 10 mm twin-wall in straw, high tunnel. [°C] */
  readonly thermometerC: readonly number[];
}

// Source: table of section 15 of the physics page, computed there by another implementation: covers shut, clear, 1.5 m/s, 40° N.
const PRINTED: readonly PrintedDay[] = [
  { date: '2025-10-25', lowC: 2, highC: 15, soilC: 11, deepC: 12, thermometerC: [23, 29, 33, 38, 27] },
  { date: '2025-12-01', lowC: -4, highC: 8, soilC: 6, deepC: 9, thermometerC: [14, 18, 22, 26, 16] },
  { date: '2025-12-21', lowC: -8, highC: 2, soilC: 4, deepC: 7, thermometerC: [8, 13, 16, 21, 11] },
  { date: '2026-01-20', lowC: -10, highC: 0, soilC: 3, deepC: 6, thermometerC: [8, 13, 17, 23, 11] },
  { date: '2026-02-15', lowC: -5, highC: 6, soilC: 4, deepC: 6, thermometerC: [17, 22, 26, 32, 21] },
  { date: '2026-03-15', lowC: -1, highC: 12, soilC: 8, deepC: 8, thermometerC: [25, 32, 36, 43, 30] },
];

const STRAW: FrameBuild = { ...commonFrame(40), walls: 'straw-bale', twinWallMm: 10 };
const COLUMNS: readonly (readonly [title: string, keys: readonly CoverKey[], frame: FrameBuild])[] = [
  ['fabric of 30 g/m² on hoops', ['row-cover-medium', 'hoops'], commonFrame(40)],
  ['film tunnel', ['low-tunnel'], commonFrame(40)],
  ['glass frame with wooden walls', ['cold-frame'], commonFrame(40)],
  ['twin-wall frame with straw-bale walls', ['cold-frame-twin-wall'], STRAW],
  ['high tunnel', ['high-tunnel'], commonFrame(40)],
];

/** Times of the table are local solar time: noon at longitude 0 is 12:00 UTC, but for the equation of time. */
function clearDay(day: PrintedDay, windMPerS: number, keys: readonly CoverKey[], frame: FrameBuild): NightInput {
  const { date, lowC, highC, soilC, deepC } = day;
  const start = new Date(Date.parse(`${date}T07:00:00Z`) - 24 * HOUR_MS);
  const hours = Array.from({ length: 36 }, (_, hour) => hour);
  const stack = coverStack(keys, { frame });
  if (stack.kind !== 'stack') throw new Error('the covers cannot lie so');
  return {
    site: { latitudeDeg: 40, longitudeDeg: 0, elevationM: 0, skyViewFraction: 1, shelterFraction: 0.8, inversionK: 3 },
    start,
    end: new Date(start.getTime() + 35 * HOUR_MS),
    weather: {
      first: start,
      stepH: 1,
      screenC: hours.map((hour) => dailyCurveC({ lowC, rangeK: highC - lowC, peakAfterH: 7 }, hour)),
      dewPointC: hours.map(() => lowC - 3),
      cloudFraction: hours.map(() => 0),
      wind10MPerS: hours.map(() => windMPerS),
    },
    soil: soilOf('moist'),
    soilProfile: soilProfile(soilC, deepC),
    canopy: { leafAreaIndex: 1, leafSizeM: 0.05 },
    stack: stack.day,
  };
}

function dayHighC(input: NightInput): number {
  const morning = new Date(input.start.getTime() + 24 * HOUR_MS);
  return windowHigh(nightRun(input), 'thermometerC', morning, input.end).valueC;
}

describe('a clear day under shut covers', () => {
  for (const [column, [title, keys, frame]] of COLUMNS.entries()) {
    test.each(PRINTED.map((day) => [day.date, day] as const))(
      `%s: ${title} lies within 3 K of the printed high`,
      (_date, day) => {
        const printedC = day.thermometerC[column] ?? Number.NaN;
        expect(Math.abs(dayHighC(clearDay(day, 1.5, keys, frame)) - printedC)).toBeLessThan(TABLE_K);
      },
    );
  }

  test('all thirty printed highs are checked', () => {
    expect(PRINTED.flatMap(({ thermometerC }) => thermometerC)).toHaveLength(30);
    expect(COLUMNS).toHaveLength(5);
  });

  // R021, gardener's diary, January 2010, read: a frame rose 14 to 18 K above outside air on sunny January days.
  test('in January lifts a glass frame 14 to 18 K above the outside air, as a diary tells', () => {
    const january = PRINTED[3];
    if (january === undefined) throw new Error('no January');
    const riseK = dayHighC(clearDay(january, 1.5, ['cold-frame'], commonFrame(40))) - january.highC;
    expect(riseK).toBeGreaterThan(14);
    expect(riseK).toBeLessThan(18.5);
  });
});

describe('a glass frame propped open on 15 March', () => {
  // Source: section 15 again: highs for front openings of 0, 1, 2, 5, 10 and 20 cm, at 1 and at 3 m/s.
  const OPENED: readonly (readonly [windMPerS: number, highsC: readonly number[]])[] = [
    [1, [36.6, 34.3, 32.1, 27.6, 24.0, 21.1]],
    [3, [35.0, 30.8, 28.1, 24.0, 21.3, 20.1]],
  ];
  const SIZES_M = [0, 0.01, 0.02, 0.05, 0.1, 0.2];

  test.each(OPENED)('at %d m/s lies within 1.5 K of each printed high', (windMPerS, highsC) => {
    const march = PRINTED[5];
    if (march === undefined) throw new Error('no March');
    const shut = clearDay(march, windMPerS, ['cold-frame'], commonFrame(40));
    for (const [index, sizeM] of SIZES_M.entries()) {
      const vent = { ...proppedLight(sizeM, 1.22, 2.44), from: shut.start, to: shut.end };
      const openedC = dayHighC({ ...shut, stack: { ...shut.stack, vent } });
      expect(Math.abs(openedC - (highsC[index] ?? Number.NaN))).toBeLessThan(1.5);
    }
  });

  test('sizes that growers set are those of the specification', () => {
    expect(PROP_SIZES_M).toEqual([0.01, 0.02, 0.05, 0.1, 0.15, 0.2, 0.3]);
  });
});
