/** What the host hands over behind the arguments of every call, whether a function asks for it or not. */
export class Invocation implements Pick<CustomFunctions.Invocation, "functionName"> {
  /** Where the function is called: the host says so only to functions whose metadata asks for it, and none here does. */
  readonly address = undefined;

  /**
   * @param functionName the id of the function, such as STONE_TONS.
   */
  constructor(readonly functionName: string) {}
}
