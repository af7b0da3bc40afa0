import { useEffect, useRef, useState } from "preact/hooks";
import { type Screen, screens, tools, work } from "./screens";

interface MenuProps {
  readonly screen: Screen;
  readonly onShow: (screen: Screen) => void;
}

/** The way through the work, and the tools beside it in a list that opens. Arrow keys go through the list, Escape closes it. */
export function Menu({ screen, onShow }: MenuProps) {
  const [isOpen, setOpen] = useState(false);
  const nav = useRef<HTMLElement>(null);
  const opener = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!isOpen) return;
    const close = ({ target }: Event) => nav.current?.contains(target as Node) || setOpen(false);
    const events = ["pointerdown", "focusin"] as const;
    for (const event of events) document.addEventListener(event, close);
    return () => {
      for (const event of events) document.removeEventListener(event, close);
    };
  }, [isOpen]);
  const onKeyDown = (event: KeyboardEvent) => {
    const listed = [...(nav.current?.querySelectorAll<HTMLElement>("#tools button") ?? [])];
    const at = listed.indexOf(event.target as HTMLElement);
    if (event.key === "Escape" && isOpen) {
      setOpen(false);
      opener.current?.focus();
    } else if (event.key === "ArrowDown" && event.target === opener.current) {
      // Shown at once: the next key may come before the next frame.
      if (list.current) list.current.hidden = false;
      listed[0]?.focus();
      setOpen(true);
    } else if (at >= 0 && (event.key === "ArrowDown" || event.key === "ArrowUp"))
      listed.at((at + (event.key === "ArrowDown" ? 1 : -1)) % listed.length)?.focus();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  const buttonOf = (one: Screen) => (
    <button
      key={one}
      type="button"
      aria-current={one === screen ? "page" : undefined}
      onClick={() => {
        setOpen(false);
        onShow(one);
      }}
    >
      {screens[one].label}
    </button>
  );
  return (
    <nav aria-label="What to do" ref={nav} onKeyDown={onKeyDown}>
      {work.map(buttonOf)}
      <button
        ref={opener}
        type="button"
        aria-expanded={isOpen}
        aria-controls="tools"
        aria-current={tools.includes(screen) || undefined}
        onClick={() => setOpen(!isOpen)}
      >
        Tools <span aria-hidden="true">▾</span>
      </button>
      <div id="tools" ref={list} hidden={!isOpen}>
        {tools.map(buttonOf)}
      </div>
    </nav>
  );
}
