import { feet, feetOrZero, inches, inchesOrZero, positive, positiveOrZero } from "./read";

/*
 * What functions.js needs to know of an argument: its name, how it is read, and what a blank stands for. Everything
 * else about it is in the declarations, which functions.js leaves out.
 */

/** Reads one argument as the host sent it, or throws a Problem that names the argument. */
export type Read<Value> = (value: unknown, name: string, fallback?: Value, most?: number) => Value;

export interface Argument<Value = unknown> {
  /** As the host shows it: `depth_in`. */
  readonly name: string;
  /** A method, so that an argument of any value is an Argument. */
  read(value: unknown, name: string, fallback?: Value, most?: number): Value;
  /** A number over 0 is taken as it is, without its reader. */
  readonly isPlain?: boolean;
  /** May be left out of the call. */
  readonly optional: boolean;
  /** What a blank stands for. */
  readonly fallback?: Value;
  /** The largest number it takes, where there is a limit. */
  readonly most?: number;
}

/** A list that an argument holds, told apart by what is listed. */
export type Listed<What extends string> = readonly number[] & { readonly lists?: What };

interface More<Value> {
  readonly fallback?: Value;
  readonly most?: number;
}

const PLAIN: ReadonlySet<unknown> = new Set([feet, feetOrZero, inches, inchesOrZero, positive, positiveOrZero]);

/** An argument that every call has to give. With a fallback, its cell may be blank. */
export function needs<Value>(name: string, read: Read<Value>, more: More<Value> = {}): Argument<Value> {
  return argument({ name, read, optional: false, ...more });
}

/** An argument that may be left out. */
export function may<Value>(name: string, read: Read<Value>, fallback?: Value, most?: number): Argument<Value> {
  return argument({
    name,
    read,
    optional: true,
    ...(fallback !== undefined && { fallback }),
    ...(most !== undefined && { most }),
  });
}

/** Has each property, also where it's blank: a call reads arguments of one kind of object twice as fast. */
function argument<Value>({ name, read, optional, fallback, most }: Argument<Value>): Argument<Value> {
  return { name, read, optional, fallback, most, isPlain: PLAIN.has(read) } as Argument<Value>;
}

/** What each of some arguments is read as. */
export type ValuesOf<Arguments extends readonly Argument[]> = {
  -readonly [Place in keyof Arguments]: Arguments[Place] extends Argument<infer Value> ? Value : never;
};
