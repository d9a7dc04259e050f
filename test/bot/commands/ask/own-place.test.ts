import pino from 'pino';
import { afterAll, beforeAll, expect, test } from 'vitest';
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
  const site = await store.sites.add(
    MEMBER,
    {
      name: 'Wren Allotment',
      latitudeDeg: FIXTURE_PLACE.latitudeDeg,
      longitudeDeg: FIXTURE_PLACE.longitudeDeg,
      heightM: FIXTURE_PLACE.elevationM,
      exposure: 'open',
      timeZone: 'America/Chicago',
      horizonDeg: [],
    },
    FIXTURE_NOW,
  );
  const bed = await store.beds.add(
    MEMBER,
    {
      siteId: site.id,
      name: 'Long frame',
      soil: 'moist',
      mulch: undefined,
      frame: undefined,
      hardeningNote: undefined,
      covers: ['cold-frame'],
    },
    FIXTURE_NOW,
  );
  await store.plantings.add(MEMBER, bed.id, { crop: 'spinach', stage: 'grown', since: '2025-11-01', hardened: true });
});

afterAll(async () => {
  await services.forecasts?.close();
  await web.close();
  await store.close();
});

async function asked(question: string, memberId = MEMBER): Promise<{ text: string; isPrivate: boolean }> {
  const reply = await answer(
    {
      memberId,
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
  return { text: drawn(reply, 10_000), isPrivate: reply.private };
}

test('with no low said, tonight at the member’s own place is meant, and only the member sees it', async () => {
  const { text, isPrivate } = await asked('will kale survive under a blanket tonight?');
  expect(text).toMatch(/^Kale under a blanket tonight \(\d+ °F\): /);
  expect(text).toMatch(/At Wren Allotment tonight: outside low about/);
  expect(isPrivate).toBe(true);
});

test('“my spinach” is judged under the covers of the bed where it grows', async () => {
  expect((await asked('will my spinach survive tonight?')).text).toMatch(/^Spinach under a cold frame tonight/);
});

test('asking which beds are at risk shows the member’s own beds', async () => {
  const { text, isPrivate } = await asked('which of my beds are at risk tonight?');
  expect(text).toMatch(/Wren Allotment/);
  expect(text).toMatch(/Long frame/);
  expect(isPrivate).toBe(true);
});

test.each(['do I need to cover tonight?', 'cover or not?', 'how bad is tonight'])(
  'with no crop named, the member’s own beds are shown: %s',
  async (question) => {
    const { text, isPrivate } = await asked(question);
    expect(text).toMatch(/Long frame/);
    expect(isPrivate).toBe(true);
  },
);

test('a low that is said counts, and the answer is for all', async () => {
  const { text, isPrivate } = await asked('will kale survive 14 °F under a blanket?');
  expect(text).toMatch(/^Kale under a blanket at 14 °F: /);
  expect(isPrivate).toBe(false);
});

test('which cover is better tonight is answered for the member’s own forecast, and in general where no night is meant', async () => {
  const tonight = await asked('which is better tonight, blanket or quilt?');
  expect(tonight.text).toMatch(/At Wren Allotment tonight: outside low about/);
  expect(tonight.text).not.toContain('You named no low');
  expect(tonight.isPrivate).toBe(true);
  const general = await asked('which is better, blanket or quilt?');
  expect(general.text).toContain('You named no low, so I took 19 °F.');
  expect(general.isPrivate).toBe(false);
});

test('another member is asked for a low and learns nothing of the place', async () => {
  const { text } = await asked('will my spinach survive tonight?', 'discord:200');
  expect(text).toMatch(/How cold will it get outside/);
  expect(text).not.toMatch(/Wren/);
});

test('no answer tells the coordinates', async () => {
  expect((await asked('will kale survive tonight?')).text).not.toMatch(/41\.2|96\.6/);
});
