import { group } from './corpus-question.ts';

/**
 * More questions to build on. They were first asked as a fourth trial, unseen: 70 of the 80 came out right in every slot and
 * 72 in intent; what failed was then mended.
 */
export const BUILD_FIFTH_CORPUS = [
  ...group('survive', [
    [
      'Forecast 16F. Spinach is under row cover in the cold frame. OK?',
      'survive',
      { crops: ['spinach'], lowF: 16, covers: ['cold-frame', 'row-cover'] },
    ],
    [
      'my fennel is still standing, does it see the morning if it drops to 22F?',
      'survive',
      { crops: ['fennel'], lowF: 22, when: 'morning', mine: true },
    ],
    [
      'we are due 9F, will kohlrabi in a low tunnel be toast',
      'survive',
      { crops: ['kohlrabi'], lowF: 9, covers: ['low-tunnel'] },
    ],
    ['can celeriac sit in the ground at -5 °C', 'survive', { crops: ['celeriac'], lowC: -5 }],
    ['pumpkins on the vine, 30F tonight, problem?', 'survive', { crops: ['pumpkin'], lowF: 30, when: 'tonight' }],
    ['shallots 5F straw mulch ok', 'survive', { crops: ['shallot'], lowF: 5, covers: ['straw'] }],
    ['does asparagus mind 27F', 'survive', { crops: ['asparagus'], lowF: 27 }],
    [
      'Low of 3 °F and my mâche only has a bed sheet on it',
      'survive',
      { crops: ['mache'], lowF: 3, covers: ['sheet'], mine: true },
    ],
    [
      'is sorrel going to come back after -15C under snow',
      'survive',
      { crops: ['sorrel'], lowC: -15, covers: ['snow'] },
    ],
    [
      'cucumbers in the greenhouse at 36F, any trouble?',
      'survive',
      { crops: ['cucumber'], lowF: 36, covers: ['high-tunnel'] },
    ],
    [
      'Tonight -7C: swede, parsnip and kale, all bare. Verdict?',
      'survive',
      { crops: ['rutabaga', 'parsnip', 'kale'], lowC: -7, covers: [], when: 'tonight' },
    ],
  ]),
  ...group('how cold', [
    ['how much freezing can tatsoi take in a polytunnel', 'how-cold', { crops: ['tatsoi'], covers: ['high-tunnel'] }],
    [
      'lowest survivable temperature for spinach under a blanket',
      'how-cold',
      { crops: ['spinach'], covers: ['blanket'] },
    ],
    ['what sort of low will finish escarole', 'how-cold', { crops: ['escarole'] }],
    [
      'At what outside temperature does lettuce under fleece start to suffer?',
      'how-cold',
      { crops: ['lettuce'], covers: ['row-cover'] },
    ],
    ['are fava beans cold hardy', 'how-cold', { crops: ['fava-bean'] }],
  ]),
  ...group('what cover', [
    ['is there a cover that gets chard through 5F', 'what-cover', { crops: ['chard'], lowF: 5 }],
    ['what blanket do the carrots need at 10F', 'what-cover', { crops: ['carrot'], lowF: 10, covers: ['blanket'] }],
    ['should lettuce have fleece on at 29F', 'what-cover', { crops: ['lettuce'], lowF: 29, covers: ['row-cover'] }],
    ['how do we make sure the leeks survive -2F', 'what-cover', { crops: ['leek'], lowF: -2 }],
    ['Is covering needed for parsley tonight?', 'what-cover', { crops: ['parsley'], when: 'tonight' }],
    ['what would you lay over arugula on a 13F night', 'what-cover', { crops: ['arugula'], lowF: 13 }],
  ]),
  ...group('which crops', [
    ['tell me what dies tonight', 'which-crops', { when: 'tonight' }],
    ['which ones need a blanket tonight', 'which-crops', { when: 'tonight', covers: ['blanket'] }],
    ['what of mine is in danger at 19F', 'which-crops', { lowF: 19, mine: true }],
    ['are we getting frost tonight?', 'which-crops', { when: 'tonight' }],
    ['Which crops can go without cover at 26F', 'which-crops', { lowF: 26, covers: [] }],
  ]),
  ...group('compare covers', [
    [
      '50 g fleece or a low tunnel for kale at 1F?',
      'compare-covers',
      { crops: ['kale'], lowF: 1, options: [['row-cover-heavy'], ['low-tunnel']] },
    ],
    [
      'would leaves or straw be better for parsnips',
      'compare-covers',
      { crops: ['parsnip'], options: [['leaves'], ['straw']] },
    ],
    [
      'Is it warmer under a quilt or under two blankets?',
      'compare-covers',
      { options: [['quilt'], ['blanket', 'blanket']] },
    ],
    [
      'high tunnel with fleece versus high tunnel with low tunnel for lettuce',
      'compare-covers',
      {
        crops: ['lettuce'],
        options: [
          ['high-tunnel', 'row-cover'],
          ['high-tunnel', 'low-tunnel'],
        ],
      },
    ],
    [
      'how do a sheet and a tarp compare on tomatoes at 30F',
      'compare-covers',
      { crops: ['tomato'], lowF: 30, options: [['sheet'], ['tarp']] },
    ],
  ]),
  ...group('vent and close', [
    ['sun is out, should the cold frame be opened', 'vent', { covers: ['cold-frame'], mine: true }],
    [
      'when do the blankets come off the tunnel tomorrow',
      'vent',
      { covers: ['blanket', 'low-tunnel'], when: 'morning', mine: true },
    ],
    ['leave the hoophouse shut or open it today?', 'vent', { covers: ['high-tunnel'], when: 'today', mine: true }],
    ['how warm before I vent the frame', 'vent', { covers: ['cold-frame'], mine: true }],
    ['what time do the lids need shutting this afternoon', 'close', { when: 'today' }],
    ['by what time should the blankets be on tonight', 'close', { covers: ['blanket'], when: 'tonight' }],
    ['is 3pm early enough to close the tunnel', 'close', { covers: ['low-tunnel'], mine: true }],
  ]),
  ...group('pick', [
    ['kale is white with frost, wait to pick?', 'pick', { crops: ['kale'], cautions: ['frozen-leaves'] }],
    ['how soon can I cut the lettuce in the morning', 'pick', { crops: ['lettuce'], when: 'morning' }],
    ['better to harvest the fennel before the frost?', 'pick', { crops: ['fennel'] }],
  ]),
  ...group('season', [
    ['latest I can get garlic in', 'season', { crops: ['garlic'] }],
    ['which month for sowing overwintering onions', 'season', { crops: ['onion'] }],
    ['When does day length go under ten hours?', 'season', {}],
    ['is there still time to plant out leeks', 'season', { crops: ['leek'] }],
  ]),
  ...group('safety', [
    [
      'would a small gas burner in the frame be alright',
      'caution',
      { covers: ['cold-frame'], cautions: ['fuel-heat'] },
    ],
    [
      'heated propagation mat left on under plastic overnight, risks?',
      'caution',
      { covers: ['low-tunnel'], when: 'tonight', cautions: ['electric-heat'] },
    ],
    ['old leaded-paint sash as a cold frame lid?', 'caution', { covers: ['cold-frame'], cautions: ['old-paint'] }],
    [
      'how do I knock snow off a low tunnel safely',
      'caution',
      { covers: ['low-tunnel'], snow: true, cautions: ['snow-load'] },
    ],
    ['the rhubarb got hit by frost, still good to eat?', 'caution', { crops: ['rhubarb'], cautions: ['rhubarb'] }],
  ]),
  ...group('temperature forms', [
    ['kale at four below', 'survive', { crops: ['kale'], lowF: -4, unit: 'preferred' }],
    ['spinach @ -9.5 °C', 'survive', { crops: ['spinach'], lowC: -9.5 }],
    ['leeks in the single digits', 'survive', { crops: ['leek'], lowF: 1, unit: 'preferred' }],
    ['lettuce 26 fahrenheit for about 4 hours', 'survive', { crops: ['lettuce'], lowF: 26, hours: 4 }],
    ['beets, anywhere between 18 and 22F', 'survive', { crops: ['beet'], lowF: 18 }],
    ['spinach at eleven degrees f', 'survive', { crops: ['spinach'], lowF: 11 }],
    ['parsley 10 to -2 C', 'survive', { crops: ['parsley'], lowC: -2 }],
    ['turnips down in the lower twenties', 'survive', { crops: ['turnip'], lowF: 20, unit: 'preferred' }],
  ]),
  ...group('covers', [
    ['lettuce 24F with a towel over it', 'survive', { crops: ['lettuce'], lowF: 24, covers: ['sheet'] }],
    ['kale -3F in a walk-in tunnel', 'survive', { crops: ['kale'], lowF: -3, covers: ['high-tunnel'] }],
    [
      'spinach 6F, perforated low tunnel',
      'survive',
      { crops: ['spinach'], lowF: 6, covers: ['low-tunnel-perforated'] },
    ],
    ['carrots 2F beneath leaf mulch', 'survive', { crops: ['carrot'], lowF: 2, covers: ['leaves'] }],
    [
      'lettuce 15F under thick fleece on hoops',
      'survive',
      { crops: ['lettuce'], lowF: 15, covers: ['row-cover-heavy', 'hoops'] },
    ],
    [
      'arugula 20F under a laundry basket',
      'survive',
      { crops: ['arugula'], lowF: 20, unknownCovers: ['laundry basket'], problem: 'unknown-cover' },
    ],
  ]),
  ...group('stacks', [
    ['leeks 0F straw with snow on top', 'survive', { crops: ['leek'], lowF: 0, covers: ['snow', 'straw'] }],
    [
      'mache in a cold frame under two blankets, -10F',
      'survive',
      { crops: ['mache'], lowF: -10, covers: ['blanket', 'blanket', 'cold-frame'] },
    ],
    [
      'kale, hoops, plastic over, fleece inside, -7F',
      'survive',
      { crops: ['kale'], lowF: -7, covers: ['low-tunnel', 'row-cover'] },
    ],
  ]),
  ...group('plant state', [
    [
      'my lettuce was hardened off for two weeks, 23F ok?',
      'survive',
      { crops: ['lettuce'], lowF: 23, hardened: true, mine: true },
    ],
    [
      'broccoli transplants only went out yesterday, 27F',
      'survive',
      { crops: ['broccoli'], lowF: 27, stage: 'seedling' },
    ],
    ['spinach gone soft after a mild spell, 12F', 'survive', { crops: ['spinach'], lowF: 12, hardened: false }],
  ]),
  ...group('misspellings', [
    ['parsnps at 4F', 'survive', { crops: ['parsnip'], lowF: 4 }],
    ['artichockes 20F', 'survive', { crops: ['artichoke'], lowF: 20 }],
    ['arugala in a hoophose 11F', 'survive', { crops: ['arugula'], lowF: 11, covers: ['high-tunnel'] }],
  ]),
  ...group('unknown crops', [
    ['peonies at 15F', 'unknown-crop', { unknown: ['peonies'], lowF: 15 }],
    [
      'will the frindlewort in my cold frame live at 8F',
      'unknown-crop',
      { unknown: ['frindlewort'], lowF: 8, covers: ['cold-frame'], mine: true },
    ],
    ['should I cover the rhododendron tonight', 'unknown-crop', { unknown: ['rhododendron'], when: 'tonight' }],
  ]),
  ...group('declined', [
    ['what is the best restaurant in town', 'decline', { problem: 'off-topic' }],
    ['vad blir det för väder imorgon natt', 'decline', { problem: 'not-english' }],
    ['how do you compost leaves', 'decline', { problem: 'off-topic' }],
  ]),
];
