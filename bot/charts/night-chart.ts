import { type BedVerdict, MS_PER_H } from '../../rules/index.ts';
import { clockTime, shortDay } from '../ground/times.ts';
import { EIGHTY_PERCENT_Z, temperature, temperatureWithRange } from '../ground/units.ts';
import type { BedOutlook, NightOutlook } from '../outlook/night-outlook.ts';
import { colderThanOutsideWords } from '../text/night-words.ts';
import { list } from '../text/phrases.ts';
import { cropWord, type Reader } from '../text/reader.ts';
import type { ChartLimit, ChartMoment, CurveChart } from './curve-chart.ts';
import { actBy, safeFrom } from './round-moments.ts';
import { pointsOf } from './run-points.ts';
import { titled } from './titled.ts';

/** The picture begins before the covers are shut and ends when leaves have thawed. */
const BEFORE_SHUTTING_H = 0.5;
const AFTER_SUNRISE_H = 2;
const AFTER_THAW_H = 0.5;
/** Two lines nearer than this leave no room for a label between them. */
const CLEAR_OF_K = 2;
const NEAR_K = 6;

/** The night of one bed: outside and leaf, where its crops mark and die, and the times that matter. */
export function nightChart(outlook: NightOutlook, { bed, verdict }: BedOutlook, reader: Reader): CurveChart {
  const { night: span, garden } = outlook;
  const { night, worst } = verdict;
  const isSurface = worst.planting.crop.judgedBy === 'surface';
  const from = new Date(Math.max(span.shutBy.getTime() - BEFORE_SHUTTING_H * MS_PER_H, night.run.timesMs[0] ?? 0));
  const to = endOf(outlook, night.thawAt, night.run.timesMs.at(-1) ?? 0);
  const low = temperatureWithRange(worst.organLowC, night.spread.sdK, reader.units);
  const what = isSurface ? 'soil surface' : 'leaf';
  const curve = (values: Float64Array) => pointsOf(night.run.timesMs, values, from, to);
  const day = shortDay(span.sunset, garden.timeZone);
  const chart = {
    title: titled(bed.name, day),
    subtitle: `${isSurface ? 'Soil surface' : 'Leaf'} low ${low}, outside ${temperature(night.screenLowC, reader.units)}`,
    ...{ units: reader.units, timeZone: garden.timeZone, from, to },
    night: { from: span.sunset, to: span.sunrise },
    curves: [
      { label: 'outside', points: curve(night.run.screenC), role: 'beside' as const },
      {
        label: isSurface ? 'soil' : 'leaf',
        points: curve(isSurface ? night.run.soilSurfaceC : night.run.leafC),
        role: 'main' as const,
        halfBandK: EIGHTY_PERCENT_Z * night.spread.sdK,
      },
    ],
    limits: limitsOf(verdict, reader),
    moments: momentsOf(outlook, night.thawAt, to),
  };
  const note = colderThanOutsideWords(verdict);
  return {
    ...chart,
    ...(note !== undefined && { note }),
    altText: altText(chart, {
      about: `${bed.name}, ${day}`,
      what,
      low,
      at: night.leafLowAt,
      outsideLowC: night.screenLowC,
      note,
    }),
  };
}

function endOf({ night }: NightOutlook, thawAt: Date | undefined, lastMs: number): Date {
  const thawMs = (thawAt?.getTime() ?? 0) + AFTER_THAW_H * MS_PER_H;
  return new Date(Math.min(lastMs, Math.max(night.sunrise.getTime() + AFTER_SUNRISE_H * MS_PER_H, thawMs)));
}

/**
 * The most endangered crop always, one more only where the night comes near its limits and they stand clear of the first ones:
 * far lines flatten the curves, and of lines side by side nobody can tell which is whose.
 */
export function limitsOf({ plantings, worst }: BedVerdict, reader: Reader): ChartLimit[] {
  const alike = plantings.filter(({ planting }) => planting.crop.judgedBy === worst.planting.crop.judgedBy);
  const near = alike.filter((each) => each.organLowC - each.tolerance.firstMarkC < NEAR_K);
  const second = near.find((each) => each !== worst && standApart(each.tolerance, worst.tolerance));
  return [worst, ...(second ? [second] : [])].flatMap(({ planting, tolerance }) => {
    const crop = cropWord(planting.crop, reader);
    return [
      { label: `${crop} marks`, tempC: tolerance.firstMarkC, weight: 'mark' as const },
      { label: `${crop} dies`, tempC: tolerance.lt50C, weight: 'loss' as const },
    ];
  });
}

interface Limits {
  readonly firstMarkC: number;
  readonly lt50C: number;
}

function standApart(one: Limits, other: Limits): boolean {
  const limits = ({ firstMarkC, lt50C }: Limits) => [firstMarkC, lt50C];
  return limits(one).every((limitC) => limits(other).every((otherC) => Math.abs(limitC - otherC) >= CLEAR_OF_K));
}

function momentsOf({ night }: NightOutlook, thawAt: Date | undefined, to: Date): ChartMoment[] {
  const moments = [
    { label: 'shut by', at: actBy(night.shutBy) },
    { label: 'sunset', at: night.sunset },
    { label: 'sunrise', at: night.sunrise },
    ...(thawAt === undefined ? [] : [{ label: 'thawed', at: safeFrom(thawAt) }]),
  ];
  return moments.filter(({ at }) => at <= to);
}

interface Lows {
  readonly about: string;
  readonly what: string;
  readonly low: string;
  readonly at: Date;
  readonly outsideLowC: number;
  readonly note: string | undefined;
}

function altText(chart: Omit<CurveChart, 'altText'>, { about, what, low, at, outsideLowC, note = '' }: Lows): string {
  const { units, timeZone, limits, moments } = chart;
  const time = (instant: Date) => clockTime(instant, timeZone, units === 'us');
  const limitWords = limits.map(({ label, tempC }) => `${label} at ${temperature(tempC, units)}`);
  const momentWords = moments.map(({ label, at: instant }) => `${label} ${time(instant)}`);
  return `${about}. Outside falls to ${temperature(outsideLowC, units)}, the ${what} to ${low} about ${time(at)}. ${sentence(limitWords)}${sentence(momentWords)}${note}`.trim();
}

function sentence(words: readonly string[]): string {
  const text = list(words);
  return text === '' ? '' : `${text.charAt(0).toUpperCase()}${text.slice(1)}. `;
}
