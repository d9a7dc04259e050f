import { type CropId, cropById } from '../../rules/index.ts';
import { capitalised, list } from './phrases.ts';
import { cropWord, type Reader } from './reader.ts';

/** How hard plants are, in quarters: what the index is good for. */
const QUARTERS = ['not hardened', 'a quarter hardened', 'half hardened', 'three quarters hardened', 'fully hardened'];

/** "three quarters hardened". @param hardeningIndex - 0 grown warm … 1 fully hardened. */
export function hardeningWords(hardeningIndex: number): string {
  const quarter = Math.round(Math.max(0, Math.min(1, hardeningIndex)) * (QUARTERS.length - 1));
  return QUARTERS[quarter] ?? '';
}

interface KnownPlanting {
  readonly cropId: CropId;
  readonly hardeningIndex?: number;
}

/** "Spinach and kale are three quarters hardened, lettuce is half hardened."; empty where nothing is known. */
export function hardeningLines(plantings: readonly KnownPlanting[], reader: Reader): string[] {
  const crops = new Map<string, Set<string>>();
  for (const { cropId, hardeningIndex } of plantings.toSorted(softestFirst)) {
    const crop = cropById(cropId);
    if (crop === undefined || !crop.hardens || hardeningIndex === undefined) continue;
    const words = hardeningWords(hardeningIndex);
    crops.set(words, (crops.get(words) ?? new Set()).add(cropWord(crop, reader)));
  }
  if (crops.size === 0) return [];
  const parts = [...crops].map(([words, names]) => `${list([...names])} ${names.size === 1 ? 'is' : 'are'} ${words}`);
  return [`${capitalised(parts.join(', '))}.`];
}

function softestFirst(one: KnownPlanting, other: KnownPlanting): number {
  return (one.hardeningIndex ?? 1) - (other.hardeningIndex ?? 1);
}
