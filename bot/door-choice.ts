import type { Config } from './config.ts';
import { PlainProblem } from './ground/errors.ts';

/** The one way in that the settings open. */
export type DoorChoice =
  | { readonly kind: 'terminal' }
  | {
      readonly kind: 'gateway';
      readonly token: string;
      /** Which part of the servers this process serves; all of them unless said. */
      readonly shard?: { readonly id: number; readonly count: number };
    }
  /** No way in: the process only does what runs by itself. */
  | { readonly kind: 'closed'; readonly token: string }
  | {
      readonly kind: 'http';
      readonly token: string;
      readonly port: number;
      readonly publicKey: string;
      readonly host?: string;
    };

/** Signed HTTP where a port is set, else the gateway where there is a token, else the terminal; never two at once. */
export function doorChoice(config: Config): DoorChoice {
  const { DISCORD_TOKEN: token, HTTP_PORT: port, DISCORD_PUBLIC_KEY: publicKey, DUTY: duty } = config;
  if (token === undefined) {
    if (duty !== 'both') throw new PlainProblem('DUTY needs DISCORD_TOKEN: at the terminal there is nothing to share.');
    if (port === undefined && publicKey === undefined) return { kind: 'terminal' };
    throw new PlainProblem('HTTP_PORT and DISCORD_PUBLIC_KEY need DISCORD_TOKEN too: with it commands are registered.');
  }
  if (duty === 'nights') {
    if (port === undefined) return { kind: 'closed', token };
    throw new PlainProblem('With DUTY=nights no door is opened: leave HTTP_PORT empty, or choose DUTY=both.');
  }
  if (port === undefined || publicKey === undefined) return { kind: 'gateway', token, ...shardOf(config) };
  return { kind: 'http', token, port, publicKey, ...(config.HTTP_HOST !== undefined && { host: config.HTTP_HOST }) };
}

function shardOf({ SHARDS: id, SHARD_COUNT: count }: Config) {
  return id === undefined || count === undefined ? {} : { shard: { id, count } };
}

const DOOR_WORDS: Readonly<Record<DoorChoice['kind'], string>> = {
  terminal: 'terminal (set DISCORD_TOKEN for Discord)',
  gateway: 'Discord over its gateway',
  http: 'Discord over signed HTTP',
  closed: 'none; only the nightly work',
};

/** What a host should see at a start. No secret and no address of a database server stands in it. */
export function startLines(config: Config, door: DoorChoice): string[] {
  const { DATABASE_URL: database, FORECAST_CONTACT: contact, FORECAST_ORDER: order } = config;
  const file = database.startsWith('sqlite:') ? database.slice('sqlite:'.length) : undefined;
  return [
    `Door: ${DOOR_WORDS[door.kind]}.`,
    `Database: ${file === undefined ? 'PostgreSQL' : `SQLite, file ${file}`}.`,
    contact === undefined
      ? 'Forecasts: none. Set FORECAST_CONTACT to your e-mail or web address; the services ask for one.'
      : `Forecasts: ${order === undefined ? 'nws in its area, metno, openmeteo' : order.join(', ')}.`,
    ...(config.CLOCK_START === undefined ? [] : ['Clock: a rehearsal; every post is marked as one.']),
  ];
}
