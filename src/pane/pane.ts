import { Storage, StorageType } from "@microsoft/office-js-helpers";
import { matches, NAMESPACE, signature, topics, type ListedFunction } from "./list";

// Opened as a plain page without a network there is no Office.js; functions.js, loaded next, then registers with nobody.
globalThis.CustomFunctions ??= { associate() {} } as unknown as typeof CustomFunctions;

function byId<E extends HTMLElement>(id: string): E {
  return document.getElementById(id) as E;
}

function element<K extends keyof HTMLElementTagNameMap>(name: K, ...children: (Node | string)[]): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  made.append(...children);
  return made;
}

/** Open until the reader closes it, then as the reader left it. Of the storage helper only get and set keep their word. */
function keepCautions(): void {
  const cautions = byId<HTMLDetailsElement>("cautions");
  let kept: Storage<boolean | null>;
  try {
    kept = new Storage("bosswright", StorageType.LocalStorage);
    cautions.open = kept.get("cautions open") ?? true;
  } catch {
    return; // A browser may refuse storage to a page in a frame, as Excel on the web is.
  }
  cautions.addEventListener("toggle", () => kept.set("cautions open", cautions.open));
}

function entry(listed: ListedFunction): HTMLLIElement {
  const terms = listed.parameters.flatMap(({ name, description }) => [element("dt", name), element("dd", description)]);
  const details = element("details", element("summary", element("code", signature(listed))), element("p", listed.description));
  if (terms.length > 0) details.append(element("dl", ...terms));
  return element("li", details);
}

/** Builds the list once; the filter only hides. */
function showFunctions(functions: readonly ListedFunction[]): void {
  const filter = byId<HTMLInputElement>("filter");
  const sections = topics(functions).map((topic) => {
    const entries = topic.functions.map((listed) => ({ listed, item: entry(listed) }));
    return { entries, section: element("section", element("h3", topic.heading), element("ul", ...entries.map(({ item }) => item))) };
  });

  const apply = () => {
    let shown = 0;
    for (const { entries, section } of sections) {
      for (const { listed, item } of entries) {
        item.hidden = !matches(listed, filter.value);
        if (!item.hidden) shown += 1;
      }
      section.hidden = entries.every(({ item }) => item.hidden);
    }
    byId("count").textContent = `${shown} of ${functions.length} functions`;
  };

  byId("functions").replaceChildren(...sections.map(({ section }) => section));
  filter.addEventListener("input", apply);
  apply();
}

async function readFunctions(): Promise<void> {
  try {
    const response = await fetch("functions.json");
    if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
    const { functions } = (await response.json()) as { functions: ListedFunction[] };
    showFunctions(functions);
  } catch (error) {
    byId("count").textContent = `The list of functions could not be read: ${String(error)}`;
  }
}

async function greetExcel(): Promise<void> {
  if (typeof Office === "undefined") return;
  const { host } = await Office.onReady();
  if (host === Office.HostType.Excel) byId("host").textContent = `The functions are ready: type =${NAMESPACE}. in a cell.`;
}

byId("version").textContent = `Version ${BOSSWRIGHT_VERSION}`;
keepCautions();
void readFunctions();
void greetExcel();
