import {
  type BedVerdict,
  bedVerdict,
  type CoverKey,
  type Crop,
  type FurtherCover,
  furtherCovers,
  suitableCovers,
} from '../../../rules/index.ts';
import { temperature } from '../../ground/units.ts';
import type { Understood } from '../../language/understood.ts';
import { isCover } from '../../text/night-words.ts';
import { orderSentence } from '../../text/order-words.ts';
import { capitalised, list } from '../../text/phrases.ts';
import { cropWord, type Reader } from '../../text/reader.ts';
import { atWords, oddsLine, organLowLine, underWords } from '../../text/verdict-words.ts';
import type { Answered, AskContext } from './answered.ts';
import { type AskedNight, hardinessThere } from './asked-night.ts';
import { assumedLines } from './assumed.ts';
import { type Judged, judged } from './judged.ts';
import { judgedPlots, type Plot } from './plots.ts';
import { refused } from './refused.ts';

const MOST_SHOWN = 3;

/** "What must I lay over my kale at 5 °F?": the covers that make it hold, least trouble first. */
export function whatCoverAnswer(
  understood: Understood,
  plots: readonly Plot[],
  context: AskContext,
  night: AskedNight,
): Answered {
  const { reader } = context;
  const crops = plots.map(({ crop }) => crop);
  const start = plots[0]?.covers ?? [];
  const names = list(crops.map((crop) => cropWord(crop, reader)));
  const at = atWords(night, reader);
  const state = plots[0]?.state ?? { hardened: undefined, stage: undefined };
  const asItIs = judgedPlots(plots, night);
  if ('problem' in asItIs) return refused(understood, orderSentence(asItIs, reader));
  const assumed = assumedLines(asItIs, { ...understood, covers: start }, night, reader);
  if (asItIs.every(({ verdict }) => verdict.verdict === 'holds')) {
    const what = start.length === 0 ? 'needs no cover' : `holds ${underWords(start, reader)} as it is`;
    return {
      understood,
      judged: asItIs,
      cautions: [],
      reply: {
        headline: `${capitalised(names)} ${at}: ${what}.`,
        sections: [{ lines: asItIs.map((one) => asItIsLine(one, asItIs.length > 1, reader)) }, { lines: assumed }],
        private: false,
      },
    };
  }
  const plantings = asItIs.map(({ crop, hardeningIndex }) => {
    const learned = hardinessThere(night, crop, hardeningIndex);
    return { crop, hardeningIndex, ...(learned && { learned }) };
  });
  const verdictOf = (keys: readonly CoverKey[]) => {
    const bed = night.under({ covers: keys });
    return bed.kind === 'unsound' ? undefined : bedVerdict(plantings, keys, bed, night.windMPerS);
  };
  const atRisk = asItIs.filter(({ verdict }) => verdict.verdict !== 'holds').map(({ crop }) => crop);
  const holding = stacksThatHold(start, atRisk, verdictOf);
  const judgedBest = holding
    .flatMap(({ keys }) => crops.map((crop) => judged(crop, keys, night, state)))
    .filter((one) => 'verdict' in one);
  const lines = holding.map(
    ({ keys, worst }, index) => `${index === 0 ? 'Least trouble' : 'Or'}: ${stackLine(keys, worst, context)}`,
  );
  const headline =
    holding[0] === undefined
      ? `${capitalised(names)} ${at}: no cover that I know makes it hold. Pick what is ready.`
      : `${capitalised(names)} ${at}: holds ${underWords(holding[0].keys, reader)}.`;
  return {
    understood,
    judged: holding.length === 0 ? asItIs : judgedBest,
    cautions: [],
    reply: {
      headline,
      sections: [{ lines }, { lines: assumed }].filter((section) => section.lines.length > 0),
      private: false,
    },
  };
}

function asItIsLine(one: Judged, isOneOfSeveral: boolean, reader: Reader): string {
  const { crop, verdict, night } = one;
  const line = `${organLowLine(crop, verdict, night.spread.sdK, reader)} ${oddsLine(verdict.odds)}`;
  return isOneOfSeveral ? `${capitalised(cropWord(crop, reader))}: ${line}` : line;
}

function stackLine(keys: readonly CoverKey[], worst: BedVerdict['worst'], { reader }: AskContext): string {
  return `${underWords(keys, reader).replace('under ', '')}: low about ${temperature(worst.organLowC, reader.units)}. ${oddsLine(worst.odds)}`;
}

/** Up to three stacks of one or, if none does, two more covers with which everything holds. */
function stacksThatHold(
  start: readonly CoverKey[],
  crops: readonly Crop[],
  verdictOf: (keys: readonly CoverKey[]) => BedVerdict | undefined,
): BedVerdict[] {
  const one = suitableCovers(furtherCovers(start), crops);
  const found = holdingOf(one, verdictOf);
  return found.length > 0
    ? found
    : holdingOf(
        one.flatMap(({ keys }) => suitableCovers(furtherCovers(keys), crops)),
        verdictOf,
      );
}

function holdingOf(
  further: readonly FurtherCover[],
  verdictOf: (keys: readonly CoverKey[]) => BedVerdict | undefined,
): BedVerdict[] {
  const found: BedVerdict[] = [];
  const seen = new Set<string>();
  for (const { keys } of further) {
    // The same cover on hoops is no other choice.
    const name = keys.filter(isCover).join();
    if (seen.has(name)) continue;
    seen.add(name);
    const verdict = verdictOf(keys);
    if (verdict?.worst.verdict === 'holds') found.push(verdict);
    if (found.length === MOST_SHOWN) break;
  }
  return found;
}
