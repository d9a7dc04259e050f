import { setImmediate } from 'node:timers/promises';
import { type ForecastDesk, inForce } from '../../forecast/forecast.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { learnedGarden } from '../../learning/learned-site.ts';
import { bedsOf, predictionsOf } from '../../learning/told-night.ts';
import type { GardenBed } from '../../outlook/garden.ts';
import { type NamedNight, type NightName, namedNight } from '../../outlook/named-night.ts';
import { type BedOutlook, type NightOutlook, nightOutlook } from '../../outlook/night-outlook.ts';
import type { Bed } from '../../store/port/beds.ts';
import type { Site } from '../../store/port/sites.ts';
import type { Store } from '../../store/store.ts';
import type { Reply, Section } from '../../talk/reply.ts';
import { outlookReply } from '../../text/outlook-reply.ts';
import { counted } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import { coveredButton } from './covered.ts';
import { curveButtons, nightPicture } from './curve-button.ts';

export interface OwnNightsWish {
  readonly sites: readonly Site[];
  /** Ids of the beds asked about; all where absent. */
  readonly only?: ReadonlySet<string>;
  readonly night: NightName;
  readonly reader: Reader;
  readonly now: Date;
}

/** A night at one site, worked out and put into words. */
export interface SiteNight {
  readonly site: Site;
  readonly beds: readonly Bed[];
  readonly night: NamedNight;
  readonly outlook: NightOutlook;
  /** Which kept bed each bed of the outlook is. */
  readonly bedOf: ReadonlyMap<GardenBed, Bed>;
  readonly reply: Reply;
  readonly markedBeds: number;
}

/** A night at a member's own sites, and what to do about it. One site without a forecast does not silence the others. */
export async function ownNightsReply(wish: OwnNightsWish, store: Store, forecasts: ForecastDesk): Promise<Reply> {
  const asked = wish.sites.map((site) => siteNight(site, wish, store, forecasts));
  const [only, ...others] = await Promise.allSettled(asked);
  if (only !== undefined && others.length === 0) return oneSite(settledValue(only), wish.reader);
  const outcomes = only === undefined ? [] : [only, ...others];
  return severalSites(outcomes.map((outcome, index) => ({ outcome, name: wish.sites[index]?.name ?? '' })));
}

/**
 * Works out one site's night.
 *
 * @throws PlainProblem where the sun does not set, or no forecast can be had.
 */
export async function siteNight(
  site: Site,
  wish: Omit<OwnNightsWish, 'sites'>,
  store: Store,
  forecasts: ForecastDesk,
): Promise<SiteNight> {
  const { now, reader } = wish;
  const night = namedNight(wish.night, now, site);
  if (night === undefined) {
    throw new PlainProblem(`${site.name}: the sun does not set there then, so there is no night to reckon with.`);
  }
  const { memberId, latitudeDeg, longitudeDeg, heightM } = site;
  const place = { latitudeDeg, longitudeDeg, ...(heightM !== undefined && { elevationM: heightM }) };
  const [kept, spareCovers, forecast, official] = await Promise.all([
    store.beds.list(memberId, site.id),
    store.shed.list(memberId),
    forecasts.forecastFor(place, now, { night: night.span }),
    forecasts.warningsFor(place, now),
  ]);
  // Working out a garden holds everything up: what waits for an answer goes first.
  await setImmediate();
  const beds = kept.filter(({ id }) => wish.only?.has(id) ?? true);
  const garden = await learnedGarden(store, { site, beds, spareCovers }, now);
  const outlook = nightOutlook(garden, forecast, night.span, now);
  const bedOf = bedsOf(garden.beds, beds);
  await store.predictions.keep(predictionsOf({ memberId, name: night.day, outlook, bedOf }, now));
  const ids = beds.map(({ id }) => id);
  const marked = await store.covered.marked(ids, night.day);
  const reply = outlookReply({
    outlook,
    official: inForce(official, night.span),
    reader,
    now,
    nightWords: night.words,
  });
  return { site, beds, night, outlook, bedOf, reply, markedBeds: marked.size };
}

/** With the curve of the most urgent bed; those of the others by button. */
async function oneSite(at: SiteNight, reader: Reader): Promise<Reply> {
  const { reply, site, night, outlook } = at;
  const [first, ...others] = outlook.beds;
  const buttons = [
    ...(needsHands(at) ? [coveredButton(night.day, site.id)] : []),
    ...curveButtons(night.day, keptBeds(at, others)),
  ];
  const picture = first && (await nightPicture(outlook, first, reader));
  return { ...reply, sections: [...reply.sections, ...ownLines(at)], buttons, ...(picture && { picture }) };
}

function keptBeds({ bedOf }: SiteNight, beds: readonly BedOutlook[]): readonly Bed[] {
  return beds.flatMap(({ bed }) => bedOf.get(bed) ?? []);
}

function severalSites(nights: readonly { outcome: PromiseSettledResult<SiteNight>; name: string }[]): Reply {
  const found = nights.flatMap(({ outcome }) => (outcome.status === 'fulfilled' ? outcome.value : []));
  const judged = found.flatMap(({ outlook }) => outlook.beds);
  const risky = judged.filter(({ verdict }) => verdict.worst.verdict !== 'holds').length;
  const [first] = found;
  const days = new Set(found.filter(needsHands).map(({ night }) => night.day));
  const replies = found.map(({ reply }) => reply);
  return {
    headline:
      first === undefined
        ? 'I could not work out that night for any of your sites.'
        : `${counted(found.length, 'site')}: ${risky} of ${counted(judged.length, 'bed')} at risk ${first.night.words}.`,
    sections: nights.flatMap(({ outcome, name }) => siteSections(outcome, name)),
    cautions: [...new Set(replies.flatMap(({ cautions }) => cautions ?? []))],
    credits: [...new Map(replies.flatMap(({ credits }) => credits ?? []).map((each) => [each.url, each])).values()],
    buttons: [
      ...[...days].map((day) => coveredButton(day)),
      ...found.flatMap((at) => curveButtons(at.night.day, keptBeds(at, at.outlook.beds.slice(0, 1)))),
    ],
    private: true,
    refused: first === undefined,
  };
}

/** Each site under its own name, its verdict first. */
function siteSections(outcome: PromiseSettledResult<SiteNight>, name: string): Section[] {
  const title = (words: string) => ({ title: name, lines: [words.replace(`${name}: `, '')] });
  if (outcome.status === 'fulfilled') {
    const { reply } = outcome.value;
    return [title(reply.headline), ...reply.sections, ...ownLines(outcome.value)];
  }
  if (outcome.reason instanceof PlainProblem) return [title(outcome.reason.message)];
  throw outcome.reason;
}

function ownLines({ beds, markedBeds }: SiteNight): Section[] {
  const lines = [
    ...(beds.length === 0 ? ['Tell me your beds with /bed add.'] : []),
    ...(markedBeds > 0 ? [`Marked as done: ${markedBeds} of ${counted(beds.length, 'bed')}.`] : []),
  ];
  return lines.length === 0 ? [] : [{ lines }];
}

/** Something is to be laid or shut that is not yet marked as done. */
function needsHands({ outlook, beds, markedBeds }: SiteNight): boolean {
  const toDo = outlook.beds.some(({ bed, step }) => step.kind === 'add' || bed.covers.length > 0);
  return toDo && markedBeds < beds.length;
}

function settledValue<T>(outcome: PromiseSettledResult<T>): T {
  if (outcome.status === 'fulfilled') return outcome.value;
  throw outcome.reason;
}
