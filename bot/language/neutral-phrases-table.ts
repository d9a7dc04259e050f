/** Phrases that must not be taken apart: a piece of them would say something that they do not. */
export const NEUTRAL_PHRASES =
  'struckout, get away, get away with, aside, picking up, pick up, picks up, absolute zero, bare root, bare roots, four season, four seasons, all year round, all week, all winter, cover crop, cover crops, black plastic, open pollinated, cold hardy variety, ' +
  'ice queen, snow queen, snow white, snow drift, arctic king, winter king, winter queen, green ice, iceberg, snow leopard, polar bear, ' +
  'of course, by the way, at least, at all, at night, at home, so far, in case, in general, in total, last year, last winter, last week, last spring, last fall, ' +
  'this year, next year, every night, most nights, in advance, as usual, at my place, in my area, in the country, in town, in the mountains, on the coast, ' +
  'thanks in advance, good morning, good evening, good night, good afternoon, good day, hi all, hi there, dear all, up here, down here, out here, over here, up north, down south, right now please';
