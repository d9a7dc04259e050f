import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CHECKOUT } from './plant.ts';
import { trackedFiles } from './tracked-files.ts';

const TEXT_FILE =
  /\.(?:ts|js|mjs|json|md|yml|yaml|grit|sh|sql|txt|csv|svg|example)$|(?:^|\/)(?:\.gitignore|\.npmrc|LICENSE|run)$/;
const READERS = ['bot/config.ts', 'bot/main.ts'];

/** Any way to the environment, also through a name taken from `process` or from `node:process`. */
const ENVIRONMENT =
  /\bprocess\s*(?:\?\.|\.|\[\s*['"])\s*env\b|\{[^}]*\benv\b[^}]*\}\s*=\s*process\b|from\s+['"](?:node:)?process['"]/;

/** Directories of one machine: homes, scratch space and drives. Shebangs and addresses on the web are none. */
const MACHINE_PATH = /(?<![\w.:/-])(?:\/(?:root|home|tmp|work|Users|mnt|var\/folders)\/[\w.-]+|[A-Z]:\\[\w.-]+)/;

function filesWith(pattern: RegExp, belongs: (file: string) => boolean): string[] {
  return trackedFiles()
    .filter((file) => TEXT_FILE.test(file) && belongs(file))
    .filter((file) => pattern.test(readFileSync(join(CHECKOUT, file), 'utf8')));
}

describe('the environment', () => {
  test('is read by the configuration alone', () => {
    const isSource = (file: string) => /^(?:rules|bot)\//.test(file) && !READERS.includes(file);
    expect(trackedFiles().filter(isSource).length).toBeGreaterThan(20);
    expect(filesWith(ENVIRONMENT, isSource)).toEqual([]);
  });

  test.each([
    "process.env['HOME']",
    'process . env.HOME',
    "process['env']",
    'const { env } = process;',
    "import { env } from 'node:process';",
    "import process from 'process';",
  ])('is recognised in %s', (line) => {
    expect(ENVIRONMENT.test(line)).toBe(true);
  });

  test('is not seen where it is not', () => {
    expect(ENVIRONMENT.test('process.stdout.write(environment)')).toBe(false);
  });
});

describe('a path of one machine', () => {
  test('stands in no file of the project', () => {
    expect(trackedFiles().length).toBeGreaterThan(50);
    expect(filesWith(MACHINE_PATH, () => true)).toEqual([]);
  });

  test.each(['home', 'root', 'tmp', 'work', 'Users', 'mnt'])('is recognised below /%s', (top) => {
    const path = ['', top, 'anna', 'night.json'].join('/');
    for (const text of [path, `see ${path}.`, `'${path}'`, `(${path})`]) expect(MACHINE_PATH.test(text)).toBe(true);
    for (const text of [`https://example.org${path}`, `..${path}`, `bot${path}`]) {
      expect(MACHINE_PATH.test(text)).toBe(false);
    }
  });

  test('is recognised on a drive with a letter', () => {
    expect(MACHINE_PATH.test(['C:', 'beds'].join('\\'))).toBe(true);
    expect(MACHINE_PATH.test('#!/usr/bin/env node')).toBe(false);
  });
});
