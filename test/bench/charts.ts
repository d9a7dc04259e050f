import { nightChart } from '../../bot/charts/night-chart.ts';
import { curvePicture } from '../../bot/charts/pictures.ts';
import { nightOutlook } from '../../bot/outlook/night-outlook.ts';
import { SAMPLE_GARDEN, SAMPLE_NOW, sampleForecast } from '../../bot/sample/sample-garden.ts';
import { readerOf } from '../../bot/text/reader.ts';
import { nightFrom } from '../../rules/index.ts';
import type { Row } from './row.ts';

const PICTURES = 60;
const WARM_UP_PICTURES = 5;
const TICK_MS = 1;

/** Time of a night's picture after warm-up, and how long others wait meanwhile. */
export async function benchCharts(): Promise<readonly Row[]> {
  const night = nightFrom(SAMPLE_NOW, SAMPLE_GARDEN.latitudeDeg, SAMPLE_GARDEN.longitudeDeg);
  if (night === undefined) throw new RangeError('the sample garden has no night');
  const outlook = nightOutlook(SAMPLE_GARDEN, sampleForecast(), night, SAMPLE_NOW);
  const charts = outlook.beds.map((bed) => nightChart(outlook, bed, readerOf('en-US')));
  const drawnMs: number[] = [];
  let heldMs = 0;
  let last = performance.now();
  const ticks = setInterval(() => {
    const now = performance.now();
    heldMs = Math.max(heldMs, now - last - TICK_MS);
    last = now;
  }, TICK_MS);
  for (const [index, chart] of Array.from({ length: PICTURES }, () => charts)
    .flat()
    .slice(0, PICTURES)
    .entries()) {
    if (index === WARM_UP_PICTURES) heldMs = 0;
    const since = performance.now();
    // Each with a title of its own, so that none is one of the kept ones.
    await curvePicture({ ...chart, title: `${chart.title} ${index}` });
    if (index >= WARM_UP_PICTURES) drawnMs.push(performance.now() - since);
  }
  clearInterval(ticks);
  const sorted = drawnMs.toSorted((one, other) => one - other);
  return [
    { name: 'picture of a night, median', value: sorted[sorted.length >> 1] ?? Number.NaN, unit: 'ms' },
    { name: 'picture of a night, slowest', value: sorted.at(-1) ?? Number.NaN, unit: 'ms' },
    { name: 'others wait at most', value: heldMs, unit: 'ms' },
  ];
}
