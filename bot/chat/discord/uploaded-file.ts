import type { APIAttachment } from 'discord.js';
import { request } from 'undici';
import { PlainProblem } from '../../ground/errors.ts';
import type { UploadedFile } from '../../talk/request.ts';

/** Where Discord keeps what members attach. */
const ATTACHMENT_HOSTS = new Set(['cdn.discordapp.com', 'media.discordapp.net']);
const WITHIN_MS = 10_000;
/** What is read of an answer that is not the file, to keep the connection; beyond it the connection is closed. */
const MOST_DRAINED_BYTES = 64 * 1024;

/**
 * A member's attachment, fetched only when a command asks for its text.
 *
 * @param apiBase - Discord's address in use: where it is on this machine, attachments may be so too.
 */
export function uploadedFile(attachment: APIAttachment, apiBase: string): UploadedFile {
  return {
    name: attachment.filename,
    sizeBytes: attachment.size,
    contentType: attachment.content_type,
    text: (maxBytes) => fetchedText(attachment, apiBase, maxBytes),
  };
}

async function fetchedText(attachment: APIAttachment, apiBase: string, maxBytes: number): Promise<string> {
  if (!mayFetch(attachment.url, apiBase)) throw new PlainProblem('That file is not kept at Discord; attach it again.');
  if (attachment.size > maxBytes) throw tooBig(maxBytes);
  const bytes = await fetchedBytes(attachment.url, maxBytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new PlainProblem('That file is not text; attach a text file in UTF-8, such as JSON or CSV.');
  }
}

/** Never more than `maxBytes`, whatever size was announced. */
async function fetchedBytes(url: string, maxBytes: number): Promise<Buffer> {
  const chunks: Buffer[] = [];
  let size = 0;
  try {
    const { statusCode, body } = await request(url, { signal: AbortSignal.timeout(WITHIN_MS) });
    if (statusCode !== 200) {
      // Destroying it would raise an error that nobody listens to, and end the program.
      await body.dump({ limit: MOST_DRAINED_BYTES });
      throw new PlainProblem('Discord does not have that file any more; attach it again.');
    }
    for await (const chunk of body as AsyncIterable<Buffer>) {
      size += chunk.length;
      if (size > maxBytes) throw tooBig(maxBytes);
      chunks.push(chunk);
    }
  } catch (error) {
    if (error instanceof PlainProblem) throw error;
    throw new PlainProblem('That file could not be fetched from Discord; please try again in a minute.');
  }
  return Buffer.concat(chunks);
}

function mayFetch(address: string, apiBase: string): boolean {
  const url = URL.canParse(address) ? new URL(address) : undefined;
  if (url === undefined) return false;
  if (url.protocol === 'https:') return ATTACHMENT_HOSTS.has(url.hostname);
  const base = new URL(apiBase);
  return url.protocol === 'http:' && base.protocol === 'http:' && url.hostname === base.hostname;
}

function tooBig(maxBytes: number): PlainProblem {
  return new PlainProblem(`That file is too big: at most ${Math.floor(maxBytes / 1024)} KiB can be read.`);
}
