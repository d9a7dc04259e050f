import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Reply } from '../../../bot/talk/reply.ts';
import { PHONE_CHARACTERS, shortReply } from '../../../bot/talk/short-reply.ts';

const LINE = fc.string({ minLength: 1, maxLength: 300 });
const REPLY: fc.Arbitrary<Reply> = fc.record({
  headline: fc.string({ minLength: 1, maxLength: 120 }),
  sections: fc.array(fc.record({ title: LINE, lines: fc.array(LINE, { maxLength: 12 }) }), { maxLength: 8 }),
  cautions: fc.array(LINE, { maxLength: 2 }),
  private: fc.boolean(),
});
const linesOf = ({ sections }: Pick<Reply, 'sections'>) =>
  sections.flatMap(({ title, lines }) => lines.map((line) => `${title}/${line}`));
const textOf = ({ headline, sections, cautions = [] }: Reply) =>
  [
    headline,
    ...sections.flatMap(({ title = '', lines }) => [title, ...lines]),
    ...cautions.map((caution) => `Caution: ${caution}`),
  ].join('\n');

test('every line is told once, in its order, here or in the rest', () => {
  fc.assert(
    fc.property(REPLY, (reply) => {
      const told: string[] = [];
      let left: Reply | undefined = reply;
      for (let pages = 0; left !== undefined && pages < 200; pages += 1) {
        const { short, rest }: ReturnType<typeof shortReply> = shortReply(left);
        told.push(...linesOf(short));
        left = rest;
      }
      expect(told).toEqual(linesOf(reply));
    }),
  );
});

test('what is shown first fits a phone’s screen, or is a single line', () => {
  fc.assert(
    fc.property(REPLY, (reply) => {
      const { short } = shortReply(reply);
      if (linesOf(short).length > 1) expect(textOf(short).length).toBeLessThanOrEqual(PHONE_CHARACTERS);
    }),
  );
});

test('headline, cautions, picture and buttons stay with what is shown first', () => {
  const reply: Reply = {
    headline: 'Verdict.',
    sections: [{ lines: Array.from({ length: 40 }, (_, i) => `line ${i} ${'x'.repeat(60)}`) }],
    cautions: ['Care.'],
    buttons: [{ id: 'a', label: 'A' }],
    private: true,
  };
  const { short, rest } = shortReply(reply);
  expect(short).toMatchObject({ headline: 'Verdict.', cautions: ['Care.'], buttons: reply.buttons });
  expect(rest).toMatchObject({ private: true });
  expect(rest?.cautions).toBeUndefined();
});
