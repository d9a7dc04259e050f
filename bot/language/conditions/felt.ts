import { matchesIn, type SpanText, spansOfMatch } from './span-text.ts';

/** A temperature that is no low of the air: what the skin feels, and where dew forms. */
export interface FeltRead {
  readonly at: readonly number[];
  readonly said: readonly ('wind chill' | 'dew point' | 'daytime high' | 'soil temperature')[];
}

const VALUE =
  '(?:(?:-|−|minus|negative) )?\\d+(?:\\.\\d+)?(?: °)?(?: (?:degrees?|deg))?(?: (?:f|c|fahrenheit|celsius))?';
const BETWEEN =
  '(?:(?:of|is|at|around|about|near|only|:|=|was|down to|to|temps?|temperature|will be|be|it|today|tonight) ){0,3}';
const NAMES = {
  'wind chill': 'wind chills?|windchills?|feels like|feel like|real feel|realfeel|apparent temperature|feels',
  'dew point': 'dew points?|dewpoints?|dp',
  'soil temperature': 'soil temps?|soil temperature|soil is|ground temp|ground temperature',
} as const;

const PATTERNS = Object.entries(NAMES).map(([name, words]) => ({
  name: name as keyof typeof NAMES,
  pattern: new RegExp(
    ` (?:${words}) ${BETWEEN}${VALUE}(?= )| ${VALUE} (?:${words})(?= )(?! ${BETWEEN}(?:-|−|minus)? ?\\d)`,
    'g',
  ),
}));

/** "two broken panes", "20 by 40 ft"; "20 by 3 in the morning" is a low and a time. */
const COUNTS =
  / \d+ (?:broken|cracked|missing|torn|old|more|other|big|small)(?= )| \d+ by(?= \d+ (?:ft|feet|foot|inch|inches|m|cm|metres?|meters?|yards?) )/g;

/** Figures of wind chill, dew point and soil: never the low. */
export function readFelt(read: SpanText): FeltRead {
  const found = PATTERNS.flatMap(({ name, pattern }) => matchesIn(read, pattern).map((match) => ({ name, match })));
  return {
    at: [...found.map(({ match }) => match), ...matchesIn(read, COUNTS)].flatMap((match) => spansOfMatch(read, match)),
    said: [...new Set(found.map(({ name }) => name))],
  };
}
