/** First damage and kill of one state. Both are temperatures of the organ. [°C] */
type Line = readonly [firstDamageC: number, killC: number];

/** What is judged of a kind of crop before its own sources are read. */
export interface StartingPair {
  readonly unhardened: Line;
  /** Absent where cold does not harden it. */
  readonly hardened?: Line;
}

/**
 * Starting pairs (`starting-pairs`): judgement, used as one voice of weight 1 beside the sources of each crop. The block
 * below the line is ours alone, for kinds of crop on which little or nothing was found.
 */
export const STARTING_PAIRS = {
  spinach: { unhardened: [-3, -6], hardened: [-9, -14] },
  kale: { unhardened: [-4, -7], hardened: [-9, -14] },
  mache: { unhardened: [-5, -8], hardened: [-13, -18] },
  claytonia: { unhardened: [-4, -7], hardened: [-9, -12] },
  'lettuce leaf': { unhardened: [-1, -3], hardened: [-4, -8] },
  'lettuce head': { unhardened: [0, -2], hardened: [-2, -5] },
  'salad mustard': { unhardened: [-2, -4], hardened: [-4, -7] },
  tatsoi: { unhardened: [-2, -5], hardened: [-6, -10] },
  'pak choi': { unhardened: [-1, -2], hardened: [-2, -5] },
  'cabbage head': { unhardened: [-2, -4], hardened: [-5, -8] },
  savoy: { unhardened: [-3, -6], hardened: [-8, -12] },
  'broccoli head': { unhardened: [-1, -3], hardened: [-3, -6] },
  'cauliflower curd': { unhardened: [-1, -2] },
  'chard leaf': { unhardened: [-1, -3], hardened: [-3, -8] },
  'root shoulder': { unhardened: [-1, -2], hardened: [-2, -4] },
  'parsnip root': { unhardened: [-2, -5], hardened: [-5, -12] },
  leek: { unhardened: [-3, -6], hardened: [-8, -13] },
  onion: { unhardened: [-2, -5], hardened: [-6, -12] },
  'garlic top': { unhardened: [-3, -7], hardened: [-9, -15] },
  pea: { unhardened: [-2, -4], hardened: [-5, -10] },
  parsley: { unhardened: [-2, -5], hardened: [-6, -10] },
  chicory: { unhardened: [-1, -3], hardened: [-3, -6] },
  'potato leaf': { unhardened: [-1, -2.5] },
  tender: { unhardened: [0, -1.5] },
  // ————— ours
  'tuscan kale': { unhardened: [-3, -6], hardened: [-7, -11] },
  'cole leaf': { unhardened: [-3, -6], hardened: [-6, -11] },
  'root top': { unhardened: [-2, -5], hardened: [-5, -10] },
  'bulb in soil': { unhardened: [-3, -7], hardened: [-6, -11] },
  'hardy root': { unhardened: [-1.5, -3], hardened: [-3, -5] },
  'swollen stem': { unhardened: [-2, -5], hardened: [-5, -9] },
  'strawberry crown': { unhardened: [-3, -7], hardened: [-8, -13] },
  'open flower': { unhardened: [-0.5, -2] },
  'young spear': { unhardened: [-0.5, -2] },
  'rhubarb stalk': { unhardened: [-2, -4] },
  artichoke: { unhardened: [-1, -4], hardened: [-3, -7] },
  rosemary: { unhardened: [-3, -6], hardened: [-7, -11] },
  'woody herb': { unhardened: [-6, -10], hardened: [-16, -22] },
} as const satisfies Record<string, StartingPair>;

export type PairKey = keyof typeof STARTING_PAIRS;
