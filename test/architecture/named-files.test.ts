import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { CHECKOUT } from './plant.ts';

/** Files and folders of ours as the pages write them; those of a host begin with a slash. */
const NAMED = /`((?:bot|rules|test)\/[\w./-]+|(?:security|published|architecture)\/[\w./-]+)`/g;

test.each(['README.md', 'DEVELOPERS.md', 'bot/deploy/README.md', 'test/published/README.md'])(
  'every file that %s names is there',
  (page) => {
    const names = [...readFileSync(join(CHECKOUT, page), 'utf8').matchAll(NAMED)].map(([, name = '']) => name);
    if (page.split('/').length === 1) expect(names.length).toBeGreaterThan(1);
    const lost = names.filter((name) => !['', 'test'].some((folder) => existsSync(join(CHECKOUT, folder, name))));
    expect(lost).toEqual([]);
  },
);
