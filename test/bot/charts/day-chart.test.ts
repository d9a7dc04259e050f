import { describe, expect, test } from 'vitest';
import { curveLayout } from '../../../bot/charts/curve-layout.ts';
import { dayChart } from '../../../bot/charts/day-chart.ts';
import type { HourlyForecast } from '../../../bot/forecast/forecast.ts';
import { deadline } from '../../../bot/ground/times.ts';
import type { GardenBed } from '../../../bot/outlook/garden.ts';
import { dayAfter, nextDay, openingPlan } from '../../../bot/outlook/opening-plan.ts';
import { SAMPLE_GARDEN, SAMPLE_NOW, sampleForecast } from '../../../bot/sample/sample-garden.ts';
import { readerOf } from '../../../bot/text/reader.ts';
import { meeting } from './arbitrary-chart.ts';

const US = readerOf('en-US');
const ZONE = SAMPLE_GARDEN.timeZone;
const SPINACH = [{ cropId: 'spinach', stage: 'grown' }] as const;

/** The sample's weather, all of it so much warmer. */
function warmer(byK: number): HourlyForecast {
  const { lows: _, ...forecast } = { lows: undefined, ...sampleForecast() };
  const moved = (values: readonly (number | undefined)[] = []) => values.map((value) => value && value + byK);
  const { screenC, dewPointC } = forecast.columns;
  return { ...forecast, columns: { ...forecast.columns, screenC: moved(screenC), dewPointC: moved(dewPointC) } };
}

function dayOf(covers: GardenBed['covers'], byK: number) {
  const today = nextDay(SAMPLE_NOW, SAMPLE_GARDEN);
  const tomorrow = today && dayAfter(today, SAMPLE_GARDEN);
  if (tomorrow === undefined) throw new RangeError('the sample garden has no tomorrow');
  const garden = { ...SAMPLE_GARDEN, beds: [{ name: 'Frame', covers, plantings: SPINACH }] };
  const plan = openingPlan(garden, warmer(byK), tomorrow, SAMPLE_NOW);
  const [bed] = plan.beds;
  if (bed === undefined) throw new RangeError('the garden has no bed');
  return { bed, chart: dayChart(plan, bed, US) };
}

const WARM = dayOf(['cold-frame'], 14);
const COLD = dayOf(['cold-frame'], 0);

describe('a day on which a cover is opened', () => {
  const { chart, bed } = WARM;
  const advice = bed.day.opening?.advice;

  test('shows the bed open and shut, and outside, with the limit between', () => {
    expect(advice?.kind).toBe('open');
    expect(chart?.curves.map(({ label, role }) => [label, role])).toEqual([
      ['outside', 'beside'],
      ['shut', 'other'],
      ['open', 'main'],
    ]);
    expect(chart?.limits.map(({ tempC }) => tempC)).toEqual([bed.day.opening?.limit.limitC]);
  });

  test('draws the temperatures that were computed', () => {
    const shut = chart?.curves.find(({ label }) => label === 'shut');
    const run = advice?.shut.run;
    for (const { at, tempC } of shut?.points ?? []) {
      expect(tempC).toBe(run?.thermometerC[run.timesMs.indexOf(at.getTime())]);
    }
    expect(Math.max(...(shut?.points.map(({ tempC }) => tempC) ?? []))).toBeCloseTo(
      advice?.shut.thermometerHigh.valueC ?? Number.NaN,
      6,
    );
  });

  test('marks when to open and to shut, at the times that the words tell', () => {
    if (advice === undefined || advice.kind === 'stay-shut') throw new Error('it should be opened');
    const told = new Map(chart?.moments.map(({ label, at }) => [label, deadline(at, ZONE, true)]));
    expect(told.get('open')).toBe(deadline(advice.openAt, ZONE, true));
    expect(told.get('shut by')).toBe(deadline(advice.shutAt, ZONE, true));
    for (const { at } of chart?.moments ?? []) expect(at.getTime() % 300_000).toBe(0);
  });

  test('says the same in a sentence', () => {
    expect(chart?.altText).toMatch(
      /^Frame, Wed 21 Jan\. Shut, a thermometer inside reaches \d+ °F\. Opened as advised, \d+ °F\. Open at \d+ °F\. Open \d+:\d\d am and shut by 3:00 pm\.$/,
    );
  });
});

describe('a day on which it stays shut', () => {
  test('shows the shut bed as what decides, and when its leaves have thawed', () => {
    expect(COLD.chart?.curves.map(({ label, role }) => [label, role])).toEqual([
      ['outside', 'beside'],
      ['shut', 'main'],
    ]);
    expect(COLD.chart?.moments.map(({ label }) => label)).toEqual(['thawed']);
    expect(COLD.chart?.altText).not.toContain('Opened');
  });
});

test.each([
  ['opened', WARM.chart],
  ['shut', COLD.chart],
])('the labels of a day %s do not meet', (_name, chart) => {
  if (chart === undefined) throw new Error('there should be a chart');
  const { grid, hours, curves, limits, moments } = curveLayout(chart);
  const labels = [grid, hours, curves, limits, moments].flatMap((group) => group.map(({ label }) => label));
  expect(meeting(labels)).toEqual([]);
});

test('nothing is drawn of a bed where nothing can be opened', () => {
  expect(dayOf([], 5).chart).toBeUndefined();
});
