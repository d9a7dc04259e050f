import { MS_PER_H } from '../../rules/index.ts';
import { postTimes } from '../outlook/post-times.ts';
import { cellPlace } from '../store/delivery-key.ts';
import type { Channel, ChannelPlaces, SunPlace } from '../store/port/channels.ts';
import type { PlannedDelivery } from '../store/port/deliveries.ts';
import { type Party, parties, type Timed } from './apart.ts';
import { type Calendar, type CalendarDay, type CalendarNight, type Clocked, solarDay } from './calendar.ts';
import { type Cell, cellOf } from './cell.ts';
import { gatherAt } from './gather-time.ts';
import { checkKind, gatherKind, HARDENING, OPENING, WARNING, workOf } from './work.ts';

/** What the planner goes by. */
export interface Planning {
  readonly now: Date;
  /** Posts that ended before this are let go; earlier than `now` when a start looks back on a time when nothing ran. */
  readonly from: Date;
  readonly calendar: Calendar;
  /** Whether opening plans can be made. */
  readonly opening: boolean;
}

/** A warning may still be of use this long after shutting time (judgement). */
const USEFUL_AFTER_SHUTTING_H = 1;
/** An opening plan is of use while the sun climbs (judgement). */
const OPENING_USEFUL_H = 3;
/** Longest lead, and the sun's day may begin a day off the calendar's. */
const DAYS_AHEAD = 2;
const DAYS_BEHIND = 2;
/** Duties that fall due until then are among those looked at. */
const PLANNED_AHEAD_H = 12;

export interface Plan {
  /** What is due now, its forecasts included. */
  readonly due: readonly PlannedDelivery[];
  /** Nothing more falls due before this, unless channel or members change. */
  readonly nextAt: Date;
  /** The next warning that is not due yet. */
  readonly nextWarning: PlannedDelivery | undefined;
}

/**
 * What a channel needs now. Asked every minute by every process; the ledger takes each duty once.
 *
 * A night's warning comes a lead before the first of its members' shutting times; who shuts hours later gets a post of
 * their own time.
 */
export function planFor({ channel, places }: ChannelPlaces, planning: Planning): Plan {
  const plots = plotsOf(places);
  const all = [
    ...[...nightsByName(plots, planning)].flatMap(([name, nights]) => nightDuties(channel, name, nights, planning)),
    ...[...daysByName(plots, planning)].flatMap(([name, days]) => dayDuties(channel, name, days, planning)),
  ];
  const latest = hoursAfter(planning.now, PLANNED_AHEAD_H).getTime();
  const later = all.filter(({ dueAt }) => dueAt > planning.now);
  return {
    due: all.filter((duty) => isDue(duty, planning)),
    nextAt: new Date(Math.min(latest, ...later.map(({ dueAt }) => dueAt.getTime()))),
    nextWarning: later.filter((duty) => workOf(duty)?.kind === 'warning').toSorted(byDueTime)[0],
  };
}

/** Gardens of one cell and clock. */
interface Plot extends Clocked {
  readonly cell: Cell;
  readonly since: Date;
}

interface PlotNight extends Timed {
  readonly plot: Plot;
  readonly night: CalendarNight;
}

interface PlotDay {
  readonly plot: Plot;
  readonly day: CalendarDay;
}

function plotsOf(places: readonly SunPlace[]): readonly Plot[] {
  const plots = new Map<string, Plot>();
  for (const place of places) {
    const cell = cellOf(place);
    const key = `${cell.id} ${place.timeZone}`;
    const known = plots.get(key);
    if (known !== undefined && known.since <= place.since) continue;
    const { latitudeDeg, longitudeDeg } = cell.place;
    plots.set(key, { latitudeDeg, longitudeDeg, timeZone: place.timeZone, cell, since: place.since });
  }
  return [...plots.values()];
}

function nightsByName(plots: readonly Plot[], { now, from, calendar }: Planning): Map<string, PlotNight[]> {
  const byName = new Map<string, PlotNight[]>();
  for (const plot of plots) {
    for (const number of dayNumbers(plot, from, now)) {
      const night = calendar.night(plot, number);
      if (night === undefined || endOf(night) <= plot.since) continue;
      listIn(byName, night.name).push({ plot, night, at: night.shutBy, since: plot.since });
    }
  }
  return byName;
}

function daysByName(plots: readonly Plot[], { now, from, calendar }: Planning): Map<string, PlotDay[]> {
  const byName = new Map<string, PlotDay[]>();
  for (const plot of plots) {
    for (const number of dayNumbers(plot, from, now)) {
      const day = calendar.day(plot, number);
      listIn(byName, day.name).push({ plot, day });
    }
  }
  return byName;
}

