import { DiscordApi } from '../../../../bot/chat/discord/discord-api.ts';
import type { Desk, Door } from '../../../../bot/chat/discord/door.ts';
import { openGateway } from '../../../../bot/chat/discord/gateway.ts';
import { openHttpDoor } from '../../../../bot/chat/discord/http-door.ts';
import type { PlainProblem } from '../../../../bot/ground/errors.ts';
import { DiscordDouble } from '../../../fakes/discord/double.ts';
import { type Gate, smallDesk } from './small-desk.ts';

export const DOORS = ['gateway', 'signed HTTP'] as const;
export type DoorKind = (typeof DOORS)[number];

const BACK_OFF = { firstMs: 20, mostMs: 100 };

/** The loopback Discord with one door open on it. */
export interface House {
  readonly double: DiscordDouble;
  readonly door: Door;
  readonly api: DiscordApi;
  readonly gate: Gate;
  /** What ended the program, had it been one. */
  readonly fatal: PlainProblem[];
  tokenRefusals: number;
  /** Of the signed HTTP door, once it listens. */
  httpPort(): number;
  close(): Promise<void>;
}

export interface HouseOptions {
  readonly desk?: Partial<Desk>;
  readonly double?: DiscordDouble;
  readonly finishWithinMs?: number;
  readonly requestWithinMs?: number;
  readonly isReady?: () => Promise<boolean>;
  readonly token?: string;
}

/** A house whose door may not be ready yet. */
export async function houseBeingOpened(kind: DoorKind, options: HouseOptions = {}): Promise<House> {
  const double = options.double ?? (await DiscordDouble.open());
  const { desk, gate } = smallDesk(options.desk);
  const fatal: PlainProblem[] = [];
  const token = options.token ?? double.token;
  const { apiBase } = double;
  const api = new DiscordApi({ token, apiBase, onTokenRefused: () => (house.tokenRefusals += 1) });
  const common = { desk, api, apiBase, backOff: BACK_OFF, finishWithinMs: options.finishWithinMs ?? 5000 };
  let port = () => 0;
  const door: Door =
    kind === 'gateway' ? openGateway({ ...common, token, onFatal: (problem) => fatal.push(problem) }) : httpDoor();
  const house: House = {
    double,
    door,
    api,
    gate,
    fatal,
    tokenRefusals: 0,
    httpPort: () => port(),
    async close() {
      gate.open();
      await door.stop();
      api.close();
      await double.close();
    },
  };
  return house;

  function httpDoor(): Door {
    const { requestWithinMs, isReady } = options;
    const opened = openHttpDoor({
      ...common,
      port: 0,
      host: '127.0.0.1',
      publicKey: double.publicKey,
      ...(requestWithinMs === undefined ? {} : { requestWithinMs }),
      ...(isReady === undefined ? {} : { isReady }),
    });
    port = () => opened.port();
    const ready = opened.ready.then(() => {
      double.doorUrl = `http://127.0.0.1:${opened.port()}`;
    });
    return { ready, isOpen: () => opened.isOpen(), stop: () => opened.stop() };
  }
}

export async function openHouse(kind: DoorKind, options: HouseOptions = {}): Promise<House> {
  const house = await houseBeingOpened(kind, options);
  await house.door.ready;
  return house;
}
