import { MULCH_KINDS, type MulchKind, SOIL_KINDS, SOILS } from '../../../rules/index.ts';
import { STAGES, type Stage } from '../../store/port/beds.ts';
import { capitalised } from '../../text/phrases.ts';
import type { Reader } from '../../text/reader.ts';
import type { OptionSpec } from '../command.ts';
import { maybe, oneOf, option, yesNo } from '../options.ts';
import { suggestCovers } from '../suggest/suggest-covers.ts';
import { suggestCrops } from '../suggest/suggest-crops.ts';
import { typedCovers } from '../typed/covers.ts';
import { typedCrops } from '../typed/crops.ts';
import { typedMonthDay } from '../typed/month-day.ts';
import { FRAME_OPTIONS, frameSchema } from './frame.ts';

export const STAGE_WORDS: Readonly<Record<Stage, string>> = {
  'just-set-out': 'just set out',
  growing: 'growing',
  grown: 'grown',
};

export const MULCH_WORDS: Readonly<Record<MulchKind, string>> = {
  none: 'bare soil',
  straw: 'mulched with straw or leaves',
  plastic: 'under plastic sheet',
};

export const cropOption: OptionSpec = {
  name: 'crop',
  description: 'What grows there, such as spinach; several with commas',
  kind: 'text',
  suggest: suggestCrops,
};

export const PLANTING_OPTIONS: readonly OptionSpec[] = [
  {
    name: 'stage',
    description: 'How far it is; growing unless you say, or just set out',
    kind: 'text',
    choices: STAGES.map((value) => ({ label: capitalised(STAGE_WORDS[value]), value })),
  },
  { name: 'hardened', description: 'Has it grown cold for some weeks? Leave out if unsure', kind: 'yes-no' },
  { name: 'sown', description: 'Day it was sown, such as Aug 20: for the winter calendar', kind: 'text' },
  { name: 'set-out', description: 'Day it was set out as a plant, such as Sep 12', kind: 'text' },
];

export const GROUND_OPTIONS: readonly OptionSpec[] = [
  {
    name: 'covers',
    description: 'From the outside in, such as blanket over low tunnel; none for a bare bed',
    kind: 'text',
    suggest: suggestCovers,
  },
  {
    name: 'soil',
    description: 'The soil; ordinary and moist unless you say',
    kind: 'text',
    choices: SOIL_KINDS.map((value) => ({ label: capitalised(SOILS[value].american), value })),
  },
  {
    name: 'mulch',
    description: 'What lies on the soil under the crop; bare unless you say',
    kind: 'text',
    choices: MULCH_KINDS.map((value) => ({ label: capitalised(MULCH_WORDS[value]), value })),
  },
  ...FRAME_OPTIONS,
];

export function groundSchema(reader: Reader) {
  return {
    covers: maybe((text) => typedCovers(text, reader)),
    soil: maybe(oneOf('The soil', SOIL_KINDS)),
    mulch: maybe(oneOf('The mulch', MULCH_KINDS)),
    ...frameSchema(reader.units),
  };
}

export const plantingSchema = {
  stage: maybe(oneOf('The stage', STAGES)),
  hardened: maybe(yesNo('hardened')),
  sown: maybe(typedMonthDay),
  'set-out': maybe(typedMonthDay),
};

export function neededCrops(reader: Reader) {
  return option('Name the crop, such as crop:spinach.', (text) => typedCrops(text, reader));
}
