import { saidBack } from '../../text/phrases.ts';
import { type Read, read, unread } from './read.ts';

type Axis = 'latitude' | 'longitude';

export interface Angle {
  readonly deg: number;
  /** Which way it runs, where a letter of the compass tells. */
  readonly axis?: Axis;
}

const AXIS_OF: Readonly<Record<string, Axis>> = { N: 'latitude', S: 'latitude', E: 'longitude', W: 'longitude' };
const NUMBER = /\d+(?:[.,]\d+)?/g;
/** What may stand around the numbers besides a sign and a letter of the compass. */
const MARKS = /degrees|degree|deg|minutes|minute|min|seconds|second|sec|[°º˚'’′"”″:\s]/gi;
const PARTS_PER_DEGREE = [1, 60, 3600];

/** One coordinate in any common form: 43.1, −76,3, 43°06′N, N 43 6 12, 43:06:12 S. */
export function typedAngle(text: string): Read<Angle> {
  const numbers = (text.match(NUMBER) ?? []).map((number) => Number(number.replace(',', '.')));
  const rest = text.replace(NUMBER, '').replace(MARKS, '').replaceAll('−', '-').toUpperCase();
  const [whole, ...parts] = numbers;
  if (whole === undefined || numbers.length > PARTS_PER_DEGREE.length || !/^[+-]?[NSEW]?$/.test(rest)) {
    return unread(`I cannot read "${saidBack(text)}" as a coordinate.`);
  }
  if (parts.some((part) => part >= 60)) return unread('Minutes and seconds of a coordinate run from 0 to 59.');
  const letter = rest.replace(/[+-]/, '');
  if (letter !== '' && letter !== rest)
    return unread('Write a coordinate with a sign or with a letter, not with both.');
  const deg = numbers.reduce((sum, part, index) => sum + part / (PARTS_PER_DEGREE[index] ?? 1), 0);
  const axis = AXIS_OF[letter];
  const isNegative = rest.startsWith('-') || letter === 'S' || letter === 'W';
  return read({ deg: isNegative ? -deg : deg, ...(axis !== undefined && { axis }) });
}
