import { readFileSync } from 'node:fs';
import { parseEnv } from 'node:util';
import { z } from 'zod';
import { FORECAST_SERVICES } from './forecast/forecast.ts';
import { PlainProblem } from './ground/errors.ts';

/** Public addresses of the services; tests and rehearsals point them at this machine. */
const PUBLIC = {
  discord: 'https://discord.com/api',
  nws: 'https://api.weather.gov',
  metno: 'https://api.met.no',
  openmeteo: 'https://api.open-meteo.com',
};

const LOOPBACK_HOSTS = ['127.0.0.1', 'localhost', '[::1]'];

/** An address of a service: https, or plain http on this machine only; stored without a trailing slash. */
const address = z
  .string()
  .refine(
    isSafeAddress,
    'must be an address such as https://example.org (plain http is accepted for this machine only)',
  )
  .transform((text) => text.replace(/\/+$/, ''));

function isSafeAddress(text: string): boolean {
  if (!URL.canParse(text)) return false;
  const { protocol, hostname } = new URL(text);
  return protocol === 'https:' || (protocol === 'http:' && LOOPBACK_HOSTS.includes(hostname));
}

/** A whole number within limits. */
function whole(from: number, to: number, sentence: string) {
  return z
    .string()
    .regex(/^\d{1,9}$/, sentence)
    .transform(Number)
    .refine((value) => value >= from && value <= to, sentence);
}

const port = whole(1, 65_535, 'must be a port, a whole number from 1 to 65535');

const DUTIES = ['both', 'answers', 'nights'] as const;
const LOG_LEVELS = ['fatal', 'error', 'warn', 'info', 'debug', 'silent'] as const;
const RATE = 'must be a number from 0.01 to 100000';

const host = z.string().regex(/^[\w.:-]{1,255}$/, 'must be a host name or an IP address to listen at, such as 0.0.0.0');

