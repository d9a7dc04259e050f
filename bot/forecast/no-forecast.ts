import { SERVICE_TITLES } from './credits.ts';
import { FAILURE_WORDS } from './failure-words.ts';
import { type ForecastServiceError, NoForecastError } from './forecast-error.ts';

/** The sentence for a gardener whom no service could serve. */
export function noForecast(failures: readonly ForecastServiceError[]): NoForecastError {
  if (failures.length > 0 && failures.every(({ code }) => code === 'too-short' || code === 'not-covered')) {
    return new NoForecastError(
      'No forecast reaches that night yet; ask again nearer to it, or for an earlier night.',
      failures,
    );
  }
  const reasons = failures.map(({ service, code }) => `${SERVICE_TITLES[service]} ${FAILURE_WORDS[code]}`);
  return new NoForecastError(
    `No forecast could be had: ${reasons.join('; ')}. Look outside, and cover as for a colder night.`,
    failures,
  );
}
