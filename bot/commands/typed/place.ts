import { type Angle, typedAngle } from './angle.ts';
import { type Read, read, unread } from './read.ts';

export interface TypedPlace {
  /** North positive. [°, −90…90] */
  readonly latitudeDeg: number;
  /** East positive. [°, −180…180] */
  readonly longitudeDeg: number;
}

const LIKE_THIS = 'Write them as a map shows them: 43.10, -76.30 or 43°06′N 76°18′W.';

/**
 * A place from its coordinates, in any common form.
 *
 * @param lat - The latitude, or both coordinates as a map gives them to copy.
 * @param lon - The longitude; absent where `lat` holds both.
 */
export function typedPlace(lat: string, lon: string | undefined): Read<TypedPlace> {
  const halves = lon === undefined ? halvesOf(bare(lat)) : ([bare(lat), bare(lon)] as const);
  if (halves === undefined) return unread(`I need a latitude and a longitude. ${LIKE_THIS}`);
  const [first, second] = [typedAngle(halves[0]), typedAngle(halves[1])];
  if (!first.ok) return unread(`${first.problem} ${LIKE_THIS}`);
  return second.ok ? placed(first.value, second.value) : unread(`${second.problem} ${LIKE_THIS}`);
}

function placed(first: Angle, second: Angle): Read<TypedPlace> {
  if (first.axis !== undefined && first.axis === second.axis) {
    return unread(`Both coordinates are a ${first.axis}; I need a latitude and a longitude.`);
  }
  const turned = first.axis === 'longitude' || second.axis === 'latitude';
  const [lat, lon] = turned ? [second.deg, first.deg] : [first.deg, second.deg];
  if (Math.abs(lat) > 90) {
    const swapped = Math.abs(lat) <= 180 && Math.abs(lon) <= 90 ? ' Perhaps latitude and longitude are swapped.' : '';
    return unread(`Latitude ${shown(lat)} is off the globe: it runs from −90 (south) to 90 (north).${swapped}`);
  }
  if (Math.abs(lon) > 180) {
    return unread(`Longitude ${shown(lon)} is off the globe: it runs from −180 (west) to 180 (east).`);
  }
  return read({ latitudeDeg: lat, longitudeDeg: lon });
}

/** Without the words that say which is which; the compass by its letters. */
function bare(text: string): string {
  return text
    .replace(/\b(?:latitude|longitude|lat|long|lon|lng)\b[:=]?/gi, ' ')
    .replace(/\b(?:north|south|east|west)\b/gi, (word) => word.charAt(0))
    .trim();
}

/** "43.1N 76.3W", "43.1; -76.3", "43.1, -76.3", "48.2083,16.3725", "48,2083 16,3725", "43 06 -76 18". */
function halvesOf(text: string): readonly [string, string] | undefined {
  return lettered(text) ?? parted(text, ';') ?? parted(text, ', ') ?? parted(text, ',') ?? blankParted(text);
}

/** Cut after the first letter of the compass where the letters follow their numbers, else before the second. */
function lettered(text: string): readonly [string, string] | undefined {
  const [first, second] = [...text.matchAll(/[NSEW](?![A-Za-z])/gi)].map((match) => match.index);
  if (first === undefined || second === undefined) return undefined;
  const cut = first === 0 ? second : first + 1;
  const half = (part: string) => part.trim().replace(/^[,;]/, '').replace(/[,;]$/, '');
  return [half(text.slice(0, cut)), half(text.slice(cut))];
}

function parted(text: string, at: string): readonly [string, string] | undefined {
  const [first, second, ...more] = text.split(at);
  return first === undefined || second === undefined || more.length > 0 ? undefined : [first, second];
}

function blankParted(text: string): readonly [string, string] | undefined {
  const words = text.split(/\s+/);
  const half = words.length / 2;
  return Number.isInteger(half) ? [words.slice(0, half).join(' '), words.slice(half).join(' ')] : undefined;
}

function shown(deg: number): string {
  return `${deg < 0 ? '−' : ''}${Math.abs(Math.round(deg * 100) / 100)}`;
}
