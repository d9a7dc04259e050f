import type { CropId } from './crop-names-table.ts';
import { CROP_TRAITS } from './crop-traits-table.ts';
import { HARDINESS_ROWS } from './hardiness-list.ts';
import type { Authority, ColdEffect } from './hardiness-row.ts';

/** What a source says of one kind of a crop, apart from the others. */
export interface CropKind {
  /** As the source calls it: "winter types". */
  readonly words: string;
  readonly effect: Exclude<ColdEffect, 'freezing-point'>;
  /** Outside low with the plant bare. [°C] */
  readonly outsideC: number;
  /** It was still alive (or unmarked) there: the effect comes colder. */
  readonly colder: boolean;
  readonly authority: Authority;
}

/** Words by which sources tell kinds of one crop apart. */
const KIND = /\b(types?|cultivars?|kinds?|savoy(ed)?|hardneck|softneck)\b/i;

/**
 * Kinds of a crop that sources tell apart, the tenderest first.
 *
 * @param cropId - Key of a crop of the table.
 * @returns Outside lows of bare, hardened plants as read; empty where no source tells kinds apart. One source a kind: these are
 * words to choose a variety by, and move no verdict.
 */
export function cropKinds(cropId: CropId): readonly CropKind[] {
  const { rows: eaten, other } = CROP_TRAITS[cropId];
  const rows = [...eaten, ...(other?.rows ?? [])];
  const kinds = HARDINESS_ROWS.flatMap((row): CropKind[] => {
    const isOfCrop = rows.some(([crop, part]) => crop === row.crop && part === row.part);
    const words = row.note.split(';')[0]?.trim() ?? '';
    if (!isOfCrop || row.thermometer !== 'screen' || row.state === 'unhardened' || !KIND.test(words)) return [];
    if (row.effect === 'freezing-point') return [];
    const { value } = row;
    const colder = typeof value !== 'number';
    const outsideC = colder ? value.colderThanC : value;
    return [{ words, effect: row.effect, outsideC, colder, authority: row.authority }];
  });
  return kinds.toSorted((one, other) => other.outsideC - one.outsideC);
}
