/**
 * Words that turn an answer round: a sign, a denial, that a cover is off. A misspelt one may be as short as four letters
 * and is looked for before any other.
 */
export const CRITICAL_WORDS =
  'without, minus, negative, below, never, nothing, neither, uncovered, unprotected, exposed, forgot, forgotten, didnt, doesnt, havent, hasnt, isnt, arent, wasnt, werent, dont, cant, couldnt, ' +
  'four, five, nine, three, seven, eight, eleven, twelve, thirteen, fourteen, fifteen, sixteen, seventeen, eighteen, nineteen, twenty, thirty, forty, fifty, ' +
  'gone, open, left, back, removed, opened, blew, blown, bare, naked, outside, tonight, overnight, freezing, zero, fahrenheit, celsius, degrees, ' +
  'blanket, fleece, cover, sheet, frame, tunnel, quilt, straw, mulch, hoops, tarp, plastic, cloche, greenhouse, polytunnel, hoophouse, under';

/** Words that tell of a cover and stand in no phrase of the vocabulary. */
export const TELLING_WORDS =
  'promised, ordered, ordering, planned, planning, stolen, borrowed, shredded, ripped, collapsed, smashed, shed, garage, house, wish, wished, neighbor, neighbour, neighbors, neighbours, friend, sister, brother, ' +
  'someone, somebody, yesterday, earlier, until, instead, supposed, maybe, might, probably, hopefully, unless, whether, closed, missing, torn, broken, wind, storm, mail, washed, folded, rolled, still, wide, lost, took, taken, pulled, moved, used, last';