const settingsSchema = z.object({
  DISCORD_TOKEN: z
    .string()
    .regex(
      /^[\w.-]*$/,
      'holds a character that no bot token has, such as a quotation mark, a space or a line break; paste it again',
    )
    .min(20, 'looks cut off; copy the whole token from the application’s page')
    .optional(),
  DISCORD_APPLICATION_ID: z
    .string()
    .regex(/^\d{15,21}$/, 'must be the number of the application, 15 to 21 digits')
    .optional(),
  DISCORD_PUBLIC_KEY: z
    .string()
    .regex(/^[0-9a-fA-F]{64}$/, 'must be the public key of the application, 64 hexadecimal digits')
    .optional(),
  DISCORD_API_BASE: address.default(PUBLIC.discord),
  HTTP_PORT: port.optional(),
  HTTP_HOST: host.optional(),
  DATABASE_URL: z
    .string()
    .regex(/^(sqlite:.+|postgres(ql)?:\/\/.+)$/, 'must be sqlite:FILE or postgres://…')
    .default('sqlite:eiderdown.db'),
  FORECAST_CONTACT: z
    .string()
    .regex(/@|^https?:\/\//, 'must be an e-mail address or a web address at which the services can reach you')
    .max(200, 'must be an address of at most 200 characters')
    .optional(),
  FORECAST_ORDER: z
    .string()
    .transform((text) => text.split(',').map((name) => name.trim()))
    .pipe(z.array(z.enum(FORECAST_SERVICES, 'must list nws, metno and openmeteo, separated by commas')).min(1))
    .optional(),
  NWS_BASE: address.default(PUBLIC.nws),
  METNO_BASE: address.default(PUBLIC.metno),
  OPENMETEO_BASE: address.default(PUBLIC.openmeteo),
  DUTY: z.enum(DUTIES, 'must be both, answers or nights').default('both'),
  /** Both are set by `npm run shards` for each process that it starts. */
  SHARDS: whole(0, 100_000, 'must be the number of a shard, from 0').optional(),
  SHARD_COUNT: whole(1, 100_000, 'must be a whole number, from 1').optional(),
  METRICS_PORT: port.optional(),
  METRICS_HOST: host.default('127.0.0.1'),
  LOG_LEVEL: z.enum(LOG_LEVELS, `must be one of ${LOG_LEVELS.join(', ')}`).default('info'),
  CLOCK_START: z.iso.datetime({ offset: true, message: 'must be an instant such as 2026-01-20T15:00:00Z' }).optional(),
  CLOCK_RATE: z.coerce.number(RATE).min(0.01, RATE).max(100_000, RATE).optional(),
});

export type Config = z.infer<typeof settingsSchema>;

export const SETTING_NAMES: readonly string[] = Object.keys(settingsSchema.shape);

/**
 * Reads the settings. An empty value counts as not set.
 *
 * @throws PlainProblem naming the variable and what it must be. Values are never repeated: one may be a secret.
 */
export function readConfig(environment: Readonly<Record<string, string | undefined>>): Config {
  const given = Object.fromEntries(
    Object.entries(environment).filter(([, value]) => value !== undefined && value !== ''),
  );
  const parsed = settingsSchema.safeParse(given);
  if (!parsed.success) {
    const sentences = parsed.error.issues.map((issue) => `${issue.path[0]?.toString()} ${issue.message}.`);
    throw new PlainProblem([...new Set(sentences)].join(' '));
  }
  const config = parsed.data;
  if ((config.CLOCK_RATE === undefined) !== (config.CLOCK_START === undefined)) {
    throw new PlainProblem('CLOCK_START and CLOCK_RATE go together: set both to rehearse a night, or neither.');
  }
  if (config.HTTP_PORT !== undefined && config.DISCORD_PUBLIC_KEY === undefined) {
    throw new PlainProblem('HTTP_PORT needs DISCORD_PUBLIC_KEY: without it no request could be trusted.');
  }
  return config;
}

/** Names that look like settings of this program but are none: misspelt, most likely. */
export function unknownSettings(environment: Readonly<Record<string, string | undefined>>): readonly string[] {
  return Object.keys(environment)
    .filter((name) => OUR_NAMES.test(name) && !SETTING_NAMES.includes(name))
    .sort();
}

/** How settings of ours begin or end; nothing else in an environment looks so. */
const OUR_NAMES = /^(?:DISCORD|FORECAST|NWS|METNO|OPENMETEO|CLOCK|METRICS|HTTP|DUTY)(?:_|$)/;

/**
 * What the process was started with, and below it what the file `.env` in its folder says. Empty means not set, so an
 * empty variable hides a line of the file.
 *
 * @throws PlainProblem when the file is there but cannot be read: its settings must not be passed over in silence.
 */
export function processEnvironment(
  started: Readonly<Record<string, string | undefined>> = process.env,
  file = '.env',
): Readonly<Record<string, string | undefined>> {
  // discord.js reads this one by itself, and takes an empty one for no shard at all.
  if (process.env['SHARD_COUNT'] === '') delete process.env['SHARD_COUNT'];
  return { ...settingsFile(file), ...started };
}

/** Some editors begin a file with it; it is no part of the first setting's name. */
const BYTE_ORDER_MARK = /^\uFEFF/;

// Not `process.loadEnvFile`: it takes a file that cannot be read for one that is not there.
function settingsFile(file: string): Readonly<Record<string, string | undefined>> {
  try {
    return parseEnv(readFileSync(file, 'utf8').replace(BYTE_ORDER_MARK, ''));
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return {};
    throw new PlainProblem(
      'There is a file .env, but I cannot read it. Give the user who runs this the right to read it: chmod u+r .env',
    );
  }
}

/** The settings of this process. */
export function processConfig(): Config {
  return readConfig(processEnvironment());
}

/** Did a service manager or our container start this process? systemd sets the first for every service. */
export function isService(environment: Readonly<Record<string, string | undefined>> = process.env): boolean {
  return environment['INVOCATION_ID'] !== undefined || environment['NODE_ENV'] === 'production';
}
