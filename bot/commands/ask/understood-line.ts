import { cropById, stackWords } from '../../../rules/index.ts';
import { shortLength, windSpeed } from '../../ground/units.ts';
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
    ...readAsParts(understood),
    ...stateParts(understood),
    ...skyParts(understood, reader),
    ...(understood.when === undefined ? [] : [understood.when.replace('-', ' ')]),
  ];
  const unused = understood.unused ?? [];
  const without = unused.length === 0 ? '' : ` Not used: ${list(unused)}.`;
  if (parts.length === 0) return without === '' ? undefined : without.trim();
  return `Understood: ${parts.join('; ')}.${without}`;
}

const STAGE_WORDS = {
  seedling: 'young plants',
  growing: 'growing',
  mature: 'full-grown',
  baby: 'baby leaves',
} as const;
const PLACE_WORDS = {
  open: 'open ground',
  sheltered: 'sheltered',
  hollow: 'in a frost hollow',
  ridge: 'on a hill top',
  wall: 'beside a wall',
  tree: 'under a tree',
} as const;
const SNOW_PLACES = {
  'on-plants': 'on the plants',
  'on-ground': 'on the ground, not on the plants',
  falling: 'still to fall',
} as const;

function readAsParts({ readAs }: Understood): string[] {
  return readAs.length === 0 ? [] : [`read as: ${list(readAs.map((word) => `“${saidBack(word, 30)}”`))}`];
}

function stateParts({ hardened, stage }: Understood): string[] {
  return [
    ...(hardened === undefined ? [] : [hardened ? 'hardened' : 'grown warm']),
    ...(stage === undefined ? [] : [STAGE_WORDS[stage]]),
  ];
}

/** Sky, wind, snow and how the garden lies. */
function skyParts({ sky, snow, exposure }: Understood, { units }: Reader): string[] {
  const wind = windPart(sky, units);
  const depth = snow?.depthM === undefined ? '' : `${shortLength(snow.depthM, units)} of `;
  return [
    ...(sky?.cloud === undefined ? [] : [sky.cloud === 'half' ? 'half clear sky' : `${sky.cloud} sky`]),
    ...(wind === undefined ? [] : [wind]),
    ...(snow === undefined ? [] : [`${depth}snow ${SNOW_PLACES[snow.where]}`]),
    ...(exposure === undefined ? [] : [PLACE_WORDS[exposure]]),
  ];
}

function windPart(sky: Understood['sky'], units: Reader['units']): string | undefined {
  const gusts = sky?.gustMPerS === undefined ? undefined : `gusts ${windSpeed(sky.gustMPerS, units)}`;
  if (sky?.windMPerS !== undefined)
    return [`wind ${windSpeed(sky.windMPerS, units)}`, gusts].filter(Boolean).join(', ');
  return (
    gusts ??
    (sky?.wind === undefined
      ? undefined
      : { calm: 'still air', light: 'light wind', breezy: 'breezy', windy: 'windy' }[sky.wind])
  );
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
