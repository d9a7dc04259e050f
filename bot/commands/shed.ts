import { z } from 'zod';
import { COVER_KEYS, COVERS } from '../../rules/index.ts';
import { PlainProblem } from '../ground/errors.ts';
import type { SpareCover } from '../store/port/beds.ts';
import type { Store } from '../store/store.ts';
import { counted } from '../text/phrases.ts';
import type { Reader } from '../text/reader.ts';
import type { Command } from './command.ts';
import { readerFor, storeOf } from './kept-for.ts';
import { checkedOptions, maybe, option, wholeNumber } from './options.ts';
import { suggestCover } from './suggest/suggest-covers.ts';
import { typedCovers } from './typed/covers.ts';

const MOST_PIECES = 99;

export const SHED: Command = {
  name: 'shed',
  description: 'Spare covers at hand, which tonight’s advice draws on first',
  actions: {
    put: {
      description: 'Tells how many of a cover lie in your shed',
      example: 'shed put cover:blanket count:2',
      options: [
        {
          name: 'cover',
          description: 'One cover, such as blanket',
          kind: 'text',
          required: true,
          suggest: suggestCover,
        },
        { name: 'count', description: 'How many pieces there are; 0 takes it off the list', kind: 'whole-number' },
      ],
      private: true,
      async run(request, services) {
        const store = storeOf(services);
        const reader = await readerFor(request, services);
        const schema = z.object({
          cover: option('Name one cover, such as cover:blanket.', (text) => typedCovers(text, reader)),
          count: maybe(wholeNumber('count', 0, MOST_PIECES)),
        });
        const { cover: keys, count = 1 } = checkedOptions(request, schema);
        const [cover, ...others] = keys;
        if (cover === undefined || others.length > 0)
          throw new PlainProblem('Name one cover at a time, such as blanket.');
        if (cover === 'snow') throw new PlainProblem('Snow does not keep in a shed; name a cover such as blanket.');
        await store.shed.put(request.memberId, { cover, count }, request.now);
        return { headline: 'Noted.', sections: [await shedSection(store, request.memberId, reader)], private: true };
      },
    },
    list: {
      description: 'Shows what lies in your shed, to you alone',
      example: 'shed list',
      options: [],
      private: true,
      async run(request, services) {
        const store = storeOf(services);
        const reader = await readerFor(request, services);
        const spares = await store.shed.list(request.memberId);
        if (spares.length === 0) {
          throw new PlainProblem(
            'Your shed is empty here. Put something in with /shed put, such as /shed put cover:blanket.',
          );
        }
        return {
          headline: `Your shed holds ${counted(spares.length, 'kind of cover', 'kinds of cover')}.`,
          sections: [await shedSection(store, request.memberId, reader)],
          private: true,
        };
      },
    },
  },
};

async function shedSection(store: Store, memberId: string, reader: Reader) {
  const spares = await store.shed.list(memberId);
  const lines = spares.map((spare) => spareWords(spare, reader));
  return { title: 'In your shed', lines: lines.length === 0 ? ['Nothing.'] : lines };
}

/** "2 × blanket". */
function spareWords({ cover, count }: SpareCover, { dialect }: Reader): string {
  const key = COVER_KEYS.find((each) => each === cover);
  return `${count} × ${key === undefined ? cover : COVERS[key][dialect]}`;
}
