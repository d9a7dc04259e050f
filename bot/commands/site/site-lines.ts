import { nightFrom } from '../../../rules/index.ts';
import { clockTime, deadline } from '../../ground/times.ts';
import type { Site } from '../../store/port/sites.ts';
import { capitalised, list } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import { compassPoint } from '../typed/compass.ts';
import { coordinateWords, EXPOSURE_WORDS, heightWords } from './place-words.ts';

/** A site told back, with tonight's times as a check that it lies where it should. For the member alone. */
export function siteLines(site: Site, reader: Reader, now: Date): string[] {
  return [
    `${coordinateWords(site)}, ${heightWords(site.heightM, reader)}.`,
    `${capitalised(EXPOSURE_WORDS[site.exposure])}. Clock of ${site.timeZone.replaceAll('_', ' ')}.`,
    ...horizonLines(site),
    sunLine(site, reader, now),
  ];
}

/** "The sun is hidden up to 10° in the south and 35° in the south-west." */
function horizonLines({ horizonDeg }: Site): string[] {
  const [first = 0, ...others] = horizonDeg;
  if (others.length === 0) return first > 0 ? [`The sun is hidden up to ${first}° all round.`] : [];
  const directionDeg = 360 / horizonDeg.length;
  const hidden = horizonDeg.flatMap((deg, at) => (deg > 0 ? `${deg}° in the ${compassPoint(at * directionDeg)}` : []));
  return hidden.length > 0 ? [`The sun is hidden up to ${list(hidden)}.`] : [];
}

function sunLine({ latitudeDeg, longitudeDeg, timeZone }: Site, { units }: Reader, now: Date): string {
  const night = nightFrom(now, latitudeDeg, longitudeDeg);
  if (night === undefined) return 'The sun does not set there at this time of the year.';
  const twelveHour = units === 'us';
  return `The sun sets there at ${clockTime(night.sunset, timeZone, twelveHour)}; covers are shut by ${deadline(night.shutBy, timeZone, twelveHour)}.`;
}
