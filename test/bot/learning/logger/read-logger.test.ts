import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LoggerFile, type LoggerSaid, readLogger } from '../../../../bot/learning/logger/read-logger.ts';

/** All files here are invented in the shape that common loggers write. */
const PLACE = { latitudeDeg: 43.1, longitudeDeg: -76.3, timeZone: 'America/New_York' };
const SAID: LoggerSaid = { units: undefined, zone: undefined, holds: undefined, usualOrder: 'month-first' };

async function file(text: string, said: Partial<LoggerSaid> = {}): Promise<LoggerFile> {
  const read = await readLogger(text, PLACE, { ...SAID, ...said });
  if (typeof read === 'string') throw new RangeError(read);
  return read;
}

/** Half-hourly lines from noon to noon, coldest at 6 in the morning. */
function lines(written: (at: Date) => string, value: (hour: number) => string, nights = 1): string[] {
  const noon = Date.UTC(2026, 0, 20, 17);
  return Array.from({ length: 48 * nights }, (_, step) => {
    const hour = step / 2;
    return `${written(new Date(noon + step * 1_800_000))}${value(hour % 24)}`;
  });
}

const pad = (value: number) => String(value).padStart(2, '0');
/** The local time of New York in winter. */
const local = (at: Date) => new Date(at.getTime() - 5 * 3_600_000);
const iso = (at: Date) => local(at).toISOString().slice(0, 16).replace('T', ' ');
const american = (at: Date) => {
  const t = local(at);
  const hour = t.getUTCHours();
  const clock = `${hour % 12 === 0 ? 12 : hour % 12}:${pad(t.getUTCMinutes())}:00 ${hour < 12 ? 'AM' : 'PM'}`;
  return `${t.getUTCMonth() + 1}/${t.getUTCDate()}/${t.getUTCFullYear()} ${clock}`;
};
const german = (at: Date) => {
  const t = local(at);
  return `${pad(t.getUTCDate())}.${pad(t.getUTCMonth() + 1)}.${t.getUTCFullYear()} ${pad(t.getUTCHours())}:${pad(t.getUTCMinutes())}`;
};
/** Eight degrees at noon, six below freezing at six in the morning. */
const celsius = (hour: number) => 1 + 7 * Math.cos((Math.PI * (hour < 18 ? hour : 24 - (hour - 18) * 4 + 24)) / 18);
const coldest = (hour: number) => (hour === 18 ? -6 : Math.max(-5.5, celsius(hour)));

describe('files of all shapes give the same night', () => {
  const fahrenheit = (hour: number) => ((coldest(hour) * 9) / 5 + 32).toFixed(2);
  test.each<[string, string, Partial<LoggerSaid>]>([
    [
      'plain, with headings',
      ['time,inside °C', ...lines(iso, (hour) => `,${coldest(hour).toFixed(2)}`)].join('\n'),
      {},
    ],
    [
      'a title, quoted headings with commas, a fixed offset',
      [
        '"Plot Title: Tunnel"',
        '"#","Date Time, GMT-05:00","Temp, °F (LBL: Tunnel)"',
        ...lines(american, (hour) => `,${fahrenheit(hour)}`).map((line, index) => `${index + 1},${line}`),
      ].join('\r\n'),
      {},
    ],
    [
      'semicolons, decimal commas, day before month',
      ['Zeit;Innen °C', ...lines(german, (hour) => `;${coldest(hour).toFixed(2).replace('.', ',')}`)].join('\n'),
      { usualOrder: 'day-first' },
    ],
    [
      'humidity beside it and the unit in the name',
      ['Timestamp,Temperature_Fahrenheit,Relative_Humidity', ...lines(iso, (hour) => `,${fahrenheit(hour)},88.1`)].join(
        '\n',
      ),
      {},
    ],
    ['no headings, units said', lines(iso, (hour) => `\t${coldest(hour).toFixed(2)}`).join('\n'), { units: 'C' }],
    [
      'the clock in a column of its own',
      [
        'date,clock,frame (C)',
        ...lines(iso, (hour) => `,${coldest(hour).toFixed(2)}`).map((l) => l.replace(' ', ',')),
      ].join('\n'),
      {},
    ],
    [
      'seconds since 1970',
      [
        'time,bed °C',
        ...lines(
          (at) => String(at.getTime() / 1000),
          (hour) => `,${coldest(hour).toFixed(2)}`,
        ),
      ].join('\n'),
      {},
    ],
    [
      'times of Greenwich',
      [
        'time,bed °C',
        ...lines(
          (at) => at.toISOString(),
          (hour) => `,${coldest(hour).toFixed(2)}`,
        ),
      ].join('\n'),
      {},
    ],
    [
      'units in the cells, a byte-order mark',
      `\uFEFF${['time,inside', ...lines(iso, (hour) => `,${coldest(hour).toFixed(2)} °C`)].join('\n')}`,
      {},
    ],
  ])('%s', async (_, text, said) => {
    const { nights, badRows, partial } = await file(text, said);
    expect(nights).toHaveLength(1);
    expect(nights[0]).toMatchObject({ night: '2026-01-20', outsideLowC: undefined });
    expect(nights[0]?.underCoverLowC).toBeCloseTo(-6, 2);
    expect([badRows, partial]).toEqual([[], []]);
  });
});

