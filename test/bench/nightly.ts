import { postgresEngine, sqliteEngine, type TestEngine } from '../bot/store/engines.ts';
import { type NightFigures, nightRun } from './nightly/run.ts';
import { winter } from './nightly/winter.ts';

// `npm run bench:nightly`, or with some of: sqlite postgres winter. A number before them is how many channels, 1,000 unless said.
const words = process.argv.slice(2);
const many = Number(words.find((word) => /^\d+$/.test(word)) ?? 1000);
const wanted = words.filter((word) => !/^\d+$/.test(word));
const isWanted = (name: string) => wanted.length === 0 || wanted.includes(name);

if (isWanted('sqlite')) await growth(sqliteEngine(), 1);
if (isWanted('postgres')) await growth(postgresEngine(), 2);
if (isWanted('winter')) {
  console.log('A winter, 1 October to 31 March, 50 channels, scripted clock, made-up weather');
  for (const [name, value] of Object.entries(await winter())) console.log(`  ${name.padEnd(34)} ${value}`);
}

/** The same at half as many and at all. */
async function growth(engine: TestEngine, workers: number): Promise<void> {
  const unavailable = await engine.start();
  if (unavailable !== undefined) {
    console.log(`${engine.name}: ${unavailable}`);
    return;
  }
  const half = await nightRun(await engine.freshUrl(), Math.floor(many / 2), workers);
  show(engine.name, half);
  const whole = await nightRun(await engine.freshUrl(), many, workers);
  show(engine.name, whole);
  console.log(
    `  ${'growth from half to all'.padEnd(34)} ${(whole.postedS / half.postedS).toFixed(2)} (target: at most 2.1)`,
  );
  await engine.stop();
}

function show(engine: string, figures: NightFigures): void {
  const { channels, workers, postedS, ratio, copies, missing, peakMb, postingCpuS, problems } = figures;
  console.log(`${engine}, ${workers} worker${workers === 1 ? '' : 's'}, ${channels} channels of 20 beds`);
  const rows: readonly (readonly [string, string])[] = [
    ['time over (channels / 50 s)', `${ratio.toFixed(3)} (${postedS.toFixed(1)} s; target: at most 1.10)`],
    ['told twice, not told', `${copies}, ${missing}`],
    ['forecast requests a cell', `${figures.requestsPerCell.toFixed(2)} (most ${figures.mostRequestsOfACell})`],
    ['beforehand: start, fetches, physics', `${figures.fetchedS.toFixed(1)} s`],
    ['peak memory of a worker', `${peakMb.toFixed(0)} MB`],
    ['processor time of workers, posting', `${postingCpuS.toFixed(1)} s`],
    ['posts that Discord refused as too many', String(figures.refusals)],
    ['what Discord would not have taken', problems.length === 0 ? 'nothing' : problems.slice(0, 2).join('; ')],
  ];
  for (const [name, value] of rows) console.log(`  ${name.padEnd(34)} ${value}`);
}
