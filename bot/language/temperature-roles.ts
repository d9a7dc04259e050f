import { isMark, type Span, senseOf } from './span.ts';
import type { TemperaturePhrase } from './temperature-phrases.ts';

/** What a temperature in a text is of. `unsaid`: the text does not tell. */
export type TemperatureRole = 'low' | 'now' | 'high' | 'soil' | 'inside' | 'feels' | 'past' | 'limit' | 'unsaid';

/**
 * Words that give a temperature its role, looked for in its own clause; of several the one nearest to it. `behind` where
 * they say it only behind the number: "40 inside", but not "40 inside a frame". `ofSeveral`: "40 in the frame" is that of
 * the frame where another number is the night's.
 */
const ROLE_WORDS: readonly {
  readonly role: TemperatureRole;
  readonly words: RegExp;
  readonly behind?: RegExp;
  readonly ofSeveral?: true;
}[] = [
  {
    role: 'feels',
    words: /\b(feels? like|feeling like|feels|felt like|wind ?chill|real ?feel|apparent|heat index)\b/g,
  },
  {
    role: 'soil',
    words:
      /\b(soil|ground|dirt|earth|compost|root zone|dew ?point|wet bulb|water|pond)( (temp|temps|temperature|is|its|reads|says|of|around|about|still|was|at the moment|now|are))*$/g,
    behind: /^(degrees )?(soil|dew ?point|wet bulb|in the (ground|soil)|ground temp)\b/g,
  },
  {
    role: 'limit',
    words: /\b(hardy to|hardy down to|rated( \w+){0,2}|good down to|tag says|label says|packet says|zone)( \w+)?$/g,
    behind: /^(hardy|tolerant)\b/g,
  },
  {
    role: 'inside',
    words:
      /\b(inside|indoors|in there|thermostat|house|kitchen)( (temp|temps|temperature|thermometer|its|it is|is|at|reads|says|was|reading|about|around|still|says its))*$/g,
    behind:
      /^(degrees )?(inside|indoors|in there|in here|in the (house|kitchen|basement))(?! (a|an|my|our|the|COVER)\b)/g,
  },
  {
    role: 'inside',
    ofSeveral: true,
    words:
      /\b((inside|in|under) ((the|my|our|a) )?COVER(?= (its|it is|is|reads|says|was))|COVER(?= (is|reads|says|holds|temp|thermometer)))( (temp|temperature|thermometer|its|it is|is|at|reads|says|was|holds|still))*$/g,
    behind: /^(degrees )?(in|inside|under) ((the|my|our) )?COVER$/g,
  },
  {
    role: 'past',
    words: /\b(yesterday|last (year|week|month|winter|fall|spring|autumn)|(days?|weeks?|years?) ago|this time last)\b/g,
  },
  {
    role: 'high',
    words:
      /\b(highs?|daytime|day temps?|by day|days|during the day|afternoon|max|maximum|warm(s|ing|ed)?( back)?( up)? to|back up to|climb(s|ing)? to|up to|noon|midday|lunchtime|reach(es|ing)?)\b/g,
    behind:
      /\b(highs?|daytime|by day|during the day|in the afternoon|this afternoon|tomorrow afternoon|afternoon|tomorrow midday|tomorrow noon|tomorrow lunchtime|max|maximum|at noon|midday)\b/g,
  },
  {
    role: 'low',
    words:
      /\b(lows?|tonights?|overnight|by morning|by dawn|before dawn|at dawn|sunrise|nighttime|at night|night|nights|min|minimum|bottom(s|ing)? out|drop(s|ping)?|dips?|dipping|falls?|falling|going( down)? to|gonna( \w+)?|goes( down)? to|down to|plunge|plunging|turning to|reckon|reckoning|call it|forecast(ed)?|predicted|calling for|hits?|hitting|(mon|tues|wednes|thurs|fri|satur|sun)day|tomorrow( night)?|tmrw|later|coldest|expected|expecting|coming|on the way|due|called for|outside tonight)\b/g,
  },

  {
    role: 'past',
    words: /\b(not|isnt|instead of|rather than|was to be|record low|record|normal|average)( (\w+ ){0,3}is)?$/g,
  },
  {
    role: 'now',
    words: /\b(now|currently|at the moment|at present|already|atm|so far|today|presently|this minute)\b/g,
  },
];

