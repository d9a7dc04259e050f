import { createHash } from 'node:crypto';
import type { DeliveryKey } from './port/deliveries.ts';

const NONCE_CHARACTERS = 24;
const BASE32 = 'abcdefghijklmnopqrstuvwxyz234567';

/** The ledger's place for what goes to a member directly; erasing the member erases it too. */
/** A forecast cell, as a place of the ledger. */
export function cellPlace(cellId: string): string {
  return `${CELL_START}${cellId}`;
}

export const CELL_START = 'cell:';

export function directPlace(memberId: string): string {
  return `direct:${memberId}`;
}

/** The same for every attempt at one delivery, so that a chat service can refuse the second copy. Services allow 25 characters. */
export function deliveryNonce(key: DeliveryKey): string {
  const hash = createHash('sha256')
    .update(JSON.stringify([key.placeId, key.night, key.kind]))
    .digest();
  return Array.from(hash.subarray(0, NONCE_CHARACTERS), (byte) => BASE32.charAt(byte % BASE32.length)).join('');
}
