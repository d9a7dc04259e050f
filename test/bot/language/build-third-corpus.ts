import { group } from './corpus-question.ts';

/**
 * More questions to build on. They were first asked as a second trial, unseen and freer in their words: 67 of the 82 came
 * out right in every slot, 69 in intent; what failed was then mended.
 */
export const BUILD_THIRD_CORPUS = [
  ...group('survive', [
    [
      'Will it hurt the lettuce if we get 27F with a sheet on it?',
      'survive',
      { crops: ['lettuce'], lowF: 27, covers: ['sheet'] },
    ],
    [
      'tatsoi in the low tunnel, 11F tonight. Thoughts?',
      'survive',
      { crops: ['tatsoi'], lowF: 11, covers: ['low-tunnel'], when: 'tonight' },
    ],
    ['are leeks bulletproof at 7F', 'survive', { crops: ['leek'], lowF: 7 }],
    [
      'The radio says minus 13 C. Parsnips are in the soil with straw over.',
      'survive',
      { crops: ['parsnip'], lowC: -13, covers: ['straw'] },
    ],
    ['fava beans, 21 degrees F, nothing on top', 'survive', { crops: ['fava-bean'], lowF: 21, covers: [] }],
    [
      'is there any point hoping my zucchini makes it through 31F',
      'survive',
      { crops: ['zucchini'], lowF: 31, mine: true },
    ],
    [
      'what becomes of cilantro at 16F under row cover',
      'survive',
      { crops: ['cilantro'], lowF: 16, covers: ['row-cover'] },
    ],
    [
      'Could my lettuces sit out a -4C night under glass?',
      'survive',
      { crops: ['lettuce'], lowC: -4, covers: ['cold-frame'], mine: true },
    ],
  ]),
  ...group('how cold', [
    ['Tell me the lowest low for spinach in a hoop house', 'how-cold', { crops: ['spinach'], covers: ['high-tunnel'] }],
    ['how cold before arugula gives up?', 'how-cold', { crops: ['arugula'] }],
    ['What can parsley stand under a blanket', 'how-cold', { crops: ['parsley'], covers: ['blanket'] }],
    ['cold tolerance of kohlrabi', 'how-cold', { crops: ['kohlrabi'] }],
    ['how much cold can garlic handle under snow', 'how-cold', { crops: ['garlic'], covers: ['snow'] }],
  ]),
  ...group('what cover', [
    ['my kale needs what on it at -6F', 'what-cover', { crops: ['kale'], lowF: -6, mine: true }],
    ['what can I do to keep celery alive at 24F', 'what-cover', { crops: ['celery'], lowF: 24 }],
    ['Is a cover called for on broccoli at 29F?', 'what-cover', { crops: ['broccoli'], lowF: 29 }],
    ['how should lettuce be covered at 17F', 'what-cover', { crops: ['lettuce'], lowF: 17 }],
    ['must I cover the peas on Wednesday', 'what-cover', { crops: ['pea'], when: 'wednesday' }],
    ['suggest a cover for cabbage at 9F', 'what-cover', { crops: ['cabbage'], lowF: 9 }],
  ]),
  ...group('which crops', [
    ['out of my crops which die at 18F', 'which-crops', { lowF: 18, mine: true }],
    ['Which beds should I be worried about tonight?', 'which-crops', { when: 'tonight', mine: true }],
    ['what crops are safe at 22F bare', 'which-crops', { lowF: 22, covers: [] }],
    ['anything going to die this evening?', 'which-crops', { when: 'tonight' }],
    ['how will the garden cope tomorrow night', 'which-crops', { when: 'tomorrow-night' }],
  ]),
  ...group('compare covers', [
    [
      'row cover or straw on carrots at 4F, which one',
      'compare-covers',
      { crops: ['carrot'], lowF: 4, options: [['row-cover'], ['straw']] },
    ],
    [
      'should the spinach get a blanket or a second row cover at 3F',
      'compare-covers',
      { crops: ['spinach'], lowF: 3, options: [['blanket'], ['row-cover', 'row-cover']] },
    ],
    ['Does a high tunnel beat a cold frame?', 'compare-covers', { options: [['high-tunnel'], ['cold-frame']] }],
    [
      'light fleece against heavy fleece at 20F for lettuce',
      'compare-covers',
      { crops: ['lettuce'], lowF: 20, options: [['row-cover-light'], ['row-cover-heavy']] },
    ],
    [
      'blanket on top of the frame or inside it?',
      'compare-covers',
      {
        options: [
          ['blanket', 'cold-frame'],
          ['cold-frame', 'blanket'],
        ],
      },
    ],
  ]),
  ...group('vent and close', [
    ['How soon after sunrise can I open the tunnel', 'vent', { covers: ['low-tunnel'], when: 'morning', mine: true }],
    ['frame lids up or down this afternoon?', 'vent', { covers: ['cold-frame'], when: 'today' }],
    ['is today a day for airing the cold frames', 'vent', { covers: ['cold-frame'], when: 'today', mine: true }],
    ['the greenhouse is cooking, what do I do', 'vent', { covers: ['high-tunnel'], mine: true }],
    ['when at the latest do the frames have to be closed', 'close', { covers: ['cold-frame'], mine: true }],
    [
      'what hour should I drop the sides of the hoophouse today',
      'close',
      { covers: ['high-tunnel'], when: 'today', mine: true },
    ],
    ['When do I batten down for tonight?', 'close', { when: 'tonight' }],
  ]),
  ...group('pick', [
    ['May I harvest frozen brussels sprouts?', 'pick', { crops: ['brussels-sprouts'], cautions: ['frozen-leaves'] }],
    ['safe to snip chives this morning?', 'pick', { crops: ['chives'], when: 'morning' }],
    [
      'do I rush out and pick the peppers before it hits 30F tonight',
      'pick',
      { crops: ['pepper'], lowF: 30, when: 'tonight' },
    ],
  ]),
  ...group('season', [
    ['what week should kale be seeded for winter', 'season', { crops: ['kale'] }],
    ['how short are the days at new year', 'season', {}],
    ['is october too late for fava beans', 'season', { crops: ['fava-bean'] }],
    ['when does spinach start to grow again', 'season', { crops: ['spinach'] }],
  ]),
  ...group('safety', [
    [
      'I have a kerosene stove, can it go in the polytunnel overnight',
      'caution',
      { covers: ['high-tunnel'], when: 'tonight', mine: true, cautions: ['fuel-heat'] },
    ],
    ['thinking of making lights from old sash windows', 'caution', { cautions: ['glass', 'old-paint'] }],
    [
      'Is tanned pressure treated wood bad near lettuce roots',
      'caution',
      { crops: ['lettuce'], cautions: ['treated-timber'] },
    ],
    [
      'a foot of wet snow on the hoop house, should I worry about it coming down',
      'caution',
      { covers: ['high-tunnel'], snow: true, cautions: ['snow-load'] },
    ],
    ['do frosted rhubarb stalks poison you', 'caution', { crops: ['rhubarb'], cautions: ['rhubarb'] }],
    ['can the toddler have winter chard every day', 'caution', { crops: ['chard'], cautions: ['nitrate'] }],
    ['extension lead through wet grass to a heating cable, ok?', 'caution', { cautions: ['electric-heat'] }],
  ]),
  ...group('temperature forms', [
    ['kale −15 °C', 'survive', { crops: ['kale'], lowC: -15 }],
    ['kale, minus fifteen C', 'survive', { crops: ['kale'], lowC: -15 }],
    ['beets, 18-21 F', 'survive', { crops: ['beet'], lowF: 18 }],
    ['Scallions in the upper teens F', 'survive', { crops: ['scallion'], lowF: 17 }],
    ['chard 3 below', 'survive', { crops: ['chard'], lowF: -3, unit: 'preferred' }],
    ['peas, eight degrees of frost', 'survive', { crops: ['pea'], lowC: -8, unit: 'preferred' }, { celsius: true }],
    [
      'spinach down to about 9F for a few hours under fleece',
      'survive',
      { crops: ['spinach'], lowF: 9, hours: 3, covers: ['row-cover'] },
    ],
    ['turnips 12 ° F', 'survive', { crops: ['turnip'], lowF: 12 }],
    ['mâche, −１２℃', 'survive', { crops: ['mache'], lowC: -12 }],
    ['can celery take a dip to thirty', 'survive', { crops: ['celery'], lowF: 30, unit: 'preferred' }],
  ]),
  ...group('covers', [
    [
      'lettuce 20F under floating fabric on wire hoops',
      'survive',
      { crops: ['lettuce'], lowF: 20, covers: ['row-cover', 'hoops'] },
    ],
    ['kale 1F under a layer of snow', 'survive', { crops: ['kale'], lowF: 1, covers: ['snow'] }],
    ['spinach 4F under a doona', 'survive', { crops: ['spinach'], lowF: 4, covers: ['quilt'] }],
    ['tomatoes 30F, jugs filled with water around them', 'survive', { crops: ['tomato'], lowF: 30, covers: ['jugs'] }],
    ['arugula 13F in a glass-topped cold frame', 'survive', { crops: ['arugula'], lowF: 13, covers: ['cold-frame'] }],
    ['lettuce 18F beneath 50 gram fleece', 'survive', { crops: ['lettuce'], lowF: 18, covers: ['row-cover-heavy'] }],
    ['leeks 2F buried under dry leaves', 'survive', { crops: ['leek'], lowF: 2, covers: ['leaves'] }],
  ]),
  ...group('stacks', [
    [
      'spinach with two sheets and a tarp over everything, 7F',
      'survive',
      { crops: ['spinach'], lowF: 7, covers: ['tarp', 'sheet', 'sheet'] },
    ],
    [
      'kale under double fleece inside a low tunnel -9F',
      'survive',
      { crops: ['kale'], lowF: -9, covers: ['low-tunnel', 'row-cover', 'row-cover'] },
    ],
    [
      'straw bale frame, quilt on lid, fleece inside, lettuce -11F',
      'survive',
      { crops: ['lettuce'], lowF: -11, covers: ['quilt', 'cold-frame', 'row-cover'], walls: 'straw-bale' },
    ],
  ]),
  ...group('plant state', [
    ['well hardened leek seedlings 20F', 'survive', { crops: ['leek'], lowF: 20, hardened: true, stage: 'seedling' }],
    [
      'never been hardened off, my kohlrabi, 27F',
      'survive',
      { crops: ['kohlrabi'], lowF: 27, hardened: false, mine: true },
    ],
    ['full size napa cabbages at 25F', 'survive', { crops: ['napa-cabbage'], lowF: 25, stage: 'mature' }],
  ]),
  ...group('misspellings', [
    ['brusel sprouts at 9F', 'survive', { crops: ['brussels-sprouts'], lowF: 9 }],
    ['cilanto 20F under fleec', 'survive', { crops: ['cilantro'], lowF: 20, covers: ['row-cover'] }],
    ['raddishes 25f', 'survive', { crops: ['radish'], lowF: 25 }],
  ]),
  ...group('unknown crops', [
    ['is snorbleroot hardy', 'unknown-crop', { unknown: ['snorbleroot'] }],
    ['begonias and tomatoes at 33F', 'survive', { crops: ['tomato'], unknown: ['begonias'], lowF: 33 }],
    [
      'my oleander at 22F under a quilt',
      'unknown-crop',
      { unknown: ['oleander'], lowF: 22, covers: ['quilt'], mine: true },
    ],
  ]),
  ...group('declined', [
    ['how many people live in ohio', 'decline', { problem: 'off-topic' }],
    ['quanto fa freddo stanotte nel mio orto', 'decline', { problem: 'not-english' }],
    ['can you translate this for me', 'decline', { problem: 'off-topic' }],
  ]),
];
