import { z } from 'zod';
import { PlainProblem } from '../../ground/errors.ts';
import type { Channel, ChannelFacts } from '../../store/port/channels.ts';
import type { Store } from '../../store/store.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import { counted } from '../../text/phrases.ts';
import type { Action, OptionSpec } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { checkedOptions, maybe, wholeNumber, yesNo } from '../options.ts';
import type { Services } from '../services.ts';
import { ownSites } from '../site/own-sites.ts';
import { nextPostLines } from './next-post.ts';
import { refuseWithoutRights } from './own-rights.ts';
import { channelOption, channelSchema, neededSubscription, subscriptionAt, type Target, targetOf } from './target.ts';

/** Time to walk to the garden before the covers must be shut (judgement). */
const USUAL: ChannelFacts = { leadH: 3, morningPost: false, allClear: false };
const LONGEST_LEAD_H = 12;

const SETTING_OPTIONS: readonly OptionSpec[] = [
  { name: 'lead', description: 'Hours before the earliest shutting time; 3 unless you say', kind: 'whole-number' },
  { name: 'morning', description: 'Post an opening plan in the morning as well?', kind: 'yes-no' },
  { name: 'all-clear', description: 'Post also when a night needs nothing?', kind: 'yes-no' },
  channelOption,
];

const settingsSchema = z.object({
  lead: maybe(wholeNumber('lead', 1, LONGEST_LEAD_H)),
  morning: maybe(yesNo('morning')),
  'all-clear': maybe(yesNo('all-clear')),
  channel: channelSchema,
});

const onlyChannel = z.object({ channel: channelSchema });

export const START_WARNINGS: Action = {
  description: 'Starts nightly warnings here, or lets paused ones run again',
  example: 'warnings start lead:3 morning:yes',
  options: SETTING_OPTIONS,
  managersOnly: true,
  private: false,
  async run(request, services) {
    const store = storeOf(services);
    const { target, settings } = settingsFrom(request);
    const known = await subscriptionAt(store, target);
    if (target.kind === 'direct') await ownSites(store, request.memberId);
    else await refuseWithoutRights(services, target);
    const { id, kind, guildId } = target;
    const facts = { ...factsOf(known ?? USUAL), ...settings };
    const channel = await store.channels.start(
      { id, kind, guildId, startedBy: request.memberId, ...facts },
      request.now,
    );
    if (kind === 'direct') await joinAlone(request, store, id);
    return {
      headline: `Warnings come ${target.words} from now on.`,
      sections: [await settingsSection(channel, request, services)],
      private: false,
    };
  },
};

/** In direct messages there is nobody else to join. */
async function joinAlone({ memberId, locale, now }: Request, store: Store, id: string): Promise<void> {
  await store.channels.join(id, memberId, { siteId: undefined, wantsDirect: false }, now);
  await store.members.change(memberId, { directMessages: true, locale }, now);
}

export const SHOW_WARNINGS: Action = {
  description: 'Shows how the warnings are set, and whether you have joined',
  example: 'warnings show',
  options: [channelOption],
  private: true,
  async run(request, services) {
    const store = storeOf(services);
    const target = targetOf(request, checkedOptions(request, onlyChannel).channel);
    const channel = await neededSubscription(store, target);
    const sites = await store.channels.gardens(channel.id);
    const joined = (await store.channels.joinedBy(request.memberId)).some(({ channelId }) => channelId === channel.id);
    const own = joined ? 'You have joined.' : 'You have not joined: /warnings join.';
    return {
      headline: `Warnings come ${target.words}${channel.paused === undefined ? '' : ', but are paused'}.`,
      sections: [
        await settingsSection(channel, request, services),
        { lines: [...pausedLines(channel), `They look after ${counted(sites.length, 'site')}. ${own}`] },
      ],
      private: true,
    };
  },
};

function pausedLines({ paused }: Channel): string[] {
  if (paused === undefined) return [];
  const why =
    paused.reason === 'asked' ? 'Paused because somebody asked for it.' : 'Paused because I could not post there.';
  return [`${why} They run again with /warnings start.`];
}

export const CHANGE_WARNINGS: Action = {
  description: 'Changes when the warnings come and what is posted',
  example: 'warnings change lead:4 all-clear:yes',
  options: SETTING_OPTIONS,
  managersOnly: true,
  private: false,
  async run(request, services) {
    const store = storeOf(services);
    const { target, settings } = settingsFrom(request);
    const { id } = await neededSubscription(store, target);
    if (Object.keys(settings).length === 0) throw new PlainProblem('Say what to change: lead, morning or all-clear.');
    const channel = await store.channels.change(id, settings);
    return {
      headline: `The warnings ${target.words} are changed.`,
      sections: [await settingsSection(channel, request, services)],
      private: false,
    };
  },
};

export const PAUSE_WARNINGS: Action = {
  description: 'Stops the warnings for a while; who has joined stays joined',
  example: 'warnings pause',
  options: [channelOption],
  managersOnly: true,
  private: false,
  run: (request, services) =>
    ended(request, services, async (store, { id, words }) => {
      if (!(await store.channels.pause(id, { reason: 'asked', at: request.now }))) {
        throw new PlainProblem('They are paused already. They run again with /warnings start.');
      }
      return `No warnings come ${words} until /warnings start.`;
    }),
};

export const STOP_WARNINGS: Action = {
  description: 'Ends the warnings and forgets who has joined',
  example: 'warnings stop',
  options: [channelOption],
  managersOnly: true,
  private: false,
  run: (request, services) =>
    ended(request, services, async (store, { id, words }) => {
      await store.channels.stop(id);
      return `No warnings come ${words} any more, and who had joined is forgotten.`;
    }),
};

async function ended(
  request: Request,
  services: Services,
  end: (store: Store, target: Target) => Promise<string>,
): Promise<Reply> {
  const store = storeOf(services);
  const target = targetOf(request, checkedOptions(request, onlyChannel).channel);
  await neededSubscription(store, target);
  return { headline: await end(store, target), sections: [], private: false };
}

function settingsFrom(request: Request): { target: Target; settings: Partial<ChannelFacts> } {
  const { lead, morning, 'all-clear': allClear, channel } = checkedOptions(request, settingsSchema);
  const settings = {
    ...(lead !== undefined && { leadH: lead }),
    ...(morning !== undefined && { morningPost: morning }),
    ...(allClear !== undefined && { allClear }),
  };
  return { target: targetOf(request, channel), settings };
}

function factsOf({ leadH, morningPost, allClear }: ChannelFacts): ChannelFacts {
  return { leadH, morningPost, allClear };
}

async function settingsSection(channel: Channel, request: Request, services: Services) {
  const { kind, leadH, morningPost, allClear, paused } = channel;
  const gardens = await storeOf(services).channels.gardens(channel.id);
  const reader = await readerFor(request, services);
  const earliest = kind === 'direct' ? 'your shutting time' : 'the earliest shutting time of those who have joined';
  return {
    lines: [
      `They come ${counted(leadH, 'hour')} before ${earliest}.`,
      ...(paused === undefined ? nextPostLines(gardens, leadH, request.now, reader) : []),
      morningPost ? 'An opening plan comes in the morning.' : 'No opening plan in the morning.',
      allClear ? 'A night that needs nothing is told too.' : 'A night that needs nothing goes unsaid.',
      ...(kind === 'direct' ? [] : ['Join with /warnings join.']),
    ],
  };
}
