import { MS_PER_H, type NightRun } from '../../rules/index.ts';
import { clockTime, shortDay } from '../ground/times.ts';
import { temperature } from '../ground/units.ts';
import type { BedOpening, OpeningPlan } from '../outlook/opening-plan.ts';
import { list } from '../text/phrases.ts';
import type { Reader } from '../text/reader.ts';
import type { ChartCurve, ChartMoment, CurveChart } from './curve-chart.ts';
import { actBy, safeFrom } from './round-moments.ts';
import { pointsOf } from './run-points.ts';
import { titled } from './titled.ts';

const AFTER_SUNSET_H = 0.5;

/** The day of one bed: a thermometer among its leaves with the covers shut and opened as advised; undefined where nothing opens. */
export function dayChart({ garden, day }: OpeningPlan, bed: BedOpening, reader: Reader): CurveChart | undefined {
  const { opening, takenOff } = bed.day;
  if (opening === undefined) return undefined;
  const { advice, limit } = opening;
  const { run } = advice.shut;
  const from = new Date(Math.max(day.sunrise.getTime(), run.timesMs[0] ?? 0));
  const to = new Date(Math.min(day.sunset.getTime() + AFTER_SUNSET_H * MS_PER_H, run.timesMs.at(-1) ?? 0));
  const curve = (of: NightRun, values: Float64Array) => pointsOf(of.timesMs, values, from, to);
  const opened = advice.kind === 'stay-shut' ? undefined : advice;
  const curves: ChartCurve[] = [
    { label: 'outside', points: curve(run, run.screenC), role: 'beside' },
    { label: 'shut', points: curve(run, run.thermometerC), role: opened === undefined ? 'main' : 'other' },
    ...(opened
      ? [
          {
            label: opened.kind === 'off' ? 'off' : 'open',
            points: curve(opened.run, opened.run.thermometerC),
            role: 'main' as const,
          },
        ]
      : []),
  ];
  const high = temperature(advice.shut.thermometerHigh.valueC, reader.units);
  const moments = momentsOf({ opened, takenOffAt: takenOff?.at, shutBy: day.shutBy, thawAt: thawOf(bed) });
  const dayWords = shortDay(day.sunrise, garden.timeZone);
  const chart = {
    title: titled(bed.bed.name, dayWords),
    subtitle: `Shut, a thermometer inside reaches ${high}`,
    ...{ units: reader.units, timeZone: garden.timeZone, from, to, curves, moments },
    limits: [{ label: 'open at', tempC: limit.limitC, weight: 'mark' as const }],
  };
  return {
    ...chart,
    altText: altText(
      chart,
      `${bed.bed.name}, ${dayWords}`,
      opened && temperature(opened.thermometerHigh.valueC, reader.units),
    ),
  };
}

function thawOf({ day: { pick } }: BedOpening): Date | undefined {
  return pick?.kind === 'thawed' ? pick.at : undefined;
}

interface DayTimes {
  readonly opened: { readonly openAt: Date; readonly shutAt: Date } | undefined;
  readonly takenOffAt: Date | undefined;
  readonly shutBy: Date;
  readonly thawAt: Date | undefined;
}

function momentsOf({ opened, takenOffAt, shutBy, thawAt }: DayTimes): ChartMoment[] {
  const shutAt = opened?.shutAt ?? (takenOffAt && shutBy);
  const moments: (ChartMoment | undefined)[] = [
    thawAt && { label: 'thawed', at: safeFrom(thawAt) },
    takenOffAt && { label: 'mat off', at: takenOffAt },
    opened && { label: 'open', at: actBy(opened.openAt) },
    shutAt && { label: 'shut by', at: actBy(shutAt) },
  ];
  return moments.filter((moment) => moment !== undefined).toSorted((a, b) => a.at.getTime() - b.at.getTime());
}

function altText(chart: Omit<CurveChart, 'altText'>, about: string, openedHigh: string | undefined): string {
  const { units, timeZone, limits, moments, subtitle } = chart;
  const time = (at: Date) => clockTime(at, timeZone, units === 'us');
  const opened = openedHigh === undefined ? '' : ` Opened as advised, ${openedHigh}.`;
  const limit = limits.map(({ tempC }) => ` Open at ${temperature(tempC, units)}.`).join('');
  const times = list(moments.map(({ label, at }) => `${label} ${time(at)}`));
  return `${about}. ${subtitle}.${opened}${limit}${times === '' ? '' : ` ${times.charAt(0).toUpperCase()}${times.slice(1)}.`}`;
}
