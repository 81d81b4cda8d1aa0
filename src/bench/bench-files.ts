// The workbook of the bench as a file. What it keeps beside its cells is kept in this browser, by its name.
import { startJob } from '../files/jobs';
import type { BenchWorkbook } from '../hosts/univer/bench-workbook';
import type { DefinedName } from '../sheet/plan';
import type { WorkbookFiles } from '../sheet/workbook-files';

const keptAt = (workbook: string): string => `name kept with ${workbook}`;

/** What was kept, where it is still one name. */
function kept(workbook: string): DefinedName[] {
  try {
    const { name, meaning } = JSON.parse(localStorage.getItem(keptAt(workbook)) ?? '{}') as Partial<DefinedName>;
    return typeof name === 'string' && typeof meaning === 'string' ? [{ name, meaning }] : [];
  } catch {
    return [];
  }
}

export function benchFiles(workbook: BenchWorkbook): WorkbookFiles {
  return {
    async read() {
      const plan = await workbook.contents();
      const bytes = await startJob('write', { ...plan, names: [...(plan.names ?? []), ...kept(plan.name)] }).done;
      return { name: plan.name, bytes: bytes ?? new Uint8Array() };
    },
    async keepName(name) {
      const at = keptAt(workbook.name());
      const [old, text] = [localStorage.getItem(at), JSON.stringify(name)];
      if (old === text) return undefined;
      localStorage.setItem(at, text);
      return async () => (old === null ? localStorage.removeItem(at) : localStorage.setItem(at, old));
    },
  };
}
