import { writtenPicture } from '../../charts/picture-file.ts';
import type { Reply } from '../../talk/reply.ts';

/** Writes the picture of an answer; says in a sentence what came of it. */
export async function writtenChart({ picture }: Reply, file: string): Promise<string> {
  if (picture === undefined) return 'That answer has no picture; tonight, vent and record have one.';
  return (await writtenPicture(file, picture.png)) ?? `The picture is in ${file}.`;
}
