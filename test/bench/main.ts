import { benchAsk } from './ask.ts';
import { benchDiscord } from './discord.ts';
import { benchForecast } from './forecast.ts';
import { benchFuzz } from './fuzz.ts';
import { benchLanguage } from './language.ts';
import { benchLearning } from './learning.ts';
import { benchMemory } from './memory.ts';
import { benchProgram } from './program.ts';
import type { Row } from './row.ts';
import { benchStart } from './start.ts';
import { benchStore } from './store.ts';

/** Sections by name: `npm run bench`, `npm run bench -- ask language`, `npm run bench -- --json`. */
const SECTIONS: Readonly<Record<string, () => readonly Row[] | Promise<readonly Row[]>>> = {
  language: benchLanguage,
  ask: benchAsk,
  learning: benchLearning,
  forecast: benchForecast,
  store: benchStore,
  discord: benchDiscord,
  program: benchProgram,
  start: benchStart,
  memory: benchMemory,
  fuzz: benchFuzz,
};

/** The longest names are those of `learning`. */
const NAME_WIDTH = 68;

const words = process.argv.slice(2);
const json = words.includes('--json');
const wanted = words.filter((word) => word !== '--json');
const unknown = wanted.filter((name) => !(name in SECTIONS));
if (unknown.length > 0) {
  console.error(`No section is called ${unknown.join(', ')}; there are ${Object.keys(SECTIONS).join(', ')}.`);
  process.exit(1);
}
for (const [name, section] of Object.entries(SECTIONS)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  if (!json) console.log(`\n${name}`);
  for (const row of await section()) console.log(json ? JSON.stringify({ section: name, ...row }) : lineOf(row));
}

function lineOf({ name, value, unit, ratio }: Row): string {
  const shown = value >= 100 ? value.toFixed(0) : value.toPrecision(3);
  return `  ${name.padEnd(NAME_WIDTH)} ${shown.padStart(9)} ${unit}${ratio === undefined ? '' : `   (${ratio.toFixed(2)} times)`}`;
}
