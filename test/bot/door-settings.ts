import { createServer } from 'node:net';
import type { DiscordDouble } from '../fakes/discord/double.ts';

export const DOORS = ['gateway', 'signed HTTP'] as const;
export type DoorKind = (typeof DOORS)[number];

export type Settings = Readonly<Record<string, string>>;

/** Settings with which a bot opens one door on the loopback Discord; signed requests go there from now on. */
export async function doorSettings(kind: DoorKind, double: DiscordDouble): Promise<Settings> {
  const discord = { DISCORD_TOKEN: double.token, DISCORD_API_BASE: double.apiBase };
  if (kind === 'gateway') return discord;
  const port = await freePort();
  double.doorUrl = `http://127.0.0.1:${port}`;
  return { ...discord, HTTP_PORT: String(port), DISCORD_PUBLIC_KEY: double.publicKey };
}

export function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => resolve(typeof address === 'object' && address !== null ? address.port : 0));
    });
  });
}
