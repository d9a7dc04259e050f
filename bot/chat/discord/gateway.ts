import {
  type APIInteraction,
  Client,
  DiscordjsErrorCodes,
  Events,
  GatewayCloseCodes,
  GatewayDispatchEvents,
  Options,
  Status,
} from 'discord.js';
import type { Logger } from 'pino';
import { PlainProblem } from '../../ground/errors.ts';
import { Answering } from './answering.ts';
import { type BackOff, waited } from './back-off.ts';
import { discordError } from './discord-error.ts';
import type { Door, DoorOptions, OnFatal } from './door.ts';
import { restExchange } from './exchange.ts';
import { introduced, persistently, START_BACK_OFF, TOKEN_REFUSED } from './startup.ts';

export interface GatewayOptions extends DoorOptions {
  readonly token: string;
  readonly onFatal: OnFatal;
  /** Which part of the servers this process serves; all of them unless said. */
  readonly shard?: { readonly id: number; readonly count: number };
  /** Waits between attempts to reach Discord at start. */
  readonly backOff?: BackOff;
  /** How long work underway may take at a stop. */
  readonly finishWithinMs?: number;
}

const FINISH_WITHIN_MS = 10_000;
const CLOSE_WITHIN_MS = 1000;

/** Closings after which the library does not come back, and what a host must do. */
const FATAL_CLOSINGS: Readonly<Record<number, string>> = {
  [GatewayCloseCodes.AuthenticationFailed]: TOKEN_REFUSED,
  [GatewayCloseCodes.DisallowedIntents]:
    'Discord does not allow this application the events it asked for; this program asks for none, so update it.',
};

/**
 * The door over Discord's gateway. The library holds the connection (heartbeats, resuming, shards); it does not retry a
 * refused login, and an error without a listener would end the process, so both are seen to here.
 *
 * Interactions are taken as the raw events that the library passes on, not as its objects: they are the same JSON as
 * comes to the signed HTTP door, so one path reads and answers both. No intents: commands need none, and what members
 * write never reaches us.
 */
export function openGateway(options: GatewayOptions): Door {
  const { desk, api, apiBase } = options;
  const log = desk.services.log;
  const answering = new Answering(desk, apiBase);
  const stopping = new AbortController();
  const start = { log, signal: stopping.signal, backOff: options.backOff ?? START_BACK_OFF };
  let client: Client | undefined;

  const listen = (interaction: APIInteraction) => {
    void answering.handle(interaction, restExchange(api, interaction));
  };
  const opened = async () => {
    const application = await introduced(api, desk.commands, start);
    if (application.interactions_endpoint_url) {
      throw new PlainProblem(
        "Discord sends this application's commands to a web address. Clear the interactions address on the application's page, or set HTTP_PORT and DISCORD_PUBLIC_KEY.",
      );
    }
    client = await persistently(start, () => connected(options, listen, stopping.signal));
    log.info('the Discord gateway is open');
  };
  return {
    ready: opened(),
    isOpen: () => client?.ws.shards.every(({ status }) => status === Status.Ready) ?? false,
    async stop() {
      stopping.abort();
      await answering.close(options.finishWithinMs ?? FINISH_WITHIN_MS);
      if (client !== undefined) await closed(client);
    },
  };
}

/** A client that is logged in. A failed one cannot be used again, so each attempt makes its own. */
async function connected(
  options: GatewayOptions,
  listen: (interaction: APIInteraction) => void,
  signal: AbortSignal,
): Promise<Client> {
  const client = quietClient(options);
  let fatal: PlainProblem | undefined;
  let isOpen = false;
  client.on(Events.ShardDisconnect, ({ code }) => {
    fatal = new PlainProblem(FATAL_CLOSINGS[code] ?? `Discord closed the connection for good (${code}).`);
    if (isOpen) options.onFatal(fatal);
  });
  watched(client, options.desk.services.log);
  client.ws.on(GatewayDispatchEvents.InteractionCreate, listen);
  const ready = new Promise<void>((resolve) => client.once(Events.ClientReady, () => resolve()));
  const given = givenUp(signal);
  try {
    await Promise.race([client.login(options.token).then(() => ready), given.up]);
    isOpen = true;
    return client;
  } catch (error) {
    await closed(client);
    throw fatal ?? loginProblem(error);
  } finally {
    given.forget();
  }
}

/** The library can wait for ever for the end of a connection that has not been greeted yet. */
async function closed(client: Client): Promise<void> {
  const patience = new AbortController();
  const destroyed = client.destroy().then(() => patience.abort());
  await Promise.race([destroyed, waited(CLOSE_WITHIN_MS, patience.signal)]);
}

/** Rejects when the signal comes: the library would wait for an answer for ever. */
function givenUp(signal: AbortSignal): { readonly up: Promise<never>; forget(): void } {
  let listener: () => void = () => undefined;
  const up = new Promise<never>((_resolve, reject) => {
    listener = () => reject(new PlainProblem('The start was given up.'));
  });
  signal.addEventListener('abort', listener, { once: true });
  return { up, forget: () => signal.removeEventListener('abort', listener) };
}

function quietClient({ apiBase, shard }: GatewayOptions): Client {
  return new Client({
    intents: [],
    ...(shard === undefined ? { shards: 'auto' } : { shards: [shard.id], shardCount: shard.count }),
    allowedMentions: { parse: [] },
    enforceNonce: true,
    rest: { api: apiBase, rejectOnRateLimit: () => true },
    // The library would remember everybody who ever asked.
    makeCache: Options.cacheWithLimits({
      ...Options.DefaultMakeCacheSettings,
      UserManager: { maxSize: 0, keepOverLimit: (user) => user.id === user.client.user.id },
      GuildMemberManager: 0,
      MessageManager: 0,
    }),
  });
}

/** Without a listener for errors the process would end; what they say is noted, never what they carry. */
function watched(client: Client, log: Logger): void {
  client.on(Events.Error, (error) => log.error({ err: { message: error.message } }, 'the Discord library failed'));
  client.on(Events.ShardError, (error, shard) => log.warn({ shard }, `gateway: ${error.message}`));
  client.on(Events.ShardReconnecting, (shard) => log.info({ shard }, 'gateway: reconnecting'));
  client.on(Events.ShardResume, (shard, replayed) => log.info({ shard, replayed }, 'gateway: resumed'));
  client.on(Events.ShardReady, (shard) => log.info({ shard }, 'gateway: ready'));
}

function loginProblem(error: unknown): Error {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (error instanceof PlainProblem) return error;
  return code === DiscordjsErrorCodes.TokenInvalid ? new PlainProblem(TOKEN_REFUSED) : discordError(error);
}
