import { useEffect, useRef } from "preact/hooks";
import { Button } from "../Button";
import { onEscape } from "../onEscape";

interface QuestionProps {
  readonly text: string;
  readonly yes: string;
  readonly no: string;
  readonly working: boolean;
  readonly onYes: () => void;
  readonly onNo: () => void;
}

/** Asks before something is lost; the answer that loses nothing has the focus. */
export function Question({ text, yes, no, working, onYes, onNo }: QuestionProps) {
  const safe = useRef<HTMLButtonElement>(null);
  useEffect(() => safe.current?.focus(), []);
  return (
    <div
      role="alertdialog"
      aria-labelledby="template-question"
      class="notice trouble"
      onKeyDown={onEscape(onNo, working)}
    >
      <p id="template-question">{text}</p>
      <p class="row">
        <Button off={working} onPress={onYes}>
          {yes}
        </Button>
        <Button at={safe} off={working} onPress={onNo}>
          {no}
        </Button>
      </p>
    </div>
  );
}
