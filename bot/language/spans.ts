import { withPairsMended } from './cover-pairs.ts';
import { isNearOrdinaryWord } from './near-ordinary.ts';
import { OTHER_NUMBERS, TEN_NUMBERS, UNIT_NUMBERS } from './number-words-table.ts';
import { isOrdinaryWord } from './ordinary-words.ts';
import { type Found, PhraseTrie } from './phrase-trie.ts';
import { wordsOf } from './phrases.ts';
import type { Sense } from './sense.ts';
import { withSignsMended } from './sign-slips.ts';
import type { Span } from './span.ts';
import { numberOf, type Token, tokensOf } from './tokens.ts';
import type { Vocabulary } from './vocabulary.ts';

const ORDINARY: readonly Sense[] = [{ kind: 'ordinary' }];

/** What an answer turns on; where two ways of cutting a text are equally long, these are kept whole. */
const TELLING: ReadonlySet<Sense['kind']> = new Set([
  'crop',
  'plant',
  'cover',
  'other-cover',
  'bare',
  'hazard',
  'state',
  'bed',
  'when',
]);

/**
 * Cuts a text into the phrases that explain most of it: of all ways to cut, the one with the longest and most telling
 * phrases. Linear in the length of the text: at each word no more phrases are tried than the longest has words.
 */
export function spansOf(
  text: string,
  { trie, spelling, pairs }: Vocabulary,
  bedNames: readonly string[] = [],
): readonly Span[] {
  const tokens = tokensOf(text);
  const meant = tokens.map((token) => (token.kind === 'word' ? spelling.meant(token.plain) : token.plain));
  const words = withSignsMended(withPairsMended(meant, pairs));
  const beds = bedTrie(bedNames, spelling);
  const cuts = bestCuts(words, (from) => [...trie.phrasesAt(words, from), ...beds.phrasesAt(words, from)]);
  const spans: Span[] = [];
  let from = 0;
  while (from < tokens.length) {
    const cut = cuts[from];
    const length = cut?.length ?? numberLength(words, from);
    spans.push(spanAt({ tokens, words, from, length }, cut));
    from += length;
  }
  return spans;
}

/** "Long frame" is a bed where the member calls one so, and names no cover; a name of one word keeps its other meanings. */
function bedTrie(bedNames: readonly string[], spelling: Vocabulary['spelling']): PhraseTrie {
  const trie = new PhraseTrie();
  for (const name of bedNames) {
    const words = wordsOf(name).map((word) => spelling.meant(word));
    if (words.length > 1) trie.add(words, { kind: 'bed', name });
  }
  return trie;
}

/** The phrase to take at each word, if any, so that the sum of the weights is greatest. Worked from the end. */
function bestCuts(
  words: readonly string[],
  phrasesAt: (from: number) => readonly Found[],
): readonly (Found | undefined)[] {
  const cuts = new Array<Found | undefined>(words.length).fill(undefined);
  const weights = new Array<number>(words.length + 1).fill(0);
  for (let from = words.length - 1; from >= 0; from -= 1) {
    weights[from] = weights[from + 1] ?? 0;
    for (const found of phrasesAt(from)) {
      const weight = weightOf(found) + (weights[from + found.length] ?? 0);
      if (weight < (weights[from] ?? 0)) continue;
      weights[from] = weight;
      cuts[from] = found;
    }
  }
  return cuts;
}

function weightOf({ length, senses }: Found): number {
  const telling = senses.some((sense) => TELLING.has(sense.kind));
  return length * length * (telling ? 2 : 1) + (telling ? 0.5 : 0);
}

interface Piece {
  readonly tokens: readonly Token[];
  readonly words: readonly string[];
  readonly from: number;
  readonly length: number;
}

function spanAt({ tokens, words, from, length }: Piece, cut: Found | undefined): Span {
  const piece = tokens.slice(from, from + length);
  const first = piece[0];
  const plain = words.slice(from, from + length).join(' ');
  const value = numberValue(piece, plain);
  return {
    kind: kindOf(first, cut, value),
    senses: cut?.senses ?? (isEnglish(plain) ? ORDINARY : []),
    plain,
    said: saidOf(piece),
    glued: first?.glued ?? false,
    corrected: piece.some((token, index) => token.kind === 'word' && token.plain !== words[from + index]),
    ...(value !== undefined && cut === undefined && { value }),
  };
}

/** Plain English, with a slip of the finger or without. */
function isEnglish(plain: string): boolean {
  return isOrdinaryWord(plain) || (plain.length >= SHORTEST_WITH_SLIP && isNearOrdinaryWord(plain));
}

/** Shorter words are a slip away from too many others. */
const SHORTEST_WITH_SLIP = 6;

function kindOf(first: Token | undefined, cut: Found | undefined, value: number | undefined): Span['kind'] {
  if (cut !== undefined) return 'phrase';
  if (value !== undefined) return 'number';
  if (first?.kind === 'mark') return 'mark';
  return first !== undefined && isEnglish(first.plain) ? 'phrase' : 'unexplained';
}

function saidOf(piece: readonly Token[]): string {
  return piece.map((token, index) => (index > 0 && !token.glued ? ` ${token.said}` : token.said)).join('');
}

function numberLength(words: readonly string[], from: number): number {
  const tens = TEN_NUMBERS.has(words[from] ?? '');
  const units = UNIT_NUMBERS.get(words[from + 1] ?? '');
  return tens && units !== undefined && units > 0 && units < 10 ? 2 : 1;
}

function numberValue(piece: readonly Token[], plain: string): number | undefined {
  const [first] = piece;
  if (first?.kind === 'number') return piece.length === 1 ? numberOf(first) : undefined;
  const [word = '', second = ''] = plain.split(' ');
  const tens = TEN_NUMBERS.get(word);
  if (tens !== undefined) return tens + (UNIT_NUMBERS.get(second) ?? 0);
  return UNIT_NUMBERS.get(word) ?? OTHER_NUMBERS.get(word);
}
