import { once } from 'node:events';
import { createServer, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { PlainProblem } from '../ground/errors.ts';
import type { Metrics } from './metrics.ts';

export interface OperatorPageOptions {
  readonly port: number;
  readonly host: string;
  readonly metrics: Metrics;
  /** Parts without which the process cannot answer; none when it is ready. */
  readonly missing: () => Promise<readonly string[]>;
}

export interface OperatorPage {
  readonly port: number;
  stop(): Promise<void>;
}

const WITHIN_MS = 5000;

/**
 * What a host's tools ask: figures, life, readiness. Apart from the door that Discord knocks at, so that the figures need
 * not be where the world can see them.
 *
 * @throws PlainProblem when the address cannot be listened at.
 */
export async function openOperatorPage(options: OperatorPageOptions): Promise<OperatorPage> {
  const { port, host } = options;
  const limits = { requestTimeout: WITHIN_MS, headersTimeout: WITHIN_MS, connectionsCheckingInterval: 1000 };
  const server = createServer(limits, (request, response) => {
    if (request.method !== 'GET') return said(response, 405, 'use GET');
    const path = (request.url ?? '').split('?', 1)[0] ?? '';
    answered(path, response, options).catch(() => response.destroy());
  });
  server.listen(port, host);
  try {
    await once(server, 'listening');
  } catch {
    const sentence = `METRICS_PORT ${port} on METRICS_HOST cannot be listened at: choose a free port and an address of this machine.`;
    throw new PlainProblem(sentence);
  }
  return {
    port: (server.address() as AddressInfo).port,
    async stop() {
      const closed = once(server, 'close');
      server.close();
      server.closeAllConnections();
      await closed;
    },
  };
}

async function answered(path: string, response: ServerResponse, options: OperatorPageOptions): Promise<void> {
  if (path === '/healthz') return said(response, 200, 'alive');
  if (path === '/readyz') return readiness(response, await options.missing());
  if (path !== '/metrics') return said(response, 404, 'not here');
  const { metrics } = options;
  response.writeHead(200, { 'content-type': metrics.contentType }).end(await metrics.text());
}

function readiness(response: ServerResponse, missing: readonly string[]): void {
  if (missing.length === 0) said(response, 200, 'ready');
  else said(response, 503, `not ready: ${missing.join(', ')}`);
}

function said(response: ServerResponse, status: number, words: string): void {
  response.writeHead(status, { 'content-type': 'text/plain' }).end(`${words}\n`);
}
