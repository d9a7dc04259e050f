/** Just enough to write SVG safely: every text is escaped, every number is short. */
export function element(name: string, attributes: Readonly<Record<string, string | number>>, inner = ''): string {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(shown(value))}"`);
  return inner === '' ? `<${name}${written.join('')}/>` : `<${name}${written.join('')}>${inner}</${name}>`;
}

export function textAt(
  { x, y }: Point,
  words: string,
  attributes: Readonly<Record<string, string | number>> = {},
): string {
  return element('text', { x, y, ...attributes }, escaped(words));
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export function pathThrough(points: readonly Point[]): string {
  return points.map(({ x, y }, index) => `${index === 0 ? 'M' : 'L'}${shown(x)} ${shown(y)}`).join('');
}

function shown(value: string | number): string {
  return typeof value === 'number' ? String(Math.round(value * 100) / 100) : value;
}

/** XML knows no control characters but tab and line ends: any of them becomes a blank. */
function escaped(text: string): string {
  let plain = '';
  for (const glyph of text) plain += (glyph.codePointAt(0) ?? 0) < 32 ? ' ' : glyph;
  return plain.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
