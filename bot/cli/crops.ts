import {
  bareNights,
  type ClosingCheck,
  CROPS,
  type Crop,
  closingCheck,
  cropNames,
  derivation,
  plainPhrase,
  SOURCES,
  type StateDerivation,
  type Tolerance,
  type Voice,
} from '../../rules/index.ts';
import { PlainProblem } from '../ground/errors.ts';
import { runProgram } from './run-program.ts';

/** Shows where each crop's limits come from: `npm run crops`, `npm run crops -- NAME`, `npm run crops -- --check`. */
async function main(words: readonly string[]): Promise<undefined> {
  process.stdout.write(`${linesFor(words).join('\n')}\n`);
}

function linesFor(words: readonly string[]): readonly string[] {
  if (words.includes('--check')) return checkLines();
  if (words.length === 0) return CROPS.map(tableLine);
  const phrase = plainPhrase(words.join(' '));
  const found = cropNames().find((name) => name.phrase === phrase);
  const crop = CROPS.find(({ id }) => id === (found?.cropId ?? words.join('-')));
  if (crop === undefined) {
    throw new PlainProblem(`No crop is called "${words.join(' ')}". Try a name such as spinach, or no name for all.`);
  }
  return traceLines(crop);
}

function tableLine(crop: Crop): string {
  const warm = limits(crop.unhardened);
  const cold = crop.hardens ? limits(crop.hardened) : 'does not harden';
  const where = crop.judgedBy === 'surface' ? `${crop.organ} at the soil surface` : crop.organ;
  return `${crop.id.padEnd(26)} ${warm} | ${cold.padEnd(34)} ${where}`;
}

/** First mark, median and kill in °C, spread in K. */
function limits({ firstMarkC, lt50C, killC, sdK }: Tolerance): string {
  return `${number(firstMarkC)} ${number(lt50C)} ${number(killC)} ± ${sdK.toFixed(1)} K`;
}

function traceLines(crop: Crop): readonly string[] {
  const { unhardened, hardened, setAside } = derivation(crop.id);
  const { american, british } = crop.name;
  return [
    `${american}${british === undefined ? '' : ` (${british})`}: ${crop.organ}, judged by the ${crop.judgedBy}. First mark, half lost, killed; °C of the ${crop.organ}.`,
    ...stateLines(unhardened),
    ...(crop.hardens ? stateLines(hardened) : ['Cold does not harden it.']),
    ...(setAside.length === 0 ? [] : ['', 'Set aside:']),
    ...setAside.map(({ row, reason }) => `  ${row.source}, ${row.effect} ${valueText(row.value)}: ${reason}`),
  ];
}

function stateLines(state: StateDerivation): readonly string[] {
  const unheard = state.bounds.filter((bound) => !state.voices.includes(bound));
  const remarks = state.remarks.length === 0 ? '' : `; ${state.remarks.join('; ')}`;
  return [
    '',
    `${state.state}: ${limits(state.tolerance)} (half range ${state.halfRangeK.toFixed(1)} K, least ${state.leastSdK} K${remarks})`,
    '  half lost  weight  as read + thermometer + effect + state + size of plant',
    ...[...state.voices].sort((a, b) => a.lt50C - b.lt50C).map(voiceLine),
    ...unheard.map((bound) => `${voiceLine(bound)} — already allowed for`),
  ];
}

function voiceLine(voice: Voice): string {
  const head = `  ${number(voice.lt50C).padStart(9)}  ${voice.weight.toFixed(2).padStart(6)}  `;
  if (voice.row === undefined) return `${head}starting pair of its kind`;
  const { row } = voice;
  const moves = [voice.thermometerK, voice.effectK, voice.stateK, voice.sizeK].map((moveK) => signed(moveK)).join(' ');
  const note = row.note === '' ? '' : ` (${row.note})`;
  return `${head}${row.effect} ${valueText(row.value)} ${moves} · ${row.source} ${SOURCES[row.source].standing}${note}`;
}

function checkLines(): readonly string[] {
  const nights = bareNights();
  const checks = CROPS.flatMap((crop) => closingCheck(crop, nights) ?? []);
  const within = checks.filter((check) => check.within).length;
  return [
    'Outside low at which the bare hardened crop is lost in half of the cases, clear and 2 m/s, against growers’ lists; °C.',
    ...checks.map(checkLine),
    `${within} of ${checks.length} within the spread of their entries.`,
  ];
}

function checkLine({ cropId, chainC, entries, fromC, toC, within }: ClosingCheck): string {
  const listed = entries.map((entry) => number(entry.outsideC).trim()).join(', ');
  const range = `${number(fromC)} to ${number(toC)}`;
  return `${within ? '  ' : '✗ '}${cropId.padEnd(26)} chain ${number(chainC)}  within ${range}  listed ${listed}`;
}

function valueText(value: number | { readonly colderThanC: number }): string {
  return typeof value === 'number' ? String(value) : `colder than ${value.colderThanC}`;
}

function number(valueC: number): string {
  return valueC.toFixed(1).padStart(5);
}

function signed(moveK: number): string {
  return `${moveK < 0 ? '-' : '+'} ${Math.abs(moveK).toFixed(1)}`;
}

await runProgram(main);
