const WIDE = new Set('mwMWOQ½@%—');
const NARROW = new Set("fijltrI'.,:;()[]|!- ");
const WIDE_EM = 0.87;
const NARROW_EM = 0.4;
const USUAL_EM = 0.62;
/** What the font may not hold. */
const FOREIGN_EM = 1.05;
const BOLD_RATIO = 1.06;

/** About how wide a text is drawn, rather too wide than too narrow; in the pixels of the size given. */
export function textWidth(text: string, size: number, bold = false): number {
  let em = 0;
  for (const glyph of text) em += emOf(glyph);
  return em * size * (bold ? BOLD_RATIO : 1);
}

function emOf(glyph: string): number {
  if (WIDE.has(glyph)) return WIDE_EM;
  if (NARROW.has(glyph)) return NARROW_EM;
  return (glyph.codePointAt(0) ?? 0) < 0x250 || glyph === '−' ? USUAL_EM : FOREIGN_EM;
}

/** The text, ended by an ellipsis where it would be wider than there is room. */
export function fitted(text: string, size: number, room: number, bold = false): string {
  if (textWidth(text, size, bold) <= room) return text;
  const glyphs = [...text];
  while (glyphs.length > 0 && textWidth(`${glyphs.join('')}…`, size, bold) > room) glyphs.pop();
  return `${glyphs.join('').trimEnd()}…`;
}
