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
const ROUNDS = 60;
const NOW = new Date('2026-01-20T15:00:00Z');

/** The whole way from typed words to an answer, night model included. */
export function benchAsk(): readonly Row[] {
  const times: number[] = [];
  for (const question of QUESTIONS) answerText(question, { locale: 'en-US', now: NOW });
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const question of QUESTIONS) {
      const begun = performance.now();
      answerText(question, { locale: 'en-US', now: NOW });
      times.push(performance.now() - begun);
    }
  }
  times.sort((a, b) => a - b);
  const total = times.reduce((sum, each) => sum + each, 0);
  return [
    { name: 'answers per second', value: (1000 * times.length) / total, unit: '1/s' },
    { name: 'answer, median', value: times[Math.floor(times.length / 2)] ?? 0, unit: 'ms' },
    { name: 'answer, 99th percentile', value: times[Math.floor(times.length * 0.99)] ?? 0, unit: 'ms' },
  ];
}
