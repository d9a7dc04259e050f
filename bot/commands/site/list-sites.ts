import { z } from 'zod';
import type { Site } from '../../store/port/sites.ts';
import type { Section } from '../../talk/reply.ts';
import { counted } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import type { Action } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { checkedOptions, option } from '../options.ts';
import { read } from '../typed/read.ts';
import { ownSite, ownSites, siteOption } from './own-sites.ts';
import { siteLines } from './site-lines.ts';

export const LIST_SITES: Action = {
  description: 'Shows your sites, to you alone',
  example: 'site list',
  options: [],
  private: true,
  async run(request, services) {
    const store = storeOf(services);
    const sites = await ownSites(store, request.memberId);
    const reader = await readerFor(request, services);
    const beds = await store.beds.list(request.memberId);
    const countOf = (site: Site) => beds.filter((bed) => bed.siteId === site.id).length;
    return {
      headline: sites.length === 1 ? 'You have one site.' : `You have ${sites.length} sites.`,
      sections: sites.map((site) => section(site, countOf(site), reader, request.now)),
      private: true,
    };
  },
};

function section(site: Site, beds: number, reader: Reader, now: Date): Section {
  const title = site.isDefault ? `${site.name} (used unless you name another)` : site.name;
  return { title, lines: [...siteLines(site, reader, now), `${counted(beds, 'bed')}.`] };
}

export const USE_SITE: Action = {
  description: 'Chooses the site that is used unless you name another',
  example: 'site default site:Home',
  options: [siteOption('Which of your sites', true)],
  private: true,
  async run(request, services) {
    const store = storeOf(services);
    const { site: typed } = checkedOptions(
      request,
      z.object({ site: option('Say which site, such as site:Home.', read) }),
    );
    const site = await ownSite(store, request, typed);
    await store.sites.makeDefault(request.memberId, site.id);
    return { headline: `${site.name} is now used unless you name another site.`, sections: [], private: true };
  },
};
