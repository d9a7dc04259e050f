import { cropVocabulary } from '../../bot/language/crop-vocabulary.ts';
import { understand, understandUnbounded } from '../../bot/language/understand.ts';
import { BUILT_ON, REPORTED } from '../bot/language/corpora.ts';
import type { Row } from './row.ts';

/** Texts with which a reader that back-tracks, or looks back over all it has read, would slow down. */
const HOSTILE: readonly (readonly [name: string, unit: string])[] = [
  ['kale and so on', 'will my kale and spinach survive 14 F under a blanket or fleece tonight, '],
  ['covers alone', 'fleece or blanket over '],
  ['ranges alone', '14-15-'],
  ['gibberish', 'xqzv wkrt pplm '],
  ['one word', 'a'],
  ['marks', '((("-\u2212°,'],
];

const LONG = 100_000;

/** Speed of reading questions: the usual ones, and 100,000 characters that mean harm. */
export function benchLanguage(): readonly Row[] {
  const started = performance.now();
  const vocabulary = cropVocabulary();
  const builtMs = performance.now() - started;
  const questions = [...BUILT_ON, ...REPORTED].map(({ ask }) => ask);
  for (let round = 0; round < 3; round += 1) for (const ask of questions) understand(ask, { vocabulary });
  const times = questions.map((ask) => elapsedMs(() => understand(ask, { vocabulary }))).sort((a, b) => a - b);
  return [
    { name: 'language: build the vocabulary once', value: builtMs, unit: 'ms' },
    { name: 'language: median question', value: at(times, 0.5), unit: 'ms' },
    { name: 'language: slowest of 100 questions', value: at(times, 0.99), unit: 'ms' },
    ...HOSTILE.map(([name, unit]): Row => {
      const half = fastestMs(repeated(unit, LONG / 2));
      const whole = fastestMs(repeated(unit, LONG));
      return {
        name: `language: 100,000 characters of ${name}, against 50,000`,
        value: whole,
        unit: 'ms',
        ratio: whole / half,
      };
    }),
  ];

  function fastestMs(text: string): number {
    return Math.min(...[1, 2, 3].map(() => elapsedMs(() => understandUnbounded(text, { vocabulary }))));
  }
}

function repeated(unit: string, length: number): string {
  return unit.repeat(Math.ceil(length / unit.length)).slice(0, length);
}

function elapsedMs(work: () => unknown): number {
  const started = performance.now();
  work();
  return performance.now() - started;
}

function at(sorted: readonly number[], share: number): number {
  return sorted[Math.floor(sorted.length * share)] ?? 0;
}
