import type { Stopper } from "../grid/port";
import type { RequestContext } from "./requestContext";

type Handler<T> = (args: T) => Promise<unknown> | unknown;

/** A handler that was added; it can be taken off again in its own context. */
export interface EventHandlerResult {
  readonly context: RequestContext;
  remove(): void;
}

/** An event of the host: handlers are added, and taken off, at sync. */
export class EventHandlers<T> {
  /**
   * @param typeName The member that this is, such as `Worksheet.onChanged`.
   * @param watch Starts to pass on the news.
   */
  constructor(
    private readonly context: RequestContext,
    private readonly typeName: string,
    private readonly watch: (tell: (args: T) => void) => Stopper,
  ) {}

  add(handler: Handler<T>): EventHandlerResult {
    const { context, typeName } = this;
    let stopper: Stopper | undefined;
    context.find(`${typeName}.add`, () => {
      // The host calls handlers after what caused the event is done, never in the middle of it.
      stopper = this.watch((args) => setTimeout(() => void handler(args), 0));
    });
    return {
      context,
      remove: () => context.find(`${typeName}.remove`, () => stopper?.stop()),
    };
  }
}
