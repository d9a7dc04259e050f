import assert from 'node:assert/strict';
import fc from 'fast-check';
import { NightForecastError, SavedForecastError } from '../../bot/forecast/forecast-error.ts';
import { readSavedForecast } from '../../bot/forecast/recorded.ts';
import { csvRows } from '../../bot/learning/logger/csv-rows.ts';
import { nightWeather } from '../../bot/weather/night.ts';
import { FIXTURE_NIGHT, fixture } from '../fakes/forecast-services.ts';

const BODIES = ['nws-grid.json', 'nws-hourly.json', 'metno-complete.json', 'openmeteo.json'].map((name) =>
  fixture(name),
);
const NOW = new Date('2026-01-20T20:00:00Z');
const ABSURD_C = 80;

/** An answer with pieces of it exchanged: numbers for absurd ones, names for others, a part cut out. */
const spoilt = fc
  .record({
    body: fc.constantFrom(...BODIES),
    from: fc.double({ min: 0, max: 1, noNaN: true }),
    length: fc.nat({ max: 60 }),
    put: fc.oneof(
      fc.constantFrom('null', '-9999', '1e308', '""', '[]', '{}', '"NaN"', 'true', '-1', '0', ',', ']', '}'),
      fc.json({ maxDepth: 1 }),
      fc.constant(''),
    ),
  })
  .map(({ body, from, length, put }) => {
    const at = Math.floor(from * body.length);
    return body.slice(0, at) + put + body.slice(at + length);
  });

/** One value of a well-formed answer exchanged, so that it stays JSON. */
const oneValue = fc
  .record({
    body: fc.constantFrom(...BODIES),
    which: fc.nat({ max: 5000 }),
    put: fc.constantFrom('null', '-9999', '1e308', '""', '[]', '{}', '"x"', 'true', '-400', '12345'),
  })
  .map(({ body, which, put }) => {
    const numbers = [...body.matchAll(/(?<=[:[,]\s{0,20})-?\d+(?:\.\d+)?(?=\s*[,\]}])/g)];
    const hit = numbers[which % numbers.length];
    if (hit === undefined) return body;
    return body.slice(0, hit.index) + put + body.slice(hit.index + hit[0].length);
  });

/** What a service could send instead of a forecast is refused in one sentence, or read without any absurd temperature. */
export function forecastBodyProperty(): fc.IProperty<[string]> {
  return fc.property(fc.oneof({ arbitrary: spoilt, weight: 1 }, { arbitrary: oneValue, weight: 3 }), (text) => {
    try {
      const forecast = readSavedForecast(text, NOW);
      const { columns, hours } = forecast;
      for (const column of Object.values(columns)) assert.equal(column?.length, hours);
      for (const screenC of columns.screenC ?? []) {
        if (screenC !== undefined) assert.ok(Math.abs(screenC) < ABSURD_C, `air of ${screenC} °C`);
      }
      const { summary } = nightWeather(forecast, FIXTURE_NIGHT, NOW);
      assert.ok(Math.abs(summary.lowC) < ABSURD_C, `a night of ${summary.lowC} °C`);
      assert.ok(summary.cloudFraction >= 0 && summary.cloudFraction <= 1 && summary.wind10MPerS >= 0);
    } catch (error) {
      assert.ok(error instanceof SavedForecastError || error instanceof NightForecastError, String(error));
    }
  });
}

const CELLS = [
  '2026-01-20 06:00',
  '20/01/2026',
  '-3.5',
  '−3,5',
  '"',
  '""',
  "'",
  '=1+1',
  'Temp °F',
  '\u0000',
  '\ud800',
  '',
];
const SEPARATORS = [',', ';', '\t', '\n', '\r\n', '\r', ' '];

/** Whatever a logger or a spreadsheet wrote, its lines are read, each of them once and in order. */
export function csvProperty(): fc.IProperty<[string]> {
  const piece = fc.oneof(fc.constantFrom(...CELLS), fc.constantFrom(...SEPARATORS), fc.string({ unit: 'binary' }));
  const text = fc.array(piece, { maxLength: 60 }).map((pieces) => pieces.join(''));
  return fc.property(text, (whole) => {
    const lines = csvRows(whole).map(({ line }) => line);
    assert.deepEqual(
      lines,
      [...new Set(lines)].sort((a, b) => a - b),
    );
    // A reader that returned nothing would pass so far: without quotation marks every line with a letter is there.
    if (['"', '\r', '\0'].some((sign) => whole.includes(sign))) return;
    const written = whole.split('\n').filter((line) => /[a-z0-9]/i.test(line)).length;
    assert.ok(lines.length >= written, `${lines.length} of ${written} lines`);
  });
}
