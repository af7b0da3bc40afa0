import { withoutDates } from "../../src/practice/host/settings";
import type { KeptObjects } from "./kept";
import { type StandIn, wireNameOf } from "./wire";

/** Whether it was looked for and is not there. */
export function isNull(object: StandIn): boolean {
  return "isNullObject" in object && object.isNullObject === true;
}

/**
 * What an object shows of itself after a load, under the names of the wire; null where the object is not there.
 *
 * @param paths Such as `format/fill/color`; none stands for the plain properties.
 */
export function propertiesOf(object: StandIn, paths: readonly string[], kept: KeptObjects): unknown {
  if (isNull(object)) return null;
  if (isCollection(object)) return itemsOf(object, paths, kept);
  const shown: Record<string, unknown> = {};
  const { properties, children = {} } = object.loadable();
  for (const path of paths.length > 0 ? paths : Object.keys(properties)) {
    const [head = "", ...rest] = path.split("/");
    if (head === "isNullObject") continue;
    const name = wireNameOf(head);
    if (!(head in children)) shown[name] = withoutDates(object[head]);
    else {
      const below = propertiesOf(object[head] as StandIn, rest.length > 0 ? [rest.join("/")] : [], kept);
      shown[name] = merged(shown[name], below);
    }
  }
  return shown;
}

/** The library takes `items/name` and `name` alike for the name of each item. */
function itemsOf(
  object: StandIn & { readonly items: readonly StandIn[] },
  paths: readonly string[],
  kept: KeptObjects,
) {
  const ofItem = paths
    .map((path) => path.replace(/^items(\/|$)/, ""))
    .filter((path) => path !== "" && path !== "count");
  // What only asks how many there are gets no items.
  if (ofItem.length === 0 && paths.includes("count")) return { Count: object.count };
  const items = object.items.map((item) => {
    return { ...(propertiesOf(item, ofItem, kept) as object), ...kept.identity(item) };
  });
  kept.rememberItems(object, object.items);
  return { _Items: items, Count: items.length };
}

function isCollection(object: StandIn): object is StandIn & { readonly items: readonly StandIn[] } {
  return "items" in object;
}

/** Two paths may lead through one object. */
function merged(one: unknown, other: unknown): unknown {
  const both = [one, other].every((value) => typeof value === "object" && value !== null);
  return both ? { ...(one as object), ...(other as object) } : (other ?? one);
}
