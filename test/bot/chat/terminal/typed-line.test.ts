import fc from 'fast-check';
import { expect, test } from 'vitest';
import { typedLine } from '../../../../bot/chat/terminal/typed-line.ts';
import type { Action, Command } from '../../../../bot/commands/command.ts';

const action = (...names: string[]): Action => ({
  description: '',
  example: '',
  private: false,
  options: names.map((name) => ({ name, description: '', kind: 'text' })),
  run: async () => ({ headline: '', sections: [], private: false }),
});

const COMMANDS: readonly Command[] = [
  { name: 'ask', description: '', action: action('question') },
  { name: 'check', description: '', action: action('crop', 'low', 'covers') },
  { name: 'tonight', description: '', action: action() },
  { name: 'bed', description: '', actions: { add: action('name', 'crops'), show: action() } },
];

const read = (line: string) => typedLine(line, COMMANDS);

test('a line that names no command is a question', () => {
  expect(read('will my kale live?')).toEqual({
    ok: true,
    value: { command: 'ask', options: { question: 'will my kale live?' } },
  });
});

test('options are named with a colon, and values may hold blanks', () => {
  expect(read('/check crop:red russian kale low:14F covers:"row cover, low tunnel"')).toEqual({
    ok: true,
    value: { command: 'check', options: { crop: 'red russian kale', low: '14F', covers: 'row cover, low tunnel' } },
  });
});

test('words without a name fill the first free text option', () => {
  expect(read('ask how cold can leeks go?')).toEqual({
    ok: true,
    value: { command: 'ask', options: { question: 'how cold can leeks go?' } },
  });
});

test('an action is named after its command', () => {
  expect(read('bed add name:north crops:kale')).toEqual({
    ok: true,
    value: { command: 'bed', action: 'add', options: { name: 'north', crops: 'kale' } },
  });
});

test('a command without its action is told what it can do', () => {
  expect(read('bed')).toEqual({ ok: false, problem: 'After "bed" say what to do: add, show.' });
});

test('a question that happens to begin with a command word is still a question', () => {
  expect(read('bed in the corner, will it freeze?')).toMatchObject({ value: { command: 'ask' } });
});

test('an option that there is not is named, never taken into another', () => {
  expect(read('check crop:kale lowest:14F')).toEqual({
    ok: false,
    problem: '"lowest:" is no option here; there are crop: low: covers:.',
  });
});

test('a question may hold a colon', () => {
  expect(read('ask tonight: will my kale live?')).toMatchObject({ ok: true });
});

test('a word that belongs nowhere is named', () => {
  expect(read('tonight please')).toMatchObject({ ok: false });
});

test('any line is read without throwing', () => {
  fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (line) => typeof read(line).ok === 'boolean'));
});