/** A clause of a number ends here; what stands beyond is said of another. */
const LINKS: ReadonlySet<string> = new Set('but and then while whereas though although with so yet'.split(' '));

/**
 * What each of several temperatures is of. A number has the words from the one before it up to itself, and behind it those
 * up to the end of its clause, unless the words before have told already.
 */
export function temperatureRoles(
  spans: readonly Span[],
  phrases: readonly TemperaturePhrase[],
): readonly TemperatureRole[] {
  const roles: TemperatureRole[] = [];
  const isOneOfSeveral = phrases.length > 1;
  let free = 0;
  for (const [index, phrase] of phrases.entries()) {
    const behindEnd = clauseEnd(spans, phrase.next, phrases[index + 1]?.from ?? spans.length);
    const before = roleIn(words(spans, clauseStart(spans, free, phrase.from), phrase.from), 'before', isOneOfSeveral);
    const behindWords = words(spans, phrase.next, behindEnd);
    const behind = roleIn(behindWords, 'behind', isOneOfSeveral);
    const runsOn = behindEnd === phrases[index + 1]?.from;
    const { role } = chosen(before, behind, runsOn);
    // What stands right behind this number is not said of the next.
    free = role === behind.role && (role !== before.role || behind.distance <= NEXT_WORD) ? behindEnd : phrase.next;
    roles.push(role);
  }
  return roles;
}

interface Said {
  readonly role: TemperatureRole;
  /** Letters between the word and the number. */
  readonly distance: number;
}

const NEXT_WORD = 2;

/** `runsOn`: no mark or link parts the words behind from the next number, so they may be said of that. */
function chosen(before: Said, behind: Said, runsOn: boolean): Said {
  if (before.role === 'unsaid') return behind;
  if (runsOn) return before;
  const isOther = ['feels', 'soil', 'inside', 'high'].includes(behind.role);
  return (before.role === 'low' && isOther) || (before.role === 'now' && behind.role === 'low') ? behind : before;
}

/** How many words before and behind a number can speak of it. */
const REACH = 9;

function clauseStart(spans: readonly Span[], free: number, from: number): number {
  let at = from;
  while (at > free && at > from - REACH && !isMark(spans[at - 1], '.', ';', '!', '?')) at -= 1;
  return at;
}

function clauseEnd(spans: readonly Span[], from: number, limit: number): number {
  let at = from;
  while (at < limit && at < from + REACH) {
    const span = spans[at];
    if (span === undefined || isMark(span, '.', ',', ';', '!', '?', ':', '/', '-') || LINKS.has(span.plain)) break;
    at += 1;
  }
  return at;
}

function words(spans: readonly Span[], from: number, to: number): string {
  return spans
    .slice(from, to)
    .map((span) => (senseOf(span, 'cover') ? 'COVER' : senseOf(span, 'crop') ? 'CROP' : span.plain))
    .join(' ');
}

/** Of several roles the one said nearest to the number. */
function roleIn(text: string, side: 'before' | 'behind', isOneOfSeveral: boolean): Said {
  let best: Said = { role: 'unsaid', distance: Number.POSITIVE_INFINITY };
  for (const { role, words: said, behind = said, ofSeveral = false } of ROLE_WORDS) {
    if (ofSeveral && !isOneOfSeveral) continue;
    const distance = side === 'before' ? distanceToEnd(text, said) : distanceFromStart(text, behind);
    if (distance < best.distance) best = { role, distance };
  }
  return best;
}

function distanceToEnd(text: string, words: RegExp): number {
  const ends = [...text.matchAll(words)].map(({ index, 0: match }) => text.length - index - match.length);
  return Math.min(...ends, Number.POSITIVE_INFINITY);
}

function distanceFromStart(text: string, words: RegExp): number {
  return Math.min(...[...text.matchAll(words)].map(({ index }) => index), Number.POSITIVE_INFINITY);
}
