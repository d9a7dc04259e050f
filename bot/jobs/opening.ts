import { MS_PER_MIN, OPENING_LIMIT_C } from '../../rules/index.ts';
import { learnedSite } from '../learning/learned-site.ts';
import type { Garden } from '../store/port/channels.ts';
import type { Claim } from '../store/port/deliveries.ts';
import { clubOpeningUnknown } from '../text/club-opening.ts';
import { cellOf } from './cell.ts';
import type { CellDesk } from './cell-desk.ts';
import type { Isolated, NightDesk } from './club-night.ts';
import type { GardenDay, JobServices } from './job-services.ts';
import { type Made, NOTHING } from './made.ts';
import { withMorningQuestions } from './morning-questions.ts';
import { commonReader } from './telling.ts';

/** Covers hardly pass their limit in the first hour of sun: a forecast is waited for until so long before it is too late (judgement). */
const NOTICE_BEFORE_END_MIN = 120;
const TRY_AGAIN_MIN = 10;

export interface OpeningWorld {
  readonly cells: CellDesk;
  readonly nights: NightDesk;
  readonly isolated: Isolated;
}

/** The opening plan of a channel's morning, if there is something to open, or that there is no forecast to plan by. */
export async function openingPost(claim: Claim, now: Date, services: JobServices, world: OpeningWorld): Promise<Made> {
  const { store, opening } = services;
  const channel = await store.channels.find(claim.placeId);
  if (channel === undefined || channel.paused !== undefined) return { kind: 'drop', problem: 'paused-or-stopped' };
  if (opening === undefined || !channel.morningPost) return NOTHING;
  const gardens = world.nights.wokenWith(await store.channels.gardens(channel.id), claim);
  const planted = gardens.filter(hasCrops);
  const days = await gardenDays(planted, claim, now, { ...world, store });
  const to = { kind: 'channel', channelId: channel.id } as const;
  if (days.length === 0 && planted.length > 0) {
    const waitUntil = new Date(claim.giveUpAt.getTime() - NOTICE_BEFORE_END_MIN * MS_PER_MIN);
    if (now < waitUntil) {
      const until = new Date(Math.min(waitUntil.getTime(), now.getTime() + TRY_AGAIN_MIN * MS_PER_MIN));
      return { kind: 'later', until, problem: 'no-forecast' };
    }
    return { kind: 'post', to, reply: clubOpeningUnknown(commonReader(planted), OPENING_LIMIT_C) };
  }
  const plan = await opening.openingPlan(days, {
    now,
    isolated: world.isolated,
    unknownCount: planted.length - days.length,
  });
  const reply = await withMorningQuestions(plan, planted, claim.night, store);
  return reply === undefined ? NOTHING : { kind: 'post', to, reply };
}

async function gardenDays(
  gardens: readonly Garden[],
  { night: name }: Claim,
  now: Date,
  { nights, cells, isolated, store }: OpeningWorld & Pick<JobServices, 'store'>,
): Promise<readonly GardenDay[]> {
  const days: GardenDay[] = [];
  for (const garden of gardens) {
    const night = nights.nightOf(garden, name);
    const known = night && (await cells.known(cellOf(garden.site), { night, name, now }));
    if (known?.kind !== 'known') continue;
    const learned = await isolated(() => learnedSite(store, garden, now));
    days.push({ garden: { ...garden, ...(learned && { learned }) }, forecast: known.forecast });
  }
  return days;
}

function hasCrops({ beds }: Garden): boolean {
  return beds.some(({ plantings }) => plantings.length > 0);
}
