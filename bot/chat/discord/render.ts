import { MessageFlags, type RawFile, type RESTAPIAttachment } from 'discord.js';
import { drawn } from '../../talk/plain-text.ts';
import type { Reply } from '../../talk/reply.ts';
import { type ButtonRow, buttonRows, cut } from './buttons.ts';
import { plainLine } from './escape.ts';
import { LIMITS } from './limits.ts';
import { messageText } from './message-text.ts';

/** One message as Discord takes it: the JSON body, and the files that go beside it. */
export interface RenderedMessage {
  readonly body: MessageBody;
  readonly files: RawFile[];
}

/** The fields that first answers, edits, follow-ups and channel messages have in common. */
export interface MessageBody {
  readonly content: string;
  readonly components: ButtonRow[];
  readonly attachments: RESTAPIAttachment[];
  /** Nobody is pinged, whatever the text says. */
  readonly allowed_mentions: { readonly parse: [] };
  readonly flags?: MessageFlags;
}

export interface RenderOptions {
  /** Largest file that the place takes. */
  readonly fileBytes?: number;
  /** Only the asking person sees it; interactions alone can do that. */
  readonly private?: boolean;
  /** Small print by which the post can be found again. */
  readonly reference?: string;
  /** Longest text; Discord’s own limit unless told. */
  readonly characters?: number;
}

/** Kept for the JSON and for a text that must be attached. */
const RESERVED_BYTES = 1024 * 1024;

interface Attachable {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly altText?: string;
}

/**
 * A reply as one message within Discord's limits. One message, not several: it can be posted once by nonce, edited, and
 * is never torn apart by others talking. What does not fit stands in an attached text.
 */
export function rendered(reply: Reply, options: RenderOptions = {}): RenderedMessage {
  const fileBytes = options.fileBytes ?? LIMITS.fileBytes;
  const picture = reply.picture === undefined ? [] : [{ ...reply.picture, bytes: reply.picture.png }];
  const { kept, leftOut } = sorted([...picture, ...(reply.files ?? [])], fileBytes);
  const notes = leftOut.map((file) => `${fileName(file.name)} could not be attached: it is too much for this chat.`);
  const text = messageText(reply, notes, { reference: options.reference, characters: options.characters });
  const attached = text.shortened ? [...kept, wholeAnswer(reply)] : kept;
  return {
    body: {
      content: text.content,
      components: buttonRows(reply.buttons ?? []),
      attachments: attached.map(attachment),
      allowed_mentions: { parse: [] },
      ...(options.private === true ? { flags: MessageFlags.Ephemeral } : {}),
    },
    files: attached.map((file) => ({ name: fileName(file.name), data: Buffer.from(file.bytes) })),
  };
}

/** The same text without markup, for a reader of the attached file. */
function wholeAnswer(reply: Reply): Attachable {
  return { name: 'whole-answer.txt', bytes: Buffer.from(drawn(reply, Number.POSITIVE_INFINITY)) };
}

/** Files that the message can carry, one place and its bytes being kept for a text that must be attached. */
function sorted(files: readonly Attachable[], fileBytes: number): { kept: Attachable[]; leftOut: Attachable[] } {
  const kept: Attachable[] = [];
  const leftOut: Attachable[] = [];
  let room = LIMITS.requestBytes - RESERVED_BYTES;
  for (const file of files) {
    const size = file.bytes.byteLength;
    const fits = size > 0 && size <= fileBytes && size <= room && kept.length < LIMITS.files - 1;
    if (fits) room -= size;
    (fits ? kept : leftOut).push(file);
  }
  return { kept, leftOut };
}

function attachment(file: Attachable, index: number): RESTAPIAttachment {
  const altText = cut(plainLine(file.altText ?? ''), LIMITS.altTextCharacters);
  return { id: String(index), filename: fileName(file.name), ...(altText === '' ? {} : { description: altText }) };
}

/** Letters, digits, dot, dash and underline, which Discord keeps as they are. */
function fileName(name: string): string {
  const safe = name.replace(/[^A-Za-z0-9._-]/g, '-').slice(-80);
  return /[A-Za-z0-9]/.test(safe) ? safe : 'file';
}
