import { type DaySpan, MS_PER_MIN, nightFrom } from '../../../rules/index.ts';
import { dayChart } from '../../charts/day-chart.ts';
import { curvePicture } from '../../charts/pictures.ts';
import type { ForecastWish } from '../../forecast/forecast.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { localDay } from '../../ground/times.ts';
import { learnedGarden } from '../../learning/learned-site.ts';
import { dayAfter, nextDay, openingPlan } from '../../outlook/opening-plan.ts';
import type { Bed } from '../../store/port/beds.ts';
import type { Site } from '../../store/port/sites.ts';
import type { Picture, Reply } from '../../talk/reply.ts';
import { type OpeningTelling, openingReply } from '../../text/opening-reply.ts';
import type { Reader } from '../../text/reader.ts';
import { storeOf } from '../kept-for.ts';
import type { Services } from '../services.ts';
import { forecastsOf } from '../site/site-weather.ts';

export const DAY_NAMES = ['today', 'tomorrow'] as const;
export type DayName = (typeof DAY_NAMES)[number];

export interface OwnDayWish {
  readonly site: Site;
  /** Absent: today until it is time to shut, then tomorrow. */
  readonly day?: DayName;
  readonly reader: Reader;
  readonly now: Date;
  /** Of the beds only these, if any of them is one. */
  readonly only?: (bed: Bed) => boolean;
}

/** When to open, shut and pick at a member's own site. */
export async function ownDayReply(wish: OwnDayWish, services: Services): Promise<Reply> {
  const { hasBeds, ...telling } = await ownDay(wish, services);
  const picture = await dayPicture(telling);
  const reply = { ...openingReply(telling), ...(picture && { picture }) };
  return hasBeds ? reply : { ...reply, sections: [...reply.sections, { lines: ['Tell me your beds with /bed add.'] }] };
}

/** The first bed with something to open, else the first that could be. */
export async function dayPicture({
  plan,
  reader,
}: Pick<OpeningTelling, 'plan' | 'reader'>): Promise<Picture | undefined> {
  const [chart] = plan.beds.flatMap((bed) => dayChart(plan, bed, reader) ?? []);
  return chart && (await curvePicture(chart));
}

/**
 * A day at a member's own site, worked out.
 *
 * @throws PlainProblem when no forecast can be had, or the sun does not rise there.
 */
export async function ownDay(
  { site, day, reader, now, only }: OwnDayWish,
  services: Services,
): Promise<OpeningTelling & { readonly hasBeds: boolean }> {
  const store = storeOf(services);
  const span = wantedDay(site, day, now);
  const { memberId } = site;
  const [beds, forecast] = await Promise.all([
    store.beds.list(memberId, site.id),
    forecastsOf(services).forecastFor(placeOf(site), now, wishFor(span, site)),
  ]);
  const meant = only === undefined ? [] : beds.filter(only);
  const kept = { site, beds: meant.length > 0 ? meant : beds, spareCovers: [] };
  const garden = await learnedGarden(store, kept, now);
  const plan = openingPlan(garden, forecast, span, now);
  const isToday = localDay(span.sunset, site.timeZone) === localDay(now, site.timeZone);
  return { plan, reader, now, dayWords: isToday ? 'today' : 'tomorrow', hasBeds: beds.length > 0 };
}

/** The night that follows the day: so day and night are told from the same forecast. */
function wishFor({ sunset }: DaySpan, { latitudeDeg, longitudeDeg }: Site): ForecastWish {
  const night = nightFrom(new Date(sunset.getTime() - MS_PER_MIN), latitudeDeg, longitudeDeg);
  return night === undefined ? {} : { night };
}

function placeOf({ latitudeDeg, longitudeDeg, heightM }: Site) {
  return { latitudeDeg, longitudeDeg, ...(heightM !== undefined && { elevationM: heightM }) };
}

function wantedDay(site: Site, day: DayName | undefined, now: Date): DaySpan {
  const next = nextDay(now, site);
  if (next === undefined) throw new PlainProblem(`${site.name}: the sun does not rise and set there now.`);
  const isToday = localDay(next.sunset, site.timeZone) === localDay(now, site.timeZone);
  if (day === 'today' && !isToday) {
    throw new PlainProblem('It is past the time to shut for today. For tomorrow: /vent day:tomorrow.');
  }
  if (day !== 'tomorrow' || !isToday) return next;
  return dayAfter(next, site) ?? next;
}
