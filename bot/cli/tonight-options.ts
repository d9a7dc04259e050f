import { parseArgs } from 'node:util';
import { z } from 'zod';
import { EXPOSURES } from '../../rules/index.ts';
import { NIGHTS_AND_WEEK, type NightOrWeek } from '../commands/tonight/night-option.ts';
import { FORECAST_SERVICES } from '../forecast/forecast.ts';
import { PlainProblem } from '../ground/errors.ts';
import { UNIT_SYSTEMS } from '../ground/units.ts';

/** What `npm run tonight` was asked for. */
export interface TonightOptions {
  readonly latitudeDeg: number | undefined;
  readonly longitudeDeg: number | undefined;
  readonly heightM: number | undefined;
  readonly exposure: (typeof EXPOSURES)[number];
  readonly beds: readonly string[];
  /** Spare covers in words. */
  readonly shed: readonly string[];
  readonly service: (typeof FORECAST_SERVICES)[number] | undefined;
  readonly units: (typeof UNIT_SYSTEMS)[number] | undefined;
  /** A saved answer of a service. */
  readonly forecastFile: string | undefined;
  readonly at: Date | undefined;
  /** The night wanted, or all of them. */
  readonly night: NightOrWeek;
  /** Where the picture of the most urgent bed is written. */
  readonly chartFile: string | undefined;
}

const number = (least: number, most: number, what: string) =>
  z.coerce
    .number(`${what} must be a number`)
    .min(least, `${what} must be from ${least} to ${most}`)
    .max(most, `${what} must be from ${least} to ${most}`);

const schema = z.strictObject({
  lat: number(-90, 90, '--lat (degrees north)').optional(),
  lon: number(-180, 180, '--lon (degrees east)').optional(),
  height: number(-430, 8850, '--height (metres above the sea)').optional(),
  exposure: z.enum(EXPOSURES, `--exposure must be one of ${EXPOSURES.join(', ')}`).default('open'),
  bed: z.array(z.string().min(1)).max(50, 'at most 50 beds at once').optional(),
  shed: z.array(z.string().min(1)).max(50).default([]),
  service: z.enum(FORECAST_SERVICES, `--service must be one of ${FORECAST_SERVICES.join(', ')}`).optional(),
  units: z.enum(UNIT_SYSTEMS, `--units must be one of ${UNIT_SYSTEMS.join(', ')}`).optional(),
  forecast: z.string().min(1).optional(),
  night: z.enum(NIGHTS_AND_WEEK, `--night must be one of ${NIGHTS_AND_WEEK.join(', ')}`).default('tonight'),
  chart: z.string().min(1, '--chart must name a file').optional(),
  at: z.iso.datetime({ offset: true, message: '--at must be an instant such as 2026-01-20T17:00:00Z' }).optional(),
});

/**
 * Reads the words after `npm run tonight --`.
 *
 * @throws PlainProblem that names the option and what it must be.
 */
export function tonightOptions(words: readonly string[]): TonightOptions {
  const parsed = schema.safeParse(split(words));
  if (!parsed.success) throw new PlainProblem(`${parsed.error.issues.map(({ message }) => message).join('; ')}.`);
  const { lat, lon, height, exposure, bed, shed, service, units, forecast, at, night, chart } = parsed.data;
  if ((lat === undefined) !== (lon === undefined)) throw new PlainProblem('Give both --lat and --lon, in degrees.');
  if (lat === undefined && forecast === undefined) {
    throw new PlainProblem('Say where: --lat 42.9 --lon -78.8, or give a saved forecast with --forecast FILE.');
  }
  if (bed === undefined) {
    throw new PlainProblem(
      'Say what grows there: --bed "spinach under blanket in cold frame" (repeat it for more beds).',
    );
  }
  return {
    latitudeDeg: lat,
    longitudeDeg: lon,
    heightM: height,
    exposure,
    beds: bed,
    shed,
    service,
    units,
    forecastFile: forecast,
    at: at === undefined ? undefined : new Date(at),
    night,
    chartFile: chart,
  };
}

function split(words: readonly string[]) {
  try {
    const one = { type: 'string' } as const;
    const many = { type: 'string', multiple: true } as const;
    const options = {
      lat: one,
      lon: one,
      height: one,
      exposure: one,
      bed: many,
      shed: many,
      service: one,
      units: one,
      forecast: one,
      at: one,
      night: one,
      chart: one,
    };
    return parseArgs({ args: joinNegatives(words), options, strict: true }).values;
  } catch (error) {
    if (error instanceof Error) throw new PlainProblem(`${error.message.split('. ')[0]}.`);
    throw error;
  }
}

/** `--lon -78.8` means a value, not another option. */
function joinNegatives(words: readonly string[]): string[] {
  const joined: string[] = [];
  for (const word of words) {
    const last = joined.at(-1);
    if (/^-\d/.test(word) && last?.startsWith('--') === true && !last.includes('='))
      joined[joined.length - 1] = `${last}=${word}`;
    else joined.push(word);
  }
  return joined;
}
