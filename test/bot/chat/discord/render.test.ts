import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formWindow } from '../../../../bot/chat/discord/buttons.ts';
import { type RenderedMessage, rendered } from '../../../../bot/chat/discord/render.ts';
import type { Reply } from '../../../../bot/talk/reply.ts';
import { formProblems, messageProblems } from '../../../fakes/discord/documented-limits.ts';
import { liveMarkup, shownText } from './markup.ts';
import { DOT_PNG, said } from './small-desk.ts';

const words = fc.oneof(
  { weight: 4, arbitrary: fc.lorem({ maxCount: 12 }) },
  { weight: 2, arbitrary: fc.string({ maxLength: 60 }) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 60 }) },
  {
    weight: 1,
    arbitrary: fc.constantFrom('@everyone', '<@1>', '[a](https://a.example)', '', ' ', '\u200b', '```', '# a'),
  },
  { weight: 1, arbitrary: fc.integer({ min: 0, max: 5000 }).map((length) => 'x* '.repeat(length / 3)) },
);
const button = fc.record({ id: fc.oneof(fc.string({ maxLength: 120 }), fc.constantFrom('a', 'b')), label: words });
const form = fc.record({
  id: fc.string({ maxLength: 120 }),
  title: words,
  fields: fc.array(fc.record({ id: fc.string({ maxLength: 120 }), label: words, required: fc.boolean() }), {
    maxLength: 7,
  }),
});
const file = fc.record({ name: words, bytes: fc.uint8Array({ maxLength: 40 }) });
const reply: fc.Arbitrary<Reply> = fc.record(
  {
    headline: words,
    sections: fc.array(
      fc.record({ title: words, lines: fc.array(words, { maxLength: 8 }) }, { requiredKeys: ['lines'] }),
      { maxLength: 8 },
    ),
    cautions: fc.array(words, { maxLength: 3 }),
    credits: fc.array(
      fc.record({ text: words, url: fc.oneof(fc.webUrl({ withFragments: true, withQueryParameters: true }), words) }),
      { maxLength: 3 },
    ),
    picture: fc.record({ name: words, png: fc.constant(DOT_PNG), altText: words }),
    files: fc.array(file, { maxLength: 12 }),
    buttons: fc.array(button, { maxLength: 40 }),
    form,
    private: fc.boolean(),
  },
  { requiredKeys: ['headline', 'sections', 'private'] },
);

function problemsOf({ body, files }: RenderedMessage): string[] {
  const bytes = files.reduce((sum, each) => sum + (each.data as Buffer).length, 0);
  return messageProblems(
    { ...body },
    files.map((each) => each.name),
    bytes,
  );
}

test('no reply, whatever it holds, becomes a message that breaks a documented limit', () => {
  fc.assert(
    fc.property(reply, (any) => {
      expect(problemsOf(rendered(any, { reference: 'Notice abcdefgh' }))).toEqual([]);
      expect(problemsOf(rendered(any, { private: true }))).toEqual([]);
    }),
    { numRuns: 200 },
  );
});

/** The message without the marks that are ours, so that what is left must be dead text. */
function withoutOurMarks(content: string): string {
  return content
    .split('\n')
    .map((line) =>
      line
        .replace(/^\*\*Caution:\*\* /, '')
        .replace(/^\*\*(.*)\*\*$/s, '$1')
        .replace(/^__(.*)__$/s, '$1')
        .replace(/^- /, '')
        .replace(/^-# \[(.*)\]\(<https?:\/\/[^\s<>()\\]*>\)$/s, '$1')
        .replace(/^-# /, ''),
    )
    .map((line) => liveMarkup(line).join())
    .join('');
}

test('nothing in a reply comes alive beyond the marks that are ours', () => {
  fc.assert(
    fc.property(reply, (any) => {
      expect(withoutOurMarks(rendered(any).body.content)).toBe('');
    }),
    { numRuns: 200 },
  );
});

test('every line of every section can be read, in the message or in the attached text', () => {
  fc.assert(
    fc.property(reply, (any) => {
      const { body, files } = rendered(any);
      const attached = files.find((each) => each.name === 'whole-answer.txt')?.data as Buffer | undefined;
      const readable = flat(`${shownText(body.content)}\n${attached?.toString() ?? ''}`);
      for (const section of any.sections) for (const line of section.lines) expect(readable).toContain(flat(line));
    }),
    { numRuns: 200 },
  );
});

/** Without what cannot be seen, and without control characters that any door drops. */
function flat(text: string): string {
  return text.replace(/[^\p{L}\p{N}\p{P}\p{S}]/gu, '');
}

test('a verdict reads as it should on a phone', () => {
  const { body } = rendered({
    headline: 'Spinach under a blanket at 14 °F: holds.',
    sections: [
      { lines: ['Leaf low about 21 °F (17 to 25).', 'Odds of losing it: 1 in 50.'] },
      { title: 'Assumed', lines: ['clear and calm'] },
      { title: 'More margin', lines: ['hoops with film', 'a second blanket'] },
    ],
    cautions: ['Brush snow off the lights.'],
    credits: [{ text: 'Forecast: a service', url: 'https://example.org/a_(b)' }],
    private: false,
  });
  expect(body.content.split('\n')).toEqual([
    '**Spinach under a blanket at 14 °F: holds.**',
    'Leaf low about 21 °F (17 to 25).',
    'Odds of losing it: 1 in 50.',
    'Assumed: clear and calm',
    '',
    '__More margin__',
    '- hoops with film',
    '- a second blanket',
    '**Caution:** Brush snow off the lights.',
    '-# [Forecast: a service](<https://example.org/a_%28b%29>)',
  ]);
});

test('a long answer keeps its headline, its cautions and its credits', () => {
  const { body, files } = rendered({
    headline: 'Three beds are at risk.',
    sections: [{ lines: Array.from({ length: 100 }, (_, bed) => `Bed ${bed}: leaf burn is likely without a cover.`) }],
    cautions: ['Never burn charcoal under covers.'],
    credits: [{ text: 'A service', url: 'https://example.org' }],
    private: false,
  });
  const lines = body.content.split('\n');
  expect(lines[0]).toBe('**Three beds are at risk.**');
  expect(lines.slice(-3)).toEqual([
    '**Caution:** Never burn charcoal under covers.',
    '-# [A service](<https://example.org/>)',
    'The whole answer is in the attached text.',
  ]);
  expect(lines.length).toBeGreaterThan(30);
  expect(files.map((each) => each.name)).toEqual(['whole-answer.txt']);
});

test('a file over the limit of the place is named and left out', () => {
  const big = { name: 'all my data.json', bytes: Buffer.alloc(200) };
  const { body, files } = rendered(said('Your data.', { files: [big] }), { fileBytes: 100 });
  expect(files).toEqual([]);
  expect(shownText(body.content)).toContain('all-my-data.json could not be attached');
});

test('a link that is no web address stays text', () => {
  const { body } = rendered(said('Hello.', { credits: [{ text: 'A service', url: 'javascript:alert(1)' }] }));
  expect(body.content).toBe('**Hello.**\n-# A service');
});

test('a form either fits a window or is listed in the message', () => {
  fc.assert(
    fc.property(form, (any) => {
      const window = formWindow(any);
      if (window !== undefined) expect(formProblems({ ...window })).toEqual([]);
    }),
  );
  const asked = { id: 'site', title: 'Your place', fields: [{ id: 'where', label: 'Where is it?', required: true }] };
  expect(rendered(said('Tell me.', { form: asked })).body.content).toContain('Your place: Where is it?');
});
