import { expect, test } from 'vitest';
import { Conversations } from '../../../../bot/commands/ask/conversations.ts';
import { cropVocabulary } from '../../../../bot/language/crop-vocabulary.ts';
import { understand } from '../../../../bot/language/understand.ts';

const understood = understand('will kale survive 10 °F?', { vocabulary: cropVocabulary() });
const at = (minutes: number) => new Date(Date.parse('2026-01-20T20:00:00Z') + minutes * 60_000);

test('what was asked is known for ten minutes', () => {
  const conversations = new Conversations();
  conversations.remember('one', understood, at(0));
  expect(conversations.previous('one', at(10))).toBe(understood);
  expect(conversations.previous('one', at(10.1))).toBeUndefined();
  expect(conversations.previous('another', at(0))).toBeUndefined();
});

test('what is too old to be of use takes no memory, however many ask', () => {
  const conversations = new Conversations();
  for (let minute = 0; minute < 1000; minute += 1) conversations.remember(`member ${minute}`, understood, at(minute));
  expect(conversations.size).toBe(11);
});

test('no more than five thousand are kept at once', () => {
  const conversations = new Conversations();
  for (let member = 0; member < 6000; member += 1) conversations.remember(`member ${member}`, understood, at(0));
  expect(conversations.size).toBe(5000);
  expect(conversations.previous('member 0', at(0))).toBeUndefined();
});
