import type { NightVerdict } from '../../../rules/index.ts';
import type { Understood } from '../../language/understood.ts';
import { isCover, shortCover } from '../../text/night-words.ts';
import { list } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import { windSpeed } from '../../text/units.ts';
import type { AskedNight } from './asked-night.ts';
import type { Judged } from './judged.ts';

/** " grown cold", " grown warm", or nothing where cold makes no difference. */
export function stateWords({ hardening, verdict, crop }: Pick<Judged, 'hardening' | 'verdict' | 'crop'>): string {
  if (hardening === 'no-matter') return '';
  return isWarm(verdict, crop) ? ' grown warm' : ' grown cold';
}

function isWarm({ tolerance }: NightVerdict, crop: Judged['crop']): boolean {
  const middleC = (crop.unhardened.lt50C + crop.hardened.lt50C) / 2;
  return tolerance.lt50C > middleC;
}

/** What the answer rests on, in a few lines: what was assumed, and the verdict if it is otherwise. */
export function assumedLine(one: Judged, understood: Understood, night: AskedNight, reader: Reader): string[] {
  const assumed = [
    ...nightWords(understood, night, reader),
    ...(one.hardening === 'assumed' ? ['hardened plants'] : []),
    ...coverWords(one, understood, reader),
  ];
  const lines = assumed.length === 0 ? [] : [`Assumed: ${list(assumed)}.`];
  const warm = one.grownWarm;
  if (warm !== undefined) lines.push(`If they have grown warm: ${warm.verdict}.`);
  if (one.pressed !== undefined) lines.push(`Leaves that press against the cover: ${one.pressed.verdict}.`);
  return lines;
}

function nightWords({ sky }: Understood, { assumed }: AskedNight, { units }: Reader): string[] {
  if (assumed === undefined) return [];
  const wind = windSpeed(assumed.windMPerS, units);
  return [
    ...(sky?.cloud === undefined ? [assumed.sky === 'clear' ? 'clear sky' : `${assumed.sky} sky`] : []),
    ...(sky?.wind === undefined ? [`light wind (${wind})`] : []),
    'moist soil of the season',
  ];
}

function coverWords({ night, bedName }: Judged, { covers: said, options }: Understood, reader: Reader): string[] {
  const words: string[] = [];
  if (bedName === undefined && said === undefined && options === undefined) words.push('nothing over them');
  if (night.stack.touchesLeaves) words.push('cover lying lightly');
  if (night.stack.notes.includes('row-cover-weight-assumed')) words.push('row cover of medium weight');
  if (night.stack.notes.includes('frame-assumed'))
    words.push(reader.units === 'us' ? 'a wooden frame of 4 by 8 ft' : 'a wooden frame of 1.2 by 2.4 m');
  const off = night.stack.takenOffByDay.filter(isCover);
  if (off.length > 0) words.push(`the ${list(off.map((key) => shortCover(key, reader)))} taken off by day`);
  return words;
}
