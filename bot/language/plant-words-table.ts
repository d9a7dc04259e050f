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
