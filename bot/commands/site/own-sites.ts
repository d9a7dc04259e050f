import { PlainProblem } from '../../ground/errors.ts';
import type { Site } from '../../store/port/sites.ts';
import type { Store } from '../../store/store.ts';
import type { Request } from '../../talk/request.ts';
import type { OptionSpec } from '../command.ts';
import { meant } from '../meant.ts';
import { suggestOwn } from '../suggest/suggest-own.ts';

export const NO_SITE =
  'I do not know where you grow yet. Tell me with /site set, such as /site set lat:43.10 lon:-76.30.';

/**
 * The member's sites, the usual one first.
 *
 * @throws PlainProblem when there is none.
 */
export async function ownSites(store: Store, memberId: string): Promise<readonly [Site, ...Site[]]> {
  const [first, ...others] = await store.sites.list(memberId);
  if (first === undefined) throw new PlainProblem(NO_SITE);
  return [first, ...others];
}

/** The site that is named, else the usual one. */
export async function ownSite(store: Store, { memberId }: Request, typed: string | undefined): Promise<Site> {
  const sites = await ownSites(store, memberId);
  if (typed === undefined) return sites[0];
  return meant(
    sites.map((site) => ({ ...site, label: site.name })),
    typed,
    'site',
  );
}

export const suggestSites: NonNullable<OptionSpec['suggest']> = async (typed, { memberId }, { store }) => {
  const sites = (await store?.sites.list(memberId)) ?? [];
  return suggestOwn(
    typed,
    sites.map(({ id, name }) => ({ id, name, label: name })),
  );
};

/** The option with which every command lets a site be chosen. */
export function siteOption(description: string, required = false): OptionSpec {
  return { name: 'site', description, kind: 'text', required, suggest: suggestSites };
}
