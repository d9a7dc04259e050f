import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { FIXTURE_NOW, FIXTURE_PLACE, fixture } from '../../fakes/forecast-services.ts';
import { ran } from './program.ts';

let folder: string;
let words: readonly string[];
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'eiderdown-chart-'));
  const forecast = join(folder, 'grid.json');
  await writeFile(forecast, fixture('nws-grid.json'));
  const { latitudeDeg, longitudeDeg } = FIXTURE_PLACE;
  const place = ['--lat', String(latitudeDeg), '--lon', String(longitudeDeg)];
  const when = ['--at', FIXTURE_NOW.toISOString()];
  words = ['--forecast', forecast, ...place, ...when, '--bed', 'kale under low tunnel'];
});
afterAll(() => rm(folder, { recursive: true, force: true }));

test('tonight draws the curve in characters, and writes the picture where it is told to', async () => {
  const file = join(folder, 'night.png');
  const { code, out, err } = await ran('cli/tonight', [...words, '--chart', file]);
  expect([code, err]).toEqual([0, '']);
  expect(out).toMatch(/\. outside {3}\* leaf/);
  expect(out).toMatch(/kale marks −?\d+°/);
  expect([...(await readFile(file)).subarray(1, 4)]).toEqual([...Buffer.from('PNG')]);
});

test('without a file it draws the curve all the same', async () => {
  expect((await ran('cli/tonight', words)).out).toMatch(/\. outside {3}\* leaf/);
});

test('a folder that is not there is told in one sentence', async () => {
  const { code, err } = await ran('cli/tonight', [...words, '--chart', join(folder, 'missing', 'night.png')]);
  expect(code).toBe(1);
  expect(err).toMatch(/^I could not write the picture to .+; name a file in a folder that exists\.\n$/);
});

test('a file that is no picture is not overwritten, and the night is told all the same', async () => {
  const file = join(folder, 'notes.txt');
  await writeFile(file, 'mine');
  const { code, out, err } = await ran('cli/tonight', [...words, '--chart', file]);
  expect([code, await readFile(file, 'utf8')]).toEqual([1, 'mine']);
  expect(err).toContain('needs a name that ends in .png');
  expect(out).toContain('kale');
});
