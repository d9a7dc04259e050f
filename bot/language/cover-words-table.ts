import type { CoverKey, WallKey } from '../../rules/index.ts';
import type { Weight } from './sense.ts';
import type { Assumption } from './understood.ts';

/** Phrases are parted by commas; plurals and joined spellings ("coldframe") are made from them. */
export interface CoverWords {
  readonly key: CoverKey;
  /** Each stands before each of `phrases`. */
  readonly fronts?: string;
  readonly phrases: string;
  readonly assumes?: Assumption;
}

/**
 * What people call covers. "Frost blanket", "frost cloth" and the like are the heavy fabric unless a weight is said
 * (physics page, `rules/balance/README.md`, section 12); a plain "blanket" is one from the house. All common practice.
 */
export const COVER_WORDS: readonly CoverWords[] = [
  {
    key: 'row-cover',
    phrases:
      'row cover, roe cover, ro cover, floating row cover, floating cover, crop cover, fleece, garden fleece, horticultural fleece, plant fleece, ' +
      'agro fabric, agrofabric, agricultural fabric, agri fabric, garden fabric, horticultural fabric, row cover fabric, ' +
      'spunbond, spunbonded, spunbonded fabric, spunbonded row cover, spun bonded polypropylene, nonwoven, non woven, ' +
      'non woven fabric, floating fabric, agricultural cloth, garden cloth, row fabric, fabric, fabric cover, plant cover, ' +
      'agricultural fleece, crop fleece, rowcover cloth, agro cloth, agro fleece, agri cloth, remay, reemay, agribon',
  },
  {
    key: 'row-cover-heavy',
    phrases:
      'frost cloth, frost blanket, frost fleece, frost fabric, frost cover, frost protection cloth, frost protection fabric, ' +
      'frost protection fleece, frost protection blanket, freeze cloth, freeze blanket, freeze cover, winter fleece, ' +
      'plant blanket, garden blanket, frost sheet, plant protection blanket, frost guard, winter blanket',
  },
  // The number that growers say with it is the weight in g/m².
  { key: 'row-cover-light', fronts: 'agribon, ag, agribon ag', phrases: '15, 17, 19, -15, -17, -19' },
  { key: 'row-cover-medium', fronts: 'agribon, ag, agribon ag', phrases: '30, -30' },
  { key: 'row-cover-heavy', fronts: 'agribon, ag, agribon ag', phrases: '50, 70, -50, -70' },
  {
    key: 'row-cover-light',
    phrases: 'insect netting fleece, summer weight row cover, insect row cover, insect weight row cover, bug fabric',
  },
  {
    key: 'sheet',
    phrases:
      'sheet, bed sheet, cotton sheet, old sheet, bed linen, linen sheet, dust sheet, drop cloth, tablecloth, table cloth, towel',
  },
  {
    key: 'blanket',
    phrases:
      'blanket, wool blanket, woollen blanket, woolen blanket, moving blanket, packing blanket, furniture blanket, ' +
      'household blanket, old blanket, horse blanket, thick blanket, picnic blanket, fleece blanket, throw blanket, ' +
      'army blanket, camping blanket, bed blanket, blanket from the house',
  },
  {
    key: 'quilt',
    phrases:
      'quilt, duvet, comforter, eiderdown, doona, continental quilt, sleeping bag, old quilt, bed quilt, padded quilt, bedspread',
  },
  {
    key: 'tarp',
    phrases:
      'tarp, trap, tarpaulin, plastic tarp, blue tarp, canvas tarp, canvas, poly tarp, groundsheet, ground sheet',
  },
  {
    key: 'mat',
    phrases:
      'reed mat, straw mat, reed mats, bamboo mat, rush mat, insulating mat, mat, mats, matting, bast mat, rye straw mat',
  },
  {
    key: 'straw',
    phrases:
      'straw, straw mulch, loose straw, hay, hay mulch, mulch, mulched, straw cover, pine straw, salt hay, salt marsh hay, bracken',
  },
  {
    key: 'leaves',
    phrases:
      'leaf mulch, dry leaves, dead leaves, fallen leaves, shredded leaves, autumn leaves, oak leaves, leaf mould, leaf mold, ' +
      'mulched with leaves, mulched in leaves, leaf litter, bagged leaves, bags of leaves, chopped leaves, raked leaves, ' +
      'a pile of leaves, pile of leaves, foot of leaves, inches of leaves, buried in leaves, covered in leaves, ' +
      'covered with leaves, under leaves, leaves mulch, layer of leaves, leaves on top',
  },
  {
    key: 'snow',
    phrases:
      'snow cover, under snow, under the snow, under deep snow, under fresh snow, under heavy snow, beneath snow, beneath the snow, ' +
      'buried in snow, buried under snow, buried by snow, covered in snow, covered with snow, covered by snow, blanket of snow, ' +
      'foot of snow, feet of snow, inches of snow, inch of snow, in of snow, cm of snow, centimetres of snow, layer of snow, ' +
      'deep snow, snow on top, snow blanket, snowpack, snow pack, snow mulch, snow over them, snow over it, snow covered, ' +
      'in the snow, thick snow',
  },
  {
    key: 'low-tunnel',
    phrases:
      'low tunnel, mini tunnel, minitunnel, hoop tunnel, mini hoop tunnel, mini hoop house, mini hoophouse, poly low tunnel, plastic low tunnel, ' +
      'plastic tunnel, film tunnel, row tunnel, cloche tunnel, tunnel cloche, low hoops with plastic, ' +
      'hoop row cover with plastic, low poly tunnel, low polytunnel, low plastic tunnel, poly hoops, plastic hoops, plastic low hoops',
  },
  { key: 'low-tunnel', phrases: 'tunnel, cloche, cloches', assumes: 'tunnel-is-low' },
  {
    key: 'low-tunnel',
    phrases:
      'plastic, sheet plastic, plastic wrap, painters plastic, plastic film, clear plastic, poly, polythene, polyethylene, plastic sheeting, plastic sheet, poly film, film, ' +
      'greenhouse plastic, greenhouse film, clear film, polyfilm, greenhouse poly, clear poly, sheet of plastic, plastic cover',
    assumes: 'plastic-on-hoops',
  },
  {
    key: 'low-tunnel-perforated',
    fronts: 'perforated, slitted, slit, slotted, ventilated, punched',
    phrases: 'film, plastic, poly, polythene, polyethylene, tunnel, low tunnel, row cover, cover',
  },
  { key: 'low-tunnel-perforated', phrases: 'film with holes, plastic with holes, vented film' },
  {
    key: 'low-tunnel-infrared',
    fronts: 'infrared, infra red, ir, thermal, thermic, heat retaining, infrared absorbing, anti infrared',
    phrases: 'film, plastic, poly, polythene, polyethylene, tunnel, low tunnel, film tunnel, plastic tunnel',
  },
  {
    key: 'cold-frame',
    phrases:
      'cold frame, cole frame, coal frame, frame, glass frame, garden frame, glazed frame, wooden frame, window frame, glass cold frame, brick frame, ' +
      'glass box, glazed box, cold box, hot bed frame, hotbed, hot bed, dutch light frame, dutch lights, sash frame, storm window frame, ' +
      'wooden cold frame, glass top, under glass, glass, glass lid, glass lights, sash, sashes',
  },
  {
    key: 'cold-frame-twin-wall',
    fronts:
      'twin wall, twinwall, twin walled, double wall, double walled, polycarbonate, twin wall polycarbonate, twinwall polycarbonate, ' +
      'multiwall, multiwall polycarbonate, double wall polycarbonate, double glazed',
    phrases: 'frame, cold frame, coldframe, light, lid',
  },
  {
    key: 'cold-frame-twin-wall',
    phrases: 'polycarbonate, twin wall, twinwall, twin wall polycarbonate, twinwall polycarbonate, polycarbonate box',
  },
  {
    key: 'cold-frame-film',
    fronts: 'film, plastic, poly, polythene, polyethylene, film covered, plastic covered, film topped, plastic topped',
    phrases: 'frame, cold frame, coldframe',
  },
  {
    key: 'cold-frame-film',
    fronts: 'frame, cold frame, coldframe',
    phrases:
      'with plastic, with a plastic lid, with a film lid, with plastic on top, covered with plastic, covered in plastic',
  },
  {
    key: 'high-tunnel',
    phrases:
      'high tunnel, hoop house, hoophouse, polytunnel, poly tunnel, walk in tunnel, caterpillar tunnel, cat tunnel, caterpillar, ' +
      'tall tunnel, big tunnel, field tunnel, polyhouse, poly house, plastic house, unheated high tunnel, unheated hoop house, ' +
      'unheated polytunnel, large tunnel, solar tunnel, spanish tunnel, moveable tunnel, movable tunnel, gothic tunnel',
  },
  {
    key: 'high-tunnel',
    phrases:
      'greenhouse, green house, unheated greenhouse, cold greenhouse, hothouse, solarium, poly greenhouse, plastic greenhouse',
    assumes: 'greenhouse-as-high-tunnel',
  },
  {
    key: 'high-tunnel-double',
    fronts:
      'double, double layer, double layered, double wall, double walled, double skin, double skinned, double poly, double inflated, ' +
      'double glazed, inflated, twin skin, two layer',
    phrases:
      'high tunnel, hoop house, hoophouse, polytunnel, poly tunnel, greenhouse, walk in tunnel, caterpillar tunnel',
  },
  {
    key: 'bucket',
    phrases:
      'bucket, upturned bucket, upside down bucket, five gallon bucket, 5 gallon bucket, pail, upturned pot, upturned flower pot, upside down pot, inverted pot, upturned plant pot, upside down flower pot, ' +
      'tote, storage tote, plastic tote, storage bin, plastic bin, plastic tub, storage tub, upside down bin, trash can, garbage can, dustbin, wash tub',
  },
  {
    key: 'cloche',
    phrases:
      'milk jug cloche, jug cloche, bottle cloche, plastic bottle, soda bottle, pop bottle, cut off bottle, cut bottle, water bottle cloche, two litre bottle, two liter bottle, 2 liter bottle, ' +
      'glass cloche, bell cloche, glass bell, bell jar, plastic cloche, under milk jugs, under a milk jug, under jugs, under plastic jugs, under gallon jugs, under soda bottles, under bottles, ' +
      'cut off milk jug, cut milk jug, hot cap, hotcap, hot kap, pop bottle cloche, milk jug over, milk jugs over, milk jugs with the bottom cut off, bottomless milk jug, juice bottle',
  },
  {
    key: 'cardboard',
    phrases:
      'cardboard, cardboard box, cardboard carton, upturned box, big box, appliance box, wooden crate, wooden box',
  },
  {
    key: 'water-wall',
    phrases:
      'wall of water, walls of water, wall o water, walls o water, wall o waters, water wall, water teepee, water tepee, water filled teepee, water cloche, water filled cloche, wallo water',
  },
  {
    key: 'burlap',
    phrases: 'burlap, hessian, burlap sack, burlap bag, sacking, hessian sack, feed sack, coffee sack, jute, jute sack',
  },
  {
    key: 'bubble-wrap',
    phrases: 'bubble wrap, bubblewrap, bubble insulation, bubble film, pool cover, solar pool cover',
  },
  {
    key: 'greenhouse-twin-wall',
    fronts:
      'polycarbonate, twin wall, twinwall, twin wall polycarbonate, unheated polycarbonate, double wall polycarbonate, multiwall, old polycarbonate, cold polycarbonate, small polycarbonate',
    phrases: 'greenhouse, green house, house, greenhouse kit, hobby greenhouse',
  },
  {
    key: 'greenhouse-glass',
    fronts: 'glass, old glass, unheated glass, single glass, cold glass, single pane, single glazed, old',
    phrases: 'greenhouse, green house',
  },
  {
    key: 'greenhouse-glass',
    phrases: 'glasshouse, glass house, greenhouse with glass, victorian greenhouse, conservatory, orangery',
  },
  {
    key: 'cold-frame',
    phrases:
      'storm window, storm windows, old storm window, old storm windows, window on top, windows on top, glass door on top, window sash',
  },
  {
    key: 'low-tunnel',
    phrases:
      'pallet wrap, stretch wrap, shrink wrap, cling film, clingfilm, plastic wrap, saran wrap, painters plastic, drop cloth plastic, dropcloth plastic, shower curtain, clear shower curtain, trash bag, trash bags, garbage bag, garbage bags, bin bag, bin bags',
    assumes: 'plastic-on-hoops',
  },
  {
    key: 'hoops',
    phrases: 'hoops, hoop, wire hoops, low hoops, pvc hoops, pipe hoops, steel hoops, metal hoops, emt hoops, bows',
  },
  {
    key: 'jugs',
    phrases:
      'jugs, water jugs, jugs of water, milk jugs, gallon jugs, bottles of water, water bottles, water barrels, barrels of water, ' +
      'buckets of water, water jug, jug of water, water filled jugs, jugs filled with water, water containers, milk jugs of water, ' +
      'milk jugs full of water, jugs full of water, gallon jugs of water, drums of water, ' +
      'jugs of hot water, hot water jugs, hot water bottle, hot water bottles, bottles of hot water, buckets of hot water, buckets of warm water, jugs of warm water, warm water jugs, ' +
      'bottles of warm water, jugs filled with hot water, jugs filled with warm water, jugs with hot water, gallon barrel, ' +
      'water barrel, barrel of water, barrel, rain barrel, gallon drum, water drum, drum of water, water butt, water butts, bucket of water, bottle of water, ' +
      'warm water bottles, black jugs, bottles filled with water',
  },
];

