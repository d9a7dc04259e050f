import { readFile } from 'node:fs/promises';
import { PlainProblem } from '../ground/errors.ts';
import type { HourlyForecast } from './forecast.ts';
import { readSavedForecast } from './recorded.ts';

/**
 * A saved answer of a service, from its file.
 *
 * @throws PlainProblem when the file cannot be read, or holds no forecast.
 */
export async function savedFile(file: string): Promise<HourlyForecast> {
  return readSavedForecast(await textOf(file));
}

async function textOf(file: string): Promise<string> {
  try {
    return await readFile(file, 'utf8');
  } catch {
    throw new PlainProblem(`I can't read the file ${file}; check its name and the folder it is in.`);
  }
}
