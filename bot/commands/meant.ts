import { PlainProblem } from '../ground/errors.ts';
import { list, saidBack } from '../text/phrases.ts';

/** Something of a member's own, by its id and by what the member calls it. */
export interface OwnThing {
  readonly id: string;
  readonly name: string;
  /** The name with what tells it from another of the same name. */
  readonly label: string;
}

/**
 * The one that is meant: by its id, its label, its name, or the beginning of its name.
 *
 * @param what - What kind of thing it is, such as "bed".
 * @throws PlainProblem that names the ones there are.
 */
export function meant<T extends OwnThing>(own: readonly T[], typed: string, what: string): T {
  const plain = key(typed);
  const ways: readonly ((thing: T) => boolean)[] = [
    ({ id }) => id === typed,
    ({ label }) => key(label) === plain,
    ({ name }) => key(name) === plain,
    ({ name }) => key(name).startsWith(plain),
  ];
  for (const way of ways) {
    const [one, ...others] = own.filter(way);
    if (one === undefined) continue;
    if (others.length === 0) return one;
    const labels = list(
      [one, ...others].map(({ label }) => label),
      'or',
    );
    throw new PlainProblem(`Which ${what} do you mean: ${labels}?`);
  }
  const names = list(own.map(({ label }) => label));
  throw new PlainProblem(`You have no ${what} called "${saidBack(typed)}". You have ${names}.`);
}

function key(name: string): string {
  return name.normalize('NFKC').toLowerCase();
}