test('two columns of temperatures are told apart by their headings', async () => {
  const text = ['time,air outside C,frame C', ...lines(iso, (hour) => `,${coldest(hour) - 4},${coldest(hour)}`)].join(
    '\n',
  );
  expect((await file(text)).nights[0]).toEqual({ night: '2026-01-20', underCoverLowC: -6, outsideLowC: -10 });
});

test('one column may hold the low outside', async () => {
  const text = lines(iso, (hour) => `,${coldest(hour)}`).join('\n');
  expect((await file(text, { units: 'C', holds: 'outside' })).nights[0]).toMatchObject({
    outsideLowC: -6,
    underCoverLowC: undefined,
  });
});

test('bad rows are told by their line and the good ones kept', async () => {
  const good = lines(iso, (hour) => `,${coldest(hour)}`);
  good.splice(3, 0, 'yesterday,4', '2026-01-20 13:40,', '2026-02-30 10:00,3', '2026-01-20 13:41,851', '"');
  const read = await file(['time,inside °C', ...good].join('\n'));
  expect(read.badRows).toEqual([
    { line: 5, reason: 'time' },
    { line: 6, reason: 'temperature' },
    { line: 7, reason: 'no-such-time' },
    { line: 8, reason: 'out-of-range' },
    { line: 9, reason: 'time' },
  ]);
  expect(read.nights[0]?.underCoverLowC).toBe(-6);
});

test('a night that the logger saw only in part is named and left out', async () => {
  const all = lines(iso, (hour) => `,${coldest(hour)}`, 2);
  const read = await file(['time,inside °C', ...all.slice(0, 70)].join('\n'));
  expect(read.nights.map(({ night }) => night)).toEqual(['2026-01-20']);
  expect(read.partial).toEqual(['2026-01-21']);
});

test('where only days are written, the low is that of the morning', async () => {
  const read = await file('date,low under cover °C\n2026-01-21,-6\n2026-01-22,-3.5\n');
  expect(read.daysOnly).toBe(true);
  expect(read.nights.map(({ night, underCoverLowC }) => [night, underCoverLowC])).toEqual([
    ['2026-01-20', -6],
    ['2026-01-21', -3.5],
  ]);
});

test('day and month are told apart by the file where it can, else as the grower writes them, and that is owned up to', async () => {
  const text = (days: readonly string[]) => `date,inside °C\n${days.map((day) => `${day},-4`).join('\n')}\n`;
  expect((await file(text(['03/02/2026', '25/02/2026']), { usualOrder: 'month-first' })).nights[0]?.night).toBe(
    '2026-02-02',
  );
  expect((await file(text(['03/02/2026', '25/02/2026']))).assumedOrder).toBeUndefined();
  const open = await file(text(['03/02/2026']), { usualOrder: 'day-first' });
  expect([open.nights[0]?.night, open.assumedOrder]).toEqual(['2026-02-02', 'day-first']);
});

