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

  private async run<R>(mode: IDBTransactionMode, ask: (store: IDBObjectStore) => IDBRequest<R>): Promise<R> {
    const transaction = (await this.database()).transaction(storeName, mode);
    const request = ask(transaction.objectStore(storeName));
    // Committed at once, since the page may be closing.
    transaction.commit();
    return new Promise((resolve, reject) => {
      transaction.oncomplete = () => resolve(request.result);
      transaction.onabort = () => reject(transaction.error ?? request.error);
    });
  }

  /** What is kept, as it was put or as anyone else has left it; undefined where nothing is. */
  async get(): Promise<unknown> {
    return this.run("readonly", (store) => store.get(this.key));
  }

  async put(value: T): Promise<void> {
    await this.run("readwrite", (store) => store.put(value, this.key));
  }

  async clear(): Promise<void> {
    await this.run("readwrite", (store) => store.delete(this.key));
  }
}
