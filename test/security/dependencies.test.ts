import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

interface Locked {
  readonly integrity?: string;
  readonly dev?: boolean;
  readonly devOptional?: boolean;
  readonly link?: boolean;
  readonly hasInstallScript?: boolean;
}

const read = <T>(name: string): T => JSON.parse(readFileSync(new URL(`../../${name}`, import.meta.url), 'utf8')) as T;
const lock = read<{ readonly packages: Readonly<Record<string, Locked>> }>('package-lock.json');
const manifest = read<{
  readonly dependencies: Readonly<Record<string, string>>;
  readonly scripts: Readonly<Record<string, string>>;
  readonly allowScripts: Readonly<Record<string, boolean>>;
}>('package.json');
const packages = Object.entries(lock.packages).filter(([path]) => path !== '');
const nameOf = (path: string) => path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);

test('the lock file pins each package by its contents', () => {
  expect(packages.length).toBeGreaterThan(50);
  expect(packages.filter(([, { integrity }]) => !/^sha512-[\w+/=]{88}$/.test(integrity ?? ''))).toEqual([]);
});

test('the lock file is that of package.json', () => {
  const root = lock.packages[''] as { readonly dependencies?: unknown };
  expect(root.dependencies).toEqual(manifest.dependencies);
});

test('nothing that the bot runs on needs a script at its installation', () => {
  const running = packages.filter(([, { dev, devOptional }]) => dev !== true && devOptional !== true);
  const withScript = running
    .filter(([, { hasInstallScript }]) => hasInstallScript === true)
    .map(([path]) => nameOf(path));
  // Its prebuilt binaries lie in the package; the script would only compile what is there already.
  expect(withScript).toEqual(['@photostructure/sqlite']);
  expect(manifest.allowScripts['@photostructure/sqlite']).toBe(false);
  expect(Object.keys(manifest.scripts).filter((name) => /install|prepare/.test(name))).toEqual([]);
});

test('the packages that the bot runs on are the ones told in DEVELOPERS.md', () => {
  const page = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8');
  const section = page.slice(page.indexOf('## Dependencies'));
  const told = [...section.matchAll(/^\| `([^`]+)` +\|/gm)].map(([, name]) => name);
  const optional = read<{ readonly optionalDependencies: object }>('package.json').optionalDependencies;
  expect(told.sort()).toEqual([...Object.keys(manifest.dependencies), ...Object.keys(optional)].sort());
});
