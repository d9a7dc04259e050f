import pino from 'pino';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Allowance } from '../../../../bot/commands/allowance.ts';
import { ASK } from '../../../../bot/commands/ask/ask.ts';
import { answer } from '../../../../bot/commands/dispatch.ts';
import type { Services } from '../../../../bot/commands/services.ts';
import { forecastDesk } from '../../../../bot/forecast/choose.ts';
import { openStore } from '../../../../bot/store/open-store.ts';
import type { Store } from '../../../../bot/store/store.ts';
import { drawn } from '../../../../bot/talk/plain-text.ts';
import { FIXTURE_NOW, FIXTURE_PLACE, ForecastServices } from '../../../fakes/forecast-services.ts';

let store: Store;
let web: ForecastServices;
let services: Services;
const MEMBER = 'discord:100';
const BEDS = [
  { name: 'Long frame', covers: ['cold-frame'], crop: 'spinach' },
  { name: 'North bed', covers: [], crop: 'lettuce' },
  { name: 'Hoop row', covers: ['low-tunnel'], crop: 'chard' },
];

beforeAll(async () => {
  store = await openStore('sqlite::memory:');
  web = await ForecastServices.start();
  services = {
    clock: { now: () => FIXTURE_NOW, rehearsal: false },
    log: pino({ level: 'silent' }),
    allowance: new Allowance(1000, 1),
    store,
    forecasts: forecastDesk({ bases: web.bases, contact: 'grower@example.org', clockMs: () => FIXTURE_NOW.getTime() }),
  };
  const { latitudeDeg, longitudeDeg, elevationM: heightM } = FIXTURE_PLACE;
  const where = { latitudeDeg, longitudeDeg, heightM, timeZone: 'America/Chicago' };
  const site = { name: 'Wren Allotment', ...where, exposure: 'open', horizonDeg: [] } as const;
  const { id: siteId } = await store.sites.add(MEMBER, site, FIXTURE_NOW);
  const plain = { siteId, soil: 'moist', mulch: undefined, frame: undefined, hardeningNote: undefined };
  for (const [index, { name, covers, crop }] of BEDS.entries()) {
    const since = new Date(FIXTURE_NOW.getTime() + 1000 * index);
    const bed = await store.beds.add(MEMBER, { ...plain, name, covers }, since);
    await store.plantings.add(MEMBER, bed.id, { crop, stage: 'grown', since: '2025-11-01', hardened: true });
  }
});

afterAll(async () => {
  await services.forecasts?.close();
  await web.close();
  await store.close();
});

async function textOf(question: string): Promise<string> {
  const reply = await answer(
    {
      memberId: MEMBER,
      place: { kind: 'channel', channelId: '1', conversationId: `1/${question}` },
      command: 'ask',
      options: { question },
      locale: 'en-US',
      mayManageChannel: false,
      now: FIXTURE_NOW,
    },
    services,
    [ASK],
  );
  expect(reply.private).toBe(true);
  return drawn(reply, 10_000);
}

describe('several of the member’s own beds in one question', () => {
  test.each([
    'will beds 1 and 2 be ok tonight',
    'north bed and long frame tonight?',
    'my spinach and my lettuce tonight',
  ])('are answered for tonight, the most urgent first, and for those beds alone: "%s"', async (question) => {
    const text = await textOf(question);
    expect(text).toMatch(/^Wren Allotment: 1 of 2 beds at risk tonight\./);
    expect(text.indexOf('North bed: lettuce ')).toBeGreaterThan(0);
    expect(text.indexOf('Long frame (spinach, cold frame): holds')).toBeGreaterThan(text.indexOf('North bed'));
    expect(text).not.toMatch(/Hoop row/);
  });

  test('are judged at a low that is said, each crop under what lies over it there', async () => {
    const text = await textOf('will beds 1, 2 and 3 survive 10F');
    expect(text).toMatch(/^At 10 °F 1 of 3 hold\./);
    expect(text).toMatch(
      /North bed: lettuce uncovered: winterkill[\s\S]*Hoop row: chard under a low tunnel: (leaf burn|winterkill)/,
    );
    expect(text).toMatch(/To make it hold: /);
    expect(text).toMatch(/Hoop row:[\s\S]*Long frame: spinach under a cold frame: holds/);
    expect(text).toMatch(/Understood: Long frame, North bed and Hoop row; 10 °F\./);
  });

  test('are each told how cold they can go', async () => {
    expect(await textOf('how cold can beds 1 and 2 go')).toMatch(
      /^Long frame: spinach under a cold frame holds down to about [\s\S]*North bed: lettuce uncovered holds down to about /,
    );
  });
});

describe('one bed of the member’s own', () => {
  test('called after a cover is that bed, not the cover', async () => {
    const text = await textOf('will the north bed and the long frame survive 14F');
    expect(text).toMatch(/North bed: lettuce uncovered/);
  });

  test('named by its crop is judged under its own covers at a low that is said', async () => {
    expect(await textOf('will my spinach survive 14F')).toMatch(/^Spinach under a cold frame at 14 °F: holds\./);
  });

  test('can be asked about for a crop that does not grow there yet', async () => {
    expect(await textOf('would kale live in bed 3 at 10F')).toMatch(/^Kale under a low tunnel at 10 °F: /);
  });

  test('that there is not is named as such, with those that there are', async () => {
    expect(await textOf('bed 9 tonight')).toBe(
      'You have no bed 9 here. Your beds: 1 Long frame, 2 North bed and 3 Hoop row.',
    );
  });

  test('is answered for the night that is named, not for tonight', async () => {
    expect(await textOf('is bed 2 ok tomorrow night')).toMatch(/tomorrow night/);
  });
});
