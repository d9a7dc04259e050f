import { SERVICE_TITLES } from './credits.ts';
import type { ServiceFailure } from './forecast.ts';
import { type ForecastServiceError, NoForecastError } from './forecast-error.ts';

const WHY: Readonly<Record<ServiceFailure, string>> = {
  refused: 'turned us away',
  'rate-limited': 'has been asked too often',
  'not-covered': 'does not cover this place',
  unavailable: 'did not answer',
  'bad-answer': 'sent something that cannot be read',
  stale: 'had only an old forecast',
  'too-short': 'does not reach that night',
};

/** The sentence for a gardener whom no service could serve. */
export function noForecast(failures: readonly ForecastServiceError[]): NoForecastError {
  if (failures.length > 0 && failures.every(({ code }) => code === 'too-short' || code === 'not-covered')) {
    return new NoForecastError(
      'No forecast reaches that night yet; ask again nearer to it, or for an earlier night.',
      failures,
    );
  }
  const reasons = failures.map(({ service, code }) => `${SERVICE_TITLES[service]} ${WHY[code]}`);
  return new NoForecastError(
    `No forecast could be had: ${reasons.join('; ')}. Look outside, and cover as for a colder night.`,
    failures,
  );
}
