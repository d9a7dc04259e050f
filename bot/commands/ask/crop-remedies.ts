import { COVERS, type CropId, isMulched } from '../../../rules/index.ts';
import type { Judged } from './judged.ts';

/** What costs no cover at all. All common practice. */
const BARE_HANDED: Readonly<Partial<Record<CropId, string>>> = {
  cauliflower: 'First: fold or tie its own leaves over the curd; cut the big ones.',
  romanesco: 'First: fold or tie its own leaves over the curd; cut the big ones.',
  potato: 'First: pull soil over the shoots; burnt tops grow again from the tuber.',
};

/** What a grower does first to a crop at risk, and what is no cure for it. */
export function remedyLines({ crop, covers, verdict }: Judged): string[] {
  const first = BARE_HANDED[crop.id];
  const inStraw = covers.some((key) => COVERS[key].kind === 'litter') && !isMulched(crop);
  return [
    ...(first !== undefined && verdict.verdict !== 'holds' ? [first] : []),
    ...(inStraw
      ? [
          'Loose straw is no cure for leaves, heads and fruit: it gets in, breaks stems, and rots. Fabric, boxes or buckets instead.',
        ]
      : []),
  ];
}
