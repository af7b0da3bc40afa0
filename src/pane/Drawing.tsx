import { useEffect, useRef, useState } from "preact/hooks";
import type { Layout } from "../layout/layout";
import type { Bed } from "../quantities/bed/read";
import { Button } from "./Button";

interface DrawingProps {
  readonly name: string;
  readonly bed: Bed;
  readonly plan: Layout;
}

/** Typing goes on while the bed is drawn, so a drawing waits for a pause. */
const PAUSE_MS = 150;
const LEAST_WIDTH = 300;

/** The bed in plan and through its border, drawn anew while the inputs change. */
export function Drawing({ name, bed, plan }: DrawingProps) {
  const place = useRef<HTMLDivElement>(null);
  const [drawn, setDrawn] = useState<{ readonly plan: string; readonly section: string }>();
  const [failed, setFailed] = useState(false);
  const [tries, setTries] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a further try fetches once more
  useEffect(() => {
    let wanted = true;
    const timer = setTimeout(async () => {
      const fetched = await import(/* webpackChunkName: "drawings" */ "./drawings").catch(() => undefined);
      if (!wanted) return;
      setFailed(!fetched);
      const width = Math.max(LEAST_WIDTH, place.current?.clientWidth ?? 0);
      if (fetched) setDrawn(fetched.paneDrawings(bed, plan, name, width));
    }, PAUSE_MS);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [name, bed, plan, tries]);
  return (
    <details open>
      <summary>Drawing</summary>
      <div ref={place} class="drawing" aria-busy={!drawn && !failed}>
        {drawn ? (
          <>
            <Svg text={drawn.plan} />
            <Svg text={drawn.section} />
          </>
        ) : (
          !failed && <p class="below">Drawing the bed…</p>
        )}
        <p role="alert" class="notice trouble">
          {failed ? "The drawing couldn't be loaded. The rest of the estimate is complete." : ""}
        </p>
        {failed && <Button onPress={() => setTries(tries + 1)}>Draw it again</Button>}
      </div>
    </details>
  );
}

/** A drawing of our own making, in which every text of the person's is escaped. */
function Svg({ text }: { text: string }) {
  // biome-ignore lint/security/noDangerouslySetInnerHtml: the drawing is made here, and it escapes what was typed
  return <div dangerouslySetInnerHTML={{ __html: text }} />;
}
