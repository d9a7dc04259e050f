import { postgresEngine, sqliteEngine, type TestEngine } from '../bot/store/engines.ts';
import { type NightFigures, nightRun } from './nightly/run.ts';
import { winter } from './nightly/winter.ts';
import { printed } from './printed.ts';
import type { Row } from './row.ts';

// `npm run bench:nightly`, or with some of: sqlite postgres winter. A number before them is how many channels, 1,000 unless said;
// `--json` prints one JSON object a line.
const json = process.argv.includes('--json');
const words = process.argv.slice(2).filter((word) => word !== '--json');
const many = Number(words.find((word) => /^\d+$/.test(word)) ?? 1000);
const wanted = words.filter((word) => !/^\d+$/.test(word));
const isWanted = (name: string) => wanted.length === 0 || wanted.includes(name);

if (isWanted('sqlite')) await growth(sqliteEngine(), 1);
if (isWanted('postgres')) await growth(postgresEngine(), 2);
if (isWanted('winter')) {
  const rows = Object.entries(await winter()).map(([name, value]): Row => ({ name, value, unit: '' }));
  printed('A winter, 1 October to 31 March, 50 channels, scripted clock, made-up weather', rows, json);
}

/** The same at half as many and at all. */
async function growth(engine: TestEngine, workers: number): Promise<void> {
  const unavailable = await engine.start();
  if (unavailable !== undefined) {
    console.error(`${engine.name}: ${unavailable}`);
    return;
  }
  const half = await nightRun(await engine.freshUrl(), Math.floor(many / 2), workers);
  show(engine.name, half);
  const whole = await nightRun(await engine.freshUrl(), many, workers);
  show(engine.name, whole);
  const growth = whole.postedS / half.postedS;
  printed(engine.name, [{ name: 'growth from half to all (target: at most 2.1)', value: growth, unit: 'times' }], json);
  await engine.stop();
}

function show(engine: string, figures: NightFigures): void {
  const { channels, workers, ratio, problems } = figures;
  printed(
    `${engine}, ${workers} worker${workers === 1 ? '' : 's'}, ${channels} channels of 20 beds`,
    [
      { name: 'time for the posts', value: figures.postedS, unit: 's' },
      { name: 'time over (channels / 50 s) (target: at most 1.05)', value: ratio, unit: '' },
      { name: 'told twice', value: figures.copies, unit: '' },
      { name: 'not told', value: figures.missing, unit: '' },
      { name: 'forecast requests a cell', value: figures.requestsPerCell, unit: '' },
      { name: 'most forecast requests of a cell', value: figures.mostRequestsOfACell, unit: '' },
      { name: 'beforehand: start, fetches, physics', value: figures.fetchedS, unit: 's' },
      { name: 'peak memory of a worker', value: figures.peakMb, unit: 'MB' },
      { name: 'processor time of workers, posting', value: figures.postingCpuS, unit: 's' },
      { name: 'posts that Discord refused as too many', value: figures.refusals, unit: '' },
      { name: 'what Discord would not have taken', value: problems.length, unit: '' },
    ],
    json,
  );
  for (const problem of problems.slice(0, 2)) console.error(problem);
}
