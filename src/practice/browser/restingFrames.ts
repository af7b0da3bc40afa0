/** How long the grid draws at the screen's rate after anything happened. */
const AWAKE_MS = 2000;
/** How long it waits between two frames while nothing does: what would still change on its own is seen soon enough. */
const RESTING_MS = 400;

const EVENTS = ["pointerdown", "pointermove", "pointerup", "wheel", "keydown", "input", "resize", "focusin", "scroll"];

type Frame = (time: number) => void;

/** The window, as far as frames go. */
export interface FrameWindow {
  requestAnimationFrame(frame: Frame): number;
  cancelAnimationFrame(id: number): void;
  addEventListener(event: string, listener: () => void, how: { capture: true; passive: true }): void;
}

/**
 * Has the grid draw at the screen's rate only while something happens. It asks for a frame after each frame whether or
 * not there is anything to draw, which takes a twelfth of a core at rest.
 *
 * It asks through `requestPostAnimationFrame` where there is one, and no browser has it, so that this takes its place.
 *
 * @returns to be called when anything happens besides a person's input.
 */
export function restFrames(page: FrameWindow): () => void {
  let awakeUntil = performance.now() + AWAKE_MS;
  let count = 0;
  const drawing = new Map<number, number>();
  const resting = new Map<number, { readonly frame: Frame; readonly timer: ReturnType<typeof setTimeout> }>();

  const draw = (id: number, frame: Frame) => {
    resting.delete(id);
    const own = page.requestAnimationFrame((time) => {
      drawing.delete(id);
      frame(time);
    });
    drawing.set(id, own);
  };
  const request = (frame: Frame): number => {
    count += 1;
    const id = count;
    if (performance.now() < awakeUntil) draw(id, frame);
    else resting.set(id, { frame, timer: setTimeout(() => draw(id, frame), RESTING_MS) });
    return id;
  };
  const cancel = (id: number) => {
    clearTimeout(resting.get(id)?.timer);
    resting.delete(id);
    const own = drawing.get(id);
    if (own !== undefined) page.cancelAnimationFrame(own);
    drawing.delete(id);
  };
  const wake = () => {
    awakeUntil = performance.now() + AWAKE_MS;
    for (const [id, { frame, timer }] of resting) {
      clearTimeout(timer);
      draw(id, frame);
    }
  };
  Object.assign(page, { requestPostAnimationFrame: request, cancelPostAnimationFrame: cancel });
  for (const event of EVENTS) page.addEventListener(event, wake, { capture: true, passive: true });
  return wake;
}
