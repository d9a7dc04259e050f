import type { Sense } from './sense.ts';

interface Node {
  readonly next: Map<string, Node>;
  readonly senses: Sense[];
}

const newNode = (): Node => ({ next: new Map(), senses: [] });

/** A phrase of the vocabulary found in a text. */
export interface Found {
  /** Words long. */
  readonly length: number;
  readonly senses: readonly Sense[];
}

/** Phrases by their words, so that a text is searched in one pass whatever the size of the vocabulary. */
export class PhraseTrie {
  readonly #root = newNode();

  add(words: readonly string[], sense: Sense): void {
    let node = this.#root;
    for (const word of words) {
      const next = node.next.get(word) ?? newNode();
      node.next.set(word, next);
      node = next;
    }
    node.senses.push(sense);
  }

  /** Every phrase that begins at a word of a text, shortest first. No more steps than the longest phrase has words. */
  phrasesAt(words: readonly string[], from: number): readonly Found[] {
    const found: Found[] = [];
    let node: Node | undefined = this.#root;
    for (let length = 1; ; length += 1) {
      const word = words[from + length - 1];
      node = word === undefined ? undefined : node.next.get(word);
      if (node === undefined) return found;
      if (node.senses.length > 0) found.push({ length, senses: node.senses });
    }
  }

  /** Every word of every phrase, and whether a phrase that holds it has such a meaning. */
  forEachWord(isSuch: (sense: Sense) => boolean, visit: (word: string, such: boolean) => void): void {
    const walk = (node: Node): boolean => {
      let such = node.senses.some(isSuch);
      for (const [word, next] of node.next) {
        const suchBelow = walk(next);
        visit(word, suchBelow);
        such ||= suchBelow;
      }
      return such;
    };
    walk(this.#root);
  }
}
