import {
  type BedNight,
  type ColdestLow,
  coldestLowC,
  type OrdinaryNightsOfBed,
  ordinaryNights,
} from '../../../rules/index.ts';
import { temperature } from '../../ground/units.ts';
import type { Understood } from '../../language/understood.ts';
import { orderSentence } from '../../text/order-words.ts';
import { littleKnownLines } from '../../text/part-words.ts';
import { capitalised, saidBack } from '../../text/phrases.ts';
import { cropWord, type Reader } from '../../text/reader.ts';
import { underWords } from '../../text/verdict-words.ts';
import type { Answered, AskContext } from './answered.ts';
import { nightOptions, saidLaid, statedNight } from './asked-night.ts';
import { assumedLines } from './assumed.ts';
import { type Judged, judgedNight } from './judged.ts';
import type { Plot } from './plots.ts';
import { refused } from './refused.ts';

/** "How cold can leeks go under fleece?": the coldest outside low at which each crop still holds, and where half is lost. */
export function howColdAnswer(understood: Understood, plots: readonly Plot[], context: AskContext): Answered {
  const found: { readonly line: string; readonly judged?: Judged }[] = [];
  const nightsUnder = new Map<string, OrdinaryNightsOfBed>();
  for (const plot of plots) {
    const { covers } = plot;
    const stack = covers.join();
    const nights =
      nightsUnder.get(stack) ??
      ordinaryNights({ ...saidLaid(understood), covers }, nightOptions(understood, context.now));
    nightsUnder.set(stack, nights);
    const limit = limitOf(plot, nights, understood, context);
    if (limit.holds.kind === 'unsound') return refused(understood, orderSentence(limit.holds, context.reader));
    found.push(told(plot, limit, understood, context));
  }
  const [first, ...others] = found;
  const judged = found.flatMap((each) => each.judged ?? []);
  const night = statedNight(0, understood, context.now);
  const assumed = judged.length === 0 ? [] : assumedLines(judged, understood, night, context.reader);
  const little = [...new Set(plots.flatMap(({ crop }) => littleKnownLines(crop, context.reader)))];
  return {
    understood,
    judged,
    cautions: [],
    reply: {
      headline: first?.line ?? '',
      sections: [{ lines: others.map(({ line }) => line) }, { lines: [...assumed, ...little] }].filter(
        ({ lines }) => lines.length > 0,
      ),
      private: false,
    },
  };
}

interface Limit {
  readonly holds: ColdestLow;
  readonly halfLost: ColdestLow;
}

function limitOf(
  { crop, covers, state }: Plot,
  nights: OrdinaryNightsOfBed,
  understood: Understood,
  context: AskContext,
): Limit {
  const asked = { ...statedNight(0, understood, context.now), ...thereIn(context) };
  const verdict = (night: BedNight) => judgedNight(crop, covers, night, asked, state).verdict;
  return {
    holds: coldestLowC((night) => verdict(night).verdict === 'holds', nights),
    halfLost: coldestLowC((night) => verdict(night).odds.winterkill <= 0.5, nights),
  };
}

function told({ crop, covers, state, bedName }: Plot, limit: Limit, understood: Understood, context: AskContext) {
  const { reader } = context;
  const name = cropWord(crop, reader);
  const whose = bedName === undefined ? '' : `${saidBack(bedName)}: `;
  const what = `${whose}${whose === '' ? capitalised(name) : name} ${underWords(covers, reader)}`;
  const half = halfWords(limit.halfLost, reader);
  if (limit.holds.kind === 'low') {
    const asked = { ...statedNight(0, understood, context.now), ...thereIn(context) };
    const judged = judgedNight(crop, covers, limit.holds.night, asked, state);
    const leaf = temperature(judged.verdict.organLowC, reader.units);
    const part = crop.judgedBy === 'surface' ? 'the soil surface' : 'the leaf';
    return {
      line: `${what} holds down to about ${temperature(limit.holds.lowC, reader.units)} outside (${part} then at about ${leaf}).${half}`,
      judged: bedName === undefined ? judged : { ...judged, bedName },
    };
  }
  return {
    line:
      limit.holds.kind === 'any'
        ? `${what} holds on any night that I can reckon with.`
        : `${what} does not hold on any frost night; keep it where it is warm.`,
  };
}

function halfWords(halfLost: ColdestLow, reader: Reader): string {
  return halfLost.kind === 'low' ? ` Half is lost near ${temperature(halfLost.lowC, reader.units)}.` : '';
}

/** What is known of the member's own site. */
function thereIn({ hardeningUnder }: AskContext): Pick<AskContext, 'hardeningUnder'> {
  return hardeningUnder === undefined ? {} : { hardeningUnder };
}
