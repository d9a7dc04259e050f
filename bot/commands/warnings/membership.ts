import { z } from 'zod';
import { distanceKm } from '../../ground/distance.ts';
import { PlainProblem } from '../../ground/errors.ts';
import type { Site } from '../../store/port/sites.ts';
import type { Store } from '../../store/store.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import type { Action, ButtonHandler } from '../command.ts';
import { storeOf } from '../kept-for.ts';
import { checkedOptions, maybe, yesNo } from '../options.ts';
import { ownSite, siteOption } from '../site/own-sites.ts';
import { coordinateWords } from '../site/place-words.ts';
import { read } from '../typed/read.ts';
import { channelOption, channelSchema, neededSubscription, type Target, targetOf } from './target.ts';

const joinSchema = z.object({
  site: maybe(read),
  direct: maybe(yesNo('direct')),
  sure: maybe(yesNo('sure')),
  channel: channelSchema,
});

/** Clubs lie within a day's drive; a lost minus sign is farther off (judgement). [km] */
const FAR_KM = 1000;
const PREFIX = 'join-far:';

export const JOIN_WARNINGS: Action = {
  description: 'Has your beds looked after by the warnings here',
  example: 'warnings join direct:yes',
  options: [
    siteOption('Which of your sites; your usual one unless you say'),
    { name: 'direct', description: 'Write your own part to you directly as well?', kind: 'yes-no' },
    { name: 'sure', description: 'Yes: join though the site is far from the others', kind: 'yes-no' },
    channelOption,
  ],
  private: true,
  async run(request, services) {
    const store = storeOf(services);
    const { site: typed, direct, sure, channel } = checkedOptions(request, joinSchema);
    const target = targetOf(request, channel);
    const { id } = await neededSubscription(store, target);
    const site = await ownSite(store, request, typed);
    const wish = { target, site, siteId: typed === undefined ? undefined : site.id, wantsDirect: direct ?? false };
    if (sure !== true && (await isFarFromOthers(store, id, site))) return farQuestion(wish);
    return joined(request, store, wish);
  },
};

/** Joins as it was asked about; the press counts for the pressing member's own site. */
export const JOIN_FAR_BUTTON: ButtonHandler = {
  prefix: PREFIX,
  private: true,
  async press(press, services) {
    const store = storeOf(services);
    const [channel, direct, chosen = '', siteId = ''] = press.buttonId.slice(PREFIX.length).split(':');
    const target = targetOf(press, channel === press.place.channelId ? undefined : channel);
    await neededSubscription(store, target);
    const site = await store.sites.find(press.memberId, siteId);
    if (site === undefined) throw new PlainProblem('You have no such site any more.');
    return joined(press, store, {
      ...{ target, site, wantsDirect: direct === 'direct' },
      siteId: chosen === 'chosen' ? site.id : undefined,
    });
  },
};

interface JoinWish {
  readonly target: Target;
  readonly site: Site;
  /** Undefined: whatever is the member's usual one. */
  readonly siteId: string | undefined;
  readonly wantsDirect: boolean;
}

async function isFarFromOthers(store: Store, channelId: string, site: Site): Promise<boolean> {
  const others = (await store.channels.gardens(channelId)).filter(({ member }) => member.id !== site.memberId);
  return others.length > 0 && others.every((other) => distanceKm(other.site, site) > FAR_KM);
}

/** Says nothing of where the others are. */
function farQuestion({ target, site, siteId, wantsDirect }: JoinWish): Reply {
  const how = [target.id, wantsDirect ? 'direct' : '', siteId === undefined ? '' : 'chosen', site.id];
  return {
    headline: `${site.name} is far from everybody else here. Is it right?`,
    sections: [
      {
        lines: [
          `I have it at ${coordinateWords(site)}, by the clock of ${site.timeZone}.`,
          'If a minus sign got lost, set it again with /site change. If it is right, press the button or say sure:yes.',
        ],
      },
    ],
    buttons: [{ id: `${PREFIX}${how.join(':')}`, label: 'It is right: join' }],
    private: true,
  };
}

async function joined(
  { memberId, locale, now }: Pick<Request, 'memberId' | 'locale' | 'now'>,
  store: Store,
  { target, site, siteId, wantsDirect }: JoinWish,
): Promise<Reply> {
  await store.channels.join(target.id, memberId, { siteId, wantsDirect }, now);
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
}

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
