import { blackBodyWPerM2, STEFAN_BOLTZMANN_W_PER_M2K4 } from '../../rules/constants.ts';
import { HARDINESS_ROWS } from '../../rules/crops/hardiness-list.ts';
import {
  darkWeeks,
  dewPointC,
  dewPointFromHumidityC,
  extraterrestrialMJPerM2,
  pressureFraction,
  psychrometricHPaPerK,
  saturationSlopeHPaPerK,
  saturationVapourHPa,
  sunsetHourAngleRad,
} from '../../rules/index.ts';
import { skyLongwaveWPerM2 } from '../../rules/sky/sky-longwave.ts';
import data from './worked-values.json' with { type: 'json' };

/** One worked value as printed. */
export interface WorkedRow {
  readonly id: string;
  readonly quantity: string;
  readonly inputs: string;
  readonly expected: string;
  readonly unit: string;
  readonly tolerance: number;
  readonly source: string;
}

/**
 * What became of a row. `checked`: within the printed tolerance. `other-definition`: the source and the model define or round the
 * quantity differently; the difference is bounded and the reason given. `not-applicable`: nothing in `rules/` computes it.
 */
export type RowCheck =
  | { readonly kind: 'checked'; readonly ours: number; readonly expected: number; readonly tolerance: number }
  | {
      readonly kind: 'other-definition';
      readonly ours: number;
      readonly expected: number;
      readonly tolerance: number;
      readonly reason: string;
    }
  | { readonly kind: 'not-applicable'; readonly reason: string };

export const WORKED_SOURCES: Readonly<Record<string, { readonly title: string; readonly standing: string }>> =
  data.sources;

export const WORKED_ROWS: readonly WorkedRow[] = data.rows.map(
  ([id = '', quantity = '', inputs = '', expected = '', unit = '', tolerance = '', source = '']) => ({
    id,
    quantity,
    inputs,
    expected,
    unit,
    tolerance: Number.parseFloat(tolerance),
    source,
  }),
);

type Check = (row: WorkedRow) => RowCheck;

/** The check of each row, by the quantity that it prints. */
export function checkedRow(row: WorkedRow): RowCheck {
  const check = CHECKS[row.quantity];
  if (check === undefined) throw new Error(`No check or reason for the quantity "${row.quantity}" of row ${row.id}`);
  return check(row);
}

const NO_WIND_CHILL = 'Wind chill describes skin. A leaf makes no heat, so no function of ours computes it.';
const NO_WET_BULB = 'The model works with dew point and vapour pressure; nothing in it uses a wet bulb.';
const NO_MINIMUM_FORECAST = 'The night low comes from a forecast service, not from a regression on the afternoon.';

const CHECKS: Readonly<Record<string, Check>> = {
  'atmospheric pressure': (row) => within(row, 101.3 * pressureFraction(input(row, 'z'))),
  'psychrometric constant': psychrometricCheck,
  'mean saturation vapour pressure': (row) =>
    within(row, (saturationVapourHPa(input(row, 'Tmin')) + saturationVapourHPa(input(row, 'Tmax'))) / 20),
  'vapour pressure from RH max only': (row) => {
    const nightC = dewPointC(10 * input(row, 'es(Tmin)'));
    return within(row, saturationVapourHPa(dewPointFromHumidityC(nightC, input(row, 'RHmax') / 100)) / 10);
  },
  'vapour pressure from mean RH': notApplicable('Hourly dew points are used; a daily mean humidity never is.'),
  'vapour pressure from Tdew (or Tmin)': (row) => within(row, saturationVapourHPa(input(row, 'Tdew')) / 10),
  'slope of vapour pressure curve': (row) => within(row, saturationSlopeHPaPerK(input(row, 'T')) / 10),
  'saturation vapour pressure': (row) =>
    otherwise(
      row,
      saturationVapourHPa(input(row, 'T')) / 10,
      0.003 * Number(row.expected),
      'The table uses the constants of Tetens, the model those of the WMO: up to 0.3 % lower, 0.04 K of dew point.',
    ),
  'dew point from T and RH (over water)': (row) =>
    otherwise(
      row,
      dewPointFromHumidityC(input(row, 'T'), input(row, 'RH') / 100),
      0.07,
      'The handbook uses the constants of Tetens, the model those of the WMO; in dry frosty air they part by 0.06 K.',
    ),
  'wet bulb (over liquid water) from T and dew point, sea level': notApplicable(NO_WET_BULB),

  'sunset hour angle': (row) => within(row, sunsetHourAngleRad(input(row, 'lat'), input(row, 'decl'))),
  'extraterrestrial radiation Ra': (row) => within(row, extraterrestrialMJPerM2(input(row, 'lat'), handbookSun(row))),
  'extraterrestrial radiation Ra, mid-month': (row) =>
    within(row, extraterrestrialMJPerM2(input(row, 'lat'), handbookSun(row))),
  'daylight hours': (row) => within(row, geometricDaylightH(row)),
  'daylight hours, mid-month (geometric, no refraction)': (row) => within(row, geometricDaylightH(row)),
  'first and last day under 10 h (sunrise to sunset, 90.833 deg)': tenHourCheck,
  'net shortwave radiation': notApplicable(
    'Albedo acts inside the balance of the soil surface; the product alone is no function.',
  ),
  'clear-sky radiation': notApplicable(
    'Day sums come from the sun hour by hour, not from a share of Ra; compared on a line of its own for the same day and place.',
  ),
  'radiation from temperature range': notApplicable(
    'Radiation comes from the forecast or from its cloud cover, never from temperatures.',
  ),
  'monthly soil heat flux': notApplicable('The soil column conducts step by step; no monthly flux is computed.'),

  'sigma T^4': (row) =>
    otherwise(
      row,
      (blackBodyWPerM2(input(row, 'T')) * 86_400) / 1e6,
      0.0012 * Number(row.expected),
      'The table rounds the constant up by 0.08 % and counts kelvin from 273.16.',
    ),
  'Stefan-Boltzmann': (row) => within(row, STEFAN_BOLTZMANN_W_PER_M2K4),
  'blackbody emission': (row) => within(row, blackBodyWPerM2(input(row, 'T'))),
  // Screen 0 °C, dew point −5 °C, ground 3 K colder: an ordinary clear frost night.
  'net radiation, clear frost night': (row) =>
    within(row, skyLongwaveWPerM2(0, saturationVapourHPa(-5), 0) - blackBodyWPerM2(-3)),
  'net radiation, overcast night': (row) =>
    within(row, skyLongwaveWPerM2(0, saturationVapourHPa(-1), 1) - blackBodyWPerM2(0)),

  'one-variable prediction': notApplicable(NO_MINIMUM_FORECAST),
  'caution: joint least squares gives a different answer': notApplicable(NO_MINIMUM_FORECAST),
  'printed equation of the example': notApplicable(NO_MINIMUM_FORECAST),
  'temperature trend Ti = T2 + (Tmin-T2) sqrt((i-2)/(n-2))': notApplicable(
    'The course of the night comes hour by hour from the forecast, not from a trend towards its low.',
  ),
  'highest freezing temperature': (row) => within(row, keptFreezingC(row)),
  'wind chill': notApplicable(NO_WIND_CHILL),
  'wind chill metric': notApplicable(NO_WIND_CHILL),
};

