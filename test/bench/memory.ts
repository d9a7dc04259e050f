import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { request } from 'undici';
import { rehearsalClock } from '../../bot/ground/clock.ts';
import { openStore } from '../../bot/store/open-store.ts';
import { doorSettings, freePort } from '../bot/door-settings.ts';
import { bedFacts, clubChannel, homeFacts } from '../bot/store/specification/world.ts';
import { DiscordDouble } from '../fakes/discord/double.ts';
import { SyntheticOpenMeteo } from '../fakes/synthetic-open-meteo.ts';
import { HOST_FLAGS } from './host-flags.ts';
import type { Row } from './row.ts';

const START = new Date('2026-01-11T12:00:00Z');
const DAYS = 7;
/** A simulated hour takes a second; what runs by itself looks once a second. */
const RATE = 3600;
const CHANNELS = 40;
const MEMBERS_EACH = 3;
/** Few: the services are asked no faster than they allow, and their hour is a second here. */
const CELLS = 4;
/** Collects every second, so that what is in use can be told from what is left lying. */
const COLLECTING = ['--expose-gc', '--import', 'data:text/javascript,setInterval(gc,1000).unref()'];
const ASKED_PER_H = 30;
/** While code is compiled and caches fill, memory grows. */
const SETTLING_DAYS = 2;
const HOURS = DAYS * 24;
const MEGA = 1e6;

interface Sample {
  readonly day: number;
  readonly rssMb: number;
  readonly heapMb: number;
}

/** A club bot's week on a rehearsal clock, with warnings every night and questions every hour: does memory stay? */
export async function benchMemory(): Promise<readonly Row[]> {
  const folder = await mkdtemp(join(tmpdir(), 'eiderdown-week-'));
  const double = await DiscordDouble.open();
  const clock = rehearsalClock(START, RATE);
  // Freshness goes by the world's clock, in which the week lasts minutes.
  const forecasts = await SyntheticOpenMeteo.start(() => clock.now(), { 'cache-control': 'no-store' });
  const DATABASE_URL = `sqlite:${join(folder, 'week.db')}`;
  await fillClubs(DATABASE_URL, double);
  const port = await freePort();
  const settings = {
    ...(await doorSettings('gateway', double)),
    ...{ DATABASE_URL, METRICS_PORT: String(port), LOG_LEVEL: 'warn', FORECAST_CONTACT: 'bench@example.org' },
    ...{ FORECAST_ORDER: 'openmeteo', OPENMETEO_BASE: forecasts.base, NWS_BASE: forecasts.base },
    ...{ CLOCK_START: clock.now().toISOString(), CLOCK_RATE: String(RATE) },
  };
  const file = fileURLToPath(new URL('../../bot/main.js', import.meta.url));
  const bot = spawn(process.execPath, [...HOST_FLAGS, ...COLLECTING, file], {
    env: { ...process.env, ...settings },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  await untilReady(port);
  await pause(2000);
  const idle = await sampled(port, 0);
  const samples: Sample[] = [];
  let posts = 0;
  for (let hour = 1; hour <= HOURS; hour += 1) {
    await Promise.all([pause(1000), anHourOfQuestions(double, hour)]);
    posts += double.asked('POST', /^\/channels\/\d+\/messages$/).length;
    double.forget();
    samples.push(await sampled(port, hour / 24));
  }
  bot.kill('SIGTERM');
  await once(bot, 'exit');
  await Promise.all([double.close(), forecasts.close()]);
  await rm(folder, { recursive: true, force: true });
  return rowsOf(idle, samples, posts);
}

async function fillClubs(url: string, double: DiscordDouble): Promise<void> {
  const store = await openStore(url);
  const guild = double.world.addGuild();
  for (let club = 0; club < CHANNELS; club += 1) {
    const { id } = double.world.addChannel(guild.id);
    await store.channels.start(clubChannel(id, `bench:${club}:0`), START);
    for (let member = 0; member < MEMBERS_EACH; member += 1) {
      const memberId = `bench:${club}:${member}`;
      const site = await store.sites.add(memberId, { ...homeFacts, latitudeDeg: 43 + (club % CELLS) }, START);
      const bed = await store.beds.add(memberId, bedFacts(site.id), START);
      const planting = { crop: 'lettuce', stage: 'growing', since: '2026-10-01', hardened: true } as const;
      await store.plantings.add(memberId, bed.id, planting);
      await store.channels.join(id, memberId, { siteId: undefined, wantsDirect: false }, START);
    }
  }
  await store.close();
}

async function untilReady(port: number): Promise<void> {
  const isReady = async () => (await request(`http://127.0.0.1:${port}/readyz`)).statusCode === 200;
  while (!(await isReady().catch(() => false))) await pause(50);
}

async function anHourOfQuestions(double: DiscordDouble, hour: number): Promise<void> {
  for (let index = 0; index < ASKED_PER_H; index += 1) {
    const userId = String(471147114711000000n + BigInt(hour * ASKED_PER_H + index));
    const question = `will kale survive ${index} F under a blanket?`;
    await double.type({ command: 'ask', options: { question }, userId }).first.catch(() => undefined);
  }
}

async function sampled(port: number, day: number): Promise<Sample> {
  const { body } = await request(`http://127.0.0.1:${port}/metrics`);
  const text = await body.text();
  const value = (name: string) => Number(new RegExp(`^${name} (\\S+)$`, 'm').exec(text)?.[1]) / MEGA;
  return { day, rssMb: value('process_resident_memory_bytes'), heapMb: value('nodejs_heap_size_used_bytes') };
}

function rowsOf(idle: Sample, samples: readonly Sample[], posts: number): readonly Row[] {
  const settled = samples.filter(({ day }) => day > SETTLING_DAYS);
  return [
    { name: 'resident, just started', value: idle.rssMb, unit: 'MB' },
    { name: `posts in ${DAYS} simulated days, ${CHANNELS} channels`, value: posts, unit: '' },
    { name: 'questions answered', value: HOURS * ASKED_PER_H, unit: '' },
    { name: 'resident, most', value: Math.max(...samples.map(({ rssMb }) => rssMb)), unit: 'MB' },
    { name: 'resident at the end', value: samples.at(-1)?.rssMb ?? Number.NaN, unit: 'MB' },
    { name: `resident, slope after day ${SETTLING_DAYS}`, value: slope(settled, ({ rssMb }) => rssMb), unit: 'MB/day' },
    // What is in use right after a collection; the samples between two of them show when it ran.
    {
      name: `heap in use, slope of daily lows`,
      value: slope(dailyLows(settled), ({ heapMb }) => heapMb),
      unit: 'MB/day',
    },
  ];
}

function dailyLows(samples: readonly Sample[]): readonly Sample[] {
  const days = [...new Set(samples.map(({ day }) => Math.ceil(day)))];
  return days.flatMap((each) =>
    samples
      .filter(({ day }) => Math.ceil(day) === each)
      .toSorted((one, other) => one.heapMb - other.heapMb)
      .slice(0, 1),
  );
}

/** Least squares. */
function slope(samples: readonly Sample[], value: (sample: Sample) => number): number {
  const mean = (numbers: readonly number[]) => numbers.reduce((sum, each) => sum + each, 0) / numbers.length;
  const [days, values] = [samples.map(({ day }) => day), samples.map(value)];
  const [meanDay, meanValue] = [mean(days), mean(values)];
  const over = samples.reduce((sum, { day }, index) => sum + (day - meanDay) * ((values[index] ?? 0) - meanValue), 0);
  return over / days.reduce((sum, day) => sum + (day - meanDay) ** 2, 0);
}
