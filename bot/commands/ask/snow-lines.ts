import { shortLength, temperature } from '../../ground/units.ts';
import type { Understood } from '../../language/understood.ts';
import { isCover } from '../../text/night-words.ts';
import type { Reader } from '../../text/reader.ts';
import type { AskedNight } from './asked-night.ts';
import { type Judged, judged } from './judged.ts';

/** Less snow than this keeps out neither cold nor light, as in `coverStack`. [m] */
const THINNEST_M = 0.02;

/** Snow that lies beside the plants is none on them: what it would be worth, and what it is not. */
export function snowLines(
  one: Judged,
  { snow, hardened, stage }: Understood,
  night: AskedNight,
  reader: Reader,
): string[] {
  if (snow === undefined || one.covers.some(isCover)) return [];
  if (snow.where === 'falling') return ['Snow that is still to fall is not counted: it can come late, or blow off.'];
  if (snow.where !== 'on-ground' || snow.depthM === undefined || snow.depthM < THINNEST_M) return [];
  const under = judged(one.crop, ['snow'], night, { hardened, stage });
  if (!('verdict' in under)) return [];
  const low = temperature(under.verdict.organLowC, reader.units);
  return [
    `Where ${shortLength(snow.depthM, reader.units)} of it covers the plants whole: ${under.verdict.verdict} (low about ${low}). Do not clear it off them.`,
  ];
}
