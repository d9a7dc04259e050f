import { DOORS, type DoorKind, type House, openHouse } from '../bot/chat/discord/house.ts';
import { DiscordDouble } from '../fakes/discord/double.ts';
import type { Row } from './row.ts';

const AT_ONCE = [1, 10, 100] as const;
const COMMANDS_EACH = 1000;
const WARM_UP = 1000;
/** Discord waits no longer. */
const UNANSWERED_MS = 3000;
/** For memory: what a busy week might bring. */
const MANY = 10_000;

/**
 * From a typed command to its first answer on the loopback Discord, through each door; how long a start takes; and how
 * much memory stays after many commands of many people. Double and bot share one process, so the figures hold both.
 */
export async function benchDiscord(): Promise<readonly Row[]> {
  const rows: Row[] = [];
  for (const kind of DOORS) rows.push(...(await doorRows(kind)));
  return rows;
}

async function doorRows(kind: DoorKind): Promise<readonly Row[]> {
  const double = await DiscordDouble.open();
  const begun = performance.now();
  const house = await openHouse(kind, { double });
  const rows: Row[] = [{ name: `${kind}: start to ready`, value: performance.now() - begun, unit: 'ms' }];
  let alone = 0;
  for (const atOnce of AT_ONCE) {
    // Connections are opened and code is compiled first.
    await roundTripsMs(house, WARM_UP, atOnce);
    const sorted = (await roundTripsMs(house, COMMANDS_EACH, atOnce)).sort((a, b) => a - b);
    const median = share(sorted, 0.5);
    if (atOnce === 1) alone = median;
    const name = `${kind}: command to first answer, ${atOnce} at once`;
    rows.push({ name: `${name}, median`, value: median, unit: 'ms', ratio: median / alone });
    rows.push({ name: `${name}, 99th percentile`, value: share(sorted, 0.99), unit: 'ms' });
  }
  const before = heapMiB();
  await roundTripsMs(house, MANY, 20);
  rows.push({ name: `${kind}: heap kept after ${MANY} commands`, value: heapMiB() - before, unit: 'MiB' });
  await house.close();
  return rows;
}

/** Latencies of so many commands, each from a person of their own, so many underway at any time. */
async function roundTripsMs(house: House, commands: number, atOnce: number): Promise<number[]> {
  const latenciesMs: number[] = [];
  let left = commands;
  const person = async () => {
    while (left > 0) {
      left -= 1;
      const answer = house.double.answerTo({ command: 'say', options: { what: 'frost' } });
      latenciesMs.push(await answer.then(({ afterMs }) => afterMs).catch(() => UNANSWERED_MS));
    }
  };
  await Promise.all(Array.from({ length: atOnce }, person));
  house.double.forget();
  return latenciesMs;
}

function share(sorted: readonly number[], fraction: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * fraction))] ?? Number.NaN;
}

function heapMiB(): number {
  globalThis.gc?.();
  return process.memoryUsage().heapUsed / 1024 / 1024;
}
