const BEGIN = '<!-- accuracy: written by npm run documents -->';
const END = '<!-- end of accuracy -->';

/** The page with this table between its two markers. */
export function withTable(page: string, table: string): string {
  const [before, after] = around(page);
  return `${before}${BEGIN}\n\n${table}\n\n${END}${after}`;
}

/** What stands between the two markers. */
export function tableIn(page: string): string {
  const [before, after] = around(page);
  return page.slice(before.length + BEGIN.length, page.length - after.length - END.length).trim();
}

function around(page: string): readonly [before: string, after: string] {
  const from = page.indexOf(BEGIN);
  const to = page.indexOf(END);
  if (from < 0 || to < from) throw new Error('the page has no two accuracy markers, one after the other');
  return [page.slice(0, from), page.slice(to + END.length)];
}
