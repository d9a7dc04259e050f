import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { typedLine } from '../../../bot/chat/terminal/typed-line.ts';
import { Allowance } from '../../../bot/commands/allowance.ts';
import { BUTTONS, COMMANDS } from '../../../bot/commands/commands.ts';
import { answer, answerPress } from '../../../bot/commands/dispatch.ts';
import type { Services } from '../../../bot/commands/services.ts';
import { forecastDesk } from '../../../bot/forecast/choose.ts';
import { openLog } from '../../../bot/log.ts';
import { openStore } from '../../../bot/store/open-store.ts';
import type { Prediction } from '../../../bot/store/port/readings.ts';
import type { Store } from '../../../bot/store/store.ts';
import type { ChannelPoster } from '../../../bot/talk/channel-poster.ts';
import type { Reply } from '../../../bot/talk/reply.ts';
import type { Place } from '../../../bot/talk/request.ts';
import { FIXTURE_NOW, ForecastServices } from '../../fakes/forecast-services.ts';

/** The evening before the fixture's noon. */
export const LAST_NIGHT = '2026-01-19';
export const GUILD = '100000000000000001';
export const CHANNEL: Place = {
  kind: 'channel',
  channelId: '200000000000000001',
  guildId: GUILD,
  conversationId: 'channel',
};
export const DIRECT: Place = { kind: 'direct', channelId: '200000000000000002', conversationId: 'direct' };
export const TERMINAL: Place = { kind: 'terminal', conversationId: 'terminal' };

/** Who asks, where and when. */
export interface Asker {
  readonly member?: string;
  readonly place?: Place;
  readonly manager?: boolean;
  readonly locale?: string;
  readonly now?: Date;
}

/** Invented coordinates inside the American grid of the invented forecast. */
export const HOME = 'site set lat:41.2109871 lon:-96.6301234 height:340m';

/** A club's bot without any door: a real store in a file, forecast services on this machine, and members who type lines. */
export class Club {
  readonly folder: string;
  readonly url: string;
  readonly forecasts: ForecastServices;
  readonly logged: string[] = [];
  services: Services;

  private constructor(folder: string, forecasts: ForecastServices, store: Store) {
    this.folder = folder;
    this.url = `sqlite:${join(folder, 'club.db')}`;
    this.forecasts = forecasts;
    this.services = {
      clock: { now: () => FIXTURE_NOW, rehearsal: false },
      log: openLog('debug', { write: (line: string) => this.logged.push(line) }),
      allowance: new Allowance(1_000_000, 1),
      store,
      forecasts: forecastDesk({
        bases: forecasts.bases,
        contact: 'grower@example.org',
        retryWaitMs: () => 1,
        spacingMs: { nws: 0, metno: 0, openmeteo: 0 },
      }),
    };
  }

  static async open(): Promise<Club> {
    const folder = await mkdtemp(join(tmpdir(), 'eiderdown-club-'));
    const [forecasts, store] = await Promise.all([
      ForecastServices.start(),
      openStore(`sqlite:${join(folder, 'club.db')}`),
    ]);
    return new Club(folder, forecasts, store);
  }

  get store(): Store {
    const { store } = this.services;
    if (store === undefined) throw new Error('this club keeps nothing');
    return store;
  }

  /** Without something that the bot usually has, or with something more. */
  with(more: Partial<Services>): void {
    this.services = { ...this.services, ...more };
  }

  without(part: 'store' | 'forecasts'): void {
    const { [part]: _left, ...rest } = this.services;
    this.services = rest;
  }

  async say(line: string, asker: Asker = {}): Promise<Reply> {
    const typed = typedLine(line, COMMANDS);
    if (!typed.ok) throw new Error(`the line is no command: ${typed.problem}`);
    return answer({ ...typed.value, ...who(asker) }, this.services, COMMANDS);
  }

  async press(buttonId: string, asker: Asker = {}): Promise<Reply> {
    return answerPress({ buttonId, ...who(asker) }, this.services, BUTTONS);
  }

  /** What completes an option while it is typed. */
  async suggestions(command: string, option: string, typed: string, asker: Asker = {}): Promise<readonly string[]> {
    const [name = '', action] = command.split(' ');
    const found = COMMANDS.find((each) => each.name === name);
    const options = (action === undefined ? found?.action : found?.actions?.[action])?.options;
    const suggest = options?.find((each) => each.name === option)?.suggest;
    if (suggest === undefined) throw new Error(`${command} completes no ${option}`);
    const request = { command: name, options: {}, ...who(asker) };
    return (await suggest(typed, request, this.services)).map(({ label }) => label);
  }

  /** As if every bed of the member had been told last night, with invented figures. */
  async toldLastNight(member = 'anna', more: Partial<Prediction> = {}): Promise<void> {
    const beds = await this.store.beds.list(member);
    const issuedAt = new Date(FIXTURE_NOW.getTime() - 20 * 3_600_000);
    const lows = { outsideLowC: -9, outsideSpreadK: 1.8, underCoverLowC: -6, underCoverSpreadK: 1.9 };
    await this.store.predictions.keep(
      beds.map(({ id, covers }) => ({
        ...{ memberId: member, bedId: id, night: LAST_NIGHT, issuedAt, service: 'nws', leadH: 14 },
        ...{ ...lows, book: lows, leafLowC: -7, leafSpreadK: 1.9, verdict: 'leaf burn', covers },
        ...more,
      })),
    );
  }

  async close(): Promise<void> {
    await this.services.forecasts?.close();
    await this.services.store?.close();
    await this.forecasts.close();
    await rm(this.folder, { recursive: true, force: true });
  }
}

export function who({ member = 'anna', place = CHANNEL, manager = false, locale = 'en-US', now = FIXTURE_NOW }: Asker) {
  return { memberId: member, place, locale, mayManageChannel: manager, now };
}

/** All that a reply says, as one text. */
export function wordsOf({ headline, sections, cautions = [] }: Reply): string {
  return [headline, ...sections.flatMap(({ title = '', lines }) => [title, ...lines]), ...cautions].join('\n');
}

/** A poster of a server where the bot has some rights, or cannot be asked. */
export function posterWith(rights: readonly string[] | Error, guildId = GUILD): ChannelPoster {
  const unused = () => Promise.reject(new Error('nothing is posted here'));
  return {
    send: unused,
    findRecent: unused,
    direct: unused,
    directChannelId: unused,
    guildIdOf: () => Promise.resolve(guildId),
    rights: () => (rights instanceof Error ? Promise.reject(rights) : Promise.resolve(rights)),
  };
}
