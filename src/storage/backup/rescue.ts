// Runs in rescue.html without the app: raw IndexedDB, no library and no import, so nothing can fail to load with the rest.

/** The same as in names.ts. The test of this page reads what the app has written, so it fails when the two differ. */
const DATABASE = 'lidwright';

/** Caches, which the app rebuilds from the rest. The same test compares them with names.ts. */
const REBUILT = ['stale', 'cache'];

const whenDone = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

/** Opens what is there, whatever its version; null when there is no such database. Never creates one. */
const openAsItIs = async (): Promise<IDBDatabase | null> => {
  const request = indexedDB.open(DATABASE);
  let isNew = false;
  request.onupgradeneeded = () => {
    isNew = true;
    request.transaction?.abort();
  };
  try {
    return await whenDone(request);
  } catch (error) {
    if (isNew) return null;
    throw error;
  }
};

/** JSON has no bytes: they are written as {"base64": ...}. */
const base64 = (bytes: Uint8Array): string => {
  let binary = '';
  for (let i = 0; i < bytes.length; i += 0x8000)
    binary += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  return btoa(binary);
};

const plain = (_key: string, value: unknown): unknown => {
  if (value instanceof ArrayBuffer) return { base64: base64(new Uint8Array(value)) };
  if (ArrayBuffer.isView(value))
    return { base64: base64(new Uint8Array(value.buffer, value.byteOffset, value.byteLength)) };
  return value;
};

/** Every entry of every store that is not a cache, read one at a time so that large photos are never in memory together. */
const exportStores = async (db: IDBDatabase): Promise<Blob> => {
  const parts: BlobPart[] = [`{"database":${JSON.stringify(DATABASE)},"version":${db.version},"stores":{`];
  const names = [...db.objectStoreNames].filter((name) => !REBUILT.includes(name));
  for (const [i, name] of names.entries()) {
    parts.push(`${i > 0 ? ',' : ''}\n${JSON.stringify(name)}:[`);
    const keys = await whenDone(db.transaction(name).objectStore(name).getAllKeys());
    for (const [j, key] of keys.entries()) {
      const value: unknown = await whenDone(db.transaction(name).objectStore(name).get(key));
      parts.push(new Blob([`${j > 0 ? ',' : ''}\n${JSON.stringify({ key, value }, plain)}`]));
    }
    parts.push(']');
  }
  parts.push('}}\n');
  return new Blob(parts, { type: 'application/json' });
};

const show = (state: 'reading' | 'saved' | 'nothing' | 'refused'): void => {
  for (const line of document.querySelectorAll<HTMLElement>('[data-state]'))
    line.hidden = line.dataset.state !== state;
};

const save = async (): Promise<void> => {
  show('reading');
  try {
    const db = await openAsItIs();
    if (!db) return show('nothing');
    const link = document.createElement('a');
    link.href = URL.createObjectURL(await exportStores(db));
    link.download = 'lidwright-rescue.json';
    link.click();
    db.close();
    show('saved');
  } catch (error) {
    const reason = document.getElementById('reason');
    if (reason) reason.textContent = String(error);
    show('refused');
  }
};

const button = document.getElementById('save') as HTMLButtonElement | null;
if (button) {
  button.disabled = false;
  button.addEventListener('click', save);
}

export {};
