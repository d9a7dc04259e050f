import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { forecastDesk } from '../../../bot/forecast/choose.ts';
import { FORECAST_SERVICES, type ForecastService } from '../../../bot/forecast/forecast.ts';
import { MS_PER_DAY } from '../../../rules/index.ts';
import {
  FIXTURE_NIGHT,
  FIXTURE_NOW,
  FIXTURE_PLACE,
  ForecastServices,
  fixture,
  type ScriptedAnswer,
} from '../../fakes/forecast-services.ts';
import { addClub } from './club.ts';
import { type JobsWorld, jobsWorld } from './jobs-world.ts';

const CLUB = 'club-1';
const FAULTS = ['down', 'slow', 'wrong', 'stale', 'truncated'] as const;
type Fault = (typeof FAULTS)[number];

const PATHS: Readonly<Record<ForecastService, readonly string[]>> = {
  nws: ['/gridpoints/', '/points/'],
  metno: ['/weatherapi/'],
  openmeteo: ['/v1/forecast'],
};

/** The usual body, last changed three days ago; Open-Meteo does not say when, so that its hours are the old ones. */
const STALE: Readonly<Record<ForecastService, () => ScriptedAnswer>> = {
  nws: () => ({ body: fixture('nws-grid.json').replace('"updateTime": "2026-01-20T', '"updateTime": "2026-01-17T') }),
  metno: () => ({
    headers: { 'content-type': 'application/json', 'last-modified': 'Sat, 17 Jan 2026 19:31:07 GMT' },
    body: fixture('metno-complete.json').replace('2026-01-20T11:00:00Z', '2026-01-17T11:00:00Z'),
  }),
  openmeteo: () => {
    const body = JSON.parse(fixture('openmeteo.json')) as { hourly: { time: number[] } };
    body.hourly.time = body.hourly.time.map((second) => second - (3 * MS_PER_DAY) / 1000);
    return { body: JSON.stringify(body) };
  },
};

function spoil(services: ForecastServices, service: ForecastService, fault: Fault): void {
  const [main = '', ...others] = PATHS[service];
  const answer: Readonly<Record<Fault, () => ScriptedAnswer>> = {
    down: () => ({ status: 503, body: '', gzip: false }),
    slow: () => ({ silent: true }),
    wrong: () => ({ body: '<html>We are busy</html>', headers: { 'content-type': 'text/html' }, gzip: false }),
    stale: STALE[service],
    truncated: () => ({ breakAfter: 120 }),
  };
  services.script(main, answer[fault]());
  // Old or broken grids come from a service that still knows its places.
  if (fault === 'down' || fault === 'slow') for (const path of others) services.script(path, answer[fault]());
}

let services: ForecastServices;
let world: JobsWorld;
beforeAll(async () => {
  services = await ForecastServices.start();
});
afterAll(() => services.close());
afterEach(() => world.close());

/** An evening on which the services answer so; the bot ticks every twenty minutes until covers must be shut. */
async function evening(faults: Partial<Record<ForecastService, Fault>>): Promise<JobsWorld> {
  for (const path of Object.values(PATHS).flat()) services.script(path);
  for (const service of FORECAST_SERVICES) {
    const fault = faults[service];
    if (fault !== undefined) spoil(services, service, fault);
  }
  world = await jobsWorld(FIXTURE_NOW);
  const { latitudeDeg, longitudeDeg, elevationM } = FIXTURE_PLACE;
  const site = { latitudeDeg, longitudeDeg, heightM: elevationM, timeZone: 'America/Chicago' };
  await addClub(
    world.store,
    { id: CLUB },
    [{ id: '100000000000000021', site, bedCount: 2 }],
    new Date('2026-01-01T12:00:00Z'),
  );
  const desk = forecastDesk({
    ...{ bases: services.bases, contact: 'grower@example.org' },
    ...{ retryWaitMs: () => 1, spacingMs: { nws: 0, metno: 0, openmeteo: 0 } },
    ...{ headersWithinMs: 120, answerWithinMs: 240 },
    clockMs: () => world.now.getTime(),
  });
  const round = world.round({}, { forecasts: desk });
  await world.runUntil(FIXTURE_NIGHT.sunset, round, 20);
  await desk.close();
  return world;
}

describe('with one service left', () => {
  const combinations = FORECAST_SERVICES.flatMap((left) => {
    const [one, other] = FORECAST_SERVICES.filter((service) => service !== left);
    if (one === undefined || other === undefined) return [];
    return FAULTS.flatMap((first) => FAULTS.map((second) => ({ left, one, other, first, second })));
  });

  test.each(combinations)(
    '$left, $one $first and $other $second, a channel is told its night once',
    async (combination) => {
      const { left, one, other, first, second } = combination;
      const { poster } = await evening({ [one]: first, [other]: second });
      expect(poster.to(CLUB).map(({ text }) => text)).toEqual([
        expect.stringMatching(/^(\d of 2 beds at risk|Every bed holds) tonight/),
      ]);
      const title = { nws: 'National Weather Service', metno: 'MET Norway', openmeteo: 'Open-Meteo' }[left];
      expect(poster.posts[0]?.text).toContain(title);
    },
  );
});

describe('with no service left', () => {
  test.each(FAULTS)('all %s, a channel is told so before shutting time, once', async (fault) => {
    const { poster, told } = await evening({ nws: fault, metno: fault, openmeteo: fault });
    expect(poster.to(CLUB).map(({ text }) => text)).toEqual([
      expect.stringMatching(/^No forecast can be had for tonight\. Cover as for a cold night, by 3:25 pm\./),
    ]);
    expect(told).toEqual([]);
  });
});
