import { useEffect, useRef, useState } from "preact/hooks";
import type { Layout } from "../layout/layout";
import type { BedForm } from "../quantities/bed/form";
import { pickedCorners, pickedSideOf, pickedSides } from "../quantities/bed/pickSides";
import type { Bed } from "../quantities/bed/read";
import { Button } from "./Button";
import type { ChoicesProps } from "./Choices";
import type { Preview } from "./preview";
import { Sketch } from "./Sketch";

interface DrawingProps extends Pick<ChoicesProps, "onFill"> {
  readonly preview: Preview;
  readonly onChange: (changes: Partial<BedForm>) => void;
}

/**
 * The bed as far as it's typed: a sketch until it can be laid out, then in plan and through its edging. A click on a side
 * has edging set there or not, and one on a corner rounds it or not; the check boxes do the same.
 */
export function Drawing({ preview, onChange, onFill }: DrawingProps) {
  const { form } = preview;
  const pick = ({ side, corner }: Picked) => {
    const points = form.points.map(
      ([x, y, border], index) => [x, y, (border === "1") !== (index === side - 1) ? "1" : "0"] as const,
    );
    if (form.way === "points") onChange({ points });
    else {
      const widths = preview.estimate ? preview.bed.widthsFt : [];
      const place = form.way === "round" ? 0 : preview.estimate ? pickedSideOf(form.way, widths, side) : side - 1;
      const found = corner > 0 ? pickedCorners(form)[corner - 1] : pickedSides(form)[place];
      if (found) onFill(found.fills);
    }
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keyboard has the check boxes
    // biome-ignore lint/a11y/useKeyWithClickEvents: the keyboard has the check boxes
    <div
      class="drawing"
      onClick={({ target }) => {
        const { side, corner } = (target as SVGElement).dataset;
        if (side ?? corner) pick({ side: Number(side ?? 0), corner: Number(corner ?? 0) });
      }}
    >
      {preview.estimate && preview.plan ? (
        <Plan name={form.name} bed={preview.bed} plan={preview.plan} />
      ) : (
        <Sketch form={form} />
      )}
    </div>
  );
}

/** What was clicked, by its number on the drawing; 0 for what wasn't. */
interface Picked {
  readonly side: number;
  readonly corner: number;
}

/** Typing goes on while the bed is drawn, so a drawing waits for a pause. */
const PAUSE_MS = 150;
const LEAST_WIDTH = 300;

/** The bed in plan and through its edging, drawn again while the inputs change. */
function Plan({ name, bed, plan }: { readonly name: string; readonly bed: Bed; readonly plan: Layout }) {
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
    <div ref={place} aria-busy={!drawn && !failed}>
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
  );
}

/** A drawing of our own making, in which every text of the person's is escaped. */
function Svg({ text }: { text: string }) {
  // biome-ignore lint/security/noDangerouslySetInnerHtml: the drawing is made here, and it escapes what was typed
  return <div dangerouslySetInnerHTML={{ __html: text }} />;
}
