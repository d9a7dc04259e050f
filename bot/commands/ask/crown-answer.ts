import { CROWNS, type CrownFacts, crownOf } from '../../../rules/index.ts';
import { temperature } from '../../ground/units.ts';
import type { Understood } from '../../language/understood.ts';
import type { Section } from '../../talk/reply.ts';
import { kindsLines } from '../../text/kinds-words.ts';
import { layingWords } from '../../text/night-words.ts';
import { capitalised } from '../../text/phrases.ts';
import { cropWord, type Reader } from '../../text/reader.ts';
import { atWords, oddsLine, organLowLine, underWords } from '../../text/verdict-words.ts';
import type { Answered, AskContext } from './answered.ts';
import type { AskedNight } from './asked-night.ts';
import { assumedLine } from './assumed.ts';
import { measureLines } from './before-night.ts';
import { type Judged, judged } from './judged.ts';
import type { Plot } from './plots.ts';
import { snowLines } from './snow-lines.ts';
import { stepOf } from './steps.ts';

/** A plant that comes again from below: what dies of the top and what of the plant; undefined for any other. */
export function crownAnswer(
  understood: Understood,
  { crop, covers, state, bedName }: Plot,
  { reader }: AskContext,
  night: AskedNight,
): Answered | undefined {
  const facts = CROWNS[crop.id];
  const below = crownOf(crop);
  if (facts === undefined || below === undefined) return undefined;
  const plant = judged(below, covers, night, state);
  const top = judged(crop, covers, night, state);
  if (!('verdict' in plant) || !('verdict' in top)) return undefined;
  const topLine = crop.organ === 'crown' ? leavesLine(facts) : topWords(facts, top, reader);
  const sections: Section[] = [
    { lines: [topLine, facts.care, ...coverLine(plant, night, understood, reader), ...kindsLines(crop, reader)] },
    { lines: [organLowLine(below, plant.verdict, plant.night.spread.sdK, reader), oddsLine(plant.verdict.odds)] },
    {
      lines: [
        ...measureLines(covers, understood, night, reader),
        ...snowLines(plant, understood, night, reader),
        ...assumedLine([plant], understood, night, reader),
      ],
    },
  ];
  return {
    understood,
    judged: [bedName === undefined ? plant : { ...plant, bedName }],
    cautions: crop.id === 'rhubarb' && top.verdict.verdict !== 'holds' ? ['rhubarb'] : [],
    reply: { headline: headline(plant, facts, night, reader), sections, private: false },
  };
}

function headline({ crop, covers, verdict }: Judged, { part }: CrownFacts, night: AskedNight, reader: Reader): string {
  const name = `${capitalised(cropWord(crop, reader))} ${underWords(covers, reader)} ${atWords(night, reader)}`;
  const many = part.endsWith('s');
  switch (verdict.verdict) {
    case 'holds':
      return `${name}: holds. The ${part} ${many ? 'live' : 'lives'}.`;
    case 'on the edge':
    case 'leaf burn':
      return `${name}: on the edge; mulch the ${part}.`;
    default:
      return `${name}: ${verdict.verdict}. The ${part} ${many ? 'are' : 'is'} at risk: cover ${many ? 'them' : 'it'} today.`;
  }
}

function leavesLine({ tops }: CrownFacts): string {
  return `${capitalised(tops)} may brown; they are no loss.`;
}

function topWords({ tops, diesDown }: CrownFacts, { verdict }: Judged, reader: Reader): string {
  const low = temperature(verdict.tolerance.firstMarkC, reader.units);
  if (verdict.verdict === 'holds') return `${capitalised(tops)} that stand hold too (they mark at about ${low}).`;
  const are = `${capitalised(tops)} that are up are marked or lost below about ${low}`;
  return diesDown
    ? `${are}: pick what is good today, or cover it. The plant comes again.`
    : `${are}; the plant grows on.`;
}

/** The cover that brings the plant through; mulch comes first. */
function coverLine(plant: Judged, night: AskedNight, { shed }: Understood, reader: Reader): string[] {
  const step = stepOf(plant, night, shed);
  if (step.kind !== 'add' || !step.holds) return [];
  return [
    `To make it hold: ${layingWords(step.keys, step.added, reader)} (low about ${temperature(step.after.worst.organLowC, reader.units)}).`,
  ];
}
