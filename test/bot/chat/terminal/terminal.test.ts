import { PassThrough, Readable } from 'node:stream';
import { text } from 'node:stream/consumers';
import pino from 'pino';
import { expect, test } from 'vitest';
import { runTerminal } from '../../../../bot/chat/terminal/terminal.ts';
import { Allowance } from '../../../../bot/commands/allowance.ts';
import { ASK, ASK_CHOICE } from '../../../../bot/commands/ask/ask.ts';
import { sampleWarning } from '../../../../bot/sample/sample-warning.ts';
import { readerOf } from '../../../../bot/text/reader.ts';

/** What a person sees who types these lines. */
async function typed(lines: readonly string[], interactive = false): Promise<string> {
  const output = new PassThrough();
  const seen = text(output);
  await runTerminal({
    services: {
      clock: { now: () => new Date('2026-01-20T15:00:00Z'), rehearsal: false },
      log: pino({ level: 'silent' }),
      allowance: new Allowance(50, 1000),
    },
    commands: [ASK],
    buttons: [ASK_CHOICE],
    input: Readable.from(lines.map((line) => `${line}\n`)),
    output,
    interactive,
    locale: 'en-US',
    greeting: await sampleWarning(readerOf('en-US')),
  });
  output.end();
  return seen;
}

test('the warning comes first, then an answer to each line', async () => {
  const seen = await typed(['will my spinach survive 14 °F under a blanket?', 'how cold can leeks go uncovered?']);
  const order = [
    'Tern Lane Garden',
    '> will my spinach',
    'Spinach under a blanket at 14 °F: holds.',
    'Leek uncovered holds down',
  ];
  const places = order.map((words) => seen.indexOf(words));
  expect(places.every((place) => place >= 0)).toBe(true);
  expect(places).toEqual([...places].sort((a, b) => a - b));
});

test('a line may continue the one before it', async () => {
  expect(await typed(['will my spinach survive under a blanket?', '14 °F'])).toMatch(
    /Spinach under a blanket at 14 °F: holds\./,
  );
});

test('where a choice is offered, typing it answers', async () => {
  const asked = await typed(['will my greens survive 20 °F?']);
  const offered = /Type one of: ([^,.]+)/.exec(asked)?.[1];
  if (offered === undefined) return expect(asked).toMatch(/at 20 °F/);
  expect(await typed(['will my greens survive 20 °F?', offered])).toMatch(/at 20 °F: /);
});

test('quit ends a conversation at a prompt, and empty lines are passed over', async () => {
  const seen = await typed(['', 'quit', 'will my spinach survive 14 °F under a blanket?'], true);
  expect(seen).not.toMatch(/Spinach under a blanket/);
  expect(seen).toMatch(/type help/);
});
