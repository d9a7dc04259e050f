import { Body, MakeTime, Observer, SearchRiseSet } from 'astronomy-engine';
import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, test } from 'vitest';
import { timeZoneOf } from '../../../bot/ground/time-zone.ts';
import { Calendar } from '../../../bot/jobs/calendar.ts';
import { cellOf } from '../../../bot/jobs/cell.ts';
import { type Planning, planFor } from '../../../bot/jobs/plan.ts';
import type { ChannelPlaces, SunPlace } from '../../../bot/store/port/channels.ts';
import type { PlannedDelivery } from '../../../bot/store/port/deliveries.ts';
import { MS_PER_DAY, MS_PER_H, MS_PER_MIN } from '../../../rules/index.ts';

const LONG_AGO = new Date('2020-01-01T00:00:00Z');

function place(latitudeDeg: number, longitudeDeg: number, more: Partial<SunPlace> = {}): SunPlace {
  const { place: middle } = cellOf({ latitudeDeg, longitudeDeg, heightM: undefined });
  const timeZone = timeZoneOf(middle.latitudeDeg, middle.longitudeDeg);
  return { ...middle, heightM: undefined, timeZone, since: LONG_AGO, ...more };
}

function channel(places: readonly SunPlace[], more: Partial<ChannelPlaces['channel']> = {}): ChannelPlaces {
  const facts = { leadH: 3, morningPost: false, allClear: false, ...more };
  const usual = {
    id: 'club',
    kind: 'channel',
    guildId: 'g',
    startedBy: 'm',
    since: LONG_AGO,
    paused: undefined,
  } as const;
  return { channel: { ...usual, ...facts }, places };
}

const calendar = new Calendar();
const planning = (now: Date, more: Partial<Planning> = {}): Planning => ({
  ...{ now, from: now, calendar, opening: true },
  ...more,
});

/** Plans as a ledger takes it: each key once, as first offered. */
class Ledger {
  readonly rows = new Map<string, PlannedDelivery & { readonly plannedAt: Date }>();

  put(due: readonly PlannedDelivery[], plannedAt: Date): void {
    for (const row of due) {
      const key = `${row.placeId} ${row.night} ${row.kind}`;
      if (!this.rows.has(key)) this.rows.set(key, { ...row, plannedAt });
    }
  }

  of(kind: string) {
    return [...this.rows.values()].filter((row) => row.kind === kind);
  }
}

/** Ticks from the first instant to the last, but not while the bot is down; the first tick after looks back. */
function run(
  club: ChannelPlaces,
  span: { readonly from: Date; readonly to: Date; readonly stepMin: number },
  isDown: (at: Date) => boolean = () => false,
): Ledger {
  const ledger = new Ledger();
  let wasDown = true;
  for (let atMs = span.from.getTime(); atMs <= span.to.getTime(); atMs += span.stepMin * MS_PER_MIN) {
    const now = new Date(atMs);
    if (isDown(now)) {
      wasDown = true;
      continue;
    }
    const from = wasDown ? new Date(Math.max(span.from.getTime(), atMs - 7 * MS_PER_DAY)) : now;
    ledger.put(planFor(club, planning(now, { from })).due, now);
    wasDown = false;
  }
  return ledger;
}

/** The first sunset after local noon of each day, from an almanac that is not ours; undefined where the sun does not set. */
function almanacSunset({ latitudeDeg, longitudeDeg, timeZone }: SunPlace, day: DateTime): Date | undefined {
  const noon = day.setZone(timeZone, { keepLocalTime: true }).set({ hour: 12 });
  const observer = new Observer(latitudeDeg, longitudeDeg, 0);
  return SearchRiseSet(Body.Sun, observer, -1, MakeTime(noon.toJSDate()), 0.75)?.date;
}

const latitude = fc.double({ min: -70, max: 70, noNaN: true });
const longitude = fc.double({ min: -179.9, max: 179.9, noNaN: true });
const instant = fc.date({
  min: new Date('2026-01-01T00:00:00Z'),
  max: new Date('2027-12-01T00:00:00Z'),
  noInvalidDate: true,
});
const lead = fc.integer({ min: 0, max: 24 });