function dayNumbers({ longitudeDeg }: Plot, from: Date, now: Date): number[] {
  const first = solarDay(from, longitudeDeg) - DAYS_BEHIND;
  return Array.from({ length: solarDay(now, longitudeDeg) + DAYS_AHEAD - first + 1 }, (_, i) => first + i);
}

function endOf({ shutBy }: CalendarNight): Date {
  return hoursAfter(shutBy, USEFUL_AFTER_SHUTTING_H);
}

function nightDuties(
  channel: Channel,
  night: string,
  nights: readonly PlotNight[],
  planning: Planning,
): readonly PlannedDelivery[] {
  return parties(nights, channel.leadH).flatMap((party) => partyDuties(channel, night, party, planning));
}

function partyDuties(
  channel: Channel,
  night: string,
  { all, suffix }: Party<PlotNight>,
  { now }: Planning,
): PlannedDelivery[] {
  const [first] = all;
  const last = all.at(-1);
  if (first === undefined || last === undefined) return [];
  const { dueAt, checkAt } = postTimes(first.at, channel.leadH);
  const warning = { placeId: channel.id, night, kind: `${WARNING}${suffix}`, dueAt, giveUpAt: endOf(last.night) };
  // What is over was missed only by those who had joined before it was due.
  if (warning.giveUpAt <= now && all.every(({ plot }) => began(channel, plot) > dueAt)) return [];
  const looks = checkAt === undefined ? [] : checkDuties(warning, checkAt, { all, suffix });
  return [warning, ...gathers(warning, all), ...looks];
}

function began(channel: Channel, { since }: Plot): Date {
  return since > channel.since ? since : channel.since;
}

function checkDuties(warning: PlannedDelivery, dueAt: Date, { all, suffix }: Party<PlotNight>): PlannedDelivery[] {
  const check = { ...warning, kind: checkKind(suffix), dueAt };
  return [check, ...gathers(check, all)];
}

/** The forecasts that a post needs, spread over the time before it. */
function gathers(post: PlannedDelivery, nights: readonly PlotNight[]): PlannedDelivery[] {
  return nights.map(({ plot: { cell } }) => ({
    placeId: cellPlace(cell.id),
    night: post.night,
    kind: gatherKind(post.dueAt),
    dueAt: gatherAt(cell.id, post.dueAt),
    giveUpAt: post.giveUpAt,
  }));
}

function dayDuties(channel: Channel, night: string, days: readonly PlotDay[], planning: Planning): PlannedDelivery[] {
  const hardening = hardeningDuty(channel, night, days);
  if (!planning.opening || !channel.morningPost) return [hardening];
  const risen = days.flatMap(({ day: { sunrise }, plot: { since } }) => (sunrise ? { at: sunrise, since } : []));
  const openings = parties(risen, 0).flatMap(({ all, suffix }) => {
    const [first, last] = [all[0], all.at(-1)];
    if (first === undefined || last === undefined || first.at < channel.since) return [];
    const giveUpAt = hoursAfter(last.at, OPENING_USEFUL_H);
    return { placeId: channel.id, night, kind: `${OPENING}${suffix}`, dueAt: first.at, giveUpAt };
  });
  return [hardening, ...openings];
}

/** At noon the last night and the morning's warmth are known; until the next noon it can be made up for. */
function hardeningDuty({ id }: Channel, night: string, days: readonly PlotDay[]): PlannedDelivery {
  const dueAt = new Date(Math.max(...days.map(({ day }) => day.noon.getTime())));
  return { placeId: id, night, kind: HARDENING, dueAt, giveUpAt: hoursAfter(dueAt, 23) };
}

/** Nobody misses a look or a fetch that came to nothing; posts that were owed count as missed. */
function isDue(duty: PlannedDelivery, { now, from }: Planning): boolean {
  const { dueAt, giveUpAt } = duty;
  const work = workOf(duty)?.kind;
  const since = work === 'warning' || work === 'opening' ? from : now;
  return dueAt <= now && giveUpAt > since;
}

function byDueTime(a: PlannedDelivery, b: PlannedDelivery): number {
  return a.dueAt.getTime() - b.dueAt.getTime();
}

function hoursAfter(at: Date, hours: number): Date {
  return new Date(at.getTime() + hours * MS_PER_H);
}

function listIn<T>(lists: Map<string, T[]>, key: string): T[] {
  const list = lists.get(key) ?? [];
  lists.set(key, list);
  return list;
}
