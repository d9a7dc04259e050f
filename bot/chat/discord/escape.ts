/** Has a meaning to Discord wherever it stands: emphasis, code, spoilers, quotes, links, mentions, timestamps, emoji. */
const ALWAYS = new Set('\\*_~`|<>[]');

/** Keeps "@everyone" and the like from being one word, so that no client lights it up; it has no width. */
const AFTER_AT = '\u200b';

/**
 * Plain text as Discord shows it unchanged: nothing in it can become markup, a mention, a link or an emoji. The
 * library's own escaping leaves mentions, timestamps and bare links alive, and reads the text several times over.
 *
 * @param most - Longest result, in characters; a longer text ends in an ellipsis.
 */
export function escaped(text: string, most = Number.POSITIVE_INFINITY): string {
  const glyphs = [...plainLine(text)];
  const opening = openingMark(glyphs);
  let out = '';
  let dotted = false;
  for (const [index, glyph] of glyphs.entries()) {
    const marked = index === opening || needsMark(glyph, glyphs[index - 1], glyphs[index + 1], dotted);
    const piece = `${marked ? '\\' : ''}${glyph}${glyph === '@' ? AFTER_AT : ''}`;
    if (out.length + piece.length > most - 1 && !isLastThatFits(out, piece, most, index === glyphs.length - 1)) {
      return `${out.trimEnd()}…`;
    }
    out += piece;
    dotted = glyph !== ' ' && (dotted || glyph === '.');
  }
  return out;
}

/** The text as one line without control characters, broken surrogates, or marks that turn the direction of reading. */
export function plainLine(text: string): string {
  let out = '';
  for (const glyph of text) {
    const code = glyph.codePointAt(0) ?? 0;
    if (isBlank(code)) out += ' ';
    else if (code >= 0xd800 && code <= 0xdfff) out += '\ufffd';
    else out += glyph;
  }
  return out.trim();
}

function isBlank(code: number): boolean {
  const control = code < 32 || (code >= 127 && code < 160) || code === 0x2028 || code === 0x2029;
  const turnsDirection = (code >= 0x202a && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069);
  return control || turnsDirection;
}

function isLastThatFits(out: string, piece: string, most: number, last: boolean): boolean {
  return last && out.length + piece.length <= most;
}

/** Where a mark that has a meaning only at the start of a line stands: heading, list, small print. */
function openingMark(glyphs: readonly string[]): number | undefined {
  const [first, second] = glyphs;
  if (first === '#') return 0;
  if ((first === '-' || first === '+') && (second === ' ' || second === '#')) return 0;
  const afterDigits = glyphs.findIndex((glyph) => glyph < '0' || glyph > '9');
  return afterDigits > 0 && glyphs[afterDigits] === '.' ? afterDigits : undefined;
}

/** @param dotted - Whether a dot came before in the same word: an address without a scheme may follow. */
function needsMark(glyph: string, before: string | undefined, after: string | undefined, dotted: boolean): boolean {
  if (ALWAYS.has(glyph)) return true;
  if (glyph === '/') return dotted;
  if (glyph !== ':' || after === undefined || after === ' ') return false;
  // 21:30 stays as it is; ":name:" would be an emoji and "://" a link.
  return !(isDigit(before) && isDigit(after));
}

function isDigit(glyph: string | undefined): boolean {
  return glyph !== undefined && glyph >= '0' && glyph <= '9';
}
