import type { IncomingMessage, ServerResponse } from 'node:http';

export type Json = Readonly<Record<string, unknown>>;

export interface SentFile {
  readonly name: string;
  readonly bytes: Buffer;
}

/** A request as it came in, for tests to look at. */
export interface RecordedRequest {
  readonly method: string;
  /** Without the base and the version. */
  readonly path: string;
  readonly query: URLSearchParams;
  readonly headers: IncomingMessage['headers'];
  readonly body: unknown;
  readonly files: readonly SentFile[];
  readonly atMs: number;
}

export interface Answer {
  readonly status: number;
  readonly json?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
}

/** An error as Discord words them. */
export function refusal(status: number, code: number, message: string): Answer {
  return { status, json: { code, message } };
}

/** Reads a request, JSON or multipart with `payload_json`. */
export async function recorded(request: IncomingMessage, base: string): Promise<RecordedRequest> {
  const url = new URL(request.url ?? '/', 'http://double');
  const chunks: Buffer[] = [];
  for await (const chunk of request as AsyncIterable<Buffer>) chunks.push(chunk);
  const bytes = Buffer.concat(chunks);
  const { body, files } = await parts(bytes, request.headers['content-type'] ?? '');
  return {
    method: request.method ?? 'GET',
    path: url.pathname.slice(base.length),
    query: url.searchParams,
    headers: request.headers,
    body,
    files,
    atMs: performance.now(),
  };
}

async function parts(bytes: Buffer, contentType: string): Promise<{ body: unknown; files: SentFile[] }> {
  if (bytes.length === 0) return { body: undefined, files: [] };
  if (!contentType.startsWith('multipart/form-data')) return { body: JSON.parse(bytes.toString('utf8')), files: [] };
  const form = await new Response(new Uint8Array(bytes), { headers: { 'content-type': contentType } }).formData();
  const files: SentFile[] = [];
  let body: unknown;
  for (const [name, value] of form) {
    if (name === 'payload_json') body = JSON.parse(String(value));
    else if (typeof value !== 'string') {
      files.push({ name: value.name, bytes: Buffer.from(await value.arrayBuffer()) });
    }
  }
  return { body, files };
}

export function sent(response: ServerResponse, answer: Answer): void {
  if (response.destroyed) return;
  const json = answer.json === undefined ? undefined : JSON.stringify(answer.json);
  response.writeHead(answer.status, {
    ...(json === undefined ? {} : { 'content-type': 'application/json' }),
    ...answer.headers,
  });
  response.end(json);
}
