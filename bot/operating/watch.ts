import type { ButtonHandler, Command } from '../commands/command.ts';
import type { Config } from '../config.ts';
import type { ServiceEvent } from '../forecast/transport.ts';
import type { Clock } from '../ground/clock.ts';
import type { Store } from '../store/store.ts';
import type { Metrics } from './metrics.ts';
import { openOperatorPage } from './operator-page.ts';
import { watchedButtons, watchedCommands } from './watched-commands.ts';
import { watchRequests } from './watched-requests.ts';
import { watchedStore } from './watched-store.ts';

/** What a host's tools may see of the running bot; hands everything through as it is where no METRICS_PORT is set. */
export class Watch {
  readonly #config: Config;
  readonly #metrics: Metrics | undefined;

  private constructor(config: Config, metrics: Metrics | undefined) {
    this.#config = config;
    this.#metrics = metrics;
  }

  /** The library that keeps the figures is loaded only where they are wanted. */
  static async over(config: Config): Promise<Watch> {
    if (config.METRICS_PORT === undefined) return new Watch(config, undefined);
    const { Metrics } = await import('./metrics.ts');
    return new Watch(config, new Metrics());
  }

  store(store: Store, clock: Clock): Store {
    return this.#metrics === undefined ? store : watchedStore(store, this.#metrics, clock);
  }

  /** Counts answers that came and could not be read; what goes out is counted where it goes. */
  serviceTold({ service, code }: ServiceEvent): void {
    if (code === 'bad-answer') this.#metrics?.requestDone(service, 'unreadable');
  }

  commands(commands: readonly Command[]): readonly Command[] {
    return this.#metrics === undefined ? commands : watchedCommands(commands, this.#metrics);
  }

  buttons(buttons: readonly ButtonHandler[]): readonly ButtonHandler[] {
    return this.#metrics === undefined ? buttons : watchedButtons(buttons, this.#metrics);
  }

  /**
   * Opens the page where the figures stand.
   *
   * @param missing - Names the parts that are away.
   * @returns closes it.
   * @throws PlainProblem when it cannot be opened.
   */
  async open(missing: () => Promise<readonly string[]>): Promise<() => Promise<void>> {
    const { METRICS_PORT: port, METRICS_HOST: host, ...config } = this.#config;
    const metrics = this.#metrics;
    if (metrics === undefined || port === undefined) return async () => undefined;
    const { DISCORD_API_BASE: discord, NWS_BASE: nws, METNO_BASE: metno, OPENMETEO_BASE: openmeteo } = config;
    const page = await openOperatorPage({ port, host, metrics, missing });
    const endCounting = watchRequests({ discord, nws, metno, openmeteo }, metrics);
    return async () => {
      endCounting();
      await page.stop();
    };
  }
}
