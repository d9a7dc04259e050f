import { Calendar } from '../../../bot/jobs/calendar.ts';
import { cellOf } from '../../../bot/jobs/cell.ts';
import { MS_PER_DAY, MS_PER_MIN } from '../../../rules/index.ts';
import { addClub, HOME } from '../../bot/jobs/club.ts';
import { type JobsWorld, jobsWorld } from '../../bot/jobs/jobs-world.ts';

const STOOD_STILL_MIN = 40;
const calendar = new Calendar();
const USEFUL_AFTER_SHUTTING_MS = 60 * MS_PER_MIN;

/** Places of clubs, on both halves of the globe, beyond the polar circle, and where clocks change on different days. */
const PLACES = [
  { latitudeDeg: 43.11, longitudeDeg: -76.31, timeZone: 'America/New_York' },
  { latitudeDeg: 51.45, longitudeDeg: -2.59, timeZone: 'Europe/London' },
  { latitudeDeg: 47.8, longitudeDeg: 13.05, timeZone: 'Europe/Vienna' },
  { latitudeDeg: 68.8, longitudeDeg: 16.54, timeZone: 'Europe/Oslo' },
  { latitudeDeg: -45.03, longitudeDeg: 168.66, timeZone: 'Pacific/Auckland' },
  { latitudeDeg: -43.95, longitudeDeg: -176.55, timeZone: 'Pacific/Chatham' },
  { latitudeDeg: 35.66, longitudeDeg: 139.7, timeZone: 'Asia/Tokyo' },
  { latitudeDeg: -33.45, longitudeDeg: -70.66, timeZone: 'America/Santiago' },
  { latitudeDeg: 64.84, longitudeDeg: -147.72, timeZone: 'America/Anchorage' },
  { latitudeDeg: 39.74, longitudeDeg: -104.98, timeZone: 'America/Denver' },
];

export interface WinterWish {
  readonly from: Date;
  readonly to: Date;
  readonly channels: number;
  readonly stepMin: number;
}

export const WHOLE_WINTER: WinterWish = {
  ...{ from: new Date('2026-10-01T00:00:00Z'), to: new Date('2027-04-01T00:00:00Z') },
  ...{ channels: 50, stepMin: 10 },
};

export interface WinterFigures {
  readonly nightsDue: number;
  readonly nightsSettled: number;
  readonly missed: number;
  readonly postedTwice: number;
  readonly postedLate: number;
  readonly posts: number;
  readonly secondPosts: number;
  readonly forecastRequests: number;
}

/**
 * A winter with what happens in one: the bot is started anew every few days, stands still for the better part of an hour now
 * and then, and services and chat fail for a while.
 */
export async function winter(wish: WinterWish = WHOLE_WINTER): Promise<WinterFigures> {
  const world = await jobsWorld(wish.from);
  try {
    await addClubs(world, wish);
    await live(world, wish);
    return await figures(world, wish);
  } finally {
    await world.close();
  }
}

const growerOf = (n: number) => `5${String(n).padStart(17, '0')}`;
const channelOf = (n: number) => `club-${n}`;

async function addClubs({ store }: JobsWorld, { channels, from }: WinterWish): Promise<void> {
  const before = new Date(from.getTime() - 30 * MS_PER_DAY);
  for (let n = 0; n < channels; n += 1) {
    const site = { ...HOME, ...placeOf(n) };
    const facts = { id: channelOf(n), leadH: 1 + (n % 6), allClear: true };
    await addClub(store, facts, [{ id: growerOf(n), site, bedCount: 2 }], before);
  }
}

function placeOf(n: number) {
  return PLACES[n % PLACES.length] ?? HOME;
}

async function live(world: JobsWorld, { to, stepMin, channels }: WinterWish): Promise<void> {
  let round = world.round({ lookBackH: 24 });
  for (let tick = 0; world.now < to; tick += 1) {
    await round.tick();
    await round.drained();
    befall(world, tick, { stepMin, channels });
    if (tick % 500 === 499) round = world.round({ lookBackH: 24 });
    const standsStill = tick % 700 === 699;
    world.now = new Date(world.now.getTime() + (standsStill ? STOOD_STILL_MIN : stepMin) * MS_PER_MIN);
  }
}

/** What the winter brings: frost in its middle, forecasts that change, services and a chat that fail for a while. */
function befall({ forecasts, poster }: JobsWorld, tick: number, wish: Pick<WinterWish, 'stepMin' | 'channels'>): void {
  const share = (tick * wish.stepMin) / (60 * 24 * 182);
  forecasts.meanC = 2 - 8 * Math.sin(Math.PI * share);
  forecasts.shiftK = tick % 300 < 150 ? 0 : -3;
  forecasts.silent = tick % 211 < 3;
  poster.heal();
  if (tick % 97 < 2) for (let n = 0; n < wish.channels; n += 1) poster.fail(channelOf(n), 'unavailable');
  if (tick % 40 === 0) poster.forgetNonces();
}

async function figures({ store, poster, forecasts, postedAt }: JobsWorld, wish: WinterWish): Promise<WinterFigures> {
  const due = Array.from({ length: wish.channels }, (_, n) => n).flatMap((n) => nightsDue(n, wish));
  const seen = await Promise.all(
    due.map(async ({ channelId, night }) => {
      const rows = await store.deliveries.ofNight(channelId, night.name);
      const warning = rows.find(({ kind }) => kind === 'warning');
      const at = postedAt.get(warning?.messageId ?? '');
      return {
        settled: warning?.state === 'sent',
        late: at !== undefined && at > night.shutBy,
        seconds: rows.filter(({ kind, messageId }) => kind !== 'warning' && postedAt.has(messageId ?? '')).length,
      };
    }),
  );
  const nonces = poster.posts.map(({ nonce }) => nonce);
  return {
    nightsDue: due.length,
    nightsSettled: seen.filter(({ settled }) => settled).length,
    missed: seen.filter(({ settled }) => !settled).length,
    postedLate: seen.filter(({ late }) => late).length,
    postedTwice: nonces.length - new Set(nonces).size,
    posts: nonces.length,
    secondPosts: seen.reduce((sum, { seconds }) => sum + seconds, 0),
    forecastRequests: forecasts.asked.length,
  };
}

/** Nights whose whole afternoon lies in the winter, by the sun alone. */
function nightsDue(n: number, { from, to }: WinterWish) {
  const { timeZone } = placeOf(n);
  const place = { ...cellOf({ ...placeOf(n), heightM: HOME.heightM }).place, timeZone };
  const days = Array.from({ length: (to.getTime() - from.getTime()) / MS_PER_DAY + 2 }, (_, day) => day - 1);
  return days.flatMap((day) => {
    const night = calendar.night(place, Math.floor(from.getTime() / MS_PER_DAY) + day);
    if (night === undefined) return [];
    const begins = night.shutBy.getTime() - MS_PER_DAY;
    const ends = night.shutBy.getTime() + USEFUL_AFTER_SHUTTING_MS;
    return begins >= from.getTime() && ends <= to.getTime() ? [{ channelId: channelOf(n), night }] : [];
  });
}
