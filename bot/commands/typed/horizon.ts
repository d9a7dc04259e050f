import { saidBack } from '../../text/phrases.ts';
import { COMPASS, compassIndex } from './compass.ts';
import { type Read, read, unread } from './read.ts';

const OPEN = ['open', 'none', 'clear', '0'];
/** Under something higher nothing grows (judgement). [°] */
const HIGHEST_DEG = 85;
const HOW = 'write degrees by direction, such as S 10, SW 35, one number for all round, or open.';

/**
 * What hides the sun: "S 10, SW 35", one number for all round, or "open".
 *
 * @returns Heights evenly spaced round the compass, as a site keeps them: none where it is open, 0 where nothing is said. [°]
 */
export function typedHorizon(text: string): Read<readonly number[]> {
  const words = text
    .toLowerCase()
    .split(/[\s,;:°]/)
    .filter((word) => word !== '');
  const [first, ...others] = words;
  if (first === undefined) return unread(`I cannot read that as a horizon; ${HOW}`);
  if (others.length > 0) return byDirection(words);
  if (OPEN.includes(first)) return read([]);
  const allRound = heightDeg(first);
  return allRound === undefined
    ? unread(`I cannot read "${saidBack(text, 30)}" as a horizon; ${HOW}`)
    : read([allRound]);
}

function byDirection(words: readonly string[]): Read<readonly number[]> {
  const heights = COMPASS.map(() => 0);
  for (let at = 0; at < words.length; at += 2) {
    const direction = compassIndex(words[at] ?? '');
    if (direction === undefined) return unread(`"${saidBack(words[at] ?? '', 20)}" is no direction; ${HOW}`);
    const height = heightDeg(words[at + 1] ?? '');
    if (height === undefined)
      return unread(`What hides the sun in the ${COMPASS[direction]} is 0 to ${HIGHEST_DEG}° high; ${HOW}`);
    heights[direction] = height;
  }
  return read(heights);
}

function heightDeg(word: string): number | undefined {
  const height = Number(word);
  return word !== '' && height >= 0 && height <= HIGHEST_DEG ? height : undefined;
}
