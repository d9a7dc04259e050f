import { z } from 'zod';
import { PlainProblem } from '../../ground/errors.ts';
import type { Site } from '../../store/port/sites.ts';
import type { Store } from '../../store/store.ts';
import type { Reply } from '../../talk/reply.ts';
import { counted } from '../../text/phrases.ts';
import type { Action, ButtonHandler } from '../command.ts';
import { storeOf } from '../kept-for.ts';
import { checkedOptions, maybe, option, yesNo } from '../options.ts';
import { read } from '../typed/read.ts';
import { ownSite, siteOption } from './own-sites.ts';

const PREFIX = 'remove-site:';

const schema = z.object({
  site: option('Say which site to remove, such as site:Allotment.', read),
  sure: maybe(yesNo('sure')),
});

export const REMOVE_SITE: Action = {
  description: 'Forgets a site, its beds and their readings',
  example: 'site remove site:Allotment',
  options: [
    siteOption('Which of your sites', true),
    { name: 'sure', description: 'Yes: at once, without asking again', kind: 'yes-no' },
  ],
  private: true,
  async run(request, services) {
    const store = storeOf(services);
    const { site: typed, sure } = checkedOptions(request, schema);
    const site = await ownSite(store, request, typed);
    const beds = await store.beds.list(request.memberId, site.id);
    if (beds.length === 0 || sure === true) return removed(store, request.memberId, site);
    return {
      headline: `Remove ${site.name} with ${counted(beds.length, 'bed')} and all their readings?`,
      sections: [{ lines: ['Press the button, or give the command again with sure:yes.'] }],
      buttons: [{ id: `${PREFIX}${site.id}`, label: 'Remove it all' }],
      private: true,
    };
  },
};

/** The press counts for the pressing member's own site, whosever message it was. */
export const REMOVE_SITE_BUTTON: ButtonHandler = {
  prefix: PREFIX,
  private: true,
  async press({ memberId, buttonId }, services) {
    const store = storeOf(services);
    const site = await store.sites.find(memberId, buttonId.slice(PREFIX.length));
    if (site === undefined) throw new PlainProblem('You have no such site any more.');
    return removed(store, memberId, site);
  },
};

async function removed(store: Store, memberId: string, site: Site): Promise<Reply> {
  await store.sites.remove(memberId, site.id);
  const [next] = await store.sites.list(memberId);
  const then = site.isDefault && next !== undefined ? [`${next.name} is now used unless you name another site.`] : [];
  return { headline: `${site.name} is forgotten.`, sections: [{ lines: then }], private: true };
}