/** Words that say nothing lies over the bed; `fronts` stand before each of `phrases`. */
export const BARE_WORDS: readonly { readonly fronts?: string; readonly phrases: string }[] = [
  {
    phrases:
      'bare, nothing over top, nothing on, dont have anything on, dont have anything on em, dont have anything over, doesnt have anything on, have nothing on, has nothing on, not a thing over, not a thing over them, not a thing on, never had a stitch on, not a stitch on, open to the sky, unfleeced, unblanketed, unsheeted, untarped, stand open, stands open, standing open, stood open, stood in the open, refuse to cover, would have covered, would have fleeced, should have covered, should have fleeced, meant to cover, meaning to cover, cover ripped off, covers ripped off, cover blew off, covers blew off, cover blown off, covers blown off, cover is off, covers are off, cover came off, covers came off, cover gone, covers gone, there isnt any on, isnt any on, none on, none over, aint covered, nothing, with nothing on, uncovered, unprotected, open ground, open bed, in the open, out in the open, exposed, naked, ' +
      'unsheltered, outdoors, outside in the open, open field, open air, in the open air, uncovered bed, open garden, unmulched, ' +
      'without a cover, not covered, not covering, never covered, forgot to cover, no row cover or anything, ' +
      'not under anything, not under cover, not under any cover, under nothing',
  },
  {
    fronts: 'minus, minus the, minus any, 0, no, with no, without, without any, w/o, w/o any, wo, not any, zero',
    phrases: 'cover, covers, covering, coverings, coverage, protection',
  },
  {
    fronts: 'nothing, with nothing',
    phrases: 'on it, on them, on em, over it, over them, over em, on top',
  },
  {
    fronts: 'isnt, arent, wasnt, werent, havent, hasnt been, havent been, didnt, i dont, we dont',
    phrases: 'covered, cover',
  },
];

