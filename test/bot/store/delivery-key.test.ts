import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deliveryNonce, directPlace } from '../../../bot/store/delivery-key.ts';

const anyKey = fc.record({ placeId: fc.string(), night: fc.string(), kind: fc.string() });

describe('the nonce of a delivery', () => {
  it('is 24 characters that any service takes, the same at every attempt', () => {
    fc.assert(
      fc.property(anyKey, (key) => {
        expect(deliveryNonce(key)).toMatch(/^[a-z2-7]{24}$/);
        expect(deliveryNonce({ ...key })).toBe(deliveryNonce(key));
      }),
    );
  });

  it('differs as soon as place, night or kind differ', () => {
    fc.assert(
      fc.property(anyKey, anyKey, (a, b) => {
        fc.pre(JSON.stringify(a) !== JSON.stringify(b));
        expect(deliveryNonce(a)).not.toBe(deliveryNonce(b));
      }),
    );
  });

  it('does not confuse where one part ends and the next begins', () => {
    const key = { placeId: 'a', night: 'b', kind: 'c' };
    expect(deliveryNonce(key)).not.toBe(deliveryNonce({ placeId: 'ab', night: '', kind: 'c' }));
  });
});

describe("a member's own place", () => {
  it('is never that of another member', () => {
    fc.assert(
      fc.property(fc.string(), fc.string(), (a, b) => {
        fc.pre(a !== b);
        expect(directPlace(a)).not.toBe(directPlace(b));
      }),
    );
  });
});
