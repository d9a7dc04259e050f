import { CROPS, type Crop, cropNames, plainPhrase } from '../../../rules/index.ts';
import { cropWord, readerOf } from '../../text/reader.ts';
import type { OptionSpec } from '../command.ts';
import { BETWEEN_CROPS } from '../typed/crops.ts';
import { type Entry, matching } from './matching.ts';

const MOST = 25;

/** Completes the last of the crops being typed, by names on both sides of the Atlantic, aliases, varieties and misspellings. */
export const suggestCrops: NonNullable<OptionSpec['suggest']> = async (typed, { locale }) => {
  const reader = readerOf(locale);
  const parts = typed.split(BETWEEN_CROPS).map((part) => part.trim());
  const before = parts.slice(0, -1).filter((part) => part !== '');
  return matching(parts.at(-1) ?? '', ENTRIES)
    .slice(0, MOST)
    .map((crop) => {
      const words = [...before, cropWord(crop, reader)].join(', ');
      return { label: words, value: [...before, crop.id].join(', ') };
    });
};

const ENTRIES: readonly Entry<Crop>[] = entries();

function entries(): readonly Entry<Crop>[] {
  const phrases = new Map<string, string[]>();
  for (const { cropId, phrase } of cropNames()) phrases.set(cropId, [...(phrases.get(cropId) ?? []), phrase]);
  return CROPS.map((crop) => ({ of: crop, phrases: [plainPhrase(crop.id), ...(phrases.get(crop.id) ?? [])] }));
}
