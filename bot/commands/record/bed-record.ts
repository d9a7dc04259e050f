import { DateTime } from 'luxon';
import { type ToldAndMeasured, trackRecord } from '../../../rules/index.ts';
import { recordPicture } from '../../charts/pictures.ts';
import type { RecordChart } from '../../charts/record-chart.ts';
import { titled } from '../../charts/titled.ts';
import { learnedSite } from '../../learning/learned-site.ts';
import { lastTold, outside, underCover } from '../../learning/scored-nights.ts';
import type { ScoredNight } from '../../store/port/readings.ts';
import type { Store } from '../../store/store.ts';
import type { Reply, Section } from '../../talk/reply.ts';
import type { Reader } from '../../text/reader.ts';
import { nightWords, recordWords } from '../../text/record-words.ts';
import type { OwnBed } from '../bed/own-beds.ts';
import { EXAMPLE_LOWS } from '../reading/example-lows.ts';
import { taughtLines } from '../reading/taught-lines.ts';

export interface BedRecordWish {
  readonly beds: readonly OwnBed[];
  readonly since: string;
  readonly now: Date;
  readonly reader: Reader;
}

/** Nights told in lines, and drawn. */
const LINES = 7;
const DRAWN = 14;
/** A correction smaller than this is not worth a word. */
const WORTH_SAYING_RATIO = 0.1;
/** Of the nights, inside the range. */
const WANTED_FRACTION = 0.8;

/** How well a member's own beds have been foretold. */
export async function bedRecord({ beds, since, now, reader }: BedRecordWish, store: Store): Promise<Reply> {
  const [first] = beds;
  const ids = beds.map(({ id }) => id);
  const scope = { kind: 'beds', memberId: first?.memberId ?? '', bedIds: ids } as const;
  const scored = await store.predictions.scored(scope, since);
  const found = beds.map((bed) => ({
    bed,
    nights: lastTold(scored.filter(({ prediction }) => prediction.bedId === bed.id)),
  }));
  const read = found.filter(({ nights }) => nights.length > 0);
  const [best] = read.toSorted((one, other) => other.nights.length - one.nights.length);
  if (best === undefined) return nothingYet(beds, reader);
  const sections = await Promise.all(
    read.map(({ bed, nights }) => section(bed, nights, read.length === 1, { now, reader }, store)),
  );
  const chart = chartOf(best.bed, best.nights, reader);
  const all = read.flatMap(({ nights }) => nights.flatMap((night) => underCover(night) ?? []));
  const outsideAll = read.flatMap(({ nights }) => nights.flatMap((night) => outside(night) ?? []));
  const headline = recordWords(all, reader) ?? recordWords(outsideAll, reader) ?? '';
  return {
    headline: read.length === 1 ? `${best.bed.label}: ${headline}` : headline,
    sections,
    ...(chart && { picture: await recordPicture(chart) }),
    private: true,
  };
}

function nothingYet(beds: readonly OwnBed[], reader: Reader): Reply {
  const [bed] = beds;
  return {
    headline: 'There is no night yet that I had told of and you had read.',
    sections: [
      { lines: ['Ask /tonight in the evening, read the thermometer in the morning, and tell me with /reading.'] },
      ...(bed === undefined
        ? []
        : [{ lines: [`Such as: /reading bed:"${bed.name}" ${EXAMPLE_LOWS[reader.units].inside}`] }]),
    ],
    private: true,
  };
}

async function section(
  bed: OwnBed,
  nights: readonly ScoredNight[],
  alone: boolean,
  { now, reader }: Pick<BedRecordWish, 'now' | 'reader'>,
  store: Store,
): Promise<Section> {
  const told = nights.flatMap((night) => underCover(night) ?? []);
  const words = recordWords(told, reader);
  const outsideWords = recordWords(
    nights.flatMap((night) => outside(night) ?? []),
    reader,
  );
  const last = alone ? nights.slice(-LINES).toReversed() : [];
  return {
    title: bed.label,
    lines: [
      ...(words === undefined || alone ? [] : [`Under the cover: ${words}`]),
      ...(outsideWords === undefined ? [] : [`Outside: ${outsideWords}`]),
      ...last.flatMap((night) => nightLine(night, reader)),
      ...(await taughtLines(store, bed, now, reader)),
      ...(await spreadLines(store, bed, told, now)),
    ],
  };
}

function nightLine(scored: ScoredNight, reader: Reader): string[] {
  const told = underCover(scored);
  return told === undefined ? [] : [`${shortDate(scored.reading.night)}: ${nightWords(told, reader)}.`];
}

/** Owns up where its ranges have been too narrow or too wide: in what was told, and in what has been learned since. */
async function spreadLines(store: Store, bed: OwnBed, told: readonly ToldAndMeasured[], now: Date): Promise<string[]> {
  const wereNarrow = (trackRecord(told)?.insideFraction ?? WANTED_FRACTION) < WANTED_FRACTION;
  const { beds } = await learnedSite(store, { site: bed.site, beds: [bed] }, now);
  const ratio = beds.get(bed.id)?.spreadRatio ?? 1;
  if (Math.abs(ratio - 1) < WORTH_SAYING_RATIO || wereNarrow !== ratio > 1) return [];
  const percent = Math.round(100 * Math.abs(ratio - 1));
  return [
    ratio > 1
      ? `My ranges were too narrow here: I widen them by ${percent} %.`
      : `My ranges were too wide here: I narrow them by ${percent} %.`,
  ];
}

function chartOf(bed: OwnBed, scored: readonly ScoredNight[], reader: Reader): RecordChart | undefined {
  const nights = scored.flatMap((night) => {
    const told = underCover(night);
    return told === undefined
      ? []
      : { ...told, label: String(Number(night.reading.night.slice(-2))), night: night.reading.night };
  });
  const drawn = nights.slice(-DRAWN);
  const words = recordWords(drawn, reader);
  if (words === undefined) return undefined;
  const [first, last] = [drawn[0]?.night ?? '', drawn.at(-1)?.night ?? ''];
  const span = `${shortDate(first)} to ${shortDate(last)}`;
  return {
    title: titled(bed.name, span),
    subtitle: words.split(';')[0] ?? '',
    units: reader.units,
    nights: drawn,
    altText: `Lows told and read under the cover of ${bed.name}, ${span}: ${words}`,
  };
}

function shortDate(night: string): string {
  return DateTime.fromISO(night, { zone: 'utc' }).toFormat('d LLL');
}
