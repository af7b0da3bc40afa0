/**
 * The one catalogue of what the project says about a value it cannot use. A message names the value, quotes
 * what arrived, and says what to give instead.
 */
export const messages = {
  missing: (argument: string, example: string) => `${argument} is blank. Type a value, such as ${example}.`,
} as const;
