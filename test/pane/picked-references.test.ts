import { describe, expect, it } from 'vitest';
import { onSheet, picked } from '../../src/pane/picked-references';

describe('a reference picked from the sheet', () => {
  it('names the sheet only where it is another one', () => {
    expect(picked('', { sheetName: 'Part', at: 'B4' }, 'Part', false)).toBe('=B4');
    expect(picked('2.5', { sheetName: 'My part', at: 'B4' }, 'Part', false)).toBe("='My part'!B4");
  });

  it('becomes a range by a second pick, where a range is taken', () => {
    expect(picked('=B4', { sheetName: 'Part', at: 'B9' }, 'Part', true)).toBe('=B4:B9');
    expect(picked("='My part'!B4", { sheetName: 'My part', at: 'C9' }, 'Part', true)).toBe("='My part'!B4:C9");
    expect(picked('=B4', { sheetName: 'Part', at: 'B9' }, 'Part', false)).toBe('=B9');
  });

  it('begins anew with the same cell, another sheet or a finished range', () => {
    expect(picked('=B4', { sheetName: 'Part', at: 'B4' }, 'Part', true)).toBe('=B4');
    expect(picked('=B4', { sheetName: 'Other', at: 'B9' }, 'Part', true)).toBe('=Other!B9');
    expect(picked('=B4:B9', { sheetName: 'Part', at: 'C1' }, 'Part', true)).toBe('=C1');
  });

  it('keeps its cells when the formula goes to another sheet', () => {
    expect(onSheet('=B4:B6', 'Part', 'Other')).toBe('=Part!$B$4:$B$6');
    expect(onSheet('=B4*Other!C1', 'Part', 'Other')).toBe('=Part!$B$4*Other!$C$1');
    expect(onSheet('=B4', 'Part', 'Part')).toBe('=B4');
  });
});
