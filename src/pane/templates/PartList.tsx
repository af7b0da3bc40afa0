const MOST_SHOWN = 12;

interface PartListProps {
  readonly summary: string;
  readonly items: readonly string[];
  readonly open?: boolean;
}

/** A part that opens: a dozen lines of it, and the rest behind one more. Nothing where there are none. */
export function PartList({ summary, items, open = false }: PartListProps) {
  if (items.length === 0) return null;
  const more = items.slice(MOST_SHOWN);
  return (
    <details open={open}>
      <summary>
        {summary} ({items.length})
      </summary>
      <Lines items={items.slice(0, MOST_SHOWN)} />
      {more.length > 0 && (
        <details>
          <summary>{more.length} more</summary>
          <Lines items={more} />
        </details>
      )}
    </details>
  );
}

function Lines({ items }: { readonly items: readonly string[] }) {
  return (
    <ul class="lines">
      {items.map((item) => (
        <li key={item}>{item}</li>
      ))}
    </ul>
  );
}
