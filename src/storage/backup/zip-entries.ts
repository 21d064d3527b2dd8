import { inflateSync } from 'fflate';

/** Reads the entries of a ZIP one at a time out of a file, so that a large backup is never in memory as a whole. */
export interface ZipEntries {
  readonly names: readonly string[];
  /** The bytes of one entry; null when it is missing, damaged or larger than `most`. */
  readonly read: (name: string, most: number) => Promise<Uint8Array<ArrayBuffer> | null>;
}

interface Entry {
  readonly method: number;
  readonly packed: number;
  readonly size: number;
  readonly header: number;
}

/** Record signatures and field offsets of PKWARE's APPNOTE.TXT: 4.3.7 local header, 4.3.12 directory, 4.3.16 its end. */
const LOCAL = 0x04034b50;
const DIRECTORY = 0x02014b50;
const END = 0x06054b50;
const END_SIZE = 22;
const LONGEST_COMMENT = 0xffff;
const LARGEST_DIRECTORY = 32 * 1024 * 1024;

const slice = async (file: Blob, start: number, end: number): Promise<DataView<ArrayBuffer>> =>
  new DataView(await file.slice(start, end).arrayBuffer());

/** Opens a ZIP by its directory; null when there is none, or when no backup is of that kind (split, encrypted, over 4 GB). */
export const openZip = async (file: Blob): Promise<ZipEntries | null> => {
  const tailStart = Math.max(0, file.size - END_SIZE - LONGEST_COMMENT);
  const tail = await slice(file, tailStart, file.size);
  let end = tail.byteLength - END_SIZE;
  while (end >= 0 && tail.getUint32(end, true) !== END) end -= 1;
  if (end < 0) return null;
  const size = tail.getUint32(end + 12, true);
  const start = tail.getUint32(end + 16, true);
  if (size > LARGEST_DIRECTORY || start + size > tailStart + end) return null;

  const directory = await slice(file, start, start + size);
  const entries = new Map<string, Entry>();
  for (let at = 0; at < size; ) {
    if (at + 46 > size || directory.getUint32(at, true) !== DIRECTORY) return null;
    const isEncrypted = (directory.getUint16(at + 8, true) & 1) === 1;
    const nameLength = directory.getUint16(at + 28, true);
    const next =
      at + 46 + nameLength + directory.getUint16(at + 30, true) + directory.getUint16(at + 32, true);
    if (isEncrypted || next > size) return null;
    const name = new TextDecoder().decode(new Uint8Array(directory.buffer, at + 46, nameLength));
    // With a name twice, it would be unclear which entry is meant.
    if (entries.has(name)) return null;
    entries.set(name, {
      method: directory.getUint16(at + 10, true),
      packed: directory.getUint32(at + 20, true),
      size: directory.getUint32(at + 24, true),
      header: directory.getUint32(at + 42, true),
    });
    at = next;
  }
  return { names: [...entries.keys()], read: (name, most) => readEntry(file, entries.get(name), most) };
};

const readEntry = async (
  file: Blob,
  entry: Entry | undefined,
  most: number,
): Promise<Uint8Array<ArrayBuffer> | null> => {
  if (!entry || entry.size > most || entry.packed > most) return null;
  const header = await slice(file, entry.header, entry.header + 30);
  if (header.byteLength < 30 || header.getUint32(0, true) !== LOCAL) return null;
  const start = entry.header + 30 + header.getUint16(26, true) + header.getUint16(28, true);
  const packed = new Uint8Array(await file.slice(start, start + entry.packed).arrayBuffer());
  if (packed.length !== entry.packed) return null;
  if (entry.method === 0) return packed.length === entry.size ? packed : null;
  if (entry.method !== 8) return null;
  try {
    // The buffer has the declared size, so that no data can unpack to more.
    const bytes = inflateSync(packed, { out: new Uint8Array(entry.size) });
    return bytes.length === entry.size ? bytes : null;
  } catch {
    return null;
  }
};
