import { saidBack } from '../../text/phrases.ts';
import { type Read, read, unread } from './read.ts';

/** Short enough to stand in a line of a warning (judgement). */
const LONGEST_NAME = 40;

/**
 * A name that a member gives to something of theirs: one line of visible text.
 *
 * @param of - What is named, such as "a bed".
 */
export function typedName(text: string, of: string): Read<string> {
  const name = text.replace(/[\s\p{Cc}]+/gu, ' ').trim();
  if (!/[\p{L}\p{N}]/u.test(name)) return unread(`Give ${of} a name with a letter or a number in it.`);
  if (/\p{Cs}/u.test(name)) return unread(`The name of ${of} has half a character in it; take that out.`);
  if ([...name].length > LONGEST_NAME) {
    return unread(`"${saidBack(name, 20)}" is too long: the name of ${of} has at most ${LONGEST_NAME} characters.`);
  }
  return read(name);
}
