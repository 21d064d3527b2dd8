import { zlibSync } from 'fflate';

/** Red, green and blue, 0 to 255 each. */
export type Colour = readonly [number, number, number];

const CRC = Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c >>> 0;
});
const crc = (bytes: Uint8Array): number =>
  ~bytes.reduce((c, byte) => (CRC[(c ^ byte) & 255] as number) ^ (c >>> 8), 0xffffffff) >>> 0;

const chunk = (name: string, data: Uint8Array): Uint8Array => {
  const all = new Uint8Array(12 + data.length);
  const view = new DataView(all.buffer);
  view.setUint32(0, data.length);
  all.set(new TextEncoder().encode(name), 4);
  all.set(data, 8);
  view.setUint32(8 + data.length, crc(all.subarray(4, 8 + data.length)));
  return all;
};

/** A picture as PNG (W3C, Portable Network Graphics, second edition), of at most 256 colours, each an entry of its palette. */
export const png = (
  width: number,
  height: number,
  colourAt: (x: number, y: number) => Colour,
): Uint8Array<ArrayBuffer> => {
  const palette = new Map<number, number>();
  const entryOf = ([red, green, blue]: Colour): number => {
    const key = (red << 16) | (green << 8) | blue;
    const entry = palette.get(key) ?? palette.size;
    if (entry === palette.size) palette.set(key, entry);
    return entry;
  };
  const rows = new Uint8Array(height * (1 + width));
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) rows[y * (1 + width) + 1 + x] = entryOf(colourAt(x, y));
  if (palette.size > 256) throw new RangeError(`${palette.size} colours`);
  const header = new DataView(new ArrayBuffer(13));
  header.setUint32(0, width);
  header.setUint32(4, height);
  header.setUint16(8, 0x0803);
  const parts = [
    Uint8Array.of(137, 80, 78, 71, 13, 10, 26, 10),
    chunk('IHDR', new Uint8Array(header.buffer)),
    chunk(
      'PLTE',
      Uint8Array.from([...palette.keys()].flatMap((key) => [key >> 16, (key >> 8) & 255, key & 255])),
    ),
    chunk('IDAT', zlibSync(rows, { level: 9 })),
    chunk('IEND', new Uint8Array()),
  ];
  return Uint8Array.from(parts.flatMap((part) => [...part]));
};
