import { afterEach, beforeEach, expect, test } from 'vitest';
import { Club, wordsOf } from './club.ts';

let club: Club;
beforeEach(async () => {
  club = await Club.open();
});
afterEach(() => club.close());

test('the answer is the one to the same question in words, and for all to see', async () => {
  const filled = await club.say('check crop:spinach low:14F covers:"blanket over low tunnel"');
  const asked = await club.say('ask will my spinach survive 14 °F under a blanket over a low tunnel?');
  expect(filled).toEqual(asked);
  expect(filled.private).toBe(false);
  expect(filled.headline).toMatch(/^Spinach under a blanket over a low tunnel at 14 °F: /);
});

test('without covers the bed is bare, and what is said of hardening counts', async () => {
  const warm = await club.say('check crop:spinach low:20F hardened:no');
  const cold = await club.say('check crop:spinach low:20F hardened:yes');
  expect(wordsOf(warm)).toContain('Spinach uncovered at 20 °F');
  expect(wordsOf(warm)).toContain('grown warm');
  expect(wordsOf(cold)).toContain('grown cold');
});

test('several crops are told one by one', async () => {
  const reply = await club.say('check crop:"tomato, kale" low:25F');
  expect(reply.headline).toBe('At 25 °F 1 of 2 hold.');
  expect(reply.sections[0]?.lines).toHaveLength(2);
});

test('a bare number is in the units of the reader', async () => {
  expect((await club.say('check crop:kale low:14')).headline).toContain('at 14 °F');
  expect((await club.say('check crop:kale low:-10', { locale: 'en-GB' })).headline).toContain('at −10 °C');
});

test.each([
  ['check', 'Name the crop'],
  ['check crop:spinach', 'Say how cold it gets'],
  ['check crop:dragonfruit low:14F', '"dragonfruit" is not in my table'],
  ['check crop:salad low:14F', 'can be several crops'],
  ['check crop:spinach low:warm', 'I cannot read "warm" as a temperature'],
  ['check crop:spinach low:-200', 'name a low between'],
  ['check crop:spinach low:14F covers:newspaper', 'I do not know "newspaper" as a cover'],
  ['check crop:spinach low:14F covers:"blanket or tarp"', 'leaves a choice'],
  ['check crop:spinach low:14F covers:"cold frame over low tunnel"', 'do not fit over the same bed'],
  ['check crop:spinach low:14F hardened:perhaps', 'Answer hardened with yes or no.'],
])('%s is refused in private with what would be right', async (line, words) => {
  const reply = await club.say(line);
  expect([reply.refused, reply.private]).toEqual([true, true]);
  expect(reply.headline).toContain(words);
});

test('it needs neither a store nor a forecast', async () => {
  await club.store.close();
  club.without('store');
  expect((await club.say('check crop:spinach low:14F')).headline).toContain('Spinach uncovered at 14 °F');
});

test('while options are typed, names, aliases and misspellings are completed', async () => {
  expect((await club.suggestions('check', 'crop', 'spinich'))[0]).toBe('spinach');
  expect((await club.suggestions('check', 'crop', 'rocke'))[0]).toBe('arugula');
  expect((await club.suggestions('check', 'crop', 'rocke', { locale: 'en-GB' }))[0]).toBe('rocket');
  expect((await club.suggestions('check', 'crop', 'kale, corn s'))[0]).toBe('kale, mache');
  expect(await club.suggestions('check', 'crop', 'xqz')).toEqual([]);
  expect(await club.suggestions('check', 'crop', '')).toHaveLength(25);
  expect((await club.suggestions('check', 'covers', ''))[0]).toBe('No cover');
  expect((await club.suggestions('check', 'covers', 'flece'))[0]).toBe('Row cover');
  expect(await club.suggestions('check', 'covers', 'blanket over low tu')).toContain('A blanket over a low tunnel');
  expect((await club.suggestions('check', 'covers', 'old quilt on the cold frame'))[0]).toBe(
    'A quilt over a cold frame',
  );
  expect(await club.suggestions('shed put', 'cover', 'hoop')).toContain('Hoops');
});
