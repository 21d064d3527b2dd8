/** SHA-256 in hexadecimal. */
export const sha256 = async (bytes: BufferSource): Promise<string> =>
  Array.from(new Uint8Array(await crypto.subtle.digest('SHA-256', bytes)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('');
