import { useState } from "preact/hooks";
import { TextArea } from "../papers/TextArea";

interface AllAtOnceProps {
  readonly label: string;
  readonly example: string;
  /** The list as it is, however it was typed. */
  readonly now: string;
  readonly onType: (text: string) => void;
}

/** One field for a whole list, typed or pasted; while no one types into it, it shows the list as it is. */
export function AllAtOnce({ label, example, now, onType }: AllAtOnceProps) {
  const [typed, setTyped] = useState<string>();
  return (
    <div onFocusOut={() => setTyped(undefined)}>
      <TextArea
        label={label}
        value={typed ?? now}
        rows={2}
        note={`typed or pasted, such as ${example}`}
        onType={(text) => {
          setTyped(text);
          onType(text);
        }}
      />
    </div>
  );
}
