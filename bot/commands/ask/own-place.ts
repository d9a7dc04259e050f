import { type BedAsLaid, type BedLearning, bedNight, learnedNight, orderProblem } from '../../../rules/index.ts';
import { PlainProblem } from '../../ground/errors.ts';
import { temperature, windSpeed } from '../../ground/units.ts';
import type { When } from '../../language/understood.ts';
import { laidOn, learnedSite } from '../../learning/learned-site.ts';
import { bedInPast } from '../../outlook/bed-in-past.ts';
import { type NamedNight, type NightName, namedNight } from '../../outlook/named-night.ts';
import { benchOf } from '../../outlook/night-outlook.ts';
import { type LearnedSite, storedGarden } from '../../outlook/stored-garden.ts';
import type { Bed } from '../../store/port/beds.ts';
import type { Site } from '../../store/port/sites.ts';
import type { Store } from '../../store/store.ts';
import type { Credit, Section } from '../../talk/reply.ts';
import { forecastLine, noteLines } from '../../text/forecast-words.ts';
import { bedLine, siteLine } from '../../text/learned-words.ts';
import { skyWord } from '../../text/night-words.ts';
import type { Reader } from '../../text/reader.ts';
import type { Services } from '../services.ts';
import { type AskedNight, eachOnce } from './asked-night.ts';

/** What is known of the asking member: where they garden and what lies there. */
export interface OwnPlace {
  readonly site: Site;
  readonly beds: readonly Bed[];
}

/** A bed that a question is about, with what its thermometers and the outcomes of its crops have taught. */
export interface TaughtBed {
  readonly bed: Bed;
  /** Absent where nothing has been read. */
  readonly learned: BedLearning | undefined;
  readonly outcomes: LearnedSite['outcomes'];
}

export async function taughtBed(own: OwnPlace, bed: Bed, store: Store, now: Date): Promise<TaughtBed> {
  const { beds, outcomes } = await learnedSite(store, own, now);
  return { bed, learned: beds.get(bed.id), outcomes };
}

/** The member's default site with its beds; undefined where nothing is kept or no forecast can be had. */
export async function ownPlace(memberId: string, services: Services): Promise<OwnPlace | undefined> {
  const { store, forecasts } = services;
  if (store === undefined || forecasts === undefined) return undefined;
  const [site] = await store.sites.list(memberId);
  return site === undefined ? undefined : { site, beds: await store.beds.list(memberId, site.id) };
}

export interface ForecastNightWish {
  readonly site: Site;
  readonly when: When | undefined;
  readonly reader: Reader;
  readonly now: Date;
  /** Whose thermometers count. */
  readonly taught?: TaughtBed | undefined;
  /** What the question tells of the things on the bed. */
  readonly laid?: Partial<BedAsLaid>;
}

export interface ForecastNight {
  readonly night: AskedNight;
  /** What the forecast says and how old it is. */
  readonly section: Section;
  readonly credits: readonly Credit[];
}

/** The night that is meant at the member's own site, from the forecast. */
export async function forecastNight(
  { site, when, reader, now, taught, laid }: ForecastNightWish,
  { forecasts }: Services,
): Promise<ForecastNight> {
  const named = namedNight(nightName(when), now, site);
  if (named === undefined || forecasts === undefined) {
    throw new PlainProblem('The sun does not set at your site then, so there is no night to reckon with.');
  }
  const { latitudeDeg, longitudeDeg, heightM } = site;
  const place = { latitudeDeg, longitudeDeg, ...(heightM !== undefined && { elevationM: heightM }) };
  const forecast = await forecasts.forecastFor(place, now, { night: named.span });
  const bench = benchOf(storedGarden({ site, beds: [], spareCovers: [] }), forecast, named.span, now);
  const { summary, notes } = bench.weather;
  const { nightsAhead, heightDifferenceM } = bench;
  const under: AskedNight['under'] = (bed) => {
    const unsound = orderProblem(bed.covers);
    if (unsound !== undefined) return unsound;
    const computed = bedNight(
      {
        site: bench.site,
        weather: bench.series,
        soil: bench.soilUnder({ ...laid, ...bed }),
        bed: { ...laid, ...bed },
        window: bench.window,
        forecast: { kind: 'forecast', nightsAhead, ...(heightDifferenceM !== undefined && { heightDifferenceM }) },
      },
      bench.shared,
    );
    return computed.kind === 'night' && taught?.learned
      ? learnedNight(computed, taught.learned, laidOn(bed.covers, taught.bed))
      : computed;
  };
  return {
    night: {
      lowC: summary.lowC,
      windMPerS: summary.wind10MPerS,
      words: named.words,
      under: eachOnce(under),
      hardeningUnder: (covers, computed) => bedInPast(covers, computed, bench).hardening,
      ...(taught && { outcomes: taught.outcomes }),
    },
    section: {
      lines: [
        placeLine(site, named, summary, reader),
        forecastLine(forecast, now),
        ...noteLines(notes, reader),
        ...taughtLines(taught, reader),
      ],
    },
    credits: forecast.credits,
  };
}

function taughtLines(taught: TaughtBed | undefined, reader: Reader): string[] {
  if (taught?.learned === undefined) return [];
  const { bed, learned } = taught;
  const lines = [siteLine(learned, reader), bedLine({ name: bed.name, covers: learned.laid.covers }, learned, reader)];
  return lines.filter((line) => line !== undefined);
}

function placeLine(
  { name }: Site,
  { words }: NamedNight,
  { lowC, cloudFraction, wind10MPerS }: { lowC: number; cloudFraction: number; wind10MPerS: number },
  { units }: Reader,
): string {
  return `At ${name} ${words}: outside low about ${temperature(lowC, units)}, ${skyWord(cloudFraction)}, wind ${windSpeed(wind10MPerS, units)}.`;
}

/** The night that the forecast is asked for. */
export function nightName(when: When | undefined): NightName {
  switch (when) {
    case 'tomorrow-night':
      return 'tomorrow';
    case 'monday':
    case 'tuesday':
    case 'wednesday':
    case 'thursday':
    case 'friday':
    case 'saturday':
    case 'sunday':
      return when;
    default:
      return 'tonight';
  }
}
