import { describe, expect, it } from 'vitest';
import { askLine } from '../../../../bot/cli/ask-json.ts';
import { answerText } from '../../../../bot/commands/ask/ask.ts';

const asked = { locale: 'en-US', now: new Date('2026-01-20T15:00:00Z') };

describe('a question that leaves something open', () => {
  it('gets both verdicts in its first line where a cover may be off', () => {
    const answer = answerText('lettuce 22F tonight, I think the blanket is on', asked);
    expect(answer.reply.headline).toBe('Lettuce at 22 °F. With the blanket on: holds. If it is not on: leaf burn.');
    const { understood, answers } = askLine(answer);
    expect(understood.inDoubt).toEqual(['covers']);
    expect(answers.map(({ covers, verdict }) => [covers, verdict])).toEqual([
      [['blanket'], 'holds'],
      [['none'], 'leaf burn'],
    ]);
  });

  it('gets both temperatures, the colder first', () => {
    const answer = answerText('lettuce bare 30F or maybe 20F', asked);
    expect(answer.reply.headline).toBe('Lettuce uncovered. At 20 °F: winterkill. At 30 °F: holds.');
    expect(askLine(answer).understood.inDoubt).toEqual(['low']);
  });

  it('says once what is the same either way', () => {
    const { reply } = answerText("don't know if the fleece is still on, lettuce 15F", asked);
    expect(reply.headline).toBe('Lettuce at 15 °F: winterkill with the cover on or off.');
  });

  it('tells a misspelt word as it was read', () => {
    const line = askLine(answerText('lettuce 24F withut the fleece', asked));
    expect(line.understood.readAs).toEqual(['without']);
    expect(line.text).toContain('read as: “without”');
  });

  it.each([
    ['cold frame is at 95F should I open it', /^Open now, as wide as it goes/],
    ['the tunnel is 80F inside', /^Open now, a hand wide/],
    ['salt on frozen lettuce?', /^Salt kills roots/],
    ['antifreeze around the tomatoes', /^Antifreeze/],
    ['hot water on my frozen kale', /^Do not pour hot/],
    ['burning logs in the greenhouse, lettuce 24F', /^Never burn anything under a cover/],
    ['okinawan spinach bare at 24F', /"okinawan spinach" is not in my table/],
    ['pepper tree 24F', /"pepper tree" is not in my table/],
    ['lettuce 24F yoga mat', /I do not know "yoga mat" as a cover/],
    ['my daughter planted leeks, 12F bare, ok?', /^Leek uncovered at 12 °F/],
  ])('is answered by what matters first: %s', (question, headline) => {
    expect(answerText(question, asked).reply.headline).toMatch(headline);
  });
});
