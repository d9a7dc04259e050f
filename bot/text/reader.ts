import type { Crop, Dialect } from '../../rules/index.ts';
import { readsBritish, type UnitSystem, unitSystemOf } from '../ground/units.ts';

/** Who reads a reply: in which units, and whose words for things. */
export interface Reader {
  readonly units: UnitSystem;
  readonly dialect: Dialect;
}

/** The reader that a locale suggests, with the units that the person has chosen if any. */
export function readerOf(locale: string, chosen?: UnitSystem): Reader {
  return { units: chosen ?? unitSystemOf(locale), dialect: readsBritish(locale) ? 'british' : 'american' };
}

export function cropWord(crop: Crop, { dialect }: Reader): string {
  const { american, british } = crop.name;
  return dialect === 'british' ? (british ?? american) : american;
}
