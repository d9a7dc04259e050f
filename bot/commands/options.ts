import { z } from 'zod';
import { PlainProblem } from '../ground/errors.ts';
import type { Request } from '../talk/request.ts';
import { list } from '../text/phrases.ts';
import { type Read, read, unread } from './typed/read.ts';

/** More than any option needs; what reads it never sees a longer text. */
const LONGEST_TYPED = 300;

/**
 * The options of a request as an action wants them.
 *
 * @throws PlainProblem that says what was wrong with the first faulty one and what would be right.
 */
export function checkedOptions<S extends z.ZodType>(request: Pick<Request, 'options'>, schema: S): z.output<S> {
  const parsed = schema.safeParse(request.options);
  if (parsed.success) return parsed.data;
  throw new PlainProblem(parsed.error.issues[0]?.message ?? 'I cannot read one of the options.');
}

/**
 * An option as typed. Doors with fields of their own hand on numbers and yes or no as such; all are read alike.
 *
 * @param missing - What to say when it is not there.
 */
export function option<T>(missing: string, reading: (text: string) => Read<T>) {
  return z.union([z.string(), z.number(), z.boolean()], missing).transform((value, context) => {
    const text = String(value).trim();
    const found =
      text.length > LONGEST_TYPED ? unread(`That is too long: at most ${LONGEST_TYPED} characters.`) : reading(text);
    if (found.ok) return found.value;
    context.addIssue(found.problem);
    return z.NEVER;
  });
}

/** An option that may be left out. */
export function maybe<T>(reading: (text: string) => Read<T>) {
  return option('', reading).optional();
}

export function yesNo(name: string): (text: string) => Read<boolean> {
  return (text) => {
    const word = text.toLowerCase();
    if (['yes', 'y', 'true', 'on'].includes(word)) return read(true);
    if (['no', 'n', 'false', 'off'].includes(word)) return read(false);
    return unread(`Answer ${name} with yes or no.`);
  };
}

/** One of a few keys, written with blanks or dashes. */
export function oneOf<K extends string>(name: string, keys: readonly K[]): (text: string) => Read<K> {
  return (text) => {
    const word = text.toLowerCase().replace(/\s+/g, '-');
    const key = keys.find((each) => each === word);
    return key === undefined ? unread(`${name} is one of ${list(keys, 'or')}.`) : read(key);
  };
}

export function wholeNumber(name: string, least: number, most: number): (text: string) => Read<number> {
  return (text) => {
    const number = Number(text);
    const fits = text !== '' && Number.isInteger(number) && number >= least && number <= most;
    return fits ? read(number) : unread(`${name} is a whole number from ${least} to ${most}.`);
  };
}
