import type { Readable, Writable } from 'node:stream';
import type { Logger } from 'pino';
import { closedDoor } from './chat/discord/closed-door.ts';
import { DiscordApi } from './chat/discord/discord-api.ts';
import type { Door, DoorOptions } from './chat/discord/door.ts';
import { openGateway } from './chat/discord/gateway.ts';
import { openHttpDoor } from './chat/discord/http-door.ts';
import { DiscordPoster } from './chat/discord/poster.ts';
import { TOKEN_REFUSED } from './chat/discord/startup.ts';
import { onSavedForecast } from './chat/terminal/on-saved-forecast.ts';
import { runTerminal, TERMINAL_MEMBER } from './chat/terminal/terminal.ts';
import { HOW_TO_GET_FORECASTS, terminalDesk } from './chat/terminal/terminal-desk.ts';
import { Allowance } from './commands/allowance.ts';
import { BUTTONS, COMMANDS } from './commands/commands.ts';
import { answer } from './commands/dispatch.ts';
import { shortAnswer, shortAnswerPress } from './commands/more.ts';
import type { Services } from './commands/services.ts';
import type { Config } from './config.ts';
import { type DoorChoice, doorChoice, startLines } from './door-choice.ts';
import { forecastDesk } from './forecast/choose.ts';
import { clockOf } from './ground/clock.ts';
import { PlainProblem } from './ground/errors.ts';
import type { JobServices } from './jobs/job-services.ts';
import { MORNING_PLANNER } from './jobs/opening-planner.ts';
import { startJobs } from './jobs/start-jobs.ts';
import { missingParts, type NeededPart } from './operating/readiness.ts';
import { Watch } from './operating/watch.ts';
import { sampleDay } from './sample/sample-day.ts';
import { sampleWarning } from './sample/sample-warning.ts';
import { openStore } from './store/open-store.ts';
import type { Request } from './talk/request.ts';

/** The machine that the program runs on. */
export interface Host {
  readonly log: Logger;
  /** Asks the program to end. */
  readonly stop: AbortSignal;
  readonly input: Readable;
  readonly output: Writable;
  readonly interactive: boolean;
  /** A service manager or a container started it: nobody reads what it prints. */
  readonly isService: boolean;
  /** BCP 47 tag of who types at this machine. */
  readonly locale: string;
  /** A saved answer of a forecast service to go by at the terminal; the clock stands at its time. */
  readonly forecastFile?: string;
}

type DiscordChoice = Exclude<DoorChoice, { kind: 'terminal' }>;

/** Questions that a member may ask at once, and the time after which one more is allowed (judgement). */
const ALLOWANCE = { most: 20, refillMs: 3000 };
/** Files of a logger: some at once for somebody with many beds, eight a day after that (judgement). */
const FILE_ALLOWANCE = { most: 12, refillMs: 3 * 3_600_000 };

/**
 * Runs the bot until it is asked to stop, the terminal's input ends, or it cannot go on. Everything is closed then.
 *
 * @throws PlainProblem or StoreProblem that says what a host must put right.
 */
export async function runBot(config: Config, host: Host): Promise<void> {
  const closing: (() => Promise<void>)[] = [];
  try {
    const door = doorChoice(config);
    const watch = await Watch.over(config);
    const services = await openServices(config, door, watch, host, closing);
    if (door.kind === 'terminal') await atTerminal(config, services, host);
    else await atDiscord(config, door, watch, services, host, closing);
  } finally {
    for (const close of closing.reverse()) await close();
  }
}

async function openServices(
  config: Config,
  door: DoorChoice,
  watch: Watch,
  { log }: Host,
  closing: (() => Promise<void>)[],
): Promise<Services> {
  // Who only types at a terminal may do so while the bot runs on the same file.
  const store = await openStore(config.DATABASE_URL, door.kind === 'terminal' ? 'visitor' : 'bot');
  closing.push(() => store.close());
  const clock = clockOf(config);
  const { FORECAST_CONTACT: contact, FORECAST_ORDER: order } = config;
  const forecasts =
    contact === undefined
      ? undefined
      : forecastDesk({
          bases: { nws: config.NWS_BASE, metno: config.METNO_BASE, openmeteo: config.OPENMETEO_BASE },
          contact,
          ...(order !== undefined && { order }),
          tell: (event) => {
            watch.serviceTold(event);
            log.warn(event, 'a forecast service did not serve');
          },
        });
  if (forecasts !== undefined) closing.push(() => forecasts.close());
  return {
    clock,
    log,
    allowance: new Allowance(door.kind === 'terminal' ? Number.POSITIVE_INFINITY : ALLOWANCE.most, ALLOWANCE.refillMs),
    ...(door.kind !== 'terminal' && { fileAllowance: new Allowance(FILE_ALLOWANCE.most, FILE_ALLOWANCE.refillMs) }),
    store: watch.store(store, clock),
    ...(forecasts && { forecasts }),
  };
}

