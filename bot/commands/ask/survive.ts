import {
  type CautionKey,
  type CoverKey,
  CROWNS,
  cautionsFor,
  crownOf,
  isDormant,
  STRUCTURES,
} from '../../../rules/index.ts';
import { temperature } from '../../ground/units.ts';
import type { Understood } from '../../language/understood.ts';
import type { Section } from '../../talk/reply.ts';
import { kindsLines } from '../../text/kinds-words.ts';
import { othersLine } from '../../text/learned-words.ts';
import { layingWords } from '../../text/night-words.ts';
import { orderSentence } from '../../text/order-words.ts';
import { littleKnownLines, otherPartLines } from '../../text/part-words.ts';
import { capitalised, saidBack } from '../../text/phrases.ts';
import { cropWord, type Reader } from '../../text/reader.ts';
import { atWords, oddsLine, organLowLine, toleranceLine, underWords } from '../../text/verdict-words.ts';
import type { Answered, AskContext } from './answered.ts';
import { type AskedNight, hardinessThere } from './asked-night.ts';
import { assumedLines, stateWords } from './assumed.ts';
import { measureLines } from './before-night.ts';
import { remedyLines } from './crop-remedies.ts';
import { crownAnswer } from './crown-answer.ts';
import type { Judged } from './judged.ts';
import { skyLines } from './open-answer.ts';
import { judgedPlots, type Plot } from './plots.ts';
import { refused } from './refused.ts';
import { snowLines } from './snow-lines.ts';
import { stepOf } from './steps.ts';

/** "Will my spinach survive 14 °F under a blanket?": each crop under each stack named, the verdict first. */
export function surviveAnswer(
  understood: Understood,
  plots: readonly Plot[],
  context: AskContext,
  night: AskedNight,
): Answered {
  const [plot] = plots;
  const ofCrown = plots.length === 1 && plot !== undefined ? crownAnswer(understood, plot, context, night) : undefined;
  if (ofCrown !== undefined) return ofCrown;
  const judged = judgedPlots(plots.map(belowGround(context.now)), night);
  if ('problem' in judged) return refused(understood, orderSentence(judged, context.reader));
  // Of the member's own beds the most urgent comes first; what was named stays as it was named.
  const isOwn = judged.some(({ bedName }) => bedName !== undefined);
  const all = isOwn ? judged.toSorted((a, b) => a.verdict.odds.noMark - b.verdict.odds.noMark) : judged;
  const [only] = all;
  const telling = { understood, context, night };
  return {
    understood,
    judged: all,
    cautions: cautionsOf(all, understood),
    reply:
      all.length === 1 && only !== undefined
        ? { headline: headline(only, night, context.reader), sections: oneInFull(only, telling), private: false }
        : { headline: summary(all, night, context.reader), sections: manyInShort(all, telling), private: false },
  };
}

/** What has died down is judged by what lies below the ground. */
function belowGround(now: Date): (plot: Plot) => Plot {
  return (plot) => (isDormant(plot.crop, now, NORTH) ? { ...plot, crop: crownOf(plot.crop) ?? plot.crop } : plot);
}

/** Of a low that is only named nobody knows where; the ordinary night is a northern one. */
const NORTH = 40;

interface Telling {
  readonly understood: Understood;
  readonly context: AskContext;
  readonly night: AskedNight;
}

function headline({ crop, covers, verdict }: Judged, night: AskedNight, reader: Reader): string {
  const where = `${underWords(covers, reader)} ${atWords(night, reader)}`;
  return `${capitalised(cropWord(crop, reader))} ${where}: ${verdict.verdict}.`;
}

function summary(all: readonly Judged[], night: AskedNight, reader: Reader): string {
  const holding = all.filter(({ verdict }) => verdict.verdict === 'holds').length;
  const at = capitalised(atWords(night, reader));
  if (holding === all.length) return `${at} all hold.`;
  return holding === 0 ? `${at} none holds.` : `${at} ${holding} of ${all.length} hold.`;
}

function oneInFull(one: Judged, { understood, context, night }: Telling): Section[] {
  const { reader } = context;
  const { crop, verdict } = one;
  const lines = [
    organLowLine(crop, verdict, one.night.spread.sdK, reader),
    capitalised(toleranceLine(crop, verdict.tolerance, stateWords(one), reader)),
    oddsLine(verdict.odds),
    ...skyLines(understood),
    ...otherPartLines(crop, verdict, one.otherPart),
  ];
  const more = marginLine(one, understood, night, reader);
  return [
    { lines },
    {
      lines: [
        ...measureLines(one.covers, understood, night, reader),
        ...remedyLines(one),
        ...(more === undefined ? [] : [more]),
        ...snowLines(one, understood, night, reader),
        ...assumedLines([one], understood, night, reader),
        ...littleKnownLines(crop, reader),
        ...kindsLines(crop, reader),
        ...othersLines([one], night, reader),
      ],
    },
  ];
}

