/**
 * Number words as far as temperatures, layers and beds need them. Written out here: the packages for it read whole
 * sentences of millions and have not been kept up.
 */
export const UNIT_NUMBERS: ReadonlyMap<string, number> = new Map(
  (
    'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen ' +
    'eighteen nineteen'
  )
    .split(' ')
    .map((word, value) => [word, value]),
);

export const TEN_NUMBERS: ReadonlyMap<string, number> = new Map(
  'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ').map((word, index) => [word, 10 * (index + 2)]),
);

/** Other spellings and words. */
export const OTHER_NUMBERS: ReadonlyMap<string, number> = new Map([
  ['nought', 0],
  ['fourty', 40],
  ['fourten', 14],
  ['forteen', 14],
  ['fiveteen', 15],
  ['twelf', 12],
  ['eightteen', 18],
  ['tewnty', 20],
  ['hundred', 100],
]);
