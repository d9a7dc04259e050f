/** A typed line, and the files named after it. */
export interface LineWithFiles {
  readonly line: string;
  /** Where the picture of the answer is to be written. */
  readonly chart?: string;
  /** A saved answer of a forecast service to go by. */
  readonly forecast?: string;
}

/** A file's name ends at the next such word; it may be quoted. */
const FILE_OF = /\s--(?<word>chart|forecast)\s+(?<file>"[^"]*"|(?:(?!\s--(?:chart|forecast)\s)[^"])+)/g;

/** "tonight --forecast saved.json --chart night.png": the line before it, and the files named after it. */
export function lineWithFiles(text: string): LineWithFiles {
  const found = [...text.matchAll(FILE_OF)].flatMap(({ groups }) => {
    const file = groups?.['file']?.replaceAll('"', '').trim();
    return file ? [[groups?.['word'], file] as const] : [];
  });
  if (found.length === 0) return { line: text };
  return { line: text.slice(0, text.search(FILE_OF)).trim(), ...Object.fromEntries(found) };
}
