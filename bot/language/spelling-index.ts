import { slipsBetween } from './edit-distance.ts';
import { oneSlipFrom } from './one-slip.ts';
import { isOrdinaryWord } from './ordinary-words.ts';

/** Shorter words have too many neighbours. */
const SHORTEST_CORRECTED = 5;
const SHORTEST_CRITICAL = 4;

/** Slips in denials too short to be looked for. */
const COMMON_SLIPS: ReadonlyMap<string, string> = new Map([
  ['nto', 'not'],
  ['nt', 'not'],
  ['nott', 'not'],
  ['noo', 'no'],
  ['nno', 'no'],
  ['noone', 'nobody'],
  ['fie', 'five'],
  ['fve', 'five'],
  ['fiv', 'five'],
  ['nie', 'nine'],
  ['nne', 'nine'],
  ['zro', 'zero'],
  ['zeo', 'zero'],
  ['thee', 'three'],
  ['kle', 'kale'],
  ['kae', 'kale'],
  ['kal', 'kale'],
  ['pes', 'peas'],
  ['pas', 'peas'],
  ['trp', 'tarp'],
  ['bre', 'bare'],
  ['bae', 'bare'],
  ['wiht', 'with'],
  ['wtih', 'with'],
  ['witout', 'without'],
]);

const SHORTEST_WITH_TWO_SLIPS = 8;
/** Longer than any word of the vocabulary with its slips. */
const LONGEST_CORRECTED = 24;

/** Letters that sound alike at the beginning of a word. */
const FIRST_LETTERS_ALIKE: readonly string[] = ['cks', 'gj', 'fp', 'iey'];

/** Finds the word that a misspelt one was meant to be, if there is one it can hardly fail to be. */
export class SpellingIndex {
  readonly #known = new Set<string>();
  readonly #critical: string[] = [];
  readonly #usual = new Set<string>();
  readonly #byFirstLetter = new Map<string, Set<string>>();

  /** A word that stands as typed. */
  know(word: string): void {
    this.#known.add(word);
  }

  /** A word that a misspelt one may become. */
  offer(word: string): void {
    if (word.length < SHORTEST_CORRECTED) return;
    for (const letter of lettersLike(word.charAt(0))) {
      const words = this.#byFirstLetter.get(letter) ?? new Set();
      this.#byFirstLetter.set(letter, words.add(word));
    }
  }

  /** A word that a slip may be of, where it is like nothing of more weight. */
  offerUsual(word: string): void {
    this.#usual.add(word);
  }

  /** A word that turns an answer round; shorter slips count, and it comes before any other. */
  offerCritical(word: string): void {
    this.#known.add(word);
    this.#critical.push(word);
  }

  /** Such a word that is one slip away; short words only by letters added, dropped or swapped. */
  #criticalMeant(word: string): string | undefined {
    if (word.length < SHORTEST_CRITICAL || word.length > LONGEST_CORRECTED) return undefined;
    return this.#critical.find(
      (candidate) => candidate.length >= SHORTEST_CRITICAL && slipsBetween(word, candidate, 1) === 1,
    );
  }

  /** The word as it was meant; the word itself when it is known, ordinary English, or like nothing. */
  meant(word: string): string {
    const common = COMMON_SLIPS.get(word);
    if (common !== undefined) return common;
    if (word.length < SHORTEST_CRITICAL || word.length > LONGEST_CORRECTED) return word;
    if (this.#known.has(word) || isOrdinaryWord(word)) return word;
    const critical = this.#criticalMeant(word);
    if (critical !== undefined) return critical;
    if (word.length < SHORTEST_CORRECTED) return this.#usualMeant(word);
    const nearest = this.#nearest(word);
    return nearest === word ? this.#usualMeant(word) : nearest;
  }

  /** Any word of the vocabulary that is one slip away. */
  #usualMeant(word: string): string {
    return oneSlipFrom(word, (slip) => slip.length >= SHORTEST_CRITICAL && this.#usual.has(slip)) ?? word;
  }

  #nearest(word: string): string {
    let best = word;
    let fewest = word.length >= SHORTEST_WITH_TWO_SLIPS ? 3 : 2;
    for (const candidate of this.#byFirstLetter.get(word.charAt(0)) ?? []) {
      const slips = slipsBetween(word, candidate, fewest - 1);
      if (slips >= fewest) continue;
      fewest = slips;
      best = candidate;
    }
    return best;
  }
}

function lettersLike(letter: string): readonly string[] {
  const alike = FIRST_LETTERS_ALIKE.filter((letters) => letters.includes(letter)).flatMap((letters) => [...letters]);
  return [letter, ...alike];
}
