import { answerText } from '../../bot/commands/ask/ask.ts';
import type { Row } from './row.ts';

const QUESTIONS = [
  'will my spinach survive 14 °F under a blanket?',
  'kale in a low tunnel at 20F, ok?',
  'will lettuce and mache live through 12 °F in a cold frame?',
  'how cold can leeks go uncovered?',
  'what should I lay over my chard at 22 °F?',
  'blanket or low tunnel for kale at 20 °F?',
  'what survives 10 °F in a cold frame?',
  'can I burn a candle in the frame?',
];
/** While code is compiled. */
const WARM_UP_ROUNDS = 15;
const ROUNDS = 60;
const NOW = new Date('2026-01-20T15:00:00Z');

/** The whole way from typed words to an answer, night model included; the first of all builds the vocabulary too. */
export function benchAsk(): readonly Row[] {
  const firstMs = answeredInMs(QUESTIONS[0] ?? '');
  for (let round = 0; round < WARM_UP_ROUNDS; round += 1) QUESTIONS.map(answeredInMs);
  const rounds = Array.from({ length: ROUNDS }, () => QUESTIONS.map(answeredInMs));
  const times = rounds.flat().sort((a, b) => a - b);
  const total = times.reduce((sum, each) => sum + each, 0);
  const byQuestion = QUESTIONS.map((question, index) => {
    const own = rounds.map((each) => each[index] ?? Number.NaN).sort((a, b) => a - b);
    return { name: `median of "${question}"`, value: share(own, 0.5), unit: 'ms' };
  });
  return [
    { name: 'the very first answer', value: firstMs, unit: 'ms' },
    { name: 'answers per second', value: (1000 * times.length) / total, unit: '1/s' },
    { name: 'answer, median', value: share(times, 0.5), unit: 'ms' },
    { name: 'answer, 99th percentile', value: share(times, 0.99), unit: 'ms' },
    ...byQuestion,
  ];
}

function answeredInMs(question: string): number {
  const begun = performance.now();
  answerText(question, { locale: 'en-US', now: NOW });
  return performance.now() - begun;
}

function share(sorted: readonly number[], fraction: number): number {
  return sorted[Math.floor((sorted.length - 1) * fraction)] ?? Number.NaN;
}
