import { PlainProblem } from '../../ground/errors.ts';
import type { Bed } from '../../store/port/beds.ts';
import type { Site } from '../../store/port/sites.ts';
import type { Store } from '../../store/store.ts';
import type { OptionSpec } from '../command.ts';
import { meant } from '../meant.ts';
import { suggestOwn } from '../suggest/suggest-own.ts';

/** A bed with the site it lies at. */
export interface OwnBed extends Bed {
  readonly site: Site;
  readonly label: string;
}

/** The member's beds, those of the usual site first; told apart by their site where there are several. */
export async function ownBeds(store: Store, memberId: string): Promise<readonly OwnBed[]> {
  const sites = await store.sites.list(memberId);
  const beds = await store.beds.list(memberId);
  return sites.flatMap((site) =>
    beds
      .filter((bed) => bed.siteId === site.id)
      .map((bed) => ({ ...bed, site, label: sites.length === 1 ? bed.name : `${bed.name} (${site.name})` })),
  );
}

/**
 * The bed that is named.
 *
 * @throws PlainProblem when there is none, or none of that name.
 */
export async function ownBed(store: Store, memberId: string, typed: string): Promise<OwnBed> {
  const beds = await ownBeds(store, memberId);
  if (beds.length === 0) throw new PlainProblem('You have no bed here yet. Tell me one with /bed add.');
  return meant(beds, typed, 'bed');
}

export const bedOption: OptionSpec = {
  name: 'bed',
  description: 'Which of your beds',
  kind: 'text',
  required: true,
  suggest: async (typed, { memberId }, { store }) =>
    store === undefined ? [] : suggestOwn(typed, await ownBeds(store, memberId)),
};
