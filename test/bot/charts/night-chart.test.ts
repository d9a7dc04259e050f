import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { curveSvg } from '../../../bot/charts/curve-svg.ts';
import { nightChart } from '../../../bot/charts/night-chart.ts';
import { type NightOutlook, nightOutlook } from '../../../bot/outlook/night-outlook.ts';
import { SAMPLE_GARDEN, SAMPLE_NOW, sampleForecast } from '../../../bot/sample/sample-garden.ts';
import { readerOf } from '../../../bot/text/reader.ts';
import { nightFrom } from '../../../rules/index.ts';

function sampleOutlook(name?: string): NightOutlook {
  const night = nightFrom(SAMPLE_NOW, SAMPLE_GARDEN.latitudeDeg, SAMPLE_GARDEN.longitudeDeg);
  if (night === undefined) throw new RangeError('the sample garden has no night');
  const beds = SAMPLE_GARDEN.beds.map((bed) => (name === undefined ? bed : { ...bed, name }));
  return nightOutlook({ ...SAMPLE_GARDEN, beds }, sampleForecast(), night, SAMPLE_NOW);
}

const OUTLOOK = sampleOutlook();
const US = readerOf('en-US');

describe.each(OUTLOOK.beds)('the night of $bed.name', (each) => {
  const chart = nightChart(OUTLOOK, each, US);
  const { night, worst } = each.verdict;

  test('shows the leaf, or the soil for what grows in it, as computed', () => {
    const main = chart.curves.find(({ role }) => role === 'main');
    const values = worst.planting.crop.judgedBy === 'surface' ? night.run.soilSurfaceC : night.run.leafC;
    for (const { at, tempC } of main?.points ?? []) {
      expect(tempC).toBe(values[night.run.timesMs.indexOf(at.getTime())]);
    }
    expect(main?.points.length).toBeGreaterThan(60);
    expect(Math.min(...(main?.points.map(({ tempC }) => tempC) ?? []))).toBeCloseTo(worst.organLowC, 9);
  });

  test('draws a range that holds four nights in five', () => {
    expect(chart.curves.find(({ role }) => role === 'main')?.halfBandK).toBeCloseTo(1.2816 * night.spread.sdK, 3);
  });

  test('names the most endangered crop with both its limits', () => {
    expect(chart.limits.slice(0, 2).map(({ tempC }) => tempC)).toEqual([
      worst.tolerance.firstMarkC,
      worst.tolerance.lt50C,
    ]);
    expect(chart.limits.length).toBeLessThanOrEqual(4);
  });

  test('names shutting time, sunset and sunrise in order', () => {
    expect(chart.moments.slice(0, 3).map(({ label }) => label)).toEqual(['shut by', 'sunset', 'sunrise']);
    expect(chart.moments.map(({ at }) => at.getTime())).toEqual(chart.moments.map(({ at }) => at.getTime()).toSorted());
  });

  test('says in a sentence what it shows', () => {
    expect(chart.altText).toContain(each.bed.name);
    expect(chart.altText).toMatch(/Outside falls to −?\d+ °F/);
    for (const { label } of [...chart.limits, ...chart.moments]) {
      expect(chart.altText.toLowerCase()).toContain(label.toLowerCase());
    }
  });
});

test('a bed name full of markup is drawn as it stands', () => {
  const outlook = sampleOutlook('<b onload="x">&"\u0007');
  const [first] = outlook.beds;
  if (first === undefined) throw new RangeError('no bed');
  const svg = curveSvg(nightChart(outlook, first, US));
  expect(svg).toContain('&lt;b onload=&quot;x&quot;&gt;&amp;&quot; ');
  expect(new Resvg(svg).width).toBe(800);
});

test('a learned bed shows its learned curve', () => {
  const [first] = OUTLOOK.beds;
  if (first === undefined) throw new RangeError('no bed');
  const laid = { covers: first.bed.covers };
  const belief = {
    ...{ siteOffsetK: 0, coverOffsetK: 2, siteVarianceK2: 1, coverVarianceK2: 0.3, covarianceK2: 0 },
  };
  const learned = { belief, laid, outsideNights: 0, underCoverNights: 9, spreadRatio: 1 };
  const beds = SAMPLE_GARDEN.beds.map((bed) => (bed.name === first.bed.name ? { ...bed, learned } : bed));
  const outlook = nightOutlook({ ...SAMPLE_GARDEN, beds }, sampleForecast(), OUTLOOK.night, SAMPLE_NOW);
  const same = outlook.beds.find(({ bed }) => bed.name === first.bed.name);
  if (same === undefined) throw new RangeError('the bed is gone');
  const lowOf = (chart: ReturnType<typeof nightChart>) =>
    Math.min(...(chart.curves.find(({ role }) => role === 'main')?.points.map(({ tempC }) => tempC) ?? []));
  expect(lowOf(nightChart(outlook, same, US)) - lowOf(nightChart(OUTLOOK, first, US))).toBeCloseTo(2, 6);
});
