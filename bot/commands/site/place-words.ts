import type { Exposure, Site } from '../../store/port/sites.ts';
import type { Reader } from '../../text/reader.ts';

export const EXPOSURE_WORDS: Readonly<Record<Exposure, string>> = {
  open: 'open, level ground',
  sheltered: 'sheltered by hedge or fence',
  hollow: 'frost hollow or valley floor',
  ridge: 'ridge or hilltop',
  wall: 'beside a house wall',
};

/** "43.1° N, 76.3° W". Only ever for the member's own eyes. */
export function coordinateWords({ latitudeDeg, longitudeDeg }: Pick<Site, 'latitudeDeg' | 'longitudeDeg'>): string {
  const half = (deg: number, positive: string, negative: string) =>
    `${Math.round(Math.abs(deg) * 10_000) / 10_000}° ${deg < 0 ? negative : positive}`;
  return `${half(latitudeDeg, 'N', 'S')}, ${half(longitudeDeg, 'E', 'W')}`;
}

/** "490 ft above the sea". */
export function heightWords(heightM: number | undefined, { units }: Reader): string {
  if (heightM === undefined) return 'height not told';
  return units === 'us' ? `${Math.round(heightM / 0.3048)} ft above the sea` : `${Math.round(heightM)} m above the sea`;
}
