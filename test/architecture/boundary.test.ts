import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { biomeComplaints, CHECKOUT, compilerComplaints } from './plant.ts';
import { trackedFiles } from './tracked-files.ts';

describe('the compiler keeps rules/ pure', () => {
  test('a clean file passes, so that a refusal means something', () => {
    const clean =
      "import { pressureFraction } from '../air/pressure.ts';\nexport const thinFraction = pressureFraction(2000);\n";
    expect(compilerComplaints(clean)).toEqual([]);
  });

  test.each([
    ['Node modules', "import { readFileSync } from 'node:fs';\nexport const read = readFileSync;\n"],
    ['Node modules without their prefix', "import { readFileSync } from 'fs';\nexport const read = readFileSync;\n"],
    ['process', "export const home = process.env['HOME'];\n"],
    ['fetch', "export const answer = fetch('https://example.org');\n"],
    ['console', "console.log('hello');\n"],
    ['timers', 'setTimeout(() => undefined, 1);\n'],
    ['performance', 'export const startMs = performance.now();\n'],
    ['random bytes', 'export const id = crypto.randomUUID();\n'],
    ['the document', 'export const page = document.title;\n'],
  ])('%s do not compile there', (_what, source) => {
    expect(compilerComplaints(source).join(' ')).toMatch(/Cannot find (?:name|module)|Could not find a declaration/);
  });

  test('bot/ cannot be imported: it lies outside the root', () => {
    const source = "import { systemClock } from '../../bot/ground/clock.ts';\nexport const clock = systemClock;\n";
    expect(compilerComplaints(source).join(' ')).toContain("is not under 'rootDir'");
  });
});

const BOT_FOLDERS = [
  ...new Set(trackedFiles().flatMap((file) => /^bot\/(?<folder>[^/]+)\/.*\.ts$/.exec(file)?.groups?.['folder'] ?? [])),
];

