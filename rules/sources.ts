/** One published source, cited once. `standing` says how the figures from it may be used. */
export interface Source {
  readonly title: string;
  /** READ: the figure stood in a stored copy of the document. MEMORY: remembered, to be checked. JUDGEMENT: ours. */
  readonly standing: 'READ' | 'MEMORY' | 'JUDGEMENT';
}

/** Every source of a number in `rules/`, by key. Add a block per folder; keep each block sorted. */
export const SOURCES = {
  'common-practice': { title: 'Common practice among growers, no source', standing: 'JUDGEMENT' },
  judgement: { title: 'Judgement of the developers', standing: 'JUDGEMENT' },
  // cautions
  'caution-electric': {
    title: 'Safety-agency consensus on electric heat near covers, from memory',
    standing: 'MEMORY',
  },
  'caution-frozen-leaves': {
    title: 'Extension consensus: do not pick, touch or uncover while frozen',
    standing: 'MEMORY',
  },
  'caution-fuel': {
    title: 'Safety-agency consensus on unvented fuel heat, carbon monoxide and fire',
    standing: 'MEMORY',
  },
  'caution-nitrate': {
    title: 'Regulation (EU) 1258/2011 limits for leafy greens; Neely et al., HortScience (abstract) on light',
    standing: 'MEMORY',
  },
  'caution-paint-timber-glass': { title: 'US EPA guidance on lead paint and CCA-treated timber', standing: 'MEMORY' },
  'caution-potato': { title: 'Extension consensus on frozen and greened tubers', standing: 'MEMORY' },
  'caution-rhubarb': { title: 'University of Illinois Extension 2009, 2012', standing: 'READ' },
  'snow-load': { title: 'Extension consensus on clearing hoops; densities from general physics', standing: 'MEMORY' },
  'wind-anchor': {
    title: 'Extension consensus, 35 mph (30–45); NC State University, ASHS 2011 abstract (flapping)',
    standing: 'MEMORY',
  },
  // covers
  'acta-187-20': { title: 'Acta Horticulturae 187 (1986), paper 20, perforated film (abstract)', standing: 'READ' },
  'cibse-guide-a': {
    title: 'CIBSE Guide A tables 3.36–3.37 (excerpt) and American Wood Council, conductivities',
    standing: 'READ',
  },
  'cloth-memory': {
    title: 'Conductivity 0.03–0.08 W/mK of household textiles, tarps, mats and straw, from memory; none fitted',
    standing: 'MEMORY',
  },
  'cold-frame-2018': {
    title:
      'A wooden frame near Winona, Minnesota, spring 2018, read every quarter of an hour ("ColdFrameTemperature", CC0)',
    standing: 'READ',
  },
  'covered-soils': {
    title: 'Soils under covers in hard cold, 0 to 4 °C: garden and farm weblogs 2010–2013, growers’ forum (compiled)',
    standing: 'READ',
  },
  'fabric-optics': {
    title: 'Longwave of nonwovens from polymer thickness and scattering; the least certain numbers here',
    standing: 'JUDGEMENT',
  },
  'film-memory': {
    title: 'Nijskens et al. 1984, Papadakis et al. 2000 and makers on films and sheets, from memory',
    standing: 'MEMORY',
  },
  'glazing-r-values': { title: 'Trade tables of R-values of greenhouse glazing', standing: 'READ' },
  'hanson-1963': {
    title: 'Hanson 1963, J. Applied Meteorology 2:793, nocturnal protection of glass and films (abstract)',
    standing: 'READ',
  },
  'infiltration-tables': { title: 'ASAE EP406 and ASHRAE infiltration tables for greenhouses', standing: 'MEMORY' },
  'kalfas-1988': { title: 'Kalfas 1988, Polimery, infrared-absorbing polyethylene (abstract)', standing: 'READ' },
  'moene-van-dam': {
    title: 'Moene & van Dam, Transport in the Atmosphere–Vegetation–Soil Continuum, table 2.2 (after de Vries 1963)',
    standing: 'READ',
  },
  'nonwoven-trade': { title: 'Two trade articles on agricultural nonwovens: light, air flow', standing: 'READ' },
  'snow-memory': { title: 'Conductivity and light of snow by density, from memory', standing: 'MEMORY' },
  'wall-memory': { title: 'Straw-bale and hollow-block walls, from memory', standing: 'MEMORY' },
  // bed nights
  'damped-annual-wave': {
    title: 'Annual temperature wave in soil, damping depth 2.2 m (textbook physics)',
    standing: 'MEMORY',
  },
  'forecast-error': {
    title: 'Baars & Mass 2005 (abstract), MET Norway verification pages, and our comparison with station records',
    standing: 'MEMORY',
  },
  'model-spread': {
    title: 'Spread of the leaf minimum in 300 draws of all inputs of this model, one table per cover group',
    standing: 'JUDGEMENT',
  },
  // energy balance
  'ashrae-incidence': { title: 'ASHRAE incidence angle modifier of a pane, coefficient 0.1', standing: 'MEMORY' },
  'boulard-baille-1995': {
    title: 'Boulard & Baille 1995, air exchange of vents, as described with an open greenhouse library',
    standing: 'READ',
  },
  'campbell-norman-1998': {
    title: 'Campbell & Norman 1998, An Introduction to Environmental Biophysics, heat of leaves',
    standing: 'MEMORY',
  },
  'canopy-light': {
    title: 'Light in plant stands: extinction 0.5–0.7, leaf reflectance 0.07 visible and 0.35 near infrared',
    standing: 'MEMORY',
  },
  'de-zwart-1996': { title: 'De Zwart 1996, thesis Wageningen, heat from greenhouse floors', standing: 'MEMORY' },
  'log-wind-profile': { title: 'Logarithmic wind profile over short grass', standing: 'MEMORY' },
  'longwave-surfaces': { title: 'Emissivity of soils, fabrics and snow, textbook values', standing: 'MEMORY' },
  'papadakis-1992': {
    title: 'Papadakis et al. 1992, heat exchange at the outer face of a plastic greenhouse',
    standing: 'MEMORY',
  },
  'prata-1996': {
    title: 'Prata 1996, Q. J. R. Meteorol. Soc. 122:1127, as coded in open radiation packages',
    standing: 'READ',
  },
  'sky-comparison': {
    title: 'Our comparison with sky longwave measured at NOAA SURFRAD, Lyngby, Alptal, Col de Porte and US-CRT',
    standing: 'READ',
  },
  stomata: { title: 'Stomatal resistance of leafy crops, 80–200 s m⁻¹ in full light', standing: 'MEMORY' },
  'two-flux': { title: 'Two-flux method for plane grey layers; crossed strings for an arch', standing: 'MEMORY' },
  // learning
  'learning-bench': {
    title: 'Draws of the inputs of this model over gardens and nights, printed by the learning bench',
    standing: 'JUDGEMENT',
  },
  // air
  'standard-atmosphere': { title: 'Standard atmosphere, ISO 2533, from memory', standing: 'MEMORY' },
  'vanthoor-2011': {
    title: 'Vanthoor et al. 2011, Biosyst. Eng. 110:363, values as listed in an open re-implementation',
    standing: 'READ',
  },
  'wmo-magnus': { title: 'World Meteorological Organization, Guide to Instruments, Magnus form', standing: 'MEMORY' },
  // by day
  'hardened-venting': {
    title: 'Extension consensus: open over hardened cool-season greens at 50 to 60 °F, at the latest at 75 °F',
    standing: 'MEMORY',
  },
  // weather that breaks things
  'sunless-covers': {
    title:
      'NC State University, ASHS 2011 abstract (little gain after an overcast day); community garden website (two sunless weeks)',
    standing: 'READ',
  },
  'wet-covers': { title: 'NC State Extension advisory: wet row covers before a freeze are a risk', standing: 'READ' },
  // season
  'autumn-slowdown': { title: 'Extension consensus: 10 to 21 days longer from autumn sowings', standing: 'MEMORY' },
  'lettuce-light': {
    title: 'Greenhouse lettuce guides: daily light of 17 mol m⁻² for full growth, from memory',
    standing: 'MEMORY',
  },
  'photon-yield': {
    title: 'Plant physiology: about 2 mol of photosynthetic photons per MJ of sunlight',
    standing: 'MEMORY',
  },
  'ten-hour-rule': { title: 'Grower-educator usage: growth nearly stops under ten hours of day', standing: 'READ' },
  // sun
  'almanac-sun': { title: 'Astronomical Almanac, low-precision formulas for the Sun', standing: 'MEMORY' },
  'erbs-1982': { title: 'Erbs, Klein & Duffie 1982, Solar Energy 28:293', standing: 'MEMORY' },
  'fao-56': { title: 'FAO Irrigation & Drainage Paper 56 (Allen et al. 1998)', standing: 'READ' },
  'haurwitz-1945': { title: 'Haurwitz 1945, J. Meteorology 2:154, as coded in open solar libraries', standing: 'READ' },
  'kasten-czeplak-1980': { title: 'Kasten & Czeplak 1980, Solar Energy 24:177', standing: 'MEMORY' },
  'noaa-solar': {
    title: 'NOAA Global Monitoring Division, General Solar Position Calculations',
    standing: 'READ',
  },
  'spencer-1971': { title: 'Spencer 1971, Search 2:172', standing: 'MEMORY' },
  // crops, hardening, verdict
  'abramowitz-stegun': { title: 'Abramowitz & Stegun 1964, Handbook of Mathematical Functions', standing: 'MEMORY' },
  'alberta-fava-2014': {
    title: 'Alberta faba-bean frost report (Henriquez et al. 2018), night of 2014-09-10',
    standing: 'READ',
  },
  'brassica-specialists': { title: 'Exchange between brassica specialists on a research Q&A site', standing: 'READ' },
  'cabbage-acclimation': {
    title: 'cabbage seedling acclimation literature (Sasaki et al.; Levitt)',
    standing: 'MEMORY',
  },
  'chen-li-1980': {
    title: 'Chen & Li 1980; Palta & Li 1979 (Solanum tuberosum does not acclimate)',
    standing: 'MEMORY',
  },
  'claytonia-experience': { title: 'grower experience', standing: 'MEMORY' },
  'colorado-2013': { title: 'Colorado mountain gardener weblog, 2013-10', standing: 'READ' },
  'circumstance-steps': {
    title:
      "Growers' experience: touching covers, wet leaves, wind, repeated freezes, big heads, small rosettes; 1 to 2 K each",
    standing: 'JUDGEMENT',
  },
  'covered-greens-experience': { title: 'grower experience under cover', standing: 'MEMORY' },
  'desert-lettuce': { title: 'University of California / Arizona desert-lettuce frost notes', standing: 'MEMORY' },
  'engineering-foods': {
    title: 'Engineering reference page "Freezing Point and Properties of Foods" (ASHRAE-derived table), undated',
    standing: 'READ',
  },
  'extension-consensus': { title: 'extension consensus', standing: 'MEMORY' },
  'fao-frost-general': { title: 'FAO frost handbook; general', standing: 'MEMORY' },
  'fava-hardening': { title: 'Arbaoui, Balko & Link 2008; Landry & Hu 2019', standing: 'MEMORY' },
  'fennell-li-1985': { title: 'Fennell & Li 1985, J. Amer. Soc. Hort. Sci. 110:306-309', standing: 'MEMORY' },
  'fennell-li-abstract': {
    title: 'Fennell & Li 1985, J. Amer. Soc. Hort. Sci. 110:306-309 (abstract): gain and loss of tolerance per day',
    standing: 'READ',
  },
  'fuller-1994': { title: 'Fuller et al. 1994, Annals of Applied Biology 125:179-188 (abstract)', standing: 'READ' },
  'general-knowledge': { title: 'general', standing: 'MEMORY' },
  'georgia-column': {
    title:
      'Georgia gardening question-and-answer column "Cold Tolerance of Vegetables" (undated; Georgia extension background)',
    standing: 'READ',
  },
  'glasshouse-2024': { title: 'Weblog greenhouse log 2024-01-17', standing: 'READ' },
  'gusta-2004': {
    title: 'Gusta, Wisniewski, Nesbitt & Gusta 2004, Plant Physiology 135:1642-1653, Table I (winter cultivar)',
    standing: 'READ',
  },
  'herb-hardiness': { title: 'herb cold-hardiness consensus', standing: 'MEMORY' },
  'illinois-rhubarb': {
    title: 'University of Illinois Extension, rhubarb after frost, 2009 and 2012',
    standing: 'READ',
  },
  'iowa-spinach-tunnel': {
    title:
      'Garden reference website on ventilating tunnels (spinach, Iowa): wilts above 60 °F under an unvented tunnel',
    standing: 'READ',
  },
  'kale-acclimation': { title: 'kale cold-acclimation literature, northern Europe (c. 2010-2015)', standing: 'MEMORY' },
  'kansas-column': {
    title: 'Kansas State Research & Extension column "Hardiness of cool-season vegetables" (newspaper reprint)',
    standing: 'READ',
  },
  'kohn-levitt-1965': { title: 'Kohn & Levitt 1965, Plant Physiology 40:476-480 (abstract)', standing: 'READ' },
  'korean-food-2016': { title: 'Korean Journal of Food Preservation 23(3):438 (2016), Table 2', standing: 'READ' },
  'leek-resistance': { title: 'European leek frost-resistance literature', standing: 'MEMORY' },
  'lettuce-consensus': { title: 'extension and grower consensus', standing: 'MEMORY' },
  'mache-experience': { title: 'seed-trade and European market-garden experience', standing: 'MEMORY' },
  'limit-statements': {
    title:
      'Errors of statements, kinds of crop and their spreads in fitting the limits of crops, judged from the collected rows',
    standing: 'JUDGEMENT',
  },
  'maqbool-2010': { title: 'pulse frost-tolerance review (Maqbool, Shafiq & Lake 2010)', standing: 'MEMORY' },
  'mashhad-fava': {
    title:
      'Ferdowsi University of Mashhad faba-bean electrolyte-leakage study (abstract, Iranian Journal of Field Crop Science)',
    standing: 'READ',
  },
  'michigan-2016': {
    title:
      'Michigan State University Extension "Protect late-season vegetables from freeze damage" (trade-press reprint 2016-10-13)',
    standing: 'READ',
  },
  'mountain-log': {
    title: 'Mountain gardener weblog "four season" log (two nights of single-digit F)',
    standing: 'READ',
  },
  'nc-strawberry-2014': {
    title: 'North Carolina State University, ASHS 2014 conference abstract on plasticulture strawberries',
    standing: 'READ',
  },
  'nc-strawberry-advisory': {
    title: 'NC State Extension advisory to strawberry growers (trade press)',
    standing: 'READ',
  },
  'night-model-covered': {
    title: 'Our own night model: covered leaf on an ordinary clear night at outside lows of -9 to -13 °C',
    standing: 'JUDGEMENT',
  },
  'oregon-breeder-2013': {
    title:
      'Oregon State University vegetable breeder quoted in Statesman Journal "Veggies most likely to survive freezes", 2013-12-20',
    standing: 'READ',
  },
  'palta-1977': { title: 'Palta, Levitt & Stadelmann 1977, Plant Physiology 60:393-401', standing: 'MEMORY' },
  'parsnip-consensus': { title: 'grower consensus; soil temperature is what counts', standing: 'MEMORY' },
  'perry-poling-1986': {
    title: 'Perry & Poling 1986, strawberry frost protection (NC State): open blossom',
    standing: 'MEMORY',
  },
  'plains-garlic': { title: 'Great Plains / Canadian growers', standing: 'MEMORY' },
  'pomological-1982': {
    title: 'American Pomological Society journal 1982 (abstract), strawberry crowns',
    standing: 'READ',
  },
  'produce-supplier': {
    title:
      'Produce-cooling supplier reference table "Optimum storage temperature" (reprints USDA highest freezing points), undated; READ in part',
    standing: 'READ',
  },
  'root-shoulder': { title: 'root shoulder tissue temperature', standing: 'MEMORY' },
  'sasaki-1996': { title: 'Sasaki, Ichimura & Oda 1996, Annals of Botany 78:365-369 (abstract)', standing: 'READ' },
  'seed-trade-broccoli': { title: 'Seed-trade page (mature broccoli-family note)', standing: 'READ' },
  'spinach-freeze-thaw': {
    title:
      'Fennell & Li 1985, J. Amer. Soc. Hort. Sci. 110:306-309, and later spinach freeze-thaw papers (Min, Chen, Arora 2014)',
    standing: 'MEMORY',
  },
  'starting-pairs': {
    title: 'Starting pairs of first damage and kill per kind of crop, judged from the collected rows',
    standing: 'JUDGEMENT',
  },
  'stoddard-2006': { title: 'Stoddard et al. 2006 review', standing: 'MEMORY' },
  'strawberry-crown': {
    title: 'strawberry crown cold-hardiness literature (Boyce; Marini; Warmund)',
    standing: 'MEMORY',
  },
  'tamura-2000': {
    title: 'Tamura 2000 (abstract): 50 % leaf injury 2 to 4 K warmer than electrolyte leakage shows',
    standing: 'READ',
  },
  'tamura-2002': {
    title: 'Tamura 2002, J. Japan. Soc. Hort. Sci. 71:74-81 (abstract), unheated greenhouse 1996-99',
    standing: 'READ',
  },
  'texas-forum': { title: 'Texas grower forum notes', standing: 'READ' },
  'texas-hills-2024': { title: 'Texas Hill Country garden weblog 2024-01', standing: 'READ' },
  'transport-chart': {
    title:
      'Produce storage/transport chart "Commodity / Optimal Temp / Chill Point / Freeze Point" (deg C, rounded), undated web page',
    standing: 'READ',
  },
  'two-thermometers': {
    title: 'A low read outdoors or in a forecast stands for the leaf that the night model has on the ordinary night',
    standing: 'JUDGEMENT',
  },
  'usda-handbook-66': { title: 'USDA HB 66', standing: 'MEMORY' },
  'ventskevich-1958': {
    title:
      'Ventskevich 1958 critical-temperature table as reproduced in FAO "Frost protection" vol. 1 (Snyder & de Melo-Abreu 2005), ch. 4',
    standing: 'MEMORY',
  },
  'virginia-2013': {
    title:
      'Magazine reader contribution "Which Vegetable Crops Survive Cold Weather?", 2019 (central Virginia, two nights at 14 F, Dec 2013)',
    standing: 'READ',
  },
  'winter-pea-hardening': {
    title: 'winter-pea hardening literature (Stoddard et al. 2006 review)',
    standing: 'MEMORY',
  },
  'winterkill-list-2012': {
    title:
      'Grower-educator weblog, central Virginia (zone 7a), "Winter Hardiness" list of killing temperatures, 2012-08-27 (rows 35 to 22 F and start of 20 F seen)',
    standing: 'READ',
  },
  'winterkill-list-2018': {
    title:
      'Community-wiki copy of the same growers\' list, "Winter-kill Temperatures", revision 2018-02-26 (rows 35 to 22 F seen)',
    standing: 'READ',
  },
  'winterkill-list-2020': {
    title:
      'Grower-educators\' annual "Winter-Kill Temperatures of Cold-Hardy Vegetables" (central Virginia), 2016-2020 editions, rows 20 F and below',
    standing: 'MEMORY',
  },
  // outcomes: what growers and services saw
  'alabama-homestead': {
    title: 'weblog: Alabama homestead podcast notes on a Thanksgiving freeze, undated',
    standing: 'READ',
  },
  'austin-2011': { title: 'weblog: Austin, Texas, "Freeze in Austin", 2011-02-06', standing: 'READ' },
  'austrian-magazine-2015': {
    title: 'magazine: Austrian garden magazine, "Diese Gemuese trotzen dem Frost", 2015',
    standing: 'READ',
  },
  'bavaria-2023': {
    title: 'extension: district garden adviser, Bavaria, "Gemuese im Winter", 2023-11-25',
    standing: 'READ',
  },
  'belle-glade-2010': {
    title: 'news: produce trade paper, Belle Glade, Florida, freeze of 8 December, about 2010',
    standing: 'READ',
  },
  'cabbage-thaw-2010': { title: 'weblog: farm weblog, "Cabbage thaw", 2010-01-02', standing: 'READ' },
  'central-oregon': { title: 'weblog: central Oregon garden site, "Cold-hardy vegetables", undated', standing: 'READ' },
  'cold-temps-2014': { title: 'weblog: gardener, "Cold temps", 2014-11-19', standing: 'READ' },
  'cole-crops-forum': { title: 'forum: gardener on setting out cole crops, undated spring', standing: 'READ' },
  'creek-journal-2010': { title: 'weblog: creek journal, "The first hard freeze", 2010-10-31', standing: 'READ' },
  'december-greens-2010': { title: 'weblog: farm, "Greens in December", 2010-12-22', standing: 'READ' },
  'delaware-strawberry': {
    title: 'extension: University of Delaware, Weekly Crop Update, strawberry critical temperatures, undated',
    standing: 'READ',
  },
  'desert-fava-2008': { title: 'weblog: desert garden coach, broad bean frost, 2008-12-27', standing: 'READ' },
  'desert-wholesaler': {
    title: 'trade: produce wholesaler, California desert frost note, undated January',
    standing: 'READ',
  },
  'family-garden-2014': { title: 'weblog: family weblog, garden update, 2014-04-19', standing: 'READ' },
  'farm-subscription-2010': {
    title: 'weblog: farm subscription, hoop house, "Just plain frozen", 2010-12-04',
    standing: 'READ',
  },
  'freeze-report': { title: 'weblog: garden weblog, "Freeze report", undated spring', standing: 'READ' },
  'frost-review-2023': {
    title:
      'journal: reviewed study of 2023 (open access), table "Relative frost resistance of temperate crop species", damaging temperature ranges',
    standing: 'READ',
  },
  'garden-column': { title: 'weblog: garden column, "took a brutal hit in recent storm", undated', standing: 'READ' },
  'georgia-freeze-1996': { title: 'extension: University of Georgia news, March freeze, 1996-03-18', standing: 'READ' },
  'german-magazine': { title: 'magazine: German garden magazine, "Gemuese im Herbst", undated', standing: 'READ' },
  'hendry-2010': { title: 'extension: Hendry County Extension, Florida, trade paper 2010-12-14', standing: 'READ' },
  'herb-farm-2018': {
    title: 'weblog: herb farm, "Defining tender and hardy plants", 2018-02-15 (extension text, origin not named)',
    standing: 'READ',
  },
  'immokalee-2010': {
    title: 'news: produce trade paper, Immokalee, Florida, freeze of 11 January, about 2010',
    standing: 'READ',
  },
  inagro: { title: 'station: Inagro (Belgium), "Groenten beschermen tegen vorstschade", undated', standing: 'READ' },
  'indiana-frame-2013': { title: 'weblog: Indiana, cold frame, 2013-12-13', standing: 'READ' },
  'lower-austria-garden': {
    title: 'extension: Natur im Garten (Lower Austria), "Wintergemuese", undated',
    standing: 'READ',
  },
  'nevada-county-gardeners': {
    title: 'extension: Nevada County (California) Master Gardener, "Your winter vegetable garden", undated',
    standing: 'READ',
  },
  'nevada-reno': {
    title: 'extension: University of Nevada Reno Extension, "Gardening in Nevada can be a gamble", undated',
    standing: 'READ',
  },
  'ohio-kale-2008': { title: 'weblog: north-east Ohio, "Winterbore kale", 2008-12-24', standing: 'READ' },
  'oregon-market-2013': { title: 'news: Oregon farmers market, grower letter, 2013-12-19', standing: 'READ' },
  'overwintered-spinach-2009': {
    title: 'weblog: backyard weblog, "Overwintered spinach", 2009-03-24',
    standing: 'READ',
  },
  'purdue-strawberry': {
    title: 'extension: Purdue University, strawberry freeze, Vincennes, undated',
    standing: 'READ',
  },
  'raised-bed-2016': { title: 'weblog: raised-bed gardener, "Cold hardiness", 2016-01-15', standing: 'READ' },
  'russian-news-2025': {
    title: 'news: Russian garden news, "frost-resistant vegetables", 2025-08-12',
    standing: 'READ',
  },
  'salinas-2011': { title: 'news: produce trade paper, Salinas freeze of 27 February, about 2011', standing: 'READ' },
  'seed-house-michigan': {
    title: 'trade: seed house, Michigan, "Cool Weather Vegetables" page, undated',
    standing: 'READ',
  },
  'snow-pea-2016': { title: 'weblog: "How low can snow peas go", Massachusetts, 2016-04', standing: 'READ' },
  'south-carolina-fava': { title: 'forum: gardener, South Carolina, overwintering favas, undated', standing: 'READ' },
  'texas-winter-garden': {
    title: 'extension: Texas Cooperative Extension, Winter Garden freezes of 27 February and 4 March, undated',
    standing: 'READ',
  },
  'tompkins-fava-2013': {
    title: 'extension: Tompkins County Master Gardener weblog, fava beans, 2013-05',
    standing: 'READ',
  },
  'uk-allotment': { title: 'forum: UK allotment diary, undated winter', standing: 'READ' },
  'unheated-lettuce': {
    title: 'weblog: small farm, winter lettuce in the unheated greenhouse, undated',
    standing: 'READ',
  },
  'utah-semihardy': {
    title: 'extension: Utah State University Extension column "Semihardy vegetables", regional news site, undated',
    standing: 'READ',
  },
  'vidalia-grower': { title: 'trade: Vidalia grower, trade press, undated February', standing: 'READ' },
  'wisconsin-frame-2008': { title: 'weblog: Wisconsin, "December salad days", 2008-12-27', standing: 'READ' },
  'yard-garden-2008': { title: 'weblog: yard garden, two days after the cold, 2008-01', standing: 'READ' },
  'yuma-freeze': {
    title: 'extension: University of Arizona Extension, Yuma, trade press after a winter freeze, undated',
    standing: 'READ',
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;
