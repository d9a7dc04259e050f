import { coveredButton } from '../commands/tonight/covered.ts';
import { myBedsButton } from '../commands/tonight/tonight.ts';
import type { BedOutlook } from '../outlook/night-outlook.ts';
import type { Garden } from '../store/port/channels.ts';
import type { Reply } from '../talk/reply.ts';
import type { LowAhead } from '../text/ahead-words.ts';
import { doingFor } from '../text/club-groups.ts';
import type { ClubTelling } from '../text/club-telling.ts';
import { nightWhen } from '../text/night-when.ts';
import { isFrostless, outlookReply } from '../text/outlook-reply.ts';
import { type Reader, readerOf } from '../text/reader.ts';
import type { Ahead } from './ahead.ts';
import type { ClubNight, GardenNight, UnknownNight } from './club-night.ts';

/** Members of whom nothing is known read as this. */
const USUAL_LOCALE = 'en';

/** A night for which something is to be done, or of which a public service warns. */
export function needsWord({ outlook, official }: GardenNight): boolean {
  if (official.kind === 'known' && official.warnings.length > 0) return true;
  const doings = outlook.beds.map(doingFor);
  if (doings.includes('pick') || doings.includes('add')) return true;
  return doings.includes('shut') && !isFrostless(outlook);
}

export interface TellingMore {
  readonly now: Date;
  readonly markedBeds: number;
  readonly ahead: Ahead | undefined;
  readonly lowsAhead?: readonly LowAhead[];
  readonly worse?: ReadonlySet<BedOutlook>;
}

/** Gardens without a bed in crop have nothing to be told. */
export function clubTelling(
  club: ClubNight,
  { now, markedBeds, ahead, lowsAhead = [], worse }: TellingMore,
): ClubTelling {
  const gardens = club.known.filter(({ outlook }) => outlook.beds.length > 0);
  const gaps = club.unknown.filter(({ garden }) => garden.beds.some(({ plantings }) => plantings.length > 0));
  const everybody = [...club.known, ...club.unknown].map(({ garden }) => garden);
  const toDo = gardens.some(needsWord) || gaps.length > 0;
  return {
    gardens,
    gaps: gaps.map(({ last, official, night, garden }) => ({
      ...{ last, official },
      ...{ shutBy: night.shutBy, timeZone: garden.site.timeZone },
    })),
    failedCount: club.failedCount,
    markedBeds,
    ahead,
    lowsAhead,
    worse,
    reader: commonReader(everybody),
    now,
    nightWords: nightWhen(club.name, now, everybody[0]?.site.timeZone ?? 'UTC'),
    buttons: toDo ? [myBedsButton, coveredButton(club.name)] : [myBedsButton],
  };
}

export function readerFor({ member }: Garden): Reader {
  return readerOf(member.locale ?? USUAL_LOCALE, member.units);
}

/** A channel is written to as most of its members read; on a tie as the first of them. */
export function commonReader(gardens: readonly Garden[]): Reader {
  const counts = new Map<string, { readonly reader: Reader; count: number }>();
  for (const garden of gardens) {
    const reader = readerFor(garden);
    const key = `${reader.units} ${reader.dialect}`;
    const known = counts.get(key);
    if (known === undefined) counts.set(key, { reader, count: 1 });
    else known.count += 1;
  }
  const [most] = [...counts.values()].toSorted((a, b) => b.count - a.count);
  return most?.reader ?? readerOf(USUAL_LOCALE);
}

/** One garden's night, for its own grower. */
export function ownReply({ garden, night, outlook, official }: GardenNight, now: Date): Reply {
  const nightWords = nightWhen(night.name, now, garden.site.timeZone);
  const reply = outlookReply({
    outlook: { ...outlook, garden: { ...outlook.garden, name: garden.site.name } },
    ...{ official, now, nightWords },
    reader: readerFor(garden),
  });
  return { ...reply, buttons: [coveredButton(night.name, garden.site.id)] };
}

export function isKnown(night: GardenNight | UnknownNight): night is GardenNight {
  return 'outlook' in night;
}
