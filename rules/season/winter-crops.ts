import type { CropId } from '../crops/crop-names-table.ts';

/** What is commonly sown to be picked from under cover through the winter (common practice). */
export const WINTER_CROPS: readonly CropId[] = [
  'carrot',
  'beet',
  'scallion',
  'parsley',
  'kale',
  'chard',
  'turnip',
  'pak-choi',
  'cilantro',
  'mache',
  'spinach',
  'claytonia',
  'leaf-lettuce',
  'tatsoi',
  'arugula',
  'mizuna',
  'radish',
];
