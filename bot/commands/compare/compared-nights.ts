import { nightFrom } from '../../../rules/index.ts';
import { type ComparedNight, madeUpNight, ownNight } from '../../outlook/comparison.ts';
import type { Garden } from '../../outlook/garden.ts';
import { storedGarden } from '../../outlook/stored-garden.ts';
import type { Credit } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import { meant } from '../meant.ts';
import type { Services } from '../services.ts';

/** A member's garden and the nights on which covers are held side by side there. */
export interface ComparedAt {
  /** Absent where no place is known. */
  readonly garden: Garden | undefined;
  /** The first counts for verdicts and order. */
  readonly nights: readonly [ComparedNight, ...ComparedNight[]];
  readonly credits: readonly Credit[];
}

export interface NightsWish {
  readonly site: string | undefined;
  readonly lowC: number | undefined;
}

/** The place's own coming night and the reference night; a low that is named takes the place of both. */
export async function comparedAt(
  { memberId, now }: Request,
  wish: NightsWish,
  services: Services,
): Promise<ComparedAt> {
  const known = await knownGarden(memberId, wish.site, services);
  if (wish.lowC !== undefined) {
    return { garden: known, nights: [madeUpNight(known, now, wish.lowC)], credits: [] };
  }
  const reference = madeUpNight(known, now);
  const span = known && nightFrom(now, known.latitudeDeg, known.longitudeDeg);
  if (known === undefined || span === undefined || services.forecasts === undefined) {
    return { garden: known, nights: [reference], credits: [] };
  }
  const { latitudeDeg, longitudeDeg, elevationM } = known;
  const place = { latitudeDeg, longitudeDeg, ...(elevationM !== undefined && { elevationM }) };
  const forecast = await services.forecasts.forecastFor(place, now, { night: span });
  const own = ownNight(known, forecast, now);
  return {
    garden: known,
    nights: own === undefined ? [reference] : [own, reference],
    credits: forecast.credits,
  };
}

async function knownGarden(
  memberId: string,
  typed: string | undefined,
  { store }: Services,
): Promise<Garden | undefined> {
  const sites = (await store?.sites.list(memberId)) ?? [];
  const [usual] = sites;
  if (usual === undefined || store === undefined) return undefined;
  const labelled = sites.map((each) => ({ ...each, label: each.name }));
  const site = typed === undefined ? usual : meant(labelled, typed, 'site');
  return storedGarden({ site, beds: await store.beds.list(memberId, site.id), spareCovers: [] });
}
