import { type CropId, cropById } from '../../../rules/index.ts';
import { temperature } from '../../ground/units.ts';
import type { Understood } from '../../language/understood.ts';
import { isCover } from '../../text/night-words.ts';
import { capitalised, list } from '../../text/phrases.ts';
import { cropWord } from '../../text/reader.ts';
import { atWords, underWords } from '../../text/verdict-words.ts';
import type { Answered, AskContext } from './answered.ts';
import { assumedLine } from './assumed.ts';
import { compareAnswer } from './compare-covers.ts';
import { judgedNight } from './judged.ts';

/** "Does a second layer of fabric double it?": two layers against one. */
export function layersAnswer(understood: Understood, context: AskContext): Answered | undefined {
  const { covers = [], lowC } = understood;
  const soft = covers.filter(isCover);
  const isDoubled = soft.length === 2 && soft[0] === soft[1];
  if (!isDoubled || lowC !== undefined) return undefined;
  return compareAnswer({ ...understood, options: [covers, covers.slice(1), []] }, [], context);
}

/** One crop for each kind of plant that growers ask about, tender to hardy. */
const TYPICAL: readonly CropId[] = ['tomato', 'basil', 'potato', 'lettuce', 'broccoli', 'chard', 'spinach', 'kale'];

/** A low with a sky, a wind or a cover, and no crop: how cold leaves get, and what that means for tender and hardy ones. */
export function openAnswer(understood: Understood, context: AskContext): Answered | undefined {
  const { night, reader } = context;
  const { sky, covers = [], unused = [], exposure, when } = understood;
  const tells = sky !== undefined || unused.length > 0 || exposure !== undefined;
  if (night === undefined || !tells || when === 'last-night' || understood.choices.length > 0) return undefined;
  const bed = night.under({ covers });
  if (bed.kind === 'unsound') return undefined;
  const state = { hardened: understood.hardened, stage: understood.stage };
  const all = TYPICAL.flatMap((id) => cropById(id) ?? []).map((crop) => judgedNight(crop, covers, bed, night, state));
  const named = (holds: boolean) =>
    list(
      all.filter(({ verdict }) => (verdict.verdict === 'holds') === holds).map(({ crop }) => cropWord(crop, reader)),
    );
  const frosts = bed.leafLowC <= 0;
  const atRisk = named(false);
  const holding = named(true);
  return {
    understood,
    judged: [],
    cautions: [],
    reply: {
      headline: `${capitalised(atWords(night, reader))} ${underWords(covers, reader)}: ${frosts ? 'frost on the leaves' : 'leaves stay above freezing'}, about ${temperature(bed.leafLowC, reader.units)} at the coldest.`,
      sections: [
        {
          lines: [
            ...(atRisk === '' ? [] : [`Cover or bring in today: ${atRisk}.`]),
            ...(holding === '' ? [] : [`Hold: ${holding}.`]),
            ...skyLines(understood),
            'Name the crop and I give its odds.',
          ],
        },
        { lines: assumedLine(all.slice(0, 1), understood, night, reader) },
      ],
      private: false,
    },
  };
}

/** What people hope of wind, cloud and the felt temperature. */
export function skyLines({ sky, unused = [] }: Understood): string[] {
  const wind = sky?.windMPerS ?? (sky?.wind === 'calm' || sky?.wind === 'light' ? 1 : undefined);
  return [
    ...(unused.includes('wind chill') ? ['Plants feel the air, not the wind chill: only skin does.'] : []),
    ...(wind !== undefined && wind < STIRRING_M_PER_S ? ['So little wind does not keep frost off.'] : []),
    ...(sky?.cloud === 'half' ? ['Patchy cloud cannot be relied on: it frosts in the clear spells.'] : []),
    ...(sky?.cloud === 'overcast'
      ? ['Cloud keeps the warmth in; if it clears before dawn the leaves are colder.']
      : []),
  ];
}

/** Steady wind that keeps leaves near the air (common practice: 5 mph and more). [m s⁻¹] */
const STIRRING_M_PER_S = 2.3;
