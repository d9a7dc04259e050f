import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface, type Interface } from 'node:readline';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { openStore } from '../../../bot/store/open-store.ts';
import { DiscordDouble } from '../../fakes/discord/double.ts';
import { GlobalRate } from '../../fakes/discord/global-rate.ts';
import { SyntheticOpenMeteo } from '../../fakes/synthetic-open-meteo.ts';
import { addClubs } from './clubs.ts';

/** Discord's limit for everything that an application does. */
const POSTS_PER_S = 50;
const WORKER = fileURLToPath(new URL('worker.js', import.meta.url));
/** All fetches are due but no warning yet; then all warnings at once, the worst case. */
const FETCH_AT = new Date('2026-12-01T10:14:30Z');
const POST_AT = new Date('2026-12-01T10:30:00Z');

export interface NightFigures {
  readonly channels: number;
  readonly workers: number;
  readonly postedS: number;
  /** Time over what Discord's limit makes necessary. */
  readonly ratio: number;
  readonly copies: number;
  readonly missing: number;
  readonly requestsPerCell: number;
  readonly mostRequestsOfACell: number;
  readonly fetchedS: number;
  readonly peakMb: number;
  readonly postingCpuS: number;
  readonly refusals: number;
  readonly problems: readonly string[];
}

/** One evening of so many clubs against the loopback Discord, held to its rate. */
export async function nightRun(url: string, channels: number, workers: number): Promise<NightFigures> {
  const double = await DiscordDouble.open();
  const rate = new GlobalRate(POSTS_PER_S);
  double.globalRate = rate;
  const weather = await SyntheticOpenMeteo.start(() => FETCH_AT);
  weather.weather.meanC = -4;
  const store = await openStore(url);
  const cells = await addClubs(store, double, channels);
  await store.close();
  const args = [url, double.apiBase, double.token, weather.base, FETCH_AT.toISOString(), POST_AT.toISOString()];
  const begun = performance.now();
  const crew = Array.from({ length: workers }, () => new BenchWorker(args));
  await Promise.all(crew.map((worker) => worker.says()));
  const fetchedS = (performance.now() - begun) / 1000;
  const postedS = await posting(double, channels, crew);
  for (const worker of crew) worker.say('stop');
  const ends = await Promise.all(crew.map(async (worker) => JSON.parse(await worker.says()) as Usage));
  const counts = [...double.world.channels.values()].map(({ messages }) => messages.length);
  const requests = [...weather.asked.values()];
  await weather.close();
  await double.close();
  return {
    ...{ channels, workers, postedS, fetchedS },
    ratio: postedS / (channels / POSTS_PER_S),
    copies: counts.filter((count) => count > 1).length,
    missing: counts.filter((count) => count === 0).length,
    requestsPerCell: requests.reduce((sum, count) => sum + count, 0) / cells,
    mostRequestsOfACell: Math.max(...requests),
    peakMb: Math.max(...ends.map(({ peakMb }) => peakMb)),
    postingCpuS: ends.reduce((sum, { postingCpuS }) => sum + postingCpuS, 0),
    refusals: rate.refusals,
    problems: double.problems,
  };
}

interface Usage {
  readonly peakMb: number;
  readonly postingCpuS: number;
}

/** From the due time to the last message. */
async function posting(double: DiscordDouble, channels: number, crew: readonly BenchWorker[]): Promise<number> {
  const begun = performance.now();
  for (const worker of crew) worker.say('go');
  const told = () => [...double.world.channels.values()].filter(({ messages }) => messages.length > 0).length;
  const patienceMs = channels * 200 + 60_000;
  while (told() < channels && performance.now() - begun < patienceMs) await pause(20);
  return (performance.now() - begun) / 1000;
}

class BenchWorker {
  readonly #process: ChildProcess;
  readonly #lines: AsyncIterator<string>;

  constructor(args: readonly string[]) {
    const child = spawn(process.execPath, [...process.execArgv, WORKER, ...args], {
      stdio: ['pipe', 'pipe', 'inherit'],
    });
    const lines: Interface = createInterface({ input: child.stdout });
    this.#process = child;
    this.#lines = lines[Symbol.asyncIterator]();
  }

  say(line: string): void {
    this.#process.stdin?.write(`${line}\n`);
  }

  async says(): Promise<string> {
    const { value, done } = await this.#lines.next();
    if (done === true) throw new Error('a worker ended early');
    return value;
  }
}
