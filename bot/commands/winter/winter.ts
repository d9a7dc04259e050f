import { DateTime } from 'luxon';
import { z } from 'zod';
import type { Crop } from '../../../rules/index.ts';
import { storedGarden } from '../../outlook/stored-garden.ts';
import { type DatedPlanting, winterPlan } from '../../outlook/winter-plan.ts';
import type { Bed } from '../../store/port/beds.ts';
import type { Site } from '../../store/port/sites.ts';
import type { Store } from '../../store/store.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import type { Reader } from '../../text/reader.ts';
import { type AverageFrosts, cropWinterReply, winterReply } from '../../text/winter-reply.ts';
import type { Command } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { checkedOptions, maybe } from '../options.ts';
import type { Services } from '../services.ts';
import { ownSite, siteOption } from '../site/own-sites.ts';
import { typedMonthDay } from '../typed/month-day.ts';
import { read } from '../typed/read.ts';

const schema = z.object({
  site: maybe(read),
  'first-frost': maybe(typedMonthDay),
  'last-frost': maybe(typedMonthDay),
});

export const WINTER: Command = {
  name: 'winter',
  description: 'Your winter calendar: short days, last sowing dates, and where your plantings stand',
  action: {
    description: 'Your winter calendar: short days, last sowing dates, and where your plantings stand',
    example: 'winter first-frost:"Oct 12" last-frost:"May 5"',
    options: [
      siteOption('Which of your sites; the usual one unless you say'),
      { name: 'first-frost', description: 'Average first frost of your place, such as Oct 12', kind: 'text' },
      { name: 'last-frost', description: 'Average last frost of your place, such as May 5', kind: 'text' },
    ],
    private: true,
    run: winter,
  },
};

async function winter(request: Request, services: Services): Promise<Reply> {
  const store = storeOf(services);
  const { site: typed, ...frosts } = checkedOptions(request, schema);
  const reader = await readerFor(request, services);
  const site = await ownSite(store, request, typed);
  const { 'first-frost': first, 'last-frost': last } = frosts;
  return ownWinterReply(
    { site, reader, now: request.now, frosts: { ...(first && { first }), ...(last && { last }) } },
    store,
  );
}

export interface OwnWinterWish {
  readonly site: Site;
  readonly reader: Reader;
  readonly now: Date;
  readonly frosts?: AverageFrosts;
  /** Only these are asked for. */
  readonly crops?: readonly Crop[];
}

/** The winter at a member's own site, for what grows in the beds there. */
export async function ownWinterReply(wish: OwnWinterWish, store: Store): Promise<Reply> {
  const { site, reader, now, frosts = {}, crops = [] } = wish;
  const beds = await store.beds.list(site.memberId, site.id);
  const garden = storedGarden({ site, beds, spareCovers: [] });
  const plan = winterPlan(
    garden,
    beds.flatMap((bed) => dated(bed, site.timeZone)),
    now,
    crops,
  );
  const telling = { plan, frosts, reader, now };
  return crops.length > 0 ? cropWinterReply(telling, crops) : winterReply(telling);
}

/** Days are kept as local dates; the calendar counts from their noon. */
function dated({ name, plantings }: Bed, timeZone: string): DatedPlanting[] {
  const noon = (date: string) => DateTime.fromISO(date, { zone: timeZone }).set({ hour: 12 }).toJSDate();
  return plantings.map(({ crop, stage, since, sown, setOut }) => ({
    bedName: name,
    cropId: crop,
    stage,
    since: noon(since),
    ...(sown !== undefined && { sown: noon(sown) }),
    ...(setOut !== undefined && { setOut: noon(setOut) }),
  }));
}
