/** What the photo of a phone carries and must not be kept. */
export const CAMERA = 'SECRET CAMERA 1234567';

/**
 * The same JPEG with an Exif segment: an orientation (6: to be shown turned a quarter clockwise) and the name of a camera.
 * Layout after Exif 2.3 (CIPA DC-008): APP1, "Exif\0\0", a big-endian TIFF header, one directory of two entries.
 */
export const withExif = (jpeg: Uint8Array, orientation: number): Buffer => {
  const make = Buffer.from(`${CAMERA}\0`);
  const tiff = Buffer.alloc(8 + 2 + 2 * 12 + 4);
  tiff.write('MM\0*', 0, 'latin1');
  tiff.writeUInt32BE(8, 4);
  tiff.writeUInt16BE(2, 8);
  const entry = (i: number, tag: number, type: number, count: number) => {
    const at = 10 + i * 12;
    tiff.writeUInt16BE(tag, at);
    tiff.writeUInt16BE(type, at + 2);
    tiff.writeUInt32BE(count, at + 4);
    return at + 8;
  };
  tiff.writeUInt32BE(tiff.length, entry(0, 0x010f, 2, make.length));
  tiff.writeUInt16BE(orientation, entry(1, 0x0112, 3, 1));
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff, make]);
  const head = Buffer.from([0xff, 0xd8, 0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(body.length + 2, 4);
  return Buffer.concat([head, body, Buffer.from(jpeg).subarray(2)]);
};
