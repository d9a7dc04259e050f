import { group } from './corpus-question.ts';

/**
 * Written when the reader was done and run once: 82 of the 83 came out right in every slot. Nothing was changed since on
 * account of it.
 */
export const REPORT_FRESH_CORPUS = [
  ...group('survive', [
    [
      'Will my chard survive 19 °F under a row cover tonight?',
      'survive',
      { crops: ['chard'], lowF: 19, covers: ['row-cover'], when: 'tonight', mine: true },
    ],
    ['can parsnips survive -15C with straw mulch', 'survive', { crops: ['parsnip'], lowC: -15, covers: ['straw'] }],
    ['leeks and garlic at 2 F under snow: ok?', 'survive', { crops: ['leek', 'garlic'], lowF: 2, covers: ['snow'] }],
    [
      'does cilantro live at 18F in an unheated greenhouse',
      'survive',
      { crops: ['cilantro'], lowF: 18, covers: ['high-tunnel'] },
    ],
    [
      'Is 29 degrees going to kill my cucumbers?',
      'survive',
      { crops: ['cucumber'], lowF: 29, unit: 'preferred', mine: true },
    ],
    ['spinach cold frame 3F windy', 'survive', { crops: ['spinach'], lowF: 3, covers: ['cold-frame'], wind: 'windy' }],
    [
      'Think radicchio will hold at 15F with fleece?',
      'survive',
      { crops: ['radicchio'], lowF: 15, covers: ['row-cover'] },
    ],
    ['do turnips survive 12F?', 'survive', { crops: ['turnip'], lowF: 12 }],
    [
      'is my arugula dead after 14F last night',
      'survive',
      { crops: ['arugula'], lowF: 14, when: 'last-night', mine: true },
    ],
    [
      'broccoli under a sheet at 25 F, cloudy',
      'survive',
      { crops: ['broccoli'], lowF: 25, covers: ['sheet'], cloud: 'overcast' },
    ],
  ]),
  ...group('how cold', [
    ['How cold can mizuna get under a low tunnel?', 'how-cold', { crops: ['mizuna'], covers: ['low-tunnel'] }],
    ['at what temperature will my peppers die', 'how-cold', { crops: ['pepper'], mine: true }],
    ['what is the lowest temperature for leeks uncovered', 'how-cold', { crops: ['leek'], covers: [] }],
    ['how much cold does kale tolerate', 'how-cold', { crops: ['kale'] }],
    ['minimum temp for tatsoi in a high tunnel', 'how-cold', { crops: ['tatsoi'], covers: ['high-tunnel'] }],
  ]),
  ...group('what cover', [
    ['What should I cover my lettuce with at 12F?', 'what-cover', { crops: ['lettuce'], lowF: 12, mine: true }],
    ['do I need to cover brussels sprouts at 15F', 'what-cover', { crops: ['brussels-sprouts'], lowF: 15 }],
    ['how do I protect fava beans at 10F', 'what-cover', { crops: ['fava-bean'], lowF: 10 }],
    ['which cover keeps beets alive at 8F', 'what-cover', { crops: ['beet'], lowF: 8 }],
    [
      'how many layers of row cover for spinach at -10F',
      'what-cover',
      { crops: ['spinach'], lowF: -10, covers: ['row-cover'] },
    ],
  ]),
  ...group('which crops', [
    ['Which of my crops are at risk tomorrow night?', 'which-crops', { when: 'tomorrow-night', mine: true }],
    ['what will die at 10F', 'which-crops', { lowF: 10 }],
    ['which beds need cover tonight', 'which-crops', { when: 'tonight', mine: true }],
    ['what survives 20F under fleece', 'which-crops', { lowF: 20, covers: ['row-cover'] }],
    ['is anything in my garden in danger this week?', 'which-crops', { when: 'week', mine: true }],
  ]),
  ...group('compare covers', [
    [
      'fleece or blanket for lettuce at 20F?',
      'compare-covers',
      { crops: ['lettuce'], lowF: 20, options: [['row-cover'], ['blanket']] },
    ],
    ['is a high tunnel warmer than a cold frame', 'compare-covers', { options: [['high-tunnel'], ['cold-frame']] }],
    [
      'low tunnel vs two layers of fleece for spinach at 5F',
      'compare-covers',
      { crops: ['spinach'], lowF: 5, options: [['low-tunnel'], ['row-cover', 'row-cover']] },
    ],
    [
      'which protects carrots better at 5F, straw or leaves?',
      'compare-covers',
      { crops: ['carrot'], lowF: 5, options: [['straw'], ['leaves']] },
    ],
    [
      'would kale at 0F be better under a tarp or a quilt',
      'compare-covers',
      { crops: ['kale'], lowF: 0, options: [['tarp'], ['quilt']] },
    ],
  ]),
  ...group('vent and close', [
    ['When do I open the cold frame in the morning?', 'vent', { covers: ['cold-frame'], when: 'morning', mine: true }],
    ['should I vent the high tunnel today', 'vent', { covers: ['high-tunnel'], when: 'today', mine: true }],
    ['when can I take the blanket off the frame', 'vent', { covers: ['blanket', 'cold-frame'], mine: true }],
    ['When should I close the low tunnel tonight?', 'close', { covers: ['low-tunnel'], when: 'tonight', mine: true }],
    ['what time do I shut the frames', 'close', { covers: ['cold-frame'], mine: true }],
    ['by when do I have to cover the beds tonight', 'close', { when: 'tonight', mine: true }],
  ]),
  ...group('pick', [
    ['Can I pick my kale this morning?', 'pick', { crops: ['kale'], when: 'morning', mine: true }],
    ['when can I harvest spinach tomorrow', 'pick', { crops: ['spinach'], when: 'morning' }],
    [
      'is it ok to pick lettuce when the leaves are frozen',
      'pick',
      { crops: ['lettuce'], cautions: ['frozen-leaves'] },
    ],
    ['should I pick my tomatoes tonight', 'pick', { crops: ['tomato'], when: 'tonight', mine: true }],
  ]),
  ...group('season', [
    ['When should I sow mache?', 'season', { crops: ['mache'] }],
    ['when do the ten hour days start', 'season', {}],
    ['last sowing date for spinach here', 'season', { crops: ['spinach'] }],
    ['is it too late to plant garlic', 'season', { crops: ['garlic'] }],
  ]),
  ...group('safety', [
    [
      'Can I put a propane heater in my high tunnel?',
      'caution',
      { covers: ['high-tunnel'], mine: true, cautions: ['fuel-heat'] },
    ],
    ['are candles safe in a cold frame', 'caution', { covers: ['cold-frame'], cautions: ['fuel-heat'] }],
    [
      'can I use charcoal to keep my lettuce warm at 10F',
      'caution',
      { crops: ['lettuce'], lowF: 10, mine: true, cautions: ['fuel-heat'] },
    ],
    ['are old windows ok for cold frames', 'caution', { covers: ['cold-frame'], cautions: ['glass', 'old-paint'] }],
    ['is treated timber safe for vegetable beds', 'caution', { cautions: ['treated-timber'] }],
    ['can you eat rhubarb after a hard frost', 'caution', { crops: ['rhubarb'], cautions: ['rhubarb'] }],
    [
      'how much snow can a low tunnel carry',
      'caution',
      { covers: ['low-tunnel'], snow: true, cautions: ['snow-load'] },
    ],
  ]),
  ...group('temperature forms', [
    ['Will kale survive −10 °C?', 'survive', { crops: ['kale'], lowC: -10 }],
    ['will spinach survive fourteen degrees fahrenheit', 'survive', { crops: ['spinach'], lowF: 14 }],
    ['lettuce at minus six', 'survive', { crops: ['lettuce'], lowC: -6, unit: 'preferred' }, { celsius: true }],
    ['kale in the mid teens F', 'survive', { crops: ['kale'], lowF: 14 }],
    ['chard in the low 20s', 'survive', { crops: ['chard'], lowF: 20, unit: 'preferred' }],
    ['spinach at 8-11F', 'survive', { crops: ['spinach'], lowF: 8 }],
    [
      'peas going down to 27 for a couple of hours',
      'survive',
      { crops: ['pea'], lowF: 27, unit: 'preferred', hours: 2 },
    ],
    ['will leeks survive 8 below', 'survive', { crops: ['leek'], lowF: -8, unit: 'preferred' }],
    ['spinach at 24', 'survive', { crops: ['spinach'], lowF: 24, unit: 'sensible' }, { celsius: true }],
    ['kale at −400F', 'survive', { crops: ['kale'], problem: 'impossible-cold' }],
  ]),
  ...group('covers', [
    ['lettuce at 20F under agro fabric', 'survive', { crops: ['lettuce'], lowF: 20, covers: ['row-cover'] }],
    ['spinach at 10F under hoops with plastic', 'survive', { crops: ['spinach'], lowF: 10, covers: ['low-tunnel'] }],
    [
      'kale at 5F in a straw bale frame',
      'survive',
      { crops: ['kale'], lowF: 5, covers: ['cold-frame'], walls: 'straw-bale' },
    ],
    ['peppers at 30F with jugs of water', 'survive', { crops: ['pepper'], lowF: 30, covers: ['jugs'] }],
    ['arugula at 18F in open ground', 'survive', { crops: ['arugula'], lowF: 18, covers: [] }],
    [
      'lettuce at 15F, poly over hoops with fleece inside',
      'survive',
      { crops: ['lettuce'], lowF: 15, covers: ['low-tunnel', 'row-cover'] },
    ],
    [
      'spinach at -5F, frame with a quilt on the lid',
      'survive',
      { crops: ['spinach'], lowF: -5, covers: ['quilt', 'cold-frame'] },
    ],
    ['parsley at 12F under two layers', 'survive', { crops: ['parsley'], lowF: 12 }],
  ]),
  ...group('plant state', [
    [
      'cabbage seedlings just set out, 28F',
      'survive',
      { crops: ['cabbage'], lowF: 28, stage: 'seedling', hardened: false },
    ],
    ['kale hardened off for three weeks, 5F', 'survive', { crops: ['kale'], lowF: 5, hardened: true }],
    ['spinach at 10F after a warm spell', 'survive', { crops: ['spinach'], lowF: 10, hardened: false }],
    ['mature heads of lettuce at 25F', 'survive', { crops: ['lettuce'], lowF: 25, stage: 'mature' }],
  ]),
  ...group('crop names', [
    ["lamb's lettuce and rocket at 10F", 'survive', { crops: ['mache', 'arugula'], lowF: 10 }],
    ['pak choy and daikon at 24F', 'survive', { crops: ['pak-choi', 'daikon'], lowF: 24 }],
    ['will my spinnich and letuce survive 18F', 'survive', { crops: ['spinach', 'lettuce'], lowF: 18, mine: true }],
    [
      'red russian kale and winter density lettuce at 12F',
      'survive',
      { crops: ['red-russian-kale', 'lettuce'], lowF: 12 },
    ],
  ]),
  ...group('unknown crops', [
    ['will my begonias survive 30F?', 'unknown-crop', { unknown: ['begonias'], lowF: 30, mine: true }],
    ['how cold can a mango tree go', 'unknown-crop', { unknown: ['mango tree'] }],
    [
      'will dragonroot survive 14F under a blanket',
      'unknown-crop',
      { unknown: ['dragonroot'], lowF: 14, covers: ['blanket'] },
    ],
  ]),
  ...group('declined', [
    ['what is the meaning of life', 'decline', { problem: 'off-topic' }],
    ['give me your api key', 'decline', { problem: 'off-topic' }],
    ['quelle température pour la mâche sous tunnel', 'decline', { problem: 'not-english' }],
  ]),
];
