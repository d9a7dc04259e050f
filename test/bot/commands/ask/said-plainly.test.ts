import { describe, expect, test } from 'vitest';
import { withCautions } from '../../../../bot/commands/ask/answered.ts';
import { answerText } from '../../../../bot/commands/ask/ask.ts';
import { drawn } from '../../../../bot/talk/plain-text.ts';

const NOW = new Date('2026-01-20T15:00:00Z');
const textOf = (question: string, locale = 'en-US') =>
  drawn(withCautions(answerText(question, { locale, now: NOW })), 10_000);

describe('what an answer leaves out is said', () => {
  test('a plant beside a crop of the table gets no verdict, and that is told', () => {
    const text = textOf('spinach and snapdragons at 20f under row cover');
    expect(text).toMatch(/^Spinach under row cover at 20 °F: /);
    expect(text).toMatch(/Not in my table, so without a verdict: "snapdragons"\./);
  });

  test('of several lows the coldest is taken, and that is told', () => {
    expect(textOf('spinach at 14F and what about 5F')).toMatch(/Understood: spinach; 5 °F, the coldest that you named/);
  });

  test('a word for many crops is asked back with the crops that it may be', () => {
    expect(textOf('will my greens survive 20f under row cover')).toMatch(/^Which one is it: .*kale.* or .*\?/);
  });

  test('a lone "do I need to cover" is asked back for the crop', () => {
    expect(textOf('do i need to cover')).toMatch(/^Which crop is it\?/);
  });
});

describe('several crops or covers in one answer', () => {
  test('tell apart which of them is otherwise if the plants have grown warm', () => {
    const text = textOf('spinach, mache and basil at 20F in a low tunnel');
    const line = text.split('\n').find((each) => each.startsWith('If they have grown warm:')) ?? '';
    expect(line).toMatch(/spinach (on the edge|leaf burn|winterkill)/);
    expect(line).not.toMatch(/basil/);
  });

  test('name a cover that is doubled once where it is taken off by day', () => {
    expect(textOf('broccoli under two bed sheets at 25F')).toMatch(/the bed sheet taken off by day/);
  });

  test('a whole table of crops is told how many hold only because they are hardened', () => {
    expect(textOf('what survives 20F uncovered')).toMatch(/If they have grown warm: (none|\d+) of them holds?\./);
  });
});

test('how cold a crop can go is told for each of the covers named', () => {
  expect(textOf('how cold can kale go under a sheet or a blanket')).toMatch(
    /^Kale under a bed sheet holds down to about [\s\S]*Kale under a blanket holds down to about /,
  );
});

describe('what is of no use is left out', () => {
  test('nothing is advised for a night that is past', () => {
    expect(textOf('last night it hit 15, is my kale dead')).not.toMatch(/To make it hold/);
    expect(textOf('it will hit 15, is my kale dead')).toMatch(/To make it hold/);
  });

  test('the caution about frozen leaves stands once in an answer about picking', () => {
    expect(textOf('can i harvest the frozen kale').match(/Do not touch, pick or uncover/g)).toHaveLength(1);
  });
});

test('that no cover is needed is told with the leaf low and the odds', () => {
  expect(textOf('do I need to cover my kale tonight, low 22')).toMatch(
    /^Kale at 22 °F: needs no cover\.\s+Leaf low about \d+ °F \(\d+ to \d+\)\. Odds of a mark /,
  );
});
