/** Plants that people ask about and the table of crops does not hold; whatever the table does hold is taken out again. */
export const OTHER_PLANTS =
  'abutilon, agapanthus, agave, aloe, aloe vera, alstroemeria, amaranth, amaryllis, anemone, apple tree, apple, apricot, aster, avocado, azalea, bamboo, banana, ' +
  'banana tree, barley, bay laurel, bay tree, begonia, bergamot, bird of paradise, blackberry, blackcurrant, bleeding heart, blueberry, bonsai, borage, bougainvillea, boxwood, ' +
  'brugmansia, buddleia, cactus, caladium, calendula, calibrachoa, camellia, canna, canna lily, carnation, catmint, catnip, cherry tree, cherry, chrysanthemum, ' +
  'citrus, citrus tree, clematis, clover, coffee plant, coleus, columbine, comfrey, coneflower, cosmos, cotton, crabapple, cranberry, crepe myrtle, crocus, cyclamen, ' +
  'daffodil, dahlia, daisy, datura, daylily, delphinium, dianthus, dogwood, dragon fruit, dragonfruit, echinacea, elderberry, epazote, eucalyptus, fern, fescue, fig, fig tree, ' +
  'foxglove, freesia, fuchsia, gardenia, geranium, ginger, ginseng, gladiolus, gladioli, gooseberry, grape, grape vine, grapefruit, grapevine, grass, ground cherry, guava, ' +
  'hazelnut, heather, hellebore, hemp, hens and chicks, heuchera, hibiscus, holly, hollyhock, honeysuckle, hop, hosta, houseplant, huckleberry, hyacinth, hydrangea, impatiens, ' +
  'iris, ivy, japanese maple, jasmine, jade plant, juniper, kiwi, kiwi vine, kumquat, lantana, larkspur, laurel, lavender, lemon, lemon balm, lemon tree, lemon verbena, lemongrass, ' +
  'lilac, lily, lime tree, lobelia, loquat, lovage, lupin, lupine, magnolia, mandevilla, mandarin, mango, mango tree, marigold, marijuana, cannabis, millet, mulberry, mushroom, ' +
  'narcissus, nectarine, oleander, olive, olive tree, orange tree, orange, orchid, ornamental cabbage, palm, palm tree, pansy, papaya, passion fruit, passionfruit, peach, peach tree, pear tree, ' +
  'pecan, pelargonium, peony, persimmon, petunia, phlox, pineapple, pine tree, plum tree, plum, plumeria, poinsettia, pomegranate, poppy, primrose, primula, quince, quinoa, raspberry, ' +
  'ranunculus, redcurrant, rhododendron, rice, rose bush, roses, rosebush, rubber plant, rudbeckia, rye, ryegrass, salvia, sedum, snapdragon, snowdrop, sorghum, spider plant, ' +
  'stevia, stock flower, succulent, sugarcane, sunflower, sweet alyssum, sweet pea, sweet peas, sweet william, tangerine, tarragon, tea plant, tobacco, tomatillo, trillium, tulip, turmeric, verbena, ' +
  'vetch, viburnum, vinca, viola, violet, walnut, wasabi, weigela, wheat, willow, winter wheat, wisteria, yarrow, yew, yucca, zinnia, fruit tree, fruit trees, lawn, moss, microgreens, ' +
  'roselle, curry plant, curry leaf, cassava, taro, yacon, oca, mashua, sunchoke flower, malabar spinach, water spinach, chayote, luffa, loofah, bitter melon, gourd, gourds, tulip bulbs, daffodil bulbs, bulbs, ' +
  'air plant, ficus, monstera, pothos, philodendron, snake plant, peace lily, christmas cactus, aeonium, echeveria, bromeliad, tree fern, cordyline, phormium, penstemon, gaura, nemesia, osteospermum, gazania, ' +
  'angelica, anise hyssop, hyssop, lemon thyme tree, savory, feverfew, chamomile, chickweed, nettle, nettles, plantago, stinging nettle, wormwood, rue, myrtle, sumac, saffron, vanilla, hydrangeas, hops';

/**
 * Namesakes: other plants that bear the name of a crop in the table. Most are tender; none may be judged by the crop.
 * Common knowledge.
 */
