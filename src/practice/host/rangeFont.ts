import type { Loadable } from "./clientObject";
import { hostColor } from "./color";
import { lookDefaults } from "./lookDefaults";
import type { Members } from "./mirror";
import { RangeLook } from "./rangeLook";
import { underlineFrom, underlineTo } from "./underline";

/** The letters in a range's cells. */
export class RangeFont
  extends RangeLook
  implements Members<Excel.RangeFont, "bold" | "color" | "italic" | "name" | "size" | "underline">
{
  protected loadable(): Loadable {
    return {
      properties: {
        bold: () => this.shared((look) => look.bold),
        italic: () => this.shared((look) => look.italic),
        color: () => this.shared((look) => hostColor(look.fontColor ?? lookDefaults.fontColor)) ?? "",
        name: () => this.shared((look) => look.fontName ?? lookDefaults.fontName),
        size: () => this.shared((look) => look.fontSize ?? lookDefaults.fontSize),
        underline: () => this.shared((look) => underlineFrom(look.underline)),
      },
    };
  }

  get bold(): boolean {
    return this.loadedValue("bold");
  }

  set bold(given: boolean) {
    this.setLook("bold", given, { bold: given });
  }

  get italic(): boolean {
    return this.loadedValue("italic");
  }

  set italic(given: boolean) {
    this.setLook("italic", given, { italic: given });
  }

  get color(): string {
    return this.loadedValue("color");
  }

  set color(given: string) {
    this.setLook("color", given, { fontColor: given });
  }

  get name(): string {
    return this.loadedValue("name");
  }

  set name(given: string) {
    // The plain font is none of the cell's own, so that a saved file shows it like the cells around it.
    this.setLook("name", given, { fontName: given === lookDefaults.fontName ? undefined : given });
  }

  get size(): number {
    return this.loadedValue("size");
  }

  set size(given: number) {
    this.setLook("size", given, { fontSize: given });
  }

  get underline(): Excel.RangeFont["underline"] {
    return this.loadedValue("underline");
  }

  set underline(given: Excel.RangeFont["underline"]) {
    this.setLook("underline", given, { underline: underlineTo(given) });
  }
}
