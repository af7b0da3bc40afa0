const databaseName = "practice-workbook";
const storeName = "work";

/** The browser's own storage for one thing; a promise for each of its events. */
export class Shelf<T> {
  private opened: Promise<IDBDatabase> | undefined;

  /**
   * @param key Under which the thing is kept.
   */
  constructor(private readonly key: string) {}

  private database(): Promise<IDBDatabase> {
    this.opened ??= new Promise((resolve, reject) => {
      const request = indexedDB.open(databaseName, 1);
      request.onupgradeneeded = () => request.result.createObjectStore(storeName);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
      request.onblocked = () => reject(new Error("Another tab holds the storage."));
    });
    return this.opened;
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

  async get(): Promise<T | undefined> {
    return (await this.run("readonly", (store) => store.get(this.key))) as T | undefined;
  }

  async put(value: T): Promise<void> {
    await this.run("readwrite", (store) => store.put(value, this.key));
  }

  async clear(): Promise<void> {
    await this.run("readwrite", (store) => store.delete(this.key));
  }
}
