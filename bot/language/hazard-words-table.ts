import type { CautionKey } from '../../rules/index.ts';

export interface HazardWords {
  readonly topics: readonly CautionKey[];
  /** Each stands before each of `phrases`. */
  readonly fronts?: string;
  readonly phrases: string;
}

/** Things that can hurt somebody, with the cautions that they call for. */
export const HAZARD_WORDS: readonly HazardWords[] = [
  {
    topics: ['fuel-heat'],
    phrases:
      'candle, candles, tea light, tea lights, tealight, tealights, charcoal, coal, coals, hot coals, embers, barbecue, bbq, grill, hibachi, fire pit, firepit, campfire, bonfire, a fire, propane, propane heater, ' +
      'kerosene, kerosene heater, kerosene lamp, paraffin, paraffin heater, paraffin lamp, oil lamp, oil lantern, lantern, hurricane lamp, gas heater, butane, butane heater, camp stove, camping stove, wood stove, woodstove, wood burner, ' +
      'burner, smudge pot, smudge pots, alcohol lamp, terracotta heater, flower pot heater, flowerpot heater, clay pot heater, candle heater, open flame, open fire, diesel heater, briquettes, smouldering, ' +
      'heater, heaters, stove, hot ashes, gas stove, gas burner, patio heater, salamander heater, generator, incense',
  },
  {
    topics: ['fuel-heat'],
    phrases:
      'gas ring, gas rings, gas burner ring, lit the gas, fire, fires, small fire, little fire, log fire, wood fire, firewood, burn barrel, burn barrels, burn pile, oil drum fire, brazier, chiminea, fireplace, rocket stove, pellet stove, tiki torch, tiki torches, torch, torches, ' +
      'blowtorch, blow torch, weed burner, flame weeder, flare, flares, sterno, canned heat, chafing fuel, votive, votives, citronella, mosquito coil, lighter fluid, kindling, matches, hot stones, sawdust stove, ' +
      'exhaust, truck exhaust, car exhaust, exhaust fumes, tailpipe, engine running, tractor running, truck running, car running, idling, fumes, smoke, smoky, smoking, smoulder, smolder, smoldering, smudge fire, smudge fires, ' +
      'straw for smoke, hay for smoke, wet straw smoke, smoke bomb, smoke bombs, smoke candle, dryer vent, gas lamp, gas lantern, butane lamp, hand warmers',
  },
  {
    topics: ['fuel-heat'],
    fronts: 'burn, burning, light, lighting, lit, set fire to, smoulder, smolder',
    phrases:
      'logs, a log, wood, straw, hay, damp straw, wet straw, wet hay, leaves, wet leaves, brush, coals, charcoal, tires, tyres, old tires, pallets, pallet wood, newspaper, paper, rubbish, trash, oil, diesel, something, a pile, a few logs, some logs, some wood, some straw, peat, sticks, twigs, wax, alcohol',
  },
  { topics: ['fuel-heat'], phrases: 'burning, logs burning, on fire, keep a fire, a fire going' },
  {
    topics: ['antifreeze'],
    phrases:
      'antifreeze, anti freeze, ethylene glycol, propylene glycol, glycol, coolant, washer fluid, windshield washer fluid, screenwash, screen wash, windscreen washer, de icing fluid, rubbing alcohol, methanol, methylated spirit',
  },
  {
    topics: ['salt'],
    phrases:
      'rock salt, road salt, table salt, sea salt, salt water, saltwater, brine, de icer, deicer, ice melt, ice melter, calcium chloride, sprinkle salt, sprinkling salt, spread salt, spreading salt, throw salt, put salt, putting salt, pour salt, pouring salt, use salt, using salt, some salt, salt on, salt over, salt around, salt the, salt my, salt in, salting, salt to, salt for, salt help, salt work, add salt, adding salt, dissolved salt, salt spray',
  },
  {
    topics: ['hot-water'],
    fronts: 'hot, boiling, warm, scalding, lukewarm, heated',
    phrases: 'water, tap water, water on, water over, bath water',
  },
  { topics: ['hot-water'], phrases: 'kettle, kettles, a kettle, kettle of water, pour tea' },
  {
    topics: ['electric-heat'],
    phrases:
      'heat lamp, heat lamps, propagation mat, propagation mats, heated propagation mat, seedling mat, heated bench, heating cable, heating cables, heat cable, heat cables, soil cable, soil heating cable, soil heating cables, soil warming cable, heat mat, heat mats, heating mat, heated mat, heat tape, heating tape, christmas lights, ' +
      'xmas lights, fairy lights, string lights, holiday lights, incandescent bulb, incandescent bulbs, light bulb, light bulbs, lightbulb, lightbulbs, lamp, lamps, extension cord, extension cords, extension lead, extension leads, extension cable, electric heater, electric heaters, ' +
      'fan heater, space heater, space heaters, electric blanket, electric blankets, heating pad, heat pad, heated blanket, tube heater, tubular heater, oil filled radiator, hair dryer, heat gun, electric cable, electric heating, electric heat, led lights, incandescent lights, power strip, hot water bottle lamp, heated propagator, work light, reptile lamp, brooder lamp',
  },
  {
    topics: ['old-paint', 'glass'],
    phrases:
      'old window, old windows, salvaged window, salvaged windows, reclaimed window, reclaimed windows, recycled windows, old painted windows, painted windows, painted window, old sash windows, old sash, old storm windows, old storm window, ' +
      'old window frames, old window sashes, second hand windows, used windows, vintage windows, antique windows, old house windows, painted sash, painted sashes, old painted window, old painted sash, old wooden windows, old single pane windows, used window',
  },
  {
    topics: ['old-paint'],
    phrases:
      'lead paint, old paint, painted wood, painted boards, paint flakes, peeling paint, flaking paint, lead based paint, painted doors, old doors, painted lumber, painted timber, chipping paint, leaded paint',
  },
  {
    topics: ['glass'],
    phrases:
      'storm window, storm windows, storm door, storm doors, window pane, window panes, windows, sheet of glass, sheets of glass',
  },
  {
    topics: ['glass'],
    phrases:
      'glass roof, glass in the roof, glass in a roof, roof of glass, roof glazing, glass above, glass overhead, overhead glass, overhead glazing, glass pane, glass panes, shower doors, shower door, glass doors, patio doors, glass door, roof glass, broken glass, plate glass, pane, panes, tempered glass, safety glass, cracked glass, sliding glass doors, old glass, greenhouse glass',
  },
  {
    topics: ['glass'],
    fronts:
      'walk on, stand on, sit on, lean on, step on, climb on, kneel on, walking on, standing on, leaning on, kneeling on',
    phrases: 'glass, the glass, glass lights, the lights, the light, the frame, the frames, the lid, the panes',
  },
  {
    topics: ['treated-timber'],
    phrases:
      'treated timber, treated lumber, treated wood, treated boards, treated planks, pressure treated, pressure treated boards, pressure treated wood, pressure treated lumber, pressure treated timber, pressure treated planks, railway sleeper, railway sleepers, railroad tie, railroad ties, ' +
      'sleepers, creosoted, creosoted sleepers, creosoted, creosoted sleepers, creosoted timber, creosote, green treated, green treated wood, cca, cca treated, arsenic, treated posts, treated pallets, pallet wood, pallets, telephone pole, telephone poles, utility poles, old decking, treated 2x6, treated plywood, railway ties, copper treated',
  },
  { topics: ['nitrate'], phrases: 'nitrate, nitrates, nitrite, nitrites, blue baby' },
  {
    topics: ['snow-load'],
    phrases:
      'snow load, snow weight, weight of snow, weight of the snow, snow loading, heavy snow on, snow piled, snow buildup, snow build up, snow on the roof, how much snow, snow off, hold the snow, hold snow, hold up the snow, take the snow, carry the snow, carry snow, hold that snow, hold this snow, hold all the snow, support the snow, support snow, bear the snow, hold wet snow, knock the snow off, brush the snow off, clear the snow, clear snow, remove snow, remove the snow, shovel snow, push the snow off',
  },
];