/** Things that people lay over plants and no table holds. */
export const OTHER_COVER_WORDS =
  'tablecloth plastic, cut jug, cut jugs, cut off jug, cut off jugs, jug with the bottom cut off, ' +
  'jugs with the bottoms cut off, yoga mat, bath mat, pillow, pillows, pillowcase, pillowcases, coat, coats, ' +
  'jacket, jackets, sweater, curtain, curtains, drapes, paper bags, paper bag, egg cartons, insulation, ' +
  'fiberglass insulation, fibreglass insulation, pink insulation, newspaper, newspapers, space blanket, ' +
  'foil blanket, mylar, mylar blanket, emergency blanket, shade cloth, shadecloth, carpet, rug, wood chips, ' +
  'woodchips, wood chip, bark mulch, sawdust, compost, pine branches, evergreen boughs, pine boughs, ' +
  'spruce boughs, polystyrene, styrofoam, foam board, foam, insect netting, bird netting, netting, insect mesh, ' +
  'mesh, laundry basket, grass clippings, wool fleece, sheep wool, sheeps wool, parachute, tent, umbrella';

/** Weights of fabric in words. */
export const WEIGHT_WORDS: Readonly<Record<Weight, string>> = {
  light: 'light, lightweight, light weight, thin, lighter, summer weight',
  medium: 'medium, medium weight, mediumweight, midweight, mid weight',
  heavy: 'heavy, heavyweight, heavy weight, thick, heavy duty, heavier, thicker, winter weight, heaviest',
};