describe('a night’s warning', () => {
  test('is due a lead before two hours before the sunset of an almanac', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -58, max: 58, noNaN: true }),
        longitude,
        instant,
        fc.integer({ min: 1, max: 12 }),
        (lat, lon, at, leadH) => {
          const site = place(lat, lon);
          const from = new Date(at.getTime());
          const to = new Date(from.getTime() + 3 * MS_PER_DAY);
          const warnings = run(channel([site], { leadH }), { from, to, stepMin: 30 }).of('warning');
          expect(warnings.length).toBeGreaterThanOrEqual(2);
          for (const { night, dueAt, giveUpAt } of warnings) {
            const sunset = almanacSunset(site, DateTime.fromISO(night, { zone: 'utc' }));
            if (sunset === undefined) throw new Error('the almanac knows no sunset');
            const shutBy = sunset.getTime() - 2 * MS_PER_H;
            expect(Math.abs(dueAt.getTime() - (shutBy - leadH * MS_PER_H))).toBeLessThan(3 * MS_PER_MIN);
            expect(Math.abs(giveUpAt.getTime() - (shutBy + MS_PER_H))).toBeLessThan(3 * MS_PER_MIN);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  test('is planned exactly once for every night, before its shutting time, from 70° S to 70° N', () => {
    fc.assert(
      fc.property(latitude, longitude, instant, lead, (lat, lon, from, leadH) => {
        const site = place(lat, lon);
        const to = new Date(from.getTime() + 298 * 29 * MS_PER_MIN);
        const warnings = run(channel([site], { leadH }), { from, to, stepMin: 29 }).of('warning');
        expect(new Set(warnings.map(({ night }) => night)).size).toBe(warnings.length);
        for (const row of warnings.slice(1)) {
          expect(row.plannedAt.getTime() - row.dueAt.getTime()).toBeLessThan(29 * MS_PER_MIN);
          expect(row.dueAt.getTime()).toBeLessThanOrEqual(row.giveUpAt.getTime() - MS_PER_H);
        }
        expect(warnings.map(({ night }) => night).toSorted()).toEqual(nightsBetween(site, leadH, from, to));
      }),
      { numRuns: 60 },
    );
  });

  test('comes every evening of polar night, and never while the sun stays up', () => {
    const tromso = place(69.65, 18.96);
    const at = (from: string) => ({
      from: new Date(from),
      to: new Date(Date.parse(from) + 5 * MS_PER_DAY),
      stepMin: 20,
    });
    expect(run(channel([tromso]), at('2026-12-10T00:00:00Z')).of('warning')).toHaveLength(5);
    expect(run(channel([tromso]), at('2026-06-10T00:00:00Z')).of('warning')).toEqual([]);
  });

  test('keeps to the sun on the days when clocks change', () => {
    const zones = [place(43.1, -76.3), place(52.2, 0.1), place(-43.95, -176.55), place(-31.55, 159.08)];
    for (const site of zones) {
      for (const month of [3, 4, 9, 10, 11]) {
        const from = new Date(Date.UTC(2026, month - 1, 1));
        const to = new Date(Date.UTC(2026, month, 5));
        const warnings = run(channel([site]), { from, to, stepMin: 31 }).of('warning');
        const gaps = warnings.slice(1).map((row, i) => row.dueAt.getTime() - (warnings[i]?.dueAt.getTime() ?? 0));
        expect(Math.max(...gaps.map((gap) => Math.abs(gap - MS_PER_DAY)))).toBeLessThan(5 * MS_PER_MIN);
        const days = warnings.map(({ night }) => DateTime.fromISO(night, { zone: 'utc' }).toMillis() / MS_PER_DAY);
        expect(days.slice(1).map((day, i) => day - (days[i] ?? 0))).toEqual(days.slice(1).map(() => 1));
      }
    }
  });

  const span5 = { from: new Date('2026-05-01T00:00:00Z'), to: new Date('2026-05-05T00:00:00Z'), stepMin: 15 };

  test('is keyed to the first shutting time of members who shut within two hours', () => {
    const sites = [place(43.1, -76.3), place(41.9, -87.6), place(43.1, -80)];
    const alone = sites.map((site) => run(channel([site]), span5).of('warning'));
    for (const { night, dueAt, giveUpAt } of run(channel(sites), span5).of('warning').slice(1, -1)) {
      const own = alone.map((rows) => rows.find((row) => row.night === night));
      expect(dueAt.getTime()).toBe(Math.min(...own.map((row) => row?.dueAt.getTime() ?? Number.NaN)));
      expect(giveUpAt.getTime()).toBe(Math.max(...own.map((row) => row?.giveUpAt.getTime() ?? Number.NaN)));
    }
  });

  test('of gardens that shut at very different times comes to each in its own time, whoever joins', () => {
    const later = new Date('2026-04-20T00:00:00Z');
    const home = place(43.1, -76.3);
    const lostSign = place(43.1, 76.3, { since: later });
    const antipodes = place(-41.3, 174.8, { since: later });
    const all = run(channel([lostSign, home, antipodes]), span5);
    for (const { night, dueAt } of run(channel([home]), span5).of('warning')) {
      expect(all.of('warning').find((row) => row.night === night)?.dueAt).toEqual(dueAt);
    }
    for (const site of [lostSign, antipodes]) {
      const dues = [...all.rows.values()].filter(({ kind }) => kind.startsWith('warning-at-'));
      for (const { night, dueAt } of run(channel([site]), span5).of('warning')) {
        expect(dues.filter((row) => row.night === night).map((row) => row.dueAt.getTime())).toContain(dueAt.getTime());
      }
    }
  });

  test('is not planned anew for who joins after it was due', () => {
    const home = place(43.1, -76.3);
    const now = new Date('2026-12-01T17:30:00Z');
    const kinds = (club: ChannelPlaces) =>
      planFor(club, planning(now)).due.flatMap(({ kind }) => (kind.startsWith('warning') ? [kind] : []));
    expect(kinds(channel([home]))).toEqual(['warning']);
    expect(kinds(channel([home, place(45.5, -73.6, { since: new Date('2026-12-01T17:00:00Z') })]))).toEqual([
      'warning',
    ]);
  });

  test('is planned once whatever the down-times: for work while it is of use, else to be counted as missed', () => {
    const down = fc.array(
      fc.record({
        startH: fc.double({ min: 0, max: 110, noNaN: true }),
        hours: fc.double({ min: 0.1, max: 60, noNaN: true }),
      }),
      { maxLength: 4 },
    );
    fc.assert(
      fc.property(
        fc.double({ min: -60, max: 60, noNaN: true }),
        longitude,
        instant,
        fc.integer({ min: 1, max: 12 }),
        down,
        (lat, lon, from, leadH, downs) => {
          const to = new Date(from.getTime() + 5 * MS_PER_DAY);
          const isDown = (at: Date) => {
            const hour = (at.getTime() - from.getTime()) / MS_PER_H;
            return downs.some(({ startH, hours }) => hour >= startH && hour < startH + hours);
          };
          const site = place(lat, lon);
          const rows = run(channel([site], { leadH }), { from, to, stepMin: 10 }, isDown).of('warning');
          const wasUp = (a: Date, b: Date) => {
            for (let atMs = from.getTime(); atMs <= to.getTime(); atMs += 10 * MS_PER_MIN) {
              const at = new Date(atMs);
              if (at >= a && at < b && !isDown(at)) return true;
            }
            return false;
          };
          const lastUp = lastUpAt(from, to, isDown);
          const expected = nightsBetween(site, leadH, from, lastUp);
          expect(rows.map(({ night }) => night).toSorted()).toEqual(expected);
          for (const { dueAt, giveUpAt, plannedAt } of rows) {
            expect(plannedAt < giveUpAt).toBe(wasUp(dueAt, giveUpAt));
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  test('of before a channel began or its members joined is not counted as missed', () => {
    const now = new Date('2026-12-10T12:00:00Z');
    const back = { from: new Date('2026-12-04T12:00:00Z') };
    const began = new Date('2026-12-08T12:00:00Z');
    const site = place(48.2, 16.4);
    const names = (club: ChannelPlaces) =>
      planFor(club, planning(now, back)).due.flatMap(({ kind, night }) => (kind === 'warning' ? [night] : []));
    expect(names(channel([site]))).toHaveLength(7);
    expect(names(channel([site], { since: began }))).toEqual(['2026-12-09', '2026-12-10']);
    expect(names(channel([{ ...site, since: began }]))).toEqual(['2026-12-09', '2026-12-10']);
  });
});

describe('what belongs to a warning', () => {
  const site = place(48.2, 16.4);
  const span = { from: new Date('2026-12-01T00:00:00Z'), to: new Date('2026-12-02T00:00:00Z'), stepMin: 1 };

  test('is one fetch a cell before each post, however many garden there', () => {
    const neighbours = [
      site,
      { ...site, latitudeDeg: site.latitudeDeg + 0.001 },
      { ...site, longitudeDeg: site.longitudeDeg + 0.002 },
    ];
    const rows = [...run(channel(neighbours), span).rows.values()];
    const posts = rows.filter(({ kind }) => kind === 'warning' || kind.startsWith('worse-'));
    const fetches = rows.filter(({ placeId }) => placeId.startsWith('cell:'));
    expect(posts.map(({ kind }) => kind)).toEqual(['warning', 'worse-1']);
    expect(fetches).toHaveLength(2);
    for (const [index, { dueAt }] of fetches.entries()) {
      expect(dueAt.getTime()).toBeLessThan(posts[index]?.dueAt.getTime() ?? 0);
    }
  });

  test('is a second look an hour before shutting, for each group that shuts at its own time', () => {
    const rows = run(channel([site, place(51.5, -0.1), place(43.1, -76.3)]), { ...span, stepMin: 5 }).rows;
    const looks = [...rows.values()].filter(({ kind }) => kind.startsWith('worse-'));
    expect(looks.map(({ kind }) => kind)).toEqual(['worse-1', 'worse-1-at-01T19']);
    for (const { dueAt, giveUpAt } of looks) expect(dueAt.getTime()).toBeLessThan(giveUpAt.getTime() - MS_PER_H);
  });

  test('is an opening plan at sunrise where a channel wants one, and none in polar night', () => {
    const morning = (where: SunPlace, more = {}) =>
      run(channel([where], { morningPost: true, ...more }), span).of('opening');
    const [opening] = morning(site);
    expect(opening?.dueAt.toISOString()).toMatch(/^2026-12-01T06:2/);
    expect(morning(site, { morningPost: false })).toEqual([]);
    expect(morning(place(69.65, 18.96))).toEqual([]);
    const without = planFor(
      channel([site], { morningPost: true }),
      planning(new Date('2026-12-01T07:00:00Z'), { opening: false }),
    );
    expect(without.due.filter(({ kind }) => kind === 'opening')).toEqual([]);
  });
});

test('nothing falls due before the time that a plan names', () => {
  fc.assert(
    fc.property(
      fc.array(fc.tuple(latitude, longitude), { minLength: 1, maxLength: 3 }),
      instant,
      lead,
      (spots, now, leadH) => {
        const club = channel(
          spots.map(([lat, lon]) => place(lat, lon)),
          { leadH, morningPost: true },
        );
        const { due, nextAt } = planFor(club, planning(now));
        const before = new Date(nextAt.getTime() - 1);
        const keys = (rows: readonly PlannedDelivery[]) =>
          rows.map(({ placeId, night, kind }) => `${placeId} ${night} ${kind}`);
        const known = new Set(keys(due));
        expect(keys(planFor(club, planning(before)).due).filter((key) => !known.has(key))).toEqual([]);
        expect(nextAt > now).toBe(true);
      },
    ),
    { numRuns: 150 },
  );
});

function lastUpAt(from: Date, to: Date, isDown: (at: Date) => boolean): Date {
  for (
    let atMs = to.getTime() - ((to.getTime() - from.getTime()) % (10 * MS_PER_MIN));
    atMs >= from.getTime();
    atMs -= 10 * MS_PER_MIN
  ) {
    if (!isDown(new Date(atMs))) return new Date(atMs);
  }
  return new Date(from.getTime() - 1);
}

/** Names of the nights that fall due in a span, one after the other, by walking through every solar day near it. */
function nightsBetween(site: SunPlace, leadH: number, from: Date, to: Date): string[] {
  const names: string[] = [];
  const day = Math.floor(from.getTime() / MS_PER_DAY);
  for (let number = day - 4; number <= day + 14; number += 1) {
    const night = calendar.night(site, number);
    if (night === undefined) continue;
    const dueMs = night.shutBy.getTime() - leadH * MS_PER_H;
    const isDue = dueMs <= to.getTime() && night.shutBy.getTime() + MS_PER_H > from.getTime();
    if (isDue) names.push(night.name);
  }
  return names.toSorted();
}
