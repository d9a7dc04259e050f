import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { readConfig } from '../../bot/config.ts';
import { openLog } from '../../bot/log.ts';
import { runBot } from '../../bot/program.ts';
import { DiscordDouble } from '../fakes/discord/double.ts';
import { FIXTURE_NOW, ForecastServices } from '../fakes/forecast-services.ts';
import { type DoorKind, doorSettings, type Settings } from './door-settings.ts';

/** A whole bot in this process, as `npm start` runs it. */
export class RunningBot {
  readonly logged: string[] = [];
  readonly ended: Promise<void>;
  readonly #stop = new AbortController();
  #output = '';

  constructor(settings: Settings, input: readonly string[] = []) {
    const typed = new PassThrough();
    typed.end(input.map((line) => `${line}\n`).join(''));
    const output = new PassThrough({ encoding: 'utf8' });
    output.on('data', (text: string) => {
      this.#output += text;
    });
    this.ended = runBot(readConfig(settings), {
      log: openLog('info', { write: (line: string) => this.logged.push(line) }),
      stop: this.#stop.signal,
      input: typed,
      output,
      interactive: false,
      isService: settings['NODE_ENV'] === 'production',
      locale: 'en-US',
    });
    this.ended.catch(() => undefined);
  }

  /** What stands on standard output. */
  get output(): string {
    return this.#output;
  }

  /** Until it says that it is ready; fails with what ended it before. */
  async ready(): Promise<void> {
    const failed = this.ended.then(() => {
      throw new Error('the bot ended before it was ready');
    });
    failed.catch(() => undefined);
    while (!this.logged.some((line) => line.includes('"msg":"ready"'))) {
      await Promise.race([failed, new Promise((resolve) => setTimeout(resolve, 5))]);
    }
  }

  async stop(): Promise<void> {
    this.#stop.abort();
    await this.ended;
  }
}

/** The world around a bot: Discord and the forecast services on this machine, and a folder for its database. */
export class Surroundings {
  readonly double: DiscordDouble;
  readonly forecasts: ForecastServices;
  readonly folder: string;

  private constructor(double: DiscordDouble, forecasts: ForecastServices, folder: string) {
    this.double = double;
    this.forecasts = forecasts;
    this.folder = folder;
  }

  static async open(): Promise<Surroundings> {
    const folder = await mkdtemp(join(tmpdir(), 'eiderdown-bot-'));
    return new Surroundings(await DiscordDouble.open(), await ForecastServices.start(), folder);
  }

  /** Settings of a bot here, at the time of the invented forecasts. */
  async settings(kind: DoorKind, more: Settings = {}): Promise<Settings> {
    return {
      ...(await doorSettings(kind, this.double)),
      DATABASE_URL: `sqlite:${join(this.folder, 'bot.db')}`,
      FORECAST_CONTACT: 'grower@example.org',
      ...{ NWS_BASE: this.forecasts.base, METNO_BASE: this.forecasts.base, OPENMETEO_BASE: this.forecasts.base },
      CLOCK_START: FIXTURE_NOW.toISOString(),
      CLOCK_RATE: '1',
      ...more,
    };
  }

  async close(): Promise<void> {
    await this.double.close();
    await this.forecasts.close();
    await rm(this.folder, { recursive: true, force: true });
  }
}
