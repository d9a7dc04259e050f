import { type Crop, cropById } from '../../../rules/index.ts';
import { cropVocabulary } from '../../language/crop-vocabulary.ts';
import { readCrops } from '../../language/crops.ts';
import { nearestCrops } from '../../language/nearest-crops.ts';
import { type Span, senseOf } from '../../language/span.ts';
import { spansOf } from '../../language/spans.ts';
import { list, saidBack } from '../../text/phrases.ts';
import { cropWord, type Reader } from '../../text/reader.ts';
import { type Read, read, unread } from './read.ts';

/** Where one crop ends and the next begins. */
export const BETWEEN_CROPS = /[,;&+\n]|\band\b/i;

/** Crops by name, alias, misspelling or key, several parted by commas; each once. */
export function typedCrops(text: string, reader: Reader): Read<readonly Crop[]> {
  const parts = text
    .split(BETWEEN_CROPS)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length === 0) return unread('Name a crop, such as spinach.');
  const found = new Set<Crop>();
  for (const part of parts) {
    const crop = typedCrop(part, reader);
    if (!crop.ok) return crop;
    found.add(crop.value);
  }
  return read([...found]);
}

function typedCrop(text: string, reader: Reader): Read<Crop> {
  const byKey = cropById(text.toLowerCase());
  if (byKey !== undefined) return read(byKey);
  const { ids, choices } = namedIn(spansOf(text, cropVocabulary()));
  const [id, ...others] = ids;
  const crop = id === undefined || others.length > 0 ? undefined : cropById(id);
  if (crop !== undefined) return read(crop);
  const several = choices.length > 0 ? choices : ids;
  if (several.length > 0)
    return unread(`"${saidBack(text)}" can be several crops; name one: ${names(several, reader)}.`);
  const nearest = nearestCrops(text, cropVocabulary().crops);
  return unread(`"${saidBack(text, 40)}" is not in my table. Nearest: ${names(nearest, reader)}.`);
}

/** A field that asks for a crop gets one: there a word that is ordinary English too, or a variety, is the crop. */
function namedIn(spans: readonly Span[]): { readonly ids: readonly string[]; readonly choices: readonly string[] } {
  const sense = spans.length === 1 ? senseOf(spans[0], 'crop') : undefined;
  if (sense !== undefined) return { ids: sense.usualId === undefined ? sense.ids : [sense.usualId], choices: [] };
  const { crops, choices } = readCrops(spans);
  return { ids: crops.map(({ id }) => id), choices };
}

const MOST_NAMED = 7;

function names(ids: readonly string[], reader: Reader): string {
  const words = ids.flatMap((id) => cropById(id) ?? []).map((crop) => cropWord(crop, reader));
  return list(words.slice(0, MOST_NAMED), 'or');
}
