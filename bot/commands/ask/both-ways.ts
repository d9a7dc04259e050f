import { type CoverKey, stackWords } from '../../../rules/index.ts';
import { temperature } from '../../ground/units.ts';
import { doubtsOf } from '../../language/doubts.ts';
import type { Understood } from '../../language/understood.ts';
import { isCover, shortCover } from '../../text/night-words.ts';
import { orderSentence } from '../../text/order-words.ts';
import { capitalised, list } from '../../text/phrases.ts';
import { cropWord, type Reader } from '../../text/reader.ts';
import { atWords, oddsLine, underWords } from '../../text/verdict-words.ts';
import type { Answered, AskContext } from './answered.ts';
import { type AskedNight, statedNight } from './asked-night.ts';
import { assumedLines } from './assumed.ts';
import type { Judged } from './judged.ts';
import { judgedPlots, type Plot } from './plots.ts';
import { refused } from './refused.ts';
import { cautionsOf, marginLine } from './survive.ts';

/** One way to read a question that leaves something open. */
interface Reading {
  readonly night: AskedNight;
  readonly covers: readonly CoverKey[];
  readonly judged: readonly Judged[];
}

/** Steps told at most, of the crops that do not hold in the worse reading. */
const MOST_STEPS = 3;

/**
 * Where the text leaves open whether a cover is on, or which of two temperatures is the night's low: the verdict of each
 * reading, so that the worse is never hidden behind the better.
 */
export function bothWaysAnswer(
  understood: Understood,
  plots: readonly Plot[],
  context: AskContext,
  night: AskedNight,
): Answered {
  const { reader } = context;
  const readings: Reading[] = [];
  for (const { night: low, covers } of casesOf(understood, night, context)) {
    const ofStack = plots.filter((plot) => plot.covers.join() === covers.join());
    const judged = judgedPlots(ofStack.length > 0 ? ofStack : plots, low);
    if ('problem' in judged) return refused(understood, orderSentence(judged, reader));
    readings.push({ night: low, covers, judged });
  }
  const all = readings.flatMap(({ judged }) => judged);
  const worse = readings.flatMap(({ judged, night: low }) =>
    judged.filter(({ verdict }) => verdict.verdict !== 'holds').map((one) => ({ one, low })),
  );
  const steps = worse
    .slice(-MOST_STEPS)
    .flatMap(({ one, low }) => marginLine(one, { ...understood, covers: one.covers }, low, reader) ?? []);
  return {
    understood,
    judged: all,
    cautions: cautionsOf(all, understood),
    reply: {
      headline: headline(readings, understood, reader),
      sections: [
        { lines: readings.flatMap((reading) => rows(reading, reader)) },
        { lines: [...new Set(steps), ...assumedLines(all, understood, night, reader)] },
      ],
      private: false,
    },
  };
}

function casesOf(understood: Understood, night: AskedNight, { now }: AskContext) {
  const { covers = [], coversOtherwise, lowOtherwise } = understood;
  const nights = lowOtherwise === undefined ? [night] : [night, statedNight(lowOtherwise.lowC, understood, now)];
  const stacks = coversOtherwise === undefined ? [covers] : [covers, coversOtherwise];
  return nights.flatMap((each) => stacks.map((keys) => ({ night: each, covers: keys })));
}

/** "Lettuce at 24 °F. With the blanket on: holds. If it is not on: leaf burn." */
function headline(readings: readonly Reading[], understood: Understood, reader: Reader): string {
  const [first] = readings;
  if (first === undefined) return '';
  const names = capitalised(list([...new Set(first.judged.map(({ crop }) => cropWord(crop, reader)))]));
  const where = understood.lowOtherwise ? underWords(first.covers, reader) : atWords(first.night, reader);
  const said = readings.map((reading) => verdictsOf(reading, reader));
  const isSame = new Set(said).size === 1;
  const told = readings.map(
    (reading, index) => `${capitalised(caseWords(reading, understood, reader))}: ${said[index]}.`,
  );
  const subject = understood.lowOtherwise && understood.coversOtherwise ? names : `${names} ${where}`;
  return isSame ? `${subject}: ${said[0]} ${eitherWay(understood)}.` : `${subject}. ${told.join(' ')}`;
}

function eitherWay(understood: Understood): string {
  return doubtsOf(understood).includes('covers') ? 'with the cover on or off' : 'at either temperature';
}

/** "holds", or "lettuce leaf burn, kale holds". */
function verdictsOf({ judged }: Reading, reader: Reader): string {
  const words = new Set(judged.map(({ verdict }) => verdict.verdict));
  if (words.size === 1) return [...words].join();
  return judged.map(({ crop, verdict }) => `${cropWord(crop, reader)} ${verdict.verdict}`).join(', ');
}

function caseWords({ night, covers }: Reading, understood: Understood, reader: Reader): string {
  const at = understood.lowOtherwise === undefined ? [] : [atWords(night, reader)];
  const on = understood.coversOtherwise === undefined ? [] : [onWords(covers, understood, reader)];
  return [...at, ...on].join(' ');
}

/** "with the blanket on", "if it is not on". */
function onWords(covers: readonly CoverKey[], { covers: all = [], coversOtherwise = [] }: Understood, reader: Reader) {
  const left = [...coversOtherwise];
  const doubted = all.filter((key) => {
    const at = left.indexOf(key);
    if (at >= 0) left.splice(at, 1);
    return at < 0 && isCover(key);
  });
  if (covers.join() !== all.join()) return doubted.length > 1 ? 'if they are not on' : 'if it is not on';
  const names = doubted.map((key) => `the ${shortCover(key, reader)}`);
  return names.length === 0 ? `with ${stackWords(all, reader.dialect)}` : `with ${list([...new Set(names)])} on`;
}

function rows({ night, judged }: Reading, reader: Reader): readonly string[] {
  return judged.map(({ crop, covers, verdict }) => {
    const what = crop.judgedBy === 'surface' ? 'soil surface' : 'leaf';
    const low = temperature(verdict.organLowC, reader.units);
    const name = capitalised(cropWord(crop, reader));
    return `${name} ${underWords(covers, reader)} ${atWords(night, reader)}: ${verdict.verdict}, ${what} low about ${low}. ${oddsLine(verdict.odds)}`;
  });
}
