import type { Claim } from '../store/port/deliveries.ts';
import { cellOf } from './cell.ts';
import type { CellDesk } from './cell-desk.ts';
import type { NightDesk } from './club-night.ts';
import type { GardenDay, JobServices } from './job-services.ts';
import { type Made, NOTHING } from './made.ts';

/** The opening plan of a channel's morning, if there is something to open. */
export async function openingPost(
  claim: Claim,
  now: Date,
  { store, opening }: JobServices,
  world: { readonly cells: CellDesk; readonly nights: NightDesk },
): Promise<Made> {
  const channel = await store.channels.find(claim.placeId);
  if (channel === undefined || channel.paused !== undefined) return { kind: 'drop', problem: 'paused-or-stopped' };
  if (opening === undefined || !channel.morningPost) return NOTHING;
  const days: GardenDay[] = [];
  for (const garden of await store.channels.gardens(channel.id)) {
    const night = world.nights.nightOf(garden, claim.night);
    if (night === undefined) continue;
    const known = await world.cells.known(cellOf(garden.site), { night, name: claim.night, now });
    if (known.kind === 'known') days.push({ garden, forecast: known.forecast });
  }
  const reply = days.length === 0 ? undefined : await opening.openingPlan(days, claim.night, now);
  return reply === undefined ? NOTHING : { kind: 'post', to: { kind: 'channel', channelId: channel.id }, reply };
}
