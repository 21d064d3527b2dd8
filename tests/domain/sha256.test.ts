import { afterEach, expect, test, vi } from 'vitest';
import { sha256 } from '../../src/domain/sha256.ts';

afterEach(() => vi.unstubAllGlobals());

// The messages of FIPS 180-4's example computations (NIST, "SHA256.pdf"): one block, two blocks; and the empty message.
test.each([
  ['abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
  ['', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
])('%j', (message, digest) => expect(sha256(new TextEncoder().encode(message))).toBe(digest));

test('it needs no secure context', () => {
  vi.stubGlobal('crypto', { getRandomValues: crypto.getRandomValues.bind(crypto) });
  expect(sha256(new ArrayBuffer(3))).toMatch(/^[0-9a-f]{64}$/);
});
