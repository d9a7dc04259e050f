import fc from 'fast-check';
import { expect, it } from 'vitest';
import { isoInterval } from '../../../bot/forecast/nws-interval.ts';

const NOW = new Date('2026-01-20T20:00:00Z');
const H = 3_600_000;

function lengthH(text: string): number | undefined {
  const span = isoInterval(text, NOW);
  return span === undefined ? undefined : (span.toMs - span.fromMs) / H;
}

it('reads the durations that the service sends, in hours of exactly sixty minutes', () => {
  const start = '2024-02-20T11:00:00+00:00/';
  const lengths = ['PT1H', 'PT22H', 'P1D', 'P1DT6H', 'P2DT18H', 'P4DT15H', 'P7DT14H', 'PT90M'].map((duration) =>
    lengthH(start + duration),
  );
  expect(lengths).toEqual([1, 22, 24, 30, 66, 111, 182, 1.5]);
});

it('reads the other forms of the standard: two ends, duration before end, weeks, NOW', () => {
  expect(lengthH('2024-02-20T11:00:00Z/2024-02-20T14:00:00Z')).toBe(3);
  expect(isoInterval('PT3H/2024-02-20T14:00:00Z', NOW)?.fromMs).toBe(Date.parse('2024-02-20T11:00:00Z'));
  expect(lengthH('2024-02-20T11:00:00Z/P1W')).toBe(168);
  expect(isoInterval('NOW/PT3H', NOW)?.fromMs).toBe(NOW.getTime());
});

it('honours the offset of the start', () => {
  expect(isoInterval('2024-02-20T05:00:00-06:00/PT1H', NOW)?.fromMs).toBe(Date.parse('2024-02-20T11:00:00Z'));
});

it('refuses what is no interval, and one without length', () => {
  for (const text of [
    '',
    'yesterday',
    '2024-02-20T11:00:00Z',
    '2024-02-20T11:00:00Z/PT0H',
    '2024-02-20T11:00:00Z/P',
    '2024-99-99T11:00:00Z/PT1H',
  ]) {
    expect(isoInterval(text, NOW)).toBeUndefined();
  }
});

it('agrees for any start and length, however it is written', () => {
  fc.assert(
    fc.property(
      fc.date({ min: new Date('2000-01-01T00:00:00Z'), max: new Date('2099-01-01T00:00:00Z'), noInvalidDate: true }),
      fc.integer({ min: 1, max: 400 }),
      (date, hours) => {
        const start = new Date(Math.floor(date.getTime() / 1000) * 1000);
        const text = start.toISOString().replace('.000', '');
        const end = new Date(start.getTime() + hours * H).toISOString();
        const days = Math.floor(hours / 24);
        const expected = { fromMs: start.getTime(), toMs: start.getTime() + hours * H };
        for (const form of [
          `${text}/PT${hours}H`,
          `${text}/P${days}DT${hours % 24}H`,
          `${text}/${end}`,
          `PT${hours}H/${end}`,
        ]) {
          expect(isoInterval(form, NOW)).toEqual(expected);
        }
      },
    ),
  );
});

it('takes time in proportion to the text, whatever is written', () => {
  const begun = performance.now();
  isoInterval(`2024-02-20T11:00:00Z/P${'1'.repeat(50_000)}`, NOW);
  isoInterval('T'.repeat(50_000), NOW);
  expect(performance.now() - begun).toBeLessThan(500);
});
