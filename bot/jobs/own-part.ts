import type { Garden } from '../store/port/channels.ts';
import type { Claim } from '../store/port/deliveries.ts';
import type { Store } from '../store/store.ts';
import { clubWarning } from '../text/club-warning.ts';
import type { NightDesk } from './club-night.ts';
import { type Made, NOTHING } from './made.ts';
import { clubTelling, isKnown, ownReply } from './telling.ts';
import { type Work, workOf } from './work.ts';

type OwnPart = Extract<Work, { kind: 'own-part' }>;

/** A member's own part of a channel's warning, worked out for the one garden. */
export async function ownPart(
  { memberId, siteId }: OwnPart,
  claim: Claim,
  now: Date,
  world: { readonly store: Store; readonly nights: NightDesk },
): Promise<Made> {
  const garden = await keptGarden(world.store, memberId, siteId);
  if (garden === undefined) return { kind: 'drop', problem: 'left' };
  const night = await world.nights.gardenNight(garden, claim.night, now);
  if (night === 'no-night') return NOTHING;
  const to = { kind: 'member', memberId } as const;
  if (isKnown(night)) {
    const reply = ownReply(night, now);
    const headline = isWorse(claim) ? `Worse than I said. ${reply.headline}` : reply.headline;
    return { kind: 'post', to, reply: { ...reply, headline } };
  }
  const club = { name: claim.night, known: [], unknown: [night], failedCount: 0 };
  const reply = clubWarning(clubTelling(club, { now, markedBeds: 0, ahead: undefined }));
  return { kind: 'post', to, reply };
}

/** The copy of a second post. */
function isWorse({ kind, night }: Claim): boolean {
  const [ofChannel = ''] = kind.split(':');
  return workOf({ placeId: '', night, kind: ofChannel })?.kind === 'check';
}

async function keptGarden(store: Store, memberId: string, siteId: string): Promise<Garden | undefined> {
  const [member, site] = await Promise.all([store.members.find(memberId), store.sites.find(memberId, siteId)]);
  if (member === undefined || site === undefined || !member.directMessages) return undefined;
  const [beds, spareCovers] = await Promise.all([store.beds.list(memberId, siteId), store.shed.list(memberId)]);
  return { member, site, beds, spareCovers, wantsDirect: true };
}
