import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import { z } from 'zod';
import { PlainProblem } from '../ground/errors.ts';
import type { Store } from '../store/store.ts';
import type { Reply, ReplyFile } from '../talk/reply.ts';
import type { ButtonHandler, Command } from './command.ts';
import { storeOf } from './kept-for.ts';
import { checkedOptions, maybe, yesNo } from './options.ts';

/** Chats take ten times that. */
const UNPACKED_BYTES = 1_000_000;
const packed = promisify(gzip);

const ERASE_ID = 'erase-all-of-mine';
const NOTHING_KEPT = 'I keep nothing about you.';

export const MYDATA: Command = {
  name: 'mydata',
  description: 'What I keep about you: take it along, or have it erased',
  actions: {
    export: {
      description: 'Gives you all that I keep about you, as a file',
      example: 'mydata export',
      options: [],
      private: true,
      async run({ memberId }, services) {
        const kept = await storeOf(services).exportMember(memberId);
        if (kept === undefined) throw new PlainProblem(NOTHING_KEPT);
        return {
          headline: 'This is all that I keep about you.',
          sections: [{ lines: ['It tells where you grow: keep it to yourself.'] }],
          files: [await exportFile(`${JSON.stringify(kept, undefined, 2)}\n`)],
          private: true,
        };
      },
    },
    erase: {
      description: 'Erases all that I keep about you, for good',
      example: 'mydata erase',
      options: [{ name: 'sure', description: 'Yes: at once, without asking again', kind: 'yes-no' }],
      private: true,
      async run(request, services) {
        const store = storeOf(services);
        const { sure } = checkedOptions(request, z.object({ sure: maybe(yesNo('sure')) }));
        if (sure === true) return erased(store, request.memberId);
        if ((await store.members.find(request.memberId)) === undefined) throw new PlainProblem(NOTHING_KEPT);
        return {
          headline: 'Erase your sites, beds, shed and readings, and leave every channel’s warnings?',
          sections: [{ lines: ['It cannot be undone. Press the button, or give the command again with sure:yes.'] }],
          buttons: [{ id: ERASE_ID, label: 'Erase it all' }],
          private: true,
        };
      },
    },
  },
};

export const ERASE_BUTTON: ButtonHandler = {
  prefix: ERASE_ID,
  private: true,
  press: async ({ memberId }, services) => erased(storeOf(services), memberId),
};

/** Packed where it is more than chats take. */
async function exportFile(text: string): Promise<ReplyFile> {
  const bytes = Buffer.from(text);
  if (bytes.length <= UNPACKED_BYTES) return { name: 'eiderdown-mydata.json', bytes };
  return { name: 'eiderdown-mydata.json.gz', bytes: await packed(bytes) };
}

async function erased(store: Store, memberId: string): Promise<Reply> {
  const wasKept = await store.eraseMember(memberId);
  if (!wasKept) throw new PlainProblem(NOTHING_KEPT);
  return { headline: 'Erased: I keep nothing about you any more.', sections: [], private: true };
}
