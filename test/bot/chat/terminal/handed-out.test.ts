import { mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { handedOut } from '../../../../bot/chat/terminal/handed-out.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'eiderdown-files-'));
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const REPLY = {
  headline: 'This is all that I keep about you.',
  sections: [],
  private: true,
  files: [{ name: 'mydata.json', bytes: Buffer.from('{"beds":2}') }],
};

test('a file that is handed out is written for its owner alone, and the answer says where', async () => {
  expect(await handedOut(REPLY, folder)).toEqual([
    'It is in the file mydata.json in this folder; only you can read it.',
  ]);
  const file = join(folder, 'mydata.json');
  expect(await readFile(file, 'utf8')).toBe('{"beds":2}');
  expect((await stat(file)).mode & 0o777).toBe(0o600);
});

test('a file of that name stays as it is, and the new one is numbered', async () => {
  await writeFile(join(folder, 'mydata.json'), 'older');
  expect(await handedOut(REPLY, folder)).toEqual([expect.stringContaining('mydata-2.json')]);
  expect(await readFile(join(folder, 'mydata.json'), 'utf8')).toBe('older');
  expect(await readFile(join(folder, 'mydata-2.json'), 'utf8')).toBe('{"beds":2}');
});

test('a folder that cannot be written to is told, not passed over', async () => {
  expect(await handedOut(REPLY, join(folder, 'missing'))).toEqual([expect.stringContaining('could not write')]);
});

test('an answer without files writes and says nothing', async () => {
  expect(await handedOut({ headline: 'Noted.', sections: [], private: true }, folder)).toEqual([]);
});