function manyInShort(all: readonly Judged[], { understood, context, night }: Telling): Section[] {
  const { reader } = context;
  const rows = all.flatMap((one) => {
    const low = temperature(one.verdict.organLowC, reader.units);
    const what = one.crop.judgedBy === 'surface' ? 'soil surface' : 'leaf';
    const name = cropWord(one.crop, reader);
    const whose = one.bedName === undefined ? '' : `${saidBack(one.bedName)}: `;
    const row = `${whose}${whose === '' ? capitalised(name) : name} ${underWords(one.covers, reader)}: ${one.verdict.verdict}, ${what} low about ${low}. ${oddsLine(one.verdict.odds)}`;
    const more =
      (whose === '' && understood.shed === undefined) || one.verdict.verdict === 'holds'
        ? undefined
        : marginLine(one, understood, night, reader);
    const parts = otherPartLines(one.crop, one.verdict, one.otherPart);
    return [row, ...parts, ...remedyLines(one), ...crownLine(one), ...(more === undefined ? [] : [more])];
  });
  const assumed = assumedLines(all, understood, night, reader);
  const little = [...new Set(all.flatMap(({ crop }) => littleKnownLines(crop, reader)))];
  return [{ lines: rows }, { lines: [...assumed, ...little, ...othersLines(all, night, reader)] }];
}

/** What others of the club saw, where it moved a verdict. */
function othersLines(all: readonly Judged[], night: AskedNight, reader: Reader): string[] {
  const lines = all.map((one) => othersLine(one.crop, hardinessThere(night, one.crop, one.hardeningIndex), reader));
  return [...new Set(lines)].filter((line) => line !== undefined);
}

/** "Asparagus: only the spears." */
function crownLine({ crop, verdict }: Judged): string[] {
  const facts = CROWNS[crop.id];
  if (facts === undefined || verdict.verdict === 'holds' || crop.organ === 'crown') return [];
  return [
    `That is the ${facts.tops}: pick what is up. The ${facts.part} ${facts.part.endsWith('s') ? 'live' : 'lives'}.`,
  ];
}

/** The cheapest cover that makes it hold or, where it holds, that gives more margin. */
export function marginLine(one: Judged, understood: Understood, night: AskedNight, reader: Reader): string | undefined {
  // Nothing can be laid over a night that is past.
  if (understood.when === 'last-night') return undefined;
  const step = stepOf(one, night, understood.shed);
  if (step.kind === 'none-helps') return 'No further cover that I know makes it hold: pick what is ready.';
  if (step.kind === 'nothing') return undefined;
  const what = layingWords(step.keys, step.added, reader, step.fromShed);
  const low = temperature(step.after.worst.organLowC, reader.units);
  const anchored = anchorWords(step.added, understood);
  return step.holds
    ? `To make it hold: ${what} (low about ${low}).${anchored}`
    : `It helps, but not enough: ${what} (low about ${low}). Pick what is ready.`;
}

/** What is laid on in a wind has to be held down. */
function anchorWords(added: readonly CoverKey[], { sky }: Understood): string {
  const gust = sky?.gustMPerS ?? gustOf(sky?.windMPerS) ?? 0;
  const blowsOff = added.some((key) => gust >= (STRUCTURES[key]?.anchorFromMPerS ?? Number.POSITIVE_INFINITY));
  return blowsOff ? ' Weigh its edges down all round: this wind takes it off.' : '';
}

export function cautionsOf(all: readonly Judged[], understood: Understood): readonly CautionKey[] {
  const gust = understood.sky?.gustMPerS ?? gustOf(understood.sky?.windMPerS);
  return cautionsFor({
    covers: all.flatMap(({ covers }) => covers),
    foodSafety: all.flatMap(({ crop }) => crop.cautions).filter((key) => key === 'rhubarb' || key === 'potato'),
    freezes: all.some(({ night }) => night.frozenFraction > 0),
    ...(gust !== undefined && { gustMPerS: gust }),
    snow: understood.sky?.snow === true || all.some(({ covers }) => covers.includes('snow')),
  });
}

/** Gusts reach half as much again as the mean wind over open ground (judgement). */
const GUST_RATIO = 1.5;

function gustOf(windMPerS: number | undefined): number | undefined {
  return windMPerS === undefined ? undefined : GUST_RATIO * windMPerS;
}
