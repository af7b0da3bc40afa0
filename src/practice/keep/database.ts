const databaseName = "practice-workbook";
const storeName = "work";
/** Counts up when an earlier page could no longer read what is kept; the browser then keeps it from that one. */
const version = 1;
const patienceMs = 10_000;

/** The browser's own storage for one thing; a promise for each of its events. */
export class Shelf<T> {
  private opened: Promise<IDBDatabase> | undefined;

  /**
   * @param key Under which the thing is kept.
   */
  constructor(private readonly key: string) {}

  private database(): Promise<IDBDatabase> {
    this.opened ??= new Promise<IDBDatabase>((resolve, reject) => {
      // Some browsers that keep their storage from a page never answer.
      setTimeout(() => reject(new Error("The browser's storage isn't responding.")), patienceMs);
      const request = indexedDB.open(databaseName, version);
      request.onupgradeneeded = () => request.result.createObjectStore(storeName);
      request.onsuccess = () => resolve(this.letGoInTime(request.result));
      request.onerror = () => reject(request.error);
      request.onblocked = () => reject(new Error("Another tab is using the storage."));
    });
    // It is asked again the next time: there may be room by then.
    this.opened.catch(() => {
      this.opened = undefined;
    });
    return this.opened;
  }

  /** A later version of this page, in another tab, must not wait for this one. */
  private letGoInTime(database: IDBDatabase): IDBDatabase {
    database.onversionchange = () => {
      database.close();
      this.opened = undefined;
    };
    return database;
  }

  /** What is kept, as it was put or as anyone else has left it; undefined where nothing is. */
  async get(): Promise<unknown> {
    const transaction = (await this.database()).transaction(storeName, "readonly");
    const request: IDBRequest<unknown> = transaction.objectStore(storeName).get(this.key);
    return new Promise((resolve, reject) => {
      // A large value on a disk may come only after its transaction is complete.
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
      transaction.onabort = () => reject(transaction.error ?? request.error);
    });
  }

  private async write(ask: (store: IDBObjectStore) => void): Promise<void> {
    const transaction = (await this.database()).transaction(storeName, "readwrite");
    ask(transaction.objectStore(storeName));
    // Committed at once, since the page may be closing.
    transaction.commit();
    return new Promise((resolve, reject) => {
      transaction.oncomplete = () => resolve();
      transaction.onabort = () => reject(transaction.error);
    });
  }

  async put(value: T): Promise<void> {
    await this.write((store) => store.put(value, this.key));
  }

  async clear(): Promise<void> {
    await this.write((store) => store.delete(this.key));
  }
}
