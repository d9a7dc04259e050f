import { type CoverKey, cropById, orderProblem } from '../../rules/index.ts';
import { PlainProblem } from '../ground/errors.ts';
import { cropVocabulary } from '../language/crop-vocabulary.ts';
import { nearestCrops } from '../language/nearest-crops.ts';
import { understand } from '../language/understand.ts';
import type { GardenBed } from '../outlook/garden.ts';
import { orderSentence } from '../text/order-words.ts';
import { list, saidBack } from '../text/phrases.ts';
import { cropWord, type Reader } from '../text/reader.ts';

/**
 * A bed described in a phrase, such as "spinach and kale under a blanket in the cold frame".
 *
 * @throws PlainProblem when no crop is named, a crop or cover is not known, or the covers cannot lie so.
 */
export function typedBed(text: string, reader: Reader): GardenBed {
  const vocabulary = cropVocabulary();
  const read = understand(`will ${text} survive`, { vocabulary, hasPlace: true });
  const said = saidBack(text);
  const [unknown] = read.unknownCrops;
  if (unknown !== undefined) {
    const nearest = nearestCrops(unknown, vocabulary.crops).flatMap((id) => cropById(id) ?? []);
    const names = list(
      nearest.map((crop) => cropWord(crop, reader)),
      'or',
    );
    throw new PlainProblem(`"${saidBack(unknown, 40)}" is not in my table; the nearest are ${names}.`);
  }
  const crops = read.crops.length > 0 ? read.crops.map(({ id }) => id) : read.choices.slice(0, 1);
  const plantings = crops.flatMap((id) => {
    const crop = cropById(id);
    const stage = read.stage === 'seedling' ? ('just-set-out' as const) : ('grown' as const);
    const hardeningIndex = read.hardened === undefined ? undefined : Number(read.hardened);
    return crop === undefined
      ? []
      : [{ cropId: crop.id, stage, ...(hardeningIndex !== undefined && { hardeningIndex }) }];
  });
  if (plantings.length === 0)
    throw new PlainProblem(`I find no crop in "${said}"; write for example "spinach under blanket".`);
  return {
    name: said.charAt(0).toUpperCase() + said.slice(1),
    plantings,
    covers: soundCovers(text, read.covers ?? [], reader),
  };
}

function soundCovers(text: string, covers: readonly CoverKey[], reader: Reader): readonly CoverKey[] {
  const unsound = orderProblem(covers);
  if (unsound !== undefined) throw new PlainProblem(`"${saidBack(text)}": ${orderSentence(unsound, reader)}`);
  return covers;
}
