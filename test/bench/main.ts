import { benchAsk } from './ask.ts';
import { benchCharts } from './charts.ts';
import { benchCrowd } from './crowd.ts';
import { benchDiscord } from './discord.ts';
import { benchForecast } from './forecast.ts';
import { benchFuzz } from './fuzz.ts';
import { benchLanguage } from './language.ts';
import { benchLearning } from './learning.ts';
import { benchMemory } from './memory.ts';
import { benchModel } from './model.ts';
import { printed } from './printed.ts';
import { benchProgram } from './program.ts';
import type { Row } from './row.ts';
import { benchSolver } from './solver.ts';
import { benchStart } from './start.ts';
import { benchStore } from './store.ts';

/** Sections by name: `npm run bench`, `npm run bench -- ask language`, `npm run bench -- --json`. */
const SECTIONS: Readonly<Record<string, () => readonly Row[] | Promise<readonly Row[]>>> = {
  model: benchModel,
  solver: benchSolver,
  language: benchLanguage,
  ask: benchAsk,
  learning: benchLearning,
  charts: benchCharts,
  forecast: benchForecast,
  crowd: benchCrowd,
  store: benchStore,
  discord: benchDiscord,
  program: benchProgram,
  start: benchStart,
  memory: benchMemory,
  fuzz: benchFuzz,
};

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
  printed(name, await section(), json);
}
