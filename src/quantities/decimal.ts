const PLAIN = /^\d*\.?\d+$/;
const THOUSANDS = /^\d{1,3}(,\d{3})+\.\d+$|^[1-9]\d{0,2}(,\d{3}){2,}$/;
const EITHER_WAY = /^[1-9]\d{0,2},\d{3}$/;
const DECIMAL_COMMA = /^\d*,\d+$/;

/**
 * A number of digits with a point or a comma among them.
 *
 * @param digits such as "9.8", "9,8" or "1,234.5".
 * @returns the number; "ambiguous" where the comma may part thousands or decimals ("1,200"); undefined where it
 *   is no number.
 * @example readDecimal("9,8") // 9.8
 */
export function readDecimal(digits: string): number | "ambiguous" | undefined {
  if (PLAIN.test(digits)) return Number(digits);
  if (THOUSANDS.test(digits)) return Number(digits.replaceAll(",", ""));
  if (EITHER_WAY.test(digits)) return "ambiguous";
  if (DECIMAL_COMMA.test(digits)) return Number(digits.replace(",", "."));
  return undefined;
}
