import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { askLineSchema } from '../../../bot/cli/ask-json.ts';
import { FIXTURE_NOW, FIXTURE_PLACE, ForecastServices, fixture } from '../../fakes/forecast-services.ts';
import { ran } from './program.ts';

const folder = mkdtempSync(join(tmpdir(), 'eiderdown-cli-'));
const saved = (name: string, text: string): string => {
  const file = join(folder, name);
  writeFileSync(file, text);
  return file;
};
const grid = saved('grid.json', fixture('nws-grid.json'));
const at = FIXTURE_NOW.toISOString();
const place = ['--lat', String(FIXTURE_PLACE.latitudeDeg), '--lon', String(FIXTURE_PLACE.longitudeDeg)];
const bed = ['--bed', 'spinach under blanket in cold frame'];

describe('ask', () => {
  test('prints one answer and exits 0', async () => {
    const { code, out, err } = await ran('cli/ask', ['will my spinach survive 14 °F under a blanket?']);
    expect([code, err]).toEqual([0, '']);
    expect(out.split('\n')[0]).toBe('Spinach under a blanket at 14 °F: holds.');
  });

  test.each([[''], ['will my florps survive 20F?'], ['kale at -500 °F'], ['what is the capital of France?']])(
    '%j gets one clear sentence and a non-zero exit',
    async (question) => {
      const { code, out, err } = await ran('cli/ask', [question]);
      expect(code).toBe(1);
      expect(out + err).not.toMatch(/\bat .*:\d+:\d+/);
      expect((out + err).trim().length).toBeGreaterThan(20);
    },
  );

  test('with --json writes one object a line that keeps its promise', async () => {
    const input =
      'will my spinach survive 14 °F under a blanket?\n\nblanket or low tunnel for kale at 20F?\nflorps at 20F\n';
    const { code, out } = await ran('cli/ask', ['--json'], { input });
    const lines = out
      .trim()
      .split('\n')
      .map((line) => askLineSchema.parse(JSON.parse(line)));
    expect(code).toBe(0);
    expect(lines.map(({ ok, understood }) => [ok, understood.intent])).toEqual([
      [true, 'survive'],
      [false, 'decline'],
      [true, 'compare-covers'],
      [true, 'unknown-crop'],
    ]);
    expect(lines[0]?.understood).toEqual({
      intent: 'survive',
      crops: ['spinach'],
      lowC: -10,
      covers: ['blanket'],
      options: null,
      when: null,
      hardened: null,
      unknownCrops: [],
      inDoubt: [],
      readAs: [],
    });
    expect(lines[0]?.answers).toMatchObject([{ crop: 'spinach', covers: ['blanket'], verdict: 'holds' }]);
    expect(lines[3]?.answers).toEqual([]);
  });

  test('lines with --json are conversations of their own', async () => {
    const { out } = await ran('cli/ask', ['--json'], { input: 'will my spinach survive under a blanket?\n14F\n' });
    const [, second] = out
      .trim()
      .split('\n')
      .map((line) => askLineSchema.parse(JSON.parse(line)));
    expect(second?.answers).toEqual([]);
  });
});

test('says nothing where the reader of its answers leaves', async () => {
  const { err } = await ran('cli/ask', ['--json'], { input: 'kale at 20 °F\n'.repeat(500), readerLeaves: true });
  expect(err).toBe('');
});

