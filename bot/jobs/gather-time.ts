import { createHash } from 'node:crypto';
import { MS_PER_MIN } from '../../rules/index.ts';

const EARLIEST_MIN = 34;
const LATEST_MIN = 5;
/** Services are busiest when everybody's clock strikes; MET Norway asks to keep off the hour. */
const BUSY_MIN = 3;
const MIN_PER_H = 60;

/**
 * When to fetch a cell's forecast for a post: between half an hour and a few minutes before it, the same for every process
 * but different from cell to cell, and never near the full hour.
 */
export function gatherAt(cellId: string, neededAt: Date): Date {
  const spreadMs = (EARLIEST_MIN - LATEST_MIN - 2 * BUSY_MIN) * MS_PER_MIN;
  const share = createHash('sha256').update(cellId).digest().readUInt32BE(0) / 2 ** 32;
  const atMs = neededAt.getTime() - LATEST_MIN * MS_PER_MIN - share * spreadMs;
  return new Date(isBusy(atMs) ? atMs - 2 * BUSY_MIN * MS_PER_MIN : atMs);
}

function isBusy(atMs: number): boolean {
  const minute = (atMs / MS_PER_MIN) % MIN_PER_H;
  return minute < BUSY_MIN || minute >= MIN_PER_H - BUSY_MIN;
}
