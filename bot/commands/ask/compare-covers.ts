import type { CoverKey, Crop } from '../../../rules/index.ts';
import { temperature } from '../../ground/units.ts';
import type { Understood } from '../../language/understood.ts';
import { orderSentence } from '../../text/order-words.ts';
import { capitalised, list } from '../../text/phrases.ts';
import { cropWord } from '../../text/reader.ts';
import { atWords, oddsLine, underWords } from '../../text/verdict-words.ts';
import type { Answered, AskContext } from './answered.ts';
import { type AskedNight, statedNight } from './asked-night.ts';
import { assumedLines, nightWords as assumedNight } from './assumed.ts';
import { type Judged, judged } from './judged.ts';
import { refused } from './refused.ts';

/** Low of the night on which covers are held side by side when none was named: a hard freeze. [°C] */
const USUAL_LOW_C = -7;

interface Compared {
  readonly covers: readonly CoverKey[];
  readonly leafLowC: number;
  readonly lightFraction: number;
  readonly judged: readonly Judged[];
}

/** "Blanket or low tunnel?": the stacks side by side on one night, the warmer first. */
export function compareAnswer(understood: Understood, crops: readonly Crop[], context: AskContext): Answered {
  const { reader } = context;
  const night = context.night ?? statedNight(USUAL_LOW_C, understood, context.now);
  const options = understood.options ?? [understood.covers ?? [], []];
  const compared: Compared[] = [];
  for (const covers of options) {
    const one = comparedUnder(covers, crops, understood, night);
    if ('problem' in one) return refused(understood, orderSentence(one, reader));
    compared.push(one);
  }
  compared.sort((a, b) => b.leafLowC - a.leafLowC);
  const judgedAll = compared.flatMap((each) => each.judged);
  const at = atWords(night, reader);
  const [best, second] = compared;
  const tie = best !== undefined && second !== undefined && best.leafLowC - second.leafLowC < 0.5;
  const warmer = underWords(best?.covers ?? [], reader).replace('under ', '');
  return {
    understood,
    judged: judgedAll,
    cautions: [],
    reply: {
      headline: tie
        ? `${capitalised(at)} they are as good as equal.`
        : `${capitalised(at)} ${warmer} keeps the leaf warmer.`,
      sections: [
        { lines: compared.map((each) => row(each, context)) },
        {
          lines:
            judgedAll.length === 0
              ? nightLine(night, understood, context)
              : assumedLines(judgedAll, understood, night, reader),
        },
      ],
      private: false,
    },
  };
}

function comparedUnder(covers: readonly CoverKey[], crops: readonly Crop[], understood: Understood, night: AskedNight) {
  const bed = night.under({ covers });
  if (bed.kind === 'unsound') return bed;
  const each = crops.map((crop) =>
    judged(crop, covers, night, { hardened: understood.hardened, stage: understood.stage }),
  );
  return {
    covers,
    leafLowC: bed.leafLowC,
    lightFraction: bed.stack.sunTransmittedFraction,
    judged: each.filter((one): one is Judged => 'verdict' in one),
  };
}

function row({ covers, leafLowC, lightFraction, judged }: Compared, { reader }: AskContext): string {
  const verdicts = judged.map(
    ({ crop, verdict }) => ` ${capitalised(cropWord(crop, reader))}: ${verdict.verdict}. ${oddsLine(verdict.odds)}`,
  );
  const light = lightFraction >= 0.995 ? '' : `, by day ${Math.round(lightFraction * 100)} % of the light`;
  return `${capitalised(underWords(covers, reader).replace('under ', ''))}: leaf low about ${temperature(leafLowC, reader.units)}${light}.${verdicts.join('')}`;
}

function nightLine(night: AskedNight, understood: Understood, { reader }: AskContext): string[] {
  const named =
    understood.lowC === undefined ? `You named no low, so I took ${temperature(night.lowC, reader.units)}. ` : '';
  return night.assumed === undefined ? [] : [`${named}Assumed: ${list(assumedNight(understood, night, reader))}.`];
}
