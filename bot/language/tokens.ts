import { cleanText, plainWord } from './clean-text.ts';

export interface Token {
  readonly kind: 'word' | 'number' | 'mark';
  /** As it is looked up. */
  readonly plain: string;
  /** As typed. */
  readonly said: string;
  /** No space between this one and the one before. */
  readonly glued: boolean;
}

/** A word, a number with at most two decimals, or any other single character; nothing here can back-track. */
const TOKEN = /\p{L}[\p{L}\p{M}']*|\d+(?:[.,]\d{1,2}(?!\d)|e\d{1,2}(?!\d))?|\.\d{1,2}(?!\d)|[^\s\p{L}\d]/gu;

/** Words, numbers and marks of a text in order. Linear in its length. */
export function tokensOf(text: string): readonly Token[] {
  const clean = cleanText(text);
  const tokens: Token[] = [];
  let end = 0;
  for (const match of clean.matchAll(TOKEN)) {
    const said = match[0];
    tokens.push({ kind: kindOf(said), plain: plainWord(said), said, glued: tokens.length > 0 && match.index === end });
    end = match.index + said.length;
  }
  return tokens.filter((token, index) => !isJoint(token, tokens[index - 1], tokens[index + 1]));
}

/** The hyphen of "low-tunnel" and "30-gram"; that of "12-15" and "-10" says something. */
function isJoint(token: Token, before: Token | undefined, after: Token | undefined): boolean {
  if (token.plain !== '-' || !token.glued || !after?.glued || before === undefined) return false;
  return after.kind === 'word' && before.kind !== 'mark';
}

function kindOf(said: string): Token['kind'] {
  if (/^\.?\d/.test(said)) return 'number';
  return /^\p{L}/u.test(said) ? 'word' : 'mark';
}

/** The value of a number token; a decimal comma counts as a point. */
export function numberOf(token: Token): number {
  return Number(token.plain.replace(',', '.'));
}
