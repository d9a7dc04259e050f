import { PlainProblem } from '../../ground/errors.ts';
import { lastTold, outside, underCover } from '../../learning/scored-nights.ts';
import type { Store } from '../../store/store.ts';
import type { Reply } from '../../talk/reply.ts';
import { counted } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import { recordWords } from '../../text/record-words.ts';

/** With fewer gardens a figure would tell what one member read (judgement). */
const FEWEST_GARDENS = 3;

/** How well the gardens of a channel have been foretold together; nothing tells whose they are. */
export async function channelRecord(
  store: Store,
  channelId: string | undefined,
  since: string,
  reader: Reader,
): Promise<Reply> {
  if (channelId === undefined) throw new PlainProblem('Ask that in a channel that gets my warnings.');
  const nights = lastTold(await store.predictions.scored({ kind: 'channel', channelId }, since));
  const gardens = new Set(nights.map(({ prediction }) => prediction.memberId)).size;
  if (gardens < FEWEST_GARDENS) {
    throw new PlainProblem(`At least ${FEWEST_GARDENS} gardens of this channel must have entered readings first.`);
  }
  const under = recordWords(
    nights.flatMap((night) => underCover(night) ?? []),
    reader,
  );
  const out = recordWords(
    nights.flatMap((night) => outside(night) ?? []),
    reader,
  );
  return {
    headline: `${counted(gardens, 'garden')} of this channel: ${under ?? out ?? ''}`,
    sections: [
      ...(under === undefined || out === undefined ? [] : [{ lines: [`Outside: ${out}`] }]),
      { lines: ['The range should hold four nights in five.'] },
    ],
    private: true,
  };
}
