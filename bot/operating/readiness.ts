/** A part that must be there before questions are answered. */
export interface NeededPart {
  /** As in "the database is not there". */
  readonly name: string;
  /** Rejects, or is not true, while the part is away. */
  isThere(): Promise<boolean | undefined> | boolean | undefined;
}

/** A balancer asks again within seconds, and a part that takes longer is of no use to anybody. Judgement. */
const WITHIN_MS = 2000;

/** The parts that are away now; none means ready. Never rejects and never takes long. */
export async function missingParts(parts: readonly NeededPart[], withinMs = WITHIN_MS): Promise<readonly string[]> {
  const answers = await Promise.all(parts.map((part) => isThereInTime(part, withinMs)));
  return parts.filter((_part, index) => !answers[index]).map(({ name }) => name);
}

async function isThereInTime(part: NeededPart, withinMs: number): Promise<boolean> {
  let timer: NodeJS.Timeout | undefined;
  const late = new Promise<false>((resolve) => {
    timer = setTimeout(() => resolve(false), withinMs);
  });
  const asked = async () => (await part.isThere()) === true;
  try {
    return await Promise.race([asked(), late]);
  } catch {
    return false;
  } finally {
    clearTimeout(timer);
  }
}
