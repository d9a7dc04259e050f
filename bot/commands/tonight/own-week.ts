import { setImmediate } from 'node:timers/promises';
import { curvePicture } from '../../charts/pictures.ts';
import { weekChart } from '../../charts/week-chart.ts';
import type { ForecastDesk } from '../../forecast/forecast.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { learnedGarden } from '../../learning/learned-site.ts';
import type { GardenBed } from '../../outlook/garden.ts';
import { namedNight } from '../../outlook/named-night.ts';
import { isRiskyNight, weekOutlook } from '../../outlook/week-outlook.ts';
import type { Site } from '../../store/port/sites.ts';
import type { Store } from '../../store/store.ts';
import type { Reply, Section } from '../../talk/reply.ts';
import { counted } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import { type WeekTelling, weekReply } from '../../text/week-reply.ts';

export interface OwnWeekWish {
  readonly sites: readonly Site[];
  /** Ids of the beds asked about; all where absent. */
  readonly only?: ReadonlySet<string>;
  /** Crops asked about that grow in no kept bed, as they were said to lie. */
  readonly said?: readonly GardenBed[];
  readonly reader: Reader;
  readonly now: Date;
}

/** The nights to come at a member's own sites. One site without a forecast does not silence the others. */
export async function ownWeekReply(wish: OwnWeekWish, store: Store, forecasts: ForecastDesk): Promise<Reply> {
  const asked = await Promise.allSettled(wish.sites.map((site) => siteWeek(site, wish, store, forecasts)));
  const [only, ...others] = asked;
  if (only?.status === 'fulfilled' && others.length === 0) return weekWithPicture(only.value);
  if (only?.status === 'rejected' && others.length === 0) throw only.reason;
  return severalWeeks(asked.map((outcome, index) => ({ outcome, name: wish.sites[index]?.name ?? '' })));
}

/** The reply with the curve of the lows. */
export async function weekWithPicture(telling: WeekTelling): Promise<Reply> {
  const chart = weekChart(telling.week, telling.reader);
  const reply = weekReply(telling);
  return chart === undefined ? reply : { ...reply, picture: await curvePicture(chart) };
}

/** @throws PlainProblem where the sun does not set, or no forecast can be had. */
export async function siteWeek(
  site: Site,
  { only, said, reader, now }: Omit<OwnWeekWish, 'sites'>,
  store: Store,
  forecasts: ForecastDesk,
): Promise<WeekTelling> {
  const { memberId, latitudeDeg, longitudeDeg, heightM } = site;
  const place = { latitudeDeg, longitudeDeg, ...(heightM !== undefined && { elevationM: heightM }) };
  const tonight = namedNight('tonight', now, site);
  const [kept, spareCovers, forecast, official] = await Promise.all([
    store.beds.list(memberId, site.id),
    store.shed.list(memberId),
    forecasts.forecastFor(place, now, tonight === undefined ? {} : { night: tonight.span }),
    forecasts.warningsFor(place, now),
  ]);
  // Working out a garden holds everything up: what waits for an answer goes first.
  await setImmediate();
  const beds = kept.filter(({ id }) => only?.has(id) ?? true);
  const garden = await learnedGarden(store, { site, beds, spareCovers }, now);
  const week = weekOutlook(said === undefined ? garden : { ...garden, beds: said }, forecast, now);
  if (week === undefined) {
    throw new PlainProblem(`${site.name}: the sun does not set there then, so there is no night to reckon with.`);
  }
  return { week, official, reader, now };
}

function severalWeeks(weeks: readonly { outcome: PromiseSettledResult<WeekTelling>; name: string }[]): Reply {
  const found = weeks.flatMap(({ outcome }) => (outcome.status === 'fulfilled' ? outcome.value : []));
  const replies = found.map(weekReply);
  const risky = found.filter(({ week }) => week.known.some(isRiskyNight)).length;
  return {
    headline:
      found.length === 0
        ? 'I could not work out the week for any of your sites.'
        : `${counted(found.length, 'site')}: ${risky === 0 ? 'none' : risky} with beds at risk this week.`,
    sections: weeks.flatMap(({ outcome, name }) => siteSections(outcome, name)),
    cautions: [...new Set(replies.flatMap(({ cautions }) => cautions ?? []))],
    credits: [...new Map(replies.flatMap(({ credits }) => credits ?? []).map((each) => [each.url, each])).values()],
    private: true,
    refused: found.length === 0,
  };
}

/** Each site under its own name, its verdict first. */
function siteSections(outcome: PromiseSettledResult<WeekTelling>, name: string): Section[] {
  const title = (words: string) => ({ title: name, lines: [words.replace(`${name}: `, '')] });
  if (outcome.status === 'fulfilled') {
    const { headline, sections } = weekReply(outcome.value);
    return [title(headline), ...sections];
  }
  if (outcome.reason instanceof PlainProblem) return [title(outcome.reason.message)];
  throw outcome.reason;
}
