import { newFile } from '../../ground/new-file.ts';
import type { Reply } from '../../talk/reply.ts';

/** Names tried for one file; a person with more has to clear up. */
const MOST_NAMES = 100;

/** Writes the files that an answer hands out into this folder, under new names; says in a sentence each what came of it. */
export async function handedOut({ files = [] }: Reply, folder = '.'): Promise<readonly string[]> {
  return Promise.all(files.map(({ name, bytes }) => written(name, bytes, folder)));
}

async function written(name: string, bytes: Uint8Array, folder: string): Promise<string> {
  for (let count = 1; count <= MOST_NAMES; count += 1) {
    const file = numbered(name, count);
    const problem = await newFile(`${folder}/${file}`, bytes);
    if (problem === undefined) return `It is in the file ${file} in this folder; only you can read it.`;
    if (problem === 'cannot-write')
      return `I could not write ${file} here; start Eiderdown in a folder that you may write to.`;
  }
  return `There are ${MOST_NAMES} files named like ${name} here already; move them away and ask again.`;
}

/** "mydata.json", then "mydata-2.json". */
function numbered(name: string, count: number): string {
  return count === 1 ? name : name.replace(/(?=\.[^.]*$|$)/, `-${count}`);
}
