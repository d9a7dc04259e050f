/** Round the compass from north through east. */
export const COMPASS = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
] as const;
export type CompassPoint = (typeof COMPASS)[number];

export const DEG_PER_POINT = 360 / COMPASS.length;

const LETTERS = ['n', 'ne', 'e', 'se', 's', 'sw', 'w', 'nw'];

/** The number of a point in {@link COMPASS}, from "south-west", "southwest" or "SW"; undefined where it is none. */
export function compassIndex(word: string): number | undefined {
  const plain = word.toLowerCase().replaceAll('-', '');
  const index = COMPASS.findIndex((point, at) => plain === LETTERS[at] || plain === point.replace('-', ''));
  return index < 0 ? undefined : index;
}

/** The point that is nearest to an azimuth. */
export function compassPoint(azimuthDeg: number): CompassPoint {
  const turn = Math.round(azimuthDeg / DEG_PER_POINT) % COMPASS.length;
  return COMPASS[(turn + COMPASS.length) % COMPASS.length] ?? 'north';
}