describe('tonight', () => {
  let services: ForecastServices;
  beforeAll(async () => {
    services = await ForecastServices.start();
  });
  afterAll(() => services.close());

  const live = (words: readonly string[], env: NodeJS.ProcessEnv = {}) =>
    ran('cli/tonight', [...words, '--at', at], {
      env: {
        FORECAST_CONTACT: 'grower@example.org',
        NWS_BASE: services.base,
        METNO_BASE: services.base,
        OPENMETEO_BASE: services.base,
        ...env,
      },
    });

  test('a saved forecast gives a warning that names the bed and when to shut', async () => {
    const { code, out, err } = await ran('cli/tonight', ['--forecast', grid, ...place, ...bed, '--at', at]);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/Shut by \d+:\d\d pm|at risk tonight|no frost tonight/);
    expect(out).toMatch(/National Weather Service/);
  });

  test('a live forecast is asked for and told with its credit', async () => {
    const { code, out, err } = await live([...place, ...bed]);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(/Spinach under blanket in cold frame/);
    expect(out).toMatch(/https:\/\//);
  });

  test('a service can be chosen', async () => {
    const { out } = await live([...place, ...bed, '--service', 'metno']);
    expect(out).toMatch(/MET Norway/);
  });

  test('no answer shows the coordinates', async () => {
    const { out, err } = await live([...place, ...bed]);
    expect(out + err).not.toMatch(/41\.21|96\.63/);
  });

  test.each([
    [['--lat', '95', '--lon', '10', ...bed], /--lat .*from -90 to 90/],
    [['--lat', '42.9', ...bed], /both --lat and --lon/],
    [[...place], /--bed/],
    [[...bed], /--lat/],
    [[...place, '--bed', 'florps under a blanket'], /florps.*not in my table.*nearest/],
    [[...place, '--bed', 'kale under a blanket over a high tunnel'], /belongs inside it/],
    [['--forecast', join(folder, 'absent.json'), ...bed], /can't read the file/],
    [['--forecast', saved('truncated.json', fixture('nws-grid.json').slice(0, 900)), ...place, ...bed], /JSON/],
    [['--forecast', saved('other.json', '{"a":1}'), ...place, ...bed], /./],
    [['--forecast', grid, ...place, ...bed, '--at', '2026-01-21T16:30:00Z'], /18 hours old/],
    [['--forecast', grid, ...place, ...bed, '--at', 'yesterday'], /--at must be an instant/],
    [[...place, ...bed, '--service', 'tea-leaves'], /--service must be one of/],
    [[...place, ...bed, '--colour', 'blue'], /colour/],
  ])('%j gets one clear sentence and a non-zero exit', async (words, sentence) => {
    const { code, out, err } = await ran('cli/tonight', words);
    expect(code).toBe(1);
    expect(out).toBe('');
    expect(err).toMatch(sentence);
    expect(err.trim().split('\n')).toHaveLength(1);
  });

  test('without a contact no service is asked, and the setting is named', async () => {
    const before = services.requests.length;
    const { code, err } = await live([...place, ...bed], { FORECAST_CONTACT: '' });
    expect([code, services.requests.length]).toEqual([1, before]);
    expect(err).toMatch(/FORECAST_CONTACT/);
  });

  test('every freezing recording gives a warning', async (context) => {
    const recorded = fileURLToPath(new URL('../../../../shared/weather/recorded/', import.meta.url));
    const files = listed(recorded);
    if (files.length === 0) context.skip('../shared/weather/recorded is not here');
    for (const file of files) {
      const words = ['--forecast', file, ...bed];
      const first = await ran('cli/tonight', words);
      const saysWhere = !first.err.includes('add --lat and --lon');
      const { code, out, err } = saysWhere
        ? first
        : await ran('cli/tonight', [...words, '--lat', '44', '--lon', '-90']);
      expect([file, code, err]).toEqual([file, 0, '']);
      expect(out).toMatch(/tonight/);
    }
  });
});

/** Raw hourly forecasts of a cold season. */
function listed(folderOfRecordings: string): string[] {
  try {
    return ['nws', 'openmeteo', 'metno']
      .flatMap((service) =>
        readdirSync(join(folderOfRecordings, service)).map((name) => join(folderOfRecordings, service, name)),
      )
      .filter((file) => /grid_(BMX|FGZ|MPX|OAX|OHX|TAE)|oslo|newjersey|berlin|toronto/.test(file))
      .filter((file) => readFileSync(file, 'utf8').length > 0);
  } catch {
    return [];
  }
}
