import { CAUTIONS, type CoverKey, type SnowHarm, STRUCTURES, snowHarm } from '../../../rules/index.ts';
import { load, shortLength } from '../../ground/units.ts';
import type { Understood } from '../../language/understood.ts';
import { shortCover } from '../../text/night-words.ts';
import type { Reader } from '../../text/reader.ts';
import type { Answered } from './answered.ts';

/** Air that makes snow dry, and wet (judgement): only which of the two counts. [°C] */
const DRY_AIR_C = -5;
const WET_AIR_C = 0;
/** Snow weighs 100 or 250 kg m⁻³, as in `snowLoadKgPerM2`. */
const DRY_KG_PER_M3 = 100;
const WET_KG_PER_M3 = 250;

/** Snow on a tunnel or a light: leave it or push it off, with what it weighs; undefined where no such cover is named. */
export function snowOnCoverAnswer(understood: Understood, reader: Reader): Answered | undefined {
  const cover = understood.covers?.find((key) => STRUCTURES[key] !== undefined);
  if (understood.cautionTopics[0] !== 'snow-load' || cover === undefined) return undefined;
  const { headline, lines } = words(cover, understood.snow, reader);
  return {
    understood,
    judged: [],
    cautions: ['snow-load'],
    reply: { headline, sections: [{ lines: [...lines, CAUTIONS['snow-load'].text] }], private: false },
  };
}

function words(
  cover: CoverKey,
  snow: Understood['snow'],
  reader: Reader,
): { headline: string; lines: readonly string[] } {
  const name = shortCover(cover, reader);
  const bears = STRUCTURES[cover]?.bearsKgPerM2;
  if (bears === undefined) {
    return {
      headline: `Push it off gently: on the ${name} it only presses on the plants.`,
      lines: ['Snow on plants that lie low insulates them; on fabric held up by hoops it pulls the fabric down.'],
    };
  }
  const usual = `The like usually bears ${load(bears, reader.units)}.`;
  if (snow?.depthM === undefined) {
    const most = (density: number) => shortLength(bears / density, reader.units);
    return {
      headline: `Brush it off before it gets deep: a ${name} bears about ${most(WET_KG_PER_M3)} of wet or ${most(DRY_KG_PER_M3)} of dry snow.`,
      lines: [
        'Less than half of that, dry, can stay for the night: it keeps warmth in. Brush it off when you want the sun.',
        usual,
      ],
    };
  }
  const harmIn = (airC: number) => snowHarm(cover, { depthM: snow.depthM ?? 0, airC });
  const harm = harmIn(snow.isWet ? WET_AIR_C : DRY_AIR_C);
  if (harm === undefined) return { headline: `Leave it: a dusting does nothing to a ${name}.`, lines: [usual] };
  const kind = snow.isWet ? 'wet' : 'dry';
  const weighs = `${shortLength(snow.depthM, reader.units)} of ${kind} snow weighs about ${load(harm.loadKgPerM2, reader.units)}.`;
  const wet = snow.isWet ? [] : wetLine(harmIn(WET_AIR_C), reader);
  return { headline: HEADLINES[harm.advice], lines: [`${weighs} ${usual}`, ...wet] };
}

const HEADLINES: Readonly<Record<SnowHarm['advice'], string>> = {
  breaks: 'Push it off now: it weighs more than the cover usually bears.',
  clear: 'Push it off gently before more falls.',
  insulates: 'Leave it for the night: it is light enough and keeps warmth in. Brush it off when you want the sun.',
};

function wetLine(harm: SnowHarm | undefined, reader: Reader): readonly string[] {
  return harm === undefined || harm.advice === 'insulates'
    ? []
    : [`If it is wet it weighs ${load(harm.loadKgPerM2, reader.units)}: then push it off.`];
}