/** Each planted file holds one violation; the text is part of the complaint that must follow. */
const PLANTED: readonly (readonly [file: string, source: string, complaint: string])[] = [
  [
    'rules/sun/package.ts',
    "import { DateTime } from 'luxon';\nexport const a = DateTime;\n",
    'rules/ imports no package',
  ],
  ['rules/sun/unlisted.ts', "import left from 'left-pad';\nexport const a = left;\n", 'rules/ imports no package'],
  ['rules/sun/node.ts', "import { join } from 'node:path';\nexport const a = join;\n", 'noNodejsModules'],
  ['rules/sun/bare-node.ts', "import { join } from 'path';\nexport const a = join;\n", 'noNodejsModules'],
  [
    'rules/sun/bot.ts',
    "import { a } from '../../bot/ground/clock.ts';\nexport const b = a;\n",
    'it imports only rules/',
  ],
  ['rules/sun/now.ts', 'export const a = Date.now();\n', 'reads no clock'],
  ['rules/sun/new-date.ts', 'export const a = new Date();\n', 'reads no clock'],
  ['rules/sun/date-call.ts', 'export const a = Date();\n', 'reads no clock'],
  ['rules/sun/local-date.ts', 'export const a = new Date(2025, 11, 1);\n', 'Local time belongs to bot/'],
  ['rules/sun/random.ts', 'export const a = Math.random();\n', 'no random numbers'],
  ['rules/sun/hours.ts', 'export const a = (at: Date) => at.getHours();\n', 'Local time belongs to bot/'],
  ['rules/sun/minutes.ts', 'export const a = (at: Date) => at.getMinutes();\n', 'Local time belongs to bot/'],
  ['rules/sun/weekday.ts', 'export const a = (at: Date) => at.getDay();\n', 'Local time belongs to bot/'],
  ['rules/sun/year.ts', 'export const a = (at: Date) => at.getFullYear();\n', 'Local time belongs to bot/'],
  ['rules/sun/offset.ts', 'export const a = (at: Date) => at.getTimezoneOffset();\n', 'Local time belongs to bot/'],
  ['rules/sun/set-hours.ts', 'export const a = (at: Date) => at.setHours(0, 0);\n', 'Local time belongs to bot/'],
  ['rules/sun/date-words.ts', 'export const a = (at: Date) => at.toDateString();\n', 'Local time belongs to bot/'],
  ['rules/sun/locale.ts', "export const a = (at: Date) => at.toLocaleTimeString('de');\n", 'Locale words belong'],
  ['rules/sun/order.ts', "export const a = (b: string) => b.localeCompare('c');\n", 'Locale words belong'],
  ['rules/sun/intl.ts', "export const a = new Intl.NumberFormat('de');\n", 'noRestrictedGlobals'],
  ['rules/sun/any.ts', 'export const a = (b: any) => b;\n', 'noExplicitAny'],
  ['rules/sun/sure.ts', 'export const a = (b?: string) => b!.length;\n', 'noNonNullAssertion'],
  ['rules/sun/default.ts', 'export default 1;\n', 'noDefaultExport'],
  [
    'bot/commands/chat.ts',
    "import { Client } from 'discord.js';\nexport const a = Client;\n",
    'knows that chat platform',
  ],
  [
    'bot/commands/rest.ts',
    "import { REST } from '@discordjs/rest';\nexport const a = REST;\n",
    'knows that chat platform',
  ],
  [
    'bot/jobs/chat.ts',
    "import { Routes } from 'discord-api-types/v10';\nexport const a = Routes;\n",
    'knows that chat platform',
  ],
  [
    'bot/language/chat.ts',
    "import { Client } from 'discord.js';\nexport const a = Client;\n",
    'knows that chat platform',
  ],
  ['bot/text/chat.ts', "import { Client } from 'discord.js';\nexport const a = Client;\n", 'knows that chat platform'],
  ...BOT_FOLDERS.map(
    (folder) =>
      [
        `bot/${folder}/deep.ts`,
        "import { a } from '../../rules/sun/place.ts';\nexport const b = a;\n",
        'only through rules/index.ts',
      ] as const,
  ),
  ...BOT_FOLDERS.filter((folder) => folder !== 'chat').map(
    (folder) =>
      [
        `bot/${folder}/platform.ts`,
        "import { Client } from 'discord.js';\nexport const a = Client;\n",
        'knows that chat platform',
      ] as const,
  ),
  ['bot/stray.ts', "import { a } from '../rules/constants.ts';\nexport const b = a;\n", 'only through rules/index'],
  [
    'bot/chat/discord/deep.ts',
    "import { a } from '../../../rules/sun/place.ts';\nexport const b = a;\n",
    'only through',
  ],
  ...['commands', 'jobs', 'outlook', 'learning'].flatMap((folder) =>
    ['store/kept/beds.ts', 'store/open-store.ts', 'forecast/nws.ts', 'forecast/transport.ts'].map(
      (behind, index) =>
        [
          `bot/${folder}/behind-${index}.ts`,
          `import { a } from '../${behind}';\nexport const b = a;\n`,
          'seen through their ports',
        ] as const,
    ),
  ),
  ['bot/store/settings.ts', "export const a = process.env['PATH'];\n", 'noProcessEnv'],
  ['bot/store/talk.ts', "console.log('hello');\nexport const a = 1;\n", 'noConsole'],
  ['bot/store/adrift.ts', 'const a = async () => 1;\nexport const b = () => {\n  a();\n};\n', 'noFloatingPromises'],
];

const CLEAN = {
  'rules/sun/clean.ts': 'export const noon = (year: number) => new Date(Date.UTC(year, 0, 1, 12)).getUTCHours();\n',
  'rules/air/clean.ts': "import { noon } from '../sun/clean.ts';\nexport const a = noon(2025);\n",
  'bot/commands/clean.ts': "import { a } from '../../rules/index.ts';\nexport const b = a;\n",
  'bot/config.ts': "export const a = process.env['PATH'];\n",
};

describe('Biome keeps the boundary', () => {
  let complaints: Map<string, string[]>;
  beforeAll(() => {
    complaints = biomeComplaints({ ...CLEAN, ...Object.fromEntries(PLANTED) });
  });

  test.each(PLANTED)('%s is refused', (file, _source, complaint) => {
    expect(complaints.get(file)?.join('\n')).toContain(complaint);
  });

  test.each(Object.keys(CLEAN))('%s passes, so that a refusal means something', (file) => {
    expect(complaints.get(file) ?? []).toEqual([]);
  });

  // The plugin language cannot match `at?.getHours()`.
  test('no file in rules/ reaches local time through optional chaining', () => {
    const localTime = /\?\.\s*(?:get|set)(?!UTC|Time\b)[A-Z]\w*\(|\?\.\s*to(?:Locale|Date|Time)\w*\(/;
    expect(localTime.test('at?.getHours()')).toBe(true);
    expect(localTime.test('at?.getTime() + at?.getUTCHours()')).toBe(false);
    const rulesFiles = trackedFiles().filter((file) => file.startsWith('rules/') && file.endsWith('.ts'));
    expect(rulesFiles.filter((file) => localTime.test(readFileSync(join(CHECKOUT, file), 'utf8')))).toEqual([]);
  });
});
