import { it } from 'vitest';
import { cellAt, handed, told, workbookOf, sheetNamed } from './kit';
import type { Cell } from '../../src/core/kinds';
const show = (name: string, f: () => string): void => {
  const t = performance.now();
  let out = '';
  try { out = f(); } catch (e) { out = `THROW ${String((e as Error).stack).slice(0, 400)}`; }
  console.log(name, Math.round(performance.now() - t), 'ms', Math.round(process.memoryUsage().rss/1e6), 'MB', out.slice(0, 1500));
};
it('iferror', () => {
  show('iferror', () => {
    const copy = handed(workbookOf({ A1: ['=1/0', '#DIV/0!'], A2: -1, B1: '=IFERROR(ENCL.BOSS.OD(A1,1),0)', B2: '=IFERROR(ENCL.BOSS.OD(A2,1),0)', B3: '=IFERROR(ENCL.BOSS.OD(A9,1),"")', B4: '=IFERROR(ENCL.BOSS.OD(2,1),"")' , B5: '=IFERROR(ENCL.BOSS.OD(VLOOKUP("x",A1:A2,1,FALSE),1),7)'}));
    return ['B1', 'B2', 'B3', 'B4', 'B5'].map(at => `${cellAt(copy, 'S', at).formula} = ${cellAt(copy, 'S', at).value}`).join('\n') + told(copy.findings).join('\n') + (copy.plan.sheets.find(s => s.name === 'Steps')?.cells.map(c => `${c.at} ${c.formula ?? c.value}`).join('\n') ?? '');
  });
});
it('table', () => {
  const heads = ['screw', 'head', 'length', 'material', 'wall', 'board plane', 'seat', 'board', 'boss height'];
  const rows: Cell[][] = [heads, ['M3', 'pan', 12, 'ABS', 2.5, 5.5, 2, 1.6, 14], ['#4', 'pan', 12, 'ABS', 2.5, 5.5, 2, 1.6, 14], ['ST2.9', 'pan', 13, 'ABS', 2.5, 5.5, 2, 1.6, 14], ['', '', '', '', '', '', '', '', ''], ['#4 AB', 'pan', '1/2 in', 'ABS', 2.5, 5.5, 2, 1.6, 14],['ST2.9', 'pan', 'x', 'ABS', 2.5, 5.5, 2, 1.6, 14]];
  const cells = Object.fromEntries(rows.flatMap((line, r) => line.map((v, c) => [`${String.fromCharCode(65 + c)}${r + 1}`, v])));
  show('table', () => {
    const copy = handed(workbookOf({ ...cells, A19: '=ENCL.JOINT.TABLE(A1:I7,{"state","engagement ratio","grip","reason"})' }));
    return told(copy.findings).join('\n') + sheetNamed(copy, 'S').cells.filter(c => /^[A-D](19|2\d)$/.test(c.at)).map(c => `${c.at} ${c.formula ?? '-'} = ${c.value}`).join('\n');
  });
});
it('big', () => {
  show('inf', () => { const copy = handed(workbookOf({ A1: Infinity, B1: '=ENCL.BOSS.OD(A1,1)' })); return `${cellAt(copy, 'S', 'A1').value} ${told(copy.findings).join('\n')}`; });
  show('double', () => {
    const copy = handed(workbookOf({ A1: 'x'.repeat(100), ...Object.fromEntries(Array.from({ length: 39 }, (_, i) => [`A${i + 2}`, `=A${i + 1}&A${i + 1}`])), B1: '=ENCL.BOSS.OD.RULE(A40,"ABS")' }));
    return told(copy.findings).join('\n').slice(0,400);
  });
  show('chain fwd', () => { const n = 20000; const copy = handed(workbookOf({ ...Object.fromEntries(Array.from({ length: n }, (_, i) => [`A${i + 1}`, i === 0 ? 1 : `=A${i}+1`])), B1: `=ENCL.BOSS.OD(A${n},1)` })); return `${cellAt(copy, 'S', 'B1').formula} ${cellAt(copy, 'S', 'B1').value}`; });
  show('chain back', () => { const n = 20000; const copy = handed(workbookOf({ ...Object.fromEntries(Array.from({ length: n }, (_, i) => [`A${i + 1}`, i === n-1 ? 1 : `=A${i+2}+1`])), B1: `=ENCL.BOSS.OD(A1,1)` })); return `${cellAt(copy, 'S', 'B1').formula} ${cellAt(copy, 'S', 'B1').value} ${told(copy.findings).slice(0,3).join('|').slice(0,300)}`; });
  for (const n of [100, 300]) show('rss '+n, () => { const copy = handed(workbookOf({ ...Object.fromEntries(Array.from({ length: n }, (_, i) => [`A${i + 1}`, 0.1+i/1e5])), ...Object.fromEntries(Array.from({ length: n }, (_, i) => [`B${i + 1}`, `=ENCL.STACK.RSS(A$1:A$${n})`])) })); return told(copy.findings).slice(0,2).join('|'); });
  for (const n of [500, 1000, 2000]) show('calls '+n, () => { const copy = handed(workbookOf({ ...Object.fromEntries(Array.from({ length: n }, (_, i) => [[`A${i + 1}`, 2+i/1e5],[`B${i + 1}`, 1], [`C${i + 1}`, `=ENCL.BOSS.OD(A${i+1},B${i+1})`],[`D${i + 1}`, `=ENCL.WALL.FEATURE(B${i+1})`],[`E${i + 1}`, `=ENCL.DRAFT.SIZE(A${i+1},14,0.5)`],[`F${i + 1}`, `=ENCL.CHECK.MAX(C${i+1},6)`],[`G${i + 1}`, `=ENCL.BOSS.OD(C${i+1},B${i+1})`]]).flat()) })); return `${copy.live} ${copy.asValues}`; });
}, 300000);