function within(row: WorkedRow, ours: number): RowCheck {
  return { kind: 'checked', ours, expected: Number(row.expected), tolerance: row.tolerance };
}

/** Within the printed tolerance where it can be, else within a wider one for the stated reason. */
function otherwise(row: WorkedRow, ours: number, tolerance: number, reason: string): RowCheck {
  const expected = Number(row.expected);
  if (Math.abs(ours - expected) <= row.tolerance) return within(row, ours);
  return { kind: 'other-definition', ours, expected, tolerance, reason };
}

function notApplicable(reason: string): Check {
  return () => ({ kind: 'not-applicable', reason });
}

function psychrometricCheck(row: WorkedRow): RowCheck {
  // Row W002 gives the pressure of the 1800 m of row W001 instead of the height.
  const elevationM = row.inputs.startsWith('P=81.8') ? 1800 : input(row, 'z');
  return otherwise(
    row,
    psychrometricHPaPerK(elevationM) / 10,
    0.035 * Number(row.expected),
    'The table takes the latent heat at 20 °C and moist air; the model, meant for frost, takes both near freezing, 2 to 3 % lower.',
  );
}

function tenHourCheck(row: WorkedRow): RowCheck {
  const weeks = darkWeeks(new Date('2025-08-01T00:00:00Z'), input(row, 'lat'), 0);
  const [first = '', last = ''] = row.expected.split('/');
  const offDays = [daysApart(weeks?.firstDay, `2025-${first}`), daysApart(weeks?.lastDay, `2026-${last}`)];
  return { kind: 'checked', ours: Math.max(...offDays), expected: 0, tolerance: row.tolerance };
}

/** Whole days between two dates; endless when the first does not exist. */
export function daysApart(ours: Date | undefined, printed: string): number {
  if (ours === undefined) return Number.POSITIVE_INFINITY;
  return Math.round(Math.abs(ours.getTime() - Date.parse(`${printed}T12:00:00Z`)) / 86_400_000);
}

function geometricDaylightH(row: WorkedRow): number {
  return (24 / Math.PI) * sunsetHourAngleRad(input(row, 'lat'), handbookSun(row).declinationRad);
}

/**
 * The sun as FAO Paper 56 has it (eq. 23 and 24): its short declination strays up to 1.3° from the almanac, so the formulas of ours are
 * checked with the sun that the tables used. Our own sun is held against astronomy libraries in sun-position.test.ts.
 */
function handbookSun(row: WorkedRow): { declinationRad: number; eccentricity: number } {
  const yearRad = (2 * Math.PI * input(row, 'J')) / 365;
  return { declinationRad: 0.409 * Math.sin(yearRad - 1.39), eccentricity: 1 + 0.033 * Math.cos(yearRad) };
}

const FREEZING_NAMES: Readonly<Record<string, readonly [crop: string, part: string]>> = {
  'beet root': ['beet', 'root'],
  carrot: ['carrot', 'root'],
  endive: ['endive (frisee)', 'leaf'],
  lettuce: ['lettuce', 'leaf'],
  'onion bulb': ['onion (bulb)', 'root'],
  potato: ['potato', 'root'],
};

/** The freezing point of picked produce that our own list keeps from the USDA table, to which the handbook goes back. */
function keptFreezingC(row: WorkedRow): number {
  const [crop, part] = FREEZING_NAMES[row.inputs] ?? [];
  const kept = HARDINESS_ROWS.find(
    (candidate) =>
      candidate.effect === 'freezing-point' &&
      candidate.authority === 'station' &&
      candidate.crop === crop &&
      candidate.part === part,
  );
  if (typeof kept?.value !== 'number') throw new Error(`No freezing point of ${row.inputs} is kept`);
  return kept.value;
}

/** A number out of the printed inputs, such as `lat=-20;J=246 (3 Sep)`. */
function input(row: WorkedRow, name: string): number {
  const found = row.inputs
    .split(';')
    .map((part) => part.trim())
    .find((part) => part.startsWith(`${name}=`));
  const value = Number.parseFloat(found?.slice(name.length + 1) ?? '');
  if (Number.isNaN(value)) throw new Error(`Row ${row.id} has no input ${name}`);
  return value;
}
