import { useEffect, useRef } from "preact/hooks";
import type { Finding } from "../../review/finding";
import { FindingCard } from "./FindingCard";

interface FindingListProps {
  readonly findings: readonly Finding[];
  readonly isBusy: boolean;
  readonly onFix: (finding: Finding) => void;
  readonly onDismiss: (finding: Finding, reason: string) => void;
}

const STEPS: Readonly<Record<string, number>> = { PageDown: 1, PageUp: -1 };

const cardsIn = (feed: HTMLElement | null) => [...(feed?.querySelectorAll<HTMLElement>("article") ?? [])];

/**
 * The findings as a feed of WAI-ARIA: Page Down and Page Up go from card to card, Enter goes to the card's cell. When a
 * card is fixed or ignored, the keyboard goes on at the next one.
 */
export function FindingList({ findings, isBusy, onFix, onDismiss }: FindingListProps) {
  const feed = useRef<HTMLDivElement>(null);
  const pressed = useRef<{ key: string; place: number }>(undefined);
  const press = (key: string, place: number) => {
    pressed.current = { key, place };
  };

  useEffect(() => {
    const last = pressed.current;
    if (!last || findings.some(({ key }) => key === last.key)) return;
    pressed.current = undefined;
    const { activeElement, body } = document;
    if (activeElement !== body && !feed.current?.contains(activeElement)) return;
    cardsIn(feed.current)
      .at(Math.min(last.place, findings.length - 1))
      ?.focus();
  }, [findings]);

  return (
    <div
      ref={feed}
      role="feed"
      aria-label="Findings"
      aria-busy={isBusy}
      onKeyDown={(event) => {
        const step = STEPS[event.key];
        const all = cardsIn(feed.current);
        const at = all.findIndex((card) => card.contains(event.target as Node));
        if (step === undefined || at < 0) return;
        event.preventDefault();
        all[at + step]?.focus();
      }}
    >
      {findings.map((finding, place) => (
        <FindingCard
          key={finding.key}
          finding={finding}
          place={place + 1}
          count={findings.length}
          onFix={() => {
            press(finding.key, place);
            onFix(finding);
          }}
          onDismiss={(reason) => {
            press(finding.key, place);
            onDismiss(finding, reason);
          }}
        />
      ))}
    </div>
  );
}
