import { existsSync, readFileSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { gzipSync } from 'node:zlib';

/** One scripted answer. Whatever is left out is as the service documents it. */
export interface ScriptedAnswer {
  readonly status?: number;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
  /** Sends this many characters of the body and breaks the connection. */
  readonly breakAfter?: number;
  /** Sends the body in crumbs, so slowly that it does not end within a test. */
  readonly crumbs?: boolean;
  /** Never answers. */
  readonly silent?: boolean;
  readonly gzip?: boolean;
}

export interface SeenRequest {
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
}

/** The same files whether this runs as it is or compiled into `dist/`. */
const FIXTURES = ['../fixtures/forecast/', '../../../test/fixtures/forecast/']
  .map((path) => new URL(path, import.meta.url))
  .find((folder) => existsSync(folder)) as URL;

/** The invented body of that name. */
export function fixture(name: string): string {
  return readFileSync(new URL(name, FIXTURES), 'utf8');
}

/** What time it is in the invented answers: the afternoon before the night of 21 January 2026. */
export const FIXTURE_NOW = new Date('2026-01-20T20:00:00Z');
export const FIXTURE_NIGHT = { sunset: new Date('2026-01-20T23:25:00Z'), sunrise: new Date('2026-01-21T13:45:00Z') };
/** An invented garden inside the American grid. */
export const FIXTURE_PLACE = { latitudeDeg: 41.2109871, longitudeDeg: -96.6301234, elevationM: 340.6 };

const USUAL: readonly (readonly [string, ScriptedAnswer])[] = [
  ['/points/', { headers: { 'content-type': 'application/geo+json' }, body: fixture('nws-point.json') }],
  ['/gridpoints/', { headers: { 'content-type': 'application/geo+json' }, body: fixture('nws-grid.json'), gzip: true }],
  ['/alerts/active', { headers: { 'content-type': 'application/geo+json' }, body: fixture('nws-alerts.json') }],
  [
    '/weatherapi/locationforecast/2.0/complete',
    {
      headers: { 'content-type': 'application/json', 'last-modified': 'Tue, 20 Jan 2026 19:31:07 GMT' },
      body: fixture('metno-complete.json'),
      gzip: true,
    },
  ],
  ['/v1/forecast', { headers: { 'content-type': 'application/json; charset=utf-8' }, body: fixture('openmeteo.json') }],
];

/**
 * The three forecast services on a port of this machine. It answers with the invented bodies until told otherwise; scripted
 * answers for a path are given in turn, the last of them from then on.
 */
export class ForecastServices {
  readonly requests: SeenRequest[] = [];
  readonly #server: Server;
  readonly #scripts = new Map<string, ScriptedAnswer[]>();

  private constructor(server: Server) {
    this.#server = server;
  }

  static async start(): Promise<ForecastServices> {
    const server = createServer();
    const services = new ForecastServices(server);
    server.on('request', (request, response) => services.#answer(request, response));
    await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
    return services;
  }

  get base(): string {
    return `http://127.0.0.1:${(this.#server.address() as AddressInfo).port}`;
  }

  get bases(): { nws: string; metno: string; openmeteo: string } {
    return { nws: this.base, metno: this.base, openmeteo: this.base };
  }

  script(pathStart: string, ...answers: ScriptedAnswer[]): void {
    this.#scripts.set(pathStart, answers);
  }

  /** Requests whose path begins so. */
  seen(pathStart: string): readonly SeenRequest[] {
    return this.requests.filter(({ path }) => path.startsWith(pathStart));
  }

  async close(): Promise<void> {
    this.#server.closeAllConnections();
    await new Promise<void>((done) => {
      this.#server.close(() => done());
    });
  }

  #answer(request: IncomingMessage, response: ServerResponse): void {
    const path = request.url ?? '';
    this.requests.push({ path, headers: request.headers as Record<string, string> });
    const usual = USUAL.find(([start]) => path.startsWith(start))?.[1] ?? { status: 404, headers: {}, body: '' };
    send(response, { ...usual, ...this.#scripted(path) });
  }

  #scripted(path: string): ScriptedAnswer {
    const [, answers] = [...this.#scripts].find(([start]) => path.startsWith(start)) ?? [];
    return (answers !== undefined && answers.length > 1 ? answers.shift() : answers?.[0]) ?? {};
  }
}

function send(response: ServerResponse, answer: ScriptedAnswer): void {
  if (answer.silent) return;
  const text = answer.body ?? '';
  const body = answer.gzip ? gzipSync(text) : Buffer.from(text);
  response.writeHead(answer.status ?? 200, {
    ...answer.headers,
    ...(answer.gzip ? { 'content-encoding': 'gzip' } : {}),
    ...(answer.status === 304 ? {} : { 'content-length': String(body.byteLength) }),
  });
  if (answer.breakAfter !== undefined) {
    response.write(body.subarray(0, answer.breakAfter), () => response.socket?.destroy());
  } else if (answer.crumbs) {
    const crumbs = setInterval(() => response.write(' '), 20);
    response.on('close', () => clearInterval(crumbs));
  } else {
    response.end(answer.status === 304 ? undefined : body);
  }
}
