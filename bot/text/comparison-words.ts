import { type BedVerdict, COVERS, WALLS } from '../../rules/index.ts';
import { difference, temperature } from '../ground/units.ts';
import type { ComparedFrame, ComparedNight, ComparedStack } from '../outlook/comparison.ts';
import { shortStack, verdictPhrase } from './night-words.ts';
import { capitalised, list } from './phrases.ts';
import { cropWord, type Reader } from './reader.ts';

/** Leaves that differ by less are as warm as each other: the model is not finer. [K] */
const SAME_K = 0.5;
const FULL_LIGHT_FRACTION = 0.995;

/** "tonight", "on the reference night", "at 14 °F". */
export function nightName({ kind, lowC }: ComparedNight, { units }: Reader): string {
  if (kind === 'own') return 'tonight';
  return kind === 'reference' ? 'on the reference night' : `at ${temperature(lowC, units)}`;
}

/** What the nights are, so that the figures can be judged. */
export function nightLines(nights: readonly ComparedNight[], { units }: Reader): string[] {
  return nights.flatMap(({ kind, lowC }) => {
    if (kind === 'own') return `Tonight: outside low ${temperature(lowC, units)}, as forecast for your place.`;
    const sky = kind === 'reference' ? 'clear and calm, the first of winter' : 'clear, light wind, soil of the season';
    const name = kind === 'reference' ? 'Reference night' : 'That night';
    return `${name}: outside low ${temperature(lowC, units)}, ${sky}.`;
  });
}

/** The warmest stack, or that there is nothing in it. */
export function stacksHeadline(stacks: readonly ComparedStack[], night: ComparedNight, reader: Reader): string {
  const [best, second] = stacks;
  if (best === undefined) return 'None of these covers can lie so.';
  const when = capitalised(nightName(night, reader));
  const bestC = best.leafLowsC[0] ?? Number.NaN;
  if (second === undefined)
    return `${when} ${shortStack(best.keys, reader)}: leaf low ${temperature(bestC, reader.units)}.`;
  const aheadK = bestC - (second.leafLowsC[0] ?? Number.NaN);
  const [one, other] = [best, second].map(({ keys }) => shortStack(keys, reader));
  if (aheadK < SAME_K) return `${when} ${one} and ${other} are as good as equal.`;
  return `${when} ${one} keeps the leaf warmest, ${difference(aheadK, reader.units)} ahead of ${other}.`;
}

/** "Blanket over low tunnel: leaf low 24 °F tonight, 27 °F on the reference night. By day 85 % of the light. …" */
export function stackLine(stack: ComparedStack, nights: readonly ComparedNight[], reader: Reader): string {
  const { keys, verdict, lightFraction, effort } = stack;
  const light =
    lightFraction >= FULL_LIGHT_FRACTION ? '' : ` By day ${Math.round(lightFraction * 100)} % of the light.`;
  const crops = verdict === undefined ? '' : ` ${capitalised(cropsWords(verdict, reader))}.`;
  return `${capitalised(shortStack(keys, reader))}: leaf low ${lowsWords(stack.leafLowsC, nights, reader)}.${crops}${light}${effortWords(effort)}`;
}

/** "lettuce leaf burn (odds about even), and kale and mache hold". */
function cropsWords({ plantings }: BedVerdict, reader: Reader): string {
  const holding = plantings.filter(({ verdict }) => verdict === 'holds');
  if (holding.length === plantings.length && holding.length > 1) return 'all crops hold';
  const hurt = plantings.filter(({ verdict }) => verdict !== 'holds').map((each) => verdictPhrase(each, reader));
  const names = list(holding.map(({ planting }) => cropWord(planting.crop, reader)));
  const held = holding.length === 0 ? [] : [`${names} ${holding.length === 1 ? 'holds' : 'hold'}`];
  return [...hurt, ...held].join('; ');
}

function lowsWords(lowsC: readonly number[], nights: readonly ComparedNight[], reader: Reader): string {
  const words = nights.map((night, index) => {
    const lowC = temperature(lowsC[index] ?? Number.NaN, reader.units);
    return nights.length === 1 ? lowC : `${lowC} ${nightName(night, reader)}`;
  });
  return words.join(', ');
}

function effortWords(effort: number | undefined): string {
  if (effort === undefined) return ' Not set up in an afternoon.';
  if (effort === 0) return '';
  if (effort <= 1) return ' A light errand.';
  return effort <= 2.5 ? ' To carry and weigh down.' : ' To set up.';
}

export interface FrameTelling {
  readonly frames: readonly ComparedFrame[];
  readonly nights: readonly ComparedNight[];
  readonly reader: Reader;
}

/** "As it is: leaf low 24 °F tonight." and what each change does to that; changes that do the same stand together. */
export function frameLines({ frames, nights, reader }: FrameTelling): string[] {
  const [built, ...changed] = frames;
  if (built === undefined) return [];
  const groups = new Map<string, { readonly apart: string; readonly changes: string[] }>();
  for (const frame of changed) {
    const apart = apartOnNights(frame, built, nights, reader);
    const key = `${frame.change.kind} ${apart}`;
    const group = groups.get(key) ?? { apart, changes: [] };
    groups.set(key, { apart, changes: [...group.changes, changeWords(frame, reader)] });
  }
  return [
    `As it is: leaf low ${lowsWords(built.leafLowsC, nights, reader)}.`,
    ...[...groups.values()].map(({ apart, changes }) => `${capitalised(list(changes))}: ${apart}.`),
  ];
}

function changeWords({ change, lightRatio }: ComparedFrame, { dialect }: Reader): string {
  switch (change.kind) {
    case 'as-built':
      return 'as it is';
    case 'walls':
      return WALLS[change.walls][dialect];
    case 'tilt':
      return `light at ${change.tiltDeg}°, by a higher back (${lightRatio.toFixed(1)} times the sun on a clear shortest day)`;
    case 'quilt':
      return `a ${COVERS.quilt[dialect]} laid on the light for the night`;
  }
}

/** "3 °F warmer tonight, 4 °F warmer on the reference night". */
function apartOnNights(
  { leafLowsC }: ComparedFrame,
  built: ComparedFrame,
  nights: readonly ComparedNight[],
  reader: Reader,
): string {
  const apart = nights.map((night, index) => {
    const byK = (leafLowsC[index] ?? Number.NaN) - (built.leafLowsC[index] ?? Number.NaN);
    return { words: apartWords(byK, reader), night: nightName(night, reader) };
  });
  const [first] = apart;
  if (first !== undefined && apart.every(({ words }) => words === first.words)) {
    return apart.length > 1 ? `${first.words} on both nights` : first.words;
  }
  return apart.map(({ words, night }) => `${words} ${night}`).join(', ');
}

function apartWords(byK: number, { units }: Reader): string {
  if (Math.abs(byK) < SAME_K) return `the same within ${difference(SAME_K, units)}`;
  return `${difference(Math.abs(byK), units)} ${byK > 0 ? 'warmer' : 'colder'}`;
}