export const NAMESAKES =
  'yam bean, yam beans, jicama, houseleek, houseleeks, house leek, house leeks, beach pea, pregnant onion, parsley ivy, corn plants, corn plant, ' +
  'okinawan spinach, okinawa spinach, longevity spinach, malabar, malabar spinach, egyptian spinach, molokhia, ceylon spinach, indian spinach, brazilian spinach, brazil spinach, sissoo spinach, sissoo, surinam spinach, philippine spinach, lagos spinach, ' +
  'african spinach, tree spinach, chaya, vine spinach, climbing spinach, chinese spinach, strawberry spinach, sea spinach, beach spinach, cuban spinach, swamp spinach, kangkong, amaranth spinach, ' +
  'cuban oregano, mexican oregano, jamaican oregano, puerto rican oregano, indian borage, spanish thyme, basil thyme, vietnamese coriander, vietnamese mint, vietnamese cilantro, laksa leaf, rau ram, culantro, mexican coriander, long coriander, thai coriander, bolivian coriander, papalo, ' +
  'sea kale, seakale, ornamental kale, flowering kale, tree kale, sea cabbage, skunk cabbage, swamp cabbage, cabbage tree, cabbage palm, cabbage rose, flowering cabbage, strawberry guava, pineapple guava, strawberry tree, strawberry geranium, strawberry begonia, strawberry bush, mock strawberry, barren strawberry, ' +
  'horseradish tree, moringa, drumstick tree, tree tomato, tomato tree, tamarillo, pepper tree, pepper vine, peppercorn, black pepper, sichuan pepper, szechuan pepper, water pepper, mountain pepper, potato vine, potato bush, potato tree, air potato, duck potato, chinese potato, pepino, pepino melon, melon pear, ' +
  'melon tree, horned melon, kiwano, cucamelon, mouse melon, wild cucumber, squirting cucumber, cucumber tree, cucumber magnolia, ivy gourd, society garlic, garlic vine, garlic mustard, hedge garlic, wild leek, ramps, ramson, ramsons, sea onion, onion grass, sea holly, sea beet, sea lettuce, water lettuce, wild lettuce, lettuce tree, lettuce orchid, ' +
  'wild carrot, queen annes lace, carrot tree, wild parsnip, cow parsnip, giant hogweed, water celery, wild celery, water parsnip, celery pine, water chestnut, water mint, mountain mint, horse mint, stone mint, mint bush, australian mint, jerusalem cherry, jerusalem sage, russian sage, white sage, desert sage, mexican sage, mexican bush sage, pineapple sage, sagebrush, sage brush, clary sage, scarlet sage, ' +
  'butterfly pea, pigeon pea, pigeon peas, chickpea, chickpeas, pea shrub, pea tree, pea vine tree, asparagus pea, sturt pea, jack bean, castor bean, coffee bean, cocoa bean, cacao, vanilla bean, velvet bean, winged bean, sword bean, hyacinth bean, mung bean, soybean, soybeans, soya bean, edamame, tepary bean, carob bean, carob, locust bean, bean tree, indian bean tree, mescal bean, ' +
  'sea rocket, dames rocket, sweet rocket, mustard tree, radish tree, peanut, peanuts, groundnut, tiger nut, apios, crosne, crosnes, chinese artichoke, skirret, burdock, sea asparagus, samphire, marsh samphire, sea purslane, asparagus fern, fern asparagus, fennel flower, giant fennel, sea fennel, dog fennel, giant rhubarb, gunnera, monks rhubarb, himalayan rhubarb, ornamental rhubarb, ' +
  'globe thistle, artichoke thistle, pumpkin tree, pumpkin on a stick, ornamental eggplant, corn plant, corn lily, cornflower, corn cockle, chinese okra, okra tree, bog rosemary, wild rosemary, coastal rosemary, fools parsley, cow parsley, water parsley, parsley fern, japanese parsley, mitsuba, hedge parsley, beet tree, turnip tree, squash bug, false indigo, dead nettle, lemon cucumber tree';

/** Where a plant lives, or what it is likened to: before a crop's name it makes another plant, where the table has no such name. */
export const OTHER_KIND_BEFORE: ReadonlySet<string> = new Set(
  'sea beach bog swamp marsh pond river desert prairie coastal jungle moon pregnant ghost devils devil witch fairy dragon monkey snake dog pig hog cow horse skunk stinking poison false mock parlor house cliff seaside'.split(
    ' ',
  ),
);

/** "kale vine": no vine of the table. */
export const VINES: ReadonlySet<string> = new Set('vine vines creeper'.split(' '));
export const GROWS_AS_VINE: ReadonlySet<string> = new Set(
  'pea bean green-bean runner-bean tomato cucumber melon pumpkin squash summer-squash winter-squash zucchini sweet-potato potato watermelon'.split(
    ' ',
  ),
);

/** A crop's name before one of these is that of another plant: "pepper tree", "cabbage palm". */
export const OTHER_KIND: ReadonlySet<string> = new Set(
  'ivy tree trees palm palms fern ferns guava shrub shrubs orchid orchids lily lilies begonia geranium'.split(' '),
);

/** Nouns that belong to the name of a plant before them: "lemon tree". */
export const PLANT_NOUNS: ReadonlySet<string> = new Set([
  'tree',
  'trees',
  'bush',
  'bushes',
  'vine',
  'vines',
  'shrub',
  'shrubs',
  'flowers',
  'bulbs',
  'plant',
  'plants',
]);
