import { group } from './corpus-question.ts';

/**
 * More questions to build on. They were first asked as a third trial, unseen: 85 of the 93 came out right in every slot and
 * 85 in intent; what failed was then mended.
 */
export const BUILD_FOURTH_CORPUS = [
  ...group('survive', [
    [
      'Lettuce under fleece in the greenhouse, forecast minus 6 C. Will it be alright?',
      'survive',
      { crops: ['lettuce'], lowC: -6, covers: ['high-tunnel', 'row-cover'] },
    ],
    [
      'I have got turnips and radishes out, low of 23F tomorrow night, should they be fine?',
      'survive',
      { crops: ['turnip', 'radish'], lowF: 23, when: 'tomorrow-night', mine: true },
    ],
    ['does a night at 17F hurt brussels sprouts', 'survive', { crops: ['brussels-sprouts'], lowF: 17 }],
    [
      'mustard greens in low tunnel, 14F, calm and clear',
      'survive',
      { crops: ['mustard-greens'], lowF: 14, covers: ['low-tunnel'], cloud: 'clear', wind: 'calm' },
    ],
    [
      'how safe is my spinach at 7F under a tarp',
      'survive',
      { crops: ['spinach'], lowF: 7, covers: ['tarp'], mine: true },
    ],
    ['Beets: 20F, no cover, yes?', 'survive', { crops: ['beet'], lowF: 20, covers: [] }],
    [
      'odds of losing cabbage at 12F with a blanket over',
      'survive',
      { crops: ['cabbage'], lowF: 12, covers: ['blanket'] },
    ],
    ['if it gets to 26 F will green beans die', 'survive', { crops: ['green-bean'], lowF: 26 }],
    ['strawberry plants under straw, -5F, ok?', 'survive', { crops: ['strawberry'], lowF: -5, covers: ['straw'] }],
    ['are onions going to make it through Friday night', 'survive', { crops: ['onion'], when: 'friday' }],
    ['Is romaine tough enough for 21F?', 'survive', { crops: ['romaine'], lowF: 21 }],
  ]),
  ...group('how cold', [
    [
      'How cold can lettuce get under two layers of row cover?',
      'how-cold',
      { crops: ['lettuce'], covers: ['row-cover', 'row-cover'] },
    ],
    ['at which temperature do beans die', 'how-cold', { crops: ['green-bean'] }],
    ['What is the coldest collards will tolerate', 'how-cold', { crops: ['collards'] }],
    ['how low a temperature can leeks withstand in open ground', 'how-cold', { crops: ['leek'], covers: [] }],
    ['what low kills mizuna', 'how-cold', { crops: ['mizuna'] }],
    [
      'whats the lowest my chard will go in a cold frame',
      'how-cold',
      { crops: ['chard'], covers: ['cold-frame'], mine: true },
    ],
  ]),
  ...group('what cover', [
    ['what should I put over spinach at -3F', 'what-cover', { crops: ['spinach'], lowF: -3 }],
    ['Do the potatoes need to be covered at 31F?', 'what-cover', { crops: ['potato'], lowF: 31 }],
    ['how do I get lettuce through a 12F night', 'what-cover', { crops: ['lettuce'], lowF: 12 }],
    ['how many blankets for peppers at 30F', 'what-cover', { crops: ['pepper'], lowF: 30 }],
    [
      'should I add fleece in the low tunnel for lettuce at 15F',
      'what-cover',
      { crops: ['lettuce'], lowF: 15, covers: ['low-tunnel', 'row-cover'] },
    ],
    ['Which covers does arugula need tonight?', 'what-cover', { crops: ['arugula'], when: 'tonight' }],
    ['what is needed to keep mache alive at -20F', 'what-cover', { crops: ['mache'], lowF: -20 }],
  ]),
  ...group('which crops', [
    ['Which of my beds are in danger on Saturday night?', 'which-crops', { when: 'saturday', mine: true }],
    ['what will freeze tonight', 'which-crops', { when: 'tonight' }],
    ['which vegetables can take 15F under row cover', 'which-crops', { lowF: 15, covers: ['row-cover'] }],
    ['what do I need to protect tonight', 'which-crops', { when: 'tonight' }],
    ['does anything need covering tomorrow night?', 'which-crops', { when: 'tomorrow-night' }],
    ['show me what is at risk this week', 'which-crops', { when: 'week' }],
  ]),
  ...group('compare covers', [
    [
      'Which is better for kale at 0F, a low tunnel or a blanket?',
      'compare-covers',
      { crops: ['kale'], lowF: 0, options: [['low-tunnel'], ['blanket']] },
    ],
    [
      'quilt versus blanket on a cold frame',
      'compare-covers',
      {
        options: [
          ['quilt', 'cold-frame'],
          ['blanket', 'cold-frame'],
        ],
      },
    ],
    [
      'compare one layer of fleece with two at 18F for lettuce',
      'compare-covers',
      { crops: ['lettuce'], lowF: 18, options: [['row-cover'], ['row-cover', 'row-cover']] },
    ],
    [
      'will spinach do better under plastic or under fleece at 9F',
      'compare-covers',
      { crops: ['spinach'], lowF: 9, options: [['low-tunnel'], ['row-cover']] },
    ],
    ['straw or nothing on garlic at -8F?', 'compare-covers', { crops: ['garlic'], lowF: -8, options: [['straw'], []] }],
    [
      'tunnel or frame or both for lettuce?',
      'compare-covers',
      { crops: ['lettuce'], options: [['low-tunnel'], ['cold-frame']] },
    ],
  ]),
  ...group('vent and close', [
    [
      'When should I open the low tunnel tomorrow morning?',
      'vent',
      { covers: ['low-tunnel'], when: 'morning', mine: true },
    ],
    ['do the frames need venting today', 'vent', { covers: ['cold-frame'], when: 'today', mine: true }],
    ['how much should I open the lid at 45F', 'vent', { lowF: 45 }],
    ['can the row cover come off now', 'vent', { covers: ['row-cover'], when: 'now' }],
    [
      'when is it safe to uncover my lettuce in the morning',
      'vent',
      { crops: ['lettuce'], when: 'morning', mine: true },
    ],
    [
      'What time should I shut the cold frame this afternoon?',
      'close',
      { covers: ['cold-frame'], when: 'today', mine: true },
    ],
    ['when to close vents tonight', 'close', { when: 'tonight' }],
    ['how late can I cover the bed', 'close', { mine: true }],
  ]),
  ...group('pick', [
    ['When can I harvest lettuce after a freeze?', 'pick', { crops: ['lettuce'] }],
    ['is it fine to pick kale while frozen', 'pick', { crops: ['kale'], cautions: ['frozen-leaves'] }],
    ['should I pull all the radishes today', 'pick', { crops: ['radish'], when: 'today' }],
    ['can I cut chard tomorrow morning', 'pick', { crops: ['chard'], when: 'morning' }],
  ]),
  ...group('season', [
    ['When should I sow lettuce for the cold frame?', 'season', { crops: ['lettuce'], covers: ['cold-frame'] }],
    ['when do we get back to 10 hours of daylight', 'season', {}],
    ['what is the latest I can plant spinach', 'season', { crops: ['spinach'] }],
    [
      'sowing dates for winter greens',
      'season',
      {
        choices: ['lettuce', 'mustard-greens', 'chard', 'arugula', 'spinach', 'kale', 'collards'],
        missing: 'crop-choice',
      },
    ],
  ]),
  ...group('safety', [
    ['Is a paraffin heater safe in a polytunnel?', 'caution', { covers: ['high-tunnel'], cautions: ['fuel-heat'] }],
    ['can I warm the cold frame with a light bulb', 'caution', { covers: ['cold-frame'], cautions: ['electric-heat'] }],
    ['are railway sleepers safe around lettuce', 'caution', { crops: ['lettuce'], cautions: ['treated-timber'] }],
    ['can I eat potatoes that have been frozen in the ground', 'caution', { crops: ['potato'], cautions: ['potato'] }],
    [
      'Will my cold frame glass break under snow?',
      'caution',
      { covers: ['snow', 'cold-frame'], mine: true, cautions: ['snow-load'] },
    ],
    [
      'is it dangerous to put glass in the roof of a greenhouse',
      'caution',
      { covers: ['high-tunnel'], cautions: ['glass'] },
    ],
  ]),
  ...group('temperature forms', [
    ['kale at 9°', 'survive', { crops: ['kale'], lowF: 9, unit: 'preferred' }],
    ['kale at -18 C tonight', 'survive', { crops: ['kale'], lowC: -18, when: 'tonight' }],
    ['carrots at twelve below zero', 'survive', { crops: ['carrot'], lowF: -12, unit: 'preferred' }],
    ['arugula when it is in the low teens', 'survive', { crops: ['arugula'], lowF: 11, unit: 'preferred' }],
    ['lettuce, lows of 24 to 27F', 'survive', { crops: ['lettuce'], lowF: 24 }],
    ['will spinach take −4°F', 'survive', { crops: ['spinach'], lowF: -4 }],
    ['peas at thirty one fahrenheit for two hours', 'survive', { crops: ['pea'], lowF: 31, hours: 2 }],
    ['leek at 15 f.', 'survive', { crops: ['leek'], lowF: 15 }],
  ]),
  ...group('covers', [
    ['kale under agricultural fleece 6F', 'survive', { crops: ['kale'], lowF: 6, covers: ['row-cover'] }],
    ['lettuce 21F covered with an old quilt', 'survive', { crops: ['lettuce'], lowF: 21, covers: ['quilt'] }],
    ['spinach 4F in a hoophouse', 'survive', { crops: ['spinach'], lowF: 4, covers: ['high-tunnel'] }],
    ['tomatoes 30F under bedsheets', 'survive', { crops: ['tomato'], lowF: 30, covers: ['sheet'] }],
    ['chard 15F, poly low tunnel', 'survive', { crops: ['chard'], lowF: 15, covers: ['low-tunnel'] }],
    ['parsley 8F under 1 oz row cover', 'survive', { crops: ['parsley'], lowF: 8, covers: ['row-cover-medium'] }],
  ]),
  ...group('stacks', [
    [
      'spinach 1F under a low tunnel and row cover',
      'survive',
      { crops: ['spinach'], lowF: 1, covers: ['low-tunnel', 'row-cover'] },
    ],
    [
      'blanket over low tunnel over lettuce at 6F',
      'survive',
      { crops: ['lettuce'], lowF: 6, covers: ['blanket', 'low-tunnel'] },
    ],
    [
      'kale in a cold frame in a hoop house, -15F',
      'survive',
      { crops: ['kale'], lowF: -15, covers: ['high-tunnel', 'cold-frame'] },
    ],
    [
      'three layers of frost cloth on chard at 8F',
      'survive',
      { crops: ['chard'], lowF: 8, covers: ['row-cover-heavy', 'row-cover-heavy', 'row-cover-heavy'] },
    ],
  ]),
  ...group('plant state', [
    [
      'peppers just planted out, 34F tonight',
      'survive',
      { crops: ['pepper'], lowF: 34, when: 'tonight', stage: 'seedling', hardened: false },
    ],
    ['spinach hardened off since october, 3F', 'survive', { crops: ['spinach'], lowF: 3, hardened: true }],
    ['kale after a warm week at 8F', 'survive', { crops: ['kale'], lowF: 8, hardened: false }],
    ['lettuce in baby leaf stage 17F', 'survive', { crops: ['lettuce'], lowF: 17, stage: 'baby' }],
  ]),
  ...group('misspellings', [
    ['spinech 12F', 'survive', { crops: ['spinach'], lowF: 12 }],
    ['califlowers and brocolis at 25F', 'survive', { crops: ['cauliflower', 'broccoli'], lowF: 25 }],
    ['will letuces survive 22F under a blanquet', 'survive', { crops: ['lettuce'], lowF: 22, covers: ['blanket'] }],
  ]),
  ...group('unknown crops', [
    ['can I leave my hibiscus out at 35F', 'unknown-crop', { unknown: ['hibiscus'], lowF: 35, mine: true }],
    ['how cold can passion fruit go', 'unknown-crop', { unknown: ['passion fruit'] }],
    ['plumbo beans and trumbleweed at 20F', 'survive', { crops: ['green-bean'], unknown: ['trumbleweed'], lowF: 20 }],
  ]),
  ...group('own beds', [
    ['is bed 7 going to be ok tonight', 'survive', { beds: [7], when: 'tonight', mine: true }],
    ['what does the north bed need at 10F', 'what-cover', { named: ['north bed'], lowF: 10, mine: true }],
    [
      'my leeks in bed 2, will they live tomorrow night',
      'survive',
      { crops: ['leek'], beds: [2], when: 'tomorrow-night', mine: true },
    ],
  ]),
  ...group('declined', [
    ['what is your favourite vegetable', 'decline', { problem: 'off-topic' }],
    ['how do I prune tomatoes', 'decline', { problem: 'off-topic' }],
    ['dame la receta de la sopa de verduras', 'decline', { problem: 'not-english' }],
    ['asdf', 'decline', { problem: 'off-topic' }],
  ]),
];
