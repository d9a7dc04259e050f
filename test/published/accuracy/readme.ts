const BEGIN = '<!-- accuracy: written by npm run accuracy -- --readme -->';
const END = '<!-- end of accuracy -->';

/** The README with this table between its two markers. */
export function withTable(readme: string, table: string): string {
  const [before, after] = around(readme);
  return `${before}${BEGIN}\n\n${table}\n\n${END}${after}`;
}

/** What stands between the two markers. */
export function tableIn(readme: string): string {
  const [before, after] = around(readme);
  return readme.slice(before.length + BEGIN.length, readme.length - after.length - END.length).trim();
}

function around(readme: string): readonly [before: string, after: string] {
  const from = readme.indexOf(BEGIN);
  const to = readme.indexOf(END);
  if (from < 0 || to < from) throw new Error('the README has no two accuracy markers, one after the other');
  return [readme.slice(0, from), readme.slice(to + END.length)];
}
