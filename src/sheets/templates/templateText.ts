import type { Template } from "./template";

/** A template as the text of its file, one cell or look a line, for people who compare two of them. */
export function templateText(template: Template): string {
  const parts = Object.entries(template).map(([key, value]) => `  ${JSON.stringify(key)}: ${part(value)}`);
  return `{\n${parts.join(",\n")}\n}\n`;
}

function part(value: unknown): string {
  if (!Array.isArray(value) || typeof value[0] !== "object") return JSON.stringify(value);
  return `[\n${value.map((one) => `    ${JSON.stringify(one)}`).join(",\n")}\n  ]`;
}

/**
 * A file's name for a template.
 *
 * @example templateFileName("Front bed / steel") // "Front bed steel.bedrow.json"
 */
export function templateFileName(name: string): string {
  const plain = name
    .replace(/[^\p{L}\p{N} _-]/gu, " ")
    .replace(/\s+/g, " ")
    .trim();
  return `${plain.slice(0, 60).trim() || "Template"}.bedrow.json`;
}
