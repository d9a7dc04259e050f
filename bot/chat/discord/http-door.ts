import { once } from 'node:events';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type APIInteraction, InteractionResponseType, InteractionType } from 'discord.js';
import { PlainProblem } from '../../ground/errors.ts';
import { Answering } from './answering.ts';
import type { BackOff } from './back-off.ts';
import type { Door, DoorOptions } from './door.ts';
import { type Exchange, restExchange } from './exchange.ts';
import { type BodyProblem, BodyRoom } from './request-body.ts';
import { Seen, type SignedRequest, signatureCheck } from './signature.ts';
import { introduced, START_BACK_OFF } from './startup.ts';

export interface HttpDoorOptions extends DoorOptions {
  readonly port: number;
  /** Address to listen at; default: every one of this machine. */
  readonly host?: string;
  /** Of the application, 64 hexadecimal digits. */
  readonly publicKey: string;
  /** False while the process cannot answer, as when its database is away. */
  readonly isReady?: () => Promise<boolean>;
  readonly backOff?: BackOff;
  readonly finishWithinMs?: number;
  /** How long a request may take to come in. */
  readonly requestWithinMs?: number;
  readonly mostConnections?: number;
  /** The time that signatures are held against: the world's, even where the program rehearses another. */
  readonly wallMs?: () => number;
}

export interface HttpDoor extends Door {
  /** Where it listens, once it is ready. */
  port(): number;
}

const FINISH_WITHIN_MS = 10_000;
const REQUEST_WITHIN_MS = 5000;
/** Longer than load balancers keep an idle connection, so that ours is not the one to close it. Judgement. */
const KEEP_ALIVE_MS = 65_000;
/** Discord needs a few; each costs some 100 kB. Judgement. */
const MOST_CONNECTIONS = 256;

/**
 * The door that Discord knocks at: signed requests over HTTP. Keeps nothing between requests but ids it has answered, so
 * any number of processes can stand behind one address.
 */
export function openHttpDoor(options: HttpDoorOptions): HttpDoor {
  const { desk, api, apiBase } = options;
  const log = desk.services.log;
  const answering = new Answering(desk, apiBase);
  const stopping = new AbortController();
  let isOpen = false;
  const isAnswering = () => isOpen && !stopping.signal.aborted;
  const isReady = async () => isAnswering() && ((await options.isReady?.()) ?? true);
  const interactions = interactionsRoute(options, answering);
  const requestTimeout = options.requestWithinMs ?? REQUEST_WITHIN_MS;
  const server = createServer(
    { requestTimeout, headersTimeout: requestTimeout, connectionsCheckingInterval: requestTimeout / 5 },
    (request, response) => {
      routed(request, response, interactions, isReady).catch((error: unknown) => {
        // Anybody can break off a request, as often as they like.
        const isTheirs = !request.complete;
        if (!isTheirs) log.warn({ err: error }, 'a request could not be answered');
        response.destroy();
      });
    },
  );
  server.keepAliveTimeout = KEEP_ALIVE_MS;
  server.maxConnections = options.mostConnections ?? MOST_CONNECTIONS;
  const opened = async () => {
    await listening(server, options);
    const start = { log, signal: stopping.signal, backOff: options.backOff ?? START_BACK_OFF };
    const application = await introduced(api, desk.commands, start);
    isOpen = true;
    if (!application.interactions_endpoint_url) {
      log.warn("no commands will come: set the interactions address on the application's page at Discord");
    }
    log.info({ port: portOf(server) }, 'the signed HTTP door is open');
  };
  return {
    ready: opened(),
    isOpen: isAnswering,
    port: () => portOf(server),
    async stop() {
      stopping.abort();
      await answering.close(options.finishWithinMs ?? FINISH_WITHIN_MS);
      const closed = once(server, 'close');
      server.close();
      server.closeAllConnections();
      await closed;
    },
  };
}

type Route = (request: IncomingMessage, response: ServerResponse) => Promise<void>;

