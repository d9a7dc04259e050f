import { z } from 'zod';
import { MS_PER_DAY } from '../../../rules/index.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { localDay } from '../../ground/times.ts';
import type { Reply } from '../../talk/reply.ts';
import type { Request } from '../../talk/request.ts';
import { bedOption, ownBed, ownBeds } from '../bed/own-beds.ts';
import type { Command } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { checkedOptions, maybe, oneOf } from '../options.ts';
import type { Services } from '../services.ts';
import { read } from '../typed/read.ts';
import { bedRecord } from './bed-record.ts';
import { channelRecord } from './channel-record.ts';

const SCOPES = ['mine', 'channel'] as const;
const schema = z.object({ bed: maybe(read), of: maybe(oneOf('of', SCOPES)) });
/** A year of nights. */
const LOOK_BACK_DAYS = 365;

export const RECORD: Command = {
  name: 'record',
  description: 'How well I have foretold: ranges told beside the lows that came',
  action: {
    description: 'How well I have foretold: ranges told beside the lows that came',
    example: 'record bed:"Long tunnel"',
    options: [
      { ...bedOption, description: 'Which of your beds; all of them unless you say', required: false },
      {
        name: 'of',
        description: 'Your beds, or all gardens of this channel together',
        kind: 'text',
        choices: [
          { label: 'My beds', value: 'mine' },
          { label: 'This channel', value: 'channel' },
        ],
      },
    ],
    private: true,
    run: record,
  },
};

async function record(request: Request, services: Services): Promise<Reply> {
  const store = storeOf(services);
  const reader = await readerFor(request, services);
  const { bed: typed, of } = checkedOptions(request, schema);
  const { memberId, now, place } = request;
  const since = localDay(new Date(now.getTime() - LOOK_BACK_DAYS * MS_PER_DAY), 'UTC');
  if (of === 'channel') return channelRecord(store, place.channelId, since, reader);
  const beds = typed === undefined ? await ownBeds(store, memberId) : [await ownBed(store, memberId, typed)];
  if (beds.length === 0) throw new PlainProblem('You have no bed here yet. Tell me one with /bed add.');
  return bedRecord({ beds, since, now, reader }, store);
}
