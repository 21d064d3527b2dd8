import { sha256 as digest } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

/** SHA-256 (FIPS 180-4) in hexadecimal. The browser's own is missing on plain http, where backups and photos must work too. */
export const sha256 = (bytes: ArrayBuffer | Uint8Array): string =>
  bytesToHex(digest(bytes instanceof Uint8Array ? bytes : new Uint8Array(bytes)));
