import { bed, days, fahrenheit, nightsC, nightsF } from './invented-week.ts';
import { toldTonight, toldWeek } from './told.ts';

const f = fahrenheit;
const calm = { cloudFraction: 0, wind10MPerS: 1 };
const grey = { cloudFraction: 1, wind10MPerS: 3.5 };
const show = (title: string, words: string) => process.stdout.write(`\n##### ${title}\n${words}\n`);
const soft = { stage: 'just-set-out' as const };
// week (today Monday)
show(
  'w1 tomatoes',
  toldWeek({
    locale: 'en-US',
    spell: {
      latitudeDeg: 44,
      today: '2026-09-28',
      past: days(7, 20, 8),
      ahead: [...nightsF([41]), ...nightsF([38], 18, grey), ...nightsF([30, 34], 25, calm), ...nightsF([42, 45, 47])],
    },
    beds: [bed('Tomatoes', ['tomato'])],
  }).words,
);
show(
  'w2 spinach',
  toldWeek({
    locale: 'en-US',
    spell: {
      latitudeDeg: 44,
      today: '2026-11-16',
      past: nightsF([24, 26, 28, 30, 32, 27, 25], 14),
      ahead: nightsF([31, 27, 22, 19, 24, 30, 34]),
    },
    beds: [bed('Spinach bed', ['spinach'])],
  }).words,
);
show(
  'w3 leeks kale GB',
  toldWeek({
    locale: 'en-GB',
    spell: {
      latitudeDeg: 52,
      today: '2027-01-11',
      past: nightsC([-1, 0, 1, -1, 0, -2, -1], 5),
      ahead: nightsC([-1, -4, -6, -5, -2, 1, 4], 5),
    },
    beds: [bed('Leeks', ['leek']), bed('Kale', ['kale'])],
  }).words,
);
show(
  'w4 basil peppers',
  toldWeek({
    locale: 'en-US',
    spell: {
      latitudeDeg: 44,
      today: '2026-10-05',
      past: days(7, 20, 8),
      ahead: nightsF([48, 46, 45, 37, 44, 46, 47], 20),
    },
    beds: [bed('Deck', ['basil', 'pepper'])],
  }).words,
);
show(
  'w7 nothing',
  toldWeek({
    locale: 'en-US',
    spell: {
      latitudeDeg: 35,
      today: '2027-03-15',
      past: days(7, 18, 7),
      ahead: nightsF([44, 46, 49, 50, 47, 45, 48], 20),
    },
    beds: [bed('Peas', ['pea']), bed('Lettuce', ['leaf-lettuce']), bed('Kale', ['kale']), bed('Onions', ['onion'])],
  }).words,
);
show(
  'w8 potato',
  toldWeek({
    locale: 'en-GB',
    spell: {
      latitudeDeg: 60,
      today: '2026-06-01',
      past: days(7, 15, 5),
      ahead: [...nightsC([4]), ...nightsC([1, -1], 10, calm), ...nightsC([2], 8, grey), ...nightsC([6, 6, 6])],
    },
    beds: [bed('Early potatoes', ['potato'])],
  }).words,
);
show(
  'w9 fava 43S',
  toldWeek({
    locale: 'en-GB',
    spell: {
      latitudeDeg: -43,
      today: '2026-07-13',
      past: nightsC([0, -1, 1, 0, -1, 1, 0]),
      ahead: nightsC([-3, -4, -2, 2, 3, 0, -1]),
    },
    beds: [bed('Broad beans', [{ cropId: 'fava-bean', stage: 'growing' }])],
  }).words,
);
show(
  'w10 cover which',
  toldWeek({
    locale: 'en-CA',
    spell: {
      latitudeDeg: 44,
      today: '2026-10-12',
      past: days(7, 14, 4),
      ahead: [
        ...nightsC([3]),
        ...nightsC([1], 6, { cloudFraction: 0.9, wind10MPerS: 7 }),
        ...nightsC([-2, -5, -3], 10, calm),
        ...nightsC([2, 3]),
      ],
    },
    beds: [bed('Peppers', ['pepper']), bed('Lettuce', ['lettuce']), bed('Kale', ['kale'])],
    shed: ['row-cover-medium'],
  }).words,
);
show(
  'w11 grey tomatoes',
  toldWeek({
    locale: 'en-US',
    spell: {
      latitudeDeg: 44,
      today: '2026-09-28',
      past: days(7, 12, 4, grey),
      ahead: nightsF([36, 35, 37, 36, 36, 35, 37], 9, grey),
    },
    beds: [bed('Tomatoes', ['tomato'])],
  }).words,
);
show(
  'w12 break',
  toldWeek({
    locale: 'en-US',
    spell: { latitudeDeg: 40, today: '2027-04-05', past: days(7, 10, 0), ahead: nightsF([25, 23, 29, 39, 42, 27, 24]) },
    beds: [bed('Broccoli', [{ cropId: 'broccoli', stage: 'growing' }], 'row-cover-medium')],
  }).words,
);
show(
  'w13 covers off',
  toldWeek({
    locale: 'en-US',
    spell: {
      latitudeDeg: 44,
      today: '2027-04-16',
      past: days(7, 12, 2),
      ahead: nightsF([40, 26, 38, 42, 43, 44, 45], 20),
    },
    beds: [bed('Lettuce', ['lettuce'], 'row-cover-medium'), bed('Peas', ['pea'], 'row-cover-medium')],
  }).words,
);
// hardening tonight
show(
  'h1 kale starts',
  toldTonight({
    locale: 'en-US',
    spell: { latitudeDeg: 44, today: '2027-04-16', past: days(7, 12, 2), ahead: nightsF([25, 35]) },
    beds: [bed('Kale', [{ cropId: 'kale', ...soft }])],
  }).words,
);
show(
  'h2 kale18',
  toldTonight({
    locale: 'en-US',
    spell: {
      latitudeDeg: 44,
      today: '2026-11-16',
      past: nightsF([22, 31, 28, 25, 30, 27, 24], 14),
      ahead: nightsF([18, 25]),
    },
    beds: [bed('Kale', ['kale'])],
  }).words,
);
show(
  'h3 collards',
  toldTonight({
    locale: 'en-US',
    spell: { latitudeDeg: 35, today: '2026-12-15', past: days(7, f(73), f(55)), ahead: nightsF([20, 25], 25) },
    beds: [bed('Collards', ['collards'])],
  }).words,
);
show(
  'h5 spinach 5F',
  toldTonight({
    locale: 'en-US',
    spell: {
      latitudeDeg: 44,
      today: '2027-01-18',
      past: nightsF([8, 10, 15, 20, 12, 9, 14], 14),
      ahead: nightsF([5, 12], 14),
    },
    beds: [bed('Spinach', ['spinach'], 'row-cover-medium', 'hoops')],
  }).words,
);
show(
  'h6 lettuce seedl',
  toldTonight({
    locale: 'en-US',
    spell: { latitudeDeg: 44, today: '2027-04-16', past: days(7, 12, 2), ahead: nightsF([29, 35]) },
    beds: [bed('Lettuce', [{ cropId: 'lettuce', ...soft }])],
  }).words,
);
show(
  'h7 fava -5',
  toldTonight({
    locale: 'en-GB',
    spell: {
      latitudeDeg: -43,
      today: '2026-06-22',
      past: nightsC([-2, 0, 2, 1, -1, 0, 2], 9),
      ahead: nightsC([-5, 0]),
    },
    beds: [bed('Broad beans', [{ cropId: 'fava-bean', stage: 'growing' }])],
  }).words,
);
show(
  'h9 cabbage',
  toldTonight({
    locale: 'en-US',
    spell: { latitudeDeg: 42, today: '2027-04-12', past: days(14, 7, 2), ahead: nightsF([27, 35]) },
    beds: [bed('Cabbage', [{ cropId: 'cabbage', stage: 'growing' }])],
  }).words,
);
show(
  'h12 georgia',
  toldTonight({
    locale: 'en-US',
    spell: { latitudeDeg: 34, today: '2026-11-16', past: days(14, f(71), f(52)), ahead: nightsF([27, 35], 25) },
    beds: [bed('Leaf lettuce', ['leaf-lettuce'])],
  }).words,
);
show(
  'h13 first frost',
  toldTonight({
    locale: 'en-CA',
    spell: {
      latitudeDeg: 50,
      today: '2026-09-28',
      past: nightsC([4, 6, 9, 7, 5, 8, 4], 10),
      ahead: nightsC([-3, 2], 14),
    },
    beds: [bed('Spinach', ['spinach']), bed('Chard', ['chard'])],
  }).words,
);
show(
  'h10 tunnel',
  toldTonight({
    locale: 'en-US',
    spell: {
      latitudeDeg: 42,
      today: '2027-02-22',
      past: nightsF([25, 28, 30, 32, 26, 27, 30], 20),
      ahead: nightsF([12, 22], 14),
    },
    beds: [bed('Tunnel', ['lettuce', 'spinach'], 'low-tunnel')],
  }).words,
);
// long cold
show(
  'l1 lettuce 5 nights',
  toldWeek({
    locale: 'en-US',
    spell: {
      latitudeDeg: 42,
      today: '2026-11-16',
      past: days(7, 8, 0),
      ahead: [...nightsF([22, 20, 23, 24, 21], 20), ...nightsF([30, 32])],
    },
    beds: [bed('Lettuce', [{ cropId: 'leaf-lettuce', stage: 'growing' }], 'row-cover-medium', 'hoops')],
  }).words,
);
show(
  'l2 carrots',
  toldTonight({
    locale: 'en-US',
    spell: {
      latitudeDeg: 42,
      today: '2027-01-18',
      past: nightsF([15, 14, 12, 13, 10, 11, 12], 14),
      ahead: nightsF([12, 11], 14),
    },
    beds: [bed('Carrots', ['carrot'])],
  }).words,
);
show(
  'l3 leeks 60N',
  toldWeek({
    locale: 'en-GB',
    spell: {
      latitudeDeg: 60,
      today: '2027-01-18',
      past: nightsC([-4, -5, -6, -5, -4, -6, -7], 3),
      ahead: nightsC([-4, -6, -9, -8, -7, -6, -9], 3),
    },
    beds: [bed('Leeks', ['leek'])],
  }).words,
);
show(
  'l5 kale crispy',
  toldTonight({
    locale: 'en-US',
    spell: {
      latitudeDeg: 44,
      today: '2027-02-08',
      past: nightsF([10, 12, 15, 13, 11, 14, 12], 14, { wind10MPerS: 6.7 }),
      ahead: nightsF([12, 13], 14, { wind10MPerS: 6.7 }),
    },
    beds: [bed('Kale', ['kale'])],
  }).words,
);
show(
  'l7 beets',
  toldWeek({
    locale: 'en-CA',
    spell: {
      latitudeDeg: 46,
      today: '2026-11-23',
      past: days(7, 4, -3),
      ahead: [...nightsC([-8, -8, -8, -8, -8], 8), ...nightsC([-2, 0])],
    },
    beds: [bed('Beets', ['beet'])],
  }).words,
);
show(
  'l9 spinach tunnel',
  toldTonight({
    locale: 'en-US',
    spell: {
      latitudeDeg: 43,
      today: '2027-01-18',
      past: nightsF([-5, -2, 0, -3, -4, -1, 0], 20),
      ahead: nightsF([-5, -2], 20),
    },
    beds: [bed('Spinach', ['spinach'], 'high-tunnel', 'row-cover-heavy', 'hoops')],
  }).words,
);
show(
  'l12 fava -6',
  toldWeek({
    locale: 'en-GB',
    spell: {
      latitudeDeg: 52,
      today: '2027-01-18',
      past: nightsC([0, -1, -2, 0, -1, -2, -1], 5),
      ahead: nightsC([-6, -6, -6, -6, -6, -6, -6], 6),
    },
    beds: [bed('Broad beans', [{ cropId: 'fava-bean', stage: 'growing' }])],
  }).words,
);
show(
  'l14 arctic',
  toldWeek({
    locale: 'en-US',
    spell: {
      latitudeDeg: 35,
      today: '2027-01-18',
      past: nightsF([35, 38, 42, 45, 40, 39, 41], 15),
      ahead: [...nightsF([15, 8, 10, 12], 18), ...nightsF([20, 28, 33], 18)],
    },
    beds: [bed('Broccoli', ['broccoli'], 'row-cover-light'), bed('Collards', ['collards'], 'row-cover-light')],
  }).words,
);
show(
  'l15 cauli',
  toldWeek({
    locale: 'en-GB',
    spell: {
      latitudeDeg: -43,
      today: '2026-07-13',
      past: nightsC([0, 1, -1, 0, 1, 0, -1], 9),
      ahead: [...nightsC([-5, -5, -5], 14), ...nightsC([2, 2, 3, 3])],
    },
    beds: [bed('Cauliflower', ['cauliflower'])],
  }).words,
);
