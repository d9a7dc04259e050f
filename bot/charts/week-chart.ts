import { forecastLowSdK } from '../../rules/index.ts';
import { weekdayName } from '../ground/times.ts';
import { EIGHTY_PERCENT_Z, temperature } from '../ground/units.ts';
import type { BedOutlook } from '../outlook/night-outlook.ts';
import { coldestNight, type WeekNight, type WeekOutlook, worstNight } from '../outlook/week-outlook.ts';
import type { Reader } from '../text/reader.ts';
import type { ChartCurve, CurveChart, CurvePoint } from './curve-chart.ts';
import { limitsOf } from './night-chart.ts';
import { titled } from './titled.ts';

/** The lows of the nights to come, outside and in the bed that is worst off, against its crops' limits; undefined for one night. */
export function weekChart(week: WeekOutlook, reader: Reader): CurveChart | undefined {
  const { garden, known } = week;
  const lows = known.map((night) => ({ night, at: middleOf(night) }));
  const [first, last] = [lows[0]?.at, lows.at(-1)?.at];
  if (first === undefined || last === undefined || known.length < 2) return undefined;
  const worst = worstNight(week);
  const [bed] = worst.outlook.beds;
  const outside = lows.map(({ night, at }) => ({
    at,
    tempC: night.outlook.weather.summary.lowC,
    halfBandK: outsideHalfBandK(night),
  }));
  const curves = [
    { label: 'outside', points: outside, role: bed === undefined ? ('main' as const) : ('beside' as const) },
    ...(bed === undefined ? [] : [bedCurve(bed, known)]),
  ];
  const days = `${dayOf(known[0], garden.timeZone)} to ${dayOf(known.at(-1) ?? known[0], garden.timeZone)}`;
  const coldest = coldestNight(week);
  const coldestWords = `${dayOf(coldest, garden.timeZone)} ${temperature(coldest.outlook.weather.summary.lowC, reader.units)}`;
  const limits = bed === undefined ? [] : limitsOf(bed.verdict, reader);
  return {
    title: titled(bed?.bed.name ?? garden.name, days),
    subtitle: `Lows night by night; coldest outside ${coldestWords}`,
    ...{ units: reader.units, timeZone: garden.timeZone, from: first, to: last, curves, limits, moments: [] },
    marks: lows.map(({ night, at }) => ({ at, label: dayOf(night, garden.timeZone) })),
    altText: altText({ week, bed, coldestWords, days, reader }),
  };
}

/** Lows fall at different hours; evenly spaced nights read easier. */
function middleOf({ named: { span } }: Pick<WeekNight, 'named'>): Date {
  return new Date((span.sunset.getTime() + span.sunrise.getTime()) / 2);
}

function dayOf({ named }: WeekNight, timeZone: string): string {
  return weekdayName(named.span.sunset, timeZone).slice(0, 3);
}

/** The same bed in every night, by what its worst crop is judged by. */
function bedCurve({ bed, verdict }: BedOutlook, known: readonly WeekNight[]): ChartCurve {
  const isSurface = verdict.worst.planting.crop.judgedBy === 'surface';
  const points = known.flatMap(({ named, outlook }): CurvePoint[] => {
    const night = outlook.beds.find((each) => each.bed === bed)?.verdict.night;
    if (night === undefined) return [];
    const tempC = isSurface ? night.surfaceLowC : night.leafLowC;
    return [{ at: middleOf({ named }), tempC, halfBandK: EIGHTY_PERCENT_Z * night.spread.sdK }];
  });
  return { label: isSurface ? 'soil' : 'leaf', points, role: 'main' };
}

function outsideHalfBandK({ outlook, nightsAhead }: WeekNight): number {
  const { cloudFraction, wind10MPerS } = outlook.weather.summary;
  const site = { inversionK: outlook.garden.exposure === 'hollow' ? 5.5 : 3 };
  return (
    EIGHTY_PERCENT_Z *
    forecastLowSdK({ kind: 'forecast', nightsAhead }, { site, cloudFraction, windMPerS: wind10MPerS })
  );
}

interface Told {
  readonly week: WeekOutlook;
  readonly bed: BedOutlook | undefined;
  readonly coldestWords: string;
  readonly days: string;
  readonly reader: Reader;
}

function altText({ week, bed, coldestWords, days, reader }: Told): string {
  const lows = week.known.map(
    (night) => `${dayOf(night, week.garden.timeZone)} ${temperature(night.outlook.weather.summary.lowC, reader.units)}`,
  );
  const limits = bed === undefined ? '' : `, against the limits of ${bed.bed.name}`;
  return `Lows outside, ${days}: ${lows.join(', ')}${limits}. Coldest: ${coldestWords}.`;
}
