import { z } from 'zod';
import { PlainProblem } from '../../ground/errors.ts';
import type { Action } from '../command.ts';
import { storeOf } from '../kept-for.ts';
import { checkedOptions, maybe, yesNo } from '../options.ts';
import { ownSite, siteOption } from '../site/own-sites.ts';
import { read } from '../typed/read.ts';
import { channelOption, channelSchema, neededSubscription, targetOf } from './target.ts';

const joinSchema = z.object({ site: maybe(read), direct: maybe(yesNo('direct')), channel: channelSchema });

export const JOIN_WARNINGS: Action = {
  description: 'Has your beds looked after by the warnings here',
  example: 'warnings join direct:yes',
  options: [
    siteOption('Which of your sites; your usual one unless you say'),
    { name: 'direct', description: 'Write your own part to you directly as well?', kind: 'yes-no' },
    channelOption,
  ],
  private: true,
  async run(request, services) {
    const store = storeOf(services);
    const { memberId, locale, now } = request;
    const { site: typed, direct, channel } = checkedOptions(request, joinSchema);
    const target = targetOf(request, channel);
    const { id } = await neededSubscription(store, target);
    const site = await ownSite(store, request, typed);
    const wantsDirect = direct ?? false;
    await store.channels.join(id, memberId, { siteId: typed === undefined ? undefined : site.id, wantsDirect }, now);
    await store.members.change(memberId, { locale, ...(wantsDirect && { directMessages: true }) }, now);
    const beds = await store.beds.list(memberId, site.id);
    return {
      headline: `The warnings ${target.words} look after ${site.name} from now on.`,
      sections: [
        {
          lines: [
            ...(wantsDirect ? ['Your own part comes to you directly as well.'] : []),
            ...(beds.length === 0 ? ['Tell me your beds with /bed add.'] : []),
            'Where you grow stays between us.',
          ],
        },
      ],
      private: true,
    };
  },
};

export const LEAVE_WARNINGS: Action = {
  description: 'Has your beds looked after no longer by the warnings here',
  example: 'warnings leave',
  options: [channelOption],
  private: true,
  async run(request, services) {
    const store = storeOf(services);
    const { channel } = checkedOptions(request, z.object({ channel: channelSchema }));
    const target = targetOf(request, channel);
    const { id } = await neededSubscription(store, target);
    if (!(await store.channels.leave(id, request.memberId))) throw new PlainProblem('You had not joined them.');
    return { headline: `The warnings ${target.words} leave your beds out from now on.`, sections: [], private: true };
  },
};
