import { group } from './corpus-question.ts';

/**
 * More questions to build on. They were first asked as a trial, unseen: 76 of the 84 came out right in every slot, 78 in
 * intent; what failed was then mended.
 */
export const BUILD_SECOND_CORPUS = [
  ...group('survive', [
    [
      'Think my carrots will pull through 11F with a foot of straw on top?',
      'survive',
      { crops: ['carrot'], lowF: 11, covers: ['straw'], mine: true },
    ],
    ['garlic shoots are up 3 inches and 8°F is coming', 'survive', { crops: ['garlic'], lowF: 8 }],
    [
      'would minus 9 centigrade finish off my rocket in the polytunnel',
      'survive',
      { crops: ['arugula'], lowC: -9, covers: ['high-tunnel'], mine: true },
    ],
    [
      'my swiss chard, 21 F, bed sheet. Doomed?',
      'survive',
      { crops: ['chard'], lowF: 21, covers: ['sheet'], mine: true },
    ],
    [
      'can komatsuna ride out 12F beneath frost cloth',
      'survive',
      { crops: ['komatsuna'], lowF: 12, covers: ['row-cover-heavy'] },
    ],
    [
      'Purple sprouting at -8C, no fleece. Any hope?',
      'survive',
      { crops: ['purple-sprouting-broccoli'], lowC: -8, covers: [] },
    ],
    [
      'endive and escarole in the frame, 17F on the way',
      'survive',
      { crops: ['endive', 'escarole'], lowF: 17, covers: ['cold-frame'] },
    ],
    ['is 26 bad for cauliflower heads', 'survive', { crops: ['cauliflower'], lowF: 26, unit: 'preferred' }],
    ['collards @ 9F uncovered ok??', 'survive', { crops: ['collards'], lowF: 9, covers: [] }],
    [
      'we expect 13 degrees Fahrenheit on Sunday, what happens to leeks in open ground',
      'survive',
      { crops: ['leek'], lowF: 13, covers: [], when: 'sunday' },
    ],
  ]),
  ...group('how cold', [
    ['how many degrees of frost can kale take', 'how-cold', { crops: ['kale'] }],
    ['Minimum night temp for peppers', 'how-cold', { crops: ['pepper'] }],
    [
      'down to what temperature is mizuna ok in a low tunnel',
      'how-cold',
      { crops: ['mizuna'], covers: ['low-tunnel'] },
    ],
    ['when would frost kill my basil', 'how-cold', { crops: ['basil'], mine: true }],
    [
      'how far can it drop before chard in a cold frame is lost',
      'how-cold',
      { crops: ['chard'], covers: ['cold-frame'] },
    ],
    ['which is hardier, kale or collards?', 'how-cold', { crops: ['kale', 'collards'] }],
  ]),
  ...group('what cover', [
    ['what would get radicchio through 14F', 'what-cover', { crops: ['radicchio'], lowF: 14 }],
    ['Do beets want a cover at 27F', 'what-cover', { crops: ['beet'], lowF: 27 }],
    ['is it necessary to cover garlic at 5F', 'what-cover', { crops: ['garlic'], lowF: 5 }],
    ['how do you protect strawberries at 15 °F', 'what-cover', { crops: ['strawberry'], lowF: 15 }],
    [
      'what extra layer does my spinach need at -8F, already in a cold frame',
      'what-cover',
      { crops: ['spinach'], lowF: -8, covers: ['cold-frame'], mine: true },
    ],
    [
      'need to know what to lay on the pak choi tomorrow night',
      'what-cover',
      { crops: ['pak-choi'], when: 'tomorrow-night' },
    ],
  ]),
  ...group('which crops', [
    ['what in my garden is going to freeze tonight', 'which-crops', { when: 'tonight', mine: true }],
    ['list the crops at risk tomorrow night', 'which-crops', { when: 'tomorrow-night' }],
    ['what makes it through 5F with just fleece', 'which-crops', { lowF: 5, covers: ['row-cover'] }],
    ['do any of my plants need help tonight?', 'which-crops', { when: 'tonight', mine: true }],
    ['who is most vulnerable on thursday night', 'which-crops', { when: 'thursday' }],
  ]),
  ...group('compare covers', [
    [
      'would I be better off with a tarp or a quilt over lettuce at 19F',
      'compare-covers',
      { crops: ['lettuce'], lowF: 19, options: [['tarp'], ['quilt']] },
    ],
    [
      'cold frame alone vs cold frame plus blanket, spinach, -4F',
      'compare-covers',
      { crops: ['spinach'], lowF: -4, options: [['cold-frame'], ['blanket', 'cold-frame']] },
    ],
    [
      'is two layers of fleece warmer than one low tunnel?',
      'compare-covers',
      { options: [['row-cover', 'row-cover'], ['low-tunnel']] },
    ],
    [
      'kale at 6F: bare, fleece, or low tunnel?',
      'compare-covers',
      { crops: ['kale'], lowF: 6, options: [[], ['row-cover'], ['low-tunnel']] },
    ],
    [
      'single or double fleece for arugula at 16F',
      'compare-covers',
      { crops: ['arugula'], lowF: 16, options: [['row-cover'], ['row-cover', 'row-cover']] },
    ],
  ]),
  ...group('vent and close', [
    [
      'at what time do I take the quilt off the frame tomorrow',
      'vent',
      { covers: ['quilt', 'cold-frame'], when: 'morning', mine: true },
    ],
    ['ventilate the polytunnel today or not?', 'vent', { covers: ['high-tunnel'], when: 'today', mine: true }],
    ['it is 82F in my cold frame, do I crack it', 'vent', { lowF: 82, covers: ['cold-frame'], mine: true }],
    ['when must the lids be down tonight', 'close', { when: 'tonight' }],
    ['what time do I close the hoophouse doors', 'close', { covers: ['high-tunnel'], mine: true }],
    ['should I shut the vents early because of wind', 'close', { wind: 'windy' }],
  ]),
  ...group('pick', [
    ['okay to gather arugula while it is still frosty?', 'pick', { crops: ['arugula'], cautions: ['frozen-leaves'] }],
    ['should I dig the parsnips before Friday', 'pick', { crops: ['parsnip'], when: 'friday' }],
    [
      'what time is it safe to cut salad tomorrow morning',
      'pick',
      {
        missing: 'crop-choice',
        choices: ['lettuce', 'endive', 'arugula', 'mizuna', 'spinach', 'claytonia', 'mache'],
        when: 'morning',
      },
    ],
  ]),
  ...group('season', [
    ['by what date must I sow claytonia in a cold frame', 'season', { crops: ['claytonia'], covers: ['cold-frame'] }],
    ['when will the day be ten hours long again', 'season', {}],
    ['too late for sowing winter lettuce?', 'season', { crops: ['lettuce'] }],
    ['planting calendar for garlic', 'season', { crops: ['garlic'] }],
  ]),
  ...group('safety', [
    [
      'ok to leave an oil lamp burning in the tunnel overnight',
      'caution',
      { covers: ['low-tunnel'], when: 'tonight', cautions: ['fuel-heat'] },
    ],
    ['are creosoted sleepers fine for edging', 'caution', { cautions: ['treated-timber'] }],
    [
      'rhubarb leaves went black in the frost, are the stalks edible',
      'caution',
      { crops: ['rhubarb'], cautions: ['rhubarb'] },
    ],
    [
      'how do I clear snow from the polytunnel',
      'caution',
      { covers: ['high-tunnel'], snow: true, cautions: ['snow-load'] },
    ],
    [
      'can a BBQ in the greenhouse save my tomatoes at 28F',
      'caution',
      { crops: ['tomato'], lowF: 28, covers: ['high-tunnel'], mine: true, cautions: ['fuel-heat'] },
    ],
    [
      'string of incandescent lights under the fleece, fire risk?',
      'caution',
      { covers: ['row-cover'], cautions: ['electric-heat'] },
    ],
  ]),
  ...group('temperature forms', [
    ['spinach 14 deg f', 'survive', { crops: ['spinach'], lowF: 14 }],
    ['leeks at − 11 C', 'survive', { crops: ['leek'], lowC: -11 }],
    ['parsnips, twenty below', 'survive', { crops: ['parsnip'], lowF: -20, unit: 'preferred' }],
    ['kale somewhere between 5 and 9F', 'survive', { crops: ['kale'], lowF: 5 }],
    ['lettuce mid-twenties, no cover', 'survive', { crops: ['lettuce'], lowF: 24, unit: 'preferred', covers: [] }],
    ['chard dipping to 24F for half an hour', 'survive', { crops: ['chard'], lowF: 24, hours: 0.5 }],
    ['mache at six below zero celsius', 'survive', { crops: ['mache'], lowC: -6 }],
    ['will turnips do 1F', 'survive', { crops: ['turnip'], lowF: 1 }],
    ['arugula high teens', 'survive', { crops: ['arugula'], lowF: 17, unit: 'preferred' }],
    ['radishes −2,5°C', 'survive', { crops: ['radish'], lowC: -2.5 }],
  ]),
  ...group('covers', [
    ['spinach 6F under a comforter', 'survive', { crops: ['spinach'], lowF: 6, covers: ['quilt'] }],
    ['lettuce 23F beneath horticultural fleece', 'survive', { crops: ['lettuce'], lowF: 23, covers: ['row-cover'] }],
    ['tomatoes 31F beneath a tarpaulin', 'survive', { crops: ['tomato'], lowF: 31, covers: ['tarp'] }],
    ['carrots 3F, hay on top', 'survive', { crops: ['carrot'], lowF: 3, covers: ['straw'] }],
    [
      'kale, concrete block cold frame, -2F',
      'survive',
      { crops: ['kale'], lowF: -2, covers: ['cold-frame'], walls: 'concrete' },
    ],
    [
      'spinach in a mini hoop tunnel with greenhouse plastic at 7F',
      'survive',
      { crops: ['spinach'], lowF: 7, covers: ['low-tunnel'] },
    ],
    [
      'lettuce 19F under 0.55 oz spunbonded fabric',
      'survive',
      { crops: ['lettuce'], lowF: 19, covers: ['row-cover-light'] },
    ],
  ]),
  ...group('stacks', [
    [
      'spinach: fleece, then low tunnel, all in a high tunnel, -18F',
      'survive',
      { crops: ['spinach'], lowF: -18, covers: ['high-tunnel', 'low-tunnel', 'row-cover'] },
    ],
    [
      'old duvet thrown across the cold frame, mache, -12F',
      'survive',
      { crops: ['mache'], lowF: -12, covers: ['quilt', 'cold-frame'] },
    ],
    [
      'row cover on hoops plus a tarp on top at 9F for kale',
      'survive',
      { crops: ['kale'], lowF: 9, covers: ['tarp', 'row-cover', 'hoops'] },
    ],
    [
      'kale under plastic with a blanket underneath, 2F',
      'survive',
      { crops: ['kale'], lowF: 2, covers: ['low-tunnel', 'blanket'] },
    ],
  ]),
  ...group('plant state', [
    ['onion starts went in last week and it will be 24F', 'survive', { crops: ['onion'], lowF: 24, stage: 'seedling' }],
    ['has not been hardened: lettuce, 25F', 'survive', { crops: ['lettuce'], lowF: 25, hardened: false }],
    ['fully hardened brussels sprouts at 6F', 'survive', { crops: ['brussels-sprouts'], lowF: 6, hardened: true }],
  ]),
  ...group('misspellings', [
    ['spinash at 13F', 'survive', { crops: ['spinach'], lowF: 13 }],
    ['colards 9f under flece', 'survive', { crops: ['collards'], lowF: 9, covers: ['row-cover'] }],
    [
      'brocoli and cauliflour under a lowtunnel 20F',
      'survive',
      { crops: ['broccoli', 'cauliflower'], lowF: 20, covers: ['low-tunnel'] },
    ],
  ]),
  ...group('unknown crops', [
    [
      'can my lilies survive 18F with mulch',
      'unknown-crop',
      { unknown: ['lilies'], lowF: 18, covers: ['straw'], mine: true },
    ],
    ['what do I put over wibblewort at 12F', 'unknown-crop', { unknown: ['wibblewort'], lowF: 12 }],
    ['mandarin tree 26F', 'unknown-crop', { unknown: ['mandarin tree'], lowF: 26 }],
  ]),
  ...group('declined', [
    ['what is 14F in celsius', 'decline', { problem: 'off-topic' }],
    ['sing me happy birthday', 'decline', { problem: 'off-topic' }],
    ['wird es heute Nacht Frost geben?', 'decline', { problem: 'not-english' }],
  ]),
];
