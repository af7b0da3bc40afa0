import { HostError } from "./error";
import type { RequestContext } from "./requestContext";

/** A value that is there after the next sync. */
export class ClientResult<T> implements OfficeExtension.ClientResult<T> {
  private known: { readonly value: T } | undefined;

  constructor(context: RequestContext, location: string, find: () => T) {
    context.read(location, () => {
      this.known = { value: find() };
    });
  }

  /**
   * @throws HostError before the sync.
   */
  get value(): T {
    if (!this.known) throw new HostError("ValueNotLoaded", "clientResult.value");
    return this.known.value;
  }
}
