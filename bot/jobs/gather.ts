import { MS_PER_DAY, MS_PER_H } from '../../rules/index.ts';
import type { Claim } from '../store/port/deliveries.ts';
import { Calendar, solarDay } from './calendar.ts';
import { cellFrom } from './cell.ts';
import type { CellDesk } from './cell-desk.ts';
import { type Made, NOTHING } from './made.ts';
import { cellIdOf } from './work.ts';

/**
 * Fetches a cell's forecast ahead of the posts that need it, for the night that follows their shutting time: where the post
 * is due before sunrise, another night is still going on. A failure is theirs to tell: they try again themselves.
 */
export async function gather(claim: Claim, now: Date, cells: CellDesk): Promise<Made> {
  const cell = cellFrom(cellIdOf(claim.placeId));
  if (cell === undefined) return { kind: 'drop', problem: 'no-cell' };
  const place = { ...cell.place, timeZone: 'UTC' };
  const day = { shutBy: now, sunset: now, sunrise: new Date(now.getTime() + MS_PER_DAY) };
  // A post is given up within the afternoon or evening in which it would have to be acted upon.
  const night =
    new Calendar().night(place, solarDay(new Date(claim.giveUpAt.getTime() - 2 * MS_PER_H), place.longitudeDeg)) ?? day;
  const known = await cells.gathered(cell, { night, name: claim.night, now });
  return known.kind === 'known' ? NOTHING : { kind: 'drop', problem: 'no-forecast' };
}
