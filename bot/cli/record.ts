import { type ToldAndMeasured, trackRecord } from '../../rules/index.ts';
import { processConfig } from '../config.ts';
import { outside, underCover } from '../learning/scored-nights.ts';
import { openStore } from '../store/open-store.ts';
import type { ScoredNight } from '../store/port/readings.ts';
import { runProgram } from './run-program.ts';

/** For the host: how well all beds have been foretold, by service and lead time. Tells no bed, no member and no place. */

/** Upper ends of the groups of lead times. [h] */
const LEADS_H = [6, 12, 18, 24, 36, 60] as const;
const EARLIEST = '1970-01-01';

async function main(): Promise<undefined> {
  const store = await openStore(processConfig().DATABASE_URL, 'visitor');
  try {
    const scored = await store.predictions.scored({ kind: 'all' }, EARLIEST);
    process.stdout.write(`${table(scored.filter(({ prediction }) => prediction.leadH > 0))}\n`);
  } finally {
    await store.close();
  }
}

function table(scored: readonly ScoredNight[]): string {
  if (scored.length === 0) return 'No reading yet of a night that was told.';
  const services = [...new Set(scored.map(({ prediction }) => prediction.service))].toSorted();
  const rows = services.flatMap((service) => {
    const own = scored.filter(({ prediction }) => prediction.service === service);
    return [...LEADS_H, Number.POSITIVE_INFINITY].flatMap((upTo, index) => {
      const from = LEADS_H[index - 1] ?? 0;
      const nights = own.filter(({ prediction: { leadH } }) => leadH > from && leadH <= upTo);
      const lead = Number.isFinite(upTo) ? `${from} to ${upTo} h` : `over ${from} h`;
      return [
        row(
          service,
          lead,
          'outside',
          nights.flatMap((night) => outside(night) ?? []),
        ),
        row(
          service,
          lead,
          'under cover',
          nights.flatMap((night) => underCover(night) ?? []),
        ),
      ].filter((line) => line !== undefined);
    });
  });
  return [HEADING, ...rows].join('\n');
}

const WIDTHS = [10, 12, 12, 7, 10, 10, 10] as const;
const HEADING = cells(['service', 'lead', 'low', 'nights', 'mean K', 'off by K', 'in range']);

function row(service: string, lead: string, what: string, nights: readonly ToldAndMeasured[]): string | undefined {
  const record = trackRecord(nights);
  if (record === undefined) return undefined;
  return cells([
    ...[service, lead, what, String(record.nights)],
    ...[record.meanErrorK.toFixed(2), record.meanAbsoluteErrorK.toFixed(2)],
    `${Math.round(100 * record.insideFraction)} %`,
  ]);
}

function cells(texts: readonly string[]): string {
  return texts
    .map((text, index) => (index < 3 ? text.padEnd(WIDTHS[index] ?? 0) : text.padStart(WIDTHS[index] ?? 0)))
    .join(' ');
}

await runProgram(main);
