/** So long a request takes where the host does what it is asked at once, and many times over. */
const LONG_MS = 2500;

const listeners = new Set<() => void>();

/**
 * Tells when the host takes long to answer, as while a cell is open for typing.
 *
 * @returns a function that ends it.
 */
export function onLongWait(tell: () => void): () => void {
  listeners.add(tell);
  return () => void listeners.delete(tell);
}

/** Does something with the host, and has the listeners told where it takes long. */
export async function notingLongWait<T>(work: () => Promise<T>): Promise<T> {
  const late = setTimeout(() => {
    for (const tell of listeners) tell();
  }, LONG_MS);
  try {
    return await work();
  } finally {
    clearTimeout(late);
  }
}
