import { shortDay } from '../ground/times.ts';
import type { Channel } from '../store/port/channels.ts';
import type { Store } from '../store/store.ts';
import type { PostFailure } from '../talk/channel-poster.ts';
import type { Reply } from '../talk/reply.ts';
import { type Made, NOTHING } from './made.ts';
import type { Work } from './work.ts';

type PauseNotice = Extract<Work, { kind: 'pause-notice' }>;

const WHY: Readonly<Partial<Record<string, string>>> = {
  'missing-access': 'I cannot see that channel any more. Give me View Channel there.',
  'missing-permission': 'I may not write in that channel any more. Give me Send Messages and Attach Files there.',
  'channel-gone': 'That channel is not there any more.',
} satisfies Partial<Record<PostFailure, string>>;

/** Tells who started a channel's warnings that they are paused, and what would put it right. */
export async function pauseNotice({ memberId, channelId }: PauseNotice, store: Store): Promise<Made> {
  const channel = await store.channels.find(channelId);
  if (channel?.paused === undefined) return NOTHING;
  return { kind: 'post', to: { kind: 'member', memberId }, reply: noticeOf(channel, channel.paused.reason) };
}

function noticeOf({ since }: Channel, reason: string): Reply {
  return {
    headline: `The warnings that you started on ${shortDay(since, 'UTC')} are paused: I could not post them.`,
    sections: [
      {
        lines: [WHY[reason] ?? 'Something keeps me from posting there.', 'They run again with /warnings start there.'],
      },
    ],
    private: true,
  };
}
