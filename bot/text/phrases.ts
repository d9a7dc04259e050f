/** Small words of English that several replies need. */

/** "a", "a and b", "a, b and c". */
export function list(words: readonly string[], last = 'and'): string {
  if (words.length <= 1) return words[0] ?? '';
  return `${words.slice(0, -1).join(', ')} ${last} ${words.at(-1)}`;
}

export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "1 bed", "3 beds". */
export function counted(count: number, singular: string, plural = `${singular}s`): string {
  return `${count} ${count === 1 ? singular : plural}`;
}

/** What a person typed, shortened and on one line, for saying it back. */
export function saidBack(text: string, most = 60): string {
  const line = text.replace(/\s+/g, ' ').trim();
  const glyphs = [...line];
  return glyphs.length <= most ? line : `${glyphs.slice(0, most - 1).join('')}…`;
}
