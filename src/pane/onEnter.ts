/**
 * Enter goes on to the next field. After the last one of the first view it finishes the bed; in a folded part it stays.
 *
 * @param finish what comes after the last field.
 */
export function onEnter(finish: () => void): (event: KeyboardEvent) => void {
  return (event) => {
    const { target } = event;
    if (event.key !== "Enter" || event.isComposing || !isField(target)) return;
    event.preventDefault();
    const within = target.closest("details, .first");
    const fields = [...(within?.querySelectorAll("input") ?? [])].filter(
      (one) => isField(one) && one.checkVisibility(),
    );
    const next = fields[fields.indexOf(target) + 1];
    next?.focus();
    next?.select();
    if (!next && within?.matches(".first")) finish();
  };
}

const isField = (target: EventTarget | null): target is HTMLInputElement =>
  target instanceof HTMLInputElement && target.type === "text";
