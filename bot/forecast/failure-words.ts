import type { ServiceFailure } from './forecast.ts';

/** What a service did instead of answering, after its name. */
export const FAILURE_WORDS: Readonly<Record<ServiceFailure, string>> = {
  refused: 'turned us away',
  'rate-limited': 'has been asked too often',
  'not-covered': 'does not cover this place',
  busy: 'has too many questions waiting',
  unavailable: 'did not answer',
  'bad-answer': 'sent something that cannot be read',
  stale: 'had only an old forecast',
  'too-short': 'does not reach that night',
};
