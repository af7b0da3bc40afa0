import type { Picture } from "../grid/port";
import type { Loadable } from "./clientObject";
import { Collection } from "./collection";
import type { Members } from "./mirror";
import { Placed } from "./placed";
import { pngSize } from "./pngSize";
import type { RequestContext } from "./requestContext";

interface PicturePlace {
  readonly sheetId: string;
  readonly id: string;
}

type Carried = Members<
  Excel.Shape,
  "altTextDescription" | "delete" | "height" | "id" | "isNullObject" | "left" | "name" | "top" | "width"
>;

/** A picture over the cells. */
export class Shape extends Placed<PicturePlace> implements Carried {
  constructor(context: RequestContext, location: string, find: () => PicturePlace | null, isFound = false) {
    super(context, "Shape", location, find, isFound);
  }

  private now(): Picture {
    const { sheetId, id } = this.place;
    const picture = this.context.session.grid.pictures.list(sheetId).find((one) => one.id === id);
    if (!picture) throw new Error("The picture is gone.");
    return picture;
  }

  protected loadable(): Loadable {
    return {
      properties: {
        id: () => this.place.id,
        name: () => this.now().name,
        altTextDescription: () => this.now().altText,
        left: () => this.now().left,
        top: () => this.now().top,
        width: () => this.now().width,
        height: () => this.now().height,
      },
    };
  }

  private change(property: string, given: unknown, change: Partial<Omit<Picture, "id">>): void {
    this.assign(property, given, () => {
      this.context.session.checkWritable(this.place.sheetId);
      return this.context.session.grid.pictures.update(this.place.sheetId, this.place.id, change);
    });
  }

  get id(): string {
    return this.loadedValue("id");
  }

  get name(): string {
    return this.loadedValue("name");
  }

  set name(given: string) {
    this.change("name", given, { name: given });
  }

  get altTextDescription(): string {
    return this.loadedValue("altTextDescription");
  }

  set altTextDescription(given: string) {
    this.change("altTextDescription", given, { altText: given });
  }

  get left(): number {
    return this.loadedValue("left");
  }

  set left(given: number) {
    this.change("left", given, { left: given });
  }

  get top(): number {
    return this.loadedValue("top");
  }

  set top(given: number) {
    this.change("top", given, { top: given });
  }

  get width(): number {
    return this.loadedValue("width");
  }

  set width(given: number) {
    this.change("width", given, { width: given });
  }

  get height(): number {
    return this.loadedValue("height");
  }

  set height(given: number) {
    this.change("height", given, { height: given });
  }

  delete(): void {
    this.act("delete", () => {
      this.context.session.checkWritable(this.place.sheetId);
      this.context.session.grid.pictures.remove(this.place.sheetId, this.place.id);
    });
  }
}

/** The pictures of a sheet. */
export class ShapeCollection
  extends Collection<Shape>
  implements Members<Excel.ShapeCollection, "addImage" | "getCount" | "getItemOrNullObject">
{
  constructor(
    context: RequestContext,
    private readonly sheetId: () => string,
  ) {
    super(context, "ShapeCollection");
  }

  protected itemsNow(): Shape[] {
    const sheetId = this.sheetId();
    const pictures = this.context.session.grid.pictures.list(sheetId);
    return pictures.map(({ id }) => new Shape(this.context, "ShapeCollection.items", () => ({ sheetId, id }), true));
  }

  /**
   * Puts a picture at the sheet's corner, in its natural size.
   *
   * @param base64ImageString A PNG, without a prefix.
   */
  addImage(base64ImageString: string): Shape {
    let made: PicturePlace | null = null;
    this.act("addImage", async () => {
      const sheetId = this.sheetId();
      this.context.session.checkWritable(sheetId);
      const size = pngSize(base64ImageString);
      const source = `data:image/png;base64,${base64ImageString}`;
      made = { sheetId, id: await this.context.session.grid.pictures.add(sheetId, source, size) };
    });
    return new Shape(this.context, "ShapeCollection.addImage", () => made);
  }

  /** A picture by name or id. */
  getItemOrNullObject(key: string): Shape {
    return new Shape(this.context, "ShapeCollection.getItemOrNullObject", () => {
      const sheetId = this.sheetId();
      const found = this.context.session.grid.pictures.list(sheetId).find(({ id, name }) => name === key || id === key);
      return found ? { sheetId, id: found.id } : null;
    });
  }
}
