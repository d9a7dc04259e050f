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
  .url('must be an address such as https://example.org')
  .refine((text) => {
    const url = new URL(text);
    return url.protocol === 'https:' || (url.protocol === 'http:' && LOOPBACK_HOSTS.includes(url.hostname));
  }, 'must start with https:// (plain http is accepted for this machine only)')
  .transform((text) => text.replace(/\/+$/, ''));

const settingsSchema = z.object({
  DISCORD_TOKEN: z.string().min(20, 'does not look like a bot token').optional(),
  DISCORD_APPLICATION_ID: z
    .string()
    .regex(/^\d{15,21}$/, 'must be the number of the application, 15 to 21 digits')
    .optional(),
  DISCORD_PUBLIC_KEY: z
    .string()
    .regex(/^[0-9a-fA-F]{64}$/, 'must be the public key of the application, 64 hexadecimal digits')
    .optional(),
  DISCORD_API_BASE: address.default(PUBLIC.discord),
  HTTP_PORT: z.coerce.number().int().min(1).max(65_535, 'must be a port from 1 to 65535').optional(),
  DATABASE_URL: z
    .string()
    .regex(/^(sqlite:.+|postgres(ql)?:\/\/.+)$/, 'must be sqlite:FILE or postgres://…')
    .default('sqlite:eiderdown.db'),
  FORECAST_CONTACT: z
    .string()
    .regex(/@|^https?:\/\//, 'must be an e-mail address or a web address at which the services can reach you')
    .max(200)
    .optional(),
  FORECAST_ORDER: z
    .string()
    .transform((text) => text.split(',').map((name) => name.trim()))
    .pipe(z.array(z.enum(FORECAST_SERVICES, 'must list nws, metno and openmeteo, separated by commas')).min(1))
    .optional(),
  NWS_BASE: address.default(PUBLIC.nws),
  METNO_BASE: address.default(PUBLIC.metno),
  OPENMETEO_BASE: address.default(PUBLIC.openmeteo),
  DUTY: z.enum(['both', 'answers', 'nights'], 'must be both, answers or nights').default('both'),
  /** Both are set by `npm run shards` for each process that it starts. */
  SHARDS: z.coerce.number().int().min(0, 'must be the number of a shard, from 0').optional(),
  SHARD_COUNT: z.coerce.number().int().min(1, 'must be a whole number, from 1').optional(),
  METRICS_PORT: z.coerce.number().int().min(1).max(65_535, 'must be a port from 1 to 65535').optional(),
  METRICS_HOST: z.string().min(1).max(255).default('127.0.0.1'),
  LOG_LEVEL: z.enum(['fatal', 'error', 'warn', 'info', 'debug', 'silent']).default('info'),
  CLOCK_START: z.iso.datetime({ offset: true, message: 'must be an instant such as 2026-01-20T15:00:00Z' }).optional(),
  CLOCK_RATE: z.coerce.number().min(0.01).max(100_000, 'must be a number from 0.01 to 100000').optional(),
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

/** What the process was started with, and below it what the file `.env` in its folder says. */
export function processEnvironment(): Readonly<Record<string, string | undefined>> {
  try {
    process.loadEnvFile();
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'ENOENT')) {
      throw new PlainProblem('The file .env is there but cannot be read; check its rights.');
    }
  }
  // discord.js reads this one by itself, and takes an empty one for no shard at all.
  if (process.env['SHARD_COUNT'] === '') delete process.env['SHARD_COUNT'];
  return process.env;
}

/** The settings of this process. */
export function processConfig(): Config {
  return readConfig(processEnvironment());
}
