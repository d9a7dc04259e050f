import type { Config } from '../config.ts';
import { forecastDesk } from '../forecast/choose.ts';
import { SERVICE_TITLES } from '../forecast/credits.ts';
import { FORECAST_SERVICES, type ForecastService, type ServiceFailure } from '../forecast/forecast.ts';
import { NoForecastError } from '../forecast/forecast-error.ts';
import type { TransportOptions } from '../forecast/transport.ts';
import { type Finding, findingsOn } from './finding.ts';

const { good, look, fix } = findingsOn('Forecasts');

/** In the middle of the plains, where all three services have a forecast; nobody's garden. */
const ANYWHERE = { latitudeDeg: 40, longitudeDeg: -100 };

const BASE_SETTING: Readonly<Record<ForecastService, string>> = {
  nws: 'NWS_BASE',
  metno: 'METNO_BASE',
  openmeteo: 'OPENMETEO_BASE',
};

export interface ForecastCheck extends Pick<TransportOptions, 'retryWaitMs' | 'spacingMs'> {
  /** False where the bot only answers at a terminal. */
  readonly needed: boolean;
  readonly now: Date;
}

/** Asks each service for one forecast and reads it. */
export async function forecastFindings(config: Config, check: ForecastCheck): Promise<readonly Finding[]> {
  const { FORECAST_CONTACT: contact, FORECAST_ORDER: order } = config;
  if (contact === undefined) {
    const todo = 'Set FORECAST_CONTACT to your e-mail or web address.';
    const says = 'No service may be asked: they want a way to reach you.';
    return [check.needed ? fix(says, todo) : look(says, todo)];
  }
  const findings = await Promise.all(
    (order ?? FORECAST_SERVICES).map((service) => serviceFinding(service, contact, config, check)),
  );
  if (findings.some(({ state }) => state === 'good')) return findings;
  return [...findings, fix('No forecast can be had at all: every warning would only say so.')];
}

async function serviceFinding(
  service: ForecastService,
  contact: string,
  config: Config,
  { now, retryWaitMs, spacingMs }: ForecastCheck,
): Promise<Finding> {
  const desk = forecastDesk({
    bases: { nws: config.NWS_BASE, metno: config.METNO_BASE, openmeteo: config.OPENMETEO_BASE },
    contact,
    order: [service],
    ...(retryWaitMs && { retryWaitMs }),
    ...(spacingMs && { spacingMs }),
  });
  const title = SERVICE_TITLES[service];
  try {
    const { hours } = await desk.forecastFor(ANYWHERE, now);
    return good(`${capital(title)} answers (${hours} hours).`);
  } catch (error) {
    if (!(error instanceof NoForecastError)) throw error;
    return look(`${capital(title)} is of no use now.`, REMEDY[error.failures[0]?.code ?? 'unavailable'](service));
  } finally {
    await desk.close();
  }
}

const REMEDY: Readonly<Record<ServiceFailure, (service: ForecastService) => string>> = {
  refused: () => 'It turns us away: make FORECAST_CONTACT an address that is really yours, and try again in an hour.',
  'rate-limited': () => 'It was asked too often from this address: wait an hour; others may share your address.',
  'not-covered': (service) => `It knows no place in its own area: check ${BASE_SETTING[service]}, or leave it empty.`,
  busy: () => 'It has too many questions waiting; that is ours alone.',
  unavailable: (service) => `It does not answer: check the network and ${BASE_SETTING[service]}; the others stand in.`,
  'bad-answer': (service) =>
    `Its answer cannot be read: check ${BASE_SETTING[service]}, then look for a newer version of this program.`,
  stale: () => 'Its forecast is old: the fault is theirs and mostly passes within a day; the others stand in.',
  'too-short': () => 'Its forecast is too short: the fault is theirs; the others stand in.',
};

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
