import {
  CROPS,
  type Crop,
  HARVESTS,
  type HarvestChoice,
  type HarvestKind,
  harvestChoice,
  harvestKind,
  isDormant,
} from '../../../rules/index.ts';
import { temperature } from '../../ground/units.ts';
import type { Understood } from '../../language/understood.ts';
import type { Section } from '../../talk/reply.ts';
import { layingWords } from '../../text/night-words.ts';
import { orderSentence } from '../../text/order-words.ts';
import { capitalised, list, saidBack } from '../../text/phrases.ts';
import { cropWord, type Reader } from '../../text/reader.ts';
import { atWords, oddsLine, organLowLine, underWords } from '../../text/verdict-words.ts';
import type { Answered, AskContext } from './answered.ts';
import type { AskedNight } from './asked-night.ts';
import { assumedLines } from './assumed.ts';
import { crownAnswer } from './crown-answer.ts';
import { type Judged, judged } from './judged.ts';
import { judgedPlots, type Plot } from './plots.ts';
import { refused } from './refused.ts';
import { stepOf } from './steps.ts';

/** Crops told by name in each group; the rest is counted. */
const MOST_NAMED = 8;

/** One crop, what the night does to it and what to do before. */
interface Choice {
  readonly one: Judged;
  readonly choice: HarvestChoice;
  readonly step: ReturnType<typeof stepOf>;
}

/** "Should I harvest before a freeze of 15 °F?": what comes in, what a cover saves, what stays. */
export function harvestAnswer(
  understood: Understood,
  plots: readonly Plot[],
  context: AskContext,
  night: AskedNight,
): Answered {
  if (plots.length === 0) return wholeGarden(understood, context, night);
  const [plot] = plots;
  const ofCrown =
    plots.length === 1 && plot !== undefined && isDormant(plot.crop, context.now, 40)
      ? crownAnswer(understood, plot, context, night)
      : undefined;
  if (ofCrown !== undefined) return ofCrown;
  const all = judgedPlots(plots, night);
  if ('problem' in all) return refused(understood, orderSentence(all, context.reader));
  const choices = all.map((one): Choice => {
    const step = stepOf(one, night, understood.shed);
    return { one, step, choice: harvestChoice(one.crop, one.verdict, step) };
  });
  choices.sort((a, b) => URGENCY[a.choice] - URGENCY[b.choice]);
  const [only] = choices;
  const sections =
    choices.length === 1 && only !== undefined
      ? oneInFull(only, understood, night, context.reader)
      : [
          { lines: choices.map((each) => shortLine(each, context.reader)) },
          { lines: assumedLines(all, understood, night, context.reader) },
        ];
  const head =
    choices.length === 1 && only !== undefined
      ? headline(only, night, context.reader)
      : summary(choices, night, context.reader);
  return { understood, judged: all, cautions: [], reply: { headline: head, sections, private: false } };
}

const URGENCY: Readonly<Record<HarvestChoice, number>> = { pick: 0, cover: 1, leave: 2 };

function headline({ one, choice, step }: Choice, night: AskedNight, reader: Reader): string {
  const name = `${capitalised(cropWord(one.crop, reader))} ${atWords(night, reader)}`;
  switch (choice) {
    case 'pick':
      return `${name}: pick today, before dark.`;
    case 'cover':
      return `${name}: ${step.kind === 'add' ? layingWords(step.keys, step.added, reader) : 'cover it'}, or pick what is ready.`;
    case 'leave':
      return `${name}: leave it, it holds ${underWords(one.covers, reader)}.`;
  }
}

function summary(choices: readonly Choice[], night: AskedNight, reader: Reader): string {
  const named = (kind: HarvestChoice) =>
    list([...new Set(choices.filter(({ choice }) => choice === kind).map(({ one }) => cropWord(one.crop, reader)))]);
  const parts = (['pick', 'cover', 'leave'] as const).flatMap((kind) => {
    const names = named(kind);
    return names === '' ? [] : `${{ pick: 'pick', cover: 'cover or pick', leave: 'leave' }[kind]} ${names}`;
  });
  return `${capitalised(atWords(night, reader))}: ${parts.join('; ')}.`;
}

