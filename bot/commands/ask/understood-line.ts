import { cropById, stackWords } from '../../../rules/index.ts';
import type { SaidTemperature, Understood } from '../../language/understood.ts';
import { list, saidBack } from '../../text/phrases.ts';
import { cropWord, type Reader } from '../../text/reader.ts';

const MOST_BEDS = 8;

/** One line that says back what was understood, so that a misreading shows; nothing where nothing was read. */
export function understoodLine(
  understood: Understood,
  reader: Reader,
  bedNames: readonly string[] = [],
): string | undefined {
  const crops = understood.crops.flatMap(({ id }) => cropById(id) ?? []).map((crop) => cropWord(crop, reader));
  const parts = [
    ...(bedNames.length > 0 ? [list(bedNames.slice(0, MOST_BEDS).map((name) => saidBack(name)))] : []),
    ...(crops.length > 0 ? [list(crops)] : []),
    ...(understood.temperature === undefined ? [] : [temperaturePart(understood)]),
    ...stackParts(understood, reader),
    ...(understood.hardened === undefined ? [] : [understood.hardened ? 'hardened' : 'grown warm']),
    ...(understood.readAs.length === 0
      ? []
      : [`read as: ${list(understood.readAs.map((word) => `“${saidBack(word, 30)}”`))}`]),
    ...(understood.when === undefined ? [] : [understood.when.replace('-', ' ')]),
  ];
  return parts.length === 0 ? undefined : `Understood: ${parts.join('; ')}.`;
}

/** "14 °F", and how it was read where that was not said. */
function temperaturePart({ temperature: said, assumptions }: Understood): string {
  if (said === undefined) return '';
  const value = saidTemperature(said);
  if (assumptions.includes('felt-as-air')) return `${value}, taken as the air though you said how it feels`;
  if (assumptions.includes('colder-end')) return `${value}, the colder end`;
  if (assumptions.includes('colder-of-several')) return `${value}, the coldest that you named`;
  if (said.unitReason === 'preferred') return `${value} (you gave no unit)`;
  return said.unitReason === 'sensible' ? `${value} (the only unit that makes sense)` : value;
}

/** "−7 °C": as it was said. */
export function saidTemperature({ value, unit }: SaidTemperature): string {
  return `${value < 0 ? '−' : ''}${Math.abs(value)} °${unit}`;
}

function stackParts({ covers, coversOtherwise, options, unknownCovers }: Understood, { dialect }: Reader): string[] {
  if (options !== undefined) return [options.map((keys) => stackWords(keys, dialect)).join(' against ')];
  if (covers === undefined) return unknownCovers.map((words) => `"${saidBack(words, 30)}"`);
  return [`${stackWords(covers, dialect)}${coversOtherwise === undefined ? '' : ' (perhaps off)'}`];
}
