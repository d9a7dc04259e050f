import type { IncomingMessage } from 'node:http';

/** Far more than any interaction. Judgement. */
const BODY_BYTES = 256 * 1024;

/** The whole body as it came; undefined as soon as it is too large, whatever was announced. */
export async function bodyOf(request: IncomingMessage, most = BODY_BYTES): Promise<Buffer | undefined> {
  if (Number(request.headers['content-length'] ?? 0) > most) return undefined;
  const chunks: Buffer[] = [];
  let size = 0;
  // Reading stops at once, but the connection stays to say why.
  for await (const chunk of request.iterator({ destroyOnReturn: false }) as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > most) return undefined;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}
