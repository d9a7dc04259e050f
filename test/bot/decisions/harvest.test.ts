import { describe } from 'vitest';
import { itDecides } from './decision.ts';

describe('before a freeze it says what to pick, after it what to do (common practice)', () => {
  itDecides([
    {
      ask: '27 tonight. Pick the green tomatoes or cover?',
      month: 10,
      says: [/pick today/, /full-size/, /ripen indoors/],
      neverSays: [/above 34/],
    },
    {
      ask: 'Should I harvest before a freeze of 15 °F?',
      says: [/Pick today.*\n.*tomato/, /Leave/],
      neverSays: [/Pick when the leaves/],
    },
    {
      ask: '30 tonight, pumpkins and butternut still out. Bring in?',
      month: 10,
      says: [/pick pumpkin and winter squash/],
    },
    { ask: 'harvest kale before 26F?', says: [/leave it/, /sweeten/], verdict: ['holds'] },
    {
      ask: 'Should I pull parsnips and sprouts before the -6 tonight?',
      locale: 'en-GB',
      month: 11,
      says: [/leave parsnip/],
    },
    {
      ask: 'Tomatoes got frosted last night, leaves black. Can I eat the fruit?',
      month: 10,
      says: [/Firm fruit/, /not for canning/, /Throw away/],
    },
    {
      ask: 'kale all limp and frozen stiff this morning, did I lose it?',
      month: 11,
      says: [/Leave them alone until they have thawed/, /stand up again/],
      neverSays: [/warm water/],
    },
    { ask: 'my row cover is frozen to the leaves. pull it off?', says: [/Leave it on until it lets go/, /hoops/] },
    {
      ask: 'rhubarb got hit last night at 25, still ok to pick?',
      month: 4,
      says: [/firm, upright/, /Never eat the leaves/, /crown is fine/],
    },
    {
      ask: 'When do I take the covers off after a 24 degree night?',
      month: 4,
      says: [/thawed/, /after sunrise/],
      neverSays: [/At sunrise/],
    },
  ]);
});
