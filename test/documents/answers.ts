import { withCautions } from '../../bot/commands/ask/answered.ts';
import { answerText } from '../../bot/commands/ask/ask.ts';
import { drawn } from '../../bot/talk/plain-text.ts';

/** A question and its answer as a page shows them, with the day on which it was asked. */
const SHOWN =
  /<!-- answer, asked on (?<day>\d{1,2} \w+ \d{4}) -->\n\n {4}> (?<question>[^\n]+)\n[\s\S]*?\n<!-- end of answer -->/g;

const WIDTH = 92;
const INDENT = '    ';

/** The page with each answer as the program gives it now. */
export function withAnswers(page: string): string {
  return page.replaceAll(SHOWN, (_shown, day: string, question: string) => {
    const now = new Date(`${day} 15:00 UTC`);
    const answer = drawn(withCautions(answerText(question, { locale: 'en-US', now })), WIDTH);
    const lines = [`> ${question}`, '', ...answer.split('\n')].map((line) => (line === '' ? '' : `${INDENT}${line}`));
    return [`<!-- answer, asked on ${day} -->`, '', ...lines, '', '<!-- end of answer -->'].join('\n');
  });
}

/** How many answers a page shows. */
export function answerCount(page: string): number {
  return [...page.matchAll(SHOWN)].length;
}
