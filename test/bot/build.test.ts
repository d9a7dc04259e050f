import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'eiderdown-build-'));
  mkdirSync(join(folder, 'bot'));
  copyFileSync(new URL('../../bot/build.mjs', import.meta.url), join(folder, 'bot/build.mjs'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

function built(...flags: string[]) {
  const { status, stderr } = spawnSync(process.execPath, [...flags, join(folder, 'bot/build.mjs')], {
    encoding: 'utf8',
  });
  return [status, stderr];
}

const asVersion = (node: string) =>
  `--import=data:text/javascript,Object.defineProperty(process,'versions',{value:{node:'${node}'}})`;

test('without the compiler and without a build it says how to build', () => {
  expect(built()).toEqual([
    1,
    expect.stringMatching(/^Eiderdown is not built yet\. Run "npm ci && npm run build" once[^\n]*\n$/),
  ]);
});

test('a build without the compiler is run as it is', () => {
  mkdirSync(join(folder, 'dist/bot'), { recursive: true });
  writeFileSync(join(folder, 'dist/bot/main.js'), '');
  expect(built()).toEqual([0, '']);
});

test.each(['18.20.8', '20.9.0', '20.18.0'])('Node %s is refused in one sentence', (node) => {
  expect(built(asVersion(node))).toEqual([
    1,
    expect.stringMatching(/^Eiderdown needs Node 20\.18\.1 or newer[^\n]*\n$/),
  ]);
});

test.each(['20.18.1', '22.23.0', '24.0.0'])('Node %s is not', (node) => {
  expect(built(asVersion(node))).toEqual([1, expect.stringContaining('not built yet')]);
});