async function routed(
  request: IncomingMessage,
  response: ServerResponse,
  interactions: Route,
  ready: () => Promise<boolean>,
): Promise<void> {
  const path = (request.url ?? '').split('?', 1)[0];
  const wanted = path === '/interactions' ? 'POST' : 'GET';
  if (path !== '/interactions' && path !== '/healthz' && path !== '/readyz') return said(response, 404, 'not here');
  if (request.method !== wanted) return said(response, 405, `use ${wanted}`, { allow: wanted });
  if (path === '/interactions') return interactions(request, response);
  if (path === '/healthz') return said(response, 200, 'alive');
  return (await ready()) ? said(response, 200, 'ready') : said(response, 503, 'not ready');
}

function interactionsRoute(options: HttpDoorOptions, answering: Answering): Route {
  const isSigned = signatureCheck(options.publicKey);
  const seen = new Seen();
  const room = new BodyRoom();
  const wallMs = options.wallMs ?? Date.now;
  return async (request, response) => {
    const body = await signedBody(request, room, (signed) => isSigned(signed, wallMs()));
    if (!Buffer.isBuffer(body)) return refused(response, body);
    const interaction = parsed(body);
    if (interaction === undefined) return said(response, 400, 'not an interaction');
    if (interaction.type === InteractionType.Ping) return asJson(response, { type: InteractionResponseType.Pong });
    if (!seen.isNew(interaction.id, wallMs())) return said(response, 401, 'answered before');
    await answering.handle(interaction, inlineExchange(response, restExchange(options.api, interaction)));
    if (!response.headersSent) return said(response, 400, 'no answer to that');
  };
}

/** What Discord has signed; nothing is read for who does not even claim to be Discord. */
async function signedBody(
  request: IncomingMessage,
  room: BodyRoom,
  isSigned: (signed: SignedRequest) => boolean,
): Promise<Buffer | BodyProblem | 'unsigned' | 'unclaimed'> {
  const signature = header(request, 'x-signature-ed25519');
  const timestamp = header(request, 'x-signature-timestamp');
  if (!signature || !timestamp) return 'unclaimed';
  const body = await room.bodyOf(request);
  if (!Buffer.isBuffer(body)) return body;
  return isSigned({ signature, timestamp, body }) ? body : 'unsigned';
}

async function refused(response: ServerResponse, why: BodyProblem | 'unsigned' | 'unclaimed'): Promise<void> {
  const unread = { connection: 'close' };
  if (why === 'too-large') return said(response, 413, 'too large', unread);
  if (why === 'no-room') return said(response, 503, 'too much at once', unread);
  return said(response, 401, 'invalid request signature', why === 'unclaimed' ? unread : {});
}

/** Puts the first answer into the response where it can stand there; files go the other way. */
function inlineExchange(response: ServerResponse, overRest: Exchange): Exchange {
  return {
    ...overRest,
    async first(answer, files) {
      if (response.headersSent) return overRest.first(answer, files);
      if (files.length === 0) return asJson(response, answer);
      response.writeHead(202).end();
      return overRest.first(answer, files);
    },
  };
}

function parsed(body: Buffer): APIInteraction | undefined {
  try {
    const value: unknown = JSON.parse(body.toString('utf8'));
    const fits = typeof value === 'object' && value !== null && 'type' in value && 'id' in value && 'token' in value;
    return fits ? (value as APIInteraction) : undefined;
  } catch {
    return undefined;
  }
}

async function asJson(response: ServerResponse, answer: object): Promise<void> {
  response.writeHead(200, { 'content-type': 'application/json' });
  response.end(JSON.stringify(answer));
  // Later edits must not overtake it.
  if (!response.writableFinished && !response.destroyed) {
    await Promise.race([once(response, 'finish'), once(response, 'close')]);
  }
}

async function said(
  response: ServerResponse,
  status: number,
  words: string,
  headers: Record<string, string> = {},
): Promise<void> {
  response.writeHead(status, { 'content-type': 'text/plain', ...headers }).end(`${words}\n`);
}

function header(request: IncomingMessage, name: string): string | undefined {
  const value = request.headers[name];
  return typeof value === 'string' ? value : undefined;
}

async function listening(server: Server, { port, host }: HttpDoorOptions): Promise<void> {
  server.listen(port, host);
  try {
    await once(server, 'listening');
  } catch {
    throw new PlainProblem(`HTTP_PORT ${port} cannot be listened at: choose a port that is free.`);
  }
}

function portOf(server: Server): number {
  return (server.address() as AddressInfo | null)?.port ?? 0;
}
