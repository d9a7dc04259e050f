import { type CoverKey, CROPS, type Crop, cropById } from '../../../rules/index.ts';
import { temperature } from '../../ground/units.ts';
import type { Understood } from '../../language/understood.ts';
import { orderSentence } from '../../text/order-words.ts';
import { list } from '../../text/phrases.ts';
import { cropWord } from '../../text/reader.ts';
import { atWords, underWords } from '../../text/verdict-words.ts';
import type { Answered, AskContext } from './answered.ts';
import type { AskedNight } from './asked-night.ts';
import { assumedLine } from './assumed.ts';
import { type Judged, judgedNight } from './judged.ts';
import { refused } from './refused.ts';

/** Crops told by name in each group; the rest is counted. */
const MOST_NAMED = 14;

/** "What can take 20 °F under fleece?": the crops of the table, or the ones named, sorted by what the night does to them. */
export function whichCropsAnswer(
  understood: Understood,
  crops: readonly Crop[],
  context: AskContext,
  night: AskedNight,
): Answered {
  const { reader } = context;
  const covers: readonly CoverKey[] = understood.covers ?? [];
  const bed = night.under({ covers });
  if (bed.kind === 'unsound') return refused(understood, orderSentence(bed, reader));
  const kind = understood.choices.flatMap((id) => cropById(id) ?? []);
  const asked = [crops, kind, CROPS].find((some) => some.length > 0) ?? CROPS;
  const state = { hardened: understood.hardened, stage: understood.stage };
  const all = asked.map((crop) => judgedNight(crop, covers, bed, night, state));
  all.sort((a, b) => b.verdict.odds.noMark - a.verdict.odds.noMark);
  const group = (...words: readonly Judged['verdict']['verdict'][]) =>
    all.filter(({ verdict }) => words.includes(verdict.verdict));
  const holding = group('holds');
  const where = `${underWords(covers, reader)} ${atWords(night, reader)}`;
  const sections = [
    { title: 'Hold', lines: named(holding, context) },
    { title: 'On the edge', lines: named(group('on the edge'), context) },
    { title: 'Leaf burn', lines: named(group('leaf burn'), context) },
    { title: 'Winterkill', lines: named(group('winterkill'), context) },
    { lines: [...assumedLine(all.slice(0, 1), understood, night, reader), ...warmLine(holding)] },
  ];
  return {
    understood,
    judged: asked === CROPS ? holding : all,
    cautions: [],
    reply: {
      headline: `${holding.length} of ${all.length} crops hold ${where}; leaf low about ${temperature(bed.leafLowC, reader.units)}.`,
      sections: sections.filter(({ lines }) => lines.length > 0),
      private: false,
    },
  };
}

/** How many of those that hold do so only because they have grown cold. */
function warmLine(holding: readonly Judged[]): readonly string[] {
  const still = holding.filter(({ grownWarm }) => grownWarm === undefined).length;
  if (still === holding.length) return [];
  return [`If they have grown warm: ${still === 0 ? 'none' : still} of them ${still < 2 ? 'holds' : 'hold'}.`];
}

function named(group: readonly Judged[], { reader }: AskContext): string[] {
  if (group.length === 0) return [];
  const words = group.map(({ crop }) => cropWord(crop, reader));
  const rest = words.length - MOST_NAMED;
  return [rest > 1 ? `${words.slice(0, MOST_NAMED).join(', ')} and ${rest} more.` : `${list(words)}.`];
}
