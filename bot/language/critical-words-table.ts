/**
 * Words that turn an answer round: a sign, a denial, that a cover is off. A misspelt one may be as short as four letters
 * and is looked for before any other.
 */
export const CRITICAL_WORDS =
  'without, minus, negative, below, never, nothing, neither, uncovered, unprotected, exposed, forgot, forgotten, didnt, doesnt, havent, hasnt, isnt, arent, wasnt, werent, dont, cant, couldnt, ' +
  'three, seven, eight, eleven, twelve, thirteen, fourteen, fifteen, sixteen, seventeen, eighteen, nineteen, twenty, thirty, forty, fifty, ' +
  'gone, open, left, back, removed, opened, blew, blown, bare, naked, outside, tonight, overnight, freezing, zero, fahrenheit, celsius, degrees, ' +
  'blanket, fleece, cover, sheet, frame, tunnel, quilt, straw, mulch, hoops, tarp, plastic, cloche, greenhouse, polytunnel, hoophouse, under';
