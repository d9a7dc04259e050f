import { type NewFileProblem, newFile } from '../ground/new-file.ts';

const ENDING = /\.png$/i;

type PictureProblem = NewFileProblem | 'not-png';

const PROBLEMS: Readonly<Record<PictureProblem, (file: string) => string>> = {
  'not-png': (file) => `A picture needs a name that ends in .png, such as night.png; I did not write ${file}.`,
  exists: (file) => `There is a file ${file} already, and I left it as it is; choose a new name for the picture.`,
  'cannot-write': (file) => `I could not write the picture to ${file}; name a file in a folder that exists.`,
};

/**
 * Writes a picture to a new file that ends in `.png`; any other name might be a file that the person needs.
 *
 * @returns What was wrong, as a sentence; `undefined` once it is written.
 */
export async function writtenPicture(file: string, png: Uint8Array): Promise<string | undefined> {
  const problem: PictureProblem | undefined = ENDING.test(file) ? await newFile(file, png) : 'not-png';
  return problem && PROBLEMS[problem](file);
}
