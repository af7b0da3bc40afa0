const amount = new Intl.NumberFormat("en-US", { maximumFractionDigits: 2 });
const dollars = new Intl.NumberFormat("en-US", { style: "currency", currency: "USD" });
const share = new Intl.NumberFormat("en-US", { style: "percent", minimumFractionDigits: 1, maximumFractionDigits: 1 });

export const amountText = (value: number) => amount.format(value);
/** Money, such as `$1,203.50`. */
export const dollarText = (value: number) => dollars.format(value);
export const shareText = (value: number | undefined) => (value === undefined ? "none" : share.format(value));

/** An amount with its unit, such as `4 pieces`, `1 piece`, `0.82 tons`. */
export function amountWithUnit(value: number, unit: string): string {
  return `${amountText(value)} ${value === 1 ? unit.replace(/(?<=box)es$|s$/, "") : unit}`;
}
