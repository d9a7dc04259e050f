import type { Reply } from './reply.ts';

/**
 * A reply as plain lines for a terminal or a pipe. Control characters of typed text are dropped, so that nobody's words
 * can move the cursor or colour the screen.
 *
 * @param width - Longest line, in characters; words longer than it stand alone.
 */
export function drawn(reply: Reply, width = 80): string {
  const blocks: string[] = [wrapped(reply.headline, width)];
  for (const section of reply.sections) {
    const title = section.title === undefined ? [] : [wrapped(`${section.title}:`, width)];
    const indent = section.title === undefined ? '' : '  ';
    blocks.push([...title, ...section.lines.map((line) => wrapped(line, width, indent))].join('\n'));
  }
  if (reply.picture?.text !== undefined) blocks.push(picture(reply.picture.text, width));
  if (reply.cautions !== undefined && reply.cautions.length > 0) {
    blocks.push(reply.cautions.map((caution) => wrapped(`Caution: ${caution}`, width)).join('\n'));
  }
  if (reply.form !== undefined) {
    blocks.push(reply.form.fields.map((field) => `${field.label}:`).join('\n'));
  }
  if (reply.credits !== undefined && reply.credits.length > 0) {
    blocks.push(reply.credits.map((credit) => `${clean(credit.text)} (${credit.url})`).join('\n'));
  }
  return blocks.filter((block) => block !== '').join('\n\n');
}

/** A drawing in characters keeps its shape, or is left out with a word. */
function picture(lines: readonly string[], width: number): string {
  const widest = Math.max(...lines.map(({ length }) => length));
  if (widest > width) return wrapped(`(The curve is left out: it needs a window of ${widest} columns.)`, width);
  return lines.map(clean).join('\n');
}

/** Marks that change the direction of what follows: on a terminal they could turn a sentence round. */
const DIRECTION_MARKS = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/g;

/** The text with a blank in place of each control character, and without marks of direction. */
function clean(text: string): string {
  let out = '';
  for (const glyph of text.replace(DIRECTION_MARKS, '')) {
    const code = glyph.codePointAt(0) ?? 0;
    out += code < 32 || (code >= 127 && code < 160) ? ' ' : glyph;
  }
  return out;
}

/** Lines of at most `width` characters, those after the first indented by two more; a longer word stands alone. */
function wrapped(text: string, width: number, indent = ''): string {
  const lines: string[] = [];
  let line = indent;
  let isBegun = false;
  for (const word of clean(text).split(' ')) {
    if (isBegun && line.length + 1 + word.length > width) {
      lines.push(line);
      line = `${indent}  ${word}`;
    } else {
      line = isBegun ? `${line} ${word}` : `${line}${word}`;
    }
    isBegun = true;
  }
  return [...lines, line].join('\n');
}