/** Greets with the night of the beds that are kept, or of the sample garden. */
async function atTerminal(config: Config, services: Services, host: Host): Promise<void> {
  const { input, output, interactive, locale, forecastFile } = host;
  output.write(`${startLines(config, { kind: 'terminal' }).join('\n')}\n\n`);
  const here = await servicesHere(services, forecastFile);
  const desk = { services: here, commands: COMMANDS, buttons: BUTTONS };
  const greeting = await answer(tonightHere(locale, here.clock.now()), here, COMMANDS);
  const talk = runTerminal({ ...desk, input, output, interactive, locale, greeting });
  const lines = await Promise.race([talk, asked(host.stop)]);
  if (lines === 0 && host.isService) throw new PlainProblem(NOTHING_TO_DO);
}

/** To end as if all were well would leave a host believing that the bot runs. */
const NOTHING_TO_DO =
  'No DISCORD_TOKEN is set and nobody can type here, so there is nothing to do. Set DISCORD_TOKEN in the settings of this service.';

/** What commands may use of the world for somebody at this machine. */
async function servicesHere(services: Services, forecastFile: string | undefined): Promise<Services> {
  const here = { ...services, sample: sampleWarning, sampleDay, noForecasts: HOW_TO_GET_FORECASTS };
  if (forecastFile !== undefined) return onSavedForecast(here, forecastFile);
  return here.forecasts === undefined ? here : { ...here, forecasts: terminalDesk(here.forecasts) };
}

function tonightHere(locale: string, now: Date): Request {
  const place = { kind: 'terminal', conversationId: 'terminal' } as const;
  return { memberId: TERMINAL_MEMBER, place, command: 'tonight', options: {}, locale, mayManageChannel: true, now };
}

async function atDiscord(
  config: Config,
  choice: DiscordChoice,
  watch: Watch,
  services: Services,
  host: Host,
  closing: (() => Promise<void>)[],
): Promise<void> {
  for (const line of startLines(config, choice)) host.log.info(line);
  let end: (problem: PlainProblem) => void = () => undefined;
  const ended = new Promise<never>((_resolve, reject) => {
    end = reject;
  });
  const apiBase = config.DISCORD_API_BASE;
  const onTokenRefused = () => end(new PlainProblem(TOKEN_REFUSED));
  const api = new DiscordApi({ token: choice.token, apiBase, onTokenRefused });
  closing.push(async () => api.close());
  const equipped = { ...services, poster: new DiscordPoster(api) };
  const desk = {
    ...{ services: equipped, answer: shortAnswer, answerPress: shortAnswerPress },
    ...{ commands: watch.commands(COMMANDS), buttons: watch.buttons(BUTTONS) },
  };
  const database = { name: 'the database', isThere: async () => services.store?.ping().then(() => true) };
  const isReady = async () => (await missingParts([database])).length === 0;
  let door: Door | undefined;
  const parts: NeededPart[] = [database, { name: 'Discord', isThere: () => door?.isOpen() }];
  closing.push(await watch.open(() => missingParts(parts)));
  const opened = openDoor(choice, { desk, api, apiBase }, isReady, end);
  door = opened;
  closing.push(() => opened.stop());
  await Promise.race([opened.ready, ended, asked(host.stop)]);
  if (host.stop.aborted) return;
  if (config.DUTY !== 'answers') closing.push(jobsOf(equipped));
  host.log.info('ready');
  await Promise.race([ended, asked(host.stop)]);
}

/** Starts what runs by itself; it ends before the door does, so that what is in hand still goes out. */
function jobsOf(services: Services & Pick<JobServices, 'poster'>): () => Promise<void> {
  const { log, store, forecasts } = services;
  if (store === undefined || forecasts === undefined) {
    log.warn('no warnings will be posted: set FORECAST_CONTACT');
    return async () => undefined;
  }
  const jobs = startJobs({ ...services, store, forecasts, opening: MORNING_PLANNER });
  return () => jobs.stop();
}

function openDoor(
  choice: DiscordChoice,
  common: DoorOptions,
  isReady: () => Promise<boolean>,
  onFatal: (problem: PlainProblem) => void,
): Door {
  if (choice.kind === 'closed') return closedDoor(common.api, common.desk.services.log);
  if (choice.kind === 'gateway') return openGateway({ ...common, ...choice, onFatal });
  const { kind: _kind, token: _token, ...where } = choice;
  return openHttpDoor({ ...common, ...where, isReady });
}

function asked(stop: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    if (stop.aborted) resolve();
    else stop.addEventListener('abort', () => resolve(), { once: true });
  });
}
