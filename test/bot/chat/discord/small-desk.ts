import { pino } from 'pino';
import type { Desk } from '../../../../bot/chat/discord/door.ts';
import { Allowance } from '../../../../bot/commands/allowance.ts';
import type { ButtonHandler, Command } from '../../../../bot/commands/command.ts';
import { answer, answerPress } from '../../../../bot/commands/dispatch.ts';
import { systemClock } from '../../../../bot/ground/clock.ts';
import { PlainProblem } from '../../../../bot/ground/errors.ts';
import type { Reply } from '../../../../bot/talk/reply.ts';

/** A picture of one pixel, made for these tests. */
export const DOT_PNG = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==',
  'base64',
);

const COVERS = ['row cover', 'low tunnel', 'straw mulch', 'cold frame'];

export function said(headline: string, more: Partial<Reply> = {}): Reply {
  return { headline, sections: [], private: false, ...more };
}

/** Work that a test lets finish when it likes. */
export class Gate {
  readonly #waiting: (() => void)[] = [];
  entered = 0;

  pass(): Promise<void> {
    this.entered += 1;
    return new Promise((resolve) => this.#waiting.push(resolve));
  }

  open(): void {
    for (const resolve of this.#waiting.splice(0)) resolve();
  }
}

const BUTTONS: readonly ButtonHandler[] = [
  { prefix: 'covered:', private: false, press: async (press) => said(`Noted: ${press.buttonId.slice(8)} is covered.`) },
  { prefix: 'mine:', private: true, press: async () => said('Your beds.', { private: true }) },
  {
    prefix: 'form:',
    private: true,
    press: async () =>
      said('Tell me where.', {
        private: true,
        form: {
          id: 'plot place',
          title: 'Your plot',
          fields: [
            { id: 'place', label: 'Where is it?', required: true },
            { id: 'exposure', label: 'How open does it lie?', required: false },
          ],
        },
      }),
  },
];

function commands(gate: Gate): readonly Command[] {
  const option = { description: 'What it is about' };
  return [
    {
      name: 'say',
      description: 'Says it back',
      action: {
        description: 'Says it back',
        example: 'say what:frost',
        private: false,
        options: [
          { name: 'often', kind: 'whole-number', ...option },
          { name: 'what', kind: 'text', required: true, ...option },
          { name: 'loud', kind: 'yes-no', ...option },
          { name: 'low', kind: 'number', ...option },
        ],
        run: async ({ options, locale, place, memberId }) =>
          said(`You said ${String(options['what'])}.`, {
            sections: [
              {
                title: 'Heard',
                lines: [
                  Object.entries(options)
                    .map((pair) => pair.join('='))
                    .join(' '),
                  locale,
                  place.kind,
                ],
              },
              { lines: [`by ${memberId}`] },
            ],
          }),
      },
    },
    {
      name: 'wait',
      description: 'Takes its time',
      actions: {
        here: {
          description: 'Seen by all',
          example: 'wait here',
          private: false,
          options: [],
          run: async () => {
            await gate.pass();
            return said('Done at last.', { picture: { name: 'dot.png', png: DOT_PNG, altText: 'A dot.' } });
          },
        },
        alone: {
          description: 'Seen by one',
          example: 'wait alone',
          private: true,
          options: [],
          run: async () => {
            await gate.pass();
            return said('Yours at last.', { private: true });
          },
        },
        turned: {
          description: 'Meant for all, but the answer is for one',
          example: 'wait turned',
          private: false,
          options: [],
          run: async () => {
            await gate.pass();
            return said('Secret.', { private: true });
          },
        },
      },
    },
    {
      name: 'plot',
      description: 'A member’s own plot',
      actions: {
        cover: {
          description: 'Lays a cover',
          example: 'plot cover with:row cover',
          private: true,
          options: [
            {
              name: 'with',
              kind: 'text',
              required: true,
              ...option,
              suggest: async (typed) => {
                if (typed === 'boom') throw new Error('suggesting failed');
                if (typed === 'never') return new Promise(() => undefined);
                return COVERS.filter((cover) => cover.includes(typed)).map((cover) => ({ label: cover, value: cover }));
              },
            },
          ],
          run: async ({ options }) => said(`Laid ${String(options['with'])}.`, { private: true }),
        },
        place: {
          description: 'Where it is',
          example: 'plot place',
          private: true,
          options: [{ name: 'place', kind: 'text', required: true, ...option }],
          run: async ({ options }) => said(`It is at ${JSON.stringify(options)}.`, { private: true }),
        },
        read: {
          description: 'Reads a file',
          example: 'plot read',
          private: true,
          options: [{ name: 'list', kind: 'file', required: true, ...option }],
          run: async ({ options }) => {
            const list = options['list'];
            if (typeof list !== 'object') throw new PlainProblem('Attach a file.');
            return said(`${list.name} says ${await list.text(1000)}.`, { private: true });
          },
        },
        keep: {
          description: 'Hands out a file',
          example: 'plot keep',
          private: true,
          options: [],
          run: async () =>
            said('Here it is.', { private: true, files: [{ name: 'plot.json', bytes: Buffer.from('{"beds":2}') }] }),
        },
      },
    },
    {
      name: 'club',
      description: 'For who runs the place',
      action: {
        description: 'For who runs the place',
        example: 'club where:#garden',
        private: false,
        managersOnly: true,
        options: [{ name: 'where', kind: 'channel', ...option }],
        run: async ({ options }) =>
          said(`Set for ${String(options['where'])}.`, { buttons: [{ id: 'covered:a', label: 'Covered' }] }),
      },
    },
    {
      name: 'broken',
      description: 'Fails',
      action: {
        description: 'Fails',
        example: 'broken',
        private: false,
        options: [],
        run: async () => {
          throw new Error('inner secret');
        },
      },
    },
    {
      name: 'long',
      description: 'Says much',
      action: {
        description: 'Says much',
        example: 'long',
        private: false,
        options: [],
        run: async () =>
          said('Much to say.', {
            sections: Array.from({ length: 40 }, (_, bed) => ({
              title: `Bed ${bed + 1}`,
              lines: [`Leaf low about ${bed} degrees, with @everyone and <@123456789012345678> in its name.`],
            })),
          }),
      },
    },
  ];
}

/** A few commands that do what tests need, behind the product's own dispatch. */
export function smallDesk(more: Partial<Desk> = {}): { readonly desk: Desk; readonly gate: Gate } {
  const gate = new Gate();
  const services = { clock: systemClock, log: pino({ level: 'silent' }), allowance: new Allowance(1_000_000, 1) };
  return { gate, desk: { commands: commands(gate), buttons: BUTTONS, services, answer, answerPress, ...more } };
}
