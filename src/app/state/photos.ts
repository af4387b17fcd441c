/** Photos of tests stay on this device, beside the joint, never in its file. */
const DATABASE = 'knurlwright photos';
const STORE = 'photos';

/** Longest edge of a kept photo, px: enough to see how a coupon broke. */
const GREATEST_EDGE = 1280;
const JPEG_QUALITY = 0.8;

const settled = <Value>(request: IDBRequest<Value>): Promise<Value> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error ?? new Error('The browser’s storage gave no reason.'));
  });

function opened(): Promise<IDBDatabase> {
  const request = indexedDB.open(DATABASE, 1);
  request.onupgradeneeded = () => request.result.createObjectStore(STORE);
  return settled(request);
}

async function inStore<Value>(mode: IDBTransactionMode, run: (store: IDBObjectStore) => IDBRequest<Value>) {
  const database = await opened();
  try {
    return await settled(run(database.transaction(STORE, mode).objectStore(STORE)));
  } finally {
    database.close();
  }
}

export const keepPhoto = (name: string, photo: Blob): Promise<unknown> =>
  inStore('readwrite', (store) => store.put(photo, name));

/** The photo of a name; undefined where it was taken on another device. */
export async function keptPhoto(name: string): Promise<Blob | undefined> {
  const found: unknown = await inStore('readonly', (store) => store.get(name));
  return found instanceof Blob ? found : undefined;
}

export const removePhoto = (name: string): Promise<unknown> =>
  inStore('readwrite', (store) => store.delete(name));

/** A picture made smaller where it is larger than a photo here need be; rejects what is no picture. */
export async function downscaled(picture: Blob): Promise<Blob> {
  const bitmap = await createImageBitmap(picture);
  const scale = Math.min(1, GREATEST_EDGE / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  return new Promise((resolve, reject) => {
    canvas.toBlob(
      (blob) => (blob ? resolve(blob) : reject(new Error('The browser makes no picture of it.'))),
      'image/jpeg',
      JPEG_QUALITY,
    );
  });
}
