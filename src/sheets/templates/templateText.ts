import type { Template } from "./template";

/** A template as the text of its file: lines for people who compare two of them, one cell a line. */
export function templateText(template: Template): string {
  const { cells, ...rest } = template;
  const head = JSON.stringify(rest, undefined, 1).slice(0, -2);
  return `${head},\n "cells": [\n${cells.map((cell) => `  ${JSON.stringify(cell)}`).join(",\n")}\n ]\n}\n`;
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
