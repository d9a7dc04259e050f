import { createPublicKey, verify } from 'node:crypto';

/** What goes before the 32 bytes of an Ed25519 key to make it a key in the SPKI form that Node reads (RFC 8410). */
const SPKI_PREFIX = Buffer.from('302a300506032b6570032100', 'hex');

/** How far Discord's clock and ours may be apart; an older request may be a replay. Judgement. */
const WINDOW_S = 300;

export interface SignedRequest {
  /** Header `X-Signature-Ed25519`, hexadecimal. */
  readonly signature: string | undefined;
  /** Header `X-Signature-Timestamp`, in seconds. */
  readonly timestamp: string | undefined;
  /** As it came: JSON written anew would not verify. */
  readonly body: Buffer;
}

/**
 * Tells whether a request comes from Discord, and comes now.
 *
 * @param publicKey - Of the application, 64 hexadecimal digits.
 */
export function signatureCheck(publicKey: string): (request: SignedRequest, wallMs: number) => boolean {
  const der = Buffer.concat([SPKI_PREFIX, Buffer.from(publicKey, 'hex')]);
  const key = createPublicKey({ key: der, format: 'der', type: 'spki' });
  return ({ signature, timestamp, body }, wallMs) => {
    if (signature === undefined || !/^[0-9a-fA-F]{128}$/.test(signature)) return false;
    if (timestamp === undefined || !/^\d{1,12}$/.test(timestamp)) return false;
    if (Math.abs(wallMs / 1000 - Number(timestamp)) > WINDOW_S) return false;
    return verify(null, Buffer.concat([Buffer.from(timestamp), body]), key, Buffer.from(signature, 'hex'));
  };
}

/**
 * Remembers what has been answered, so that a request caught on its way cannot be sent again while its signature is
 * fresh. Only this process's memory: another process of ours would be refused by Discord when it answers.
 */
export class Seen {
  readonly #untilMs = new Map<string, number>();

  /** False when the id was met before. */
  isNew(id: string, wallMs: number): boolean {
    this.#forget(wallMs);
    if (this.#untilMs.has(id)) return false;
    this.#untilMs.set(id, wallMs + 2 * WINDOW_S * 1000);
    return true;
  }

  /** The oldest come first. */
  #forget(wallMs: number): void {
    for (const [id, untilMs] of this.#untilMs) {
      if (untilMs > wallMs) return;
      this.#untilMs.delete(id);
    }
  }
}
