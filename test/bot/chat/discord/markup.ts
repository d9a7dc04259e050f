/**
 * What Discord would still read as markup in a text, by its documented and observed grammar. Written apart from the
 * escaping, by the other way round: it takes away what a backslash holds down, and looks at what is left.
 */
export function liveMarkup(text: string): string[] {
  const left = text.replace(/\\[^0-9A-Za-z\s]/gu, '\u0001');
  const found: string[] = [];
  const look = (name: string, pattern: RegExp) => {
    if (pattern.test(left)) found.push(name);
  };
  look('emphasis, code, spoiler', /[*_~`|]/);
  look('mention, channel, timestamp, emoji, link in brackets', /</);
  look('masked link', /\[/);
  look('bare link', /[a-z][a-z0-9+.-]*:\/\//i);
  look('bare address', /[a-z0-9-]+\.[a-z]{2,}\//i);
  look('everyone', /@(everyone|here)/);
  look('emoji by name', /:[A-Za-z_+-][^\s:]*:/);
  look('heading or small print', /^\s*-?#/m);
  look('quote', /^\s*>/m);
  look('list', /^\s*([-+]|\d+\.) /m);
  look('a backslash of its own', /\\$/);
  return found;
}

/** The text as Discord would show it: backslashes that hold something down go, and so does what has no width. */
export function shownText(text: string): string {
  return text.replace(/\\([^0-9A-Za-z\s])/gu, '$1').replaceAll('@\u200b', '@');
}