test.each([
  ['', 'empty'],
  ['hello\nworld\n', 'no-times'],
  ['2026-01-20 10:00,wet\n2026-01-20 11:00,dry\n', 'no-temperatures'],
  ['2026-01-20 10:00,1,2\n2026-01-20 11:00,1,2\n', 'unclear-columns'],
  ['2026-01-20 10:00,1\n2026-01-20 11:00,1\n', 'units-unsaid'],
])('a file that cannot be understood is refused with its reason: %j', async (text, problem) => {
  expect(await readLogger(text, PLACE, SAID)).toBe(problem);
});

test('whatever else a file holds, its good rows give the night and each bad one is told', async () => {
  const junk = fc
    .string({ maxLength: 40, unit: 'binary' })
    .filter((text) => !/[\d"\r\n]/.test(text) && /[a-z]/i.test(text));
  await fc.assert(
    fc.asyncProperty(fc.array(fc.tuple(fc.nat(47), junk), { maxLength: 10 }), async (spoilt) => {
      const good = lines(iso, (hour) => `,${coldest(hour)}`);
      for (const [at, text] of spoilt) good.splice(at + 1, 0, text);
      const read = await file(['time,inside °C', ...good].join('\n'));
      expect(read.nights).toEqual([{ night: '2026-01-20', underCoverLowC: -6, outsideLowC: undefined }]);
      expect(read.badRows).toHaveLength(read.rowCount - 48);
      expect(read.rowCount).toBeGreaterThanOrEqual(48);
    }),
  );
});

test('whatever a file holds, reading it ends quickly and without a fault', async () => {
  await fc.assert(
    fc.asyncProperty(fc.string({ maxLength: 400, unit: 'binary' }), async (text) => {
      const read = await readLogger(text, PLACE, { ...SAID, units: 'C' });
      if (typeof read !== 'string') expect(read.rowCount).toBeGreaterThanOrEqual(read.badRows.length);
    }),
  );
  const begun = performance.now();
  for (const evil of ['"', ',', '1/', '2026-01-20 10:00,', ' ', '1:1']) {
    await readLogger(evil.repeat(200_000), PLACE, { ...SAID, units: 'C' });
  }
  expect(performance.now() - begun).toBeLessThan(10_000);
});

describe('a file of 59,999 rows', () => {
  const rows = (stepMs: number) =>
    ['time,inside °C', ...Array.from({ length: 59_999 }, (_, i) => `${iso(new Date(1e12 + i * stepMs))},-3`)].join(
      '\n',
    );

  /** The longest that others had to wait meanwhile. [ms] */
  async function longestWaitMs(work: () => Promise<unknown>): Promise<number> {
    let longestMs = 0;
    let last = performance.now();
    const timer = setInterval(() => {
      longestMs = Math.max(longestMs, performance.now() - last);
      last = performance.now();
    }, 1);
    await work();
    clearInterval(timer);
    return longestMs;
  }

  test('each of another day, is refused before the sun of any is worked out', async () => {
    const begun = performance.now();
    expect(await readLogger(rows(86_400_000), PLACE, SAID)).toBe('too-many-days');
    expect(performance.now() - begun).toBeLessThan(1500);
  });

  test('over two years leaves others their turn', async () => {
    const text = rows(1_000_000);
    expect(await longestWaitMs(() => readLogger(text, PLACE, SAID))).toBeLessThan(800);
  });
});

test('names no zone where every time has an offset of its own', async () => {
  const withOffset = [
    'time,inside °C',
    ...lines(
      (at) => at.toISOString(),
      (hour) => `,${coldest(hour).toFixed(2)}`,
    ),
  ];
  expect((await file(withOffset.join('\n'))).zone).toBeUndefined();
  const without = ['time,inside °C', ...lines(iso, (hour) => `,${coldest(hour).toFixed(2)}`)];
  expect((await file(without.join('\n'))).zone).toBe('America/New_York');
});
