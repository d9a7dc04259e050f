import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { writtenChart } from '../../../../bot/chat/terminal/chart-file.ts';
import { sampleDay } from '../../../../bot/sample/sample-day.ts';
import { sampleWarning } from '../../../../bot/sample/sample-warning.ts';
import { readerOf } from '../../../../bot/text/reader.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'eiderdown-chart-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const READER = readerOf('en-US');

test.each([
  ['night', sampleWarning],
  ['day', sampleDay],
] as const)(
  'the picture of the sample %s is written, and drawn in characters within 80 columns',
  async (_name, sample) => {
    const reply = await sample(READER);
    const file = join(folder, 'curve.png');
    expect(await writtenChart(reply, file)).toBe(`The picture is in ${file}.`);
    expect([...(await readFile(file)).subarray(1, 4)]).toEqual([...Buffer.from('PNG')]);
    const lines = reply.picture?.text ?? [];
    expect(lines.length).toBeGreaterThan(10);
    expect(Math.max(...lines.map(({ length }) => length))).toBeLessThanOrEqual(80);
  },
);

test('a folder that is not there is told in one sentence', async () => {
  const told = await writtenChart(await sampleWarning(READER), join(folder, 'missing', 'curve.png'));
  expect(told).toMatch(/^I could not write the picture to .+; name a file in a folder that exists\.$/);
});

test('an answer without a picture says so', async () => {
  const told = await writtenChart({ headline: 'Noted.', sections: [], private: true }, join(folder, 'curve.png'));
  expect(told).toContain('has no picture');
});

test.each(['README.md', 'notes.txt', 'night', '.env', 'night.png.bak'])(
  'a picture is never written to %s',
  async (name) => {
    const file = join(folder, name);
    await writeFile(file, 'mine');
    expect(await writtenChart(await sampleWarning(READER), file)).toContain('needs a name that ends in .png');
    expect(await readFile(file, 'utf8')).toBe('mine');
  },
);

test('a picture that is there already is left as it is', async () => {
  const file = join(folder, 'night.png');
  await writeFile(file, 'mine');
  expect(await writtenChart(await sampleWarning(READER), file)).toContain('choose a new name');
  expect(await readFile(file, 'utf8')).toBe('mine');
  expect(await readdir(folder)).toEqual(['night.png']);
});
