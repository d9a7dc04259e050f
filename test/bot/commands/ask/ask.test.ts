import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withCautions } from '../../../../bot/commands/ask/answered.ts';
import { answerText } from '../../../../bot/commands/ask/ask.ts';
import { drawn } from '../../../../bot/talk/plain-text.ts';

const NOW = new Date('2026-01-20T15:00:00Z');
const ask = (question: string, locale = 'en-US') => answerText(question, { locale, now: NOW });
const textOf = (question: string, locale?: string) => drawn(withCautions(ask(question, locale)), 10_000);

describe('does it live', () => {
  test('the verdict comes first, then the leaf low with its range, then the odds', () => {
    const lines = textOf('will my spinach survive 14 °F under a blanket?').split('\n');
    expect(lines[0]).toBe('Spinach under a blanket at 14 °F: holds.');
    expect(lines[2]).toMatch(/^Leaf low about \d+ °F \(\d+ to \d+\)\.$/);
    expect(lines.join(' ')).toMatch(/Odds of a mark .*, of losing it /);
  });

  test('what was assumed is said, and the verdict for plants grown warm where it differs', () => {
    const text = textOf('will my spinach survive 14 °F under a blanket?');
    expect(text).toMatch(/Assumed: clear sky, light wind/);
    expect(text).toMatch(/If they have grown warm: (leaf burn|winterkill)\./);
  });

  test('a tender crop on the same night is lost, and a cover that would help is named', () => {
    expect(ask('will my tomato survive 14 °F under a blanket?').judged[0]?.verdict.verdict).toBe('winterkill');
    expect(textOf('will my okra survive 33 °F?')).toMatch(/To make it hold: /);
  });

  test('saying that plants are hardened or grown warm is believed and not assumed', () => {
    const warm = ask('will my spinach, not hardened off, survive 14 °F under a blanket?');
    expect(warm.judged[0]?.hardening).toBe('said');
    expect(warm.judged[0]?.verdict.odds.noMark).toBeLessThan(
      ask('will my hardened off spinach survive 14 °F under a blanket?').judged[0]?.verdict.odds.noMark ?? 0,
    );
  });

  test('several crops are judged one by one', () => {
    expect(ask('will spinach and basil survive 20F in a cold frame?').judged.map(({ crop }) => crop.id)).toEqual([
      'spinach',
      'basil',
    ]);
  });

  test('a root is judged by the soil, and the answer says so', () => {
    expect(textOf('will my carrots survive 10F under straw?')).toMatch(/Soil surface low about/);
  });

  test('a windy or overcast night is computed as such', () => {
    const leaf = (q: string) => ask(q).judged[0]?.night.leafLowC ?? Number.NaN;
    expect(leaf('will kale survive 20F uncovered, overcast?')).toBeGreaterThan(
      leaf('will kale survive 20F uncovered?') + 1,
    );
  });
});

describe('units', () => {
  test('a number without a unit is read in the units of the locale, and that is said', () => {
    expect(ask('will kale survive 14?').understood.lowC).toBeCloseTo(-10, 9);
    expect(textOf('will kale survive 14?')).toMatch(/14 °F \(you gave no unit\)/);
    expect(ask('will kale survive -8?', 'en-GB').understood.lowC).toBeCloseTo(-8, 9);
  });

  test('an answer speaks the units of the reader', () => {
    expect(textOf('will kale survive -8 °C under fleece?', 'en-GB')).toMatch(/at −8 °C/);
    expect(textOf('will rocket survive -4 °C?', 'en-GB')).toMatch(/[Rr]ocket/);
  });
});

describe('the other questions', () => {
  test('how cold it can go is told as an outside low, with where half is lost', () => {
    expect(textOf('how cold can leeks go uncovered?')).toMatch(/^Leek uncovered holds down to about \d+ °F outside/);
  });

  test('the limit told is where the verdict turns', () => {
    const limit = Number(
      /about (−?\d+) °F/.exec(textOf('how cold can kale go under a blanket?'))?.[1]?.replace('−', '-'),
    );
    expect(ask(`will kale survive ${limit + 1} °F under a blanket?`).judged[0]?.verdict.verdict).toBe('holds');
    expect(ask(`will kale survive ${limit - 2} °F under a blanket?`).judged[0]?.verdict.verdict).not.toBe('holds');
  });

  test('what to lay over it: every stack offered makes it hold', () => {
    const { judged, reply } = ask('what must I lay over my lettuce at 20 °F?');
    expect(judged.length).toBeGreaterThan(0);
    expect(judged.every(({ verdict }) => verdict.verdict === 'holds')).toBe(true);
    expect(reply.headline).toMatch(/holds under/);
  });

  test('two covers are compared on one night, the warmer first', () => {
    const { judged } = ask('blanket or low tunnel for kale at 20 °F?');
    const lows = judged.map(({ night }) => night.leafLowC);
    expect(lows).toHaveLength(2);
    expect(lows[0]).toBeGreaterThan(lows[1] ?? Number.NaN);
  });

  test('which crops hold: all that are listed do', () => {
    const { judged } = ask('what survives 10 °F in a cold frame?');
    expect(judged.length).toBeGreaterThan(5);
    expect(judged.every(({ verdict }) => verdict.verdict === 'holds')).toBe(true);
  });

  test('a safety question gets the caution first', () => {
    expect(ask('can I use a propane heater in my tunnel?').reply.headline).toMatch(/^Never burn anything/);
    expect(ask('is rhubarb safe to eat after a hard freeze?').cautions).toContain('rhubarb');
  });
});

describe('what cannot be answered', () => {
  test.each([
    ['', /no question/],
    ['   ', /no question/],
    ['will my florps survive 20F?', /not in my table/],
    ['will my kale survive -500 °F?', /colder than any garden/],
    ['will my kale survive -80 °C?', /outside what I can reckon with/],
    ['will kale survive 20F with a blanket over the high tunnel?', /belongs inside it/],
    ['will my kale survive?', /How cold will it get/],
    ['what is the capital of France?', /frost nights/],
  ])('%j gets one clear sentence and no verdict', (question, sentence) => {
    const { judged, reply } = ask(question);
    expect(reply.headline).toMatch(sentence);
    expect(reply.refused).toBe(true);
    expect(judged).toEqual([]);
  });

  test('an unknown crop is offered the nearest names', () => {
    expect(textOf('will my broccolli rab survive 20F?')).toMatch(/broccoli/i);
  });

  test('any text is answered without throwing, and a verdict needs a crop and a temperature', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        const { judged, understood } = ask(text);
        if (understood.intent === 'survive' && judged.length > 0) {
          expect(understood.crops.length).toBeGreaterThan(0);
          expect(understood.lowC).toBeDefined();
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe('a conversation', () => {
  test('a follow-up keeps what was said before', () => {
    const first = ask('will my spinach survive under a blanket?').understood;
    const next = answerText('14 °F', { locale: 'en-US', now: NOW, previous: first });
    expect(next.reply.headline).toBe('Spinach under a blanket at 14 °F: holds.');
  });
});
