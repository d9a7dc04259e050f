import { PlainProblem } from '../../ground/errors.ts';
import { timeZoneOf } from '../../ground/time-zone.ts';
import type { UnitSystem } from '../../ground/units.ts';
import { EXPOSURES, type SiteFacts } from '../../store/port/sites.ts';
import { capitalised } from '../../text/phrases.ts';
import type { OptionSpec } from '../command.ts';
import { maybe, oneOf } from '../options.ts';
import { typedHorizon } from '../typed/horizon.ts';
import { typedLengthM } from '../typed/length.ts';
import { typedName } from '../typed/name.ts';
import { typedPlace } from '../typed/place.ts';
import { type Read, read, unread } from '../typed/read.ts';
import { EXPOSURE_WORDS } from './place-words.ts';

/** The shore of the Dead Sea and the top of Everest: nobody grows beyond. [m] */
const LOWEST_M = -430;
const HIGHEST_M = 8850;

export const PLACE_OPTIONS: readonly OptionSpec[] = [
  { name: 'lat', description: 'Latitude, such as 43.10 or 43°06′N; or both as a map gives them', kind: 'text' },
  { name: 'lon', description: 'Longitude, such as -76.30 or 76°18′W', kind: 'text' },
  { name: 'height', description: 'Height above the sea, such as 490 ft or 150 m', kind: 'text' },
  {
    name: 'exposure',
    description: 'How it lies; open ground unless you say',
    kind: 'text',
    choices: EXPOSURES.map((value) => ({ label: capitalised(EXPOSURE_WORDS[value]), value })),
  },
  {
    name: 'horizon',
    description: 'What hides the sun, such as S 10, SW 35, in degrees; a fist at arm’s length is 10',
    kind: 'text',
  },
  { name: 'name', description: 'What you call it, such as Home or Allotment', kind: 'text' },
];

export function placeSchema(units: UnitSystem) {
  return {
    lat: maybe((text) => read(text)),
    lon: maybe((text) => read(text)),
    height: maybe((text) => typedHeight(text, units)),
    exposure: maybe(oneOf('The exposure', EXPOSURES)),
    horizon: maybe(typedHorizon),
    name: maybe((text) => typedName(text, 'a site')),
  };
}

function typedHeight(text: string, units: UnitSystem): Read<number> {
  const height = typedLengthM(text, units === 'us' ? 'ft' : 'm');
  if (!height.ok) return height;
  const fits = height.value >= LOWEST_M && height.value <= HIGHEST_M;
  return fits ? height : unread(`A garden lies between −430 m (−1410 ft) and 8850 m (29,035 ft) above the sea.`);
}

/**
 * Coordinates with the time zone that holds there.
 *
 * @throws PlainProblem when they are not a place.
 */
export function placeFacts(
  lat: string,
  lon: string | undefined,
): Pick<SiteFacts, 'latitudeDeg' | 'longitudeDeg' | 'timeZone'> {
  const place = typedPlace(lat, lon);
  if (!place.ok) throw new PlainProblem(place.problem);
  return { ...place.value, timeZone: timeZoneOf(place.value.latitudeDeg, place.value.longitudeDeg) };
}
