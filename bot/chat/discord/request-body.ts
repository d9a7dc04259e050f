import type { IncomingMessage } from 'node:http';

/** Far more than any interaction. Judgement. */
const BODY_BYTES = 256 * 1024;
/** Of all bodies that are coming in together, none of which is known to be Discord's yet. Judgement. */
const ROOM_BYTES = 8 * 1024 * 1024;

export type BodyProblem = 'too-large' | 'no-room';

/** Takes in bodies of whom nobody knows yet, and holds no more of them at once than there is room for. */
export class BodyRoom {
  readonly #room: number;
  #held = 0;

  constructor(room = ROOM_BYTES) {
    this.#room = room;
  }

  get heldBytes(): number {
    return this.#held;
  }

  /** The whole body as it came; what is wrong as soon as it is too large, whatever was announced. */
  async bodyOf(request: IncomingMessage, most = BODY_BYTES): Promise<Buffer | BodyProblem> {
    if (Number(request.headers['content-length'] ?? 0) > most) return 'too-large';
    const chunks: Buffer[] = [];
    let size = 0;
    try {
      // Reading stops at once, but the connection stays to say why.
      for await (const chunk of request.iterator({ destroyOnReturn: false }) as AsyncIterable<Buffer>) {
        if (size + chunk.length > most) return 'too-large';
        if (this.#held + chunk.length > this.#room) return 'no-room';
        size += chunk.length;
        this.#held += chunk.length;
        chunks.push(chunk);
      }
      return Buffer.concat(chunks);
    } finally {
      this.#held -= size;
    }
  }
}
