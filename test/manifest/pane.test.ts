import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";

const PANE = new URL("../../src/pane/", import.meta.url);
const text = (file: string) => readFileSync(new URL(file, PANE), "utf8");

it("the pane names no other origin than that of Office.js", () => {
  const files = readdirSync(PANE).filter((file) => /[.](html|css|ts)$/.test(file));
  const origins = files.flatMap((file) => [...text(file).matchAll(/(?:https?:)?\/\/[\w.-]+\.[a-z]+/g)].map(([origin]) => `${file} ${origin}`));
  expect(origins).toEqual(["pane.html https://appsforoffice.microsoft.com"]);
});

it("the pane loads Office.js first and the functions last, so that they can register", () => {
  const scripts = [...text("pane.html").matchAll(/<script([^>]*)>/g)].map(([, attributes]) => attributes);
  expect(scripts).toEqual([' src="https://appsforoffice.microsoft.com/lib/1/hosted/office.js"', ' src="pane.js"', ' src="functions.js"']);
});
