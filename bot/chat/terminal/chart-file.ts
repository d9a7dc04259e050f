import { writtenPicture } from '../../charts/picture-file.ts';
import type { Reply } from '../../talk/reply.ts';

const WORD = ' --chart ';

export interface LineWithChart {
  readonly line: string;
  /** Where the picture of the answer is to be written. */
  readonly file?: string;
}

/** "tonight --chart night.png": the line before it, and the file named after it. */
export function chartAsked(text: string): LineWithChart {
  const at = text.lastIndexOf(WORD);
  const file =
    at < 0
      ? ''
      : text
          .slice(at + WORD.length)
          .replaceAll('"', '')
          .trim();
  return file === '' ? { line: text } : { line: text.slice(0, at).trim(), file };
}

/** Writes the picture of an answer; says in a sentence what came of it. */
export async function writtenChart({ picture }: Reply, file: string): Promise<string> {
  if (picture === undefined) return 'That answer has no picture; tonight, vent and record have one.';
  return (await writtenPicture(file, picture.png)) ?? `The picture is in ${file}.`;
}
