import { it } from 'vitest';
import { handed, sheetOf, told, sheetNamed } from './kit';
import { INPUTS } from '../../src/joint/inputs';
import { SOUND } from '../kit/sound-joint';
import { address } from '../../src/sheet/addresses';
it('fuzz', () => {
  const bad = ['x', -1, '#4', true, 1e9, '5 kg', 'default', ['=1/0', '#DIV/0!']] as const;
  let n = 0;
  for (const name of INPUTS.keys()) {
    const heads = [...new Set([...Object.keys(SOUND), name])];
    const rows = [SOUND, ...bad.map(b => ({ ...SOUND, [name]: b })), SOUND];
    const cells: Record<string, never> = {};
    [heads, ...rows.map(r => heads.map(h => (r as Record<string, unknown>)[h] ?? null))].forEach((line, r) => line.forEach((v, c) => { cells[address(r, c)] = v as never; }));
    try {
      const copy = handed({ name: 'M', sheets: [sheetOf('S', { ...cells, A30: '=ENCL.JOINT.TABLE(' + `A1:${address(rows.length, heads.length - 1)}` + ',{"state","engagement ratio","grip","pull-out"})' })] });
      const s = sheetNamed(copy, 'S').cells;
      const live = [31, 40].map(r => s.filter(c => c.formula !== undefined && c.at.match(new RegExp(`^[A-D]${r}$`))).length);
      n++;
      if (live.join() !== '4,4') console.log(name, live.join(), told(copy.findings).join(' / ').slice(0, 300));
    } catch (e) { console.log(name, 'THROW', String(e).slice(0, 300)); }
  }
  console.log('tables', n);
}, 600000);