export const LAYER_WORDS: Readonly<Record<string, string>> = {
  any: 'layer, layers, thickness, thicknesses, layers of, layer of, ply, sheets of, sheet of, pieces of, piece of',
  '1': 'single, single layer, single layer of, one layer, one layer of, a layer of, just one layer, only one layer',
  '2': 'a second, second, double, doubling, doubling up, double up, doubled, doubled up, twice, double layer, double layer of, double layers of, folded double, doubled over, twofold, 2x, x2, second layer of, a second layer of',
  '3': 'triple, tripled, triple layer, triple layer of, treble, threefold, 3x, x3',
};

/** Walls of a frame; with a word for a frame in the same question. */
export const WALL_WORDS: Readonly<Record<WallKey, string>> = {
  wood: 'wooden walls, wood walls, timber walls, wooden sides, timber sides, plank walls, plank sides, wood sides, wood framed, timber framed',
  'straw-bale':
    'straw bale, straw bales, strawbale, strawbales, hay bale, hay bales, bale, bales, straw bale walls, walls of straw, straw bale sides',
  log: 'log, logs, log walls, log sided, log sides',
  concrete:
    'concrete, concrete block, concrete blocks, cinder block, cinder blocks, breeze block, breeze blocks, block walls, concrete walls, brick, bricks, ' +
    'brick walls, stone walls, concrete block walls, cinder block walls, brick sides, masonry',
  metal:
    'metal walls, metal sides, sheet metal, corrugated, corrugated iron, steel walls, tin walls, metal sided, galvanized, galvanised, metal framed',
};
