import { useRef } from "preact/hooks";
import { KeptFailure } from "../workbook/settings/setting";

/**
 * Runs a action that changes what the workbook keeps. Where that is damaged, the action is refused in words; the same action
 * once more is told that it may start again.
 */
export function useOnceMore() {
  const asked = useRef(false);
  return async <T>(action: (startOver: boolean) => Promise<T>): Promise<T> => {
    try {
      const done = await action(asked.current);
      asked.current = false;
      return done;
    } catch (error) {
      asked.current = error instanceof KeptFailure && error.canStartOver;
      throw error;
    }
  };
}
