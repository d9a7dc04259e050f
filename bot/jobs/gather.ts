import { nightFrom } from '../../rules/index.ts';
import type { Claim } from '../store/port/deliveries.ts';
import { cellFrom } from './cell.ts';
import type { CellDesk } from './cell-desk.ts';
import { type Made, NOTHING } from './made.ts';
import { cellIdOf } from './work.ts';

const DAY_MS = 86_400_000;

/** Fetches a cell's forecast ahead of the posts that need it. A failure is theirs to tell: they try again themselves. */
export async function gather(claim: Claim, now: Date, cells: CellDesk): Promise<Made> {
  const cell = cellFrom(cellIdOf(claim.placeId));
  if (cell === undefined) return { kind: 'drop', problem: 'no-cell' };
  const { latitudeDeg, longitudeDeg } = cell.place;
  const day = { shutBy: now, sunset: now, sunrise: new Date(now.getTime() + DAY_MS) };
  const night = nightFrom(now, latitudeDeg, longitudeDeg) ?? day;
  const known = await cells.gathered(cell, { night, name: claim.night, now });
  return known.kind === 'known' ? NOTHING : { kind: 'drop', problem: 'no-forecast' };
}
