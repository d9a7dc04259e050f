/**
 * Words that tell what is asked, by what they tell. Phrases are parted by commas, and the longest that fits is taken.
 * All common practice.
 */
export const CUE_WORDS = {
  // --- how a question begins
  what: 'whatll, what does, what, whats, what is, what are, what kind of, what sort of',
  which: 'who, whos, who is, whose, which, which one, which ones, which of',
  how: 'how much warmer, how much does, how many degrees does, how many degrees will, how many degrees do, how much protection does, how much protection will, how much difference, how much heat, how well does, how good is, how effective is, how much will, how much warmth, best way to, ways to, way to, how to, easiest way to, cheapest way to, whats the best way, a way to, how, hows',
  when: 'how late can i, how early can i, how late can we, what week, which week, what month, which month, what date, which date, best time to, best time for, right time to, what day, which day, by what date, by which date, how long until, how long till, how soon after, whens, when is, when are, when, what time, by when, by what time, at what time, how early, how late, how soon, how long before, what hour, latest time, earliest time, what time of day, till when, until when, time to',
  should:
    'do i, do we, should i, should we, shall i, shall we, should it, should they, should, shall, do i need to, do i have to, do we need to, do we have to, must, ought, ought i, had i better, is it worth, worth, do i want to, would you, do i really need to, need i, time i, better to, i need to, must i, do i need',
  can: 'can, could, may, can i, could i, may i, can we, is it possible to, am i able to',
  will: 'will, wil, would, wont, going to, gonna, is going to, do, does, did, is, are, am, was, were, has, have',
  'follow-on':
    'what about, how about, and what about, and how about, what if, and if, same for, same with, same question for, how bout, wat about, and for, but what if, or what about, also',
  correction:
    'i meant, i mean, sorry i meant, i meant to say, no i meant, no i mean, meant, sorry, actually, correction, scratch that, make that, make it, should have said, typo, oops, whoops',
  instead: 'instead, then, rather, though',

  // --- what happens to the plant
  survive:
    'get on, gets on, getting on, get along, get on with, survive, survives, survived, surviving, survival, make it, makes it, making it, made it, make it through, live, lives, living, live through, lived, pull through, ' +
    'hold up, holds up, hold out, handle, handles, handling, tolerate, tolerates, ' +
    'stand up to, withstand, withstands, cope, copes, cope with, manage, manages, endure, come through, last through, get through, ' +
    'stay alive, still alive, alive, get by, ride out, do ok, stay in the ground, stay out, stay outside, be left out, sit out, ' +
    'shrug off, put up with, bounce back, recover, come back, hack it, thrive, deal with',
  fare: 'grow, grow through, take, takes, taking, stand, stands, hold, holds, bear, bears, make, do, does, did, doing, last, fare, fares, go, goes',
  fine: 'ok, okay, fine, alright, all right, safe, good, good enough, enough, sufficient, well, happy, comfortable, protected enough, cosy, cozy, in good shape, secure, protected, okey',
  harm:
    'kill, kills, killed, killing, die, dies, dying, died, dead, death, lose, loses, losing, lost, toast, goner, goners, doomed, done for, game over, ' +
    'too cold, freeze, freezes, freezing, freeze to death, freeze solid, hurt, hurts, harm, harms, damage, damages, damaged, ruin, ruined, wipe out, wiped out, ' +
    'suffer, gone, burn, burned, burnt, leaf burn, nip, nipped, injure, injured, winterkill, winterkilled, perish, croak, get hit, get hammered, had it, knackered, in for it, mush, history, gonna die, curtains, dead meat, finish off, turn to mush, zap, zapped, cold damage, frost damage',
  worry: 'worry, worried, concerned, bothered, nervous, anxious, panic, worry about, concern',
  risk: 'dangerous, deadly, dicey, risk, at risk, risky, danger, in danger, in trouble, trouble, threatened, vulnerable, endangered, odds, chance, chances, likelihood, threat, in jeopardy, most tender, touch and go, on the edge',

  // --- limits
  limit:
    'how frost proof, how frostproof, frost proof, frostproof, how resistant, how frost resistant, frost resistant, how winter proof, what sort of low, what kind of low, how much of a freeze, at what outside temperature, what outside temperature, which outside temperature, at what outside temp, what outside temp, at what low, which low, what lows, min temperature, good down to, hardy down to, ok down to, safe down to, how bad a freeze, how bad a frost, how bad of a freeze, how bad of a frost, how severe a frost, how severe a freeze, how deep a freeze, how deep a frost, how far below, at which temperature, at which temp, which temperature, which temp, what degree, at what degree, how many below, how far, how far can it drop, how far can the temperature, to what temperature, down to what temperature, down to what, how many degrees does, how many degrees will, how many degrees do, how cold, how low, how far down, lowest, coldest, minimum, minimum temperature, minimum temp, min temp, what temp, what temps, what temperature, what temperatures, cutoff, cutoff temp, cutoff temperature, cutoff point, cut off temp, cut off temperature, cut off point, at what temp, ' +
    'at what temperature, temp where, temperature where, temp at which, temperature at which, point at which, at what point, kill temp, killing temp, killing temperature, kill temperature, kill point, cold limit, limit, limits, how hardy, how tough, how frost hardy, how cold hardy, how winter hardy, ' +
    'how much frost, how much cold, how much freezing, how many degrees, frost tolerance, cold tolerance, frost tolerant, cold tolerant, cold hardiness, ' +
    'frost hardiness, hardiness, frost hardy, cold hardy, winter hardy, how hard a frost, how hard a freeze, how tender, hardier, hardiest, hardy, tougher, low temp limit, lowest temp, lowest temperature, ' +
    'coldest temp, coldest temperature, lower limit, freezing point, how hard of a freeze, how hard of a frost, what sort of cold, what low, breaking point, how bad a frost, threshold, temperature limit, temp limit, lethal temperature, lethal temp, too cold for',
  'night-weather':
    'will it freeze, is it going to freeze, will there be a frost, will there be frost, will we get frost, will we get a frost, be a frost, a frost tonight, frost tonight, going to frost, will it frost, ' +
    'how cold will it get, how cold will it be, how cold is it going to be, how cold is it going to get, how cold does it get, how cold will tonight be, how low will it go, how low will it get, how low will the temperature go, what is the low, whats the low, whats tonights low, what is tonights low, ' +
    'is there frost, any frost, frost forecast, frost warning, freeze warning, is frost coming, is there a frost, is a frost coming, is it going to frost, frost risk, how cold is tonight, how cold tonight, is there going to be a frost, will we have frost',

  bad: 'bad, cold, chilly, nippy, worst, rough, nasty, brutal, how bad, terrible, serious, severe, how bad is, how bad will, how is it looking, hows it looking',
  nights:
    'night, nights, which night, which nights, what night, what nights, which night is, which nights are, nights of frost, the cold end, this cold end, cold going to end, cold let up, let up, when does it warm up, when will it warm up, warm up again, the frost end, end of the cold, cold over',
  looks:
    'look, looks, looking, look like, looks like, outlook, shaping up, going to be like, be like, forecast for, the forecast, in store',
  'or-not': 'or not, yes or no, y/n, yes no, yea or nay, or no',

  // --- whom it is about
  everything: 'anything, everything, any of, all of, all my plants, any, what all, something, everybody, all',
  garden:
    'ones, which ones, garden, plot, allotment, plants, crops, crop, veg, vegetables, vegetable, veggies, veggie, stuff, my stuff, things, plant, patch, kitchen garden, produce, planting, veg patch, growing',
  it: 'it, em, they, them, these, those, this, that, theyre, its, theyll, itll, thats',
  mine: 'my, our, mine, ours, ive got, i have, ive, weve, we have, i got, i am growing, im growing, were growing',
  the: 'the, teh',

  // --- covers and what is done with them
  cover:
    'make sure, ensure, help, stop, prevent, prevents, ward off, be covered, be protected, fleecing, tarping, mulching, blanketing, wrapping, fleeced, tucking in, tucked in, under cover, be kept alive, be saved, kept alive, kept warm, blanketed, cover, covered, covering, covers, cover up, protect, protects, protected from, protecting, protection, insulate, insulation, keep alive, save, saving, saves, shield, ' +
    'put over, lay over, throw over, put on, lay on, pile on, lay, throw, throw on, put, pile, drape, wrap, bundle up, tuck up, tuck in, bring through, gets, get, use, add, stack, pull over, put down, ' +
    'keep, keeps, keeping, rescue, bed down, overnight cover, keep warm, warm, put out, protecting from, put around, toss, toss over, anything on, anything over, something over, something on, reach for, cover them with',
  remedy:
    'suggest, recommend, advise, ideas, any ideas, ideas to, suggestions, any suggestions, what would you suggest, what do you suggest, what do you recommend, ideas for, recommendation, advice, anything i can do, something i can do, anything i can put, something i can put, anything to put, something to put, anything we can do, what else can i do, what should i do, what do i do, what can i do, what to do, what must i do, what do we do, what should we do, how do i help, how can i help',
  'as-well': 'as well, too, also, in addition, on top of that, on top as well, both',
  gain: 'how much warmer, how much does, how many degrees does, how many degrees will, how many degrees do, how much protection does, how much protection will, how much difference, how much heat, what does, how well does, how good is, how effective is, how much will, how much warmth',
  check: 'check, status, report, overview, summary, rundown, run down, state of',
  need: 'called for, advisable, is it wise, be wise, worthwhile, a good idea, bother, in order, do i need, do we need, do they need, will i need, would i need, need, needs, need to, require, requires, want, wants, necessary, needed, required, have to, has to, needing, demand, demands',
  layers:
    'minimum cover, minimum protection, least cover, least protection, lightest cover, least i can put, how much protection does, how much protection will, how much insulation does, how many layers, how many covers, how much cover, how thick, how much protection, how many blankets, how many sheets, how many layers of, what protection, which protection, how much insulation, how heavy',
  compare:
    'better off, be better off, compare, comparison, better, warmer, best, warmest, difference, difference between, prefer, beat, beats, outperform, more, more than, more protection, gain more, comparing, superior, winner, between, either, choose, pick between, most, hotter, colder under, keeps warmer, work better, works better, do more, does more, more good, warmer under',
  and: 'and, plus, along with, as well as, together with, with also, n, then a, followed by',
  or: 'or, or just, or else, or only, or even, or maybe, or is, or would, or should i use, or a',
  versus:
    'beat, beats, outperform, outperforms, as good as, as warm as, as much as, the same as, equal to, vs, versus, than, more than, better than, warmer than, do more than, instead of, rather than, compared to, compared with, against, v, as opposed to, over using',
  with: 'with, w/, using, plus a, has, wearing, having, got, w',
  without: 'without, with out, no, not under, w/o, minus the, lacking, less the',
  'with-or-without':
    'with or without, with and without, with or w/o, without or with, with vs without, with versus without, with and w/o',
  over: 'go on, goes on, put on, over, on, onto, on top of, atop, above, across, over the top of, outside, outside of, around, stretched over, draped over, thrown over, laid over, pulled over, piled on, piled over, heaped on, on the outside of, over top of, draped across, up over, laid on, spread over, stacked on',
  under:
    'under, underneath, beneath, below, inside, inside of, in, within, underneath of, in under, down inside, into, beneath a, tucked under',
  'on-it':
    'on top, over em, on em, over it, over them, on it, on them, over the top, on the lid, over the lid, on its lid, over that, on top of it, on top of them, on top of that, thrown over it, draped over it, laid over it, over top, over all of it, over the whole thing, over everything, on the outside, thrown on top, laid on top, outside it, over the light, on the light, on the lights, on the glass, over the glass, outside of it',
  'inside-it':
    'under it, under that, inside it, beneath it, within it, in it, underneath it, underneath that, under there, in there, on the inside, on the plants, over the plants, on the crop, over the crop, inside that, on the bed, over the bed',
  'covered-with':
    'covered with, covered by, covered in, covered over with, topped with, topped by, capped with, wrapped in, wrapped with, draped with, overlaid with, topped off with, lined with nothing, piled with',
  'lined-with': 'lined with, and inside it, containing, that has inside, which has inside, with inside',
  another: 'another, extra, additional, one more, a second, second, add a, add another, more',

  // --- opening and shutting
  open:
    'up or down, airing, aired, air it out, airing out, throw open, let air in, let in air, lids up, lid up, burp, take the lid off, take the lids off, go up, come up, open, opens, opened, opening, open up, vent, vents, vented, venting, ventilate, ventilating, ventilation, prop, propped, propping, prop open, uncover, uncovering, ' +
    'take off, takes off, taken off, taking off, come off, comes off, coming off, pull off, pulled off, remove, removed, removing, lift, lifted, lifting, air out, air, crack, cracked, cracked open, ajar, crack open, roll up, ' +
    'roll back, peel back, unwrap, open the lid, unzip, fold back, take away, take down, strip off, pull back, let the heat out, let some air in, strip, take it off, take them off',
  hot: 'too hot, overheat, overheats, overheating, cook, cooks, cooking, cooked, roast, roasting, bake, baking, too warm, get hot, getting hot, hot, boil, boiling, swelter, sweltering, heat stress, heat up, steaming, fry, wilt, wilting',
  shut: 'drop the sides, drop the lid, drop the lids, drop the flaps, let down, pull down, roll down, rolled down, put to bed, batten, zip, pull the lid, lids lid up or down, be down, lids down, lid down, be on, go on, goes on, go back on, back on, put back, cover up by, shut, shuts, shutting, shut up, close, closes, closed, closing, close up, close down, button up, buttoned up, batten down, zip up, lower, lower the lid, shut down, shutting time, closing time, seal, seal up, shut tight',
  leave: 'leave, leaving, left, stay, stays, keep it, kept, remain, leave it, leave them',
  off: 'off, away, back',
  lid: 'vents, vent flaps, light, lid, covers, lids, lights, flap, flaps, door, doors, sides, ends, vent flap, end walls, sidewalls, roll ups, side vents, window',

  // --- picking, sowing, the year
  pick: 'ready to pick, ready to harvest, ready to cut, collect, salvage, clear out, rush out and pick, bring them in, bring it in, strip the, need lifting, needs lifting, be lifted, lifting before, pick, picked, picking, harvest, harvested, harvesting, cut, cutting, bring in, dig, dig up, digging, gather, gathering, pull up, lift and store, bring inside, pick from, harvestable, pull, pulling, dug, crop it, snip, clip',
  eat: 'eat, eaten, eating, edible, consume, safe to eat, ok to eat, okay to eat, fit to eat, good to eat, poisonous, toxic, poison, cook with, use in the kitchen, serve',
  frozen:
    'blackened, frozen, frosty, frosted, froze, icy, frozen solid, thaw, thaws, thawed, thawing, thaw out, thawed out, defrost, iced over, white with frost, stiff with frost, frost on, frozen stiff, been frozen, got frozen, got frosted, frost bitten, frostbitten, covered in frost',
  frost:
    'frost, frosts, the frost, a frost, the freeze, a freeze, hard frost, hard freeze, light frost, light freeze, killing frost, cold snap, cold spell, the cold, first freeze, first hard freeze, freeze up, freeze coming, deep freeze, polar vortex, arctic blast, cold front, black frost, ground frost, air frost, white frost, radiation frost, hoar frost, sharp frost',
  sow: 'i so, sow, sowing, sown, sowed, seed, seeding, seeded, direct seed, direct sow, plant, planted, planting, plant out, planting out, transplant, transplanting, set out, put in, go in the ground, start seeds, start seed, start, get in the ground, get in, plant them out, setting out, start from seed',
  daylight:
    'how short are the days, how short are days, how short is the day, length of the day, short are the days, long is the day, long will the day be, long will the days be, day be ten hours, days be ten hours, hours of day, shorter days, longer days, days shorter, days longer, day shorter, day longer, persephone period, persephone days, persephone, 10 hour, ten hour, 10 hours, ten hours, 10 hours of daylight, ten hours of daylight, 10 hour days, ten hour days, 10 hour day, ten hour day, day length, daylength, daylight, daylight hours, short days, dark weeks, dark days, dark period, days shorten, days get longer, days lengthen, days start getting longer, ' +
    'long are the days, how long are days, how long are the days, how long is the day, days drop below, days fall below, days get short, hours of daylight, hours of light, day is shortest, shortest day, winter solstice, solstice, under ten hours, under 10 hours, below ten hours, below 10 hours, over ten hours, above ten hours, hours of sun',
  calendar:
    'calendar, schedule, sowing date, sowing dates, planting date, planting dates, winter plan, winter calendar, sowing calendar, planting calendar, first frost date, last frost date, frost date, frost dates, growing season, season plan, sowing plan, planting plan, sowing schedule, planting schedule, year planner, sow by, plant by, winter garden plan, sowing time, planting time, first frost, last frost, average first frost, average last frost',
  growth:
    'growth, growth start, growth starts, stop growing, stops growing, start growing, starts growing, growing again, growth slow, growth slows, growth stop, growth stops, growth resume, growth resumes, grow again, regrow, keep growing, resume growth, put on growth',
  late: 'missed the boat, missed my chance, missed the window, left it too late, too late, last date, latest date, last chance, too early, deadline, how late can i, latest, last day, final date, too late in the season, late enough, early enough, still time',
  winter:
    'for winter harvest, for fall harvest, for autumn harvest, for spring harvest, winter harvest, winter harvests, autumn harvest, fall harvest, spring harvest, winter picking, winter cutting, for winter, for the winter, overwinter, overwintering, over winter, over wintering, for spring, winter, this winter, this fall, this autumn, next spring, in spring, this spring',

  /** Matters of the garden that this program knows nothing of. */
  'other-matter':
    'how do i make, how do you make, how to make, kimchi, sauerkraut, pickle, pickles, pickling, ferment, fermenting, ripen, ripening, turn red, recipe, recipes, price, prices, buy, buying, sell, cost, calories, vitamin, vitamins, protein, aphid, aphids, pest, pests, slug, slugs, snails, whitefly, cabbage worms, flea beetles, rust, blight, mildew, disease, diseases, fungus, fertilize, fertilizer, ' +
    'fertiliser, feed with, watering, water it, spacing, germinate, germination, germinating, bolt, bolting, taste, tastes, store them, storage, freezer, blanch, can i freeze, how to freeze, how do i freeze, how do you freeze, how to cook, how do i cook, how do you cook, soup, salad dressing, smoothie, juice, sauce, roast them, prune, pruning, pollinate, weeds, weeding, ' +
    'how to grow, how do i grow, how do you grow, how big, how large, how high, deer, rabbits, mice, voles, companion, companions, what is eating, whats eating, soil ph, yield, seeds from, save seed, variety should, best variety, how tall, how long does it take, how often, nutrition, healthy, organic',

  // --- safety
  safely:
    'safely, dangerous, unsafe, hazard, hazardous, fire risk, fire hazard, catch fire, is it safe, safe to, legal, allowed, health risk, a bad idea, bad idea, leach, contaminate',
  'under-load':
    'groaning, step inside, go inside, coming down, come down, cave, flatten, flattened, squash, squashed, weigh down, weighing down, collapse, collapses, collapsing, cave in, hold the weight, weight, load, brush off, brush, knock off, knock, push off, push, shovel, sweep, sweep off, piling, piling up, piled up, build up, built up, bend, break, breaking, crush, get off, clear off, scrape, rake off, take the weight, come down, fall in, sagging, sag, bow under',
  infant:
    'baby, infant, infants, babies, toddler, toddlers, newborn, little one, months old, month old, weaning, my son, my daughter',

  // --- numbers and temperatures
  minus: 'minus, negative, neg, sub',
  degrees: 'above zero, degree, degrees, deg, degs, degress, degreees, degres',
  fahrenheit: 'fahrenheit, farenheit, farenheight, fahrenheight, farhenheit, f, degf, fahr, ferenheit, fahreneit',
  celsius: 'celsius, centigrade, c, degc, celcius, celsious, celc, centigrad, selsius, cel',
  'below-zero': 'below zero, below 0, under zero, sub zero, subzero, below nought',
  'below-freezing':
    'below freezing, below the freezing point, below frost point, degrees of frost, of frost, degree of frost, below the freezing mark',
  'at-freezing':
    'at freezing, to freezing, hits freezing, just below freezing, just under freezing, right at freezing, around freezing, near freezing, barely freezing, freezing mark, just above freezing, freezing temperatures, freezing temps',
  'or-below':
    'or below, or lower, or colder, or less, and colder, or even lower, or even colder, or thereabouts, or so, ish',
  between: 'between, in between, anywhere from, anywhere between, from',
  'range-to': 'to, through, thru, till, until',
  high: 'high of, highs of, high, highs, daytime, by day, max, maximum, high temp, high temperature, daytime high, afternoon high, day temps, day temperature, warming to, warming up to, back up to, reaching, up to, during the day, rising to, climbing to, getting up to',
  'low-part': 'low, lower, lowish, very low',
  'mid-part': 'mid, middle, mid to low, the mid, middling',
  'high-part': 'upper, uppermost, high end',
  'single-digits': 'single digits, single digit, single figures, the single digits',
  teens: 'teens, the teens',
  twenties: 'twenties, the twenties',
  thirties: 'thirties, the thirties',
  forties: 'forties, the forties',
  'at-temperature':
    'at, to, close to, down to, as low as, hit, hits, hitting, drop to, drops to, dropping to, dips to, dip to, falls to, fall to, going to be, goes to, go to, get to, gets to, reach, reaches, low of, lows of, low is, lows in, ' +
    'a low of, temps of, temperature of, temperatures of, temp of, temp, temps, temperature, temperatures, around, about, near, roughly, approximately, say, forecast, forecasts, forecasted, predicted, predicting, going down to, get down to, gets down to, getting down to, dropping down to, calling for, supposed to be, supposed to hit, ' +
    'supposed to get to, expecting, expected, overnight low, low tonight, tonights low, low, lows, goes down to, down in the, down into the, into the, it is, its, minimum of, plunge to, plunges to, colder than, lower than, bottoming out at, bottom out at, of, be, nearly, almost, circa, just, drops below, falls below, dips below, goes below, go below, get below, gets below, drop below, fall below, dip below, drops, dips, falls, @',
  duration: 'for, lasting, during',
  hours: 'hour, hours, hrs, hr, h',
  minutes: 'minute, minutes, mins, min',
  counted:
    'in of, week, weeks, day, days, month, months, year, years, nights, am, pm, oclock, ft, foot, feet, inch, inches, cm, mm, m, meter, meters, metre, metres, mil, mils, mph, kph, kmh, km, knots, percent, pct, ' +
    'plants, seedlings, rows, heads, people, times, gallon, gallons, dollar, pound, pounds, cents, quid, euros, years old, miles, acres, minutes, bricks, kittens, heads, cloves, stitches, litre, litres, liter, liters, lb, lbs, kg, kilo, dollars, bucks, watt, watts, w, volts, miles, acres, acre, sq, square, yards, yd, pots, trays, cells, flats, rpm, psi, ml, l, starts, beds, varieties, kinds, bales, jugs, st, nd, rd, th, micron, microns, sheets, x',
  zone: 'latitude, lat, zone, zones, usda, usda zone, hardiness zone, row, rows, plot, page, no, number, num, nr, line, section, route, room, apollo, version, chapter, option, question, day, under age, aged, age',
  month:
    'january, february, march, april, may the, june, july, august, september, october, november, december, jan, feb, apr, aug, sept, oct, nov, dec',
  grams:
    'g/m2, g/m, g/m^2, g/sqm, g/sq m, gsm, g sqm, gm2, g per m2, g m2, gram, grams, g, gr m2, gm m2, grams per square metre, grams per square meter, g sq m, gram per square metre, grammes, g m 2, gms, gm',
  ounces:
    'oz, oz/yd2, oz/yd, oz/sq yd, oz/yd^2, oz/sqyd, ounce, ounces, oz yd2, oz sq yd, oz per square yard, oz yd, oz per sq yd, ozs, ounces per square yard, oz per yard',
} as const satisfies Readonly<Record<string, string>>;

export type Cue = keyof typeof CUE_WORDS;