function oneInFull(choice: Choice, understood: Understood, night: AskedNight, reader: Reader): Section[] {
  const { one } = choice;
  const facts = HARVESTS[harvestKind(one.crop)];
  const what = choice.choice === 'leave' ? facts.leave : facts.pick;
  const keeps = choice.choice === 'leave' ? [] : [facts.keeps];
  return [
    { lines: [what, ...coverLine(choice, reader), ...keeps] },
    { lines: [organLowLine(one.crop, one.verdict, one.night.spread.sdK, reader), oddsLine(one.verdict.odds)] },
    { lines: assumedLines([one], understood, night, reader) },
  ];
}

function coverLine({ choice, step }: Choice, reader: Reader): string[] {
  if (step.kind !== 'add' || choice === 'leave') return [];
  const laying = layingWords(step.keys, step.added, reader);
  const low = temperature(step.after.worst.organLowC, reader.units);
  if (choice === 'cover') return [`With it: low about ${low}, it holds.`];
  return [
    step.holds
      ? `To keep the plants: ${laying} (low about ${low}).`
      : `Even ${laying} is not enough (low about ${low}).`,
  ];
}

function shortLine(choice: Choice, reader: Reader): string {
  const { one, step } = choice;
  const whose = one.bedName === undefined ? '' : `${saidBack(one.bedName)}: `;
  const low = temperature(one.verdict.organLowC, reader.units);
  const deed = { pick: 'pick today', cover: 'cover or pick', leave: 'leave' }[choice.choice];
  const cover =
    choice.choice !== 'leave' && step.kind === 'add' && step.holds
      ? ` ${capitalised(layingWords(step.keys, step.added, reader))} brings the plants through.`
      : '';
  return `${whose}${capitalised(cropWord(one.crop, reader))}: ${deed} (${one.verdict.verdict} ${underWords(one.covers, reader)}, low about ${low}).${cover}`;
}

/** Tender kinds, the fruit that most people grow first. */
const TENDER_ORDER: readonly HarvestKind[] = ['tender-fruit', 'hard-squash', 'tender-leaf'];

function byKind(one: Judged, other: Judged): number {
  return TENDER_ORDER.indexOf(harvestKind(one.crop)) - TENDER_ORDER.indexOf(harvestKind(other.crop));
}

/** No crop named: the crops of the table by what a grower does before such a night. */
function wholeGarden(understood: Understood, context: AskContext, night: AskedNight): Answered {
  const { reader } = context;
  const state = { hardened: understood.hardened, stage: understood.stage };
  const covers = understood.covers ?? [];
  const all = CROPS.map((crop) => judged(crop, covers, night, state));
  const unsound = all.find((one) => 'problem' in one);
  if (unsound !== undefined && 'problem' in unsound) return refused(understood, orderSentence(unsound, reader));
  const sound = all.filter((one): one is Judged => !('problem' in one));
  const isTender = ({ crop }: Judged) => TENDER_ORDER.includes(harvestKind(crop));
  const dies = sound.filter(({ verdict }) => verdict.verdict !== 'holds');
  const holds = sound.filter(({ verdict }) => verdict.verdict === 'holds');
  const sections = [
    group('Pick today, before dark', 'All fruit of tender crops:', dies.filter(isTender).toSorted(byKind), reader),
    group(
      'Cover tonight, or pick what is ready',
      '',
      dies.filter((one) => !isTender(one) && one.crop.judgedBy === 'leaf'),
      reader,
    ),
    group(
      'Mulch, or lift what stands out of the soil',
      '',
      dies.filter(({ crop }) => crop.judgedBy === 'surface'),
      reader,
    ),
    group('Leave', '', holds, reader),
    { lines: assumedLines(sound.slice(0, 1), understood, night, reader).slice(0, 1) },
  ].flatMap((section) => section ?? []);
  return {
    understood,
    judged: holds,
    cautions: [],
    reply: {
      headline: `${capitalised(atWords(night, reader))}, ${underWords(covers, reader)}: pick what freezing spoils, cover what it only burns, leave the rest.`,
      sections,
      private: false,
    },
  };
}

function group(title: string, lead: string, some: readonly Judged[], reader: Reader): Section | undefined {
  if (some.length === 0) return undefined;
  const names = some.map(({ crop }: { crop: Crop }) => cropWord(crop, reader));
  const rest = names.length - MOST_NAMED;
  const told = rest > 1 ? `${names.slice(0, MOST_NAMED).join(', ')} and ${rest} more.` : `${list(names)}.`;
  return { title, lines: [lead === '' ? capitalised(told) : `${lead} ${told}`] };
}
