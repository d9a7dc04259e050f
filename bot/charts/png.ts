import { promisify } from 'node:util';
import { crc32, deflate } from 'node:zlib';

/** An image of 8-bit red, green, blue and opacity, row by row from the top. */
export interface Pixels {
  readonly rgba: Uint8Array;
  readonly width: number;
  readonly height: number;
}

const deflated = promisify(deflate);
const BYTES_PER_PIXEL = 4;
const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const HEADER_BYTES = 13;
const BITS_PER_CHANNEL = 8;
const TRUECOLOUR_WITH_ALPHA = 6;

/**
 * The image as PNG, packed off the event loop. The renderer's own packing would hold everything up for some 20 ms.
 *
 * @see PNG specification, third edition (W3C 2025), sections 5 and 11.2
 */
export async function pngFrom({ rgba, width, height }: Pixels): Promise<Uint8Array> {
  const rowBytes = width * BYTES_PER_PIXEL;
  // Each row begins with the number of its filter; none is used.
  const rows = Buffer.alloc(height * (rowBytes + 1));
  for (let row = 0; row < height; row += 1) {
    rows.set(rgba.subarray(row * rowBytes, (row + 1) * rowBytes), row * (rowBytes + 1) + 1);
  }
  const header = Buffer.alloc(HEADER_BYTES);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([BITS_PER_CHANNEL, TRUECOLOUR_WITH_ALPHA], 8);
  return Buffer.concat([
    SIGNATURE,
    chunk('IHDR', header),
    chunk('IDAT', await deflated(rows)),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type: string, data: Buffer): Buffer {
  const typed = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const ends = Buffer.alloc(8);
  ends.writeUInt32BE(data.length, 0);
  ends.writeUInt32BE(crc32(typed), 4);
  return Buffer.concat([ends.subarray(0, 4), typed, ends.subarray(4)]);
}
