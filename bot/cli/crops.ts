import {
  type BareNight,
  bareNights,
  type ClosingCheck,
  CROPS,
  type Crop,
  closingCheck,
  cropNames,
  derivation,
  type HeardStatement,
  knownOfKind,
  type OrganDerivation,
  outsideAtC,
  plainPhrase,
  SOURCES,
  type Tolerance,
} from '../../rules/index.ts';
import { PlainProblem } from '../ground/errors.ts';
import { fahrenheitFrom } from '../ground/units.ts';
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
  const little = crop.isKnown ? '' : ', little known';
  return `${crop.id.padEnd(26)} ${warm} | ${cold.padEnd(34)} ${where}${little}`;
}

/** First mark, half lost and killed in °C, spread in K. */
function limits({ firstMarkC, lt50C, killC, sdK }: Tolerance): string {
  return `${number(firstMarkC)} ${number(lt50C)} ${number(killC)} ± ${sdK.toFixed(1)} K`;
}

function traceLines(crop: Crop): readonly string[] {
  const { american, british } = crop.name;
  const nights = bareNights();
  const [eaten, other] = derivation(crop.id);
  return [
    `${american}${british === undefined ? '' : ` (${british})`}: ${crop.organ}, judged by the ${where(crop.judgedBy)}. °C of the ${crop.organ}.`,
    ...(crop.isKnown ? [] : [littleKnown(crop)]),
    ...(eaten === undefined ? [] : organLines(eaten, crop, nights)),
    ...(other === undefined || crop.other === undefined
      ? []
      : [
          '',
          `The ${crop.other.name}, judged by the ${where(crop.other.judgedBy)}:`,
          ...organLines(other, crop, nights),
        ]),
  ];
}

function where(judgedBy: Crop['judgedBy']): string {
  return judgedBy === 'surface' ? 'soil surface' : 'leaf';
}

function littleKnown(crop: Crop): string {
  const like = knownOfKind(crop.id)?.name.american;
  return `Little is known about ${crop.name.american}: no source speaks of it. ${like === undefined ? 'It is judged by its kind alone.' : `It is judged as ${like} and the like.`}`;
}

function organLines(organ: OrganDerivation, { name }: Crop, nights: readonly BareNight[]): readonly string[] {
  const { subject, unhardened, hardened, heard, setAside } = organ;
  const { hardens } = subject;
  const byPull = heard.toSorted((a, b) => strengthOf(b) - strengthOf(a));
  return [
    ...(hardens
      ? [stateLine('grown warm', unhardened, subject, nights), stateLine('hardened', hardened, subject, nights)]
      : [stateLine('any state', hardened, subject, nights), 'Cold does not harden it.']),
    ...(heard.length === 0
      ? [`No statement on ${name.american} here: its kind alone.`]
      : ['', '  organ °C  ± K   moved mark, loss by K   statement', ...byPull.map(heardLine)]),
    ...(setAside.length === 0 ? [] : ['', 'Set aside:']),
    ...setAside.map(({ row, reason }) => `  ${row.source}, ${row.effect} ${valueText(row.value)}: ${reason}`),
  ];
}

function strengthOf({ movedMarkK, movedLossK }: HeardStatement): number {
  return Math.abs(movedMarkK) + Math.abs(movedLossK);
}

/** Limits of the organ, and the low of a bare ordinary night that brings it there. */
function stateLine(
  state: string,
  tolerance: Tolerance,
  { judgedBy }: OrganDerivation['subject'],
  nights: readonly BareNight[],
): string {
  const outside = (limitC: number) => {
    const lowC = outsideAtC(nights, limitC, judgedBy);
    return `${lowC.toFixed(1)} °C (${fahrenheitFrom(lowC).toFixed(0)} °F)`;
  };
  return `${state}: first mark, half lost, killed ${limits(tolerance)}; outside low on a bare, clear night with light wind: first mark ${outside(tolerance.firstMarkC)}, half lost ${outside(tolerance.lt50C)}`;
}

const HARDNESS: Readonly<Record<number, string>> = { 0: 'grown warm', 0.5: 'half hardened', 1: 'hardened' };

function heardLine({ statement, sdK, movedMarkK, movedLossK }: HeardStatement): string {
  const { about, limit, organC, hardeningIndex, source, row } = statement;
  const what = about === 'mark' ? 'first mark' : 'half lost';
  const side = { near: 'near', colder: 'colder than', warmer: 'warmer than' }[limit];
  const read = 'seen' in row ? `${row.said} at ${row.lowC} °C outside` : `${row.effect} ${valueText(row.value)}`;
  const note = row.note === undefined || row.note === '' ? '' : ` (${row.note})`;
  const hardness = HARDNESS[hardeningIndex] ?? `hardened to ${hardeningIndex}`;
  return `  ${number(organC).padStart(8)}  ${sdK.toFixed(1).padStart(3)}  ${signed(movedMarkK)}, ${signed(movedLossK)}   ${what} ${side} that, ${hardness}: ${read} · ${source} ${SOURCES[source].standing}${note}`;
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
  return typeof value === 'number' ? String(value) : `alive at ${value.colderThanC}`;
}

function number(valueC: number): string {
  return valueC.toFixed(1).padStart(5);
}

function signed(movedK: number): string {
  return `${movedK < 0 ? '-' : '+'}${Math.abs(movedK).toFixed(2)}`;
}

await runProgram(main);
