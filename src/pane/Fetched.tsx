import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { Button } from "./Button";

interface FetchedProps<Given extends object> {
  readonly part: () => Promise<ComponentType<Given>>;
  /** Told once the part is there. */
  readonly onArrive?: () => void;
  readonly given?: Given;
}

/** A screen that is fetched now; where it cannot be, that is said, and it can be tried again. */
export function Fetched<Given extends object>({ part, onArrive, given }: FetchedProps<Given>) {
  const [Content, setContent] = useState<ComponentType<Given>>();
  const [failed, setFailed] = useState(false);
  const [tries, setTries] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a further try fetches once more
  useEffect(() => {
    let wanted = true;
    part().then(
      (content) => wanted && setContent(() => content),
      () => wanted && setFailed(true),
    );
    return () => {
      wanted = false;
    };
  }, [part, tries]);
  useEffect(() => {
    if (Content) onArrive?.();
  }, [Content, onArrive]);
  if (Content) return <Content {...(given as Given)} />;
  return (
    <>
      <p role="status" class="notice">
        {failed ? "" : "Loading…"}
      </p>
      <p role="alert" class="notice trouble">
        {failed ? "This part couldn't be loaded. Nothing was changed. Check your connection, then try again." : ""}
      </p>
      {failed && (
        <p class="row">
          <Button
            main
            onPress={() => {
              setFailed(false);
              setTries(tries + 1);
            }}
          >
            Try again
          </Button>
        </p>
      )}
    </>
  );
}
