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
  if (reply.picture?.text !== undefined) blocks.push(reply.picture.text.map(clean).join('\n'));
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

/** The text with a blank in place of each control character. */
function clean(text: string): string {
  let out = '';
  for (const glyph of text) {
    const code = glyph.codePointAt(0) ?? 0;
    out += code < 32 || (code >= 127 && code < 160) ? ' ' : glyph;
  }
  return out;
}

function wrapped(text: string, width: number, indent = ''): string {
  const lines: string[] = [];
  let line = '';
  for (const word of clean(text).split(' ')) {
    if (line !== '' && indent.length + line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else {
      line = line === '' ? word : `${line} ${word}`;
    }
  }
  lines.push(line);
  return lines.map((each, index) => `${index === 0 ? indent : `${indent}  `}${each}`).join('\n');
}
