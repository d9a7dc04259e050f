import { DateTime } from 'luxon';
import { nightLowC } from '../forecast/night-low.ts';
import { weekdayName } from '../ground/times.ts';
import { nightOutlook, type OutlooksShared } from '../outlook/night-outlook.ts';
import type { AheadTelling, LowAhead } from '../text/ahead-words.ts';
import type { Calendar, CalendarNight } from './calendar.ts';
import type { ClubNight, GardenNight } from './club-night.ts';

/** How many nights after this one are looked at. */
export const NIGHTS_AHEAD = 3;
/** A later night less than this below tonight is not worth a word (judgement). */
const COLDER_BY_K = 1;

interface Candidate {
  readonly from: GardenNight;
  readonly night: CalendarNight;
  readonly nightsAhead: number;
  readonly lowC: number;
}

export interface Ahead extends AheadTelling {
  readonly nightsAhead: number;
}

/** The worst of the coming nights, if it is worse than this one and some bed would not hold as it lies. */
export function worstAhead(
  { name, known }: Pick<ClubNight, 'name' | 'known'>,
  calendar: Calendar,
  now: Date,
  shared: OutlooksShared,
): Ahead | undefined {
  const onePerCell = [...new Map(known.map((each) => [each.cell.id, each])).values()];
  const lowsC = onePerCell.map(({ outlook }) => outlook.weather.summary.lowC);
  const coldest = onePerCell
    .flatMap((from) => candidates(from, name, calendar, NIGHTS_AHEAD))
    .filter(({ lowC }) => lowC <= Math.min(...lowsC) - COLDER_BY_K)
    .reduce<Candidate | undefined>(
      (one, other) => (one === undefined || other.lowC < one.lowC ? other : one),
      undefined,
    );
  return coldest && told(coldest, now, shared);
}

function candidates(from: GardenNight, name: string, calendar: Calendar, count: number): Candidate[] {
  return Array.from({ length: count }, (_, i) => i + 1).flatMap((nightsAhead) => {
    const later = DateTime.fromISO(name).plus({ days: nightsAhead }).toFormat('yyyy-LL-dd');
    const night = calendar.named({ ...from.cell.place, timeZone: from.garden.site.timeZone }, later);
    const lowC = night && nightLowC(from.outlook.forecast, night);
    return night === undefined || lowC === undefined ? [] : { from, night, nightsAhead, lowC };
  });
}

function told({ from, night, nightsAhead }: Candidate, now: Date, shared: OutlooksShared): Ahead | undefined {
  const outlook = nightOutlook(from.outlook.garden, from.outlook.forecast, night, now, shared);
  const [worst] = outlook.beds;
  if (worst === undefined || worst.verdict.worst.verdict === 'holds') return undefined;
  return { nightsAhead, outlook, worst };
}

/** Nights of which a post gives the low, after this one. */
const LOWS_AHEAD = 6;

/** The lows of the coming nights in the coldest garden, as far as its forecast goes. */
export function lowsAhead({ name, known }: Pick<ClubNight, 'name' | 'known'>, calendar: Calendar): LowAhead[] {
  const lowOf = ({ outlook }: GardenNight) => outlook.weather.summary.lowC;
  const [coldest] = known.toSorted((one, other) => lowOf(one) - lowOf(other));
  if (coldest === undefined) return [];
  const { timeZone } = coldest.garden.site;
  return candidates(coldest, name, calendar, LOWS_AHEAD).map(({ night, lowC }) => ({
    weekday: weekdayName(night.sunset, timeZone),
    lowC,
  }));
}
