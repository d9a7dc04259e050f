import { MS_PER_DAY, nightFrom } from '../../../rules/index.ts';
import { clockTime, localDay, weekdayName } from '../../ground/times.ts';
import { type PostTimes, postTimes } from '../../outlook/post-times.ts';
import type { JoinedGarden } from '../../store/port/channels.ts';
import type { Site } from '../../store/port/sites.ts';
import type { Reader } from '../../text/reader.ts';

type Place = Pick<Site, 'latitudeDeg' | 'longitudeDeg' | 'timeZone'>;

interface NextPost extends PostTimes {
  readonly place: Place;
}

/** "Next: today about 11:25 am; I look at the forecast again at 2:05 pm." By the clock of the garden that shuts first. */
export function nextPostLines(
  gardens: readonly Pick<JoinedGarden, 'site'>[],
  leadH: number,
  now: Date,
  reader: Reader,
): readonly string[] {
  if (gardens.length === 0) return ['Nothing comes until somebody has joined with a site.'];
  const [next] = gardens
    .flatMap(({ site }) => nextPost(site, leadH, now) ?? [])
    .sort((one, other) => one.dueAt.getTime() - other.dueAt.getTime());
  if (next === undefined) return ['The sun does not set at the gardens now, so no warning is due.'];
  const { dueAt, checkAt, place } = next;
  const clock = (at: Date) => clockTime(at, place.timeZone, reader.units === 'us');
  const again = checkAt === undefined ? '' : `; I look at the forecast again at ${clock(checkAt)}`;
  return [`Next: ${dayWords(dueAt, now, place.timeZone)} about ${clock(dueAt)}${again}.`];
}

/** The first warning of a garden that is still to come. */
function nextPost(place: Place, leadH: number, now: Date): NextPost | undefined {
  for (const days of [0, 1]) {
    const from = new Date(now.getTime() + days * MS_PER_DAY);
    const night = nightFrom(from, place.latitudeDeg, place.longitudeDeg);
    const times = night && postTimes(night.shutBy, leadH);
    if (times !== undefined && times.dueAt > now) return { ...times, place };
  }
  return undefined;
}

function dayWords(at: Date, now: Date, timeZone: string): string {
  const day = localDay(at, timeZone);
  if (day === localDay(now, timeZone)) return 'today';
  return day === localDay(new Date(now.getTime() + MS_PER_DAY), timeZone) ? 'tomorrow' : weekdayName(at, timeZone);
}
