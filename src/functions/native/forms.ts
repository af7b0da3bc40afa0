import { declarations } from "../declarations";
import type { NativeForm, NoNativeForm } from "./form";

/**
 * Every function as ordinary spreadsheet arithmetic, by its id, for people without the add-in; or why it has none.
 * Each gives the same answer as the function for the same cells, and an error where the function gives one.
 */
export const nativeForms: Readonly<Record<string, NativeForm | NoNativeForm>> = Object.fromEntries(
  declarations.map(({ name, native }) => [name, native]),
);
