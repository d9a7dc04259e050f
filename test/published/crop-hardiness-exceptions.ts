/** Verdicts that differ from a source, each with the reason a grower would accept. Keyed by crop, source, effect and value. */
export const HARDINESS_EXCEPTIONS: Readonly<Record<string, string>> = {
  'arugula: colorado-2013, first-damage -9.4':
    'One garden, baby leaf, "fairly sad" after several such nights; two editions of a growers’ list have it dead at -5.6.',
  'broccoli: kansas-column, first-damage -6': 'A class of plants; the head goes first, and growers see it die at -3.9.',
  'cabbage: brassica-specialists, kill alive at -8': 'A short exposure, and varieties, as above.',
  'cabbage: kansas-column, first-damage -6': 'A class of plants; growers list most heads dead between -2.8 and -6.7.',
  'cabbage: virginia-2013, kill alive at -10':
    'A winter-type head, in a garden where a tender autumn variety died the same night.',
  'cauliflower: kansas-column, first-damage -6': 'A class of plants by their leaves; the curd dies between -1 and -2.',
  'collards: brassica-specialists, kill alive at -18':
    'One exchange among specialists; growers list most collards dead at -11, only the hardiest at -18.',
  'butterhead-lettuce: kansas-column, first-damage -3':
    'A class of plants, half hardened here; three reports have lettuces burnt at the same low, and the odds are nearly even.',
  'leaf-lettuce: kansas-column, first-damage -3':
    'A class of plants, half hardened here; three reports have lettuces burnt at the same low, and the odds are nearly even.',
  'cauliflower: winterkill-list-2012, kill 0':
    'The list says "some", of curds; services and growers have curds and plants unharmed at -2 to -4.',
  'kale: brassica-specialists, kill alive at -14':
    'One exchange among specialists on short cold; growers list hardy kales dead at -15, and the odds are nearly even.',
  'komatsuna: tamura-2002, first-damage -13':
    'Slight loss from cells in the coldest season under glass, from which plants grow on; growers list the crop dead at -9.4.',
  'parsley: colorado-2013, kill alive at -9.4':
    'One garden; the growers’ list has curly parsley dead at that very low, and the odds are nearly even.',
  'kale: brassica-specialists, kill alive at -18':
    'A short exposure; the same source has kale alive at -14 as a rule, and so has the table.',
  'kale: oregon-breeder-2013, first-damage -17':
    'The writer’s own tall plants, badly damaged at "almost down to zero" °F: a reading of the night, not of the bed.',
  'potato: kansas-column, first-damage -3': 'Hardy by its tuber; the leaf dies between -2 and -3.',
  'turnip-greens: kansas-column, first-damage -6':
    'A class of plants; half hardened leaves are judged here, and another source has them burn at -1.9.',
};

/** Rows whose figure stood in the source, by what became of them; a row that is dropped or quietly added changes these. */
export const READ_ROWS_PER_SOURCE: Readonly<Record<string, { readonly judged: number; readonly other: number }>> = {
  'alberta-fava-2014': { judged: 0, other: 1 },
  'brassica-specialists': { judged: 5, other: 0 },
  'colorado-2013': { judged: 4, other: 0 },
  'engineering-foods': { judged: 3, other: 3 },
  'fuller-1994': { judged: 1, other: 0 },
  'georgia-column': { judged: 10, other: 7 },
  'glasshouse-2024': { judged: 3, other: 0 },
  'gusta-2004': { judged: 3, other: 0 },
  'illinois-rhubarb': { judged: 1, other: 0 },
  'kansas-column': { judged: 15, other: 2 },
  'kohn-levitt-1965': { judged: 0, other: 2 },
  'korean-food-2016': { judged: 3, other: 7 },
  'mashhad-fava': { judged: 4, other: 0 },
  'michigan-2016': { judged: 31, other: 5 },
  'mountain-log': { judged: 2, other: 0 },
  'nc-strawberry-2014': { judged: 1, other: 1 },
  'nc-strawberry-advisory': { judged: 0, other: 1 },
  'oregon-breeder-2013': { judged: 11, other: 2 },
  'pomological-1982': { judged: 1, other: 0 },
  'produce-supplier': { judged: 6, other: 2 },
  'sasaki-1996': { judged: 0, other: 1 },
  'seed-trade-broccoli': { judged: 0, other: 1 },
  'tamura-2002': { judged: 4, other: 0 },
  'texas-forum': { judged: 3, other: 0 },
  'texas-hills-2024': { judged: 1, other: 0 },
  'transport-chart': { judged: 4, other: 1 },
  'virginia-2013': { judged: 9, other: 2 },
  'winterkill-list-2012': { judged: 37, other: 1 },
  'winterkill-list-2018': { judged: 9, other: 0 },
};

/** Crops whose limits and lists do not meet, each with the reason a horticulturist would accept. */
export const CLOSING_EXCEPTIONS: Readonly<Record<string, string>> = {
  cauliflower:
    'The list says "some", of curds, at freezing; services and growers have curds and plants unharmed at -2 to -4. Half a kelvin outside.',
  celeriac:
    'One remembered entry; two services and a garden paper have the root unharmed at -5. A quarter kelvin outside.',
  chervil: 'One entry; another service lists chervil with parsley, which stands more. A third of a kelvin outside.',
  chives: 'One remembered entry, of the clump; the table has the tops, which die back by themselves.',
  onion: 'One remembered entry that says "some"; three extension classes and a breeder put most onions near -2 to -7.',
  witloof: 'The list warns that roots for forcing be lifted; in the soil they stand as much as other roots.',
};
